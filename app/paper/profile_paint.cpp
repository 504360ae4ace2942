#include "paper/lot_chart_paint.h"

#include "paper/paper_text.h"

#include <QFontMetricsF>

#include <algorithm>

namespace groundcount::paper {

void drawProfile(QPainter& painter, const book::LineProfile& profile, const QRectF& box, const ChartInk& ink)
{
    if (profile.lots.empty() || !(profile.endFt > profile.beginFt))
        return;
    const QFontMetricsF metrics(ink.axis);
    const qreal line = metrics.height() + 2;
    const QRectF area = box.adjusted(metrics.horizontalAdvance(QStringLiteral("000")) + 4, line + 2, -2, -line - 2);
    const int lifts = std::max(1, profile.highest - profile.lowest + 1);
    const qreal band = area.height() / lifts;
    const auto x = [&](double station) { return area.left() + area.width() * (station - profile.beginFt) / (profile.endFt - profile.beginFt); };
    const auto y = [&](int lift) { return area.bottom() - band * (lift - profile.lowest + 0.5); };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(ink.axis);
    for (int lift = profile.lowest; lift <= profile.highest; ++lift) {
        painter.setPen(QPen(ink.hair, ink.rule * 0.5));
        painter.drawLine(QPointF(area.left(), y(lift) + band / 2), QPointF(area.right(), y(lift) + band / 2));
        painter.setPen(ink.ink2);
        painter.drawText(QRectF(box.left(), y(lift) - line / 2, area.left() - box.left() - 6, line), Qt::AlignRight | Qt::AlignVCenter, QString::number(lift));
    }
    qreal named = area.left();
    for (const auto& lot : profile.lots) {
        const QRectF range(QPointF(x(lot.beginFt), area.top()), QPointF(x(lot.endFt), area.bottom()));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink.ink, ink.rule * (lot.isChosen ? 1.6 : 0.6)));
        painter.drawRect(range);
        const QString name = text(lot.name);
        const qreal width = metrics.horizontalAdvance(name);
        if (!lot.isChosen && (range.width() < width || range.left() < named))
            continue;  // names that would run into each other are left out, never the chosen one
        painter.setPen(lot.isChosen ? ink.ink : ink.ink2);
        painter.drawText(QPointF(std::clamp(range.center().x() - width / 2, area.left(), area.right() - width), area.top() - 5), name);
        named = range.center().x() + width / 2 + 4;
    }
    const qreal size = std::clamp(band * 0.7, 3.0 * ink.rule, 10.0 * ink.rule);
    for (const auto& point : profile.points)
        ink.symbol(painter, point.state, QRectF(x(point.stationFt) - size / 2, y(point.lift) - size / 2, size, size));
    painter.setPen(ink.ink2);
    const auto axis = [&](double at) { return profile.unit.empty() ? stationText(at) : QString::number(qRound(at)) + ' ' + text(profile.unit); };
    const QString first = axis(profile.beginFt), last = axis(profile.endFt);
    painter.drawText(QPointF(area.left(), box.bottom() - 3), first);
    painter.drawText(QPointF(area.right() - metrics.horizontalAdvance(last), box.bottom() - 3), last);
    painter.restore();
}

}  // namespace groundcount::paper
