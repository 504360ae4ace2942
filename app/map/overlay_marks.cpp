#include "map/overlay_marks.h"

#include "map/label_place.h"
#include "map/line_clip.h"
#include "map/overlay_words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace groundcount::map {
namespace {

constexpr double kLeastRingPx = 6; // a smaller ring says nothing and its word would only crowd the map

QPen pen(const QColor& colour, double width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

class Marks {
public:
    Marks(QPainter& painter, const OverlayJob& job, LabelPlacer& placer)
        : m_painter(painter), m_job(job), m_look(job.look), m_imagery(static_cast<bool>(job.scene->ground)),
          m_field(QPointF(0, 0), job.window.size), m_placer(placer)
    {
    }

    void stationTicks();
    void obstacles();
    void rings();

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
    LabelPlacer& m_placer;
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

}  // namespace

void paintMarks(QPainter& painter, const OverlayJob& job)
{
    const QRectF field(QPointF(0, 0), job.window.size);
    LabelPlacer placer(painter, job.look, field, static_cast<bool>(job.scene->ground));
    for (const QRectF& box : job.keepClear)
        placer.keepClear(box);
    const double half = job.symbolPx / 2 + 2;
    for (const PlacedSymbol& symbol : job.symbols)
        placer.keepClear(QRectF(symbol.at - QPointF(half, half), QSizeF(2 * half, 2 * half)));

    Marks marks(painter, job, placer);
    OverlayWords words(job, placer);
    marks.stationTicks();
    marks.obstacles();
    words.points();
    marks.rings();
    words.areas();
    words.obstacles();
    words.free();
    words.stations();
}

}  // namespace groundcount::map
