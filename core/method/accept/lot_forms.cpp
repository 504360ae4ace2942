#include "method/accept/lot_forms.h"

#include "method/limit.h"
#include "method/sentence.h"
#include "method/spread.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

Result<void> check(std::span<const double> results, int least, std::initializer_list<double> limits, std::optional<MeanRounding> rounding)
{
    if (least < 1)
        return refusedValue("The number of results", least, "", "at least 1");
    if (results.size() < static_cast<std::size_t>(least))
        return refused("There are " + std::to_string(results.size()) + " results; this form of acceptance needs at least " + std::to_string(least) + ".");
    for (const double limit : limits)
        if (!std::isfinite(limit))
            return refusedValue("A limit of the lot", limit, "", "a number");
    for (const double result : results)
        if (!std::isfinite(result))
            return refusedValue("A result of the lot", result, "", "a number");
    if (rounding && (rounding->places < 0 || rounding->places > 8))
        return refusedValue("The number of places of a mean", rounding->places, "", "0 to 8");
    return {};
}

double asCompared(double mean, std::optional<MeanRounding> rounding)
{
    return rounding ? roundReported(mean, rounding->places, rounding->tie) : mean;
}

std::string percent(double value)
{
    return shownNumber(value) + " %";
}

}  // namespace

Result<LotResult> judgeEvery(std::span<const double> results, double minimum)
{
    if (const auto ok = check(results, 1, {minimum}, {}); !ok)
        return tl::unexpected(ok.error());
    const double lowest = *std::min_element(results.begin(), results.end());
    const bool pass = atLeast(lowest, minimum);
    return LotResult{pass ? LotVerdict::Pass : LotVerdict::Fail, {},
                     "The lowest of " + std::to_string(results.size()) + " results is " + percent(lowest) + ", the minimum " + percent(minimum) + "."};
}

Result<LotResult> judgeBand(std::span<const double> results, double minimum, double maximum)
{
    if (const auto ok = check(results, 1, {minimum, maximum}, {}); !ok)
        return tl::unexpected(ok.error());
    if (!(minimum <= maximum))
        return refusedValue("The maximum", maximum, " %", "at least the minimum " + percent(minimum));
    const auto [lowest, highest] = std::minmax_element(results.begin(), results.end());
    const bool pass = atLeast(*lowest, minimum) && atMost(*highest, maximum);
    return LotResult{pass ? LotVerdict::Pass : LotVerdict::Fail, {},
                     "The results lie between " + percent(*lowest) + " and " + percent(*highest) + ", the limits are " + percent(minimum) + " and "
                         + percent(maximum) + "."};
}

Result<LotResult> judgeMeanAndMinimum(std::span<const double> results, int leastCount, double leastMean, double minimum,
                                      std::optional<MeanRounding> rounding)
{
    if (const auto ok = check(results, leastCount, {leastMean, minimum}, rounding); !ok)
        return tl::unexpected(ok.error());
    const auto mean = meanOf(results);
    if (!mean)
        return tl::unexpected(mean.error());
    const double compared = asCompared(*mean, rounding);
    const double lowest = *std::min_element(results.begin(), results.end());
    const bool pass = atLeast(compared, leastMean) && atLeast(lowest, minimum);
    return LotResult{pass ? LotVerdict::Pass : LotVerdict::Fail, compared,
                     "The mean of " + std::to_string(results.size()) + " results is " + percent(compared) + " of at least " + percent(leastMean)
                         + ", the lowest " + percent(lowest) + " of at least " + percent(minimum) + "."};
}

Result<LotResult> judgeMovingMean(std::span<const double> results, int window, double minimum, std::optional<MeanRounding> rounding)
{
    if (window < 2)
        return refusedValue("The length of a moving mean", window, "", "at least 2");
    if (const auto ok = check(results, window, {minimum}, rounding); !ok)
        return tl::unexpected(ok.error());
    const auto k = static_cast<std::size_t>(window);
    double lowest = 0;
    for (std::size_t i = 0; i + k <= results.size(); ++i) {
        const auto mean = meanOf(results.subspan(i, k));
        if (!mean)
            return tl::unexpected(mean.error());
        const double compared = asCompared(*mean, rounding);
        lowest = i == 0 ? compared : std::min(lowest, compared);
    }
    const bool pass = atLeast(lowest, minimum);
    return LotResult{pass ? LotVerdict::Pass : LotVerdict::Fail, lowest,
                     "The lowest mean of " + std::to_string(window) + " results in a row is " + percent(lowest) + ", the minimum " + percent(minimum) + "."};
}

}  // namespace groundcount::method
