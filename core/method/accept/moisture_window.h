#pragma once

#include "method/accept/requirement.h"
#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// Where a water content lies in its window.
struct WindowCheck {
    WindowBounds bounds;  ///< percent water content
    Side side = Side::Inside;
};

/// Judges a water content against a window about an optimum, bounds inclusive, as decimals.
/// @param content w, at least 0 @param optimum above 0 (a window about no optimum means nothing)
/// @error Refused otherwise, or for a window out of order. @source [M57], [VDOT-CH5], [COPPELL]
Result<WindowCheck> checkWindow(WaterContent content, WaterContent optimum, const MoistureWindow& window);

}  // namespace groundcount::method
