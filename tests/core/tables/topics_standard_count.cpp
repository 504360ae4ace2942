#include "cells.h"
#include "topics.h"

#include "method/gauge/decay.h"
#include "method/gauge/stability.h"
#include "method/gauge/standard_count.h"

#include <cmath>

// The daily check of the gauge: standard counts, decay, stability, drift.
namespace groundcount::tables {
namespace {

using namespace groundcount::method;

Result<Outcome> decayFactorTopic(const Row& row)
{
    return decayFactor(row.number("half_life_days"), row.number("elapsed_days")).map([](double factor) {
        return Outcome{"ok", {{"want_factor", factor}}, {}};
    });
}

Result<Outcome> halfLife(const Row& row)
{
    const std::string& unit = row.text("value_unit");
    const TimeUnit time = unit == "s"         ? TimeUnit::Seconds
                          : unit == "d"       ? TimeUnit::Days
                          : unit == "y365"    ? TimeUnit::Years365
                          : unit == "y365.25" ? TimeUnit::Years365Quarter
                                              : (unknownWord("value_unit", unit), TimeUnit::Days);
    return halfLifeDays(row.number("value"), time).map([](double days) {
        return Outcome{"ok", {{"want_days", days}, {"want_years_365_25", days / 365.25}}, {}};
    });
}

Result<Outcome> drift(const Row& row)
{
    return driftCheck(row.numbers("first_counts"), row.numbers("second_counts"), row.number("limit_pct")).map([](const DriftCheck& check) {
        return Outcome{check.isAccepted ? "pass" : "fail",
                       {{"want_first_mean", check.firstMean}, {"want_second_mean", check.secondMean}, {"want_change_pct", check.changePercent}},
                       {}};
    });
}

Result<Outcome> stability(const Row& row)
{
    return stabilityCheck(row.numbers("counts"), row.number("prescale"), row.number("band_low"), row.number("band_high"))
        .map([](const StabilityCheck& check) {
            const char* word = check.verdict == BandVerdict::Inside ? "pass" : check.verdict == BandVerdict::AboveBand ? "fail_high" : "fail_low";
            return Outcome{word, {{"want_mean", check.mean}, {"want_sd", check.sd}, {"want_ratio", check.ratio}, {"want_scaled_ratio", check.scaledRatio}}, {}};
        });
}

Result<Outcome> stabilityBandTopic(const Row& row)
{
    const int n = static_cast<int>(row.number("n"));
    const auto band = stabilityBand(n, row.number("confidence_pct") / 100.0);
    if (!band)
        return errorOf(band);
    Outcome outcome{"ok", {{"want_low", band->low}, {"want_high", band->high}}, {}};
    if (row.has("rule_low")) {
        const auto outside = chanceOutside(n, row.number("rule_low"), row.number("rule_high"));
        if (!outside)
            return errorOf(outside);
        outcome.want["want_prob_outside"] = *outside;
    }
    return outcome;
}

Result<Outcome> stdCountPercent(const Row& row)
{
    const Averaging averaging{static_cast<int>(row.numberOr("k", 4)),
                              row.has("few") && row.text("few") == "refuse" ? FewCounts::Refuse : FewCounts::AverageThem};
    return percentCheck(row.numbers("previous_counts"), row.number("today_count"), row.number("limit_pct"), averaging).map([](const PercentCheck& check) {
        return Outcome{check.isAccepted ? "pass" : "fail", {{"want_average", check.mean}, {"want_diff_pct", std::fabs(check.deviationPercent)}}, {}};
    });
}

Result<Outcome> stdCountTwoStep(const Row& row)
{
    const TwoStepLimits limits{row.number("first_limit_pct"), row.number("pair_limit_pct"), row.number("established_limit_pct")};
    const auto second = row.has("second_count") ? std::optional(row.number("second_count")) : std::nullopt;
    return twoStepCheck(row.number("established"), row.number("first_count"), second, limits).map([](const TwoStepCheck& check) {
        static constexpr const char* kWords[] = {"accept_first", "take_second", "accept_second", "fail"};
        Outcome outcome{kWords[static_cast<int>(check.outcome)], {{"want_first_diff_pct", check.firstPercent}}, {}};
        if (check.pairPercent)
            outcome.want["want_pair_diff_pct"] = *check.pairPercent;
        if (check.secondPercent)
            outcome.want["want_second_diff_pct"] = *check.secondPercent;
        return outcome;
    });
}

Result<Outcome> stdCountStatistical(const Row& row)
{
    return statisticalCheck(row.number("average_count"), row.number("today_count"), row.number("prescale"), row.number("z"))
        .map([](const StatisticalCheck& check) {
            return Outcome{check.isAccepted ? "pass" : "fail", {{"want_limit_counts", check.limitCounts}, {"want_abs_diff", check.difference}}, {}};
        });
}

Result<Outcome> stdCountDecayBand(const Row& row)
{
    return decayBand(row.number("calibration_count"), row.number("elapsed_days"), row.number("half_life_days"), row.number("tolerance_fraction"), row.number("today_count"))
        .map([](const DecayBand& band) {
            return Outcome{band.isAccepted ? "pass" : "fail", {{"want_lower", band.lower}, {"want_upper", band.upper}}, {}};
        });
}

}  // namespace

std::vector<Topic> standardCountTopics()
{
    return {{"decay_factor", decayFactorTopic},
            {"half_life", halfLife},
            {"drift", drift},
            {"stability", stability},
            {"stability_band", stabilityBandTopic},
            {"std_count_percent", stdCountPercent},
            {"std_count_two_step", stdCountTwoStep},
            {"std_count_statistical", stdCountStatistical},
            {"std_count_decay_band", stdCountDecayBand}};
}

}  // namespace groundcount::tables
