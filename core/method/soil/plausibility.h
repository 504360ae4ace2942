#pragma once

#include "method/error.h"

namespace groundcount::method {

enum class Plausibility { Usual, BelowUsual, AboveUsual };

/// Where a value lies against a usual range, inclusive: a warning only, whatever comes out.
/// @param value, low, high one unit, low <= high @error Refused for a range out of order or a value not finite.
/// @source [DM72], [LIUEVETT-Q], [PL-PAGE], [FM5-472] for the ranges, which are settings
Result<Plausibility> plausibility(double value, double low, double high);

}  // namespace groundcount::method
