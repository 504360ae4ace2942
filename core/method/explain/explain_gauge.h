#pragma once

#include "method/explain/explain_steps.h"
#include "method/gauge/standard_count.h"
#include "method/gauge/stability.h"

#include <optional>

/// The arithmetic of the gauge's own checks as text. Each takes what the function took and what it gave; the last step
/// holds the judgement or the value.
namespace groundcount::method {

/// percentCheck(). @source [QCFORM-2011], [COMMON]
std::vector<ExplainStep> explainPercentCheck(std::span<const double> earlier, double today, double limitPercent,
                                             const Averaging& averaging, const PercentCheck& check);
/// twoStepCheck(). @source [IA-IM334]
std::vector<ExplainStep> explainTwoStep(double established, double first, std::optional<double> second,
                                        const TwoStepLimits& limits, const TwoStepCheck& check);
/// statisticalCheck(). @source [D2922-TXT]
std::vector<ExplainStep> explainStatistical(double average, double today, double prescale, double z, const StatisticalCheck& check);
/// decayBand(). @source [D6938-TXT], [HL-NIST]
std::vector<ExplainStep> explainDecayBand(double calibrationCount, double elapsedDays, double halfLifeDays, double tolerance,
                                          double today, const DecayBand& band);
/// stabilityCheck(). @source [D2922-TXT]
std::vector<ExplainStep> explainStability(std::span<const double> counts, double prescale, double low, double high,
                                          const StabilityCheck& check);
/// stabilityBand(). @source [COMPUTED]
std::vector<ExplainStep> explainStabilityBand(int n, double confidence, const StabilityBand& band);
/// driftCheck(). @source [DESIGN]
std::vector<ExplainStep> explainDrift(std::span<const double> first, std::span<const double> second, double limitPercent,
                                      const DriftCheck& check);
/// trenchOffset() and trenchCorrected(). @param corrected counts, what trenchCorrected() gave. @source [DESIGN]
std::vector<ExplainStep> explainTrench(double count, double inTrench, double outside, double corrected);

/// "take the first", "take a second count", "take the second", "fail".
const char* word(TwoStepOutcome outcome);
/// "inside", "above: noise", "below: not random".
const char* word(BandVerdict verdict);

}  // namespace groundcount::method
