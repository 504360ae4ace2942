#include "method/accept/weighted.h"

#include "method/limit.h"
#include "method/sentence.h"

#include <algorithm>
#include <string>

namespace groundcount::method {

Result<double> weightedMean(std::span<const double> results, std::span<const double> weights)
{
    if (results.empty())
        return refused("There are 0 results; a weighted mean needs at least 1.");
    if (results.size() != weights.size())
        return refused("There are " + std::to_string(results.size()) + " results and " + std::to_string(weights.size()) + " weights; each result needs one.");
    double sum = 0, whole = 0;
    for (std::size_t i = 0; i < results.size(); ++i) {
        if (!isPositive(weights[i]))
            return refusedValue("The size of a sublot", weights[i], "", "above 0");
        if (!std::isfinite(results[i]))
            return refusedValue("A result of the lot", results[i], "", "a number");
        sum += weights[i] * results[i];
        whole += weights[i];
    }
    if (!std::isfinite(whole) || !std::isfinite(sum))
        return refusedValue("The sum of the sublots' sizes", whole, "", "a finite number");
    return sum / whole;
}

Result<LotResult> judgeWeightedMeanAndMinimum(std::span<const double> results, std::span<const double> weights, int leastCount,
                                              double leastMean, double minimum, std::optional<MeanRounding> rounding)
{
    const auto mean = weightedMean(results, weights);
    if (!mean)
        return tl::unexpected(mean.error());
    // the count, the limits and the places are checked where the plain form checks them
    const auto plain = judgeMeanAndMinimum(results, leastCount, leastMean, minimum, rounding);
    if (!plain)
        return plain;
    const double compared = rounding ? roundReported(*mean, rounding->places, rounding->tie) : *mean;
    const double lowest = *std::min_element(results.begin(), results.end());
    const bool pass = atLeast(compared, leastMean) && atLeast(lowest, minimum);
    return LotResult{pass ? LotVerdict::Pass : LotVerdict::Fail, compared,
                     "The mean of " + std::to_string(results.size()) + " results, weighted by the size of their sublots, is " + shownNumber(compared) +
                         " % of at least " + shownNumber(leastMean) + " %, the lowest " + shownNumber(lowest) + " % of at least " + shownNumber(minimum) + " %."};
}

}  // namespace groundcount::method
