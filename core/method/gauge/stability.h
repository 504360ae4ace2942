#pragma once

#include "method/error.h"

#include <span>

namespace groundcount::method {

/// Where a scatter lies against its band. High = noise; low = a count that is not random.
enum class BandVerdict { Inside, AboveBand, BelowBand };

struct StabilityCheck {
    double mean = 0;         ///< counts
    double sd = 0;           ///< s with n - 1, counts
    double ratio = 0;        ///< s/sqrt(mean)
    double scaledRatio = 0;  ///< ratio sqrt(F), near 1 for a healthy gauge
    BandVerdict verdict = BandVerdict::Inside;
};

/// Stability of n single counts, gauge untouched: r = s/sqrt(mean); r sqrt(F) inside low to high, inclusive.
/// Not valid on time-averaged counts. @param counts at least 2 @param prescale F, above 0 @param low, high 0.75 to 1.25
/// in use @error Refused for n below 2, a count or F not above 0, a band out of order. @source [D2922-TXT]
Result<StabilityCheck> stabilityCheck(std::span<const double> counts, double prescale, double low, double high);

struct StabilityBand {
    double low = 0;
    double high = 0;
};

/// Chi-square band of s/sqrt(mean) of n counts: sqrt(chi2(a/2, n-1)/(n-1)) to sqrt(chi2(1-a/2, n-1)/(n-1)).
/// @param n at least 2 @param confidence fraction 1 - a, above 0 and below 1 @error Refused otherwise.
/// @source [COMPUTED]; chi-square by Boost.Math
Result<StabilityBand> stabilityBand(int n, double confidence);

/// Chance that a healthy gauge falls outside a fixed band. @param n at least 2 @param low, high 0 <= low < high
/// @error Refused otherwise. @source [COMPUTED]
Result<double> chanceOutside(int n, double low, double high);

struct DriftCheck {
    double firstMean = 0;
    double secondMean = 0;
    double changePercent = 0;  ///< 100 (second - first)/first
    bool isAccepted = false;
};

/// Drift between two sets of counts, gauge left on: abs(change) <= limit, inclusive.
/// @param limitPercent a setting without a default, above 0
/// @error Refused for a set of fewer than 2 counts, a count not above 0, a limit not set. @source [DESIGN]
Result<DriftCheck> driftCheck(std::span<const double> first, std::span<const double> second, double limitPercent);

}  // namespace groundcount::method
