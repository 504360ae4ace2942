#pragma once

#include <algorithm>
#include <cmath>

namespace groundcount {

/// Whether value <= limit, equality included, when both came out of decimal input through a few operations in binary:
/// differences below 1e-9 of the limit (or 1e-9 where the limit is smaller than 1) count as equality, because typed
/// readings never differ by so little. NaN is not within any limit. @source [DESIGN]
inline bool atMost(double value, double limit)
{
    return value <= limit + 1e-9 * std::max(1.0, std::fabs(limit));
}

/// Whether value >= limit, in the same sense. @source [DESIGN]
inline bool atLeast(double value, double limit)
{
    return value >= limit - 1e-9 * std::max(1.0, std::fabs(limit));
}

}  // namespace groundcount
