#include "method/accept/second_reading.h"

#include "method/decimal.h"

#include <cmath>

namespace groundcount::method {

Result<SecondReading> compareReadings(double first, double second, DifferenceKind kind, double limit)
{
    if (!(first > 0) || !std::isfinite(first))
        return refused("The first reading must be above 0; it is " + reportedText(first, 1, TieRule::HalfEven) + ".");
    if (!(second >= 0) || !std::isfinite(second))
        return refused("The second reading must be 0 or more; it is " + reportedText(second, 1, TieRule::HalfEven) + ".");
    if (!(limit >= 0) || !std::isfinite(limit))
        return refused("The limit of a second reading must be 0 or more; it is " + reportedText(limit, 1, TieRule::HalfEven) + ".");
    SecondReading r;
    r.difference = std::fabs(second - first);
    r.differencePct = 100 * r.difference / first;
    r.mean = (first + second) / 2;
    // 100 |d| <= limit x first, on decimals, so that 2.0 apart meets a limit of 2.0 whatever binary makes of it.
    const double have = kind == DifferenceKind::Absolute ? r.difference : 100 * r.difference;
    const double allowed = kind == DifferenceKind::Absolute ? limit : limit * first;
    r.agreement = std::llround(have * 1e9) <= std::llround(allowed * 1e9) ? Agreement::Together : Agreement::Apart;
    return r;
}

}  // namespace groundcount::method
