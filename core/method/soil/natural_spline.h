#pragma once

#include "method/error.h"
#include "method/soil/parabola.h"

#include <span>
#include <vector>

namespace groundcount::method {

/// Natural cubic spline (second derivative 0 at both ends) through points with rising x.
class NaturalSpline {
public:
    /// @param x rising, y equally many, at least 3 @error Refused otherwise, or for a value not finite.
    /// @source [COMPUTED]; the tridiagonal system is solved by Eigen
    static Result<NaturalSpline> through(std::span<const double> x, std::span<const double> y);

    /// Value at x; outside the points the end pieces go on.
    double at(double x) const;
    /// Highest point between the first and the last x: of every piece the ends and the zeros of its derivative.
    Vertex highest() const;

private:
    std::vector<double> m_x, m_y, m_bend;  // m_bend = second derivatives at the points
};

}  // namespace groundcount::method
