#include "method/accept/evaluation_rules.h"

#include <algorithm>
#include <string>
#include <utility>

namespace groundcount::method {
namespace {

std::optional<Rounding> roundingOf(const std::string& word)
{
    if (word == "none")
        return std::nullopt;
    constexpr std::pair<std::string_view, Rounding> kUnits[] = {
        {"50", {-1, TieRule::HalfEven, 5}}, {"10", {-1, TieRule::HalfEven, 1}},  {"5", {0, TieRule::HalfEven, 5}},
        {"1", {0, TieRule::HalfEven, 1}},   {"0.5", {1, TieRule::HalfEven, 5}},  {"0.1", {1, TieRule::HalfEven, 1}},
        {"0.05", {2, TieRule::HalfEven, 5}}, {"0.01", {2, TieRule::HalfEven, 1}}};
    const auto unit = std::string_view(word).substr(0, word.find(' '));
    const auto* const found = std::find_if(std::begin(kUnits), std::end(kUnits), [&](const auto& u) { return u.first == unit; });
    Rounding r = found == std::end(kUnits) ? Rounding{} : found->second;
    r.tie = word.ends_with("half up") ? TieRule::HalfUp : TieRule::HalfEven;
    return r;
}

const Limit& limit(const RuleSet& rules, std::string_view key)
{
    return rules.limits.find(key)->second;
}

const std::string& choice(const RuleSet& rules, std::string_view key)
{
    return rules.choices.find(key)->second.word;
}

template <class Density>
Density density(const Limit& l)
{
    return l.unit == "lb/ft3" ? Density::lbPerFt3(l.value.value()) : Density::kgPerM3(l.value.value());
}

}  // namespace

Result<EvaluationRules> evaluationRules(const RuleSet& rules)
{
    for (const auto& key : limitKeys()) {
        if (!rules.limits.contains(key.key))
            return refused("Rule set \"" + rules.name + "\": limit \"" + std::string(key.key) + "\" is missing.");
    }
    for (const auto& key : choiceKeys()) {
        if (!rules.choices.contains(key.key))
            return refused("Rule set \"" + rules.name + "\": choice \"" + std::string(key.key) + "\" is missing.");
    }
    EvaluationRules e;
    e.unit = rules.densityUnit == "kg/m3" ? DensityUnit::KgPerM3 : DensityUnit::LbPerFt3;
    e.dry = roundingOf(choice(rules, "round.dry_density"));
    e.maximum = roundingOf(choice(rules, "round.maximum"));
    e.optimum = roundingOf(choice(rules, "round.optimum"));
    e.content = roundingOf(choice(rules, "round.water_content"));
    e.compaction = roundingOf(choice(rules, "round.percent_compaction"));
    e.percentFrom = choice(rules, "percent.from") == "rounded dry density" ? PercentFrom::RoundedDry : PercentFrom::UnroundedDry;
    e.compared = choice(rules, "compare") == "rounded" ? Compared::Rounded : Compared::Unrounded;
    e.coarseLower = CoarsePart::percent(limit(rules, "coarse.lower").value.value());
    e.atLowerLimit = choice(rules, "coarse.at_lower_limit") == "corrected" ? AtLowerLimit::Corrected : AtLowerLimit::NotCorrected;
    e.coarseUpperNo4 = CoarsePart::percent(limit(rules, "coarse.upper_no4").value.value());
    e.coarseUpperThreeQuarter = CoarsePart::percent(limit(rules, "coarse.upper_three_quarter").value.value());
    e.coarseWater = WaterContent::percent(limit(rules, "coarse.water").value.value());
    e.waterDensity = density<DensityOfWater>(limit(rules, "water.density"));
    e.secondKind = choice(rules, "second_reading.kind") == "absolute" ? DifferenceKind::Absolute : DifferenceKind::PercentOfFirst;
    for (const auto* key : {"count.second_density", "count.second_moisture"}) {
        const Limit& l = limit(rules, key);
        if ((l.unit == "%") != (e.secondKind == DifferenceKind::PercentOfFirst))
            return refused(std::string("Rule set \"") + rules.name + "\": limit \"" + key + "\" is in " + l.unit +
                           ", but \"second_reading.kind\" is \"" + choice(rules, "second_reading.kind") + "\".");
    }
    const auto second = [&](const char* key) {
        const Limit& l = limit(rules, key);
        return l.unit == "%" ? l.value.value() : inUnit(density<WetDensity>(l), e.unit);
    };
    e.secondDensityLimit = second("count.second_density");
    e.secondMoistureLimit = second("count.second_moisture");
    e.trenchWarningPct = limit(rules, "trench.offset_warning").value.value();
    e.wetLeast = density<WetDensity>(limit(rules, "range.wet_density_least"));
    e.wetMost = density<WetDensity>(limit(rules, "range.wet_density_most"));
    e.countMost = limit(rules, "range.count_most").value.value();
    e.contentMostPct = limit(rules, "range.water_content_most").value.value();
    for (const auto& [most, what] : {std::pair{inUnit(e.wetMost, e.unit), "range.wet_density_most"},
                                     {e.countMost, "range.count_most"},
                                     {e.contentMostPct, "range.water_content_most"}})
        if (!(most > 0 && most <= 1e7))  // beyond it no report holds the figure, see roundReported
            return refused(std::string("Rule set \"") + rules.name + "\": limit \"" + what + "\" must be above 0 and at most 10000000.");
    if (!(e.wetLeast < e.wetMost))
        return refused("Rule set \"" + rules.name + "\": \"range.wet_density_least\" must be below \"range.wet_density_most\".");
    e.wetUncertainty = density<WetDensity>(limit(rules, "uncertainty.wet"));
    e.contentUncertaintyPct = limit(rules, "uncertainty.water_content").value.value();
    return e;
}

}  // namespace groundcount::method
