#include "limit_line.h"

#include "hatch.h"
#include "marks.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace groundcount::paint {

using view::Mark;

namespace {

constexpr qreal kAxis = 14;
constexpr qreal kInset = 6; // half of a mark at either end stays inside the item
constexpr qreal kBaseline = kAxis + 30;

QPen flat(const QColor& colour, qreal width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

struct Scale {
    qreal width = 0;
    qreal x(qreal fraction) const { return kInset + std::clamp(fraction, 0.0, 1.0) * (width - 2 * kInset); }
};

void hatchBetween(QPainter& painter, qreal from, qreal to, const InkSet& inks)
{
    drawHatch(painter, QRectF(from, kAxis - 6, to - from, 12), inks.ink2, 7.5, 1.2);
}

void drawGround(QPainter& painter, const LimitLine& line, const Scale& scale, const InkSet& inks)
{
    const qreal left = scale.x(0);
    const qreal right = scale.x(1);
    const bool low = std::isfinite(line.lowLimit);
    const bool high = std::isfinite(line.highLimit);
    const qreal from = low ? scale.x(line.lowLimit) : left;
    const qreal to = high ? scale.x(line.highLimit) : right;
    if (low) {
        hatchBetween(painter, line.running && std::isfinite(line.value) ? scale.x(line.value) : left, from, inks);
    }
    if (high) {
        hatchBetween(painter, to, right, inks);
    }
    painter.setPen(flat(inks.ink, inks.ruleWidth));
    painter.drawLine(QPointF(from, kAxis), QPointF(to, kAxis));
}

void drawTicks(QPainter& painter, const LimitLine& line, const Scale& scale, const InkSet& inks)
{
    painter.setPen(flat(inks.ink, inks.tickWidth));
    QList<qreal> ticks = line.ticks;
    ticks << line.lowLimit << line.highLimit;
    for (const qreal tick : ticks) {
        if (std::isfinite(tick)) {
            painter.drawLine(QPointF(scale.x(tick), kAxis - 12), QPointF(scale.x(tick), kAxis + 12));
        }
    }
}

QColor valueInk(Mark mark, const InkSet& inks)
{
    return inkOf(mark, inks);
}

void drawShape(QPainter& painter, Mark mark, QPointF at, const InkSet& inks)
{
    const QColor colour = valueInk(mark, inks);
    const bool disc = mark == Mark::Pass || mark == Mark::Clear;
    const bool diamond = mark == Mark::Fail || mark == Mark::TooClose;
    painter.setPen(Qt::NoPen);
    if (diamond) {
        for (const auto& [half, fill] : {std::pair(9.5 + 3.5, inks.paper), std::pair(9.5, colour)}) {
            painter.setBrush(fill);
            painter.drawPolygon(QPolygonF({at + QPointF(0, -half), at + QPointF(half, 0), at + QPointF(0, half), at + QPointF(-half, 0)}));
        }
        return;
    }
    if (disc) {
        painter.setBrush(inks.paper);
        painter.drawEllipse(at, 7.5 + 2.5, 7.5 + 2.5);
        painter.setBrush(colour);
        painter.drawEllipse(at, 7.5, 7.5);
        return;
    }
    painter.setBrush(inks.paper);
    painter.setPen(flat(inks.ink, 3));
    painter.drawEllipse(at, 7, 7);
}

void drawValue(QPainter& painter, const LimitLine& line, const Scale& scale, const InkSet& inks)
{
    if (!std::isfinite(line.value)) {
        return;
    }
    const QPointF at(scale.x(line.value), kAxis);
    if (line.running) {
        painter.setPen(flat(inks.ink, 8));
        painter.drawLine(QPointF(scale.x(0), kAxis), at);
    } else if (std::isfinite(line.spreadLow) && std::isfinite(line.spreadHigh)) {
        const qreal from = scale.x(line.spreadLow);
        const qreal to = scale.x(line.spreadHigh);
        const QColor colour = valueInk(line.mark, inks);
        painter.setPen(flat(colour, 4.5));
        painter.drawLine(QPointF(from, kAxis), QPointF(to, kAxis));
        painter.setPen(flat(colour, 2.5));
        // A spread that runs off the scale has no cap there: the end is not known to be at the edge.
        if (line.spreadLow >= 0) {
            painter.drawLine(QPointF(from, kAxis - 7), QPointF(from, kAxis + 7));
        }
        if (line.spreadHigh <= 1) {
            painter.drawLine(QPointF(to, kAxis - 7), QPointF(to, kAxis + 7));
        }
    }
    drawShape(painter, line.mark, at, inks);
}

void clearBehindSpread(QPainter& painter, const LimitLine& line, const Scale& scale, const InkSet& inks)
{
    if (line.running || !std::isfinite(line.value)) {
        return;
    }
    const bool spread = std::isfinite(line.spreadLow) && std::isfinite(line.spreadHigh);
    const qreal margin = spread ? 4 : 12;
    const qreal from = scale.x(spread ? line.spreadLow : line.value) - margin;
    const qreal to = scale.x(spread ? line.spreadHigh : line.value) + margin;
    // The axis itself goes on behind the value line; only the hatch gives way.
    for (const auto& [left, right] : {std::pair(scale.x(0), std::isfinite(line.lowLimit) ? scale.x(line.lowLimit) : scale.x(0)),
                                      std::pair(std::isfinite(line.highLimit) ? scale.x(line.highLimit) : scale.x(1), scale.x(1))}) {
        const qreal a = std::max(from, left - 1);
        const qreal b = std::min(to, right + 1);
        if (b > a && right > left) {
            painter.fillRect(QRectF(a, kAxis - 7, b - a, 14), inks.paper);
        }
    }
}

void drawLabels(QPainter& painter, const LimitLine& line, const Scale& scale, const InkSet& inks, const LimitLineFonts& fonts)
{
    QList<LimitLabel> labels = line.labels;
    std::stable_sort(labels.begin(), labels.end(), [](const LimitLabel& a, const LimitLabel& b) { return a.at < b.at; });
    QList<qreal> centres;
    QList<qreal> widths;
    for (const LimitLabel& label : labels) {
        centres << scale.x(label.at);
        widths << QFontMetricsF(label.measured ? fonts.measured : fonts.label).horizontalAdvance(label.text);
    }
    const QList<qreal> lefts = placeLabels(centres, widths, 10, scale.width);
    for (qsizetype i = 0; i < labels.size(); ++i) {
        painter.setFont(labels[i].measured ? fonts.measured : fonts.label);
        painter.setPen(labels[i].measured ? inks.ink : inks.ink2);
        painter.drawText(QPointF(lefts[i], kBaseline + (labels[i].measured ? 1 : 0)), labels[i].text);
    }
}

} // namespace

QList<qreal> placeLabels(const QList<qreal>& centres, const QList<qreal>& widths, qreal gap, qreal width)
{
    QList<qreal> lefts;
    for (qsizetype i = 0; i < centres.size(); ++i) {
        lefts << std::max(0.0, std::min(centres[i] - widths[i] / 2, width - widths[i]));
    }
    // Two neighbours that meet give way by half each; eight rounds bring a row of four near its middle.
    for (int round = 0; round < 8; ++round) {
        for (qsizetype i = 1; i < lefts.size(); ++i) {
            const qreal overlap = lefts[i - 1] + widths[i - 1] + gap - lefts[i];
            if (overlap > 0) {
                lefts[i - 1] -= overlap / 2;
                lefts[i] += overlap / 2;
            }
        }
    }
    // Then exactly: leftwards from the right edge, rightwards from the left, which has the last word.
    for (qsizetype i = lefts.size(); i-- > 0;) {
        lefts[i] = std::min(lefts[i], (i + 1 < lefts.size() ? lefts[i + 1] - gap : width) - widths[i]);
    }
    for (qsizetype i = 0; i < lefts.size(); ++i) {
        lefts[i] = std::max(lefts[i], i > 0 ? lefts[i - 1] + widths[i - 1] + gap : 0.0);
    }
    return lefts;
}

qreal limitLineHeight(const LimitLine& line, const LimitLineFonts& fonts)
{
    if (line.labels.isEmpty()) {
        return 2 * kAxis;
    }
    const bool measured = std::any_of(line.labels.cbegin(), line.labels.cend(), [](const LimitLabel& label) { return label.measured; });
    return std::ceil(kBaseline + QFontMetricsF(measured ? fonts.measured : fonts.label).descent() + 2);
}

void drawLimitLine(QPainter& painter, const LimitLine& line, qreal width, const InkSet& inks, const LimitLineFonts& fonts)
{
    const Scale scale{width};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawGround(painter, line, scale, inks);
    clearBehindSpread(painter, line, scale, inks);
    drawTicks(painter, line, scale, inks);
    drawValue(painter, line, scale, inks);
    // Over the value line once more, so that a spread across its limit shows the limit.
    if (!line.running && std::isfinite(line.value) && std::isfinite(line.spreadLow)) {
        drawTicks(painter, line, scale, inks);
        drawShape(painter, line.mark, QPointF(scale.x(line.value), kAxis), inks);
    }
    drawLabels(painter, line, scale, inks, fonts);
    painter.restore();
}

} // namespace groundcount::paint
