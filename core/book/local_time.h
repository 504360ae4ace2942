#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace groundcount::book {

/// Milliseconds since 1970 of "YYYY-MM-DDTHH:MM:SS.mmmZ", the form of every sealed time. @param at checked before it was sealed
std::int64_t millisecondsOf(std::string_view at);

/// The form of every sealed time of milliseconds since 1970, the inverse of millisecondsOf. @param ms years 0 to 9999
std::string utcText(std::int64_t ms);

/// The calendar day at the place: "YYYY-MM-DD" of `at` plus the offset. @param offsetMinutes local time minus UTC
std::string localDay(std::string_view at, int offsetMinutes);

/// The calendar day `days` after a day. @param day "YYYY-MM-DD" @param days 0 to 36 500
std::string dayAfter(std::string_view day, int days);

}  // namespace groundcount::book
