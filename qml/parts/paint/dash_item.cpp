#include "dash_item.h"

#include <QPainter>

namespace groundcount::paint {

void DashItem::paint(QPainter* painter)
{
    const qreal width = palette().ruleWidth;
    QPen pen(palette().ink2, width, Qt::CustomDashLine, Qt::FlatCap);
    // Dash 7, gap 4.5 logical pixels; QPen counts in stroke widths.
    pen.setDashPattern({7 / width, 4.5 / width});
    painter->setBrush(Qt::NoBrush);
    if (m_shape == Frame) {
        painter->setPen(pen);
        const qreal inset = width / 2;
        painter->drawRoundedRect(boundingRect().adjusted(inset, inset, -inset, -inset), 4, 4);
        return;
    }
    pen.setColor(palette().ink);
    painter->setPen(pen);
    painter->drawLine(QPointF(0, height() - width / 2), QPointF(boundingRect().width(), height() - width / 2));
}

} // namespace groundcount::paint
