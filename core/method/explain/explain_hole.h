#pragma once

#include "method/explain/explain_steps.h"
#include "method/soil/drying.h"
#include "method/soil/hole.h"

/// The arithmetic of the tests that check a gauge, dug or dried, as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// holeVolumeBySand() and wetInHole(). @source [FILO-SC01]
std::vector<ExplainStep> explainSandCone(const SandMasses& sand, double sandKgPerM3, double volumeM3, double soilKg, WetDensity wet,
                                         DensityUnit unit);
/// holeVolumeByBalloon() and wetInHole(). @source [COMMON], [FILO-SC01]
std::vector<ExplainStep> explainBalloon(double initialM3, double finalM3, double volumeM3, double soilKg, WetDensity wet, DensityUnit unit);
/// controlFraction(). @source [D5030-13A]
std::vector<ExplainStep> explainControlFraction(const HoleWithStones& hole, const ControlFraction& control, DensityUnit unit);
/// driedSample(), oven or microwave. @source [CALC-MC]
std::vector<ExplainStep> explainDried(double can, double wetWithCan, double dryWithCan, const DriedSample& sample);
/// carbideSample(). @source [CARBIDE-NOTE], [T217-14]
std::vector<ExplainStep> explainCarbide(double dialPercent, CarbideSample size, const DriedSample& sample);
/// constantMass(). @source [WAQTC-T255]
std::vector<ExplainStep> explainConstantMass(double previous, double current, double limitPercent, const ConstantMass& mass);

}  // namespace groundcount::method
