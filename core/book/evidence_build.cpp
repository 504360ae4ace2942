// Longer than 250 lines: the evidence of one test in the order in which it is worked out, every step with the same state.
#include "book/canonical.h"
#include "book/evidence.h"
#include "book/evidence_offsets.h"
#include "book/kinds.h"
#include "book/seal.h"
#include "method/decimal.h"
#include "method/gauge/curve_at_depth.h"
#include "method/rules/test_input_json.h"

#include <algorithm>

namespace groundcount::book {

namespace {

using namespace method;

template <class Density>
Density densityOf(const WithUnit& value)
{
    return value.unit == "kg_m3" ? Density::kgPerM3(numberOf(value.text)) : Density::lbPerFt3(numberOf(value.text));
}

/// Per density unit to per kg/m3.
double perKgPerM3(const WithUnit& value)
{
    return value.unit == "per_kg_m3" ? numberOf(value.text) : numberOf(value.text) / kKgPerM3PerLbPerFt3;
}

double gramsOf(const WithUnit& value)
{
    constexpr double kGramsPerPound = 453.59237;  // exact by definition
    return value.unit == "lb" ? numberOf(value.text) * kGramsPerPound : numberOf(value.text);
}

std::optional<Decimal> decimalAt(const Body& body, const char* key)
{
    const auto value = Decimal::parse(textAt(body, key));
    return value ? std::optional(*value) : std::nullopt;
}

/// The chosen records, by kind.
class Chosen {
public:
    explicit Chosen(const std::vector<Record>& records) : m_records(records) {}
    const Record* one(const char* kind) const
    {
        const auto all = each(kind);
        return all.empty() ? nullptr : all.back();
    }
    std::vector<const Record*> each(const char* kind) const
    {
        std::vector<const Record*> found;
        for (const Record& r : m_records)
            if (r.kind == kind)
                found.push_back(&r);
        return found;
    }

private:
    const std::vector<Record>& m_records;
};

bool isOverridden(const Chosen& chosen)
{
    const Record* site = chosen.one("test-site");
    if (!textAt(site->body, "gauge_override_reason").empty())
        return true;
    if (const Record* clearance = chosen.one("clearance"))
        for (const Body& hazard : clearance->body.at("hazards"))
            if (!textAt(hazard, "override_reason").empty())
                return true;
    const Record* standard = chosen.one("standard-count");
    return standard && !textAt(standard->body, "override_reason").empty();
}

Result<void> hazardsSettled(const Chosen& chosen)
{
    const Record* clearance = chosen.one("clearance");
    if (!clearance)
        return {};
    for (const Body& hazard : clearance->body.at("hazards"))
        if (textAt(hazard, "answer") == "too close" && textAt(hazard, "remedy").empty() &&
            textAt(hazard, "override_reason").empty())
            return refused("A hazard that is too close needs a remedy or a reason; \"" + textAt(hazard, "hazard") + "\" has neither.");
    return {};
}

/// The trench offset is a difference of counts: a density that the gauge worked out itself cannot be corrected by it.
Result<void> trenchIsCorrected(const Chosen& chosen, const TestInput& input)
{
    const Record* clearance = chosen.one("clearance");
    if (!clearance)
        return {};
    for (const Body& hazard : clearance->body.at("hazards"))
        if (textAt(hazard, "remedy") == "trench correction" && textAt(hazard, "override_reason").empty())
            for (int i = 0; i < input.readingCount; ++i)
                if (input.readings[static_cast<std::size_t>(i)].form != ReadingForm::Counts)
                    return refused("Reading " + std::to_string(i + 1) + " gives densities, but the clearance asks for a trench correction, "
                                   "which works on counts; seal counts, move the test, or override the clearance with a reason.");
    return {};
}

Result<void> readPapers(const Chosen& chosen, const Body& reading, GaugeInput& gauge)
{
    const Record* standard = chosen.one("standard-count");
    const Record* calibration = chosen.one("calibration");
    if (!standard)
        return refused("Counts need the day's standard count; the one that the reading names is missing.");
    if (!standard->body.at("accepted").get<bool>() && textAt(standard->body, "override_reason").empty())
        return refused("Counts need an accepted standard count; that of " + standard->at + " was not accepted.");
    if (!calibration)
        return refused("Counts need a calibration of the gauge in force on the day of the test; there is none.");
    gauge.densityStandard = numberOf(textAt(standard->body, "density_count"));
    gauge.moistureStandard = numberOf(textAt(standard->body, "moisture_count"));
    std::vector<DensityCurve> curves;
    for (const Body& c : calibration->body.at("curves")) {
        if (textAt(c, "mode") != textAt(reading, "mode"))
            continue;
        DensityCurve curve;
        curve.depth = Length::inches(numberOf(textAt(c, "depth_in")));
        curve.a = numberOf(textAt(c, "a"));
        curve.bPerKgPerM3 = perKgPerM3(withUnit(c, "b", Unit::PerDensity));
        curve.c = numberOf(textAt(c, "c"));
        curve.rangeLow = densityOf<WetDensity>(withUnit(c, "range_low", Unit::Density));
        curve.rangeHigh = densityOf<WetDensity>(withUnit(c, "range_high", Unit::Density));
        curves.push_back(curve);
    }
    const auto curve = curveAtDepth(curves, Length::inches(numberOf(textAt(reading, "depth_in"))));
    if (!curve)
        return tl::unexpected(curve.error());
    gauge.densityCurve = *curve;
    const Body& w = calibration->body.at("water");
    WaterCurve water;
    water.e = numberOf(textAt(w, "e"));
    water.slopePerKgPerM3 = perKgPerM3(withUnit(w, "slope", Unit::PerDensity));
    water.rangeLow = densityOf<WaterDensity>(withUnit(w, "range_low", Unit::Density));
    water.rangeHigh = densityOf<WaterDensity>(withUnit(w, "range_high", Unit::Density));
    gauge.waterCurve = water;
    return {};
}

Result<void> readReadings(const Chosen& chosen, TestInput& input)
{
    std::map<std::int64_t, const Record*> byNumber;
    for (const Record* r : chosen.each("reading"))
        byNumber[r->body.at("number").get<std::int64_t>()] = r;
    if (byNumber.empty())
        return refused("A verdict needs a reading; the test has none.");
    if (byNumber.size() > input.readings.size() || byNumber.rbegin()->first > 2 || byNumber.begin()->first != 1)
        return refused("A test has reading 1, or readings 1 and 2; this one has " + std::to_string(byNumber.size()) +
                       " up to number " + std::to_string(byNumber.rbegin()->first) + ".");
    input.readingCount = 0;
    std::string standard;
    for (const auto& [number, record] : byNumber) {
        const Body& b = record->body;
        ReadingInput& reading = input.readings[static_cast<std::size_t>(input.readingCount++)];
        if (b.contains("density_count")) {
            reading.form = ReadingForm::Counts;
            reading.densityCount = static_cast<double>(b.at("density_count").get<std::int64_t>());
            reading.moistureCount = static_cast<double>(b.at("moisture_count").get<std::int64_t>());
            if (!standard.empty() && standard != textAt(b, "standard_count"))
                return refused("Both readings of a test must name one standard count; reading 2 names another.");
            standard = textAt(b, "standard_count");
        } else {
            reading.wet = densityOf<WetDensity>(withUnit(b, "wet_density", Unit::Density));
            reading.form = b.contains("water_content_pct") ? ReadingForm::WaterContent : ReadingForm::WaterDensity;
            reading.content = WaterContent::percent(numberOf(textAt(b, "water_content_pct")));
            reading.water = densityOf<WaterDensity>(withUnit(b, "water_density", Unit::Density));
        }
    }
    if (byNumber.begin()->second->body.contains("density_count"))
        return readPapers(chosen, byNumber.begin()->second->body, input.gauge);
    return {};
}

Result<void> readSample(const Chosen& chosen, TestInput& input)
{
    const Record* sample = chosen.one("sample");
    if (!sample)
        return {};
    const Body& b = sample->body;
    const std::string waiting = textAt(b, "waiting");
    input.awaiting = waiting == "sample" ? Awaiting::Sample : waiting == "oven" ? Awaiting::Oven : Awaiting::Nothing;
    const WithUnit total = withUnit(b, "total_mass", Unit::Mass);
    const WithUnit retained = withUnit(b, "retained_mass", Unit::Mass);
    if (!total.text.empty() && !retained.text.empty()) {
        const auto sieve = splitSieveFrom(textAt(b, "sieve"));
        if (!sieve)
            return tl::unexpected(sieve.error());
        input.sample = SampleInput{gramsOf(total), gramsOf(retained), *sieve};
    }
    if (b.contains("other_water_content_pct"))
        input.otherContent = WaterContent::percent(numberOf(textAt(b, "other_water_content_pct")));
    return {};
}

Result<void> readReference(const Chosen& chosen, TestInput& input)
{
    const Body& p = chosen.one("proctor")->body;
    input.reference.maximum = densityOf<DryDensity>(withUnit(p, "max_dry_density", Unit::Density));
    input.reference.optimum = WaterContent::percent(numberOf(textAt(p, "optimum_pct")));
    if (const WithUnit u = withUnit(p, "standard_uncertainty", Unit::Density); !u.text.empty())
        input.reference.maximumStandardUncertainty = densityOf<DryDensity>(u);
    if (p.contains("coarse_gravity"))
        input.reference.coarseGravity = numberOf(textAt(p, "coarse_gravity"));
    if (p.contains("coarse_water_content_pct"))
        input.reference.coarseWater = WaterContent::percent(numberOf(textAt(p, "coarse_water_content_pct")));
    const Body& lot = chosen.one("lot")->body;
    input.requirement.minimumPct = decimalAt(lot, "minimum_pct");
    input.requirement.maximumPct = decimalAt(lot, "maximum_pct");
    if (const auto window = lot.find("window"); window != lot.end()) {
        const auto kind = windowKindFrom(textAt(*window, "kind"));
        if (!kind)
            return tl::unexpected(kind.error());
        input.requirement.window = MoistureWindow{*kind, decimalAt(*window, "low"), decimalAt(*window, "high")};
    }
    return {};
}

}  // namespace

Result<Evidence> evidenceFrom(const std::vector<Record>& records)
{
    for (const Record& r : records)
        if (auto body = checkBody(r.kind, r.body); !body)
            return refused(body.error().what + " Record: " + nameOf(r) + ".");
    const Chosen chosen(records);
    for (const char* kind : {"test-site", "lot", "proctor", "rule-set"})
        if (!chosen.one(kind))
            return refused(std::string("A verdict needs a ") + kind + "; there is none for this test.");
    if (auto settled = hazardsSettled(chosen); !settled)
        return tl::unexpected(settled.error());
    Evidence evidence;
    for (const auto step : {readReadings, readSample, readReference})
        if (auto read = step(chosen, evidence.input); !read)
            return tl::unexpected(read.error());
    evidence.input.standing = isOverridden(chosen) ? Standing::Overridden : Standing::Regular;
    const auto text = canonicalText(chosen.one("rule-set")->body.at("rules"));
    auto rules = text ? ruleSetFromSealed(*text) : Result<RuleSet>(tl::unexpected(text.error()));
    if (!rules)
        return tl::unexpected(rules.error());
    evidence.rules = std::move(*rules);
    if (auto settled = trenchIsCorrected(chosen, evidence.input); !settled)
        return tl::unexpected(settled.error());
    if (auto offsets = readOffsets(chosen.each("offset"), evidence.rules, evidence.input.gauge); !offsets)
        return tl::unexpected(offsets.error());
    evidence.test = chosen.one("test-site")->subject;
    evidence.ruleSet = chosen.one("rule-set")->hash;
    evidence.material = textAt(chosen.one("lot")->body, "material");
    evidence.proctor = chosen.one("proctor")->subject;
    for (const Record& r : records)
        if (r.kind != "rule-set")
            evidence.from.push_back(r.hash);
    return evidence;
}

}  // namespace groundcount::book
