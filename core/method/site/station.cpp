#include "method/site/station.h"

#include "method/decimal.h"

#include <algorithm>
#include <cassert>

namespace groundcount::method {
namespace {

// Digits after the plus sign: 100 -> 2, 1000 -> 3; 0 for a length that is not a power of ten.
std::size_t digitsOf(double perStation)
{
    double power = 10;
    for (std::size_t digits = 1; digits <= 4; ++digits, power *= 10)
        if (perStation == power)
            return digits;
    return 0;
}

bool allDigits(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

}  // namespace

Result<double> parseStation(std::string_view text, double perStation)
{
    const std::size_t digits = digitsOf(perStation);
    if (digits == 0)
        return refused("The length of one station must be 10, 100, 1000 or 10000; it is " + std::to_string(perStation) + ".");
    const auto wrong = [&] {
        return refused("A station is written like " + std::string(digits == 3 ? "1+250.5" : "12+34.5") + " with exactly "
                       + std::to_string(digits) + " digits between the plus sign and the decimal point; it is \""
                       + std::string(text) + "\".");
    };
    std::string_view rest = text;
    std::string sign;
    for (const std::string_view minus : {std::string_view("-"), std::string_view("\u2212")})
        if (sign.empty() && rest.starts_with(minus)) {
            sign = "-";
            rest.remove_prefix(minus.size());
        }
    const std::size_t plus = rest.find('+');
    if (plus == std::string_view::npos)
        return wrong();
    const std::string_view full = rest.substr(0, plus);
    const std::string_view part = rest.substr(plus + 1);
    const std::size_t point = part.find('.');
    const std::string_view whole = part.substr(0, point);
    if (!allDigits(full) || !allDigits(whole) || whole.size() != digits)
        return wrong();
    if (point != std::string_view::npos && !allDigits(part.substr(point + 1)))
        return wrong();
    if (full.size() + part.size() > 16)
        return wrong();
    // Joining the digits as text keeps "12+34.56" the nearest double to 1234.56, which 12 * 100 + 34.56 is not always.
    const auto decimal = Decimal::parse(sign + std::string(full) + std::string(part));
    if (!decimal)
        return wrong();
    return decimal->value();
}

std::string stationText(double value, double perStation, int places)
{
    const std::size_t digits = digitsOf(perStation);
    assert(digits > 0 && places >= 0 && places <= 8);
    std::string text = reportedText(value, places, TieRule::HalfEven);
    std::string sign;
    if (text.starts_with('-')) {
        sign = "-";
        text.erase(0, 1);
    }
    const std::size_t point = std::min(text.find('.'), text.size());
    if (point <= digits)
        text.insert(0, digits + 1 - point, '0');
    text.insert(std::min(text.find('.'), text.size()) - digits, "+");
    return sign + text;
}

}  // namespace groundcount::method
