#include "method/gauge/stability.h"

#include "method/limit.h"
#include "method/sentence.h"
#include "method/spread.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <optional>

namespace groundcount::method {
namespace {

std::optional<Error> faultOf(std::span<const double> counts)
{
    if (counts.size() < 2)
        return refusedValue("Number of counts", static_cast<double>(counts.size()), "", "at least 2").value();
    for (const double count : counts)
        if (!isPositive(count))
            return refusedValue("A count of the set", count, "", "above 0").value();
    return std::nullopt;
}

std::optional<Error> faultOf(int n, double low, double high)
{
    if (n < 2)
        return refusedValue("Number of counts", n, "", "at least 2").value();
    if (!(low >= 0 && high > low && std::isfinite(high)))
        return refusedValue("Upper end of the stability band", high, "", "above its lower end of " + shownNumber(low)).value();
    return std::nullopt;
}

}  // namespace

Result<StabilityCheck> stabilityCheck(std::span<const double> counts, double prescale, double low, double high)
{
    if (auto fault = faultOf(counts))
        return tl::unexpected(std::move(*fault));
    if (auto fault = faultOf(2, low, high))
        return tl::unexpected(std::move(*fault));
    if (!isPositive(prescale))
        return refusedValue("Prescale", prescale, "", "above 0");
    const auto spread = spreadOf(counts);
    if (!spread)
        return tl::unexpected(spread.error());
    StabilityCheck check;
    check.mean = spread->mean;
    check.sd = spread->sd;
    check.ratio = spread->sd / std::sqrt(spread->mean);
    check.scaledRatio = check.ratio * std::sqrt(prescale);
    check.verdict = !atMost(check.scaledRatio, high)   ? BandVerdict::AboveBand
                    : !atLeast(check.scaledRatio, low) ? BandVerdict::BelowBand
                                                       : BandVerdict::Inside;
    return check;
}

Result<StabilityBand> stabilityBand(int n, double confidence)
{
    if (auto fault = faultOf(n, 0, 1))
        return tl::unexpected(std::move(*fault));
    if (!(confidence > 0 && confidence < 1))
        return refusedValue("Confidence of the stability band", confidence, "", "a fraction above 0 and below 1");
    const double freedom = n - 1;
    const boost::math::chi_squared distribution(freedom);
    const double tail = (1.0 - confidence) / 2.0;
    return StabilityBand{std::sqrt(boost::math::quantile(distribution, tail) / freedom),
                         std::sqrt(boost::math::quantile(boost::math::complement(distribution, tail)) / freedom)};
}

Result<double> chanceOutside(int n, double low, double high)
{
    if (auto fault = faultOf(n, low, high))
        return tl::unexpected(std::move(*fault));
    const double freedom = n - 1;
    const boost::math::chi_squared distribution(freedom);
    return boost::math::cdf(distribution, low * low * freedom) +
           boost::math::cdf(boost::math::complement(distribution, high * high * freedom));
}

Result<DriftCheck> driftCheck(std::span<const double> first, std::span<const double> second, double limitPercent)
{
    for (const auto& set : {first, second})
        if (auto fault = faultOf(set))
            return tl::unexpected(std::move(*fault));
    if (!isPositive(limitPercent))
        return refusedValue("Limit of the drift", limitPercent, " %", "set to a value above 0 by the rule set");
    const auto firstMean = meanOf(first);
    const auto secondMean = meanOf(second);
    if (!firstMean || !secondMean)
        return tl::unexpected(firstMean ? secondMean.error() : firstMean.error());
    const double change = 100.0 * (*secondMean - *firstMean) / *firstMean;
    return DriftCheck{*firstMean, *secondMean, change, atMost(std::fabs(change), limitPercent)};
}

}  // namespace groundcount::method
