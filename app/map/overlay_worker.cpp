#include "map/overlay_worker.h"

#include <utility>

namespace groundcount::map {

OverlayWorker::OverlayWorker(QObject* parent) : QObject(parent)
{
    m_pool.setMaxThreadCount(1);
}

OverlayWorker::~OverlayWorker()
{
    m_next.reset();
    m_pool.waitForDone();
}

void OverlayWorker::request(OverlayJob job)
{
    if (m_busy)
        m_next = std::move(job);
    else
        start(std::move(job));
}

void OverlayWorker::start(OverlayJob job)
{
    m_busy = true;
    m_pool.start([this, job = std::move(job)] {
        // The destructor waits for this, so `this` outlives the call; a queued call to a dead object is dropped by Qt.
        const QImage image = paintOverlay(job);
        QMetaObject::invokeMethod(this, [this, image, window = job.window] { finish(image, window); }, Qt::QueuedConnection);
    });
}

void OverlayWorker::finish(const QImage& image, const MapWindow& window)
{
    m_busy = false;
    if (m_next)
        start(*std::exchange(m_next, std::nullopt));
    emit painted(image, window);
}

}  // namespace groundcount::map
