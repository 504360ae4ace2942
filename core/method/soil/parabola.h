#pragma once

#include "method/error.h"

#include <span>

namespace groundcount::method {

/// y = intercept + linear x + quadratic x^2, in the units of the points it came from.
struct Parabola {
    double intercept = 0;
    double linear = 0;
    double quadratic = 0;
    double r2 = 1;  ///< 1 - residual sum of squares/total sum of squares
};

struct Vertex {
    double x = 0;
    double y = 0;
};

/// Least-squares parabola through all points (through exactly 3 it is exact).
/// @param x, y equally many, at least 3, at least 3 different x @error Refused otherwise, or for a value not finite.
/// @source [DAVIDSON-67], [SOILPHYS]; solved by Eigen (QR)
Result<Parabola> fitParabola(std::span<const double> x, std::span<const double> y);

/// Highest point: x = -b/(2c), y = a - b^2/(4c). @error Refused for c not below 0 (opens upward). @source [SE-3883]
Result<Vertex> vertexOf(const Parabola& parabola);

}  // namespace groundcount::method
