#include "map/map_item.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPolygonF>
#include <QTouchEvent>
#include <QWheelEvent>

#include <cmath>

namespace groundcount::map {
namespace {

constexpr double kTapZoom = 2.0;
constexpr double kClusterZoom = 3.0;
constexpr double kKeyZoom = 1.5;
constexpr double kWheelZoomPerDegree = 0.0122; // 15 degrees, one notch, is a factor of 1.2: ln 1.2 / 15

}  // namespace

void MapItem::takeContacts(const QList<Contact>& contacts, qint64 ms)
{
    const bool wasActive = m_gesture.isActive();
    const GestureStep step = m_gesture.update(contacts, ms);
    if (!wasActive && m_gesture.isActive())
        m_holdTimer.start(m_holdInterval, this);
    if (m_gesture.isMoving() || contacts.size() != 1)
        m_holdTimer.stop();
    if (m_gesture.isMoving()) {
        // From here on a list or a swipe view around the map may not take the finger away.
        setKeepTouchGrab(true);
        setKeepMouseGrab(true);
    }
    switch (step.kind) {
    case GestureStep::Kind::None: return;
    case GestureStep::Kind::Pan: m_view.pan(step.pan); break;
    case GestureStep::Kind::Pinch:
        m_view.pan(step.pan);
        m_view.zoom(step.factor, step.at, leastScale(), mostScale());
        break;
    case GestureStep::Kind::Tap: tap(step.at); return;
    case GestureStep::Kind::DoubleTap: m_view.zoom(kTapZoom, step.at, leastScale(), mostScale()); break;
    }
    m_fitWanted = false;
    viewMoved();
    emit movedByHand();
}

void MapItem::tap(QPointF at)
{
    forceActiveFocus(Qt::MouseFocusReason);
    // A cluster stands for its points: it opens first, a point hidden in it is not picked.
    if (zoomIntoCluster(at)) {
        m_gesture.forgetTap();
        return;
    }
    const int index = m_index->nearest(m_view, at, m_pickRadius);
    const QString id = index >= 0 ? m_scene->names.id(static_cast<std::size_t>(index)) : obstacleAt(at);
    if (!id.isEmpty()) {
        m_gesture.forgetTap();
        emit picked(id);
        return;
    }
    emit tappedAt(m_view.eastAt(at.x()), m_view.northAt(at.y()));
}

bool MapItem::zoomIntoCluster(QPointF at)
{
    const PlacedSymbol* nearest = nullptr;
    double best = m_pickRadius * m_pickRadius;
    for (const PlacedSymbol& symbol : m_symbols) {
        const QPointF away = symbol.at - at;
        const double square = QPointF::dotProduct(away, away);
        if (square <= best) {
            best = square;
            nearest = &symbol;
        }
    }
    if (!nearest || nearest->point >= 0)
        return false;
    m_view.zoom(kClusterZoom, nearest->at, leastScale(), mostScale());
    m_fitWanted = false;
    viewMoved();
    emit movedByHand();
    return true;
}

QString MapItem::obstacleAt(QPointF at) const
{
    for (auto it = m_scene->obstacles.rbegin(); it != m_scene->obstacles.rend(); ++it) {
        QPolygonF line;
        for (const MapVertex& v : it->outline)
            line.append(m_view.toScreen(v.east, v.north));
        const QPointF away = line.boundingRect().center() - at;
        if (!line.isEmpty() && (line.containsPoint(at, Qt::OddEvenFill) || std::hypot(away.x(), away.y()) <= m_pickRadius))
            return it->id;
    }
    return {};
}

void MapItem::releaseContacts()
{
    m_holdTimer.stop();
    setKeepTouchGrab(false);
    setKeepMouseGrab(false);
}

void MapItem::touchEvent(QTouchEvent* event)
{
    if (event->type() == QEvent::TouchCancel) {
        m_gesture.cancel();
        releaseContacts();
        return;
    }
    QList<Contact> contacts;
    for (const QEventPoint& point : event->points()) {
        if (point.state() != QEventPoint::Released)
            contacts.append({point.id(), point.position()});
    }
    takeContacts(contacts, static_cast<qint64>(event->timestamp()));
    if (contacts.isEmpty())
        releaseContacts();
    event->accept();
}

void MapItem::touchUngrabEvent()
{
    m_gesture.cancel();
    releaseContacts();
}

void MapItem::mousePressEvent(QMouseEvent* event)
{
    takeContacts({{0, event->position()}}, static_cast<qint64>(event->timestamp()));
    event->accept();
}

void MapItem::mouseMoveEvent(QMouseEvent* event)
{
    takeContacts({{0, event->position()}}, static_cast<qint64>(event->timestamp()));
}

void MapItem::mouseReleaseEvent(QMouseEvent* event)
{
    takeContacts({}, static_cast<qint64>(event->timestamp()));
    releaseContacts();
}

void MapItem::mouseUngrabEvent()
{
    m_gesture.cancel();
    releaseContacts();
}

void MapItem::wheelEvent(QWheelEvent* event)
{
    const double degrees = event->angleDelta().y() / 8.0;
    m_view.zoom(std::exp(degrees * kWheelZoomPerDegree), event->position(), leastScale(), mostScale());
    m_fitWanted = false;
    viewMoved();
    emit movedByHand();
    event->accept();
}

bool MapItem::event(QEvent* event)
{
    if (event->type() == QEvent::NativeGesture) {
        auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            m_view.zoom(1.0 + gesture->value(), gesture->position(), leastScale(), mostScale());
            m_fitWanted = false;
            viewMoved();
            emit movedByHand();
            return true;
        }
    }
    return QQuickItem::event(event);
}

void MapItem::keyPressEvent(QKeyEvent* event)
{
    const double across = width() / 4;
    const double down = height() / 4;
    switch (event->key()) {
    case Qt::Key_Left: m_view.pan({across, 0}); break;
    case Qt::Key_Right: m_view.pan({-across, 0}); break;
    case Qt::Key_Up: m_view.pan({0, down}); break;
    case Qt::Key_Down: m_view.pan({0, -down}); break;
    case Qt::Key_Plus:
    case Qt::Key_Equal: zoomBy(kKeyZoom); break;
    case Qt::Key_Minus: zoomBy(1 / kKeyZoom); break;
    case Qt::Key_Home: fitAll(); break;
    case Qt::Key_Return:
    case Qt::Key_Enter: tap(QPointF(width() / 2, height() / 2)); break;
    default: QQuickItem::keyPressEvent(event); return;
    }
    m_fitWanted = false;
    viewMoved();
    emit movedByHand();
    event->accept();
}

void MapItem::timerEvent(QTimerEvent* event)
{
    if (event->timerId() == m_holdTimer.timerId()) {
        m_holdTimer.stop();
        if (m_gesture.hold()) {
            setKeepTouchGrab(true);
            setKeepMouseGrab(true);
            const QPointF at = m_gesture.startedAt();
            emit heldAt(m_view.eastAt(at.x()), m_view.northAt(at.y()));
        }
    } else if (event->timerId() == m_settleTimer.timerId()) {
        m_settleTimer.stop();
        m_isZooming = false;
        polish();
    } else {
        QQuickItem::timerEvent(event);
    }
}

}  // namespace groundcount::map
