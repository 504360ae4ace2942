#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <span>
#include <string_view>

namespace groundcount::method {

/// A procedure for the mass of a moisture sample; the two columns of D2216 differ by how fine the result is reported.
enum class MoistureSampleRule {
    D2216ToOnePercent,
    D2216ToTenthPercent,
    T265,
    T255
};

/// One row: up to this largest particle at least this much moist material.
struct MoistureSampleRow {
    Length largestParticle;
    double leastMassG = 0;
};

/// Rows of a procedure, rising by particle. From memory, to be confirmed before they ship under an agency's name.
/// @source [D2216-TXT], [WAQTC-T255]
std::span<const MoistureSampleRow> moistureSampleRows(MoistureSampleRule rule);

/// Least mass for a largest particle: the row of the smallest sieve that the particle passes.
/// @param largestParticle above 0 and at most 3 in. (75 mm) @return grams
/// @error Refused: outside the table; NaN.
/// @source [D2216-TXT], [WAQTC-T255]
Result<double> leastMoistureSampleG(MoistureSampleRule rule, Length largestParticle);

}  // namespace groundcount::method
