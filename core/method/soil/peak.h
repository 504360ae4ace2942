#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace groundcount::method {

/// One point of a moisture-density test.
struct CompactionPoint {
    WaterContent content;
    DryDensity dry;
};

/// A peak: optimum water content and maximum dry density.
struct Peak {
    WaterContent optimum;
    DryDensity maximum;
};

/// Specific gravity and water for the check against saturation.
struct SolidsAndWater {
    double gs = 0;
    DensityOfWater rhoW;
};

/// Reasons to look again; reported in this order.
enum class PeakWarning { FewPoints, OneSide, Gap, AboveZeroAirVoids, MethodsDisagree };

/// "few_points", "one_side", "gap", "above_zero_air_voids", "methods_disagree".
std::string_view word(PeakWarning warning);

/// Settings of the automatic peak; the values are those of the method. @source [DESIGN]
struct PeakRules {
    DryDensity hump = DryDensity::kgPerM3(8.0);              ///< an inner point lower than both neighbours by more: refused
    int fewPoints = 4;                                       ///< warn below
    int perSide = 2;                                         ///< warn for fewer points on a side of the optimum found
    double gapPoints = 3.0;                                  ///< warn above, w to a neighbour of the highest point
    double disagreePoints = 0.5;                             ///< warn above, optimum by the three methods
    DryDensity disagreeDensity = DryDensity::lbPerFt3(1.0);  ///< warn above, maximum by the three methods
};

/// The peak by three methods. The local parabola is the one recommended; a peak entered by hand stays possible.
struct PeakSearch {
    Peak local;                     ///< parabola through the highest point and its two neighbours
    std::optional<Peak> parabola;   ///< least squares through all points; none when it opens upward
    Peak spline;                    ///< natural cubic spline through all points
    std::vector<PeakWarning> warnings;
};

/// Sorts by water content and finds the peak.
/// @param points at least 3, in any order @param solids when the specific gravity is known
/// @error Refused for fewer than 3 points, w below 0, a density not above 0, two points at one w, the highest point at
/// an end, a local parabola that opens upward, two humps. @source [COMPUTED], [D698-TXT], [VDOT-CH5]
Result<PeakSearch> findPeak(std::span<const CompactionPoint> points, const std::optional<SolidsAndWater>& solids,
                            const PeakRules& rules);

}  // namespace groundcount::method
