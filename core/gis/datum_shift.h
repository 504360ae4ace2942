#pragma once

#include "gis/geodesy.h"
#include "method/error.h"

namespace groundcount::gis {

/// Earth-centred axes, metres.
struct Geocentric {
    double xM = 0;
    double yM = 0;
    double zM = 0;
};

/// Which of the two opposite sign conventions the rotations are stated in.
enum class RotationConvention {
    PositionVector,  ///< EPSG methods 9606, 1033
    CoordinateFrame  ///< EPSG methods 9607, 1032
};

/// Seven parameters between two geocentric systems.
struct DatumShift {
    double shiftXM = 0;
    double shiftYM = 0;
    double shiftZM = 0;
    double rotationXArcSec = 0;
    double rotationYArcSec = 0;
    double rotationZArcSec = 0;
    double scalePpm = 0;
};

/// Target = shift + (1 + s) R source with small rotations, computed by PROJ. The two conventions give opposite turns: the
/// one that the parameters were published with must be named.
/// @error Refused: NaN. @source [EPSG-GN72]
Result<Geocentric> applyDatumShift(const DatumShift& shift, RotationConvention convention, const Geocentric& source);

/// Geographic with ellipsoid height to geocentric and back, computed by PROJ.
/// @param heightM ellipsoid height @error Refused: position, NaN. @source [EPSG-GN72] method 9602
Result<Geocentric> toGeocentric(const Ellipsoid& ellipsoid, LatLon position, double heightM);

struct GeographicHeight {
    LatLon position;
    double heightM = 0;
};
Result<GeographicHeight> fromGeocentric(const Ellipsoid& ellipsoid, const Geocentric& point);

}  // namespace groundcount::gis
