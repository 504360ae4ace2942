#pragma once

#include "method/error.h"

#include <string>
#include <string_view>

namespace groundcount::method {

/// Number of a retest: that of the failing test and a letter, A to Z, then AA, AB, ... Numbers are never used again.
/// @param parent number of the first, failing test as written ("021"), ending in a digit @param retestNo 1 for the first retest, at most 18 278 (ZZZ)
/// @return for example "021A"
/// @error Refused: an empty parent, one that ends in a letter (then it is a retest itself: count on from its parent), a
///   retest number outside the range.
/// @source [SJC-CQA]; after Z [DESIGN]
Result<std::string> retestNumber(std::string_view parent, int retestNo);

}  // namespace groundcount::method
