#include "cells.h"
#include "topics.h"

#include "method/gauge/calibration.h"
#include "method/gauge/offsets.h"

#include <algorithm>
#include <cmath>

// Trench offset, density bias, moisture correction.
namespace groundcount::tables {
namespace {

using namespace groundcount::method;

constexpr double kLb = kKgPerM3PerLbPerFt3;

WaterCurve waterCurve(const Row& row)
{
    WaterCurve curve;
    curve.e = row.number("E");
    curve.slopePerKgPerM3 = row.number("slope_per_lb_ft3") / kLb;
    return curve;
}

Result<Outcome> trench(const Row& row)
{
    const double outside = row.number("standard_outside");
    const double inTrench = row.number("standard_in_trench");
    const double count = row.number("field_count");
    const auto offset = trenchOffset(inTrench, outside);
    if (!offset)
        return errorOf(offset);
    const auto corrected = trenchCorrected(count, inTrench, outside);
    if (!corrected)
        return errorOf(corrected);
    Outcome outcome{offset->percentOfStandard > row.numberOr("warn_pct", 20.0) ? "warn" : "ok", {{"want_offset_counts", offset->counts}}, {}};
    const auto wet = lbCell<WetDensity>(row, "wet_lb_ft3");
    const WaterCurve curve = waterCurve(row);
    for (const auto& [name, n] : {std::pair<std::string, double>{"raw", count}, {"corrected", *corrected}}) {
        const auto ratio = countRatio(n, outside);
        if (!ratio)
            return errorOf(ratio);
        const auto water = waterDensity(curve, *ratio);
        if (!water)
            return errorOf(water);
        const auto dry = dryFromGauge(wet, *water);
        if (!dry)
            return errorOf(dry);
        outcome.want["want_ratio_" + name] = *ratio;
        outcome.want["want_water_" + name] = water->lbPerFt3();
        outcome.want["want_dry_" + name] = dry->dry.lbPerFt3();
    }
    return outcome;
}

Result<Outcome> densityBiasTopic(const Row& row)
{
    const auto bias = densityBias(densities<WetDensity>(row, "reference_wet", 1), densities<WetDensity>(row, "gauge_wet", 1),
                                  row.numberOr("level", 0.05));
    if (!bias)
        return errorOf(bias);
    return Outcome{bias->isSignificant ? "significant" : "not_significant",
                   {{"want_bias", bias->kgPerM3}, {"want_sd", bias->sdKgPerM3}, {"want_t", bias->t}, {"want_t_critical", bias->tCritical}},
                   {}};
}

MoistureVariant variantNamed(const std::string& word)
{
    for (const auto& [name, variant] : {std::pair<std::string, MoistureVariant>{"k_dry", MoistureVariant::DryBasis},
                                        {"k_wet", MoistureVariant::WetBasis},
                                        {"mass_offset", MoistureVariant::MassOffset},
                                        {"percent_offset", MoistureVariant::PercentOffset},
                                        {"ratio", MoistureVariant::Ratio}})
        if (name == word)
            return variant;
    unknownWord("variant", word);
}

/// Factor as the tables show it: per mille on the two k, lb/ft3, points, plain.
double shownFactor(const MoistureCorrection& correction)
{
    switch (correction.variant) {
    case MoistureVariant::DryBasis:
    case MoistureVariant::WetBasis:
        return correction.factor * 1000.0;
    case MoistureVariant::MassOffset:
        return correction.factor / kLb;
    default:
        return correction.factor;
    }
}

Result<Outcome> moistureCorrection(const Row& row)
{
    const auto wet = lbCell<WetDensity>(row, "apply_wet");
    const auto water = lbCell<WaterDensity>(row, "apply_water");
    Outcome outcome;
    Result<DryResult> dry = dryFromGauge(wet, water);
    if (row.text("variant") != "none") {
        const auto oven = row.numbers("oven_pct");
        const auto wets = row.numbers("sample_wet");
        const auto waters = row.numbers("sample_gauge_water");
        // A list that is too short leaves NaN, which core refuses.
        const auto at = [](const std::vector<double>& list, std::size_t i) { return i < list.size() ? list[i] : std::nan(""); };
        std::vector<MoistureSample> samples;
        for (std::size_t i = 0; i < std::max({oven.size(), wets.size(), waters.size()}); ++i)
            samples.push_back({WaterContent::percent(at(oven, i)), WetDensity::lbPerFt3(at(wets, i)), WaterDensity::lbPerFt3(at(waters, i))});
        const auto calibration = moistureCalibration(variantNamed(row.text("variant")), samples, static_cast<int>(row.numberOr("min_samples", 1)));
        if (!calibration)
            return errorOf(calibration);
        outcome.want["want_factor"] = shownFactor(calibration->correction);
        dry = dryFromGauge(wet, water, calibration->correction);
    }
    if (!dry)
        return errorOf(dry);
    outcome.want["want_w_pct"] = dry->content.percent();
    outcome.want["want_dry"] = dry->dry.lbPerFt3();
    if (row.has("max_dry")) {
        const auto compaction = percentCompaction(dry->dry, lbCell<DryDensity>(row, "max_dry"));
        if (!compaction)
            return errorOf(compaction);
        outcome.want["want_pc_pct"] = compaction->percent();
    }
    return outcome;
}

Result<Outcome> kDryOnWet(const Row& row)
{
    const auto wet = WetDensity::lbPerFt3(row.pairNumber("inputs", "wet"));
    const auto water = WaterDensity::lbPerFt3(row.pairNumber("inputs", "water"));
    const MoistureSample sample{WaterContent::percent(row.pairNumber("inputs", "oven_pct")), wet, water};
    const auto calibration = moistureCalibration(MoistureVariant::DryBasis, std::span(&sample, 1), 1);
    if (!calibration)
        return errorOf(calibration);
    return dryFromGauge(wet, water, calibration->correction).map([&](const DryResult& r) { return wrongBeside(row, r.content.percent()); });
}

Result<Outcome> moistureCheckTopic(const Row& row)
{
    return moistureCheck(WaterContent::percent(row.number("gauge_pct")), WaterContent::percent(row.number("oven_pct")), row.number("limit_pts"))
        .map([](const MoistureCheck& check) {
            return Outcome{check.use == MoistureSource::Gauge ? "gauge" : "oven", {{"want_difference_pts", check.differencePoints}}, {}};
        });
}

}  // namespace

std::vector<Topic> offsetTopics()
{
    return {{"trench", trench},
            {"density_bias", densityBiasTopic},
            {"moisture_correction", moistureCorrection},
            {"published_but_wrong/k_dry_on_wet", kDryOnWet},
            {"moisture_check", moistureCheckTopic}};
}

}  // namespace groundcount::tables
