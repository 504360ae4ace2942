#include "gis/instant.h"

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace groundcount::gis {
namespace {

using std::chrono::sys_days;

bool read(std::string_view digits, int& out)
{
    out = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9')
            return false;
        out = out * 10 + (c - '0');
    }
    return true;
}

}  // namespace

Result<Instant> parseInstant(const std::string& text)
{
    const auto wrong = [&] { return refused("A time is written like 2026-06-01T15:15:00.000Z (UTC); it is \"" + text + "\"."); };
    const std::string_view t = text;
    const bool milli = t.size() == 24;
    if ((t.size() != 20 && !milli) || t[4] != '-' || t[7] != '-' || t[10] != 'T' || t[13] != ':' || t[16] != ':' || t.back() != 'Z')
        return wrong();
    Instant utc;
    int second = 0;
    int thousandths = 0;
    if (!read(t.substr(0, 4), utc.year) || !read(t.substr(5, 2), utc.month) || !read(t.substr(8, 2), utc.day)
        || !read(t.substr(11, 2), utc.hour) || !read(t.substr(14, 2), utc.minute) || !read(t.substr(17, 2), second)
        || (milli && (t[19] != '.' || !read(t.substr(20, 3), thousandths))))
        return wrong();
    const std::chrono::year_month_day day{std::chrono::year(utc.year), std::chrono::month(static_cast<unsigned>(utc.month)),
                                          std::chrono::day(static_cast<unsigned>(utc.day))};
    if (!day.ok() || utc.hour > 23 || utc.minute > 59 || second > 59)
        return wrong();
    utc.second = second + thousandths / 1000.0;
    return utc;
}

std::string instantText(const Instant& utc)
{
    // By hand: a layer of a million rows has two million of them.
    std::string text = "0000-00-00T00:00:00.000Z";
    const auto put = [&text](std::size_t end, int number) {
        for (std::size_t at = end; number > 0 && at-- > 0; number /= 10)
            text[at] = static_cast<char>('0' + number % 10);
    };
    const int thousandths = static_cast<int>(std::lround(utc.second * 1000));
    put(4, utc.year);
    put(7, utc.month);
    put(10, utc.day);
    put(13, utc.hour);
    put(16, utc.minute);
    put(19, thousandths / 1000);
    put(23, thousandths % 1000);
    return text;
}

std::string localTimeText(const Instant& utc, int offsetMinutes)
{
    const std::chrono::year_month_day day{std::chrono::year(utc.year), std::chrono::month(static_cast<unsigned>(utc.month)),
                                          std::chrono::day(static_cast<unsigned>(utc.day))};
    const auto local = sys_days(day) + std::chrono::minutes(utc.hour * 60 + utc.minute + offsetMinutes);
    const auto localDay = std::chrono::floor<std::chrono::days>(local);
    const std::chrono::year_month_day date(localDay);
    const int minutes = static_cast<int>((local - localDay).count());
    const int offset = std::abs(offsetMinutes);
    char text[80];
    std::snprintf(text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d%c%02d:%02d", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                  static_cast<unsigned>(date.day()), minutes / 60, minutes % 60, static_cast<int>(utc.second), offsetMinutes < 0 ? '-' : '+',
                  offset / 60, offset % 60);
    return text;
}

}  // namespace groundcount::gis
