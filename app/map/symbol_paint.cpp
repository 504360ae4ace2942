#include "map/symbol_paint.h"

#include <QPainter>

#include <array>
#include <cmath>

namespace groundcount::map {
namespace {

constexpr double kGrid = 24.0;
constexpr QPointF kCentre(12.0, 12.0);
constexpr double kKnockOut = 2.5;
constexpr double kRing = 2.2;
constexpr double kHalo = 1.1;
const QColor kHaloColour(0x17, 0x18, 0x1a);

/// Sets the painter up so that grid units land in the box.
void enterGrid(QPainter& painter, const QRectF& box)
{
    const double side = std::min(box.width(), box.height());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center());
    painter.scale(side / kGrid, side / kGrid);
    painter.translate(-kCentre);
}

QPen butt(const QColor& colour, double width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

/// A band of the given width outside the path, and its inside.
void paintBand(QPainter& painter, const QPainterPath& path, const QColor& colour, double width)
{
    painter.strokePath(path, QPen(colour, 2.0 * width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.fillPath(path, colour);
}

void paintGround(QPainter& painter, PointState state, const SymbolColours& colours, Ground ground)
{
    if (ground == Ground::List)
        return;
    const QPainterPath outline = stateOutline(state);
    if (ground == Ground::Drawn) {
        paintBand(painter, outline, colours.paper, kKnockOut);
        return;
    }
    paintBand(painter, outline, kHaloColour, kRing + kHalo);
    paintBand(painter, outline, Qt::white, kRing);
}

void paintOwed(QPainter& painter, const QColor& colour)
{
    constexpr double kTick = 6.5;
    painter.setPen(butt(colour, 2.6));
    painter.drawLine(QPointF(12, 0), QPointF(12, kTick));
    painter.drawLine(QPointF(12, kGrid - kTick), QPointF(12, kGrid));
    painter.drawLine(QPointF(0, 12), QPointF(kTick, 12));
    painter.drawLine(QPointF(kGrid - kTick, 12), QPointF(kGrid, 12));
}

}  // namespace

double reachBeyondBox(Ground ground)
{
    switch (ground) {
    case Ground::List: return 0.0;
    case Ground::Drawn: return kKnockOut;
    case Ground::Imagery: return kRing + kHalo;
    }
    return 0.0;
}

QColor stateColour(PointState state, const SymbolColours& colours)
{
    switch (state) {
    case PointState::Pass: return colours.pass;
    case PointState::Fail: return colours.fail;
    default: return colours.ink;
    }
}

QPainterPath stateOutline(PointState state)
{
    QPainterPath path;
    switch (state) {
    case PointState::Pass:
    case PointState::Waiting: path.addEllipse(kCentre, 11.0, 11.0); break;
    case PointState::Fail: path.addPolygon(QPolygonF({{12, 0.3}, {23.7, 12}, {12, 23.7}, {0.3, 12}})); break;
    case PointState::InformationOnly: path.addRect(6.5, 6.5, 11.0, 11.0); break;
    case PointState::Void: path.addEllipse(kCentre, 10.0, 10.0); break;
    case PointState::Owed: path.addEllipse(kCentre, 12.0, 12.0); break;
    }
    path.closeSubpath();
    return path;
}

void paintState(QPainter& painter, PointState state, const QRectF& box, const SymbolColours& colours, Ground ground)
{
    painter.save();
    enterGrid(painter, box);
    paintGround(painter, state, colours, ground);
    const QColor colour = stateColour(state, colours);
    // On a photograph the ground of a symbol is white in every theme, and so is what is cut out of it.
    const QColor cut = ground == Ground::Imagery ? QColor(Qt::white) : colours.paper;
    painter.setBrush(Qt::NoBrush);
    switch (state) {
    case PointState::Pass:
        painter.fillPath(stateOutline(state), colour);
        painter.setPen(butt(cut, 2.8));
        painter.drawPolyline(QPolygonF({{6.6, 12.6}, {10.5, 16.4}, {17.4, 8.2}}));
        break;
    case PointState::Fail:
        painter.fillPath(stateOutline(state), colour);
        painter.setPen(butt(cut, 3.0));
        painter.drawLine(QPointF(6.2, 12), QPointF(17.8, 12));
        break;
    case PointState::Waiting:
        painter.setPen(butt(colour, 3.0));
        painter.drawEllipse(kCentre, 9.5, 9.5);
        break;
    case PointState::InformationOnly:
        painter.fillPath(stateOutline(state), colour);
        break;
    case PointState::Void:
        painter.setPen(butt(colour, 1.8));
        painter.drawLine(QPointF(5, 5), QPointF(19, 19));
        painter.drawLine(QPointF(19, 5), QPointF(5, 19));
        break;
    case PointState::Owed: paintOwed(painter, colour); break;
    }
    painter.restore();
}

void paintBrackets(QPainter& painter, const QRectF& box, const SymbolColours& colours, Ground ground)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    constexpr double kStroke = 3.0;
    constexpr double kEdge = 1.75; // paper on both sides keeps the bracket off lines that run under it
    const QRectF line = box.adjusted(kStroke / 2 + kEdge, kStroke / 2 + kEdge, -kStroke / 2 - kEdge, -kStroke / 2 - kEdge);
    const double arm = line.width() * 0.27;
    QPainterPath path;
    const std::array<QPointF, 4> corners = {line.topLeft(), line.topRight(), line.bottomRight(), line.bottomLeft()};
    for (const QPointF& corner : corners) {
        const double inX = corner.x() < box.center().x() ? arm : -arm;
        const double inY = corner.y() < box.center().y() ? arm : -arm;
        path.moveTo(corner + QPointF(inX, 0));
        path.lineTo(corner);
        path.lineTo(corner + QPointF(0, inY));
    }
    QPen under(ground == Ground::Imagery ? QColor(Qt::white) : colours.paper, kStroke + 2 * kEdge, Qt::SolidLine, Qt::SquareCap,
               Qt::MiterJoin);
    if (ground != Ground::List)
        painter.strokePath(path, under);
    painter.strokePath(path, butt(colours.ink, kStroke));
    painter.restore();
}

void paintOwnPlace(QPainter& painter, const QRectF& box, const SymbolColours& colours, double headingDegrees)
{
    painter.save();
    enterGrid(painter, box);
    if (std::isfinite(headingDegrees)) {
        painter.save();
        painter.translate(kCentre);
        painter.rotate(headingDegrees);
        QPainterPath wedge;
        wedge.addPolygon(QPolygonF({{0, -18.5}, {6.2, -10.5}, {-6.2, -10.5}}));
        wedge.closeSubpath();
        paintBand(painter, wedge, Qt::white, 1.0);
        painter.fillPath(wedge, colours.ink);
        painter.restore();
    }
    QPainterPath disc;
    disc.addEllipse(kCentre, 9.0, 9.0);
    paintBand(painter, disc, Qt::white, 2.5);
    painter.fillPath(disc, colours.ink);
    painter.restore();
}

}  // namespace groundcount::map
