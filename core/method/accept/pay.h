#pragma once

#include "method/error.h"

#include <span>

namespace groundcount::method {

/// One step of a pay table: from this percent within limits, factor = (intercept + slope PWL)/100.
struct PayStep {
    double fromPwl = 0;
    double slope = 0;
    double intercept = 0;
};

/// PF = (55 + 0.5 PWL)/100 over the whole range. @source [FDOT-334]
std::span<const PayStep> linearPaySteps();

/// 96 and up 1.06; 90 PWL + 10; 75 0.5 PWL + 55; 55 1.4 PWL - 12; below 55 nothing. From memory. @source [FAA-P401]
std::span<const PayStep> steppedPaySteps();

/// Pay factor of a percent within limits: information only, earthwork is normally pass or fail.
/// @param steps falling by `fromPwl` @param pwl percent, 0 to 100
/// @return 1.00 = full pay
/// @error Refused: outside 0 to 100, or below the last step (reject), NaN.
/// @source [FDOT-334], [FAA-P401]
Result<double> payFactor(std::span<const PayStep> steps, double pwl);

}  // namespace groundcount::method
