#pragma once

#include "method/error.h"

#include <cstddef>
#include <span>

namespace groundcount::method {

enum class Sides { One, Two };

/// Largest deviation of a sample against its limit. The test flags, people decide: a density test is dropped only for an
/// assignable cause.
struct OutlierTest {
    double mean = 0;
    double sd = 0;
    std::size_t index = 0;  ///< of the suspected value
    double g = 0;           ///< |x - mean|/s
    double critical = 0;
    bool flagged = false;   ///< g above critical
};

/// Critical value of a single outlier: ((n - 1)/sqrt n) sqrt(t^2/(n - 2 + t^2)), t = Student upper alpha/n (one side) or
/// alpha/(2 n) (two sides) with n - 2 degrees of freedom. Computed, because printed tables hold misprints.
/// @param n at least 3 @param alpha above 0 and below 0.5
/// @error Refused outside the ranges. @source [GRUBBS-T1], [LIBRETEXTS], [E178-TXT]
Result<double> outlierCritical(int n, double alpha, Sides sides);

/// Largest |x - mean|/s (n - 1) against `outlierCritical`.
/// @param values at least 3, not all equal @error Refused: fewer, no spread, alpha outside its range, NaN.
/// @source [E178-TXT], [GRUBBS-T1]
Result<OutlierTest> testLargestDeviation(std::span<const double> values, double alpha, Sides sides);

enum class End { Low, High };

/// Ratio of the gap of the extreme value: high (x_n - x_(n-1))/(x_n - x_2), low (x_2 - x_1)/(x_(n-1) - x_1) of the sorted sample.
/// @param values at least 3, any order @error Refused: fewer, no spread between the two values below the line, NaN.
/// @source [DIXON-R]
Result<double> gapRatio11(std::span<const double> values, End end);

}  // namespace groundcount::method
