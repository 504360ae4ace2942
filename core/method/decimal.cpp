#include "method/decimal.h"

#include <array>
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

constexpr auto kTens = [] {
    std::array<long long, kMostDigits + 1> tens{};
    for (int n = 0; n <= kMostDigits; ++n)
        tens[static_cast<std::size_t>(n)] = powerOfTen<long long>(n);
    return tens;
}();

constexpr long long tens(int n)
{
    return kTens[static_cast<std::size_t>(n)];
}

template <class Integer>
Integer divideRounded(const Integer& n, const Integer& d, TieRule rule)
{
    const Integer q = n / d;
    const Integer r = n - q * d;
    const Integer twice = (r < 0 ? Integer(-r) : r) * 2;
    const bool away = twice > d || (twice == d && (rule == TieRule::HalfUp || q % 2 != 0));
    return away ? Integer(q + (n < 0 ? -1 : 1)) : q;
}

/// The same on 64 bits without a branch: which way a figure rounds cannot be predicted, and a wrong guess costs more than
/// the division. @param d above 0 and at most 4e18
constexpr long long divideRounded(long long n, long long d, TieRule rule)
{
    const auto divisor = static_cast<unsigned long long>(d);
    const auto sign = static_cast<unsigned long long>(n < 0);
    const auto magnitude = (static_cast<unsigned long long>(n) ^ (0ULL - sign)) + sign;
    const auto q = magnitude / divisor;
    const auto twice = (magnitude - q * divisor) * 2;
    const auto atTie = (q | static_cast<unsigned long long>(rule == TieRule::HalfUp)) & 1ULL;
    const auto rounded = q + (static_cast<unsigned long long>(twice > divisor) | (static_cast<unsigned long long>(twice == divisor) & atTie));
    return static_cast<long long>((rounded ^ (0ULL - sign)) + sign);
}

/// n/10^Cut, rounded. The divisor is known to the compiler, which then multiplies instead: five times as fast.
template <int Cut>
long long withoutPlaces(long long n, TieRule rule)
{
    return divideRounded(n, powerOfTen<long long>(Cut), rule);
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
    return Decimal(nearestWhole(value * std::pow(10.0, places)), places);
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
        return static_cast<double>(m_digits) / static_cast<double>(tens(m_places));
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
    const int cut = m_places - places;
    if (cut <= kMostDigits && places >= 0)  // digits, divisor and twice the remainder all fit 64 bits
        return Decimal(divideRounded(m_digits, tens(cut), rule), places);
    const Wide q = divideRounded<Wide>(m_digits, powerOfTen<Wide>(cut), rule);
    if (places >= 0)
        return Decimal(static_cast<long long>(q), places);
    return Decimal(static_cast<long long>(Wide(q * powerOfTen<Wide>(-places))), 0);
}

Result<Decimal> Decimal::roundedTo(const Decimal& unit, TieRule rule) const
{
    if (unit.m_digits <= 0)
        return refused("A value is rounded to multiples of a unit above 0; the unit is " + unit.text() + ".");
    // value/unit as a quotient of whole numbers: both sides are taken to the finer of the two places.
    const int common = m_places > unit.m_places ? m_places : unit.m_places;
    using Wider = boost::multiprecision::int256_t;
    const Wider n = Wider(m_digits) * powerOfTen<Wider>(common - m_places);
    const Wider d = Wider(unit.m_digits) * powerOfTen<Wider>(common - unit.m_places);
    const Wider q = divideRounded<Wider>(n, d, rule) * unit.m_digits;
    const Wider limit = powerOfTen<Wider>(kMostDigits);
    if (q >= limit || q <= -limit)
        return refused("Rounding " + text() + " to multiples of " + unit.text() + " needs more than 18 digits.");
    return Decimal(static_cast<long long>(q), unit.m_places);
}

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b)
{
    if (a.m_places == b.m_places)
        return a.m_digits <=> b.m_digits;
    const int common = a.m_places > b.m_places ? a.m_places : b.m_places;
    const Wide left = Wide(a.m_digits) * powerOfTen<Wide>(common - a.m_places);
    const Wide right = Wide(b.m_digits) * powerOfTen<Wide>(common - b.m_places);
    return left < right ? std::strong_ordering::less
                        : left > right ? std::strong_ordering::greater : std::strong_ordering::equal;
}

double roundReported(double value, int places, TieRule rule)
{
    const long long n = nearestWhole(value * 1e9);
    switch (places) {  // the places in use
    case 0: return static_cast<double>(withoutPlaces<kSnapPlaces>(n, rule));
    case 1: return static_cast<double>(withoutPlaces<kSnapPlaces - 1>(n, rule)) / 10.0;
    case 2: return static_cast<double>(withoutPlaces<kSnapPlaces - 2>(n, rule)) / 100.0;
    default: break;
    }
    const long long q = divideRounded(n, tens(kSnapPlaces - places), rule);
    return places >= 0 ? static_cast<double>(q) / static_cast<double>(tens(places)) : static_cast<double>(q * tens(-places));
}

double roundReported(double value, const Rounding& r)
{
    if (r.step == 1)
        return roundReported(value, r.places, r.tie);
    const long long q = divideRounded(nearestWhole(value * 1e9), tens(kSnapPlaces - r.places) * r.step, r.tie) * r.step;
    return r.places >= 0 ? static_cast<double>(q) / static_cast<double>(tens(r.places))
                         : static_cast<double>(q * tens(-r.places));
}

std::string reportedText(double value, int places, TieRule rule)
{
    const auto snapped = Decimal::fromDouble(value, kSnapPlaces);
    return snapped ? snapped->rounded(places, rule).text() : std::string("-");
}

std::string reportedText(double value, const Rounding& r)
{
    return r.step == 1 ? reportedText(value, r.places, r.tie) : reportedText(roundReported(value, r), r.places, r.tie);
}

}  // namespace groundcount
