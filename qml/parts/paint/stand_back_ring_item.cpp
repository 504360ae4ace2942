#include "stand_back_ring_item.h"

#include "hatch.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace groundcount::paint {

namespace {

// A person further off than this many rings is drawn at this distance: the ring must stay the larger thing.
constexpr qreal kFarthest = 2.4;
constexpr qreal kWordRoom = 24;

QPointF direction(qreal bearing)
{
    const qreal angle = bearing * std::numbers::pi / 180;
    return {std::sin(angle), -std::cos(angle)};
}

} // namespace

StandBackRingItem::StandBackRingItem(QQuickItem* parent)
    : InkItem(parent),
      m_distance(std::numeric_limits<qreal>::quiet_NaN()),
      m_accuracy(std::numeric_limits<qreal>::quiet_NaN())
{
    setImplicitSize(350, 300);
    connect(this, &StandBackRingItem::ringChanged, this, [this] { update(); });
}

void StandBackRingItem::drawWord(QPainter& painter, const QString& word, QPointF centre) const
{
    if (word.isEmpty()) {
        return;
    }
    const QFontMetricsF metrics(painter.font());
    const QRectF box(centre.x() - metrics.horizontalAdvance(word) / 2 - 4, centre.y() - 11, metrics.horizontalAdvance(word) + 8, 22);
    painter.fillRect(box, palette().paper);
    painter.setPen(palette().ink);
    painter.drawText(box, Qt::AlignCenter, word);
}

void StandBackRingItem::drawRing(QPainter& painter, QPointF gauge, qreal radius) const
{
    QPainterPath circle;
    circle.addEllipse(gauge, radius, radius);
    painter.save();
    painter.setClipPath(circle);
    QColor faint = palette().ink2;
    faint.setAlphaF(0.55F);
    drawHatch(painter, circle.boundingRect(), faint, 12, 1.2);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette().ink, 4));
    painter.drawEllipse(gauge, radius, radius);
    drawWord(painter, m_ringLabel, gauge + QPointF(0, -radius * 0.78));
}

void StandBackRingItem::drawGauge(QPainter& painter, QPointF gauge) const
{
    painter.fillRect(QRectF(gauge.x() - 25, gauge.y() - 20, 50, 40), palette().paper);
    painter.setPen(QPen(palette().ink, 3, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(gauge.x() - 17, gauge.y() - 10.5, 34, 21));
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette().ink);
    painter.drawEllipse(gauge + QPointF(-8, 0), 4, 4);
    drawWord(painter, m_gaugeLabel, gauge + QPointF(0, -31));
}

void StandBackRingItem::drawPerson(QPainter& painter, QPointF gauge, qreal radius) const
{
    if (!std::isfinite(m_distance)) {
        return;
    }
    const QPointF at = gauge + direction(m_bearing) * radius * std::min(m_distance, kFarthest);
    const qreal known = std::isfinite(m_accuracy) ? std::clamp(m_accuracy * radius, 12.0, radius * 1.5) : 12;
    const QPointF from = gauge + direction(m_bearing) * 30;
    const QPointF to = at - direction(m_bearing) * known;
    painter.setBrush(Qt::NoBrush);
    if (m_distance * radius > known + 30) {
        painter.setPen(QPen(palette().paper, 7));
        painter.drawLine(from, to);
        QPen dashed(palette().ink, 2.5, Qt::CustomDashLine, Qt::FlatCap);
        dashed.setDashPattern({3, 2});
        painter.setPen(dashed);
        painter.drawLine(from, to);
    }
    QColor ground = palette().paper;
    ground.setAlphaF(0.8F);
    painter.setBrush(ground);
    painter.setPen(QPen(palette().ink, 2));
    painter.drawEllipse(at, known, known);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette().ink);
    painter.drawEllipse(at, 10, 10);
    // The word keeps inside the drawing: above the circle when there is no room below it.
    const bool below = at.y() + known + kWordRoom <= height();
    drawWord(painter, m_ownLabel, at + QPointF(0, below ? known + 14 : -known - 14));
}

void StandBackRingItem::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setFont(font(18, palette().strongWeight));
    // Everything drawn, in rings with the gauge at the origin; then the largest radius that holds it.
    QRectF extent(-1, -1, 2, 2);
    const bool known = std::isfinite(m_distance);
    if (known) {
        const QPointF at = direction(m_bearing) * std::min(m_distance, kFarthest);
        const qreal reach = std::isfinite(m_accuracy) ? std::min(m_accuracy, 1.5) : 0.1;
        extent = extent.united(QRectF(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach));
    }
    const QRectF room = boundingRect().adjusted(14, 6, -14, known ? -kWordRoom - 4 : -6);
    const qreal radius = std::min(room.width() / extent.width(), room.height() / extent.height());
    if (radius <= 0) {
        return;
    }
    const QPointF gauge = room.center() - extent.center() * radius;
    drawRing(*painter, gauge, radius);
    drawGauge(*painter, gauge);
    drawPerson(*painter, gauge, radius);
}

} // namespace groundcount::paint
