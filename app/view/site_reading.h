#pragma once

#include "gis/site_file.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <atomic>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace groundcount::view {

/// Reads one foreign file at a time, beside the pages, by a child process that may break without harm.
class SiteReading : public QObject {
    Q_OBJECT
public:
    explicit SiteReading(QObject* parent = nullptr);
    ~SiteReading() override;  ///< ends the child

    /// Command and arguments that read a file and print it (gis::readSiteFile); by default this program with "read-site".
    static void setReader(std::vector<std::string> command);

    /// Ends what is being read and reads this one; an empty path reads nothing.
    void start(const QString& path);
    QString path() const { return m_path; }
    bool isRunning() const { return m_work.joinable(); }
    const std::optional<gis::SiteFile>& file() const { return m_file; }
    /// The sentence that refuses the file, "" while there is none.
    QString trouble() const { return m_trouble; }

signals:
    void ended();

private:
    void look();
    void stop();

    QString m_path, m_trouble;
    std::optional<gis::SiteFile> m_file;
    std::thread m_work;
    std::atomic<bool> m_stop = false, m_isOver = false;
    std::optional<Result<gis::SiteFile>> m_outcome;  ///< written by the thread before m_isOver
    QTimer m_watch;
};

}  // namespace groundcount::view
