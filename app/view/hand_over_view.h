#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QObject>
#include <QTimer>
#include <QUrl>
#include <atomic>
#include <memory>
#include <mutex>
#include <thread>

namespace groundcount::view {

/// What a hand-over file will hold, where it goes, and the writing of it: beside the pages, with progress, and it can be stopped.
class HandOverView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY changed REQUIRED)
    Q_PROPERTY(groundcount::view::RowList* contents READ contents CONSTANT)
    Q_PROPERTY(QStringList formatWords READ formatWords CONSTANT)
    Q_PROPERTY(int formatIndex READ formatIndex NOTIFY changed)
    Q_PROPERTY(QString formatNote READ formatNote NOTIFY changed)
    Q_PROPERTY(QString ending READ ending NOTIFY changed)
    Q_PROPERTY(QUrl suggested READ suggested NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(bool running READ isRunning NOTIFY progressChanged)
    Q_PROPERTY(QString progress READ progress NOTIFY progressChanged)
    Q_PROPERTY(QString done READ done NOTIFY progressChanged)
    Q_PROPERTY(QString trouble READ trouble NOTIFY progressChanged)

public:
    explicit HandOverView(QObject* parent = nullptr);
    ~HandOverView() override;  ///< stops the writing; a file that stood there stays as it was

    Session* session() const { return m_session; }
    void setSession(Session* session);
    /// One row a layer: what it holds and how many.
    RowList* contents() { return &m_contents; }
    /// "GeoPackage", "GeoJSON", "CSV"
    QStringList formatWords() const;
    int formatIndex() const { return m_format; }
    QString formatNote() const;
    /// "gpkg", "geojson" or "csv"
    QString ending() const;
    /// A name for the file in the person's documents folder.
    QUrl suggested() const;
    /// Why nothing can be handed over, "" when it can.
    QString missing() const;

    bool isRunning() const { return m_work.joinable(); }
    QString progress() const { return m_progress; }
    QString done() const { return m_done; }
    QString trouble() const { return m_trouble; }

    Q_INVOKABLE void pickFormat(int index);
    /// Writes the file; an older one is replaced when the new one is whole.
    Q_INVOKABLE void write(const QUrl& target);
    Q_INVOKABLE void stop() { m_stop = true; }

signals:
    void changed();
    void progressChanged();

private:
    void refresh();
    void look();

    Session* m_session = nullptr;
    RowList m_contents;
    int m_format = 0;
    QString m_progress, m_done, m_trouble;
    std::thread m_work;
    std::atomic<bool> m_stop = false, m_ended = false;
    std::atomic<std::size_t> m_rows = 0;
    std::mutex m_guard;         ///< of the outcome
    QString m_outcome;          ///< of the work, when it ended
    bool m_succeeded = false;
    QTimer m_watch;
};

}  // namespace groundcount::view
