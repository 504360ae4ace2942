#pragma once

#include "method/error.h"

#include <span>
#include <vector>

namespace groundcount::method {

/// Factors of the range of n normal values.
struct ChartFactors {
    double d2 = 0;  ///< mean of the range in sigma
    double d3 = 0;  ///< standard deviation of the range in sigma
    double a2 = 0;  ///< 3/(d2 sqrt n)
    double lowerRange = 0;  ///< D3 = 1 - 3 d3/d2, not below 0
    double upperRange = 0;  ///< D4 = 1 + 3 d3/d2
};

/// d2 = integral of 1 - W, E(R^2) = integral of 2 r (1 - W), W(r) = n integral of phi(x) (Phi(x + r) - Phi(x))^(n - 1):
/// by Gauss-Kronrod quadrature of Boost.Math.
/// @param n 2 to 100 @error Refused outside the range. @source factors [CC-A22]
Result<ChartFactors> chartFactors(int n);

struct ControlLimits {
    double lower = 0;
    double centre = 0;
    double upper = 0;
};

/// Single values with moving ranges of two.
struct IndividualsChart {
    std::vector<double> movingRanges;
    double meanMovingRange = 0;
    ControlLimits values;           ///< mean -/+ 2.66 mean moving range
    double movingRangeUpper = 0;    ///< 3.267 mean moving range
};

/// @param values in order of testing, at least 2 @error Refused: fewer, NaN. @source [PYZDEK]
Result<IndividualsChart> individualsChart(std::span<const double> values);

/// Means and ranges of subgroups of one size.
struct SubgroupChart {
    double grandMean = 0;
    double meanRange = 0;
    ControlLimits means;    ///< grand mean -/+ A2 mean range
    double rangeLower = 0;  ///< D3 mean range
    double rangeUpper = 0;  ///< D4 mean range
};

/// @param subgroups at least 2 of one size of 2 to 100, in order @error Refused otherwise; NaN. @source [CC-A22]
Result<SubgroupChart> subgroupChart(const std::vector<std::vector<double>>& subgroups);

/// Known sigma: centre -/+ k sigma/sqrt n.
/// @param sigma above 0 @param n at least 1 @param k above 0, usually 2 or 3 @error Refused outside the ranges. @source [QCC-VIG]
Result<ControlLimits> knownSigmaLimits(double centre, double sigma, int n, double k);

}  // namespace groundcount::method
