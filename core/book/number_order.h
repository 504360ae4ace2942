#pragma once

#include <string_view>

namespace groundcount::book {

/// Whether number `a` stands before `b`: runs of digits by their value, all else by its bytes, so "T-2" < "T-10".
/// A strict weak order; numbers that differ only in leading zeros are ordered by their bytes.
bool numberBefore(std::string_view a, std::string_view b);

}  // namespace groundcount::book
