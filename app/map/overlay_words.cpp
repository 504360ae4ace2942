#include "map/overlay_words.h"

#include "map/line_clip.h"

#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace groundcount::map {
namespace {

constexpr double kLotPx = 22;

struct Stretch {
    double from;
    double to;
};

/// The widest part of the polygon at this height; its whole width where it does not reach.
Stretch widestStretch(const QPolygonF& polygon, double y)
{
    std::vector<double> crossings;
    for (qsizetype i = 0; i < polygon.size(); ++i) {
        const QPointF a = polygon[i];
        const QPointF b = polygon[(i + 1) % polygon.size()];
        if ((a.y() < y) != (b.y() < y))
            crossings.push_back(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
    }
    std::sort(crossings.begin(), crossings.end());
    Stretch best{polygon.boundingRect().left(), polygon.boundingRect().right()};
    double widest = -1;
    for (std::size_t i = 1; i < crossings.size(); i += 2) {
        if (crossings[i] - crossings[i - 1] > widest) {
            widest = crossings[i] - crossings[i - 1];
            best = {crossings[i - 1], crossings[i]};
        }
    }
    return best;
}

QPointF insidePlace(const QPolygonF& polygon, double y)
{
    const Stretch stretch = widestStretch(polygon, y);
    return {(stretch.from + stretch.to) / 2, y};
}

}  // namespace

void OverlayWords::obstacles()
{
    for (const MapObstacle& obstacle : m_job.scene->obstacles) {
        QPolygonF outline;
        for (const MapVertex& v : obstacle.outline)
            outline.append(at(v));
        const QRectF box = outline.boundingRect();
        if (obstacle.label.isEmpty() || !QRectF(QPointF(0, 0), m_job.window.size).contains(box.center()))
            continue;
        const double gap = std::max(14.0, box.width() / 2 + 6);
        // A long name on a narrow screen: a side where all of it can be seen comes before one that the edge cuts.
        bool isWritten = false;
        for (const Hang side : {Hang::RightOf, Hang::LeftOf, Hang::Below, Hang::Above})
            isWritten = isWritten || (m_job.inner.contains(LabelPlacer::boxOf(obstacle.label, strong(), box.center(), gap, side))
                                      && m_placer.write(obstacle.label, strong(), m_look.symbols.ink, box.center(), gap, {side}));
        if (!isWritten && !m_job.inner.contains(box.center()))
            m_placer.write(obstacle.label, strong(), m_look.symbols.ink, box.center(), gap, {Hang::RightOf, Hang::LeftOf});
    }
}

void OverlayWords::points()
{
    const auto rank = [this](const PlacedSymbol& s) {
        if (s.point == m_job.chosenPoint)
            return 0;
        switch (m_job.scene->points[static_cast<std::size_t>(s.point)].state) {
        case PointState::Fail: return 1;
        case PointState::Owed:
        case PointState::Waiting: return 2;
        default: return 3;
        }
    };
    std::vector<PlacedSymbol> order;
    std::copy_if(m_job.symbols.begin(), m_job.symbols.end(), std::back_inserter(order), [](const auto& s) { return s.point >= 0; });
    std::stable_sort(order.begin(), order.end(), [&](const auto& a, const auto& b) { return rank(a) < rank(b); });
    for (const PlacedSymbol& symbol : order) {
        const QString label = m_job.scene->names.label(static_cast<std::size_t>(symbol.point));
        const double gap = symbol.point == m_job.chosenPoint ? m_job.symbolPx / 2 + 10 : m_job.symbolPx / 2 + 6;
        m_placer.write(label, strong(), m_look.symbols.ink, symbol.at, gap, {Hang::RightOf, Hang::LeftOf, Hang::Below, Hang::Above});
    }
}

void OverlayWords::areas()
{
    const QFont font = mapFont(m_look, kLotPx, m_look.decidingWeight);
    for (const MapArea& area : m_job.scene->areas) {
        if (area.label.isEmpty() || area.rings.empty() || !onLift(area.lift, m_job.lift))
            continue;
        QPolygonF ring;
        for (const MapVertex& v : area.rings.front())
            ring.append(at(v));
        const QPolygonF seen = clipPolygon(ring, m_job.inner.adjusted(4, 4, -4, -4));
        if (seen.isEmpty())
            continue;
        const QRectF box = seen.boundingRect();
        const QPointF place = insidePlace(seen, box.center().y());
        // In the lot if it fits, else beside it; a lot smaller than its name goes without.
        if (box.height() < kLotPx)
            continue;
        const QRectF word = LabelPlacer::boxOf(area.label, font, QPointF(0, 0), 0, Hang::Centred);
        const auto fits = [&](QPointF centre) {
            for (const QPointF& corner : {word.topLeft(), word.topRight(), word.bottomLeft(), word.bottomRight()}) {
                if (!seen.containsPoint(centre + corner, Qt::OddEvenFill))
                    return false;
            }
            return true;
        };
        bool written = false;
        for (const double dy : {0.0, -1.4, 1.4, -2.8, 2.8, -4.2, 4.2}) {
            const QPointF centre = insidePlace(seen, place.y() + dy * kLotPx);
            if (!written && fits(centre))
                written = m_placer.write(area.label, font, m_look.symbols.ink, centre, 0, {Hang::Centred});
        }
        // A narrow lot has its name beside it, left first: stations stand on the right as a rule.
        for (const double dy : {0.0, -1.4, 1.4, -2.8, 2.8}) {
            if (written)
                break;
            const double y = place.y() + dy * kLotPx;
            const Stretch stretch = widestStretch(seen, y);
            written = m_placer.write(area.label, font, m_look.symbols.ink, QPointF(stretch.from, y), 10, {Hang::LeftOf})
                || m_placer.write(area.label, font, m_look.symbols.ink, QPointF(stretch.to, y), 10, {Hang::RightOf});
        }
    }
}

void OverlayWords::free()
{
    for (const MapLabel& label : m_job.scene->labels)
        m_placer.write(label.text, strong(), m_look.symbols.ink, at(label.at), 0, {Hang::Centred});
}

void OverlayWords::stations()
{
    const QFont font = mapFont(m_look, kWordPx, m_look.bodyWeight);
    for (const MapStation& station : m_job.scene->stations) {
        if (station.label.isEmpty())
            continue;
        const double bearing = station.bearingDegrees * std::numbers::pi / 180;
        const QPointF right(std::cos(bearing), std::sin(bearing));
        const QPointF out = right * station.labelOffset * m_job.window.pxPerUnit;
        const bool hangsRight = out.x() >= 0;
        // Where its side is taken, the word stands on the other side of the corridor, never in it.
        if (!m_placer.write(station.label, font, m_look.ink2, at(station.at) + out, 8, {hangsRight ? Hang::RightOf : Hang::LeftOf}))
            m_placer.write(station.label, font, m_look.ink2, at(station.at) - out, 8, {hangsRight ? Hang::LeftOf : Hang::RightOf});
    }
}

}  // namespace groundcount::map
