#include "method/gauge/curve_at_depth.h"

#include "method/decimal.h"

#include <cmath>

namespace groundcount::method {
namespace {

std::string inches(Length depth)
{
    const double whole = std::round(depth.inches());
    const bool isWhole = std::fabs(depth.inches() - whole) < 0.05;
    return reportedText(depth.inches(), isWhole ? 0 : 1, TieRule::HalfEven) + " in.";
}

}  // namespace

Result<DensityCurve> curveAtDepth(std::span<const DensityCurve> curves, Length depth)
{
    if (!(depth >= Length()))
        return refused("The test depth must be 0 in. or more.");
    std::string known;
    for (const auto& curve : curves) {
        if (std::fabs(curve.depth.inches() - depth.inches()) < 0.05)
            return curve;
        known += (known.empty() ? "" : ", ") + inches(curve.depth);
    }
    if (known.empty())
        return refused("The gauge has no calibration at all, so counts at " + inches(depth) + " cannot be read.");
    return refused("The gauge has no calibration at " + inches(depth) + "; it has " + known +
                   " and depths are never interpolated.");
}

}  // namespace groundcount::method
