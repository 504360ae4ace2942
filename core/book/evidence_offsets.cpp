#include "book/evidence_offsets.h"

#include "book/kinds.h"
#include "book/local_time.h"
#include "method/decimal.h"
#include "method/rules/rule_set.h"
#include "method/rules/test_input_json.h"
#include "method/sentence.h"

#include <algorithm>

namespace groundcount::book {

namespace {

using namespace method;

/// A density difference, in kg/m3.
double differenceOf(const WithUnit& value)
{
    return value.unit == "kg_m3" ? numberOf(value.text) : numberOf(value.text) * kKgPerM3PerLbPerFt3;
}

const Limit* limitAt(const RuleSet& rules, const char* key)
{
    const auto found = rules.limits.find(key);
    return found == rules.limits.end() ? nullptr : &found->second;
}

/// Places, scatter and approval behind a moisture correction or a density bias.
Result<void> restsOnEnough(const Body& b, const RuleSet& rules, const char* samplesKey, const char* sdKey)
{
    const std::string thing = "The " + textAt(b, "offset_kind") + (textAt(b, "offset_kind") == "moisture" ? " correction" : "") +
                              " of " + textAt(b, "on");
    const Limit* least = limitAt(rules, samplesKey);
    const Limit* most = limitAt(rules, sdKey);
    const auto approval = rules.choices.find("offset.approval");
    if (!least || !most || approval == rules.choices.end())
        return refused(std::string("The rule set lacks \"") + samplesKey + "\", \"" + sdKey + "\" or \"offset.approval\".");
    const auto samples = b.find("samples");
    if (samples == b.end() || !samples->is_number_integer())
        return refused(thing + " states no number of places; at least " + least->value.text() + " are needed.");
    if (static_cast<double>(samples->get<std::int64_t>()) < least->value.value())
        return refused(thing + " rests on " + std::to_string(samples->get<std::int64_t>()) + " places; at least " + least->value.text() + " are needed.");
    const bool isMoisture = textAt(b, "offset_kind") == "moisture";
    const WithUnit sd = isMoisture ? WithUnit{textAt(b, "sd_points"), ""} : withUnit(b, "sd", Unit::Density);
    if (sd.text.empty())
        return refused(thing + " states no standard deviation of its differences; at most " + most->value.text() + " " + most->unit + " is allowed.");
    const double allowed = isMoisture || most->unit == "kg/m3" ? most->value.value() : most->value.value() * kKgPerM3PerLbPerFt3;
    const double found = isMoisture ? numberOf(sd.text) : differenceOf(sd);
    if (!(found <= allowed * (1 + 1e-12)))
        return refused(thing + " scatters by " + sd.text + (isMoisture ? " points" : sd.unit == "kg_m3" ? " kg/m3" : " lb/ft3") +
                       "; at most " + most->value.text() + " " + most->unit + " is allowed.");
    if (approval->second.word == "needed" && textAt(b, "approved_by").empty())
        return refused(thing + " names nobody who approved it; the rule set asks for an approval.");
    return {};
}

}  // namespace

double numberOf(const std::string& text)
{
    const auto decimal = Decimal::parse(text);
    return decimal ? decimal->value() : 0;
}

Result<void> readOffsets(const std::vector<const Record*>& offsets, const RuleSet& rules, GaugeInput& gauge)
{
    for (const Record* offset : offsets) {
        const Body& b = offset->body;
        const std::string kind = textAt(b, "offset_kind");
        if (kind == "trench") {
            gauge.trenchMoisture = TrenchCounts{numberOf(textAt(b, "moisture_standard_in_trench")),
                                                numberOf(textAt(b, "moisture_standard_outside"))};
            if (b.contains("density_standard_in_trench") && b.contains("density_standard_outside"))
                gauge.trenchDensity = TrenchCounts{numberOf(textAt(b, "density_standard_in_trench")),
                                                   numberOf(textAt(b, "density_standard_outside"))};
        } else if (kind == "density bias") {
            if (auto enough = restsOnEnough(b, rules, "offset.bias_pairs", "offset.bias_sd"); !enough)
                return enough;
            gauge.densityBiasKgPerM3 = differenceOf(withUnit(b, "bias", Unit::Density));
        } else {
            const auto variant = moistureVariantFrom(textAt(b, "variant"));
            if (!variant)
                return tl::unexpected(variant.error());
            if (auto enough = restsOnEnough(b, rules, "offset.moisture_samples", "offset.moisture_sd"); !enough)
                return enough;
            MoistureCorrection correction{*variant, numberOf(textAt(b, "factor"))};
            if (*variant == MoistureVariant::DryBasis || *variant == MoistureVariant::WetBasis)
                correction.factor /= 1000;  // sealed per mille, as it is shown
            if (*variant == MoistureVariant::MassOffset)
                correction.factor = differenceOf(withUnit(b, "factor", Unit::Density));
            gauge.moistureCorrection = correction;
        }
    }
    return {};
}

Result<double> limitOf(const Body& ruleSet, const char* key)
{
    const Body::json_pointer at("/rules/limits");
    if (ruleSet.contains(at) && ruleSet.at(at).is_object() && ruleSet.at(at).contains(key) && ruleSet.at(at).at(key).is_object())
        if (const auto value = Decimal::parse(textAt(ruleSet.at(at).at(key), "value")))
            return value->value();
    const auto& later = method::laterKeys();
    const auto& neutral = method::neutralRules().limits;
    if (const auto limit = neutral.find(key); limit != neutral.end() && std::find(later.begin(), later.end(), key) != later.end())
        return limit->second.value.value();
    return refused(std::string("The job's rule set lacks the limit \"") + key + "\".");
}

Result<std::string> lastDayOf(const Body& offset, const Body& ruleSet)
{
    const std::string on = textAt(offset, "on");
    if (const std::string expires = textAt(offset, "expires"); !expires.empty())
        return expires;
    if (textAt(offset, "offset_kind") == "trench")
        return on;
    const auto most = limitOf(ruleSet, "offset.days");
    if (!most)
        return tl::unexpected(most.error());
    return dayAfter(on, static_cast<int>(std::min(*most, 36500.0)));
}

}  // namespace groundcount::book
