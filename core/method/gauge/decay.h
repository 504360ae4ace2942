#pragma once

#include "method/error.h"

namespace groundcount::method {

/// exp(-ln2 t/T). The half-life is always an input with a named source.
/// @param halfLifeDays T, above 0 @param elapsedDays t, at least 0 @return above 0 to 1
/// @error Refused otherwise (a test date before the calibration date is a negative t). @source [D6938-TXT], [HL-NIST]
Result<double> decayFactor(double halfLifeDays, double elapsedDays);

/// How a source states a half-life.
enum class TimeUnit { Seconds, Days, Years365, Years365Quarter };

/// A half-life in days: s/86400, d, years of 365 d or of 365.25 d. @param value above 0 @error Refused otherwise.
/// @source [HL-BO] for years of 365 d, [HL-DDEP] for years of 365.25 d
Result<double> halfLifeDays(double value, TimeUnit unit);

}  // namespace groundcount::method
