#pragma once

#include <QtQml/qqmlregistration.h>

#include <QQuickItem>

namespace groundcount::paint {

/// Shut until its window has shown a frame with it, then open for good: what a page can do without in its first frame waits behind it. A timer of 0 ms is no
/// such thing, it ends before the first frame. A window that is not seen shows no frame, and what waits for one is not missed.
class FrameGate : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool open READ isOpen NOTIFY openChanged)

public:
    using QQuickItem::QQuickItem;
    bool isOpen() const { return m_open; }

signals:
    void openChanged();

protected:
    void itemChange(ItemChange change, const ItemChangeData& value) override;

private:
    void letThrough();

    QMetaObject::Connection m_frames;
    bool m_open = false;
};

}  // namespace groundcount::paint
