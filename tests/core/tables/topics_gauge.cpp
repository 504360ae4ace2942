#include "cells.h"
#include "topics.h"

#include "method/gauge/calibration.h"

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

}  // namespace

std::vector<Topic> gaugeTopics()
{
    return {{"units", units},
            {"calibration_step_error", calibrationStepError},
            {"calibration_table", calibrationTable},
            {"calibration_units", calibrationUnits},
            {"density_from_counts", densityFromCounts},
            {"moisture_from_counts", moistureFromCounts},
            {"sensitivity", sensitivity}};
}

}  // namespace groundcount::tables
