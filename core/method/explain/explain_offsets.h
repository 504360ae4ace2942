#pragma once

#include "method/explain/explain_steps.h"
#include "method/gauge/offsets.h"

/// The arithmetic of the offsets of a gauge as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// densityBias(); a bias is shown beside what chance alone would give. @source [AB-ATT48], [DESIGN]
std::vector<ExplainStep> explainDensityBias(std::span<const WetDensity> reference, std::span<const WetDensity> gauge, double level,
                                            const DensityBias& bias, DensityUnit unit);
/// moistureCalibration(): one step per sample, then the mean factor and its scatter. @source [COMMON], [COMPUTED], [AB-ATT48]
std::vector<ExplainStep> explainMoistureCalibration(std::span<const MoistureSample> samples, const MoistureCalibration& calibration,
                                                    DensityUnit unit);
/// moistureCheck(). @source [WAQTC-T310]
std::vector<ExplainStep> explainMoistureCheck(WaterContent gauge, WaterContent oven, double limitPoints, const MoistureCheck& check);

/// A factor with the unit of its variant: plain, points or a density.
std::string factorText(const MoistureCorrection& correction, DensityUnit unit);

}  // namespace groundcount::method
