#pragma once

#include "method/decimal.h"
#include "method/error.h"

#include <optional>
#include <span>

namespace groundcount::method {

/// Percent within one limit from a quality index, standard deviation method.
///
/// PWL = 100 (1 - I_z(a, a)), a = n/2 - 1, z = 1/2 - Q sqrt(n)/(2 (n - 1)) limited to 0..1. A negative Q needs no special case;
/// |Q| >= Qmax gives exactly 0 or 100.
/// @param q quality index Q, any sign @param n number of results, at least 3
/// @return percent, 0 to 100
/// @error Refused: n below 3, NaN. @source [AQLSCHEMES]
Result<double> percentWithin(double q, int n);

/// Qmax = (n - 1)/sqrt(n), from which PWL is 100. @error Refused: n below 3. @source [COMPUTED]
Result<double> qualityIndexMax(int n);

/// Q of a percent within limits, the inverse of `percentWithin`: z = I^-1(1 - PWL/100), Q = (1 - 2 z)(n - 1)/sqrt(n).
/// @param pwl percent, 0 to 100 @param n at least 3 @error Refused outside the ranges. @source [AQLSCHEMES]
Result<double> qualityIndexFor(double pwl, int n);

/// The limit of `qualityIndexFor` for many results: the normal quantile. @param pwl above 0 and below 100, percent
/// @error Refused outside the range. @source [T5080]
Result<double> qualityIndexForManyResults(double pwl);

/// How a percent is read for a quality index.
enum class PwlTable {
    Exact,            ///< the formula itself
    NextHigherWhole,  ///< whole percents; a Q between two entries takes the higher; a negative Q is 100 minus the entry of |Q|
    NearestWhole      ///< whole percents; a Q between two entries takes the nearer
};

/// Rounding on the way, each a setting of the rule set; empty = not rounded.
struct PwlChain {
    std::optional<int> meanPlaces;
    std::optional<int> sdPlaces;
    std::optional<int> qPlaces;
    TieRule tie = TieRule::HalfEven;
    PwlTable table = PwlTable::Exact;
};

/// One or both limits, in the unit of the results, both inclusive.
struct PwlLimits {
    std::optional<double> lower;
    std::optional<double> upper;
};

/// A lot with every step of the way. Mean and sd are those used (rounded where the chain says so); Q is shown before its
/// own rounding; Q and one-sided percents are empty where there is no such limit or no spread.
struct LotPwl {
    int n = 0;
    double mean = 0;
    double sd = 0;
    std::optional<double> qLower;
    std::optional<double> qUpper;
    std::optional<double> pLower;
    std::optional<double> pUpper;
    double pwl = 0;
};

/// Percent of a lot within its limits: mean, s (n - 1), Q_L = (mean - L)/s, Q_U = (U - mean)/s; two-sided PL + PU - 100, at least 0.
/// Without spread 100 when the mean is within all limits, else 0.
/// @param results at least 3, unit of the limits, rounded already as the rule set says
/// @error Refused: fewer than 3, no limit, lower above upper, places outside 0 to 8, a value that is not a number.
/// @source [AQLSCHEMES]; table policies [WS-106], [P401-SLIDES]; no spread [DESIGN]
Result<LotPwl> lotPwl(std::span<const double> results, const PwlLimits& limits, const PwlChain& chain);

/// As `lotPwl` from the summary of a lot. @param n at least 3 @param sd with n - 1, at least 0
/// @error Refused as `lotPwl`; sd below 0. @source [AQLSCHEMES]
Result<LotPwl> lotPwlFromSummary(int n, double mean, double sd, const PwlLimits& limits, const PwlChain& chain);

}  // namespace groundcount::method
