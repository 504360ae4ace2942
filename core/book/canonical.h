#pragma once

#include "method/error.h"

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

/// Canonical JSON text, so that equal content has equal bytes and therefore an equal hash on every device.
namespace groundcount::book {

/// Deepest nesting of arrays and objects that is read or written; a record needs five.
inline constexpr int kDeepestNesting = 64;
/// Largest whole number that every JSON reader keeps exactly: 2^53 - 1. @source RFC 7493, section 2.2
inline constexpr long long kLargestWhole = 9007199254740991LL;

/// Writes `value` in the form of RFC 8785: members ordered by the UTF-16 code units of their names, no blanks, shortest
/// round-trip numbers in ECMAScript form, control characters escaped, everything else as UTF-8.
/// @param value nesting up to kDeepestNesting; whole numbers within +-kLargestWhole, or larger when their digits are the
///        canonical text of a double (so that what is written can be read and written again); numbers finite; texts valid UTF-8
/// @return the canonical text, UTF-8
/// @error Refused for a number that is not finite or too large, invalid UTF-8, binary content or deeper nesting.
/// @source RFC 8785
Result<std::string> canonicalText(const nlohmann::json& value);

/// Appends a text in canonical form, in quotes. @error Refused for invalid UTF-8. @source RFC 8785, section 3.2.2.2
Result<void> appendCanonical(std::string_view text, std::string& out);

/// The ECMAScript text of a number (ECMA-262, Number::toString with radix 10), as RFC 8785 section 3.2.2.3 asks.
/// @param value finite
/// @error Refused for NaN and infinity.
Result<std::string> canonicalNumber(double value);

/// Reads JSON text that can be written canonically again: valid UTF-8, no doubled member names, bounded nesting.
/// @error Refused, naming a doubled name, deeper nesting, or that the text is not JSON.
/// @source RFC 8259, RFC 7493
Result<nlohmann::json> readJson(std::string_view text);

}  // namespace groundcount::book
