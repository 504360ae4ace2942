#pragma once

#include "method/error.h"

#include <span>

namespace groundcount::method {

/// Comparison of two variances, two-sided. Ratios are x over y.
struct VarianceTest {
    double varianceX = 0;
    double varianceY = 0;
    double f = 0;                   ///< varianceX/varianceY
    double p = 0;                   ///< two-sided
    double ratioLow = 0;            ///< interval of the ratio at 1 - alpha
    double ratioHigh = 0;
    double fLargerOverSmaller = 0;
    double fCritical = 0;           ///< F(1 - alpha/2; v of the larger, v of the smaller)
    bool different = false;         ///< larger/smaller above the critical value
};

/// Comparison of two means, two-sided. Differences are x minus y.
struct MeanTest {
    double difference = 0;
    double t = 0;
    double degreesOfFreedom = 0;
    double tCritical = 0;
    double p = 0;
    double low = 0;  ///< interval of the difference at 1 - alpha
    double high = 0;
    bool different = false;  ///< |t| above the critical value
};

/// F = s_x^2/s_y^2 against equality.
/// @param x, y at least 2 values each with some spread @param alpha above 0 and below 0.5, for example 0.01
/// @error Refused: fewer values, no spread, alpha outside its range, NaN. @source [R9-RD02095], [KS-526]
Result<VarianceTest> compareVariances(std::span<const double> x, std::span<const double> y, double alpha);

/// Means of two samples with one variance: t = d/(s_p sqrt(1/n1 + 1/n2)), v = n1 + n2 - 2. Use after `compareVariances` finds no difference.
/// @error Refused as above; no spread only when neither sample has any. @source [R9-RD02095]
Result<MeanTest> comparePooled(std::span<const double> x, std::span<const double> y, double alpha);

/// Means of two samples with variances of their own (Welch): a = s1^2/n1, b = s2^2/n2, t = d/sqrt(a + b),
/// v = (a + b)^2/(a^2/(n1 - 1) + b^2/(n2 - 1)).
/// @error Refused as above. @source [R9-RD02095]
Result<MeanTest> compareUnequal(std::span<const double> x, std::span<const double> y, double alpha);

/// Split samples: t = mean(d)/(s_d/sqrt n), d = x - y pair by pair, v = n - 1. Tests the method of measurement only.
/// @param leastPairs setting of the rule set, at least 2 (10 to start [OK-PAIRED])
/// @error Refused: unequal numbers, fewer pairs, all differences equal, alpha, NaN. @source [OK-PAIRED]
Result<MeanTest> comparePaired(std::span<const double> x, std::span<const double> y, double alpha, int leastPairs);

}  // namespace groundcount::method
