#include "proctor_chart_item.h"

#include "hatch.h"
#include "marks.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace groundcount::paint {

using view::Mark;

namespace {

QPen flat(const QColor& colour, qreal width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

struct Frame {
    QRectF box;
    QPointF at(const QPointF& fraction) const { return {box.left() + fraction.x() * box.width(), box.bottom() - fraction.y() * box.height()}; }
    QPolygonF along(const QList<QPointF>& fractions) const
    {
        QPolygonF line;
        for (const QPointF& fraction : fractions) {
            line << at(fraction);
        }
        return line;
    }
};

/// A word with the paper cleared behind it.
void drawWord(QPainter& painter, QPointF baseline, const QString& text, const InkSet& inks)
{
    const QFontMetricsF metrics(painter.font());
    painter.fillRect(QRectF(baseline.x() - 2, baseline.y() - metrics.capHeight() - 3, metrics.horizontalAdvance(text) + 4, metrics.capHeight() + 6), inks.paper);
    painter.drawText(baseline, text);
}

void drawGrid(QPainter& painter, const view::ProctorPlot& plot, const Frame& frame, const InkSet& inks, const QFont& axis)
{
    const QFontMetricsF metrics(axis);
    painter.setFont(axis);
    for (qsizetype i = 0; i < plot.xLabels.size(); ++i) {
        const qreal x = frame.at({plot.xAt[i], 0}).x();
        painter.setPen(flat(inks.hair, 1));
        painter.drawLine(QPointF(x, frame.box.top()), QPointF(x, frame.box.bottom()));
        painter.setPen(inks.ink2);
        painter.drawText(QPointF(x - metrics.horizontalAdvance(plot.xLabels[i]) / 2, frame.box.bottom() + 18), plot.xLabels[i]);
    }
    for (qsizetype i = 0; i < plot.yLabels.size(); ++i) {
        const qreal y = frame.at({0, plot.yAt[i]}).y();
        painter.setPen(flat(inks.hair, 1));
        painter.drawLine(QPointF(frame.box.left(), y), QPointF(frame.box.right(), y));
        painter.setPen(inks.ink2);
        painter.drawText(QPointF(frame.box.left() - 8 - metrics.horizontalAdvance(plot.yLabels[i]), y + metrics.capHeight() / 2), plot.yLabels[i]);
    }
}

void drawVoids(QPainter& painter, const view::ProctorPlot& plot, const Frame& frame, const InkSet& inks)
{
    if (plot.zeroAirVoids.size() < 2) {
        return;
    }
    const QPolygonF line = frame.along(plot.zeroAirVoids);
    QPainterPath beyond;
    beyond.addPolygon(line);
    beyond.lineTo(frame.box.right() + 1, std::min(frame.box.top(), line.first().y()));
    beyond.closeSubpath();
    painter.save();
    painter.setClipRect(frame.box);
    painter.save();
    painter.setClipPath(beyond, Qt::IntersectClip);
    drawHatch(painter, frame.box, inks.ink2, 9, 1.1);
    painter.restore();
    painter.setPen(flat(inks.ink, inks.ruleWidth));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line);
    painter.restore();
    // Named where the line leaves the frame: at the right end, or at the foot when it leaves there.
    const QFontMetricsF metrics(painter.font());
    const qreal width = std::max(metrics.horizontalAdvance(plot.voidsText), metrics.horizontalAdvance(plot.voidsText2));
    const qreal right = frame.box.right() - 4;
    painter.setPen(inks.ink);
    drawWord(painter, {right - width, frame.box.top() + 16}, plot.voidsText, inks);
    drawWord(painter, {right - width, frame.box.top() + 33}, plot.voidsText2, inks);
}

void drawWindow(QPainter& painter, const view::ProctorPlot& plot, const Frame& frame, const InkSet& inks)
{
    if (!plot.hasWindow) {
        return;
    }
    const QPointF left = frame.at({plot.windowLeft, plot.windowFoot});
    const QPointF right = frame.at({plot.windowRight, plot.windowFoot});
    painter.setPen(QPen(inks.ink, inks.ruleWidth, Qt::DashLine, Qt::FlatCap));
    painter.drawPolyline(QPolygonF({QPointF(left.x(), frame.box.top()), left, right, QPointF(right.x(), frame.box.top())}));
    const QFontMetricsF metrics(painter.font());
    painter.setPen(inks.ink);
    drawWord(painter, {left.x() - metrics.horizontalAdvance(plot.windowLeftText) / 2, left.y() + 18}, plot.windowLeftText, inks);
    drawWord(painter, {right.x() - metrics.horizontalAdvance(plot.windowRightText) / 2, right.y() + 18}, plot.windowRightText, inks);
    drawWord(painter, {right.x() - metrics.horizontalAdvance(plot.windowFootText) - 8, right.y() - 8}, plot.windowFootText, inks);
}

} // namespace

void drawProctorChart(QPainter& painter, const view::ProctorPlot& plot, const QRectF& box, const InkSet& inks, const QFont& axis, const QFont& name)
{
    const QFontMetricsF metrics(axis);
    qreal side = 0;
    for (const QString& label : plot.yLabels) {
        side = std::max(side, metrics.horizontalAdvance(label));
    }
    const Frame frame{QRectF(box.left() + side + 12, box.top() + 26, box.width() - side - 24, box.height() - 26 - 44)};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(axis);
    painter.setPen(inks.ink2);
    painter.drawText(QPointF(box.left(), box.top() + 14), plot.yTitle);
    painter.drawText(QPointF(frame.box.right() - metrics.horizontalAdvance(plot.xTitle), box.bottom() - 6), plot.xTitle);
    drawGrid(painter, plot, frame, inks, axis);
    painter.setFont(name);
    drawVoids(painter, plot, frame, inks);
    drawWindow(painter, plot, frame, inks);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(inks.ink, 3.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPolyline(frame.along(plot.curve));
    if (plot.peak) {
        const QPointF at = frame.at(*plot.peak);
        painter.setPen(flat(inks.ink, 1.4));
        painter.drawLine(QPointF(frame.box.left(), at.y()), at);
        painter.drawLine(at, QPointF(at.x(), frame.box.bottom()));
    }
    for (const QPointF& point : plot.points) {
        painter.setPen(flat(inks.ink, 3));
        painter.setBrush(inks.paper);
        painter.drawEllipse(frame.at(point), 6.5, 6.5);
    }
    for (qsizetype i = 0; i < plot.tests.size(); ++i) {
        drawMark(painter, static_cast<Mark>(plot.testMarks[i]), QRectF(frame.at(plot.tests[i]) - QPointF(8, 8), QSizeF(16, 16)), inks, Ground::Drawn);
    }
    if (plot.peak) {
        const QPointF at = frame.at(*plot.peak);
        painter.setPen(flat(inks.ink, 3.4));
        painter.drawLine(at - QPointF(11, 0), at + QPointF(11, 0));
        painter.drawLine(at - QPointF(0, 11), at + QPointF(0, 11));
    }
    painter.setPen(flat(inks.ink, 1.5));
    painter.drawLine(frame.box.topLeft(), frame.box.bottomLeft());
    painter.drawLine(frame.box.bottomLeft(), frame.box.bottomRight());
    painter.restore();
}

ProctorChartItem::ProctorChartItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(320, 320);
}

void ProctorChartItem::paint(QPainter* painter)
{
    drawProctorChart(*painter, m_plot, QRectF(0, 0, width(), height()), palette(), font(14, palette().bodyWeight), font(14, palette().strongWeight));
}

} // namespace groundcount::paint
