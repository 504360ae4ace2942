#include "glyphs.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

namespace groundcount::paint {

namespace {

void line(QPainter& painter, qreal x1, qreal y1, qreal x2, qreal y2)
{
    painter.drawLine(QPointF(x1, y1), QPointF(x2, y2));
}

void bend(QPainter& painter, std::initializer_list<QPointF> points)
{
    painter.drawPolyline(QPolygonF(QList<QPointF>(points)));
}

void ring(QPainter& painter, std::initializer_list<QPointF> points)
{
    painter.drawPolygon(QPolygonF(QList<QPointF>(points)));
}

void solid(QPainter& painter, const QRectF& rectangle)
{
    painter.fillRect(rectangle, painter.pen().color());
}

void drawPlace(QPainter& painter, Glyph glyph, qreal stroke)
{
    switch (glyph) {
    case Glyph::Day: // a field sheet
        painter.drawRect(QRectF(5, 3, 14, 18));
        solid(painter, QRectF(8, 7, 5.5, stroke));
        solid(painter, QRectF(8, 11, 8, stroke));
        solid(painter, QRectF(8, 15, 5.5, stroke));
        break;
    case Glyph::Map: { // a roadway crossing a sheet
        painter.drawRect(QRectF(3, 4, 18, 17));
        line(painter, 12, 4, 6.5, 21);
        line(painter, 18.5, 4, 13, 21);
        QPen dashed = painter.pen();
        dashed.setDashPattern({1.6, 1.3});
        dashed.setWidthF(stroke * 0.9);
        painter.save();
        painter.setPen(dashed);
        line(painter, 15, 5, 10, 20.5);
        painter.restore();
        break;
    }
    case Glyph::Lots: // lifts lying on each other, the lower ones built
        painter.drawRect(QRectF(3, 5, 18, 15));
        solid(painter, QRectF(3, 8.5, 18, stroke));
        solid(painter, QRectF(3, 12.5, 18, 8));
        break;
    default: // Kit and Gauge: housing, handle, rod
        painter.drawRect(QRectF(3.5, 10.5, 17, 7.5));
        line(painter, 8.5, 4, 8.5, 10.5);
        line(painter, 5, 4, 12, 4);
        line(painter, 8.5, 18, 8.5, 23);
        solid(painter, QRectF(13.5, 13, 4.5, 2.4));
        break;
    }
}

void drawTool(QPainter& painter, Glyph glyph, qreal stroke)
{
    switch (glyph) {
    case Glyph::Lock:
        painter.drawRect(QRectF(4.5, 11, 15, 10));
        {
            QPainterPath shackle(QPointF(8, 11));
            shackle.lineTo(8, 8);
            shackle.arcTo(QRectF(8, 3.5, 8, 8), 180, -180);
            shackle.lineTo(16, 11);
            painter.drawPath(shackle);
        }
        break;
    case Glyph::Tape: // a rule with its divisions
        painter.drawRect(QRectF(1.5, 8, 21, 9));
        for (const qreal x : {5.5, 9.0, 12.5, 16.0, 19.5}) {
            line(painter, x, 8, x, x == 5.5 || x == 12.5 || x == 19.5 ? 13 : 11.2);
        }
        break;
    case Glyph::Backspace:
        ring(painter, {{1.8, 12}, {8, 5}, {22.5, 5}, {22.5, 19}, {8, 19}});
        line(painter, 11.8, 8.8, 18.2, 15.2);
        line(painter, 18.2, 8.8, 11.8, 15.2);
        break;
    case Glyph::Layers:
        ring(painter, {{12, 4}, {21.5, 9.5}, {12, 15}, {2.5, 9.5}});
        bend(painter, {{2.5, 14.2}, {12, 19.8}, {21.5, 14.2}});
        break;
    case Glyph::Cells:
        ring(painter, {{3, 3}, {21, 3}, {21, 21}, {3, 21}});
        bend(painter, {{9, 3}, {12, 11}, {3, 15}});
        bend(painter, {{21, 9}, {12, 11}, {15, 21}});
        break;
    case Glyph::Locate:
        painter.drawEllipse(QPointF(12, 12), 6, 6);
        line(painter, 12, 1, 12, 6);
        line(painter, 12, 18, 12, 23);
        line(painter, 1, 12, 6, 12);
        line(painter, 18, 12, 23, 12);
        break;
    default: // Warning
        ring(painter, {{12, 3}, {22.5, 21}, {1.5, 21}});
        solid(painter, QRectF(12 - stroke / 2, 9, stroke, 6));
        solid(painter, QRectF(12 - stroke / 2, 16.4, stroke, 2.2));
        break;
    }
}

void drawPointer(QPainter& painter, Glyph glyph)
{
    switch (glyph) {
    case Glyph::Back:
    case Glyph::Left:
        bend(painter, {{15.5, 4.5}, {8, 12}, {15.5, 19.5}});
        break;
    case Glyph::Right:
        bend(painter, {{8.5, 4.5}, {16, 12}, {8.5, 19.5}});
        break;
    case Glyph::Up:
        bend(painter, {{4.5, 16}, {12, 8.5}, {19.5, 16}});
        break;
    case Glyph::Down:
        bend(painter, {{4.5, 8}, {12, 15.5}, {19.5, 8}});
        break;
    case Glyph::Close:
        line(painter, 5, 5, 19, 19);
        line(painter, 19, 5, 5, 19);
        break;
    case Glyph::Check:
        bend(painter, {{4.5, 12.6}, {9.6, 17.6}, {19.5, 6.4}});
        break;
    case Glyph::Plus:
        line(painter, 12, 4, 12, 20);
        line(painter, 4, 12, 20, 12);
        break;
    default: // Bearing and North
        line(painter, 12, 22, 12, 3.5);
        bend(painter, {{5.5, 10.5}, {12, 3.2}, {18.5, 10.5}});
        break;
    }
}

} // namespace

void drawGlyph(QPainter& painter, Glyph glyph, const QRectF& box, const QColor& colour, qreal stroke, qreal bearing)
{
    if (glyph == Glyph::None || box.isEmpty()) {
        return;
    }
    const qreal scale = qMin(box.width(), box.height()) / 24;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center());
    painter.scale(scale, scale);
    if (glyph == Glyph::Bearing || glyph == Glyph::North) {
        painter.rotate(bearing);
    }
    painter.translate(-12, -12);
    QPen pen(colour, stroke, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    painter.setBrush(Qt::NoBrush);
    switch (glyph) {
    case Glyph::Day:
    case Glyph::Map:
    case Glyph::Lots:
    case Glyph::Kit:
    case Glyph::Gauge:
        painter.setPen(pen);
        drawPlace(painter, glyph, stroke);
        break;
    case Glyph::Lock:
    case Glyph::Tape:
    case Glyph::Backspace:
    case Glyph::Layers:
    case Glyph::Cells:
    case Glyph::Locate:
    case Glyph::Warning:
        painter.setPen(pen);
        drawTool(painter, glyph, stroke);
        break;
    default:
        // Pointers carry no second line to hold them together: a stroke of 2.4 keeps their weight beside the others.
        pen.setWidthF(stroke * 1.2);
        painter.setPen(pen);
        drawPointer(painter, glyph);
        break;
    }
    painter.restore();
}

} // namespace groundcount::paint
