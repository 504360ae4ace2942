#pragma once

#include "method/explain/explain_steps.h"
#include "method/uncertainty/compaction.h"

/// The arithmetic of uncertainty as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// ratioUncertainty(). @source [COMPUTED]
std::vector<ExplainStep> explainRatioUncertainty(const Counting& counting, const RatioUncertainty& ratio);
/// wetUncertainty(). @source [COMPUTED]
std::vector<ExplainStep> explainWetUncertainty(const RatioUncertainty& ratio, double bPerKgPerM3, double c, WetDensity u, DensityUnit unit);
/// waterUncertainty(). @source [COMPUTED]
std::vector<ExplainStep> explainWaterUncertainty(const RatioUncertainty& ratio, double slopePerKgPerM3, WaterDensity u, DensityUnit unit);

/// A figure of one test with its standard uncertainty.
template <class Figure>
struct Uncertain {
    Figure value;
    Figure standard;
};
/// compactionUncertainty() with water by subtraction: the parts, which one dominates, the chance to meet the limit, last
/// the expanded uncertainty. @source [COMPUTED], [GI-TOOLS]
std::vector<ExplainStep> explainCompactionUncertainty(const Uncertain<WetDensity>& wet, const Uncertain<WaterDensity>& water,
                                                      const Uncertain<DryDensity>& maximum, double requiredPct,
                                                      const CompactionUncertainty& u, DensityUnit unit);
/// compactionUncertainty() with water content from the oven. @source [COMPUTED], [GI-TOOLS]
std::vector<ExplainStep> explainCompactionUncertainty(const Uncertain<WetDensity>& wet, const Uncertain<WaterContent>& content,
                                                      const Uncertain<DryDensity>& maximum, double requiredPct,
                                                      const CompactionUncertainty& u, DensityUnit unit);

}  // namespace groundcount::method
