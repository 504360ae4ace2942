#include "method/accept/pwl.h"

#include "method/accept/distributions.h"
#include "method/limit.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

// Printed tables give Q to four decimals; comparing there keeps an entry that is met exactly an entry.
constexpr int kTablePlaces = 4;

Result<void> checkCount(int n)
{
    if (n < 3)
        return refused("There are " + std::to_string(n) + " results; percent within limits needs at least 3.");
    return {};
}

double tableEntry(int percent, int n)
{
    const double z = incompleteBetaInverse(n / 2.0 - 1, n / 2.0 - 1, 1 - percent / 100.0);
    return roundReported((1 - 2 * z) * (n - 1) / std::sqrt(n), kTablePlaces, TieRule::HalfEven);
}

double wholePercent(double q, int n, PwlTable table)
{
    if (q < 0)
        return 100 - wholePercent(-q, n, table);
    const double asPrinted = roundReported(q, kTablePlaces, TieRule::HalfEven);
    int percent = 50;
    while (percent < 100 && tableEntry(percent, n) < asPrinted)
        ++percent;
    if (table == PwlTable::NearestWhole && percent > 50 && asPrinted - tableEntry(percent - 1, n) < tableEntry(percent, n) - asPrinted)
        --percent;
    return percent;
}

Result<double> readPercent(double q, int n, const PwlChain& chain)
{
    const double used = chain.qPlaces ? roundReported(q, *chain.qPlaces, chain.tie) : q;
    if (chain.table == PwlTable::Exact)
        return percentWithin(used, n);
    return wholePercent(used, n, chain.table);
}

Result<void> checkLot(int n, const PwlLimits& limits, const PwlChain& chain)
{
    if (const auto ok = checkCount(n); !ok)
        return ok;
    if (!limits.lower && !limits.upper)
        return refused("Percent within limits needs a lower or an upper limit; there is none.");
    if ((limits.lower && !std::isfinite(*limits.lower)) || (limits.upper && !std::isfinite(*limits.upper)))
        return refused("A limit must be a number.");
    if (limits.lower && limits.upper && !(*limits.lower <= *limits.upper))
        return refusedValue("The lower limit", *limits.lower, "", "at most the upper limit " + shownNumber(*limits.upper));
    for (const auto& places : {chain.meanPlaces, chain.sdPlaces, chain.qPlaces})
        if (places && (*places < 0 || *places > 8))
            return refusedValue("The number of places", *places, "", "0 to 8");
    return {};
}

}  // namespace

Result<double> percentWithin(double q, int n)
{
    if (const auto ok = checkCount(n); !ok)
        return tl::unexpected(ok.error());
    if (std::isnan(q))
        return refusedValue("The quality index", q, "", "a number");
    const double a = n / 2.0 - 1;
    const double z = std::clamp(0.5 - q * std::sqrt(n) / (2.0 * (n - 1)), 0.0, 1.0);
    return 100 * (1 - incompleteBeta(a, a, z));
}

Result<double> qualityIndexMax(int n)
{
    if (const auto ok = checkCount(n); !ok)
        return tl::unexpected(ok.error());
    return (n - 1) / std::sqrt(n);
}

Result<double> qualityIndexFor(double pwl, int n)
{
    if (const auto ok = checkCount(n); !ok)
        return tl::unexpected(ok.error());
    if (!(pwl >= 0) || !(pwl <= 100))
        return refusedValue("Percent within limits", pwl, " %", "0 to 100 %");
    const double z = incompleteBetaInverse(n / 2.0 - 1, n / 2.0 - 1, 1 - pwl / 100);
    return (1 - 2 * z) * (n - 1) / std::sqrt(n);
}

Result<double> qualityIndexForManyResults(double pwl)
{
    if (!(pwl > 0) || !(pwl < 100))
        return refusedValue("Percent within limits", pwl, " %", "above 0 and below 100 %");
    return normalQuantile(pwl / 100);
}

Result<LotPwl> lotPwl(std::span<const double> results, const PwlLimits& limits, const PwlChain& chain)
{
    const int n = static_cast<int>(std::min<std::size_t>(results.size(), 1'000'000));
    if (const auto ok = checkCount(n); !ok)
        return tl::unexpected(ok.error());
    const auto spread = lotSpread(results);
    if (!spread)
        return tl::unexpected(spread.error());
    return lotPwlFromSummary(n, spread->mean, spread->sd, limits, chain);
}

Result<LotPwl> lotPwlFromSummary(int n, double mean, double sd, const PwlLimits& limits, const PwlChain& chain)
{
    if (const auto ok = checkLot(n, limits, chain); !ok)
        return tl::unexpected(ok.error());
    if (!std::isfinite(mean))
        return refusedValue("The mean", mean, "", "a number");
    if (!isNotNegative(sd))
        return refusedValue("The standard deviation", sd, "", "at least 0");
    LotPwl lot;
    lot.n = n;
    lot.mean = chain.meanPlaces ? roundReported(mean, *chain.meanPlaces, chain.tie) : mean;
    lot.sd = chain.sdPlaces ? roundReported(sd, *chain.sdPlaces, chain.tie) : sd;
    if (lot.sd == 0) {
        const bool within = (!limits.lower || atLeast(lot.mean, *limits.lower)) && (!limits.upper || atMost(lot.mean, *limits.upper));
        lot.pwl = within ? 100 : 0;
        return lot;
    }
    lot.pwl = limits.lower && limits.upper ? -100 : 0;
    const auto side = [&](double distance, std::optional<double>& q, std::optional<double>& p) -> Result<void> {
        q = distance / lot.sd;
        const auto percent = readPercent(*q, lot.n, chain);
        if (!percent)
            return tl::unexpected(percent.error());
        p = *percent;
        lot.pwl += *percent;
        return {};
    };
    if (limits.lower)
        if (const auto ok = side(lot.mean - *limits.lower, lot.qLower, lot.pLower); !ok)
            return tl::unexpected(ok.error());
    if (limits.upper)
        if (const auto ok = side(*limits.upper - lot.mean, lot.qUpper, lot.pUpper); !ok)
            return tl::unexpected(ok.error());
    lot.pwl = std::max(lot.pwl, 0.0);
    return lot;
}

}  // namespace groundcount::method
