#pragma once

#include "method/decimal.h"
#include "method/error.h"

#include <optional>
#include <span>
#include <string>

namespace groundcount::method {

enum class LotVerdict { Pass, Fail };

/// Verdict of a lot with the number that decided and a sentence that says why.
struct LotResult {
    LotVerdict verdict = LotVerdict::Fail;
    std::optional<double> decidingMean;  ///< the mean, or the lowest moving mean
    std::string because;
};

/// Rounding of a mean before it is compared (rounding method); none = absolute method.
struct MeanRounding {
    int places = 0;  ///< 0 to 8
    TieRule tie = TieRule::HalfEven;
};

/// Every result >= minimum; all limits here are inclusive and on decimals (95.0 meets 95).
/// @param results percent compaction, at least 1, rounded already as the rule set says @param minimum percent
/// @error Refused: no result, a value that is not a number. @source [DESIGN]
Result<LotResult> judgeEvery(std::span<const double> results, double minimum);

/// Every result from minimum to maximum. @param maximum at least the minimum @error as `judgeEvery` @source [COPPELL]
Result<LotResult> judgeBand(std::span<const double> results, double minimum, double maximum);

/// Mean of the results >= `leastMean` and none below `minimum`.
/// @param leastCount results needed, at least 1 @error also with fewer results @source [COMMON]
Result<LotResult> judgeMeanAndMinimum(std::span<const double> results, int leastCount, double leastMean, double minimum,
                                      std::optional<MeanRounding> rounding);

/// Every mean of `window` results in a row >= minimum, from the window-th on.
/// @param results in the order of testing @param window usually 4 or 5, at least 2 @error also with fewer results than that
/// @source [COMMON]
Result<LotResult> judgeMovingMean(std::span<const double> results, int window, double minimum, std::optional<MeanRounding> rounding);

}  // namespace groundcount::method
