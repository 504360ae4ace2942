#include "method/accept/control_chart.h"

#include "method/accept/distributions.h"
#include "method/sentence.h"

#include <algorithm>
#include <boost/math/constants/constants.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

namespace groundcount::method {
namespace {

// Printed with these digits in the source; 3/d2(2) and D4(2) to more digits would move the limits away from it.
constexpr double kIndividualsFactor = 2.66;
constexpr double kMovingRangeFactor = 3.267;
// Beyond 8 sigma the normal density is below 1e-14.
constexpr double kFarSigma = 8;

// One halving of each interval already meets the closed forms of n = 2 and 3 to 1e-9.
constexpr unsigned kDepth = 1;
constexpr double kTolerance = 1e-9;

using Rule = boost::math::quadrature::gauss_kronrod<double, 61>;

double density(double x)
{
    return std::exp(-x * x / 2) / boost::math::constants::root_two_pi<double>();
}

// Chance that the range of n values exceeds r.
double rangeAbove(double r, int n)
{
    const auto integrand = [r, n](double x) { return density(x) * std::pow(normalCdf(x + r) - normalCdf(x), n - 1); };
    double error = 0;
    return 1 - n * Rule::integrate(integrand, -kFarSigma, kFarSigma, kDepth, kTolerance, &error);
}

}  // namespace

Result<ChartFactors> chartFactors(int n)
{
    if (n < 2 || n > 100)
        return refusedValue("The size of a subgroup", n, "", "2 to 100");
    double error = 0;
    ChartFactors factors;
    factors.d2 = Rule::integrate([n](double r) { return rangeAbove(r, n); }, 0.0, 2 * kFarSigma, kDepth, kTolerance, &error);
    const double square = Rule::integrate([n](double r) { return 2 * r * rangeAbove(r, n); }, 0.0, 2 * kFarSigma, kDepth, kTolerance, &error);
    factors.d3 = std::sqrt(square - factors.d2 * factors.d2);
    factors.a2 = 3 / (factors.d2 * std::sqrt(n));
    factors.lowerRange = std::max(0.0, 1 - 3 * factors.d3 / factors.d2);
    factors.upperRange = 1 + 3 * factors.d3 / factors.d2;
    return factors;
}

Result<IndividualsChart> individualsChart(std::span<const double> values)
{
    if (values.size() < 2)
        return refused("There are " + std::to_string(values.size()) + " values; a control chart needs at least 2.");
    const auto mean = meanOf(values);
    if (!mean)
        return tl::unexpected(mean.error());
    IndividualsChart chart;
    for (std::size_t i = 1; i < values.size(); ++i)
        chart.movingRanges.push_back(std::abs(values[i] - values[i - 1]));
    const auto range = meanOf(chart.movingRanges);
    if (!range)
        return tl::unexpected(range.error());
    chart.meanMovingRange = *range;
    chart.values = {*mean - kIndividualsFactor * *range, *mean, *mean + kIndividualsFactor * *range};
    chart.movingRangeUpper = kMovingRangeFactor * *range;
    return chart;
}

Result<SubgroupChart> subgroupChart(const std::vector<std::vector<double>>& subgroups)
{
    if (subgroups.size() < 2)
        return refused("There are " + std::to_string(subgroups.size()) + " subgroups; a control chart needs at least 2.");
    std::vector<double> means;
    std::vector<double> ranges;
    for (const auto& subgroup : subgroups) {
        if (subgroup.size() != subgroups.front().size())
            return refused("All subgroups must have one size; they have " + std::to_string(subgroups.front().size()) + " and " + std::to_string(subgroup.size())
                           + " values.");
        const auto mean = meanOf(subgroup);
        if (!mean)
            return tl::unexpected(mean.error());
        const auto [low, high] = std::minmax_element(subgroup.begin(), subgroup.end());
        means.push_back(*mean);
        ranges.push_back(*high - *low);
    }
    const auto factors = chartFactors(static_cast<int>(std::min<std::size_t>(subgroups.front().size(), 1000)));
    if (!factors)
        return tl::unexpected(factors.error());
    const auto grand = meanOf(means);
    const auto range = meanOf(ranges);
    if (!grand || !range)
        return tl::unexpected((grand ? range : grand).error());
    SubgroupChart chart;
    chart.grandMean = *grand;
    chart.meanRange = *range;
    chart.means = {*grand - factors->a2 * *range, *grand, *grand + factors->a2 * *range};
    chart.rangeLower = factors->lowerRange * *range;
    chart.rangeUpper = factors->upperRange * *range;
    return chart;
}

Result<ControlLimits> knownSigmaLimits(double centre, double sigma, int n, double k)
{
    if (!std::isfinite(centre))
        return refusedValue("The centre of a chart", centre, "", "a number");
    if (!isPositive(sigma))
        return refusedValue("Sigma", sigma, "", "above 0");
    if (n < 1)
        return refusedValue("The size of a subgroup", n, "", "at least 1");
    if (!isPositive(k))
        return refusedValue("The width k", k, "", "above 0");
    const double width = k * sigma / std::sqrt(n);
    return ControlLimits{centre - width, centre, centre + width};
}

}  // namespace groundcount::method
