#include "paper/lot_chart_paint.h"

#include "paper/paper_ink.h"
#include "paper/paper_text.h"

#include <QFontMetricsF>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace groundcount::paper {
namespace {

QPen flat(const QColor& colour, qreal width, Qt::PenStyle style = Qt::SolidLine)
{
    return QPen(colour, width, style, Qt::FlatCap, Qt::MiterJoin);
}

// the last part of the width is for the names of the lines
constexpr qreal kSpan = 0.76;

struct Frame {
    QRectF box;
    const book::LotChart& chart;

    qreal x(std::size_t i) const
    {
        const auto n = chart.points.size();
        return n < 2 ? box.center().x() : box.left() + box.width() * (0.03 + kSpan * static_cast<qreal>(i) / static_cast<qreal>(n - 1));
    }
    qreal y(double value) const { return box.bottom() - box.height() * std::clamp((value - chart.bottom) / (chart.top - chart.bottom), 0.0, 1.0); }
};

void hatch(QPainter& painter, const QRectF& area, const ChartInk& ink)
{
    if (area.height() <= 0)
        return;
    painter.save();
    painter.setClipRect(area);
    painter.setPen(flat(ink.ink2, ink.rule * 0.5));
    const qreal period = 4 * ink.rule;
    for (qreal x = area.left() - area.height(); x < area.right(); x += period)
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
    painter.restore();
}

/// A word above the right end of a line, its ground cleared.
void nameLine(QPainter& painter, const Frame& frame, double value, const QString& word, const ChartInk& ink)
{
    const QFontMetricsF metrics(ink.axis);
    const qreal width = metrics.horizontalAdvance(word);
    qreal base = frame.y(value) - metrics.descent() - 1;
    if (base - metrics.ascent() < frame.box.top())
        base = frame.y(value) + metrics.ascent() + 1;
    const QPointF at(frame.box.right() - width - 2, base);
    painter.fillRect(QRectF(at.x() - 2, at.y() - metrics.ascent(), width + 4, metrics.ascent() + metrics.descent()), ink.paper);
    painter.setPen(ink.ink2);
    painter.drawText(at, word);
}

void drawAxes(QPainter& painter, const Frame& frame, const ChartInk& ink)
{
    const book::LotChart& chart = frame.chart;
    const QFontMetricsF metrics(ink.axis);
    const int places = chart.step < 1 ? 1 : 0;
    for (int i = 0; chart.bottom + i * chart.step <= chart.top + chart.step / 2; ++i) {
        const double value = chart.bottom + i * chart.step;
        painter.setPen(flat(ink.hair, ink.rule * 0.5));
        painter.drawLine(QPointF(frame.box.left(), frame.y(value)), QPointF(frame.box.right(), frame.y(value)));
        painter.setPen(ink.ink2);
        QString label = QString::number(value, 'f', places);
        label.replace('-', QChar(0x2212));
        painter.drawText(QPointF(frame.box.left() - 6 - metrics.horizontalAdvance(label), frame.y(value) + metrics.capHeight() / 2), label);
    }
    painter.setPen(flat(ink.ink, ink.rule * 0.75));
    painter.drawLine(frame.box.topLeft(), frame.box.bottomLeft());
    painter.drawLine(frame.box.bottomLeft(), frame.box.bottomRight());
}

void drawLevels(QPainter& painter, const Frame& frame, const ChartInk& ink)
{
    const book::LotChart& chart = frame.chart;
    const QRectF& box = frame.box;
    const auto level = [&](const std::optional<double>& value, qreal width, Qt::PenStyle style) {
        if (!value)
            return;
        painter.setPen(flat(ink.ink, width, style));
        painter.drawLine(QPointF(box.left(), frame.y(*value)), QPointF(box.right(), frame.y(*value)));
    };
    if (chart.needLow)
        hatch(painter, QRectF(QPointF(box.left(), frame.y(*chart.needLow)), box.bottomRight()), ink);
    if (chart.needHigh)
        hatch(painter, QRectF(box.topLeft(), QPointF(box.right(), frame.y(*chart.needHigh))), ink);
    level(chart.needLow, ink.rule * 1.5, Qt::SolidLine);
    level(chart.needHigh, ink.rule * 1.5, Qt::SolidLine);
    level(chart.lower, ink.rule * 0.75, Qt::DashLine);
    level(chart.upper, ink.rule * 0.75, Qt::DashLine);
    level(chart.centre, ink.rule * 0.75, Qt::SolidLine);
    for (const auto& [value, word] : {std::pair{chart.needLow, Words::tr("needed")}, {chart.needHigh, Words::tr("needed")}, {chart.upper, Words::tr("control limit")}, {chart.centre, Words::tr("mean")}})
        if (value)
            nameLine(painter, frame, *value, word, ink);
}

void drawResults(QPainter& painter, const Frame& frame, const ChartInk& ink)
{
    const book::LotChart& chart = frame.chart;
    QPolygonF line, moving;
    for (std::size_t i = 0; i < chart.points.size(); ++i)
        line << QPointF(frame.x(i), frame.y(chart.points[i].value));
    for (const auto& [at, mean] : chart.moving)
        moving << QPointF(frame.x(at), frame.y(mean));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(flat(ink.ink, ink.rule * 0.6));
    painter.drawPolyline(line);
    painter.setPen(QPen(ink.ink2, ink.rule * 1.75, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(moving);
    // many results stand close: symbols shrink so that each is still seen
    const qreal room = chart.points.size() < 2 ? 16 : frame.box.width() * kSpan / static_cast<qreal>(chart.points.size() - 1);
    const qreal size = std::clamp(room * 1.1, 3.0 * ink.rule, 8.0 * ink.rule);
    for (std::size_t i = 0; i < chart.points.size(); ++i) {
        const QRectF symbol(line[static_cast<qsizetype>(i)] - QPointF(size / 2, size / 2), QSizeF(size, size));
        ink.symbol(painter, chart.points[i].state, symbol);
        if (!chart.points[i].isFlagged)
            continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(flat(ink.ink, ink.rule));
        painter.drawEllipse(symbol.adjusted(-2 * ink.rule, -2 * ink.rule, 2 * ink.rule, 2 * ink.rule));
    }
}

}  // namespace

ChartInk paperChartInk()
{
    const auto symbol = [](QPainter& painter, book::TestState state, const QRectF& box) {
        painter.setPen(QPen(kInk, 0.8));
        painter.setBrush(state == book::TestState::Pass ? kPass : state == book::TestState::Fail ? kFail : QColor(Qt::white));
        if (state == book::TestState::Fail) {
            const QPointF c = box.center();
            painter.drawPolygon(QPolygonF({QPointF(c.x(), box.top()), QPointF(box.right(), c.y()), QPointF(c.x(), box.bottom()), QPointF(box.left(), c.y())}));
        } else {
            painter.drawEllipse(box);
        }
    };
    return {Qt::white, kInk, kInk2, kHair, 0.9, labelFont(), symbol};
}

void drawLotChart(QPainter& painter, const book::LotChart& chart, const QRectF& box, const ChartInk& ink)
{
    const QFontMetricsF metrics(ink.axis);
    const qreal side = metrics.horizontalAdvance(QStringLiteral("100.0")) + 8;
    const Frame frame{box.adjusted(side, metrics.ascent() / 2 + 2, -2, -(metrics.height() + 6)), chart};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(ink.axis);
    drawAxes(painter, frame, ink);
    drawLevels(painter, frame, ink);
    drawResults(painter, frame, ink);
    painter.setPen(ink.ink2);
    if (!chart.points.empty()) {
        const QString first = text(chart.points.front().number), last = text(chart.points.back().number);
        painter.drawText(QPointF(frame.box.left(), box.bottom() - 3), Words::tr("test %1").arg(first));
        if (chart.points.size() > 2) {
            const QString word = Words::tr("test %1").arg(last);
            painter.drawText(QPointF(frame.x(chart.points.size() - 1) - metrics.horizontalAdvance(word) / 2, box.bottom() - 3), word);
        }
    }
    painter.restore();
}

}  // namespace groundcount::paper
