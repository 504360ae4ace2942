#include "method/accept/frequency.h"

#include <algorithm>
#include <boost/multiprecision/cpp_int.hpp>
#include <string>

namespace groundcount::method {
namespace {

using boost::multiprecision::int256_t;

// Beyond this the unit was typed wrong, and the number would not be drawn or listed any more.
constexpr int kMostTests = 1'000'000;

// The decimal times 10^15, the most places it can have: 18 digits and 15 places fit 256 bits with room for the products.
int256_t scaled(const Decimal& value)
{
    int256_t digits = 0;
    for (const char c : value.text())
        if (c >= '0' && c <= '9')
            digits = digits * 10 + (c - '0');
    for (int i = value.places(); i < 15; ++i)
        digits *= 10;
    return digits;
}

Result<void> check(const Decimal& quantity, const Decimal& unit)
{
    const Decimal zero;
    if (!(unit > zero))
        return refused("The quantity of one unit must be above 0; it is " + unit.text() + ".");
    if (!(quantity >= zero))
        return refused("The quantity must be at least 0; it is " + quantity.text() + ".");
    return {};
}

}  // namespace

Result<int> requiredTests(const FrequencyRule& rule, const Decimal& quantity)
{
    if (const auto ok = check(quantity, rule.unitQuantity); !ok)
        return tl::unexpected(ok.error());
    if (rule.testsPerUnit < 1)
        return refused("The tests per unit must be at least 1; it is " + std::to_string(rule.testsPerUnit) + ".");
    if (rule.minimum < 0)
        return refused("The minimum of tests must be at least 0; it is " + std::to_string(rule.minimum) + ".");
    const int256_t unit = scaled(rule.unitQuantity);
    const int256_t units = (scaled(quantity) + unit - 1) / unit;
    const int256_t tests = units * rule.testsPerUnit;
    if (tests > kMostTests || rule.minimum > kMostTests)
        return refused("The rule asks for more than " + std::to_string(kMostTests) + " tests of " + quantity.text() + " by " + rule.unitQuantity.text() + ".");
    return std::max(rule.minimum, static_cast<int>(tests));
}

Result<int> wholeUnits(const Decimal& quantity, const Decimal& unit)
{
    if (const auto ok = check(quantity, unit); !ok)
        return tl::unexpected(ok.error());
    const int256_t units = scaled(quantity) / scaled(unit);
    if (units > kMostTests)
        return refused("There must be at most " + std::to_string(kMostTests) + " units of " + unit.text() + " in " + quantity.text() + ".");
    return static_cast<int>(units);
}

}  // namespace groundcount::method
