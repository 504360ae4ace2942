#pragma once

#include "method/explain/explain_steps.h"
#include "method/gauge/calibration.h"
#include "method/gauge/decay.h"

#include <optional>
#include <span>

/// The arithmetic of a gauge's calibration and of its sources' decay as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// wetDensity(), and its way back: the ratio of that density, and what one count in a thousand does to it.
/// @param ratio what the density came from @source [D7759-WK], [D6938-TXT]
std::vector<ExplainStep> explainWetDensity(const DensityCurve& curve, double ratio, WetDensity wet, DensityUnit unit);

/// waterDensity(), and its way back. @source [D6938-TXT]
std::vector<ExplainStep> explainWaterDensity(const WaterCurve& curve, double ratio, WaterDensity water, DensityUnit unit);

/// wetDensityFromTable(): the two rows and what lies between them. @param c C of the curve where it is known
/// @source [COMPUTED]
std::vector<ExplainStep> explainWetDensityFromTable(std::span<const CalibrationRow> rows, double ratio, std::optional<double> c, WetDensity wet,
                                                    DensityUnit unit);

/// decayFactor(). @source [D6938-TXT], [HL-NIST]
std::vector<ExplainStep> explainDecay(double halfLifeDays, double elapsedDays, double factor);

/// halfLifeDays(). @source [HL-BO], [HL-DDEP]
std::vector<ExplainStep> explainHalfLife(double value, TimeUnit timeUnit, double days);

}  // namespace groundcount::method
