#pragma once

#include "method/error.h"

#include <string>

namespace groundcount::gis {

/// UTC.
struct Instant {
    int year = 0, month = 0, day = 0, hour = 0, minute = 0;
    double second = 0;
};

/// Reads "YYYY-MM-DDTHH:MM:SS[.mmm]Z".
/// @error Refused for anything else, naming the text.
Result<Instant> parseInstant(const std::string& text);

/// "2026-06-01T15:15:00.000Z", the form of a GeoPackage DATETIME.
std::string instantText(const Instant& utc);

/// Local time as RFC 3339 with its offset: "2026-06-01T15:15:00.000Z", -420 -> "2026-06-01T08:15:00-07:00".
/// @param offsetMinutes local minus UTC, -840 to 840
std::string localTimeText(const Instant& utc, int offsetMinutes);

}  // namespace groundcount::gis
