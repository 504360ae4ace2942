#include "method/explain/explain_gauge.h"

#include "method/gauge/decay.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

// Counts of a display have no unit of density; the list needs one only for densities, and none is shown here.
ExplainSteps countSteps() { return ExplainSteps(DensityUnit::KgPerM3); }

const char* accepted(bool isAccepted) { return isAccepted ? "accepted" : "not accepted"; }

std::string percentOf(double difference, double base) { return "100" + std::string(kTimes) + figure(difference) + " / " + figure(base); }

}  // namespace

const char* word(TwoStepOutcome outcome)
{
    switch (outcome) {
    case TwoStepOutcome::AcceptFirst: return "take the first";
    case TwoStepOutcome::TakeSecond: return "take a second count";
    case TwoStepOutcome::AcceptSecond: return "take the second";
    case TwoStepOutcome::Fail: break;
    }
    return "fail";
}

const char* word(BandVerdict verdict)
{
    switch (verdict) {
    case BandVerdict::Inside: return "inside";
    case BandVerdict::AboveBand: return "above: noise";
    case BandVerdict::BelowBand: break;
    }
    return "below: not random";
}

std::vector<ExplainStep> explainPercentCheck(std::span<const double> earlier, double today, double limitPercent,
                                             const Averaging& averaging, const PercentCheck& check)
{
    auto s = countSteps();
    const auto used = earlier.last(std::min(earlier.size(), static_cast<std::size_t>(averaging.count)));
    s.add("Mean of the last " + std::to_string(used.size()), "sum of counts / number", figures(used), figure(check.mean) + " counts", "COMMON");
    s.add("Deviation", "100" + std::string(kTimes) + "(today \xE2\x88\x92 mean) / mean",
          percentOf(today - check.mean, check.mean), shown(check.deviationPercent, 2) + " %", "QCFORM-2011");
    s.add("Standard count", "deviation at most " + figure(limitPercent) + " %", shown(check.deviationPercent, 2) + " %",
          accepted(check.isAccepted), "QCFORM-2011");
    return s.take();
}

std::vector<ExplainStep> explainTwoStep(double established, double first, std::optional<double> second,
                                        const TwoStepLimits& limits, const TwoStepCheck& check)
{
    auto s = countSteps();
    s.add("First count", "100" + std::string(kTimes) + "|first \xE2\x88\x92 established| / established, at most " + figure(limits.firstPercent) + " %",
          percentOf(std::fabs(first - established), established), shown(check.firstPercent, 2) + " %", "IA-IM334");
    if (second && check.pairPercent)
        s.add("Two counts", "100" + std::string(kTimes) + "|second \xE2\x88\x92 first| / first, at most " + figure(limits.pairPercent) + " %",
              percentOf(std::fabs(*second - first), first), shown(*check.pairPercent, 2) + " %", "IA-IM334");
    if (second && check.secondPercent)
        s.add("Second count", "100" + std::string(kTimes) + "|second \xE2\x88\x92 established| / established, at most " + figure(limits.establishedPercent) + " %",
              percentOf(std::fabs(*second - established), established), shown(*check.secondPercent, 2) + " %", "IA-IM334");
    s.add("Standard count", "two-step rule", "", word(check.outcome), "IA-IM334");
    return s.take();
}

std::vector<ExplainStep> explainStatistical(double average, double today, double prescale, double z, const StatisticalCheck& check)
{
    auto s = countSteps();
    s.add("Limit", "z" + std::string(kTimes) + "root(average / prescale)",
          figure(z) + kTimes + "root(" + figure(average) + " / " + figure(prescale) + ")", shown(check.limitCounts, 1) + " counts", "D2922-TXT");
    s.add("Difference", "|today \xE2\x88\x92 average|", "|" + figure(today) + kMinus + figure(average) + "|", figure(check.difference) + " counts", "D2922-TXT");
    s.add("Standard count", "difference at most the limit", figure(check.difference) + " against " + shown(check.limitCounts, 1),
          accepted(check.isAccepted), "D2922-TXT");
    return s.take();
}

std::vector<ExplainStep> explainDecayBand(double calibrationCount, double elapsedDays, double halfLifeDays, double tolerance,
                                          double today, const DecayBand& band)
{
    auto s = countSteps();
    const auto factor = decayFactor(halfLifeDays, elapsedDays);
    if (!factor)
        return {};
    s.add("Decay", "exp(\xE2\x88\x92ln 2" + std::string(kTimes) + "days / half-life)",
          "exp(\xE2\x88\x92ln 2" + std::string(kTimes) + figure(elapsedDays) + " / " + figure(halfLifeDays) + ")", shown(*factor, 6), "HL-NIST");
    s.add("Band", "calibration count" + std::string(kTimes) + "decay" + kTimes + "(1 \xC2\xB1 tolerance)",
          figure(calibrationCount) + kTimes + shown(*factor, 6) + kTimes + "(1 \xC2\xB1 " + figure(tolerance) + ")",
          shown(band.lower, 1) + " to " + shown(band.upper, 1) + " counts", "D6938-TXT");
    s.add("Standard count", "inside the band", figure(today), accepted(band.isAccepted), "D6938-TXT");
    return s.take();
}

std::vector<ExplainStep> explainStability(std::span<const double> counts, double prescale, double low, double high,
                                          const StabilityCheck& check)
{
    auto s = countSteps();
    s.add("Mean", "sum of counts / number", figures(counts), figure(check.mean) + " counts", "D2922-TXT");
    s.add("Standard deviation", "root of the squared deviations / (number \xE2\x88\x92 1)", std::to_string(counts.size()) + " counts",
          figure(check.sd) + " counts", "D2922-TXT");
    s.add("Ratio", "deviation / root(mean)", figure(check.sd) + " / root(" + figure(check.mean) + ")", shown(check.ratio, 4), "D2922-TXT");
    s.add("Ratio of pulses", "ratio" + std::string(kTimes) + "root(prescale)", shown(check.ratio, 4) + kTimes + "root(" + figure(prescale) + ")",
          shown(check.scaledRatio, 4), "D2922-TXT");
    s.add("Stability", shown(low, 3) + " to " + shown(high, 3), shown(check.scaledRatio, 4), word(check.verdict), "D2922-TXT");
    return s.take();
}

std::vector<ExplainStep> explainStabilityBand(int n, double confidence, const StabilityBand& band)
{
    auto s = countSteps();
    const double alpha = 1 - confidence;
    const std::string df = std::to_string(n - 1);
    s.add("Band of the ratio", "root(chi-square(\xCE\xB1/2; n \xE2\x88\x92 1) / (n \xE2\x88\x92 1)) to root(chi-square(1 \xE2\x88\x92 \xCE\xB1/2; n \xE2\x88\x92 1) / (n \xE2\x88\x92 1))",
          "chi-square(" + figure(alpha / 2) + "; " + df + "), chi-square(" + figure(1 - alpha / 2) + "; " + df + ")",
          shown(band.low, 4) + " to " + shown(band.high, 4), "COMPUTED");
    return s.take();
}

std::vector<ExplainStep> explainDrift(std::span<const double> first, std::span<const double> second, double limitPercent,
                                      const DriftCheck& check)
{
    auto s = countSteps();
    s.add("First mean", "sum of counts / number", figures(first), figure(check.firstMean) + " counts", "DESIGN");
    s.add("Second mean", "sum of counts / number", figures(second), figure(check.secondMean) + " counts", "DESIGN");
    s.add("Change", "100" + std::string(kTimes) + "(second \xE2\x88\x92 first) / first",
          "100" + std::string(kTimes) + "(" + figure(check.secondMean) + kMinus + figure(check.firstMean) + ") / " + figure(check.firstMean),
          shown(check.changePercent, 3) + " %", "DESIGN");
    s.add("Drift", "change at most " + figure(limitPercent) + " %", shown(check.changePercent, 3) + " %", accepted(check.isAccepted), "DESIGN");
    return s.take();
}

std::vector<ExplainStep> explainTrench(double count, double inTrench, double outside, double corrected)
{
    auto s = countSteps();
    s.add("Trench offset", "standard in trench \xE2\x88\x92 standard outside", figure(inTrench) + kMinus + figure(outside),
          figure(inTrench - outside) + " counts, " + shown(100 * std::fabs(inTrench - outside) / outside, 1) + " % of the standard", "DESIGN");
    s.add("Corrected count", "count \xE2\x88\x92 offset", figure(count) + kMinus + figure(inTrench - outside), figure(corrected) + " counts", "DESIGN");
    return s.take();
}

}  // namespace groundcount::method
