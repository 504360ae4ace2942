#pragma once

#include "method/error.h"
#include "method/soil/one_point.h"
#include "method/soil/peak.h"
#include "method/soil/shape_curve.h"

#include <span>

namespace groundcount::method {

/// A curve of a family as it was measured: its points and its peak, whatever method found the peak.
class MeasuredCurve {
public:
    /// A curve that keeps the shape through the points and the peak: it rises to the peak and falls after it.
    /// @param points at least 3 beside the peak, in any order, no two at one water content @param peak optimum inside the
    ///   points' range, maximum at least every point
    /// @error Refused otherwise. @source [COMPUTED]; the interpolation is Boost.Math's pchip
    static Result<MeasuredCurve> through(std::span<const CompactionPoint> points, const Peak& peak);

    const Peak& peak() const { return m_peak; }
    const ShapeCurve& shape() const { return m_shape; }

private:
    MeasuredCurve(const Peak& peak, ShapeCurve shape) : m_peak(peak), m_shape(std::move(shape)) {}
    Peak m_peak;
    ShapeCurve m_shape;
};

/// One point against two neighbouring measured curves: the peak slides along the straight spine between their peaks,
/// w_t = (1 - t) w_1 + t w_2, and the shape is the blend of both shapes moved there,
/// D(w; t) = (1 - t) D_1(w + w_1 - w_t) + t D_2(w + w_2 - w_t). Solves D(w; t) = dry for t in 0 to 1.
/// @param low the curve of the lower maximum @param high the denser curve @param content w @param dry of the specimen
/// @return t, optimum w_t, maximum (1 - t) max_1 + t max_2 and w/w_t
/// @error Refused for curves out of order, a water content where neither curve was measured, a point below the lower or
///   above the denser curve (make a full test), a point that more than one curve passes through, a ratio outside the window.
/// @source [DESIGN]; root by Boost.Math; parallel and in character with the nearest curve [T272-04]; spine [R75-16]
Result<OnePointPeak> onePointPeak(const MeasuredCurve& low, const MeasuredCurve& high, WaterContent content, DryDensity dry,
                                  const OnePointWindow& window);

}  // namespace groundcount::method
