#pragma once

#include "method/decimal.h"
#include "method/error.h"

namespace groundcount::method {

/// How many tests a quantity of one lift needs; the quantity may be a length, an area, a volume or a number of other tests.
struct FrequencyRule {
    Decimal unitQuantity;  ///< quantity of one unit, above 0, for example 500 for "1 per 500 ft"
    int testsPerUnit = 1;  ///< at least 1
    int minimum = 0;       ///< per lift or installation, at least 0
};

/// required = max(minimum, tests per unit x ceil(quantity/unit)), exact on the decimals as typed (0.3/0.1 is 3).
/// @param quantity of one lift, unit of the rule, at least 0
/// @return number of tests; sum it over lifts and zones
/// @error Refused: unit quantity not above 0, quantity below 0, tests per unit below 1, minimum below 0, more than 1 000 000 tests.
/// @source [FDOT-120], [FP96-209], [EVERETT], [SJC-CQA], [CO-EMB]
Result<int> requiredTests(const FrequencyRule& rule, const Decimal& quantity);

/// floor(quantity/unit), exact on the decimals as typed.
/// @param quantity at least 0 @param unit above 0 @return 0 to 1 000 000
/// @error Refused outside the ranges. @source [COMPUTED]
Result<int> wholeUnits(const Decimal& quantity, const Decimal& unit);

}  // namespace groundcount::method
