#include "method/accept/sublot.h"

#include "method/sentence.h"

#include <cmath>

namespace groundcount::method {
namespace {

Result<void> checked(const StationRange& lot, int sublots)
{
    if (!(std::isfinite(lot.begin) && std::isfinite(lot.end) && lot.end > lot.begin))
        return refusedValue("The end station of the lot", lot.end, "", "above its begin station of " + shownNumber(lot.begin));
    if (sublots < 1)
        return refusedValue("The number of sublots", sublots, "", "at least 1");
    return {};
}

double beginOf(const StationRange& lot, int sublots, int index)
{
    // the end itself, not a sum that misses it by a rounding
    return index == sublots ? lot.end : lot.begin + (lot.end - lot.begin) * index / sublots;
}

}  // namespace

Result<double> sublotBegin(const StationRange& lot, int sublots, int index)
{
    if (auto ok = checked(lot, sublots); !ok)
        return tl::unexpected(ok.error());
    if (index < 0 || index > sublots)
        return refusedValue("The sublot", index, "", "0 to " + std::to_string(sublots));
    return beginOf(lot, sublots, index);
}

Result<int> sublotAt(const StationRange& lot, int sublots, double station)
{
    if (auto ok = checked(lot, sublots); !ok)
        return tl::unexpected(ok.error());
    if (!(station >= lot.begin && station <= lot.end))
        return refusedValue("The station", station, "", "inside the lot, " + shownNumber(lot.begin) + " to " + shownNumber(lot.end));
    int index = static_cast<int>((station - lot.begin) / (lot.end - lot.begin) * sublots);
    index = index < sublots ? index : sublots - 1;
    // the quotient may miss the bound as sublotBegin computes it by a rounding
    while (index > 0 && station < beginOf(lot, sublots, index))
        --index;
    while (index + 1 < sublots && station >= beginOf(lot, sublots, index + 1))
        ++index;
    return index;
}

}  // namespace groundcount::method
