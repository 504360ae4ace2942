#include "cells.h"
#include "topics.h"

#include "method/uncertainty/compaction.h"

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

constexpr double kLb = kKgPerM3PerLbPerFt3;

Result<Outcome> gaugePrecisionTopic(const Row& row)
{
    return gaugePrecision(row.number("count_per_min"), row.number("prescale"), row.number("slope_counts_per_lb_ft3") / kLb).map([](WetDensity p) {
        return Outcome{"ok", {{"want_precision", p.lbPerFt3()}}, {}};
    });
}

Result<Outcome> uncertaintyCounting(const Row& row)
{
    const auto ratio = ratioUncertainty({row.number("test_count"), row.number("standard_count"), row.number("prescale"),
                                         row.number("test_minutes"), row.number("standard_minutes")});
    if (!ratio)
        return tl::unexpected(ratio.error());
    Outcome outcome{"ok", {{"want_rel_u_ratio", ratio->relative}, {"want_u_ratio", ratio->absolute}}, {}};
    const std::string& channel = row.text("channel");
    if (channel != "density" && channel != "moisture")
        unknownWord("channel", channel);
    const auto quantity = channel == "density"
                              ? wetUncertainty(*ratio, row.number("B_per_lb_ft3") / kLb, row.number("C")).map([](WetDensity u) { return u.lbPerFt3(); })
                              : waterUncertainty(*ratio, row.number("slope_per_lb_ft3") / kLb).map([](WaterDensity u) { return u.lbPerFt3(); });
    if (!quantity)
        return tl::unexpected(quantity.error());
    outcome.want["want_u_quantity"] = *quantity;
    return outcome;
}

// The unit of a row is one throughout; 1 of it stands for 1 kg/m3.
Result<Outcome> uncertaintyChain(const Row& row)
{
    const auto wet = WetDensity::kgPerM3(row.number("wet"));
    const auto uWet = WetDensity::kgPerM3(row.number("u_wet"));
    const auto maximum = DryDensity::kgPerM3(row.number("max_dry"));
    const auto uMaximum = DryDensity::kgPerM3(row.number("u_max"));
    const std::string& route = row.text("route");
    if (route != "subtract" && route != "oven")
        unknownWord("route", route);
    const auto u = route == "subtract"
                       ? compactionUncertainty(wet, uWet, WaterDensity::kgPerM3(row.number("water_mass")),
                                               WaterDensity::kgPerM3(row.number("u_water_mass")), maximum, uMaximum)
                       : compactionUncertainty(wet, uWet, WaterContent::percent(row.number("w_pct")),
                                               WaterContent::percent(row.number("u_w_pct")), maximum, uMaximum);
    if (!u)
        return tl::unexpected(u.error());
    Outcome outcome{"ok",
                    {{"want_dry", u->dry.kgPerM3()}, {"want_u_dry", u->dryStandard.kgPerM3()}, {"want_pc_pct", u->compactionPct},
                     {"want_u_pc", u->standardPct}, {"want_expanded_k2", u->expandedPct}},
                    {}};
    if (row.has("required_pct"))
        outcome.want["want_prob_at_least"] = u->chanceAtLeast(row.number("required_pct"));
    return outcome;
}

}  // namespace

std::vector<Topic> uncertaintyTopics()
{
    return {{"gauge_precision", gaugePrecisionTopic}, {"uncertainty_counting", uncertaintyCounting}, {"uncertainty_chain", uncertaintyChain}};
}

}  // namespace groundcount::tables
