#include "cells.h"
#include "topics.h"

#include "method/gauge/calibration.h"
#include "method/gauge/offsets.h"

#include <cmath>

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

constexpr double kLb = kKgPerM3PerLbPerFt3;

DensityCurve densityCurve(const Row& row)
{
    DensityCurve curve;
    curve.a = row.number("A");
    curve.bPerKgPerM3 = row.number("B_per_lb_ft3") / kLb;
    curve.c = row.number("C");
    return curve;
}

WaterCurve waterCurve(const Row& row)
{
    WaterCurve curve;
    curve.e = row.number("E");
    curve.slopePerKgPerM3 = row.number("slope_per_lb_ft3") / kLb;
    return curve;
}

Result<Outcome> units(const Row& row)
{
    return converted(row.number("value"), row.text("from_unit"), row.text("to_unit")).map([](double v) {
        return Outcome{"ok", {{"want_value", v}}, {}};
    });
}

Result<Outcome> calibrationStepError(const Row& row)
{
    return linearStepError(row.number("B_per_lb_ft3") / kLb, lbCell<WetDensity>(row, "step_lb_ft3"))
        .map([](WetDensity bound) { return Outcome{"ok", {{"want_bound_lb_ft3", bound.lbPerFt3()}}, {}}; });
}

Result<Outcome> calibrationTable(const Row& row)
{
    const auto densities = row.numbers("densities_lb_ft3");
    const auto ratios = row.numbers("ratios");
    std::vector<CalibrationRow> rows;
    for (std::size_t i = 0; i < densities.size() && i < ratios.size(); ++i)
        rows.push_back({WetDensity::lbPerFt3(densities[i]), ratios[i]});
    const double ratio = row.number("count_ratio");
    const auto linear = wetDensityFromTable(rows, ratio);
    if (!linear)
        return errorOf(linear);
    Outcome outcome{"ok", {{"want_linear_lb_ft3", linear->lbPerFt3()}}, {}};
    if (row.has("C")) {
        const auto log = wetDensityFromTable(rows, ratio, row.number("C"));
        if (!log)
            return errorOf(log);
        outcome.want["want_log_lb_ft3"] = log->lbPerFt3();
    }
    return outcome;
}

Result<Outcome> calibrationUnits(const Row& row)
{
    // The curve keeps B in SI: two densities on it, apart by 1 kg/m3, give B back as ln of the ratio of ratios.
    DensityCurve curve;
    curve.a = 1;
    curve.bPerKgPerM3 = row.number("B_per_lb_ft3") / kLb;
    const auto at = countRatioOf(curve, WetDensity::kgPerM3(2000.0));
    const auto slope = ratioPerWetDensity(curve, WetDensity::kgPerM3(2000.0));
    if (!at || !slope)
        return errorOf(at ? slope : at);
    const double b = -*slope / *at;
    return Outcome{"ok", {{"want_B_per_kg_m3", b}, {"want_B_per_g_cm3", b * 1000.0}}, {}};
}

Result<Outcome> densityFromCounts(const Row& row)
{
    const DensityCurve curve = densityCurve(row);
    const std::string& given = row.text("given");
    Outcome outcome;
    if (given == "density") {
        const auto ratio = countRatioOf(curve, lbCell<WetDensity>(row, "density_lb_ft3"));
        if (!ratio)
            return errorOf(ratio);
        outcome.want = {{"want_count_ratio", *ratio}};
        return outcome;
    }
    if (given != "ratio" && given != "counts")
        unknownWord("given", given);
    const auto ratio = given == "ratio" ? Result<double>(row.number("count_ratio"))
                                        : countRatio(row.number("test_count"), row.number("standard_count"));
    if (!ratio)
        return errorOf(ratio);
    const auto density = wetDensity(curve, *ratio);
    if (!density)
        return errorOf(density);
    outcome.want = {{"want_count_ratio", *ratio}, {"want_density_lb_ft3", density->lbPerFt3()}, {"want_density_kg_m3", density->kgPerM3()}};
    return outcome;
}

Result<Outcome> moistureFromCounts(const Row& row)
{
    const WaterCurve curve = waterCurve(row);
    const std::string& given = row.text("given");
    if (given == "moisture") {
        const auto water = lbCell<WaterDensity>(row, "moisture_lb_ft3");
        return countRatioOf(curve, water).map([&](double ratio) {
            return Outcome{"ok", {{"want_count_ratio", ratio}, {"want_moisture_lb_ft3", water.lbPerFt3()}, {"want_moisture_kg_m3", water.kgPerM3()}}, {}};
        });
    }
    if (given != "ratio" && given != "counts")
        unknownWord("given", given);
    const auto ratio = given == "ratio" ? Result<double>(row.number("count_ratio"))
                                        : countRatio(row.number("test_count"), row.number("standard_count"));
    if (!ratio)
        return errorOf(ratio);
    return waterDensity(curve, *ratio).map([&](WaterDensity water) {
        return Outcome{"ok", {{"want_count_ratio", *ratio}, {"want_moisture_lb_ft3", water.lbPerFt3()}, {"want_moisture_kg_m3", water.kgPerM3()}}, {}};
    });
}

Result<Outcome> sensitivity(const Row& row)
{
    const auto slope = ratioPerWetDensity(densityCurve(row), lbCell<WetDensity>(row, "density_lb_ft3"));
    if (!slope)
        return errorOf(slope);
    const double standard = row.number("standard_count");
    if (const auto sound = countRatio(standard, standard); !sound)
        return errorOf(sound);
    return Outcome{"ok", {{"want_ratio_per_lb_ft3", *slope * kLb}, {"want_counts_per_lb_ft3", *slope * kLb * standard}}, {}};
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

std::vector<Topic> gaugeTopics()
{
    return {{"units", units},
            {"calibration_step_error", calibrationStepError},
            {"calibration_table", calibrationTable},
            {"calibration_units", calibrationUnits},
            {"density_from_counts", densityFromCounts},
            {"moisture_from_counts", moistureFromCounts},
            {"sensitivity", sensitivity},
            {"trench", trench},
            {"density_bias", densityBiasTopic},
            {"moisture_correction", moistureCorrection},
            {"published_but_wrong/k_dry_on_wet", kDryOnWet},
            {"moisture_check", moistureCheckTopic}};
}

}  // namespace groundcount::tables
