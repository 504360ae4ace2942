#include "map/map_gesture.h"

#include <algorithm>
#include <cmath>

namespace groundcount::map {
namespace {

double apart(QPointF a, QPointF b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

bool sameIds(const QList<Contact>& a, const QList<Contact>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Contact& x, const Contact& y) { return x.id == y.id; });
}

}  // namespace

GestureStep MapGesture::update(QList<Contact> contacts, qint64 nowMs)
{
    std::sort(contacts.begin(), contacts.end(), [](const Contact& a, const Contact& b) { return a.id < b.id; });
    const QList<Contact> before = m_contacts;
    m_contacts = contacts;
    if (before.isEmpty()) {
        if (contacts.isEmpty())
            return {};
        m_start = contacts.first().at;
        m_moved = false;
        m_held = false;
        m_several = contacts.size() > 1;
        return {};
    }
    if (contacts.isEmpty()) {
        const bool tap = !m_moved && !m_several && !m_held;
        m_moved = false;
        if (!tap)
            return {};
        const bool again = nowMs - m_lastTapMs <= doubleTapMs && apart(m_lastTapAt, m_start) <= doubleTapPx;
        m_lastTapMs = again ? kNever : nowMs;
        m_lastTapAt = m_start;
        return {again ? GestureStep::Kind::DoubleTap : GestureStep::Kind::Tap, m_start, {}, 1.0};
    }
    if (contacts.size() > 1)
        m_several = true;
    if (!sameIds(before, contacts))
        return {};
    if (contacts.size() == 1) {
        if (m_held)
            return {};
        const QPointF now = contacts.first().at;
        QPointF from = before.first().at;
        if (!m_moved && !m_several) {
            if (apart(now, m_start) <= slopPx)
                return {};
            from = m_start;
        }
        m_moved = true;
        return {GestureStep::Kind::Pan, now, now - from, 1.0};
    }
    const QPointF was = (before[0].at + before[1].at) / 2;
    const QPointF now = (contacts[0].at + contacts[1].at) / 2;
    const double wasApart = apart(before[0].at, before[1].at);
    const double nowApart = apart(contacts[0].at, contacts[1].at);
    m_moved = true;
    // Fingers closer than a fingertip give no meaningful ratio.
    const double factor = wasApart > 8 && nowApart > 8 ? nowApart / wasApart : 1.0;
    return {GestureStep::Kind::Pinch, now, now - was, factor};
}

bool MapGesture::hold()
{
    if (m_contacts.size() != 1 || m_moved || m_several || m_held)
        return false;
    m_held = true;
    return true;
}

void MapGesture::cancel()
{
    m_contacts.clear();
    m_moved = false;
    m_held = false;
    m_several = false;
}

}  // namespace groundcount::map
