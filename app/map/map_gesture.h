#pragma once

#include <QList>
#include <QPointF>

namespace groundcount::map {

/// One finger (or the mouse) on the glass.
struct Contact {
    int id = 0;
    QPointF at;
};

/// What the fingers just meant.
struct GestureStep {
    enum class Kind { None, Pan, Pinch, Tap, DoubleTap };
    Kind kind = Kind::None;
    QPointF at;          ///< tap: where; pinch: the centre between the fingers
    QPointF pan;         ///< how far the ground follows, px
    double factor = 1.0; ///< pinch: distance now over distance before
};

/// Turns contacts into steps. Pure: time comes in with each call. A gloved finger wanders, so a contact becomes a pan only after
/// `slopPx`; two contacts are a pinch at once; when one of them lifts, the other goes on as a pan without a jump.
class MapGesture {
public:
    double slopPx = 10;
    qint64 doubleTapMs = 320;
    double doubleTapPx = 40;

    /// @param contacts those on the glass now, any order; empty after the last has lifted
    /// @param nowMs any steady clock
    GestureStep update(QList<Contact> contacts, qint64 nowMs);

    /// Called when the hold interval has passed since the first contact. @return true if this is a long press; no tap follows.
    bool hold();
    QPointF startedAt() const { return m_start; }
    bool isActive() const { return !m_contacts.isEmpty(); }
    /// True once the finger moves the map, so that no list around it may take the touch away.
    bool isMoving() const { return m_moved; }
    /// The tap just reported does not count towards a double tap (it hit something).
    void forgetTap() { m_lastTapMs = kNever; }
    /// The system took the contacts away.
    void cancel();

private:
    static constexpr qint64 kNever = -1000000000;
    QList<Contact> m_contacts;
    QPointF m_start;
    QPointF m_lastTapAt;
    qint64 m_lastTapMs = kNever;
    bool m_moved = false;
    bool m_several = false;
    bool m_held = false;
};

}  // namespace groundcount::map
