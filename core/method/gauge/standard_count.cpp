#include "method/gauge/standard_count.h"

#include "method/gauge/decay.h"
#include "method/limit.h"
#include "method/sentence.h"
#include "method/spread.h"

namespace groundcount::method {
namespace {

std::optional<Error> notPositive(std::string_view thing, double value)
{
    if (isPositive(value))
        return std::nullopt;
    return refusedValue(thing, value, "", "above 0").value();
}

double percentApart(double value, double base) { return 100.0 * std::fabs(value - base) / base; }

/// 100 abs(value - base) <= percent base, by products so that no quotient rounds the limit away.
bool isWithin(double value, double base, double percent)
{
    return atMost(100.0 * std::fabs(value - base), percent * base);
}

}  // namespace

Result<PercentCheck> percentCheck(std::span<const double> earlier, double today, double limitPercent, Averaging averaging)
{
    if (averaging.count < 1)
        return refusedValue("Number of earlier counts to average", averaging.count, "", "at least 1");
    const auto wanted = static_cast<std::size_t>(averaging.count);
    const std::size_t fewest = averaging.ifFewer == FewCounts::Refuse ? wanted : 1;
    if (earlier.size() < fewest)
        return refused("There are " + std::to_string(earlier.size()) + " earlier standard counts; at least " +
                       std::to_string(fewest) + " must be there to compare with.");
    const auto last = earlier.last(earlier.size() < wanted ? earlier.size() : wanted);
    for (const double count : last)
        if (auto fault = notPositive("An earlier standard count", count))
            return tl::unexpected(std::move(*fault));
    if (auto fault = notPositive("Standard count", today))
        return tl::unexpected(std::move(*fault));
    if (auto fault = notPositive("Percent limit of the standard count", limitPercent))
        return tl::unexpected(std::move(*fault));
    const auto mean = meanOf(last);
    if (!mean)
        return tl::unexpected(mean.error());
    return PercentCheck{*mean, 100.0 * (today - *mean) / *mean, isWithin(today, *mean, limitPercent)};
}

Result<TwoStepCheck> twoStepCheck(double established, double first, std::optional<double> second,
                                  const TwoStepLimits& limits)
{
    for (const auto& [thing, value] : {std::pair<std::string_view, double>{"Established standard count", established},
                                       {"First standard count", first},
                                       {"Second standard count", second.value_or(1)},
                                       {"Limit of the first count", limits.firstPercent},
                                       {"Limit between the two counts", limits.pairPercent},
                                       {"Limit of both counts", limits.establishedPercent}})
        if (auto fault = notPositive(thing, value))
            return tl::unexpected(std::move(*fault));
    TwoStepCheck check;
    check.firstPercent = percentApart(first, established);
    if (second) {
        check.pairPercent = percentApart(*second, first);
        check.secondPercent = percentApart(*second, established);
    }
    if (isWithin(first, established, limits.firstPercent))
        check.outcome = TwoStepOutcome::AcceptFirst;
    else if (!second)
        check.outcome = TwoStepOutcome::TakeSecond;
    else if (isWithin(*second, first, limits.pairPercent) && isWithin(first, established, limits.establishedPercent) &&
             isWithin(*second, established, limits.establishedPercent))
        check.outcome = TwoStepOutcome::AcceptSecond;
    return check;
}

Result<StatisticalCheck> statisticalCheck(double average, double today, double prescale, double z)
{
    for (const auto& [thing, value] : {std::pair<std::string_view, double>{"Mean of the earlier standard counts", average},
                                       {"Standard count", today},
                                       {"Prescale", prescale},
                                       {"Number of standard deviations", z}})
        if (auto fault = notPositive(thing, value))
            return tl::unexpected(std::move(*fault));
    StatisticalCheck check;
    check.limitCounts = z * std::sqrt(average / prescale);
    check.difference = std::fabs(today - average);
    check.isAccepted = atMost(check.difference, check.limitCounts);
    return check;
}

Result<DecayBand> decayBand(double calibrationCount, double elapsedDays, double halfLifeDays, double tolerance, double today)
{
    for (const auto& [thing, value] : {std::pair<std::string_view, double>{"Count at calibration", calibrationCount},
                                       {"Standard count", today}})
        if (auto fault = notPositive(thing, value))
            return tl::unexpected(std::move(*fault));
    if (!(tolerance > 0 && tolerance < 1))
        return refusedValue("Tolerance of the decayed count", tolerance, "", "a fraction above 0 and below 1");
    const auto factor = decayFactor(halfLifeDays, elapsedDays);
    if (!factor)
        return tl::unexpected(factor.error());
    const double expected = calibrationCount * *factor;
    DecayBand band{expected * (1.0 - tolerance), expected * (1.0 + tolerance), false};
    band.isAccepted = atLeast(today, band.lower) && atMost(today, band.upper);
    return band;
}

}  // namespace groundcount::method
