#include "book/kinds.h"
#include "command/filler.h"
#include "method/gauge/standard_count.h"
#include "method/quantity.h"
#include "method/site/clearance.h"

#include <algorithm>

namespace groundcount::command {
namespace {

using nlohmann::json;

Result<Length> lengthOf(const std::string& text, const std::string& unit)
{
    const auto number = Decimal::parse(text);
    if (!number)
        return tl::unexpected(number.error());
    const double v = number->value();
    if (unit == "in")
        return Length::inches(v);
    if (unit == "ft")
        return Length::feet(v);
    if (unit == "usft")
        return Length::surveyFeet(v);
    if (unit == "mm")
        return Length::metres(v / 1000);
    if (unit == "m")
        return Length::metres(v);
    return refused("A length is in \"" + unit + "\"; allowed: in, ft, usft, mm, m.");
}

Result<const method::Limit*> limitOf(const std::optional<method::RuleSet>& rules, const std::string& key)
{
    if (!rules)
        return refused("a rule set must be sealed before it.");
    const auto limit = rules->limits.find(key);
    if (limit == rules->limits.end())
        return refused("the rule set has no \"" + key + "\".");
    return &limit->second;
}

std::string ruleOf(const std::string& hazard)
{
    std::string key = "clearance." + hazard;
    std::replace(key.begin(), key.end(), ' ', '_');
    return key;
}

/// One quantity of a standard count against its earlier accepted counts; puts the mean and the deviation into the body.
Result<bool> judged(json& body, const std::string& quantity, double limitPct, method::Averaging averaging)
{
    std::vector<double> earlier;
    for (const auto& text : body.at(quantity + "_before")) {
        const auto number = Decimal::parse(text.is_string() ? text.get<std::string>() : "");
        if (!number)
            return tl::unexpected(number.error());
        earlier.push_back(number->value());
    }
    std::reverse(earlier.begin(), earlier.end());  // kept newest first, judged oldest first
    const auto today = Decimal::parse(book::textAt(body, quantity + "_count"));
    if (!today)
        return tl::unexpected(today.error());
    const auto check = method::percentCheck(earlier, today->value(), limitPct, averaging);
    if (!check)
        return tl::unexpected(check.error());
    body[quantity + "_mean"] = reportedText(check->mean, 2, TieRule::HalfEven);
    body[quantity + "_deviation_pct"] = reportedText(check->deviationPercent, 3, TieRule::HalfEven);
    return check->isAccepted;
}

}  // namespace

Result<void> Filler::judgeStandard(json& body) const
{
    const auto density = limitOf(m_rules, "standard.density");
    const auto moisture = limitOf(m_rules, "standard.moisture");
    const auto number = limitOf(m_rules, "standard.earlier");
    for (const auto* limit : {&density, &moisture, &number}) {
        if (!*limit)
            return tl::unexpected(limit->error());
    }
    method::Averaging averaging;
    averaging.count = static_cast<int>((*number)->value.value());
    const auto few = m_rules->choices.find("standard.too_few");
    averaging.ifFewer = few != m_rules->choices.end() && few->second.word == "refuse" ? method::FewCounts::Refuse
                                                                                       : method::FewCounts::AverageThem;
    if (!body.contains("density_before")) {
        body["density_before"] = body["moisture_before"] = json::array();
        const auto gauge = m_accepted.find(book::textAt(body, "gauge"));
        if (gauge != m_accepted.end()) {
            auto newest = gauge->second.rbegin();
            for (int i = 0; i < averaging.count && newest != gauge->second.rend(); ++i, ++newest) {
                body["density_before"].push_back(newest->density);
                body["moisture_before"].push_back(newest->moisture);
            }
        }
    }
    const auto densityHolds = judged(body, "density", (*density)->value.value(), averaging);
    if (!densityHolds)
        return tl::unexpected(densityHolds.error());
    const auto moistureHolds = judged(body, "moisture", (*moisture)->value.value(), averaging);
    if (!moistureHolds)
        return tl::unexpected(moistureHolds.error());
    body["accepted"] = *densityHolds && *moistureHolds;
    body["rule_set"] = m_rulesHash;
    return {};
}

Result<void> Filler::judgeHazards(json& body) const
{
    if (!body.contains("hazards") || !body["hazards"].is_array())
        return {};  // the book's own check names what is missing
    for (auto& hazard : body["hazards"]) {
        const auto limit = limitOf(m_rules, ruleOf(book::textAt(hazard, "hazard")));
        if (!limit)
            return tl::unexpected(limit.error());
        const auto& rule = **limit;
        hazard["required_" + rule.unit] = rule.value.text();
        if (hazard.contains("answer"))
            continue;
        const auto distance = book::withUnit(hazard, "distance", book::Unit::Length);
        const auto spread = book::withUnit(hazard, "uncertainty", book::Unit::Length);
        const auto measured = lengthOf(distance.text, distance.unit);
        const auto uncertain = spread.text.empty() ? Result<Length>(Length()) : lengthOf(spread.text, spread.unit);
        const auto required = lengthOf(rule.value.text(), rule.unit);
        if (!measured || !uncertain || !required)
            return tl::unexpected(!measured ? measured.error() : !uncertain ? uncertain.error() : required.error());
        const auto answer = method::judgeClearance(*measured, *uncertain, *required,
                                                   rule.inclusive ? method::Inclusive::Yes : method::Inclusive::No);
        if (!answer)
            return tl::unexpected(answer.error());
        hazard["answer"] = std::string(method::clearanceWord(*answer));
    }
    return {};
}

}  // namespace groundcount::command
