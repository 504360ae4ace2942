#pragma once

#include "book/lot_chart.h"

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>

#include <functional>

namespace groundcount::paper {

/// What differs between screen and paper: inks, strokes, the font of the axis, how a state's symbol is drawn.
struct ChartInk {
    QColor paper, ink, ink2, hair;
    qreal rule = 2;
    QFont axis;
    std::function<void(QPainter&, book::TestState, const QRectF&)> symbol;
};

/// The inks of a sheet.
ChartInk paperChartInk();

/// Draws a lot's results in order into `box`: beyond the requirement hatched, control limits broken, the mean thin, the moving mean
/// bold, symbols for results, a ring round those that are flagged. Lines are named where they end. One drawing for screen and paper.
void drawLotChart(QPainter& painter, const book::LotChart& chart, const QRectF& box, const ChartInk& ink);

/// Draws the tests along a line: station across, lift upward, lots parted and named, the chosen one with strong edges.
void drawProfile(QPainter& painter, const book::LineProfile& profile, const QRectF& box, const ChartInk& ink);

}  // namespace groundcount::paper
