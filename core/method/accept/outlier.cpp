#include "method/accept/outlier.h"

#include "method/accept/distributions.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace groundcount::method {

Result<double> outlierCritical(int n, double alpha, Sides sides)
{
    if (n < 3)
        return refused("There are " + std::to_string(n) + " values; an outlier test needs at least 3.");
    if (!(alpha > 0) || !(alpha < 0.5))
        return refusedValue("The level alpha", alpha, "", "above 0 and below 0.5");
    const double t = studentUpper(alpha / (sides == Sides::One ? n : 2 * n), n - 2);
    return (n - 1) / std::sqrt(n) * std::sqrt(t * t / (n - 2 + t * t));
}

Result<OutlierTest> testLargestDeviation(std::span<const double> values, double alpha, Sides sides)
{
    const auto critical = outlierCritical(static_cast<int>(std::min<std::size_t>(values.size(), 1'000'000)), alpha, sides);
    if (!critical)
        return tl::unexpected(critical.error());
    const auto spread = lotSpread(values);
    if (!spread)
        return tl::unexpected(spread.error());
    if (!(spread->sd > 0))
        return refusedValue("The standard deviation", spread->sd, "", "above 0 for an outlier test");
    OutlierTest test;
    test.mean = spread->mean;
    test.sd = spread->sd;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (const double g = std::abs(values[i] - test.mean) / test.sd; g > test.g) {
            test.g = g;
            test.index = i;
        }
    test.critical = *critical;
    test.flagged = test.g > test.critical;
    return test;
}

Result<double> gapRatio11(std::span<const double> values, End end)
{
    if (values.size() < 3)
        return refused("There are " + std::to_string(values.size()) + " values; an outlier test needs at least 3.");
    std::vector<double> x(values.begin(), values.end());
    if (!std::all_of(x.begin(), x.end(), [](double v) { return std::isfinite(v); }))
        return refused("The values of an outlier test must be numbers.");
    std::sort(x.begin(), x.end());
    const std::size_t n = x.size();
    const double gap = end == End::High ? x[n - 1] - x[n - 2] : x[1] - x[0];
    const double range = end == End::High ? x[n - 1] - x[1] : x[n - 2] - x[0];
    if (!(range > 0))
        return refusedValue("The range of the values", range, "", "above 0 for an outlier test");
    return gap / range;
}

}  // namespace groundcount::method
