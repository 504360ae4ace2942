#pragma once

#include "gis/layer.h"

#include <string>

namespace groundcount::gis {

/// Smallest and largest coordinates; low above high when there is none.
struct ShapeBounds {
    double lowEast = 1, highEast = 0, lowNorth = 1, highNorth = 0;
    bool empty() const { return lowEast > highEast; }
    void add(const ShapeBounds& other);
};

ShapeBounds boundsOf(const LayerShape& shape);

/// Well-known binary, little-endian, x = east, y = north: Point, LineString or MultiPolygon. Outer rings run counter-clockwise, holes clockwise,
/// each ends at its first corner. @param shape known @source OGC 06-103r4 section 8.2; the turn of the rings RFC 7946
std::string wellKnownBinary(const LayerShape& shape, ShapeKind kind);

/// The same with the header of a GeoPackage; lines and areas carry their envelope. @source OGC 12-128r17 section 2.1.3
std::string geoPackageBinary(const LayerShape& shape, ShapeKind kind, int srsId, const ShapeBounds& bounds);

}  // namespace groundcount::gis
