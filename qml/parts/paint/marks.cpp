#include "marks.h"

#include <QPainter>
#include <QPainterPathStroker>

namespace groundcount::paint {

using view::Mark;

namespace {

QPen flat(const QColor& colour, qreal width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

QPolygonF diamond(QPointF centre, qreal half)
{
    return QPolygonF({centre + QPointF(0, -half), centre + QPointF(half, 0), centre + QPointF(0, half), centre + QPointF(-half, 0)});
}

void drawCheck(QPainter& painter, const QColor& colour)
{
    painter.setPen(flat(colour, 2.8));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({{6.6, 12.6}, {10.5, 16.4}, {17.4, 8.2}}));
}

void drawState(QPainter& painter, Mark mark, const InkSet& inks)
{
    const QPointF centre(12, 12);
    painter.setPen(Qt::NoPen);
    switch (mark) {
    case Mark::Pass:
        painter.setBrush(inks.pass);
        painter.drawEllipse(centre, 11, 11);
        drawCheck(painter, inks.paper);
        break;
    case Mark::Fail:
        painter.setBrush(inks.fail);
        painter.drawPolygon(diamond(centre, 11.7));
        painter.setPen(flat(inks.paper, 3));
        painter.drawLine(QPointF(6.2, 12), QPointF(17.8, 12));
        break;
    case Mark::Waiting:
        painter.setPen(flat(inks.ink, 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(centre, 9.5, 9.5);
        break;
    case Mark::InformationOnly:
        painter.setBrush(inks.ink);
        painter.drawRect(QRectF(6.5, 6.5, 11, 11));
        break;
    case Mark::Void:
        painter.setPen(flat(inks.ink, 1.8));
        painter.drawLine(QPointF(5, 5), QPointF(19, 19));
        painter.drawLine(QPointF(19, 5), QPointF(5, 19));
        break;
    case Mark::Owed:
        painter.setPen(flat(inks.ink, 2.6));
        painter.drawLine(QPointF(12, 1), QPointF(12, 7.5));
        painter.drawLine(QPointF(12, 16.5), QPointF(12, 23));
        painter.drawLine(QPointF(1, 12), QPointF(7.5, 12));
        painter.drawLine(QPointF(16.5, 12), QPointF(23, 12));
        break;
    case Mark::Here:
        painter.setPen(flat(inks.ink, 4));
        painter.drawLine(QPointF(12, 3), QPointF(12, 21));
        painter.drawLine(QPointF(3, 12), QPointF(21, 12));
        break;
    case Mark::Nothing:
    case Mark::Clear:
    case Mark::TooClose:
    case Mark::CannotTell:
        break;
    }
}

void drawClearance(QPainter& painter, Mark mark, const InkSet& inks)
{
    const qreal y = 14;
    if (mark == Mark::CannotTell) {
        painter.setPen(flat(inks.ink, 2.6));
        painter.drawLine(QPointF(1.5, y), QPointF(26.5, y));
        painter.drawLine(QPointF(1.5, y - 5), QPointF(1.5, y + 5));
        painter.drawLine(QPointF(26.5, y - 5), QPointF(26.5, y + 5));
        painter.setPen(flat(inks.ink, inks.tickWidth));
        painter.drawLine(QPointF(14, 3), QPointF(14, 25));
        painter.setPen(flat(inks.ink, 2.8));
        painter.setBrush(inks.paper);
        painter.drawEllipse(QPointF(14, y), 5.6, 5.6);
        return;
    }
    const bool clear = mark == Mark::Clear;
    const QColor colour = inkOf(mark, inks);
    const qreal tick = clear ? 4 : 24;
    painter.setPen(flat(colour, 2));
    painter.drawLine(clear ? QPointF(tick, y) : QPointF(2, y), clear ? QPointF(26, y) : QPointF(tick, y));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    if (clear) {
        painter.drawEllipse(QPointF(17, y), 6.8, 6.8);
    } else {
        painter.drawPolygon(diamond(QPointF(11, y), 8));
    }
    painter.setPen(flat(inks.ink, inks.tickWidth));
    painter.drawLine(QPointF(tick, 4), QPointF(tick, 24));
}

bool isClearance(Mark mark)
{
    return mark == Mark::Clear || mark == Mark::TooClose || mark == Mark::CannotTell;
}

void drawSurround(QPainter& painter, Mark mark, const InkSet& inks, Ground ground)
{
    if (ground == Ground::Plain) {
        return;
    }
    const QPainterPath outline = outlineOf(mark);
    painter.setBrush(ground == Ground::Drawn ? inks.paper : QColor(Qt::white));
    if (ground == Ground::Drawn) {
        painter.setPen(QPen(inks.paper, 5, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
        painter.drawPath(outline);
        return;
    }
    // White ring 2.2, then a dark halo 1.1 outside it: strokes are centred on the outline, so twice their reach.
    painter.setPen(QPen(QColor(0x17, 0x18, 0x1A), 2 * (2.2 + 1.1), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(outline);
    painter.setPen(QPen(Qt::white, 2 * 2.2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(outline);
}

} // namespace

QColor inkOf(Mark mark, const InkSet& inks)
{
    switch (mark) {
    case Mark::Pass:
    case Mark::Clear:
        return inks.pass;
    case Mark::Fail:
    case Mark::TooClose:
        return inks.fail;
    default:
        return inks.ink;
    }
}

QPainterPath outlineOf(Mark mark)
{
    QPainterPath path;
    switch (mark) {
    case Mark::Pass:
    case Mark::Waiting:
        path.addEllipse(QPointF(12, 12), 11, 11);
        break;
    case Mark::Fail:
        path.addPolygon(diamond({12, 12}, 11.7));
        path.closeSubpath();
        break;
    case Mark::InformationOnly:
        path.addRect(QRectF(6.5, 6.5, 11, 11));
        break;
    case Mark::Void:
    case Mark::Owed:
    case Mark::Here:
        // Open shapes stand on a disc: their strokes alone would be lost on a photograph.
        path.addEllipse(QPointF(12, 12), 11.5, 11.5);
        break;
    default:
        break;
    }
    return path;
}

void drawMark(QPainter& painter, Mark mark, const QRectF& box, const InkSet& inks, Ground ground)
{
    if (mark == Mark::Nothing || box.isEmpty()) {
        return;
    }
    // Rings and knock-outs reach 3.3 units past the outline; the grid shrinks to keep them inside the box.
    const qreal grid = isClearance(mark) ? 28 : ground == Ground::Plain ? 24 : 31;
    const qreal scale = qMin(box.width(), box.height()) / grid;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center());
    painter.scale(scale, scale);
    if (isClearance(mark)) {
        painter.translate(-14, -14);
        drawClearance(painter, mark, inks);
    } else {
        painter.translate(-12, -12);
        drawSurround(painter, mark, inks, ground);
        drawState(painter, mark, inks);
    }
    painter.restore();
}

} // namespace groundcount::paint
