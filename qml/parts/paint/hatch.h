#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace groundcount::paint {

/// Strokes at 45 degrees, rising to the right, over `area`: "not allowed" in every drawing.
/// @param period distance between strokes measured along x, 6 to 9 logical pixels.
/// @param width stroke width, logical pixels.
void drawHatch(QPainter& painter, const QRectF& area, const QColor& colour, qreal period, qreal width);

} // namespace groundcount::paint
