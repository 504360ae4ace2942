#pragma once

#include "method/explain/explain_steps.h"
#include "method/site/moisture_sample.h"
#include "method/soil/compaction_test.h"
#include "method/soil/plausibility.h"

/// The arithmetic of the laboratory's specimens and of a check sample as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// compactedPoint(). @source [UFC-322020], [OH-CAEW4]
std::vector<ExplainStep> explainSpecimen(double grossKg, double tareKg, double volumeM3, WaterContent content, const CompactedPoint& point, DensityUnit unit);

/// compactionEnergyFtLbfPerFt3(). @source [D698-SCOPE]
std::vector<ExplainStep> explainCompactionEnergy(double rammerLbf, Length drop, double layers, double blowsPerLayer, double volumeM3, double ftLbfPerFt3);

/// relativeDensityFromVoids(). @source [UFC-322020]
std::vector<ExplainStep> explainRelativeDensityFromVoids(double e, double eMax, double eMin, double percent);

/// plausibility(). @param what the figure's name @param unitWord of the figure @param source KEY of the range
std::vector<ExplainStep> explainPlausibility(const std::string& what, double value, double low, double high, const std::string& unitWord, Plausibility found,
                                             const std::string& source);

/// leastMoistureSampleG(): the row that the largest particle falls into. @source [D2216-TXT], [WAQTC-T255]
std::vector<ExplainStep> explainMoistureSample(MoistureSampleRule rule, Length largestParticle, double leastG);

/// "usual", "below the usual", "above the usual".
const char* word(Plausibility plausibility);

}  // namespace groundcount::method
