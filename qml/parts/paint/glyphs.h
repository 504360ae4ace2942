#pragma once

#include "ink_set.h"

#include <QRectF>

class QPainter;

namespace groundcount::paint {

/// Our own signs for places and acts, named after what they show. In QML: Glyph.Day.
namespace glyphs {
Q_NAMESPACE
QML_NAMED_ELEMENT(Glyph)
enum class Glyph {
    None, Day, Map, Lots, Kit, Back, Lock, Bearing, Tape, Backspace, Right, Left, Up, Down, Close, Layers, Locate, Warning,
    North, Gauge, Check, Plus, Cells
};
Q_ENUM_NS(Glyph)
} // namespace glyphs
using glyphs::Glyph;

/// Draws `glyph` in `colour` on its 24-unit grid fitted into `box`: butt ends, mitred joins, one solid part at most.
/// @param stroke line width in the 24-unit grid: 2, in the sun theme 2.5.
/// @param bearing degrees clockwise from up; only Bearing and North turn.
void drawGlyph(QPainter& painter, Glyph glyph, const QRectF& box, const QColor& colour, qreal stroke, qreal bearing);

} // namespace groundcount::paint
