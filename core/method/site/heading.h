#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// A place seen from another in the plane of a grid.
struct GridShift {
    Length north;
    Length east;
};

/// The same by distance and bearing.
struct Heading {
    Length distance;        ///< from 0
    double bearingDeg = 0;  ///< clockwise from grid north, 0 to below 360; 0 at distance 0
};

/// Distance and bearing of a shift: d = sqrt(N^2 + E^2), bearing = atan2(E, N).
/// @param shift N, E: finite lengths
/// @error Refused when a length is not finite.
/// @source [DESIGN] plane geometry of the grid; no correction for scale or convergence
Result<Heading> headingOf(const GridShift& shift);

/// The shift that a distance in a direction makes: N = d cos(bearing), E = d sin(bearing).
/// @param distance d >= 0
/// @param bearingDeg degrees clockwise from grid north, finite
/// @error Refused for a negative or not finite distance, or a bearing that is not finite.
/// @source [DESIGN] plane geometry of the grid
Result<GridShift> shiftOf(Length distance, double bearingDeg);

/// How far a point may be off across its direction: u = d sin(a).
/// @param distance d >= 0 @param unsureDeg a, half of the angle that the direction may be off, 0 to 90
/// @error Refused outside these ranges. @source [DESIGN] plane geometry of the grid
Result<Length> acrossOf(Length distance, double unsureDeg);

}  // namespace groundcount::method
