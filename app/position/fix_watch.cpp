#include "position/fix_watch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace groundcount::position {

Offset offsetBetween(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude)
{
    constexpr double kA = 6378137.0;
    constexpr double kF = 1 / 298.257223563;
    constexpr double kE2 = kF * (2 - kF);
    constexpr double kRadian = std::numbers::pi / 180;
    const double latitude = (fromLatitude + toLatitude) / 2 * kRadian;
    const double w = std::sqrt(1 - kE2 * std::sin(latitude) * std::sin(latitude));
    const double across = std::remainder(toLongitude - fromLongitude, 360.0);
    return {(toLatitude - fromLatitude) * kRadian * kA * (1 - kE2) / (w * w * w), across * kRadian * kA / w * std::cos(latitude)};
}

void FixWatch::judge(Fix& fix)
{
    if (m_last) {
        const Fix& last = *m_last;
        const Offset away = offsetBetween(last.latitude, last.longitude, fix.latitude, fix.longitude);
        // Two fixes of one time are judged as if a tenth of a second lay between them.
        const double seconds = std::max(0.1, std::abs(last.utc.msecsTo(fix.utc)) / 1000.0);
        const double slack = 3 * (fix.drmsM().value_or(5.0) + last.drmsM().value_or(5.0));
        fix.jumped = std::hypot(away.northM, away.eastM) > mostMetresPerSecond * seconds + slack;
        const bool sameTime = last.utc == fix.utc;
        const bool sameAll = last.latitude == fix.latitude && last.longitude == fix.longitude && last.heightEllipsoid == fix.heightEllipsoid
            && last.hdop == fix.hdop && last.satellites == fix.satellites && last.sigmaNorthM == fix.sigmaNorthM;
        m_sameTime = sameTime ? m_sameTime + 1 : 1;
        m_sameAll = sameAll ? m_sameAll + 1 : 1;
    }
    fix.frozen = m_sameTime >= repeatsOfTime || m_sameAll >= repeatsOfAll;
    m_last = fix;
}

}  // namespace groundcount::position
