#include "method/soil/one_point.h"

#include "method/limit.h"
#include "method/sentence.h"

#include <boost/math/tools/toms748_solve.hpp>

namespace groundcount::method {
namespace {

/// Below this a point counts as lying on the curve, kg/m3: far under any balance, far above rounding noise.
constexpr double kOnCurve = 1e-6;

FamilyCurve blended(const FamilyCurve& low, const FamilyCurve& high, double t)
{
    const auto mix = [t](double a, double b) { return (1.0 - t) * a + t * b; };
    return {WaterContent::percent(mix(low.optimum.percent(), high.optimum.percent())),
            DryDensity::kgPerM3(mix(low.maximum.kgPerM3(), high.maximum.kgPerM3())),
            mix(low.cKgPerM3PerPoint2, high.cKgPerM3PerPoint2)};
}

double heightAt(const FamilyCurve& curve, double w)
{
    const double away = w - curve.optimum.percent();
    return curve.maximum.kgPerM3() - curve.cKgPerM3PerPoint2 * away * away;
}

}  // namespace

Result<double> onePointRatio(WaterContent content, WaterContent optimum, const OnePointWindow& window)
{
    if (!isPositive(optimum.percent()))
        return refusedValue("Optimum water content", optimum.percent(), " %", "above 0");
    if (!isNotNegative(content.percent()))
        return refusedValue("Water content", content.percent(), " %", "at least 0");
    if (!(window.lowRatio >= 0 && window.highRatio > window.lowRatio))
        return refusedValue("Upper ratio of the one-point window", window.highRatio, "",
                            "above the lower ratio of " + shownNumber(window.lowRatio));
    const double ratio = content.percent() / optimum.percent();
    if (!atLeast(ratio, window.lowRatio) || !atMost(ratio, window.highRatio))
        return refusedValue("Water content over optimum", ratio, "",
                            shownNumber(window.lowRatio) + " to " + shownNumber(window.highRatio) +
                                "; compact another specimen");
    return ratio;
}

Result<OnePointPeak> onePointPeak(const FamilyCurve& low, const FamilyCurve& high, WaterContent content, DryDensity dry,
                                  const OnePointWindow& window)
{
    for (const auto& curve : {low, high})
        if (!isPositive(curve.optimum.percent()) || !isPositive(curve.maximum.kgPerM3()) || !isPositive(curve.cKgPerM3PerPoint2))
            return refusedValue("Curvature, maximum or optimum of a family curve", curve.cKgPerM3PerPoint2, "", "above 0, all three");
    if (!(high.maximum > low.maximum))
        return refusedValue("Maximum of the denser curve", high.maximum.kgPerM3(), " kg/m3",
                            "above that of the lower curve, " + shownNumber(low.maximum.kgPerM3()) + " kg/m3");
    if (!isPositive(dry.kgPerM3()))
        return refusedValue("Dry density of the point", dry.kgPerM3(), " kg/m3", "above 0");
    if (!isNotNegative(content.percent()))
        return refusedValue("Water content", content.percent(), " %", "at least 0");
    const auto miss = [&](double t) { return heightAt(blended(low, high, t), content.percent()) - dry.kgPerM3(); };
    const double atLow = miss(0.0);
    const double atHigh = miss(1.0);
    double t = 0;
    if (std::fabs(atLow) <= kOnCurve) {
        t = 0;
    } else if (std::fabs(atHigh) <= kOnCurve) {
        t = 1;
    } else if ((atLow > 0) == (atHigh > 0)) {
        return refusedValue("Dry density of the point", dry.kgPerM3(), " kg/m3",
                            "between the two curves at that water content, " + shownNumber(atLow + dry.kgPerM3()) +
                                " to " + shownNumber(atHigh + dry.kgPerM3()) + " kg/m3; outside the family make a full test");
    } else {
        std::uintmax_t steps = 100;
        const auto bracket = boost::math::tools::toms748_solve(miss, 0.0, 1.0, atLow, atHigh,
                                                               boost::math::tools::eps_tolerance<double>(50), steps);
        t = (bracket.first + bracket.second) / 2.0;
    }
    const FamilyCurve found = blended(low, high, t);
    return onePointRatio(content, found.optimum, window).map([&](double ratio) {
        return OnePointPeak{t, found.optimum, found.maximum, ratio};
    });
}

Result<void> checkFamily(int curves, std::span<const std::string> methods, int fewest)
{
    if (curves < fewest)
        return refusedValue("Number of curves of the family", curves, "", "at least " + std::to_string(fewest));
    if (methods.size() != static_cast<std::size_t>(curves))
        return refusedValue("Number of methods named", static_cast<double>(methods.size()), "",
                            "one for each of the " + std::to_string(curves) + " curves");
    for (const auto& method : methods)
        if (method.empty() || method != methods.front())
            return refused("The family mixes the methods \"" + methods.front() + "\" and \"" + method +
                           "\"; all curves must be by one method.");
    return {};
}

Result<YesNo> isOnePointAllowed(double passingNo200, double retained34, const OnePointSoil& limits)
{
    for (const double percent : {passingNo200, retained34})
        if (!(percent >= 0 && percent <= 100))
            return refusedValue("Percent passing or retained", percent, " %", "0 to 100");
    const bool fine = !atMost(passingNo200, limits.passingNo200Above);
    return fine && atMost(retained34, limits.retained34AtMost) ? YesNo::Yes : YesNo::No;
}

Result<YesNo> needsFieldMaximum(PercentCompaction found, const FieldMaximumRange& range)
{
    if (!isPositive(found.percent()))
        return refusedValue("Percent compaction", found.percent(), " %", "above 0");
    const bool low = !atLeast(found.percent(), range.below);
    return low || atLeast(found.percent(), range.atLeast) ? YesNo::Yes : YesNo::No;
}

}  // namespace groundcount::method
