#pragma once

#include "view/beside_work.h"
#include "view/row_list.h"
#include "view/server_work.h"
#include "view/session.h"

#include "share/job_list.h"

#include <QObject>
#include <QTimer>
#include <QUrl>
#include <atomic>
#include <functional>

namespace groundcount::view {

/// The exchange with a shared server: sends what it lacks, takes what came, beside the pages, with progress; it can be stopped at
/// any time and goes on from there. Lives as long as the app, so that it works on while other pages are open.
class ExchangeView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the desk")
    Q_PROPERTY(QString address READ address WRITE setAddress NOTIFY changed)
    Q_PROPERTY(QStringList everyWords READ everyWords NOTIFY changed)
    Q_PROPERTY(int everyIndex READ everyIndex NOTIFY changed)
    Q_PROPERTY(QString jobId READ jobId NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(bool running READ isRunning NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* refused READ refused CONSTANT)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* jobs READ jobs CONSTANT)

public:
    explicit ExchangeView(Session* session, QObject* parent = nullptr);

    /// libpq's connection string or URI, kept as a draft of this device; never handed over.
    QString address() const { return m_address; }
    void setAddress(const QString& address);
    QStringList everyWords() const { return {tr("When I ask"), tr("Every 10 minutes")}; }
    int everyIndex() const { return m_every; }
    /// The book's id, by which another device joins the job.
    QString jobId() const { return m_jobId; }
    /// Why nothing can be exchanged, "" when it can.
    QString missing() const;
    bool isRunning() const { return m_work.isRunning(); }
    QString progress() const;
    QString done() const { return m_done; }
    QString trouble() const { return m_trouble; }
    /// What the server gave that is not sound, one sentence each.
    RowList* refused() { return &m_refused; }

    /// Whether the book has no record yet, so that it can become a copy of a job.
    bool isEmpty() const { return m_isEmpty; }
    /// The jobs that the server shows to this login, after askJobs; a row's id is the job's.
    RowList* jobs() { return &m_jobs; }

    Q_INVOKABLE void pickEvery(int index);
    Q_INVOKABLE void exchange();
    /// Lists the jobs of the server.
    Q_INVOKABLE void askJobs();
    /// Makes the empty book a copy of a job of the list.
    Q_INVOKABLE void join(const QString& job);
    /// Takes a bundle file in, as from a server.
    Q_INVOKABLE void takeFile(const QUrl& file);
    Q_INVOKABLE void stop();

signals:
    void changed();

private:
    void readDrafts();
    void saveDraft(const char* step, const QString& text);
    void begin(std::function<ServerOutcome(ServerProgress& progress, const std::atomic<bool>& stop)> work);
    void tell();
    void tellJobs();

    Session* m_session;
    QString m_book, m_jobId, m_address, m_done, m_trouble;
    int m_every = 0;
    bool m_isEmpty = false, m_isListing = false;
    RowList m_refused, m_jobs;
    ServerProgress m_progress;
    ServerOutcome m_outcome;                  ///< of the work, when it ended
    std::vector<share::ServerJob> m_listed;   ///< the same
    QTimer m_clock;
    BesideWork m_work;  ///< the last member: it ends before what it writes to
};

}  // namespace groundcount::view
