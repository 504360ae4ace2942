#pragma once

#include "map/overlay_job.h"

#include <QObject>
#include <QThreadPool>

#include <optional>

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

private:
    void start(OverlayJob job);
    void finish(const QImage& image, const MapWindow& window);

    QThreadPool m_pool;
    std::optional<OverlayJob> m_next;
    bool m_busy = false;
};

}  // namespace groundcount::map
