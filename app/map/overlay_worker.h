#pragma once

#include "map/overlay_job.h"

#include <QImage>
#include <QObject>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

namespace groundcount::map {

/// Paints overlays one at a time off the GUI thread. A newer request replaces one that has not begun.
class OverlayWorker : public QObject {
    Q_OBJECT
public:
    explicit OverlayWorker(QObject* parent = nullptr);
    ~OverlayWorker() override;

    void request(OverlayJob job);
    bool isIdle() const { return !m_busy; }

signals:
    /// On the GUI thread, with the window the picture shows.
    void painted(const QImage& image, const groundcount::map::MapWindow& window);
    /// From the worker's own thread: a picture is done.
    void over();

private:
    void work(const std::stop_token& stop);
    void finish();

    std::optional<OverlayJob> m_next;  // waits for the one that is being painted
    bool m_busy = false;
    // what goes from thread to thread, under the lock
    std::mutex m_lock;
    std::condition_variable_any m_woken;
    std::optional<OverlayJob> m_job;
    QImage m_image;
    MapWindow m_window;
    std::jthread m_thread;  // last: it ends before what it works with
};

}  // namespace groundcount::map
