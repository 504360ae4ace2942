#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <span>
#include <string>

namespace groundcount::method {

/// How far from optimum a one-point specimen may be; settings.
struct OnePointWindow {
    double lowRatio = 0;   ///< 0.80 in use
    double highRatio = 0;  ///< 1.00 in use
};

/// w/w_opt when it lies inside the window, inclusive. @param content at least 0 @param optimum above 0
/// @error Refused outside the window: compact another specimen. @source [T272-04]
Result<double> onePointRatio(WaterContent content, WaterContent optimum, const OnePointWindow& window);

/// A curve of a family in the form D = max - c (w - w_opt)^2.
struct FamilyCurve {
    WaterContent optimum;
    DryDensity maximum;
    double cKgPerM3PerPoint2 = 0;  ///< c, above 0
};

/// A curve found between two neighbours.
struct OnePointPeak {
    double t = 0;  ///< 0 on the lower curve, 1 on the denser one
    WaterContent optimum;
    DryDensity maximum;
    double ratio = 0;  ///< w/w_opt
};

/// Solves max(t) - c(t) (w - w_opt(t))^2 = D for t in 0 to 1, all three numbers blended linearly.
/// @param low the curve of the lower maximum @param high the denser curve, of lower optimum
/// @error Refused for curves out of order, a point below the lower or above the denser curve, a ratio outside the window.
/// @source [DESIGN]; root by Boost.Math; between curves of a family [T272-04]
Result<OnePointPeak> onePointPeak(const FamilyCurve& low, const FamilyCurve& high, WaterContent content, DryDensity dry,
                                  const OnePointWindow& window);

/// A family needs `fewest` curves, all by one method. @param methods one name per curve
/// @error Refused for too few curves, a number of names that differs from it, mixed methods. @source [R75-16]
Result<void> checkFamily(int curves, std::span<const std::string> methods, int fewest);

/// Which soils may be tested with one point; settings.
struct OnePointSoil {
    double passingNo200Above = 0;     ///< percent, 35 in one state
    double retained34AtMost = 0;      ///< percent on the 3/4 in. sieve, 25 in one state
};

enum class YesNo { Yes, No };

/// Yes for percent passing No. 200 above the one limit and percent retained on 3/4 in. at most the other.
/// @error Refused for percents outside 0 to 100. @source [OH-S1015]
Result<YesNo> isOnePointAllowed(double passingNo200, double retained34, const OnePointSoil& limits);

/// From which results a new field maximum is asked; settings.
struct FieldMaximumRange {
    double below = 0;    ///< percent compaction, 95.0 in one state
    double atLeast = 0;  ///< percent compaction, 103.0 in one state
};

/// Yes for a percent below the one or at least the other. @error Refused for a percent not above 0. @source [SC-T27]
Result<YesNo> needsFieldMaximum(PercentCompaction found, const FieldMaximumRange& range);

}  // namespace groundcount::method
