#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// The way from one place to another on the grid.
struct Way {
    Length distance;
    double bearingDeg = 0;  ///< clockwise from grid north, 0 to below 360; 0 for no distance
};

/// d = sqrt(dN^2 + dE^2), bearing = atan2(dE, dN) taken into 0 to below 360 degrees.
/// @param north dN, target minus own northing @param east dE, target minus own easting
/// @error Refused for a difference that is not finite. @source [COMPUTED] plane geometry; no scale or curvature, for the
///   few hundred feet of a site
Result<Way> wayTo(Length north, Length east);

}  // namespace groundcount::method
