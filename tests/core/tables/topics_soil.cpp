#include "cells.h"
#include "topics.h"

#include "method/accept/second_reading.h"
#include "method/soil/in_place.h"
#include "method/soil/plausibility.h"
#include "method/soil/relative_density.h"

#include <cmath>

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

WaterContent content(const Row& row, const std::string& column) { return WaterContent::percent(row.number(column)); }

Result<Outcome> densityChain(const Row& row)
{
    const double unit = kgPerM3Of(row.text("unit"));
    const auto wet = WetDensity::kgPerM3(row.number("wet") * unit);
    const std::string& route = row.text("route");
    if (route != "subtract" && route != "oven")
        unknownWord("route", route);
    const auto place = route == "subtract" ? dryFromWater(wet, WaterDensity::kgPerM3(row.number("water_mass") * unit))
                                           : dryFromContent(wet, content(row, "w_pct"));
    if (!place)
        return errorOf(place);
    Outcome outcome{"ok",
                    {{"want_dry", place->dry.kgPerM3() / unit},
                     {"want_w_pct", place->content.percent()},
                     {"want_water_mass", place->water.kgPerM3() / unit}},
                    {}};
    if (row.has("max_dry")) {
        const auto compaction = percentCompaction(place->dry, DryDensity::kgPerM3(row.number("max_dry") * unit));
        if (!compaction)
            return errorOf(compaction);
        outcome.want["want_pc_pct"] = compaction->percent();
    }
    return outcome;
}

Result<Outcome> dryFromWet(const Row& row)
{
    const double unit = kgPerM3Of(row.text("unit"));
    return dryFromContent(WetDensity::kgPerM3(row.number("wet") * unit), content(row, "w_pct")).map([&](const DryResult& r) {
        return Outcome{"ok", {{"want_dry", r.dry.kgPerM3() / unit}}, {}};
    });
}

// Columns without a stated unit: everything in the unit of water_density, so 1 of it stands for 1 kg/m3.

Result<Outcome> saturation(const Row& row)
{
    return voids(DryDensity::kgPerM3(row.number("dry")), content(row, "w_pct"), row.number("Gs"), DensityOfWater::kgPerM3(row.number("water_density")))
        .map([](const Voids& v) {
            return Outcome{v.isPossible() ? "ok" : "impossible",
                           {{"want_void_ratio", v.voidRatio}, {"want_saturation_pct", v.saturationPercent}, {"want_air_voids_pct", v.airVoidsPercent}},
                           {}};
        });
}

Result<Outcome> zeroAirVoids(const Row& row)
{
    const double gs = row.number("Gs");
    const auto rhoW = DensityOfWater::kgPerM3(row.number("water_density"));
    const double airVoids = row.numberOr("air_voids_pct", 0.0);
    // A row is either a line of saturation (air voids 0) or a line of air voids; both are asked, so that both guards act.
    const auto bySaturation = dryAtSaturation(gs, rhoW, content(row, "w_pct"), row.numberOr("saturation_pct", 100.0));
    const auto byAirVoids = dryAtAirVoids(gs, rhoW, content(row, "w_pct"), airVoids);
    if (!bySaturation || !byAirVoids)
        return errorOf(bySaturation ? byAirVoids : bySaturation);
    return Outcome{"ok", {{"want_density", (airVoids > 0 ? *byAirVoids : *bySaturation).kgPerM3()}}, {}};
}

Result<Outcome> waterAtSaturationTopic(const Row& row)
{
    return waterAtSaturation(DryDensity::kgPerM3(row.number("dry")), row.number("Gs"), DensityOfWater::kgPerM3(row.number("water_density")))
        .map([](WaterContent w) { return Outcome{"ok", {{"want_w_sat_pct", w.percent()}}, {}}; });
}

Result<Outcome> relativeDensityTopic(const Row& row)
{
    const std::string& given = row.text("given");
    auto v = row.numbers("values");
    v.resize(3, std::nan(""));
    Outcome outcome;
    double percent = v[0];
    if (given == "void_ratios") {
        const auto found = relativeDensityFromVoids(v[0], v[1], v[2]);
        if (!found)
            return errorOf(found);
        percent = *found;
    } else {
        const auto maximum = DryDensity::kgPerM3(v[1]);
        const auto minimum = DryDensity::kgPerM3(v[2]);
        auto dry = Result<DryDensity>(DryDensity::kgPerM3(v[0]));
        if (given == "percent_compaction")
            dry = requiredDry(maximum, PercentCompaction::percent(v[0]));
        else if (given.starts_with("relative") || given.starts_with("dr"))
            dry = dryAtRelativeDensity(v[0], maximum, minimum);
        else if (given != "unit_weights")
            unknownWord("given", given);
        if (!dry)
            return errorOf(dry);
        const auto found = relativeDensity(*dry, maximum, minimum);
        const auto compaction = percentCompaction(*dry, maximum);
        if (!found || !compaction)
            return found ? errorOf(compaction) : errorOf(found);
        percent = *found;
        outcome.want = {{"want_dry", dry->kgPerM3()}, {"want_pc_pct", compaction->percent()}};
    }
    outcome.want["want_dr_pct"] = percent;
    outcome.result = percent > 100.0 + 1e-9 ? "above_100" : percent < -1e-9 ? "below_0" : "ok";
    return outcome;
}

Result<Outcome> requiredDensity(const Row& row)
{
    return requiredDry(DryDensity::kgPerM3(row.number("max_dry")), PercentCompaction::percent(row.number("required_pct"))).map([](DryDensity d) {
        return Outcome{"ok", {{"want_required", d.kgPerM3()}}, {}};
    });
}

// The table is data: its bounds have to be usable, and a value beyond them has to come back as a warning, not an Error.
Result<Outcome> plausibilityTopic(const Row& row)
{
    // A bound left out is open.
    const double low = row.numberOr("low", -1e6);
    const double high = row.numberOr("high", 1e6);
    Outcome outcome{"warning_only", {}, {}};
    for (const auto& [value, wanted] : {std::pair{low, Plausibility::Usual},
                                        {high, Plausibility::Usual},
                                        {low - 1, Plausibility::BelowUsual},
                                        {high + 1, Plausibility::AboveUsual}}) {
        const auto found = plausibility(value, low, high);
        if (!found)
            return errorOf(found);
        if (*found != wanted)
            outcome.objections.push_back("the warning for " + std::to_string(value) + " is wrong");
    }
    return outcome;
}

Result<Outcome> secondReading(const Row& row)
{
    const std::string& kind = row.text("limit_kind");
    if (kind != "absolute" && kind != "percent")
        unknownWord("limit_kind", kind);
    const auto differenceKind = kind == "absolute" ? DifferenceKind::Absolute : DifferenceKind::PercentOfFirst;
    const auto wet = compareReadings(row.number("wet_first"), row.number("wet_second"), differenceKind, row.number("limit_wet"));
    if (!wet)
        return errorOf(wet);
    Outcome outcome{"average",
                    {{"want_difference", wet->difference}, {"want_difference_pct", wet->differencePct}, {"want_average_wet", wet->mean}},
                    {}};
    bool together = wet->agreement == Agreement::Together;
    if (row.has("water_first") || row.has("water_second")) {
        // Without a limit of its own the water is averaged but not judged.
        const auto water = compareReadings(row.number("water_first"), row.number("water_second"), differenceKind, row.numberOr("limit_water", 1e6));
        if (!water)
            return errorOf(water);
        together = together && water->agreement == Agreement::Together;
        outcome.want["want_average_water"] = water->mean;
    }
    outcome.result = together ? "average" : "move";
    return outcome;
}

struct LineInputs {
    double gs;
    WaterContent w;
    DensityOfWater rhoW;
};

LineInputs lineInputs(const Row& row)
{
    return {row.pairNumber("inputs", "Gs"), WaterContent::percent(row.pairNumber("inputs", "w_pct")),
            DensityOfWater::kgPerM3(row.pairNumber("inputs", "water"))};
}

Result<Outcome> wrongZeroAirVoids(const Row& row)
{
    const auto in = lineInputs(row);
    return dryAtSaturation(in.gs, in.rhoW, in.w, 100.0).map([&](DryDensity d) { return wrongBeside(row, d.kgPerM3()); });
}

/// Distance between the line of 95 % saturation and the line of 5 % air voids.
Result<Outcome> wrongLinesDiffer(const Row& row)
{
    const auto in = lineInputs(row);
    const auto saturationLine = dryAtSaturation(in.gs, in.rhoW, in.w, 95.0);
    const auto airLine = dryAtAirVoids(in.gs, in.rhoW, in.w, 5.0);
    if (!saturationLine || !airLine)
        return errorOf(saturationLine ? airLine : saturationLine);
    return wrongBeside(row, saturationLine->kgPerM3() - airLine->kgPerM3());
}

}  // namespace

std::vector<Topic> soilTopics()
{
    return {{"density_chain", densityChain},
            {"dry_from_wet", dryFromWet},
            {"saturation", saturation},
            {"zero_air_voids", zeroAirVoids},
            {"water_at_saturation", waterAtSaturationTopic},
            {"relative_density", relativeDensityTopic},
            {"required_density", requiredDensity},
            {"plausibility", plausibilityTopic},
            {"second_reading", secondReading},
            {"published_but_wrong/zero_air_voids", wrongZeroAirVoids},
            {"published_but_wrong/lines_differ", wrongLinesDiffer}};
}

}  // namespace groundcount::tables
