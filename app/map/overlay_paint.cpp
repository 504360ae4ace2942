// Longer than 250 lines: one picture, painted from the ground up.
#include "map/overlay_job.h"

#include "map/label_place.h"
#include "map/line_clip.h"
#include "map/overlay_marks.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace groundcount::map {
namespace {

constexpr double kHatchPeriod = 9.0;
constexpr double kStipplePeriod = 11.0;
constexpr double kStippleRadius = 1.3;
constexpr double kEdgeSlack = 40.0; // strokes and joins this far off the picture may still show

QPen pen(const QColor& colour, double width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

class Sheet {
public:
    Sheet(QPainter& painter, const OverlayJob& job)
        : m_painter(painter), m_job(job), m_look(job.look), m_imagery(static_cast<bool>(job.scene->ground)),
          m_field(QRectF(QPointF(0, 0), job.window.size).adjusted(-kEdgeSlack, -kEdgeSlack, kEdgeSlack, kEdgeSlack))
    {
    }

    void slopes();
    void fills();
    void edges();
    void lines();

private:
    QPolygonF onScreen(const MapRun& run) const
    {
        QPolygonF line;
        line.reserve(static_cast<qsizetype>(run.size()));
        for (const MapVertex& v : run)
            line.append(m_job.window.toScreen(v.east, v.north));
        return line;
    }
    void stroke(const QPolygonF& line, const QPen& with);
    QPainterPath filled(const MapArea& area) const;
    void hatch(const QPainterPath& path, const QColor& colour);
    void stipple(const QPainterPath& path);
    QPointF anchor(double period) const;

    QPainter& m_painter;
    const OverlayJob& m_job;
    const MapLook& m_look;
    bool m_imagery;
    QRectF m_field;
};

void Sheet::stroke(const QPolygonF& line, const QPen& with)
{
    for (const ClippedRun& run : clipLine(line, m_field)) {
        if (m_imagery) {
            // Hairlines get a fainter edge, or the edge would read as the line.
            const bool thin = with.widthF() < 1.3 * m_look.strokeScale;
            m_painter.setPen(pen(QColor(255, 255, 255, thin ? 110 : 200), with.widthF() + (thin ? 1.2 : 2.4)));
            m_painter.drawPolyline(run.points);
        }
        QPen dashed = with;
        if (with.style() != Qt::SolidLine)
            dashed.setDashOffset(run.startsAt / with.widthF());
        m_painter.setPen(dashed);
        m_painter.drawPolyline(run.points);
    }
}

QPainterPath Sheet::filled(const MapArea& area) const
{
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const MapRun& ring : area.rings) {
        path.addPolygon(clipPolygon(onScreen(ring), m_field));
        path.closeSubpath();
    }
    return path;
}

/// Where the pattern starts, so that it stays with the ground when the map is panned.
QPointF Sheet::anchor(double period) const
{
    const QPointF origin = m_job.window.toScreen(0, 0);
    return {std::fmod(origin.x(), period), std::fmod(origin.y(), period)};
}

void Sheet::hatch(const QPainterPath& path, const QColor& colour)
{
    if (path.isEmpty())
        return;
    m_painter.save();
    m_painter.setClipPath(path);
    if (m_imagery)
        m_painter.fillPath(path, QColor(255, 255, 255, 110));
    m_painter.setPen(pen(colour, 1.4 * m_look.strokeScale));
    const QRectF box = path.boundingRect();
    // x + y is constant along a line of the hatch; lines are kHatchPeriod apart, measured square to them.
    const double pitch = kHatchPeriod * std::sqrt(2.0);
    const QPointF from = anchor(pitch);
    const double phase = from.x() + from.y();
    double sum = phase + std::floor((box.left() + box.top() - phase) / pitch) * pitch;
    for (; sum <= box.right() + box.bottom(); sum += pitch)
        m_painter.drawLine(QPointF(sum - box.top(), box.top()), QPointF(sum - box.bottom(), box.bottom()));
    m_painter.restore();
}

void Sheet::stipple(const QPainterPath& path)
{
    if (path.isEmpty())
        return;
    m_painter.save();
    m_painter.setClipPath(path);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_imagery ? m_look.symbols.ink : m_look.ink2);
    const QRectF box = path.boundingRect().intersected(m_field);
    const QPointF from = anchor(2 * kStipplePeriod);
    const auto first = [](double low, double start) { return std::floor((low - start) / kStipplePeriod) - 1; };
    for (double row = first(box.top(), from.y()); from.y() + row * kStipplePeriod <= box.bottom() + kStipplePeriod; ++row) {
        const double shift = std::fmod(std::abs(row), 2.0) * kStipplePeriod / 2;
        for (double column = first(box.left(), from.x()); from.x() + column * kStipplePeriod <= box.right() + kStipplePeriod; ++column) {
            m_painter.drawEllipse(QPointF(from.x() + column * kStipplePeriod + shift, from.y() + row * kStipplePeriod), kStippleRadius,
                                  kStippleRadius);
        }
    }
    m_painter.restore();
}

void Sheet::slopes()
{
    constexpr double kSpacing = 10.0;
    m_painter.setPen(pen(m_imagery ? QColor(255, 255, 255, 170) : m_look.hair, m_look.strokeScale));
    for (const MapSlope& slope : m_job.scene->slopes) {
        const std::size_t n = std::min(slope.crest.size(), slope.toe.size());
        const QPolygonF crest = onScreen(slope.crest);
        const QPolygonF toe = onScreen(slope.toe);
        double carry = 0;
        bool longOne = true;
        for (qsizetype i = 1; i < static_cast<qsizetype>(n); ++i) {
            const QLineF top(crest[i - 1], crest[i]);
            const QLineF foot(toe[i - 1], toe[i]);
            const QRectF box = QPolygonF({top.p1(), top.p2(), foot.p1(), foot.p2()}).boundingRect();
            if (!box.adjusted(-1, -1, 1, 1).intersects(m_field) || top.length() > 64 * m_field.width()) {
                carry = 0;
                continue;
            }
            for (double at = carry; at < top.length(); at += kSpacing, longOne = !longOne) {
                const QPointF head = top.pointAt(at / top.length());
                const QPointF end = foot.pointAt(at / top.length());
                m_painter.drawLine(head, longOne ? end : head + (end - head) * 0.5);
                carry = at + kSpacing - top.length();
            }
        }
    }
}

void Sheet::fills()
{
    for (const MapArea& area : m_job.scene->areas) {
        if (!onLift(area.lift, m_job.lift))
            continue;
        if (area.style == AreaStyle::Untested)
            stipple(filled(area));
        if (area.style == AreaStyle::OpenFailure) {
            if (!m_imagery)
                m_painter.fillPath(filled(area), m_look.symbols.paper);
            hatch(filled(area), m_look.symbols.fail);
        }
    }
}

void Sheet::edges()
{
    const double s = m_look.strokeScale;
    const auto draw = [&](AreaStyle style, QPen with) {
        for (const MapArea& area : m_job.scene->areas) {
            if (area.style != style || !onLift(area.lift, m_job.lift))
                continue;
            for (const MapRun& ring : area.rings) {
                QPolygonF line = onScreen(ring);
                // Two vertices are a dividing line. A ring runs a little past its start, so that the closing corner is a join too.
                if (line.size() > 2) {
                    line.append(line.first());
                    line.append(line[0] + (line[1] - line[0]) * 0.02);
                }
                stroke(line, with);
            }
        }
    };
    QPen dashed = pen(m_look.symbols.ink, 1.6 * s);
    dashed.setDashPattern({5, 3});
    draw(AreaStyle::Lot, pen(m_look.symbols.ink, 1.4 * s));
    draw(AreaStyle::Sublot, dashed);
    draw(AreaStyle::ChosenLot, pen(m_look.symbols.ink, 3.2 * s));
    draw(AreaStyle::OpenFailure, pen(m_look.symbols.fail, 2.6 * s));
}

void Sheet::lines()
{
    const double s = m_look.strokeScale;
    for (const MapLine& line : m_job.scene->lines) {
        QPen with;
        switch (line.style) {
        case LineStyle::Alignment:
            with = pen(m_look.symbols.ink, 1.2 * s);
            with.setDashPattern({16, 4, 3, 4});
            break;
        case LineStyle::Limit:
            with = pen(m_look.ink2, 1.0 * s);
            with.setDashPattern({10, 4, 2, 4});
            break;
        case LineStyle::Edge: with = pen(m_look.ink2, 1.2 * s); break;
        case LineStyle::Path:
            with = pen(m_look.symbols.ink, 2.4 * s);
            with.setDashPattern({4, 3});
            break;
        case LineStyle::Joint:
            with = pen(m_look.symbols.fail, 2.2 * s);
            with.setDashPattern({1, 2});
            break;
        }
        stroke(onScreen(line.run), with);
    }
}

}  // namespace

QImage paintOverlay(const OverlayJob& job)
{
    const QSize px = (job.window.size * job.devicePixelRatio).toSize();
    if (!job.scene || px.isEmpty())
        return {};
    QImage image(px, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(job.devicePixelRatio);
    image.fill(job.look.symbols.paper);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    if (job.scene->ground) {
        const QImage ground = job.scene->ground(job.window, px);
        if (!ground.isNull())
            painter.drawImage(QRectF(QPointF(0, 0), job.window.size), ground);
    }
    Sheet sheet(painter, job);
    sheet.slopes();
    sheet.fills();
    sheet.edges();
    sheet.lines();
    paintMarks(painter, job);
    painter.end();
    image.reinterpretAsFormat(QImage::Format_RGB32);  // every pixel is opaque: renderers then copy it and blend nothing
    return image;
}

}  // namespace groundcount::map
