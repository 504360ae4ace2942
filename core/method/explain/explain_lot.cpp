#include "method/explain/explain_lot.h"

#include <cmath>

namespace groundcount::method {
namespace {

ExplainSteps percentSteps() { return ExplainSteps(DensityUnit::KgPerM3); }

std::string verdictText(const LotResult& lot) { return lot.verdict == LotVerdict::Pass ? "pass" : "fail"; }

std::string roundingText(const std::optional<MeanRounding>& rounding)
{
    return rounding ? ", rounded to " + std::to_string(rounding->places) + (rounding->places == 1 ? " place" : " places") : "";
}

std::vector<ExplainStep> judged(ExplainSteps&& s, const std::string& form, const LotResult& lot, const char* source)
{
    s.add("Lot", form, lot.because, verdictText(lot), source);
    return s.take();
}

const char* tableText(PwlTable table)
{
    switch (table) {
    case PwlTable::Exact: return "100 (1 \xE2\x88\x92 I(z; a, a)), a = n / 2 \xE2\x88\x92 1, z = 1/2 \xE2\x88\x92 Q root(n) / (2 (n \xE2\x88\x92 1))";
    case PwlTable::NextHigherWhole: return "table of whole percents, the next higher entry";
    case PwlTable::NearestWhole: break;
    }
    return "table of whole percents, the nearest entry";
}

const char* tableSource(PwlTable table)
{
    switch (table) {
    case PwlTable::Exact: return "AQLSCHEMES";
    case PwlTable::NextHigherWhole: return "AQLSCHEMES, WS-106";
    case PwlTable::NearestWhole: break;
    }
    return "AQLSCHEMES, P401-SLIDES";
}

}  // namespace

std::vector<ExplainStep> explainFrequency(const FrequencyRule& rule, const Decimal& quantity, int required, const std::string& unitWord)
{
    auto s = percentSteps();
    s.add("Tests required", "the larger of the minimum and tests per unit" + std::string(kTimes) + "quantity / unit, rounded up",
          "minimum " + std::to_string(rule.minimum) + "; " + std::to_string(rule.testsPerUnit) + kTimes + quantity.text() + " " + unitWord + " / " +
              rule.unitQuantity.text() + " " + unitWord,
          std::to_string(required), "FDOT-120, FP96-209");
    return s.take();
}

std::vector<ExplainStep> explainLot(std::span<const double> results, const EveryForm& form, const LotResult& lot)
{
    auto s = percentSteps();
    s.add("Results", "", figures(results), std::to_string(results.size()) + " results", "");
    return judged(std::move(s), "every result at least " + figure(form.minimum) + " %", lot, "DESIGN");
}

std::vector<ExplainStep> explainLot(std::span<const double> results, const BandForm& form, const LotResult& lot)
{
    auto s = percentSteps();
    s.add("Results", "", figures(results), std::to_string(results.size()) + " results", "");
    return judged(std::move(s), "every result from " + figure(form.minimum) + " to " + figure(form.maximum) + " %", lot, "COPPELL");
}

std::vector<ExplainStep> explainLot(std::span<const double> results, const MeanForm& form, const LotResult& lot)
{
    auto s = percentSteps();
    s.add("Mean", "sum of results / number" + roundingText(form.rounding), figures(results), figure(lot.decidingMean.value_or(0)) + " %", "COMMON");
    return judged(std::move(s), "mean at least " + figure(form.leastMean) + " %, none below " + figure(form.minimum) + " %", lot, "COMMON");
}

std::vector<ExplainStep> explainLot(std::span<const double> results, const MovingMeanForm& form, const LotResult& lot)
{
    auto s = percentSteps();
    s.add("Lowest moving mean", "mean of " + std::to_string(form.window) + " results in a row" + roundingText(form.rounding), figures(results),
          figure(lot.decidingMean.value_or(0)) + " %", "COMMON");
    return judged(std::move(s), "every moving mean at least " + figure(form.minimum) + " %", lot, "COMMON");
}

std::vector<ExplainStep> explainPwl(const PwlLimits& limits, const PwlChain& chain, const LotPwl& lot)
{
    auto s = percentSteps();
    const std::string n = std::to_string(lot.n), mean = figure(lot.mean), sd = figure(lot.sd);
    s.add("Mean and standard deviation", chain.meanPlaces || chain.sdPlaces ? "rounded as the rule set says; deviation with n \xE2\x88\x92 1" : "deviation with n \xE2\x88\x92 1",
          n + " results", mean + ", " + sd, "AQLSCHEMES");
    if (limits.lower && lot.qLower && lot.pLower) {
        s.add("Lower quality index", "(mean \xE2\x88\x92 lower limit) / deviation", "(" + mean + kMinus + figure(*limits.lower) + ") / " + sd, shown(*lot.qLower, 4), "AQLSCHEMES");
        s.add("Percent above the lower limit", tableText(chain.table), "Q " + shown(*lot.qLower, 4) + ", n " + n, shown(*lot.pLower, 2) + " %", tableSource(chain.table));
    }
    if (limits.upper && lot.qUpper && lot.pUpper) {
        s.add("Upper quality index", "(upper limit \xE2\x88\x92 mean) / deviation", "(" + figure(*limits.upper) + kMinus + mean + ") / " + sd, shown(*lot.qUpper, 4), "AQLSCHEMES");
        s.add("Percent below the upper limit", tableText(chain.table), "Q " + shown(*lot.qUpper, 4) + ", n " + n, shown(*lot.pUpper, 2) + " %", tableSource(chain.table));
    }
    if (lot.pLower && lot.pUpper)
        s.add("Percent within limits", "above lower + below upper \xE2\x88\x92 100, at least 0", shown(*lot.pLower, 2) + " + " + shown(*lot.pUpper, 2) + kMinus + "100",
              shown(lot.pwl, 2) + " %", "AQLSCHEMES");
    else
        s.add("Percent within limits", lot.pLower || lot.pUpper ? "one limit" : "no spread: 100 when the mean is within the limits, else 0", "mean " + mean,
              shown(lot.pwl, 2) + " %", lot.pLower || lot.pUpper ? "AQLSCHEMES" : "DESIGN");
    return s.take();
}

std::vector<ExplainStep> explainPay(std::span<const PayStep> steps, double pwl, double factor)
{
    auto s = percentSteps();
    for (const PayStep& step : steps) {
        if (!(pwl >= step.fromPwl))
            continue;
        s.add("Pay factor, information only", "(intercept + slope" + std::string(kTimes) + "percent within limits) / 100, from " + figure(step.fromPwl) + " % up",
              "(" + figure(step.intercept) + " + " + figure(step.slope) + kTimes + figure(pwl) + ") / 100", shown(factor, 4),
              steps.data() == linearPaySteps().data() ? "FDOT-334" : "FAA-P401");
        break;
    }
    return s.take();
}

}  // namespace groundcount::method
