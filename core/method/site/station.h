#pragma once

#include "method/error.h"

#include <string>
#include <string_view>

namespace groundcount::method {

/// A place along an alignment as the plans write it. `feet` is the signed number behind "12+34.56" (1234.56) in the
/// job's length unit (feet; metres for a job with 1000 m stations). `region` counts the station equations passed since
/// the begin of the alignment (0 = before the first), because an overlap equation makes one number name two places.
struct Station {
    double feet = 0;
    int region = 0;
    bool operator==(const Station&) const = default;
};

/// Reads a station, for example "803+09.4" at 100 per station -> 80309.4.
///
/// value = sign (a per + b) for "[-]a+b"; b has exactly log10(per) digits before its decimal point.
/// @param text "[-]digits+digits[.digits]", U+2212 accepted as minus; no blanks
/// @param perStation length of one station in the job's unit: 100 (ft), 1000 (m) or another power of ten from 10 to 10 000
/// @return the signed number, the nearest double to the decimal text
/// @error Refused: another length of station, another form of text, more than 15 digits.
/// @source [DE-T2] for the form; the count of digits after the plus sign [DESIGN]
Result<double> parseStation(std::string_view text, double perStation);

/// Writes a station with `places` decimals, ties to the even digit on the decimal text: 5338.3 -> "53+38.3", -50 -> "-0+50".
///
/// @param value station in the job's unit, finite, magnitude below 1e8
/// @param perStation as in `parseStation`; anything else is a programmer's slip
/// @param places 0 to 8
/// @source [DE-T2]
std::string stationText(double value, double perStation, int places);

}  // namespace groundcount::method
