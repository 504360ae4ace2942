#pragma once

#include "method/error.h"

#include <string_view>

namespace groundcount::method {

/// Reads an angle in degrees, or degrees, minutes and seconds: "25.5", "25-30", "31-18-20", "39d20'00.000\"", "76 56 37.26 W".
///
/// value = sign (d + m/60 + s/3600); a leading minus or a final S or W makes it negative, a final N or E does not.
/// @param text up to three numbers parted by -, d, °, ', " or blanks; only the last one may have decimals
/// @return degrees
/// @error Refused: no number, minutes or seconds of 60 or more, any other sign.
/// @source common practice, no source [COMMON]
Result<double> parseAngleDeg(std::string_view text);

/// The direction `azimuthDeg` as 0 <= a < 360.
double wrapAzimuthDeg(double azimuthDeg);

}  // namespace groundcount::method
