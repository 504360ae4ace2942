#pragma once

#include "method/accept/lot_forms.h"
#include "method/error.h"

#include <optional>
#include <span>

namespace groundcount::method {

/// Mean of results that stand for unequal sublots: sum(W x)/sum(W), W the size of the sublot of each (length, area or
/// volume, any one unit). Equal weights give the plain mean.
/// @param results at least 1 @param weights one for each, above 0
/// @error Refused: no result, unequal numbers, a weight not above 0, NaN. @source [D3665-SCOPE]
Result<double> weightedMean(std::span<const double> results, std::span<const double> weights);

/// Mean and minimum with unequal sublots: the weighted mean >= `leastMean` and no single result below `minimum`.
/// @param leastCount results needed, at least 1 @error as `weightedMean`; also with fewer results @source [COMMON], [D3665-SCOPE]
Result<LotResult> judgeWeightedMeanAndMinimum(std::span<const double> results, std::span<const double> weights, int leastCount,
                                              double leastMean, double minimum, std::optional<MeanRounding> rounding);

}  // namespace groundcount::method
