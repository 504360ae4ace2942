#include "cells.h"
#include "topics.h"

#include "method/soil/one_point.h"
#include "method/soil/oversize.h"
#include "method/soil/parabola.h"
#include "method/soil/peak.h"

#include <cmath>

// The reference density: peak of a moisture-density test, one point and family, coarse particles.
namespace groundcount::tables {
namespace {

using namespace groundcount::method;

Result<Outcome> proctorPeaks(const Row& row)
{
    const double unit = kgPerM3Of(row.text("unit"));
    const auto w = row.numbers("w_pct");
    const auto dry = row.numbers("dry");
    std::vector<CompactionPoint> points;
    for (std::size_t i = 0; i < std::max(w.size(), dry.size()); ++i)
        points.push_back({WaterContent::percent(i < w.size() ? w[i] : std::nan("")), DryDensity::kgPerM3(i < dry.size() ? dry[i] * unit : std::nan(""))});
    std::optional<SolidsAndWater> solids;
    if (row.has("Gs"))
        solids = SolidsAndWater{row.number("Gs"), DensityOfWater::kgPerM3(row.number("water_density") * unit)};
    const auto search = findPeak(points, solids, PeakRules{});
    if (!search)
        return errorOf(search);
    Outcome outcome;
    const auto add = [&](const std::string& name, const Peak& peak) {
        outcome.want["want_" + name + "_w"] = peak.optimum.percent();
        outcome.want["want_" + name + "_max"] = peak.maximum.kgPerM3() / unit;
    };
    add("local", search->local);
    add("spline", search->spline);
    if (search->parabola)
        add("parabola", *search->parabola);
    std::string warnings;
    for (const auto warning : search->warnings)
        warnings += (warnings.empty() ? "" : " ") + std::string(word(warning));
    outcome.want["want_warnings"] = warnings.empty() ? "none" : warnings;
    const auto near = [&](const char* published, const char* within, double got) {
        if (row.has(published) && !(std::fabs(got - row.number(published)) <= row.number(within) * (1 + 1e-9)))
            outcome.objections.push_back(std::string(published) + " is " + row.text(published) + ", the local peak gives " +
                                         std::to_string(got) + ", allowed apart " + row.text(within));
    };
    near("published_w_pct", "published_w_within", search->local.optimum.percent());
    near("published_max", "published_max_within", search->local.maximum.kgPerM3() / unit);
    return outcome;
}

Result<Outcome> proctorFitExact(const Row& row)
{
    const auto fit = fitParabola(row.numbers("w"), row.numbers("dry"));
    if (!fit)
        return errorOf(fit);
    return vertexOf(*fit).map([&](const Vertex& v) {
        return Outcome{"ok",
                       {{"want_intercept", fit->intercept}, {"want_linear", fit->linear}, {"want_quadratic", fit->quadratic},
                        {"want_r2", fit->r2}, {"want_vertex_w", v.x}, {"want_vertex_dry", v.y}},
                       {}};
    });
}

Result<Outcome> parabolaVertex(const Row& row)
{
    return vertexOf({row.number("intercept"), row.number("linear"), row.number("quadratic")}).map([](const Vertex& v) {
        return Outcome{"ok", {{"want_vertex_w", v.x}, {"want_vertex_dry", v.y}}, {}};
    });
}

Result<Outcome> oversizeDensity(const Row& row)
{
    const double unit = kgPerM3Of(row.text("unit"));
    const auto density = DryDensity::kgPerM3(row.number("density") * unit);
    const auto part = CoarsePart::percent(row.number("coarse_pct"));
    // A row that gives k = G rho_w itself is put in as G = k/(1000 kg/m3) with water of 1000 kg/m3.
    const double gravity = row.has("k") ? row.number("k") * unit / 1000.0 : row.number("G_coarse");
    const auto rhoW = DensityOfWater::kgPerM3(row.has("k") ? 1000.0 : row.number("water_density") * unit);
    const std::string& direction = row.text("direction");
    if (direction != "fine_to_total" && direction != "total_to_fine")
        unknownWord("direction", direction);
    return (direction == "fine_to_total" ? totalFromFine(density, part, gravity, rhoW) : fineFromTotal(density, part, gravity, rhoW))
        .map([&](DryDensity d) { return Outcome{"ok", {{"want_density", d.kgPerM3() / unit}}, {}}; });
}

Result<Outcome> oversizeMoisture(const Row& row)
{
    const auto w = WaterContent::percent(row.number("w_pct"));
    const auto part = CoarsePart::percent(row.number("coarse_pct"));
    const auto coarse = WaterContent::percent(row.number("w_coarse_pct"));
    const std::string& direction = row.text("direction");
    if (direction != "fine_to_total" && direction != "total_to_fine")
        unknownWord("direction", direction);
    return (direction == "fine_to_total" ? totalWaterFromFine(w, part, coarse) : fineWaterFromTotal(w, part, coarse)).map([](WaterContent found) {
        return Outcome{"ok", {{"want_w_pct", found.percent()}}, {}};
    });
}

Result<Outcome> oversizeDryMass(const Row& row)
{
    return coarsePart(row.number("moist_fine"), WaterContent::percent(row.number("w_fine_pct")), row.number("moist_coarse"),
                      WaterContent::percent(row.number("w_coarse_pct")))
        .map([](const CoarseMasses& m) {
            return Outcome{"ok",
                           {{"want_dry_fine", m.dryFine}, {"want_dry_coarse", m.dryCoarse}, {"want_coarse_pct", m.part.percent()},
                            {"want_coarse_pct_if_moist", m.ifMoist.percent()}},
                           {}};
        });
}

Result<Outcome> oversizeLimits(const Row& row)
{
    const std::string& atLower = row.text("at_lower_limit");
    if (atLower != "none" && atLower != "correct")
        unknownWord("at_lower_limit", atLower);
    const OversizeLimits limits{row.number("lower_limit_pct"), atLower == "correct" ? AtLowerLimit::Corrected : AtLowerLimit::NotCorrected,
                                row.number("upper_limit_pct")};
    return oversizeNeed(CoarsePart::percent(row.number("coarse_pct")), limits).map([](OversizeNeed need) {
        return Outcome{need == OversizeNeed::Correct ? "correct" : "none", {}, {}};
    });
}

Result<Outcome> oversizeVariants(const Row& row)
{
    const std::string& variant = row.text("variant");
    const auto form = variant == "arithmetic"  ? OlderOversizeForm::Arithmetic
                      : variant == "factor"    ? OlderOversizeForm::CoarseFactor
                      : variant == "fixed_162" ? OlderOversizeForm::Fixed162
                                               : (unknownWord("variant", variant), OlderOversizeForm::Arithmetic);
    return totalFromFineOlder(form, row.number("factor"), DryDensity::lbPerFt3(row.number("density_fine")), CoarsePart::percent(row.number("coarse_pct")),
                              row.number("G_coarse"), DensityOfWater::lbPerFt3(row.number("water_density")))
        .map([](DryDensity d) { return Outcome{"ok", {{"want_density", d.lbPerFt3()}}, {}}; });
}

FamilyCurve familyCurve(const Row& row, const std::string& column)
{
    auto v = row.numbers(column);
    v.resize(3, std::nan(""));
    return {WaterContent::percent(v[0]), DryDensity::lbPerFt3(v[1]), v[2] * kKgPerM3PerLbPerFt3};
}

Result<Outcome> onePointFamily(const Row& row)
{
    const OnePointWindow window{row.numberOr("low_ratio", 0.80), row.numberOr("high_ratio", 1.00)};
    return onePointPeak(familyCurve(row, "curve_low"), familyCurve(row, "curve_high"), WaterContent::percent(row.number("w_pct")),
                        DryDensity::lbPerFt3(row.number("dry")), window)
        .map([](const OnePointPeak& p) {
            return Outcome{"accepted",
                           {{"want_t", p.t}, {"want_w_opt_pct", p.optimum.percent()}, {"want_max_dry", p.maximum.lbPerFt3()}, {"want_ratio", p.ratio}},
                           {}};
        });
}

Result<Outcome> onePointWindow(const Row& row)
{
    return onePointRatio(WaterContent::percent(row.number("w_pct")), WaterContent::percent(row.number("w_opt_pct")),
                         {row.number("low_ratio"), row.number("high_ratio")})
        .map([](double ratio) { return Outcome{"accepted", {{"want_ratio", ratio}}, {}}; });
}

Result<Outcome> onePointRules(const Row& row)
{
    const std::string& rule = row.text("rule");
    if (rule != "one_point_allowed" && rule != "needs_field_maximum")
        unknownWord("rule", rule);
    // Settings of the two states named in the source column: 35 and 25 % [OH-S1015]; 95.0 and 103.0 % [SC-T27].
    const auto answer = rule == "one_point_allowed" ? isOnePointAllowed(row.number("value"), row.number("other"), {35.0, 25.0})
                                                    : needsFieldMaximum(PercentCompaction::percent(row.number("value")), {95.0, 103.0});
    return answer.map([](YesNo yes) { return Outcome{yes == YesNo::Yes ? "yes" : "no", {}, {}}; });
}

Result<Outcome> familyRules(const Row& row)
{
    return checkFamily(static_cast<int>(row.number("curves")), row.words("methods"), static_cast<int>(row.number("min_curves"))).map([] {
        return Outcome{"accepted", {}, {}};
    });
}

}  // namespace

std::vector<Topic> referenceTopics()
{
    return {{"proctor_peaks", proctorPeaks},
            {"proctor_fit_exact", proctorFitExact},
            {"parabola_vertex", parabolaVertex},
            {"oversize_density", oversizeDensity},
            {"oversize_moisture", oversizeMoisture},
            {"oversize_dry_mass", oversizeDryMass},
            {"oversize_limits", oversizeLimits},
            {"oversize_variants", oversizeVariants},
            {"one_point_family", onePointFamily},
            {"one_point_window", onePointWindow},
            {"one_point_rules", onePointRules},
            {"family_rules", familyRules}};
}

}  // namespace groundcount::tables
