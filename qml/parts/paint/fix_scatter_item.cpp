#include "fix_scatter_item.h"

#include "marks.h"

#include <QPainter>

#include <cmath>

namespace groundcount::paint {

FixScatterItem::FixScatterItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(182, 182);
    connect(this, &FixScatterItem::scatterChanged, this, [this] { update(); });
}

void FixScatterItem::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF frame = boundingRect().adjusted(0.5, 0.5, -0.5, -0.5);
    const qreal square = m_squaresAcross > 0 ? frame.width() / m_squaresAcross : frame.width();
    const QPointF middle = frame.center();

    painter->setPen(QPen(palette().hair, 1));
    for (int i = -static_cast<int>(std::ceil(m_squaresAcross)); i <= static_cast<int>(std::ceil(m_squaresAcross)); ++i) {
        const qreal x = middle.x() + i * square;
        const qreal y = middle.y() + i * square;
        if (x > frame.left() && x < frame.right()) {
            painter->drawLine(QPointF(x, frame.top()), QPointF(x, frame.bottom()));
        }
        if (y > frame.top() && y < frame.bottom()) {
            painter->drawLine(QPointF(frame.left(), y), QPointF(frame.right(), y));
        }
    }
    painter->save();
    painter->setClipRect(frame);
    QColor dot = palette().ink2;
    dot.setAlphaF(0.55F);
    painter->setPen(Qt::NoPen);
    painter->setBrush(dot);
    for (const QVariant& fix : std::as_const(m_fixes)) {
        const QPointF at = fix.toPointF();
        painter->drawEllipse(middle + QPointF(at.x() * square, -at.y() * square), 3.6, 3.6);
    }
    if (m_circleRadius > 0) {
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen(palette().ink, 2));
        painter->drawEllipse(middle, m_circleRadius * square, m_circleRadius * square);
    }
    if (m_hasSite) {
        const QPointF at = middle + QPointF(m_site.x() * square, -m_site.y() * square);
        drawMark(*painter, view::Mark::Owed, QRectF(at.x() - 17, at.y() - 17, 34, 34), palette(), Ground::Drawn);
    }
    drawMark(*painter, view::Mark::Here, QRectF(middle.x() - 17, middle.y() - 17, 34, 34), palette(), Ground::Plain);
    painter->restore();
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(palette().ink, 1));
    painter->drawRect(frame);
}

} // namespace groundcount::paint
