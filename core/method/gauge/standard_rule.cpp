#include "method/gauge/standard_rule.h"

#include <algorithm>

namespace groundcount::method {
namespace {

Result<double> limit(const RuleSet& rules, const std::string& key)
{
    const auto at = rules.limits.find(key);
    if (at == rules.limits.end())
        return refused("The rule set \"" + rules.name + "\" has no limit \"" + key + "\", which its rule for standard counts needs.");
    return at->second.value.value();
}

std::string named(const char* stem, Channel channel)
{
    return std::string(stem) + (channel == Channel::Density ? "density" : "moisture");
}

Averaging averagingOf(const RuleSet& rules)
{
    Averaging averaging;
    const auto count = rules.limits.find("standard.earlier");
    if (count != rules.limits.end())
        averaging.count = static_cast<int>(count->second.value.value());
    const auto few = rules.choices.find("standard.too_few");
    averaging.ifFewer = few != rules.choices.end() && few->second.word == "refuse" ? FewCounts::Refuse : FewCounts::AverageThem;
    return averaging;
}

StandardVerdict around(std::string rule, double base, double half, double today)
{
    StandardVerdict verdict;
    verdict.rule = std::move(rule);
    verdict.base = base;
    verdict.lower = base - half;
    verdict.upper = base + half;
    verdict.deviationPercent = 100 * (today - base) / base;
    verdict.limitPercent = 100 * half / base;
    return verdict;
}

Result<StandardVerdict> byPercent(const RuleSet& rules, Channel channel, const StandardInput& input)
{
    const auto percent = limit(rules, named("standard.", channel));
    if (!percent)
        return tl::unexpected(percent.error());
    const auto check = percentCheck(input.earlier, input.today, *percent, averagingOf(rules));
    if (!check)
        return tl::unexpected(check.error());
    StandardVerdict verdict = around("percent", check->mean, check->mean * *percent / 100, input.today);
    verdict.isAccepted = check->isAccepted;
    return verdict;
}

Result<StandardVerdict> byTwoSteps(const RuleSet& rules, Channel channel, const StandardInput& input)
{
    const auto first = limit(rules, named("standard.", channel));
    const auto pair = limit(rules, named("standard.pair_", channel));
    const auto established = limit(rules, named("standard.established_", channel));
    for (const auto* each : {&first, &pair, &established})
        if (!*each)
            return tl::unexpected(each->error());
    if (input.earlier.empty())
        return refused("There is no earlier standard count to take as the established one.");
    const double base = input.earlier.back();
    const auto check = twoStepCheck(base, input.firstToday.value_or(input.today),
                                    input.firstToday ? std::optional(input.today) : std::nullopt, {*first, *pair, *established});
    if (!check)
        return tl::unexpected(check.error());
    const bool second = input.firstToday.has_value();
    StandardVerdict verdict = around("two-step", base, base * (second ? *established : *first) / 100, input.today);
    verdict.isAccepted = check->outcome == TwoStepOutcome::AcceptFirst || check->outcome == TwoStepOutcome::AcceptSecond;
    verdict.asksForSecond = check->outcome == TwoStepOutcome::TakeSecond;
    return verdict;
}

Result<StandardVerdict> byStatistics(const RuleSet& rules, const StandardInput& input)
{
    const auto z = limit(rules, "standard.z");
    if (!z)
        return tl::unexpected(z.error());
    if (!input.prescale)
        return refused("The statistical rule needs the gauge's prescale (true counts per displayed count); it is not in the gauge's record.");
    // The mean of the earlier counts is that of the percent rule; its own limit is not read here.
    const auto mean = percentCheck(input.earlier, input.today, 1, averagingOf(rules));
    if (!mean)
        return tl::unexpected(mean.error());
    const auto check = statisticalCheck(mean->mean, input.today, *input.prescale, *z);
    if (!check)
        return tl::unexpected(check.error());
    StandardVerdict verdict = around("statistical", mean->mean, check->limitCounts, input.today);
    verdict.isAccepted = check->isAccepted;
    return verdict;
}

Result<StandardVerdict> byDecay(const RuleSet& rules, Channel channel, const StandardInput& input)
{
    const auto percent = limit(rules, named("standard.", channel));
    const auto halfLife = limit(rules, named("standard.half_life_", channel));
    for (const auto* each : {&percent, &halfLife})
        if (!*each)
            return tl::unexpected(each->error());
    if (!input.calibrationCount)
        return refused("The decay band needs the standard count at calibration; it is not in the gauge's calibration.");
    const auto band = decayBand(*input.calibrationCount, input.daysSinceCalibration, *halfLife, *percent / 100, input.today);
    if (!band)
        return tl::unexpected(band.error());
    StandardVerdict verdict = around("decay band", (band->lower + band->upper) / 2, (band->upper - band->lower) / 2, input.today);
    verdict.isAccepted = band->isAccepted;
    return verdict;
}

std::string ruleOf(const RuleSet& rules)
{
    const auto rule = rules.choices.find("standard.rule");
    return rule == rules.choices.end() ? "percent" : rule->second.word;
}

}  // namespace

Result<StandardVerdict> judgeStandard(const RuleSet& rules, Channel channel, const StandardInput& input)
{
    const std::string rule = ruleOf(rules);
    if (rule == "two-step")
        return byTwoSteps(rules, channel, input);
    if (rule == "statistical")
        return byStatistics(rules, input);
    if (rule == "decay band")
        return byDecay(rules, channel, input);
    return byPercent(rules, channel, input);
}

std::vector<std::string> standardLimitKeys(const RuleSet& rules, Channel channel)
{
    const std::string rule = ruleOf(rules);
    if (rule == "statistical")
        return {"standard.z", "standard.earlier"};
    std::vector<std::string> keys{named("standard.", channel)};
    if (rule == "two-step") {
        keys.push_back(named("standard.pair_", channel));
        keys.push_back(named("standard.established_", channel));
    } else if (rule == "decay band") {
        keys.push_back(named("standard.half_life_", channel));
    } else {
        keys.push_back("standard.earlier");
    }
    return keys;
}

}  // namespace groundcount::method
