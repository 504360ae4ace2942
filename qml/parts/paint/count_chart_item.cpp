#include "count_chart_item.h"

#include "hatch.h"
#include "marks.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace groundcount::paint {

using view::Mark;

namespace {

constexpr qreal kFootHeight = 26;
constexpr qreal kTick = 5;

QPen flat(const QColor& colour, qreal width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

struct Frame {
    QRectF box;
    int sets = 0;
    qreal x(int i) const { return sets == 1 ? box.center().x() : box.left() + box.width() * (0.04 + 0.92 * i / (sets - 1)); }
    qreal left(int i) const { return i == 0 ? box.left() : (x(i - 1) + x(i)) / 2; }
    qreal right(int i) const { return i + 1 == sets ? box.right() : (x(i) + x(i + 1)) / 2; }
    qreal y(qreal fraction) const { return box.bottom() - std::clamp(fraction, 0.0, 1.0) * box.height(); }
};

void drawLimits(QPainter& painter, const view::CountPlot& plot, const Frame& frame, const InkSet& inks)
{
    // One hatch under one clip, so that its strokes run on where the limits step.
    QPainterPath outside;
    for (int i = 0; i < frame.sets; ++i) {
        if (std::isfinite(plot.lower[i])) {
            const qreal width = frame.right(i) - frame.left(i);
            outside.addRect(QRectF(frame.left(i), frame.box.top(), width, frame.y(plot.upper[i]) - frame.box.top()));
            outside.addRect(QRectF(frame.left(i), frame.y(plot.lower[i]), width, frame.box.bottom() - frame.y(plot.lower[i])));
        }
    }
    outside.setFillRule(Qt::WindingFill);
    painter.save();
    painter.setClipPath(outside);
    drawHatch(painter, frame.box, inks.ink2, 8, 1.1);
    painter.restore();
    for (int i = 0; i < frame.sets; ++i) {
        if (!std::isfinite(plot.lower[i])) {
            continue;
        }
        const qreal left = frame.left(i);
        const qreal right = frame.right(i);
        const qreal high = frame.y(plot.upper[i]);
        const qreal low = frame.y(plot.lower[i]);
        painter.setPen(flat(inks.ink, inks.ruleWidth));
        painter.drawLine(QPointF(left, high), QPointF(right, high));
        painter.drawLine(QPointF(left, low), QPointF(right, low));
        painter.setPen(flat(inks.ink, 1));
        painter.drawLine(QPointF(left, frame.y(plot.base[i])), QPointF(right, frame.y(plot.base[i])));
        if (i > 0 && std::isfinite(plot.lower[i - 1])) {
            painter.setPen(flat(inks.ink, inks.ruleWidth));
            painter.drawLine(QPointF(left, frame.y(plot.upper[i - 1])), QPointF(left, high));
            painter.drawLine(QPointF(left, frame.y(plot.lower[i - 1])), QPointF(left, low));
        }
    }
}

void drawSets(QPainter& painter, const view::CountPlot& plot, const Frame& frame, const InkSet& inks)
{
    const auto at = [&](int i) { return QPointF(frame.x(i), frame.y(plot.value[i])); };
    painter.setPen(flat(inks.ink, 1.2));
    int before = -1;
    for (int i = 0; i < frame.sets; ++i) {
        if (plot.marks[i] == static_cast<int>(Mark::Fail)) {
            continue;
        }
        if (before >= 0) {
            painter.drawLine(at(before), at(i));
        }
        before = i;
    }
    for (int i = 0; i < frame.sets; ++i) {
        if (plot.replacedBy[i] >= 0) {
            painter.setPen(QPen(inks.fail, 2.4, Qt::DotLine, Qt::FlatCap));
            painter.drawLine(at(i), at(plot.replacedBy[i]));
        }
    }
    for (int i = 0; i < frame.sets; ++i) {
        const auto mark = static_cast<Mark>(plot.marks[i]);
        const qreal size = i == plot.large ? 22 : mark == Mark::Fail ? 20 : 11;
        const QRectF symbol(at(i) - QPointF(size / 2, size / 2), QSizeF(size, size));
        if (size < 16) {
            painter.setPen(QPen(inks.paper, 2));
            painter.setBrush(inks.pass);
            painter.drawEllipse(symbol);
        } else {
            drawMark(painter, mark, symbol, inks, Ground::Drawn);
        }
    }
}

} // namespace

void drawCountChart(QPainter& painter, const view::CountPlot& plot, const QRectF& box, const InkSet& inks, const QFont& axis)
{
    const QFontMetricsF metrics(axis);
    qreal side = 0;
    for (const QString& label : plot.yLabels) {
        side = std::max(side, metrics.horizontalAdvance(label));
    }
    const Frame frame{QRectF(box.left() + side + kTick + 6, box.top() + 4, box.width() - side - kTick - 6, box.height() - kFootHeight - 4), plot.sets()};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (frame.sets > 0) {
        drawLimits(painter, plot, frame, inks);
    }
    painter.setPen(flat(inks.ink, 1.5));
    painter.drawLine(frame.box.topLeft(), frame.box.bottomLeft());
    painter.drawLine(frame.box.bottomLeft(), frame.box.bottomRight());
    painter.setFont(axis);
    for (qsizetype i = 0; i < plot.yLabels.size(); ++i) {
        const qreal y = frame.y(plot.yAt[i]);
        painter.setPen(flat(inks.ink, 1.5));
        painter.drawLine(QPointF(frame.box.left() - kTick, y), QPointF(frame.box.left(), y));
        painter.setPen(inks.ink2);
        painter.drawText(QPointF(frame.box.left() - kTick - 4 - metrics.horizontalAdvance(plot.yLabels[i]), y + metrics.capHeight() / 2), plot.yLabels[i]);
    }
    painter.setPen(inks.ink2);
    for (qsizetype i = 0; i < plot.xLabels.size(); ++i) {
        const qreal width = metrics.horizontalAdvance(plot.xLabels[i]);
        const qreal x = std::clamp(frame.box.left() + plot.xAt[i] * frame.box.width() - width / 2, box.left(), box.right() - width);
        painter.drawText(QPointF(x, box.bottom() - 7), plot.xLabels[i]);
    }
    if (frame.sets > 0) {
        drawSets(painter, plot, frame, inks);
    }
    painter.restore();
}

CountChartItem::CountChartItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(320, 170);
}

void CountChartItem::paint(QPainter* painter)
{
    drawCountChart(*painter, m_plot, QRectF(0, 0, width(), height()), palette(), font(14, palette().bodyWeight));
}

} // namespace groundcount::paint
