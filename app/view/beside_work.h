#pragma once

#include <QObject>
#include <QTimer>

#include <atomic>
#include <functional>
#include <string>
#include <thread>

namespace groundcount::view {

/// One piece of work beside the pages; a new one ends the one before it, and so does the end of the object.
class BesideWork : public QObject {
    Q_OBJECT
public:
    explicit BesideWork(QObject* parent = nullptr);
    ~BesideWork() override;

    /// @param work runs on a thread of its own and ends soon after `stop` is set; touches nothing of the GUI thread
    void start(std::function<void(const std::atomic<bool>& stop)> work);
    /// Ends the work and tells nobody.
    void stop();
    /// Asks the work to end and goes on; `ended` tells when it did.
    void askToStop() { m_stop = true; }
    bool isStopping() const { return m_stop; }
    bool isRunning() const { return m_thread.joinable(); }

signals:
    /// Some times a second while the work goes on; on the GUI thread.
    void going();
    /// The work came to its own end; on the GUI thread.
    void ended();

private:
    void look();

    std::thread m_thread;
    std::atomic<bool> m_stop = false, m_isOver = false;
    QTimer m_watch;
};

/// The program that reads foreign files as a child ("read-site", "read-background"); by default this one.
std::string foreignReader();
void setForeignReader(const std::string& program);

}  // namespace groundcount::view
