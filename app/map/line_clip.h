#pragma once

#include <QPolygonF>
#include <QRectF>

#include <vector>

namespace groundcount::map {

/// A piece of a line inside a box and how far along the whole line (px) it begins, so that dashes stay where they are.
struct ClippedRun {
    QPolygonF points;
    double startsAt = 0;
};

/// The pieces of an open line that lie in the box, in order. Painting dashes over millions of px off screen is what this saves.
/// Parametric clipping of each segment against the four edges of the box.
std::vector<ClippedRun> clipLine(const QPolygonF& line, const QRectF& box);

/// A polygon cut to the box, edge by edge; holes are cut one by one and filled odd-even together. Empty if nothing is inside.
QPolygonF clipPolygon(const QPolygonF& polygon, const QRectF& box);

}  // namespace groundcount::map
