#include "hatch.h"

#include <QPainter>

#include <cmath>

namespace groundcount::paint {

void drawHatch(QPainter& painter, const QRectF& area, const QColor& colour, qreal period, qreal width)
{
    if (area.width() <= 0 || area.height() <= 0) {
        return;
    }
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::SquareCap));
    const qreal h = area.height();
    // Anchored to x = 0 of the drawing, so that two areas side by side carry one pattern.
    const qreal first = std::floor((area.left() - h) / period) * period;
    for (qreal x = first; x < area.right(); x += period) {
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + h, area.top()));
    }
    painter.restore();
}

} // namespace groundcount::paint
