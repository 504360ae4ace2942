#include "method/site/angle.h"

#include "method/decimal.h"

#include <array>
#include <cmath>
#include <string>

namespace groundcount::method {

Result<double> parseAngleDeg(std::string_view text)
{
    const auto wrong = [&] {
        return refused("An angle is written in degrees or degrees-minutes-seconds with minutes and seconds below 60; it is \""
                       + std::string(text) + "\".");
    };
    std::string_view rest = text;
    double sign = 1;
    if (rest.starts_with('-')) {
        sign = -1;
        rest.remove_prefix(1);
    } else if (rest.starts_with("\u2212")) {
        sign = -1;
        rest.remove_prefix(3);
    }
    if (!rest.empty() && std::string_view("NSEWnsew").find(rest.back()) != std::string_view::npos) {
        if (sign < 0)
            return wrong();
        if (std::string_view("SWsw").find(rest.back()) != std::string_view::npos)
            sign = -1;
        rest.remove_suffix(1);
    }
    std::array<double, 3> parts{};
    std::size_t count = 0;
    bool fraction = false;
    std::string number;
    const auto take = [&] {
        if (number.empty())
            return true;
        const auto value = Decimal::parse(number);
        if (!value || count == parts.size() || fraction)
            return false;
        fraction = value->places() > 0;
        parts[count++] = value->value();
        number.clear();
        return true;
    };
    bool separated = true;
    for (std::size_t i = 0; i < rest.size(); ++i) {
        const char c = rest[i];
        if ((c >= '0' && c <= '9') || c == '.') {
            number += c;
            separated = false;
            continue;
        }
        const bool degreeSign = rest.substr(i).starts_with("\u00b0");
        if (!degreeSign && std::string_view("-d'\" ").find(c) == std::string_view::npos)
            return wrong();
        if (separated && c != ' ')
            return wrong();
        if (!take())
            return wrong();
        separated = true;
        if (degreeSign)
            ++i;
    }
    if (!take() || count == 0)
        return wrong();
    if ((count > 1 && !(parts[1] < 60)) || !(parts[2] < 60))
        return wrong();
    return sign * (parts[0] + parts[1] / 60 + parts[2] / 3600);
}

double wrapAzimuthDeg(double azimuthDeg)
{
    const double wrapped = std::fmod(azimuthDeg, 360.0);
    if (wrapped < 0)
        return wrapped + 360.0 < 360.0 ? wrapped + 360.0 : 0.0;
    return wrapped;
}

}  // namespace groundcount::method
