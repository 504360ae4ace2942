#include "frame_gate.h"

#include <QQuickWindow>

namespace groundcount::paint {

void FrameGate::itemChange(ItemChange change, const ItemChangeData& value)
{
    if (change == ItemSceneChange && !m_open) {
        disconnect(m_frames);
        // queued: the frame is out of the way, whichever thread draws
        if (value.window) {
            m_frames = connect(value.window, &QQuickWindow::frameSwapped, this, &FrameGate::letThrough, Qt::QueuedConnection);
            value.window->update();
        }
    }
    QQuickItem::itemChange(change, value);
}

void FrameGate::letThrough()
{
    if (m_open)
        return;
    disconnect(m_frames);
    m_open = true;
    emit openChanged();
}

}  // namespace groundcount::paint
