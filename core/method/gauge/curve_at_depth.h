#pragma once

#include "method/gauge/calibration.h"

#include <span>

namespace groundcount::method {

/// The curve calibrated at this very depth. A depth is a notch on the rod: curves of other depths are never
/// interpolated. Depths count as the same within 0.05 in.
/// @param depth length, 0 for backscatter
/// @error Refused when no curve has this depth, listing the depths that there are. @source [COMPUTED] section 5
Result<DensityCurve> curveAtDepth(std::span<const DensityCurve> curves, Length depth);

}  // namespace groundcount::method
