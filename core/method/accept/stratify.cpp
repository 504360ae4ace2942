#include "method/accept/stratify.h"

#include "method/accept/frequency.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

Result<void> checkRandom(double random)
{
    if (!(random >= 0) || !(random <= 1))
        return refusedValue("The random number", random, "", "0 to 1");
    return {};
}

}  // namespace

Result<double> sublotSize(double total, int sublots)
{
    if (!isPositive(total))
        return refusedValue("The size of the lot", total, "", "above 0");
    if (sublots < 1)
        return refusedValue("The number of sublots", sublots, "", "at least 1");
    return total / sublots;
}

Result<int> unitsPerSublot(const Decimal& total, int sublots, const Decimal& unit)
{
    if (const auto size = sublotSize(total.value(), sublots); !size)
        return tl::unexpected(size.error());
    const auto units = wholeUnits(total, unit);
    if (!units)
        return tl::unexpected(units.error());
    // floor(x/n) = floor(floor(x)/n) for whole n, so the decimals are divided once only.
    const int perSublot = *units / sublots;
    if (perSublot < 1)
        return refused("A sublot must hold at least 1 whole unit of " + unit.text() + "; it holds " + shownNumber(total.value() / sublots) + ".");
    return perSublot;
}

Result<double> randomProduct(double quantity, double random)
{
    if (!std::isfinite(quantity))
        return refusedValue("The quantity", quantity, "", "a number");
    if (const auto ok = checkRandom(random); !ok)
        return tl::unexpected(ok.error());
    return quantity * random;
}

Result<int> randomPick(int n, double random, PickRule rule)
{
    if (n < 1)
        return refusedValue("The number of rows or columns", n, "", "at least 1");
    if (const auto ok = checkRandom(random); !ok)
        return tl::unexpected(ok.error());
    // On decimals, so that 20 x 0.35 is 7 and not a little more or less.
    const double product = roundReported(n * random, 8, TieRule::HalfUp);
    if (rule == PickRule::FloorPlusOne)
        return std::min(n, static_cast<int>(std::floor(product)) + 1);
    const int nearest = static_cast<int>(roundReported(product, 0, TieRule::HalfUp));
    if (nearest == 0)
        return refusedValue("The row or column", 0, "", "1 to " + std::to_string(n) + "; draw another number or take the whole part plus 1");
    return nearest;
}

}  // namespace groundcount::method
