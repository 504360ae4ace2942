#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// Checks the access hole and the depth of the test against the lift.
///
/// hole >= test + margin; test <= lift.
/// @param testDepth depth of the source, above 0 @param hole drilled or driven depth
/// @param margin least depth of the hole below the test depth, at least 0, a rule-set value (usually 50 mm or 2 in.)
/// @param lift thickness of the compacted lift, above 0
/// @return nothing when both hold
/// @error Refused with the depth that is missing; NaN.
/// @source margin [KY-KM64], [FDOT-FM238-N], [D6938-TXT]; test depth not more than the lift [COMMON]
Result<void> checkHole(Length testDepth, Length hole, Length margin, Length lift);

}  // namespace groundcount::method
