#pragma once

#include "method/decimal.h"
#include "method/error.h"
#include "method/quantity.h"

#include <optional>
#include <string_view>

namespace groundcount::method {

/// How the bounds of a moisture window are stated.
enum class WindowKind {
    None,             ///< moisture is not judged
    Points,           ///< percentage points from optimum; symmetric, asymmetric or one-sided
    PercentOfOptimum  ///< percent OF optimum, for example -20 to +20. @source [VDOT-CH5]
};

/// Moisture window about the optimum; a missing bound makes it one-sided. Bounds are inclusive.
struct MoistureWindow {
    WindowKind kind = WindowKind::None;
    std::optional<Decimal> low;
    std::optional<Decimal> high;
};

/// What a lot asks of each test. Bounds are inclusive. @source method section 26
struct Requirement {
    std::optional<Decimal> minimumPct;  ///< percent compaction, at least
    std::optional<Decimal> maximumPct;  ///< percent compaction, at most
    MoistureWindow window;
};

/// The window in percent water content, for an optimum.
struct WindowBounds {
    std::optional<double> lowPct;
    std::optional<double> highPct;
};

/// Bounds in percent water content: optimum + bound (points), or optimum x (1 + bound/100) (percent of optimum).
/// @param optimumPct percent, >= 0
/// @source [VDOT-CH5], [COPPELL]
WindowBounds windowBounds(const MoistureWindow& window, double optimumPct);

/// Where a value lies against inclusive bounds. Both sides are compared as decimals of 9 places, so that a value that
/// equals its bound in exact arithmetic is inside.
enum class Side { Inside, Below, Above };
Side sideOf(double value, std::optional<double> low, std::optional<double> high);

/// Checks a requirement as a whole.
/// @error Refused when a bound is outside 0 to 200 %, the minimum is above the maximum, the window's low is above its
///        high, or a window kind stands without any bound.
Result<void> validate(const Requirement& requirement);

/// "none", "points" or "percent of optimum". @error Refused for another word.
Result<WindowKind> windowKindFrom(std::string_view word);
std::string_view word(WindowKind kind);

}  // namespace groundcount::method
