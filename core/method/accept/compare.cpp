#include "method/accept/compare.h"

#include "method/accept/distributions.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace groundcount::method {
namespace {

Result<void> checkAlpha(double alpha)
{
    if (!(alpha > 0) || !(alpha < 0.5))
        return refusedValue("The level alpha", alpha, "", "above 0 and below 0.5");
    return {};
}

struct Pair {
    Spread x;
    Spread y;
    double nx = 0;
    double ny = 0;
};

Result<Pair> pairOf(std::span<const double> x, std::span<const double> y, double alpha)
{
    if (const auto ok = checkAlpha(alpha); !ok)
        return tl::unexpected(ok.error());
    const auto sx = lotSpread(x);
    if (!sx)
        return tl::unexpected(sx.error());
    const auto sy = lotSpread(y);
    if (!sy)
        return tl::unexpected(sy.error());
    return Pair{*sx, *sy, static_cast<double>(x.size()), static_cast<double>(y.size())};
}

Result<MeanTest> judged(double difference, double standardError, double degreesOfFreedom, double alpha)
{
    if (!(standardError > 0))
        return refusedValue("The standard error of the difference", standardError, "", "above 0; the samples have no spread");
    MeanTest test;
    test.difference = difference;
    test.t = difference / standardError;
    test.degreesOfFreedom = degreesOfFreedom;
    test.tCritical = studentUpper(alpha / 2, degreesOfFreedom);
    test.p = studentTwoSidedP(test.t, degreesOfFreedom);
    test.low = difference - test.tCritical * standardError;
    test.high = difference + test.tCritical * standardError;
    test.different = std::abs(test.t) > test.tCritical;
    return test;
}

}  // namespace

Result<VarianceTest> compareVariances(std::span<const double> x, std::span<const double> y, double alpha)
{
    const auto pair = pairOf(x, y, alpha);
    if (!pair)
        return tl::unexpected(pair.error());
    if (!(pair->x.sd > 0) || !(pair->y.sd > 0))
        return refusedValue("The standard deviation of a sample", std::min(pair->x.sd, pair->y.sd), "", "above 0 to compare variances");
    const double vx = pair->nx - 1;
    const double vy = pair->ny - 1;
    VarianceTest test;
    test.varianceX = pair->x.sd * pair->x.sd;
    test.varianceY = pair->y.sd * pair->y.sd;
    test.f = test.varianceX / test.varianceY;
    const double below = fisherCdf(test.f, vx, vy);
    test.p = std::min(1.0, 2 * std::min(below, 1 - below));
    test.ratioLow = test.f / fisherUpper(alpha / 2, vx, vy);
    test.ratioHigh = test.f / fisherUpper(1 - alpha / 2, vx, vy);
    const bool xLarger = test.varianceX >= test.varianceY;
    test.fLargerOverSmaller = xLarger ? test.f : 1 / test.f;
    test.fCritical = xLarger ? fisherUpper(alpha / 2, vx, vy) : fisherUpper(alpha / 2, vy, vx);
    test.different = test.fLargerOverSmaller > test.fCritical;
    return test;
}

Result<MeanTest> comparePooled(std::span<const double> x, std::span<const double> y, double alpha)
{
    const auto pair = pairOf(x, y, alpha);
    if (!pair)
        return tl::unexpected(pair.error());
    const double v = pair->nx + pair->ny - 2;
    const double variance = ((pair->nx - 1) * pair->x.sd * pair->x.sd + (pair->ny - 1) * pair->y.sd * pair->y.sd) / v;
    return judged(pair->x.mean - pair->y.mean, std::sqrt(variance * (1 / pair->nx + 1 / pair->ny)), v, alpha);
}

Result<MeanTest> compareUnequal(std::span<const double> x, std::span<const double> y, double alpha)
{
    const auto pair = pairOf(x, y, alpha);
    if (!pair)
        return tl::unexpected(pair.error());
    const double a = pair->x.sd * pair->x.sd / pair->nx;
    const double b = pair->y.sd * pair->y.sd / pair->ny;
    const double v = (a + b) * (a + b) / (a * a / (pair->nx - 1) + b * b / (pair->ny - 1));
    return judged(pair->x.mean - pair->y.mean, std::sqrt(a + b), v, alpha);
}

Result<MeanTest> comparePaired(std::span<const double> x, std::span<const double> y, double alpha, int leastPairs)
{
    if (const auto ok = checkAlpha(alpha); !ok)
        return tl::unexpected(ok.error());
    if (leastPairs < 2)
        return refusedValue("The least number of pairs", leastPairs, "", "at least 2");
    if (x.size() != y.size())
        return refused("Split samples must come in pairs; there are " + std::to_string(x.size()) + " and " + std::to_string(y.size()) + " values.");
    if (x.size() < static_cast<std::size_t>(leastPairs))
        return refused("There are " + std::to_string(x.size()) + " pairs; the rule needs at least " + std::to_string(leastPairs) + ".");
    std::vector<double> differences(x.size());
    std::transform(x.begin(), x.end(), y.begin(), differences.begin(), std::minus<>());
    const auto spread = lotSpread(differences);
    if (!spread)
        return tl::unexpected(spread.error());
    // Equal differences of decimals differ in the last bits of their doubles.
    if (!(spread->sd > 1e-9))
        return refusedValue("The standard deviation of the differences", 0, "", "above 0");
    const auto n = static_cast<double>(x.size());
    return judged(spread->mean, spread->sd / std::sqrt(n), n - 1, alpha);
}

}  // namespace groundcount::method
