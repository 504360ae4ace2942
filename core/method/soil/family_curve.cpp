#include "method/soil/family_curve.h"

#include "method/sentence.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <utility>
#include <vector>

namespace groundcount::method {
namespace {

constexpr int kSteps = 64;       // a blend of two humps crosses a level a few times at most, far fewer than this
constexpr double kOnCurve = 1e-6;  // kg/m3: far under any balance, far above rounding noise

/// The curves between two neighbours, in percent and kg/m3.
struct Between {
    const MeasuredCurve& low;
    const MeasuredCurve& high;

    double optimum(double t) const { return (1 - t) * low.peak().optimum.percent() + t * high.peak().optimum.percent(); }
    double maximum(double t) const { return (1 - t) * low.peak().maximum.kgPerM3() + t * high.peak().maximum.kgPerM3(); }

    double height(double w, double t) const
    {
        const auto at = [&](const MeasuredCurve& curve) {
            const double shifted = w + curve.peak().optimum.percent() - optimum(t);
            const double inside = std::clamp(shifted, curve.shape().first().percent(), curve.shape().last().percent());  // only against rounding at an end
            return curve.shape().at(WaterContent::percent(inside)).map([](DryDensity d) { return d.kgPerM3(); }).value_or(0.0);
        };
        return (1 - t) * at(low) + t * at(high);
    }

    /// The t in 0 to 1 for which both shapes, moved, were measured at w.
    std::pair<double, double> measured(double w) const
    {
        double from = 0, to = 1;
        const double slope = high.peak().optimum.percent() - low.peak().optimum.percent();
        for (const MeasuredCurve* curve : {&low, &high}) {
            // first <= w + w_curve - w_1 - t slope <= last
            const double rest = w + curve->peak().optimum.percent() - low.peak().optimum.percent();
            const double a = rest - curve->shape().last().percent(), b = rest - curve->shape().first().percent();  // a <= t slope <= b
            if (slope == 0) {
                if (a > 0 || b < 0)
                    return {1, 0};
                continue;
            }
            from = std::max(from, std::min(a / slope, b / slope));
            to = std::min(to, std::max(a / slope, b / slope));
        }
        return {from, to};
    }
};

std::vector<double> crossings(const Between& between, double w, double dry, std::pair<double, double> range)
{
    std::vector<double> found;
    const auto miss = [&](double t) { return between.height(w, t) - dry; };
    const auto add = [&](double t) {
        if (found.empty() || t - found.back() > 1e-9)
            found.push_back(t);
    };
    double left = range.first, atLeft = miss(left);
    if (std::fabs(atLeft) <= kOnCurve)
        add(left);
    for (int i = 1; i <= kSteps; ++i) {
        const double right = i == kSteps ? range.second : range.first + (range.second - range.first) * i / kSteps;
        const double atRight = miss(right);
        if (std::fabs(atRight) <= kOnCurve) {
            add(right);
        } else if (std::fabs(atLeft) > kOnCurve && (atLeft > 0) != (atRight > 0)) {
            std::uintmax_t steps = 100;
            const auto bracket = boost::math::tools::toms748_solve(miss, left, right, atLeft, atRight, boost::math::tools::eps_tolerance<double>(50), steps);
            add((bracket.first + bracket.second) / 2);
        }
        left = right;
        atLeft = atRight;
    }
    return found;
}

}  // namespace

Result<MeasuredCurve> MeasuredCurve::through(std::span<const CompactionPoint> points, const Peak& peak)
{
    std::vector<CompactionPoint> all;
    bool before = false, after = false;
    for (const auto& p : points) {
        if (!(p.dry <= peak.maximum))
            return refusedValue("A point's dry density", p.dry.kgPerM3(), " kg/m3", "at most the curve's maximum of " + shownNumber(peak.maximum.kgPerM3()) + " kg/m3");
        before = before || p.content < peak.optimum;
        after = after || p.content > peak.optimum;
        if (std::fabs(p.content.percent() - peak.optimum.percent()) > 1e-9)
            all.push_back(p);
    }
    if (!before || !after)
        return refusedValue("The optimum water content of the curve", peak.optimum.percent(), " %", "between its points");
    all.push_back({peak.optimum, peak.maximum});
    auto shape = ShapeCurve::through(all);
    if (!shape)
        return tl::unexpected(shape.error());
    return MeasuredCurve(peak, std::move(*shape));
}

Result<OnePointPeak> onePointPeak(const MeasuredCurve& low, const MeasuredCurve& high, WaterContent content, DryDensity dry,
                                  const OnePointWindow& window)
{
    if (!(high.peak().maximum > low.peak().maximum))
        return refusedValue("Maximum of the denser curve", high.peak().maximum.kgPerM3(), " kg/m3",
                            "above that of the lower curve, " + shownNumber(low.peak().maximum.kgPerM3()) + " kg/m3");
    if (!isPositive(dry.kgPerM3()))
        return refusedValue("Dry density of the point", dry.kgPerM3(), " kg/m3", "above 0");
    if (!isNotNegative(content.percent()))
        return refusedValue("Water content", content.percent(), " %", "at least 0");
    const Between between{low, high};
    const auto range = between.measured(content.percent());
    if (!(range.first <= range.second))
        return refusedValue("Water content of the point", content.percent(), " %", "where both neighbouring curves were measured; make a full test");
    const auto found = crossings(between, content.percent(), dry.kgPerM3(), range);
    if (found.empty())
        return refusedValue("Dry density of the point", dry.kgPerM3(), " kg/m3",
                            "between the two curves at that water content, " + shownNumber(between.height(content.percent(), range.first)) + " to " +
                                shownNumber(between.height(content.percent(), range.second)) + " kg/m3; outside the family make a full test");
    if (found.size() > 1)
        return refused("The point lies on " + std::to_string(found.size()) + " curves of the family, with optimum " + shownNumber(between.optimum(found.front())) + " % and " +
                       shownNumber(between.optimum(found.back())) + " % among them; compact another specimen drier of optimum.");
    const double t = found.front();
    const WaterContent optimum = WaterContent::percent(between.optimum(t));
    return onePointRatio(content, optimum, window).map([&](double ratio) {
        return OnePointPeak{t, optimum, DryDensity::kgPerM3(between.maximum(t)), ratio};
    });
}

}  // namespace groundcount::method
