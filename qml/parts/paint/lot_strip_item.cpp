#include "lot_strip_item.h"

#include "marks.h"

#include <QPainter>

#include <algorithm>

namespace groundcount::paint {

LotStripItem::LotStripItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(350, 36);
    connect(this, &LotStripItem::stripChanged, this, [this] { update(); });
}

void LotStripItem::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const qreal edge = palette().ruleWidth;
    const QRectF frame = boundingRect().adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2);
    painter->setPen(QPen(palette().ink, 1));
    for (const qreal divider : std::as_const(m_dividers)) {
        const qreal x = frame.left() + divider * frame.width();
        painter->drawLine(QPointF(x, frame.top()), QPointF(x, frame.bottom()));
    }
    painter->setPen(QPen(palette().ink, edge, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter->drawRect(frame);
    const qreal size = 20;
    for (qsizetype i = 0; i < std::min({m_marks.size(), m_along.size(), m_across.size()}); ++i) {
        // A symbol near an edge stays whole: its place is read to the sublot, not to the pixel.
        const qreal x = std::clamp(frame.left() + m_along[i] * frame.width(), frame.left() + size / 2 + 2, frame.right() - size / 2 - 2);
        const qreal y = std::clamp(frame.top() + m_across[i] * frame.height(), frame.top() + size / 2 + 2, frame.bottom() - size / 2 - 2);
        drawMark(*painter, static_cast<view::Mark>(m_marks[i]), QRectF(x - size / 2, y - size / 2, size, size), palette(), Ground::Plain);
    }
}

} // namespace groundcount::paint
