#pragma once

#include "gis/site_file.h"
#include "view/beside_work.h"

#include <QString>
#include <optional>

namespace groundcount::view {

/// Reads one foreign file at a time, beside the pages, by a child process that may break without harm.
class SiteReading : public QObject {
    Q_OBJECT
public:
    explicit SiteReading(QObject* parent = nullptr);

    /// Ends what is being read and reads this one; an empty path reads nothing.
    void start(const QString& path);
    QString path() const { return m_path; }
    bool isRunning() const { return m_work.isRunning(); }
    const std::optional<gis::SiteFile>& file() const { return m_file; }
    /// The sentence that refuses the file, "" while there is none.
    QString trouble() const { return m_trouble; }

signals:
    void ended();

private:
    void take();

    QString m_path, m_trouble;
    std::optional<gis::SiteFile> m_file;
    std::optional<Result<gis::SiteFile>> m_outcome;  ///< written by the work before it ends
    BesideWork m_work;  ///< last: ends before what it writes to
};

}  // namespace groundcount::view
