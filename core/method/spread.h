#pragma once

#include "method/error.h"

#include <span>

namespace groundcount::method {

/// Mean and standard deviation of a sample.
struct Spread {
    double mean = 0;
    double sd = 0;  ///< with n - 1
};

/// mean = sum x/n; s = sqrt(sum (x - mean)^2/(n - 1)), in two passes. @param values any unit, at least 2
/// @error Refused for fewer than 2 values or one that is not finite. @source [D2922-TXT]
Result<Spread> spreadOf(std::span<const double> values);

/// The mean alone. @param values at least 1 @error Refused for no value or one that is not finite. @source [D2922-TXT]
Result<double> meanOf(std::span<const double> values);

}  // namespace groundcount::method
