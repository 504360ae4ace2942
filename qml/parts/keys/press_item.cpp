#include "press_item.h"

namespace groundcount::keys {

namespace {

constexpr int kRepeatAfter = 300, kRepeatEach = 100;  // ms

}  // namespace

PressItem::PressItem(QQuickItem* parent) : QQuickItem(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptTouchEvents(true);
    setActiveFocusOnTab(true);
}

void PressItem::setText(const QString& text)
{
    if (m_text != text) {
        m_text = text;
        emit textChanged();
    }
}

void PressItem::setFocusPolicy(Qt::FocusPolicy policy)
{
    if (m_focusPolicy != policy) {
        m_focusPolicy = policy;
        setActiveFocusOnTab((policy & Qt::TabFocus) != 0);
        emit focusPolicyChanged();
    }
}

void PressItem::setLeftPadding(qreal padding)
{
    if (m_leftPadding != padding) {
        m_leftPadding = padding;
        layOut();
        emit paddingChanged();
    }
}

void PressItem::setRightPadding(qreal padding)
{
    if (m_rightPadding != padding) {
        m_rightPadding = padding;
        layOut();
        emit paddingChanged();
    }
}

void PressItem::setContentItem(QQuickItem* item)
{
    if (m_content == item) {
        return;
    }
    if (m_content) {
        m_content->disconnect(this);
        m_content->setParentItem(nullptr);
    }
    m_content = item;
    if (item) {
        item->setParentItem(this);
        connect(item, &QQuickItem::implicitWidthChanged, this, &PressItem::implicitContentWidthChanged);
        connect(item, &QQuickItem::implicitHeightChanged, this, &PressItem::implicitContentHeightChanged);
        layOut();
    }
    emit contentItemChanged();
    emit implicitContentWidthChanged();
    emit implicitContentHeightChanged();
}

void PressItem::layOut()
{
    if (m_content) {
        m_content->setPosition(QPointF(m_leftPadding, 0));
        m_content->setSize(QSizeF(qMax(0.0, width() - m_leftPadding - m_rightPadding), height()));
    }
}

void PressItem::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickItem::geometryChange(now, before);
    if (now.size() != before.size()) {
        layOut();
    }
}

void PressItem::itemChange(ItemChange change, const ItemChangeData& value)
{
    QQuickItem::itemChange(change, value);
    if ((change == ItemVisibleHasChanged || change == ItemEnabledHasChanged) && !value.boolValue) {
        cancel();
    }
}

void PressItem::setPressed(bool pressed)
{
    if (m_pressed != pressed) {
        m_pressed = pressed;
        emit pressedChanged();
    }
}

void PressItem::setVisualFocus(bool visual)
{
    if (m_visualFocus != visual) {
        m_visualFocus = visual;
        emit visualFocusChanged();
    }
}

void PressItem::press()
{
    if ((m_focusPolicy & Qt::ClickFocus) != 0) {
        forceActiveFocus(Qt::MouseFocusReason);
    }
    m_repeated = false;
    setPressed(true);
    if (m_autoRepeat) {
        m_repeat.start(kRepeatAfter, this);
    }
}

/// A slot of `clicked` may take this item down, so nothing follows it.
void PressItem::release()
{
    const bool counts = m_pressed && !m_repeated;
    cancel();
    if (counts) {
        emit clicked();
    }
}

void PressItem::cancel()
{
    m_finger = kNoFinger;
    m_repeat.stop();
    setPressed(false);
}

void PressItem::mousePressEvent(QMouseEvent*)
{
    press();
}

void PressItem::mouseMoveEvent(QMouseEvent* event)
{
    setPressed(contains(event->position()));
}

void PressItem::mouseReleaseEvent(QMouseEvent*)
{
    release();
}

/// The second press of two quick ones: each counts.
void PressItem::mouseDoubleClickEvent(QMouseEvent*)
{
    press();
}

void PressItem::mouseUngrabEvent()
{
    cancel();
}

void PressItem::touchEvent(QTouchEvent* event)
{
    if (event->type() == QEvent::TouchCancel) {
        cancel();
        return;
    }
    for (const QEventPoint& point : event->points()) {
        if (m_finger == kNoFinger && point.state() == QEventPoint::Pressed) {
            m_finger = point.id();
            press();
        } else if (m_finger != point.id()) {
            continue;
        } else if (point.state() == QEventPoint::Updated) {
            setPressed(contains(point.position()));
        } else if (point.state() == QEventPoint::Released) {
            release();
            return;
        }
    }
}

void PressItem::touchUngrabEvent()
{
    cancel();
}

void PressItem::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Space) {
        QQuickItem::keyPressEvent(event);
    } else if (!event->isAutoRepeat()) {
        m_repeated = false;
        setPressed(true);
    }
}

void PressItem::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Space) {
        QQuickItem::keyReleaseEvent(event);
    } else if (!event->isAutoRepeat()) {
        release();
    }
}

void PressItem::focusInEvent(QFocusEvent* event)
{
    QQuickItem::focusInEvent(event);
    const auto reason = event->reason();
    setVisualFocus(reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason || reason == Qt::ShortcutFocusReason);
}

void PressItem::focusOutEvent(QFocusEvent* event)
{
    QQuickItem::focusOutEvent(event);
    setVisualFocus(false);
    if (m_finger == kNoFinger) {
        cancel();
    }
}

void PressItem::timerEvent(QTimerEvent* event)
{
    if (event->timerId() != m_repeat.timerId()) {
        QQuickItem::timerEvent(event);
        return;
    }
    m_repeat.start(kRepeatEach, this);
    if (m_pressed) {
        m_repeated = true;
        emit clicked();
    }
}

}  // namespace groundcount::keys
