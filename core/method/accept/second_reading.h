#pragma once

#include "method/error.h"

namespace groundcount::method {

/// How the limit of a second reading is stated.
enum class DifferenceKind { Absolute, PercentOfFirst };
/// Together: the readings are averaged. Apart: another spot.
enum class Agreement { Together, Apart };

/// A second reading over the same hole beside the first.
struct SecondReading {
    double difference = 0;     ///< |second - first|, unit of the readings
    double differencePct = 0;  ///< 100 |second - first| / first, percent
    double mean = 0;           ///< (first + second) / 2
    Agreement agreement = Agreement::Apart;
};

/// Compares two readings of one quantity: together when |second - first| <= limit, or
/// 100 |second - first| <= limit x first; inclusive, compared as decimals of 9 places.
/// @param first, second wet or water density in one unit, first > 0, second >= 0
/// @param limit unit of the readings, or percent of the first; >= 0
/// @error Refused for a reading or limit outside these ranges
/// @source [WAQTC-T310] for absolute limits; percent of the first is common practice, no source [COMMON]
Result<SecondReading> compareReadings(double first, double second, DifferenceKind kind, double limit);

}  // namespace groundcount::method
