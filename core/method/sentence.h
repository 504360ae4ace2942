#pragma once

#include "method/error.h"

#include <cmath>
#include <cstdio>
#include <string>
#include <string_view>

namespace groundcount {

/// A number inside a sentence for a person: at most 6 significant digits, no trailing zeros.
inline std::string shownNumber(double value)
{
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.6g", value);
    return buffer;
}

/// "Wet density is -3 kg/m3; it must be above 0 kg/m3." The one form of a refusal of a single number.
/// @param unit with its leading blank or empty, for example " kg/m3"
[[nodiscard]] inline tl::unexpected<Error> refusedValue(std::string_view thing, double value, std::string_view unit,
                                                        std::string_view allowed)
{
    std::string what(thing);
    what += std::isnan(value) ? " is missing or not a number" : " is " + shownNumber(value) + std::string(unit);
    return refused(what + "; it must be " + std::string(allowed) + ".");
}

/// Whether `value` is a finite number above 0; NaN is not.
inline bool isPositive(double value) { return value > 0 && std::isfinite(value); }

/// Whether `value` is a finite number of at least 0; NaN is not.
inline bool isNotNegative(double value) { return value >= 0 && std::isfinite(value); }

}  // namespace groundcount
