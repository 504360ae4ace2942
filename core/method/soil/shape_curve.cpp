#include "method/soil/shape_curve.h"

#include "method/decimal.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <vector>

// Boost 1.74's pchip calls isnan without std:: and finds it only like this.
namespace boost::math::interpolators {
using std::isnan;
}
#include <boost/math/interpolators/pchip.hpp>

namespace groundcount::method {
namespace {

constexpr std::size_t kLeastPoints = 4;  // what the interpolator needs for its slopes

}  // namespace

Result<ShapeCurve> ShapeCurve::through(std::span<const CompactionPoint> points)
{
    if (points.size() < kLeastPoints)
        return refused("A shape-preserving curve needs at least 4 points; there are " + std::to_string(points.size()) + ".");
    std::vector<CompactionPoint> sorted(points.begin(), points.end());
    for (const auto& p : sorted) {
        if (!(p.content.percent() >= 0 && p.content.percent() < 1000))
            return refused("A point's water content must be 0 % or more; it is " + reportedText(p.content.percent(), 1, TieRule::HalfEven) + " %.");
        if (!(p.dry.kgPerM3() > 0 && p.dry.kgPerM3() < 1e5))
            return refused("A point's dry density must be above 0; it is " + reportedText(p.dry.kgPerM3(), 1, TieRule::HalfEven) + " kg/m3.");
    }
    std::sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.content < b.content; });
    std::vector<double> w, d;
    ShapeCurve curve;
    curve.m_highest = {sorted.front().content, sorted.front().dry};
    for (const auto& p : sorted) {
        if (!w.empty() && p.content.percent() == w.back())
            return refused("Two points have the water content " + reportedText(w.back(), 1, TieRule::HalfEven) + " %; each may stand once.");
        w.push_back(p.content.percent());
        d.push_back(p.dry.kgPerM3());
        if (p.dry > curve.m_highest.maximum)
            curve.m_highest = {p.content, p.dry};
    }
    curve.m_firstPct = w.front();
    curve.m_lastPct = w.back();
    const auto pchip = std::make_shared<boost::math::interpolators::pchip<std::vector<double>>>(std::move(w), std::move(d));
    curve.m_curve = [pchip](double x) { return (*pchip)(x); };
    return curve;
}

Result<DryDensity> ShapeCurve::at(WaterContent content) const
{
    if (!(content.percent() >= m_firstPct && content.percent() <= m_lastPct))
        return refused("The curve runs from " + reportedText(m_firstPct, 1, TieRule::HalfEven) + " to " + reportedText(m_lastPct, 1, TieRule::HalfEven) +
                       " % water content; " + reportedText(content.percent(), 1, TieRule::HalfEven) + " % is outside.");
    return DryDensity::kgPerM3(m_curve(content.percent()));
}

}  // namespace groundcount::method
