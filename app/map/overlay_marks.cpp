#include "map/overlay_marks.h"

#include "map/label_place.h"
#include "map/line_clip.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace groundcount::map {
namespace {

constexpr double kWordPx = 16;
constexpr double kLotPx = 22;
constexpr double kLeastRingPx = 6; // a smaller ring says nothing and its word would only crowd the map

QPen pen(const QColor& colour, double width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

class Marks {
public:
    Marks(QPainter& painter, const OverlayJob& job)
        : m_painter(painter), m_job(job), m_look(job.look), m_imagery(static_cast<bool>(job.scene->ground)),
          m_field(QPointF(0, 0), job.window.size), m_placer(painter, job.look, m_field, m_imagery)
    {
        for (const QRectF& box : job.keepClear)
            m_placer.keepClear(box);
        const double half = job.symbolPx / 2 + 2;
        for (const PlacedSymbol& symbol : job.symbols)
            m_placer.keepClear(QRectF(symbol.at - QPointF(half, half), QSizeF(2 * half, 2 * half)));
    }

    void stationTicks();
    void obstacles();
    void rings();
    void obstacleWords();
    void pointWords();
    void areaWords();
    void freeWords();
    void stationWords();

private:
    QPointF at(const MapVertex& v) const { return m_job.window.toScreen(v.east, v.north); }
    QFont strong() const { return mapFont(m_look, kWordPx, m_look.strongWeight); }
    QColor knock() const { return m_imagery ? QColor(Qt::white) : m_look.symbols.paper; }
    void ringWord(const MapRing& ring, QPointF centre, double radius);
    QPolygonF outline(const MapObstacle& obstacle) const;

    QPainter& m_painter;
    const OverlayJob& m_job;
    const MapLook& m_look;
    bool m_imagery;
    QRectF m_field;
    LabelPlacer m_placer;
};

void Marks::stationTicks()
{
    constexpr double kLong = 10;
    constexpr double kShort = 5;
    for (const MapStation& station : m_job.scene->stations) {
        const QPointF p = at(station.at);
        if (!m_field.contains(p))
            continue;
        const double bearing = station.bearingDegrees * std::numbers::pi / 180;
        const QPointF across(std::cos(bearing), std::sin(bearing));
        const double half = station.label.isEmpty() ? kShort : kLong;
        m_painter.setPen(pen(m_look.symbols.ink, 1.8 * m_look.strokeScale));
        m_painter.drawLine(p - across * half, p + across * half);
    }
}

QPolygonF Marks::outline(const MapObstacle& obstacle) const
{
    QPolygonF line;
    for (const MapVertex& v : obstacle.outline)
        line.append(at(v));
    return line;
}

void Marks::obstacles()
{
    const QColor ink = m_look.symbols.ink;
    const double s = m_look.strokeScale;
    for (const MapObstacle& obstacle : m_job.scene->obstacles) {
        QPolygonF line = outline(obstacle);
        if (line.isEmpty() || !line.boundingRect().adjusted(-20, -20, 20, 20).intersects(m_field))
            continue;
        m_painter.setBrush(knock());
        m_painter.setPen(pen(ink, 2.0 * s));
        if (line.size() >= 3) {
            m_painter.drawPolygon(clipPolygon(line, m_field.adjusted(-40, -40, 40, 40)));
            // Two corners apart joined: a structure is crossed out, you cannot test there.
            if (obstacle.kind == ObstacleKind::Structure && line.size() == 4) {
                m_painter.setPen(pen(ink, 1.4 * s));
                m_painter.drawLine(line[0], line[2]);
                m_painter.drawLine(line[1], line[3]);
            }
            continue;
        }
        const QPointF p = line.first();
        switch (obstacle.kind) {
        case ObstacleKind::Gauge:
            m_painter.drawRect(QRectF(p - QPointF(9, 6), QSizeF(18, 12)));
            m_painter.setBrush(ink);
            m_painter.drawEllipse(p - QPointF(4, 0), 2.2, 2.2);
            break;
        case ObstacleKind::Vehicle:
            m_painter.drawRect(QRectF(p - QPointF(11, 6), QSizeF(22, 12)));
            m_painter.drawLine(p + QPointF(5, -6), p + QPointF(5, 6));
            break;
        case ObstacleKind::Structure:
        case ObstacleKind::Other:
            m_painter.drawRect(QRectF(p - QPointF(8, 8), QSizeF(16, 16)));
            m_painter.drawLine(p - QPointF(8, 8), p + QPointF(8, 8));
            m_painter.drawLine(p - QPointF(8, -8), p + QPointF(8, -8));
            break;
        }
        m_placer.keepClear(QRectF(p - QPointF(12, 9), QSizeF(24, 18)));
    }
}

void Marks::rings()
{
    for (const MapRing& ring : m_job.scene->rings) {
        const QPointF centre = at(ring.at);
        const double radius = ring.radiusMetres / m_job.scene->metresPerUnit * m_job.window.pxPerUnit;
        const QRectF box(centre - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
        if (!box.intersects(m_field) || !(radius > 0))
            continue;
        if (ring.hatched && radius > kLeastRingPx) {
            QPainterPath path;
            path.addEllipse(box);
            m_painter.save();
            m_painter.setClipPath(path);
            m_painter.setClipRect(m_field, Qt::IntersectClip);
            m_painter.setPen(pen(m_look.ink2, 0.8 * m_look.strokeScale));
            const QRectF seen = box.intersected(m_field);
            for (double sum = std::floor((seen.left() + seen.top()) / 12) * 12; sum <= seen.right() + seen.bottom(); sum += 12)
                m_painter.drawLine(QPointF(sum - seen.top(), seen.top()), QPointF(sum - seen.bottom(), seen.bottom()));
            m_painter.restore();
        }
        m_painter.setBrush(Qt::NoBrush);
        if (m_imagery) {
            m_painter.setPen(pen(Qt::white, 4.5 * m_look.strokeScale));
            m_painter.drawEllipse(box);
        }
        m_painter.setPen(pen(m_look.symbols.ink, 2.2 * m_look.strokeScale));
        m_painter.drawEllipse(box);
        if (radius >= kLeastRingPx)
            ringWord(ring, centre, radius);
    }
    // Names keep out of small rings; a large one would leave them no room.
    for (const MapRing& ring : m_job.scene->rings) {
        const double radius = ring.radiusMetres / m_job.scene->metresPerUnit * m_job.window.pxPerUnit;
        if (radius > 0 && radius < 80)
            m_placer.keepClear(QRectF(at(ring.at) - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius)));
    }
}

void Marks::ringWord(const MapRing& ring, QPointF centre, double radius)
{
    constexpr double kLeader = 34;
    const QFont font = strong();
    const QColor ink = m_look.symbols.ink;
    // Leaders only to the right: there they meet the word; on the left they would meet the figure and read as a minus.
    for (const double degrees : {-24.0, 14.0, -48.0, 40.0, -4.0, 62.0, -68.0}) {
        const double a = degrees * std::numbers::pi / 180;
        const QPointF out(std::cos(a), std::sin(a));
        const QPointF edge = centre + out * radius;
        const QPointF end = edge + QPointF(kLeader, 0) + QPointF(0, out.y() * kLeader * 0.4);
        const QRectF box = LabelPlacer::boxOf(ring.word, font, end, 10, Hang::RightOf);
        if (!m_job.inner.contains(edge) || !m_job.inner.contains(box) || !m_placer.isFree(box))
            continue;
        m_painter.setPen(pen(knock(), 4.5));
        m_painter.drawLine(edge, end);
        m_painter.setPen(pen(ink, 1.8 * m_look.strokeScale));
        m_painter.drawLine(edge, end);
        m_placer.write(ring.word, font, ink, end, 10, {Hang::RightOf});
        return;
    }
    if (!m_placer.write(ring.word, font, ink, centre - QPointF(0, radius), 6, {Hang::Above, Hang::Below}))
        m_placer.write(ring.word, font, ink, centre + QPointF(0, radius), 6, {Hang::Below, Hang::Above});
}

void Marks::obstacleWords()
{
    for (const MapObstacle& obstacle : m_job.scene->obstacles) {
        const QRectF box = outline(obstacle).boundingRect();
        if (!obstacle.label.isEmpty() && m_field.contains(box.center()))
            m_placer.write(obstacle.label, strong(), m_look.symbols.ink, box.center(), std::max(14.0, box.width() / 2 + 6),
                           {Hang::RightOf, Hang::LeftOf});
    }
}

void Marks::pointWords()
{
    // What is chosen, then failures, then what is owed or waits, then the rest.
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
        const MapPoint& point = m_job.scene->points[static_cast<std::size_t>(symbol.point)];
        const double gap = symbol.point == m_job.chosenPoint ? m_job.symbolPx / 2 + 10 : m_job.symbolPx / 2 + 6;
        m_placer.write(point.label, strong(), m_look.symbols.ink, symbol.at, gap, {Hang::RightOf, Hang::LeftOf, Hang::Below, Hang::Above});
    }
}

struct Stretch {
    double from;
    double to;
};

/// The widest part of the polygon at this height; its whole width where it does not reach.
static Stretch widestStretch(const QPolygonF& polygon, double y)
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

static QPointF insidePlace(const QPolygonF& polygon, double y)
{
    const Stretch stretch = widestStretch(polygon, y);
    return {(stretch.from + stretch.to) / 2, y};
}

void Marks::areaWords()
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

void Marks::freeWords()
{
    for (const MapLabel& label : m_job.scene->labels)
        m_placer.write(label.text, strong(), m_look.symbols.ink, at(label.at), 0, {Hang::Centred});
}

void Marks::stationWords()
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

}  // namespace

void paintMarks(QPainter& painter, const OverlayJob& job)
{
    Marks marks(painter, job);
    marks.stationTicks();
    marks.obstacles();
    marks.pointWords();
    marks.rings();
    marks.areaWords();
    marks.obstacleWords();
    marks.freeWords();
    marks.stationWords();
}

}  // namespace groundcount::map
