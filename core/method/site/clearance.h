#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <string_view>

namespace groundcount::method {

enum class ClearanceAnswer {
    Clear,      ///< even the nearest believable distance meets the requirement
    TooClose,   ///< even the farthest believable distance does not
    CannotTell  ///< the distance is not known well enough: measure it with a tape
};

/// Whether the limit itself meets a requirement.
enum class Inclusive { Yes, No };

/// Judges a distance that is known only to +/- u against a required distance.
///
/// Clear when d - u >= r (d - u > r when the limit is not inclusive); TooClose when d + u < r (d + u <= r); else CannotTell.
/// @param measured d, at least 0 @param uncertainty u, half-width of the interval, at least 0 (0 for a taped distance)
/// @param required r, above 0, a value of the rule set
/// @error Refused: outside the ranges, NaN.
/// @source our own rule [DESIGN]; the required distances are rule-set values (method.md section 11)
Result<ClearanceAnswer> judgeClearance(Length measured, Length uncertainty, Length required, Inclusive inclusive);

/// One word or two for a report: "clear", "too close", "cannot tell".
std::string_view clearanceWord(ClearanceAnswer answer);

}  // namespace groundcount::method
