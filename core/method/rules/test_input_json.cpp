// Longer than 250 lines: the members of one JSON object, each with the sentence that refuses it.
#include "method/rules/test_input_json.h"

#include "method/gauge/curve_at_depth.h"
#include "method/rules/json_object.h"

#include <nlohmann/json.hpp>

namespace groundcount::method {
namespace {

constexpr std::pair<std::string_view, MoistureVariant> kVariants[] = {{"dry basis", MoistureVariant::DryBasis},
                                                                      {"wet basis", MoistureVariant::WetBasis},
                                                                      {"mass offset", MoistureVariant::MassOffset},
                                                                      {"percent offset", MoistureVariant::PercentOffset},
                                                                      {"ratio", MoistureVariant::Ratio}};

ReadingInput readReading(JsonObject& o, DensityUnit unit)
{
    ReadingInput r;
    o.only({"density_count", "moisture_count", "wet_density", "water_density", "water_content_pct"});
    if (o.has("density_count") || o.has("moisture_count")) {
        r.form = ReadingForm::Counts;
        r.densityCount = o.number("density_count");
        r.moistureCount = o.number("moisture_count");
        if (o.has("wet_density"))
            o.refuse("has counts and a readout; give one of them");
        return r;
    }
    r.wet = fromUnit<WetDensity>(o.number("wet_density"), unit);
    if (o.has("water_content_pct") == o.has("water_density"))
        o.refuse("needs exactly one of \"water_density\" and \"water_content_pct\" beside \"wet_density\"");
    if (o.has("water_density")) {
        r.form = ReadingForm::WaterDensity;
        r.water = fromUnit<WaterDensity>(o.number("water_density"), unit);
    } else {
        r.form = ReadingForm::WaterContent;
        r.content = WaterContent::percent(o.number("water_content_pct"));
    }
    return r;
}

double perDensity(double perUnit, DensityUnit unit)
{
    return unit == DensityUnit::LbPerFt3 ? perUnit / kKgPerM3PerLbPerFt3 : perUnit;
}

DensityCurve readDensityCurve(JsonObject o, DensityUnit unit)
{
    o.only({"depth_in", "a", "b", "c", "range_low", "range_high"});
    DensityCurve c;
    c.depth = Length::inches(o.number("depth_in"));
    c.a = o.number("a");
    c.bPerKgPerM3 = perDensity(o.number("b"), unit);
    c.c = o.number("c");
    c.rangeLow = fromUnit<WetDensity>(o.numberOr("range_low", 0), unit);
    c.rangeHigh = fromUnit<WetDensity>(o.numberOr("range_high", 0), unit);
    return c;
}

WaterCurve readWaterCurve(JsonObject o, DensityUnit unit)
{
    o.only({"e", "slope", "range_low", "range_high"});
    WaterCurve c;
    c.e = o.number("e");
    c.slopePerKgPerM3 = perDensity(o.number("slope"), unit);
    c.rangeLow = fromUnit<WaterDensity>(o.numberOr("range_low", 0), unit);
    c.rangeHigh = fromUnit<WaterDensity>(o.numberOr("range_high", 0), unit);
    return c;
}

TrenchCounts readTrench(JsonObject o)
{
    o.only({"in_trench", "outside"});
    return {o.number("in_trench"), o.number("outside")};
}

MoistureCorrection readCorrection(JsonObject o, DensityUnit unit)
{
    o.only({"variant", "factor"});
    MoistureCorrection c;
    const auto variant = moistureVariantFrom(o.text("variant"));
    if (!variant) {
        o.fail(variant.error());
        return c;
    }
    c.variant = *variant;
    const double factor = o.number("factor");
    // Dry and wet basis are shown per mille; a mass offset is in the rule set's density unit.
    c.factor = *variant == MoistureVariant::DryBasis || *variant == MoistureVariant::WetBasis ? factor / 1000
               : *variant == MoistureVariant::MassOffset ? fromUnit<WetDensity>(factor, unit).kgPerM3() : factor;
    return c;
}

GaugeInput readGauge(JsonObject o, DensityUnit unit, const std::optional<Length>& depth)
{
    o.only({"density_standard", "moisture_standard", "density_curves", "water_curve", "trench_density", "trench_moisture",
            "density_bias", "moisture_correction"});
    GaugeInput g;
    g.densityStandard = o.numberOr("density_standard", 0);
    g.moistureStandard = o.numberOr("moisture_standard", 0);
    std::vector<DensityCurve> curves;
    for (auto& one : o.list("density_curves"))
        curves.push_back(readDensityCurve(one, unit));
    if (!curves.empty()) {
        if (!depth) {
            o.refuse("has density curves, so the test needs \"depth_in\"");
        } else if (const auto curve = curveAtDepth(curves, *depth)) {
            g.densityCurve = *curve;
        } else {
            o.fail(curve.error());
        }
    }
    if (o.has("water_curve"))
        g.waterCurve = readWaterCurve(o.object("water_curve"), unit);
    if (o.has("trench_density"))
        g.trenchDensity = readTrench(o.object("trench_density"));
    if (o.has("trench_moisture"))
        g.trenchMoisture = readTrench(o.object("trench_moisture"));
    g.densityBiasKgPerM3 = fromUnit<WetDensity>(o.numberOr("density_bias", 0), unit).kgPerM3();
    if (o.has("moisture_correction"))
        g.moistureCorrection = readCorrection(o.object("moisture_correction"), unit);
    return g;
}

SampleInput readSample(JsonObject o)
{
    o.only({"total_mass", "retained_mass", "sieve"});
    SampleInput s;
    s.totalMass = o.number("total_mass");
    s.retainedMass = o.number("retained_mass");
    const auto sieve = splitSieveFrom(o.text("sieve"));
    if (!sieve)
        o.fail(sieve.error());
    else
        s.sieve = *sieve;
    return s;
}

ReferenceInput readReference(JsonObject o, DensityUnit unit)
{
    o.only({"maximum", "optimum_pct", "standard_uncertainty", "coarse_gravity", "coarse_water_content_pct", "solids_gravity"});
    ReferenceInput r;
    r.maximum = fromUnit<DryDensity>(o.number("maximum"), unit);
    r.optimum = WaterContent::percent(o.number("optimum_pct"));
    if (o.has("standard_uncertainty"))
        r.maximumStandardUncertainty = fromUnit<DryDensity>(o.number("standard_uncertainty"), unit);
    if (o.has("coarse_gravity"))
        r.coarseGravity = o.number("coarse_gravity");
    if (o.has("coarse_water_content_pct"))
        r.coarseWater = WaterContent::percent(o.number("coarse_water_content_pct"));
    if (o.has("solids_gravity"))
        r.solidsGravity = o.number("solids_gravity");
    return r;
}

Requirement readRequirement(JsonObject o)
{
    o.only({"minimum_pct", "maximum_pct", "window"});
    Requirement r;
    r.minimumPct = o.decimalIf("minimum_pct");
    r.maximumPct = o.decimalIf("maximum_pct");
    if (o.has("window")) {
        JsonObject w = o.object("window");
        w.only({"kind", "low", "high"});
        const auto kind = windowKindFrom(w.text("kind"));
        if (!kind)
            w.fail(kind.error());
        else
            r.window.kind = *kind;
        r.window.low = w.decimalIf("low");
        r.window.high = w.decimalIf("high");
    }
    return r;
}

void readTest(JsonObject& root, EvaluationRequest& request, DensityUnit unit)
{
    TestInput& in = request.input;
    root.only({"density_unit", "readings", "depth_in", "gauge", "sample", "other_water_content_pct", "reference", "requirement",
               "awaiting", "override_reason", "rules"});
    std::optional<Length> depth;
    if (root.has("depth_in"))
        depth = Length::inches(root.number("depth_in"));
    auto readings = root.list("readings");
    if (readings.empty() || readings.size() > in.readings.size())
        root.refuse("needs one or two \"readings\"; it has " + std::to_string(readings.size()));
    in.readingCount = static_cast<int>(std::min(readings.size(), in.readings.size()));
    for (std::size_t i = 0; i < std::min(readings.size(), in.readings.size()); ++i)
        in.readings[i] = readReading(readings[i], unit);
    if (root.has("gauge"))
        in.gauge = readGauge(root.object("gauge"), unit, depth);
    if (root.has("sample"))
        in.sample = readSample(root.object("sample"));
    if (root.has("other_water_content_pct"))
        in.otherContent = WaterContent::percent(root.number("other_water_content_pct"));
    in.reference = readReference(root.object("reference"), unit);
    if (root.has("requirement"))
        in.requirement = readRequirement(root.object("requirement"));
    const std::string awaiting = root.textOr("awaiting", "nothing");
    if (awaiting != "nothing" && awaiting != "sample" && awaiting != "oven")
        root.refuse("has \"awaiting\": \"" + awaiting + "\"; allowed: nothing, sample, oven");
    in.awaiting = awaiting == "sample" ? Awaiting::Sample : awaiting == "oven" ? Awaiting::Oven : Awaiting::Nothing;
    in.standing = root.textOr("override_reason", "").empty() ? Standing::Regular : Standing::Overridden;
}

}  // namespace

Result<MoistureVariant> moistureVariantFrom(std::string_view word)
{
    for (const auto& [name, variant] : kVariants) {
        if (name == word)
            return variant;
    }
    return refused("The moisture correction is \"" + std::string(word) +
                   "\"; allowed: dry basis, wet basis, mass offset, percent offset, ratio.");
}

Result<SplitSieve> splitSieveFrom(std::string_view word)
{
    if (word == "No. 4")
        return SplitSieve::No4;
    if (word == "3/4 in.")
        return SplitSieve::ThreeQuarterInch;
    return refused("The sieve is \"" + std::string(word) + "\"; allowed: No. 4, 3/4 in.");
}

Result<EvaluationRequest> evaluationFromJson(std::string_view text)
{
    std::optional<Error> error;
    const auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object())
        return refused("The test is not a JSON object.");
    JsonObject root(json, "The test", error);
    EvaluationRequest request{{}, neutralRules()};
    if (root.has("rules")) {
        auto rules = ruleSetFromJson(json["rules"].dump());
        if (!rules)
            return tl::unexpected(rules.error());
        request.rules = std::move(*rules);
    }
    const std::string unit = root.text("density_unit");
    if (!error && unit != request.rules.densityUnit)
        return refused("The test's density_unit is \"" + unit + "\"; the rule set \"" + request.rules.name + "\" is in " +
                       request.rules.densityUnit + " and nominal limits are never converted.");
    readTest(root, request, unit == "kg/m3" ? DensityUnit::KgPerM3 : DensityUnit::LbPerFt3);
    if (error)
        return tl::unexpected(*error);
    if (auto ok = validate(request.input.requirement); !ok)
        return tl::unexpected(ok.error());
    return request;
}

}  // namespace groundcount::method
