#pragma once

#include "method/error.h"

#include <compare>
#include <string>
#include <string_view>

namespace groundcount {

/// How a tie (exactly half a unit of the last kept place) is settled. @source [HARTNELL], [E29-TXT]
enum class TieRule {
    HalfEven,  ///< to the even digit
    HalfUp     ///< away from zero
};

/// A number as typed: an exact decimal, value = digits x 10^-places. Every rounding that is reported and every
/// comparison with a limit goes through this type, so that no binary double decides a tie.
/// Range: at most 18 significant digits, at most 15 places.
class Decimal {
public:
    constexpr Decimal() = default;

    /// Reads "[+-]digits[.digits]" (no exponent, no blanks, U+2212 accepted as minus). Keeps trailing zeros as places.
    /// @error Refused for anything else, naming the text.
    static Result<Decimal> parse(std::string_view text);

    /// The decimal nearest to `value` at `places` places (0 to 12). Used for computed values: 12 significant digits
    /// and more survive, and a quotient that is a tie in exact arithmetic is seen as a tie again.
    /// @error Refused for NaN, infinity or a value with more than 17 digits at that many places.
    static Result<Decimal> fromDouble(double value, int places);

    /// @return digits x 10^-places as written, for example "-0.50"; negative zero is written without sign.
    std::string text() const;
    double value() const;
    int places() const { return m_places; }

    /// Rounds to a multiple of the unit 10^-places; `places` may be negative (-1 = tens, -2 = hundreds).
    Decimal rounded(int places, TieRule rule) const;

    /// Rounds to the nearest multiple of `unit` (5, 50, 0.5, ...), kept with the unit's places; a tie goes to the even
    /// multiple or away from zero. 97.5 to 5 is 95 or 100 by the nearer; 62.5 to 5 half even is 60, half up 65.
    /// @param unit above 0
    /// @error Refused for a unit that is not above 0, or a result of more than 18 digits. @source [E29-TXT]
    Result<Decimal> roundedTo(const Decimal& unit, TieRule rule) const;

    /// Exact numeric comparison: 95 == 95.0.
    friend std::strong_ordering operator<=>(const Decimal& a, const Decimal& b);
    friend bool operator==(const Decimal& a, const Decimal& b) { return (a <=> b) == std::strong_ordering::equal; }

private:
    constexpr Decimal(long long digits, int places) : m_digits(digits), m_places(places) {}
    long long m_digits = 0;
    int m_places = 0;
};

/// The whole number nearest to `value`, a tie away from zero. @param value magnitude below 9e18
inline long long nearestWhole(double value)
{
    const auto whole = static_cast<long long>(value);
    const double rest = value - static_cast<double>(whole);
    return whole + (rest >= 0.5 ? 1 : 0) - (rest <= -0.5 ? 1 : 0);
}

/// A rounding: to the nearest multiple of step x 10^-places. Step 1 is a decimal place, step 5 gives 5 (places 0),
/// 50 (places -1) or 0.5 (places 1).
struct Rounding {
    int places = 1;                  ///< -6 to 8
    TieRule tie = TieRule::HalfEven;
    int step = 1;                    ///< 1, 2 or 5
};

/// Rounds a computed double for a report: first to a decimal of 9 places (so that a tie of exact arithmetic is a tie),
/// then to `places` by `rule`. No allocation.
/// @param value finite, magnitude below 1e8; @param places -6 to 8
double roundReported(double value, int places, TieRule rule);

/// The same to a multiple. @source [E29-TXT]
double roundReported(double value, const Rounding& rounding);

/// `value` as text with `places` places after `roundReported`, U+002D as minus.
std::string reportedText(double value, int places, TieRule rule);
/// The same to a multiple.
std::string reportedText(double value, const Rounding& rounding);

}  // namespace groundcount
