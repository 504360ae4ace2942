#include "map/overlay_worker.h"

#include <utility>

namespace groundcount::map {

OverlayWorker::OverlayWorker(QObject* parent) : QObject(parent)
{
    connect(this, &OverlayWorker::over, this, &OverlayWorker::finish, Qt::QueuedConnection);
}

OverlayWorker::~OverlayWorker()
{
    m_thread.request_stop();
    if (m_thread.joinable())
        m_thread.join();  // while there is still somebody to say `over`
}

void OverlayWorker::request(OverlayJob job)
{
    if (m_busy) {
        m_next = std::move(job);
        return;
    }
    m_busy = true;
    {
        const std::lock_guard hold(m_lock);
        m_job = std::move(job);
    }
    if (m_thread.joinable())
        m_woken.notify_one();
    else
        m_thread = std::jthread([this](const std::stop_token& stop) { work(stop); });
}

void OverlayWorker::work(const std::stop_token& stop)
{
    for (;;) {
        std::optional<OverlayJob> job;
        {
            std::unique_lock hold(m_lock);
            if (!m_woken.wait(hold, stop, [this] { return m_job.has_value(); }))
                return;
            job = std::exchange(m_job, std::nullopt);
        }
        QImage image = paintOverlay(*job);
        {
            const std::lock_guard hold(m_lock);
            m_image = std::move(image);
            m_window = job->window;
        }
        job.reset();
        emit over();
    }
}

void OverlayWorker::finish()
{
    QImage image;
    MapWindow window;
    {
        const std::lock_guard hold(m_lock);
        image = std::exchange(m_image, QImage());
        window = m_window;
    }
    m_busy = false;
    if (m_next)
        request(*std::exchange(m_next, std::nullopt));
    emit painted(image, window);
}

}  // namespace groundcount::map
