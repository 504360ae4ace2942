#pragma once

#include "method/explain/explain_steps.h"
#include "method/soil/in_place.h"
#include "method/soil/one_point.h"
#include "method/soil/oversize.h"
#include "method/soil/peak.h"

/// The arithmetic of the laboratory's curve and of its corrections as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// findPeak(): local parabola first, the two other methods beside it, every warning, last the recommended peak.
/// @source [COMPUTED], [SE-3883], [D698-TXT]
std::vector<ExplainStep> explainPeak(std::span<const CompactionPoint> points, const PeakSearch& search, const PeakRules& rules,
                                     DensityUnit unit);
/// "fewer points than wanted" and so on, in words.
const char* sentenceOf(PeakWarning warning);

/// dryAtSaturation(); 100 % is the zero-air-voids line. @source [UFC-322020], [DAS9SI]
std::vector<ExplainStep> explainSaturationLine(double gs, DensityOfWater rhoW, WaterContent content, double saturationPct,
                                               DryDensity dry, DensityUnit unit);
/// voids(). @source [DAS9SI], [SMITH-EG]
std::vector<ExplainStep> explainVoids(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW, const Voids& voids,
                                      DensityUnit unit);

/// coarsePart() from moist masses of both fractions. @source [D4718-TXT]
std::vector<ExplainStep> explainCoarsePart(double moistFine, WaterContent fine, double moistCoarse, WaterContent coarse,
                                           const CoarseMasses& masses);
/// What the stones' correction is worked with.
struct CoarseCorrection {
    CoarsePart part;
    double gravity = 0;          ///< bulk oven-dry specific gravity of the coarse particles
    DensityOfWater rhoW;
    WaterContent coarseWater;
};
/// totalFromFine() and totalWaterFromFine(). @source [UFC-322020], [SMITH-142], [ND-T224]
std::vector<ExplainStep> explainTotalFromFine(const Peak& fine, const CoarseCorrection& stones, const Peak& total, DensityUnit unit);
/// fineFromTotal() and fineWaterFromTotal(). @source [D4718-TXT]
std::vector<ExplainStep> explainFineFromTotal(const Peak& total, const CoarseCorrection& stones, const Peak& fine, DensityUnit unit);

/// onePointPeak(). @source [DESIGN], [T272-04]
std::vector<ExplainStep> explainOnePoint(const FamilyCurve& low, const FamilyCurve& high, WaterContent content, DryDensity dry,
                                         const OnePointWindow& window, const OnePointPeak& peak, DensityUnit unit);

/// relativeDensity(). @param percent what it gave. @source [UFC-322020]
std::vector<ExplainStep> explainRelativeDensity(DryDensity dry, DryDensity maximum, DryDensity minimum, double percent, DensityUnit unit);

}  // namespace groundcount::method
