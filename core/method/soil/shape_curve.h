#pragma once

#include "method/error.h"
#include "method/soil/peak.h"

#include <functional>
#include <span>

namespace groundcount::method {

/// A curve for drawing that keeps the shape of the points: piecewise cubic with Fritsch-Carlson slopes, monotone between
/// neighbours. It passes through every point and never rises above the highest one, so its peak is the highest point:
/// never above what was measured, where a natural spline can pass the zero-air-voids line.
/// @source [COMPUTED]; the interpolation is Boost.Math's pchip
class ShapeCurve {
public:
    /// @param points at least 4, in any order, no two at one water content, w >= 0, density above 0
    /// @error Refused otherwise
    static Result<ShapeCurve> through(std::span<const CompactionPoint> points);

    /// Dry density at a water content between the first and the last point.
    /// @error Refused outside them: a curve is never drawn beyond its points
    Result<DryDensity> at(WaterContent content) const;
    WaterContent first() const { return WaterContent::percent(m_firstPct); }
    WaterContent last() const { return WaterContent::percent(m_lastPct); }
    /// The highest point.
    Peak highest() const { return m_highest; }

private:
    ShapeCurve() = default;
    std::function<double(double)> m_curve;  // percent -> kg/m3
    double m_firstPct = 0, m_lastPct = 0;
    Peak m_highest;
};

}  // namespace groundcount::method
