#include "book/local_time.h"

#include <chrono>
#include <cstdio>

namespace groundcount::book {

namespace {

using namespace std::chrono;

/// Digits of a text that was checked for its form; anything else counts as 0.
int part(std::string_view text, std::size_t from, std::size_t size)
{
    int value = 0;
    for (std::size_t i = from; i < from + size && i < text.size(); ++i)
        value = value * 10 + (text[i] >= '0' && text[i] <= '9' ? text[i] - '0' : 0);
    return value;
}

sys_days dayOf(std::string_view text)
{
    return year(part(text, 0, 4)) / month(static_cast<unsigned>(part(text, 5, 2))) / day(static_cast<unsigned>(part(text, 8, 2)));
}

std::string textOf(year_month_day date)
{
    char text[48];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text;
}

}  // namespace

std::int64_t millisecondsOf(std::string_view at)
{
    const std::int64_t seconds = dayOf(at).time_since_epoch().count() * std::int64_t{86400} + part(at, 11, 2) * 3600 + part(at, 14, 2) * 60 + part(at, 17, 2);
    return seconds * 1000 + part(at, 20, 3);
}

std::string utcText(std::int64_t ms)
{
    const sys_time<milliseconds> at{milliseconds(ms)};
    const sys_days day = floor<days>(at);
    const auto rest = static_cast<int>((at - day).count());
    char text[32];
    std::snprintf(text, sizeof text, "T%02d:%02d:%02d.%03dZ", rest / 3'600'000, rest / 60'000 % 60, rest / 1000 % 60, rest % 1000);
    return textOf(day) + text;
}

std::string localDay(std::string_view at, int offsetMinutes)
{
    const auto local = sys_time<milliseconds>(milliseconds(millisecondsOf(at))) + minutes(offsetMinutes);
    return textOf(floor<days>(local));
}

std::string dayAfter(std::string_view day, int days)
{
    return textOf(dayOf(day) + std::chrono::days(days));
}

}  // namespace groundcount::book
