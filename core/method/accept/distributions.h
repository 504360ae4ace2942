#pragma once

#include "method/error.h"

#include <span>

#include "method/spread.h"

namespace groundcount::method {

/// Distribution functions by Boost.Math; never home-made. All take and give plain probabilities 0 to 1 and give NaN, never
/// an exception, outside their range, so that the callers' checks refuse it.

/// I_z(a, b), regularised incomplete beta. @param a above 0 @param b above 0 @param z 0 to 1
double incompleteBeta(double a, double b, double z);
/// z with I_z(a, b) = p. @param p 0 to 1
double incompleteBetaInverse(double a, double b, double p);
/// t with P(T > t) = upper. @param upper above 0 and at most 0.5 @param degreesOfFreedom above 0
double studentUpper(double upper, double degreesOfFreedom);
/// P(|T| > |t|).
double studentTwoSidedP(double t, double degreesOfFreedom);
/// f with P(F > f) = upper.
double fisherUpper(double upper, double numeratorDf, double denominatorDf);
/// P(F <= f).
double fisherCdf(double f, double numeratorDf, double denominatorDf);
/// Phi(z).
double normalCdf(double z);
/// z with Phi(z) = p. @param p above 0 and below 1
double normalQuantile(double p);

/// As `spreadOf`, with a spread of exactly 0 where all values are equal, which the sum of binary doubles may miss.
/// @error as `spreadOf` @source [DESIGN]
Result<Spread> lotSpread(std::span<const double> values);

}  // namespace groundcount::method
