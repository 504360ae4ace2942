#include "method/decimal.h"

#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>
#include <cstdlib>

namespace groundcount {
namespace {

constexpr int kMostDigits = 18;  // a long long holds 18 digits whatever they are
constexpr int kMostPlaces = 15;
constexpr int kSnapPlaces = 9;   // a double of up to 1e5 carries more than 9 places, so a tie survives the snap

using Wide = boost::multiprecision::int128_t;

template <class Integer>
constexpr Integer powerOfTen(int n)
{
    Integer p = 1;
    for (int i = 0; i < n; ++i)
        p *= 10;
    return p;
}

template <class Integer>
Integer divideRounded(const Integer& n, const Integer& d, TieRule rule)
{
    const Integer q = n / d;
    const Integer r = n % d;
    const Integer twice = (r < 0 ? Integer(-r) : r) * 2;
    const bool away = twice > d || (twice == d && (rule == TieRule::HalfUp || q % 2 != 0));
    return away ? Integer(q + (n < 0 ? -1 : 1)) : q;
}

}  // namespace

Result<Decimal> Decimal::parse(std::string_view text)
{
    const std::string shown(text);
    const auto refuse = [&] {
        return refused("\"" + shown + "\" is not a decimal number; digits with at most one point are allowed.");
    };
    bool negative = false;
    if (text.starts_with("\xE2\x88\x92")) {
        negative = true;
        text.remove_prefix(3);
    } else if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        negative = text.front() == '-';
        text.remove_prefix(1);
    }
    long long digits = 0;
    int count = 0;
    int places = 0;
    bool point = false;
    bool any = false;
    for (const char c : text) {
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (c < '0' || c > '9')
            return refuse();
        any = true;
        count += (count > 0 || c != '0') ? 1 : 0;
        places += point ? 1 : 0;
        if (count > kMostDigits || places > kMostPlaces)
            return refused("\"" + shown + "\" has too many digits; at most 18 digits and 15 places are kept.");
        digits = digits * 10 + (c - '0');
    }
    if (!any)
        return refuse();
    return Decimal(negative ? -digits : digits, places);
}

Result<Decimal> Decimal::fromDouble(double value, int places)
{
    if (!(std::fabs(value) < 1e17) || places < 0 || places > 12 ||
        !(std::fabs(value) * std::pow(10.0, places) < 9e17))
        return refused("A computed value is not a finite number within the range of a decimal.");
    return Decimal(std::llround(value * std::pow(10.0, places)), places);
}

std::string Decimal::text() const
{
    if (m_places == 0)
        return std::to_string(m_digits);
    std::string s = std::to_string(std::llabs(m_digits));
    const auto places = static_cast<std::size_t>(m_places);
    if (s.size() <= places)
        s.insert(0, places + 1 - s.size(), '0');
    s.insert(s.size() - places, 1, '.');
    return m_digits < 0 ? "-" + s : s;
}

double Decimal::value() const
{
    // One correctly rounded division: digits and the power of ten are both exact below 2^53.
    if (m_places >= 0 && std::llabs(m_digits) < (1LL << 53))
        return static_cast<double>(m_digits) / static_cast<double>(powerOfTen<long long>(m_places));
    return std::strtod(text().c_str(), nullptr);
}

Decimal Decimal::rounded(int places, TieRule rule) const
{
    if (places >= m_places) {
        const int more = places - m_places;
        const Wide limit = powerOfTen<Wide>(kMostDigits);
        const Wide widened = more > kMostDigits ? limit : Wide(m_digits) * powerOfTen<Wide>(more);
        if (widened >= limit || widened <= -limit)
            return *this;
        return Decimal(static_cast<long long>(widened), places);
    }
    const Wide q = divideRounded<Wide>(m_digits, powerOfTen<Wide>(m_places - places), rule);
    if (places >= 0)
        return Decimal(static_cast<long long>(q), places);
    return Decimal(static_cast<long long>(Wide(q * powerOfTen<Wide>(-places))), 0);
}

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b)
{
    const int common = a.m_places > b.m_places ? a.m_places : b.m_places;
    const Wide left = Wide(a.m_digits) * powerOfTen<Wide>(common - a.m_places);
    const Wide right = Wide(b.m_digits) * powerOfTen<Wide>(common - b.m_places);
    return left < right ? std::strong_ordering::less
                        : left > right ? std::strong_ordering::greater : std::strong_ordering::equal;
}

double roundReported(double value, int places, TieRule rule)
{
    const long long q = divideRounded<long long>(std::llround(value * 1e9), powerOfTen<long long>(kSnapPlaces - places), rule);
    if (places >= 0)
        return static_cast<double>(q) / static_cast<double>(powerOfTen<long long>(places));
    return static_cast<double>(q * powerOfTen<long long>(-places));
}

std::string reportedText(double value, int places, TieRule rule)
{
    const auto snapped = Decimal::fromDouble(value, kSnapPlaces);
    return snapped ? snapped->rounded(places, rule).text() : std::string("-");
}

}  // namespace groundcount
