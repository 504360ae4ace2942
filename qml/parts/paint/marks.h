#pragma once

#include "ink_set.h"
#include "view/mark.h"

#include <QPainterPath>
#include <QRectF>

class QPainter;

namespace groundcount::paint {

/// What lies under a symbol: plain paper, a drawn base (paper knocked out round it), or imagery (white ring, dark halo).
enum class Ground { Plain, Drawn, Imagery };

/// Draws `mark` centred in `box`, its 24-unit grid (28 for clearances) fitted to the shorter side.
/// Shapes and strokes are those of the design sheet; clearance marks take a tick and a shape beside or across it.
/// On imagery the colours given should be the day set, whatever the theme.
void drawMark(QPainter& painter, view::Mark mark, const QRectF& box, const InkSet& inks, Ground ground);

/// The colour a state is written and drawn in: pass, fail, or ink.
QColor inkOf(view::Mark mark, const InkSet& inks);

/// The filled outline of `mark` in its own 24-unit grid, for rings and knock-outs. Clearances give an empty path.
QPainterPath outlineOf(view::Mark mark);

} // namespace groundcount::paint
