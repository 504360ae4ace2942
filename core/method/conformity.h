#pragma once

#include "method/decimal.h"
#include "method/error.h"

namespace groundcount::method {

/// Which way a limit bounds.
enum class Bound { Minimum, Maximum };

/// Absolute: the value as it is meets the limit or not. Rounding: rounded first to the last place of the limit.
enum class ConformityMethod { Absolute, Rounding };

struct Conformity {
    Decimal compared;      ///< what stood against the limit
    bool isMet = false;    ///< limit inclusive
};

/// Compares an observed value with a limit, on decimal text.
/// @param places last place of the limit, 15 to -9 (-2 = hundreds); used by Rounding only
/// @error Refused for places out of range. @source [E29-SCOPE], [E29-TXT]; ties [HARTNELL]
Result<Conformity> conformity(Bound bound, const Decimal& limit, const Decimal& observed, ConformityMethod method,
                              int places, TieRule tie);

}  // namespace groundcount::method
