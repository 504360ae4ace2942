#pragma once

#include "position/fix.h"

namespace groundcount::position {

/// Compares each fix with those before it. The limits are common practice, no source; they only flag, they change no figure.
class FixWatch {
public:
    double mostMetresPerSecond = 40; ///< faster than anything that carries a technician on a site
    int repeatsOfTime = 3;           ///< as many fixes with one and the same UTC time are a receiver that hangs
    int repeatsOfAll = 30;           ///< as many fixes alike in every digit, height and HDOP included; live ones waver

    /// Sets `jumped` and `frozen`.
    void judge(Fix& fix);
    void restart() { *this = FixWatch{mostMetresPerSecond, repeatsOfTime, repeatsOfAll}; }

    FixWatch() = default;

private:
    FixWatch(double speed, int time, int all) : mostMetresPerSecond(speed), repeatsOfTime(time), repeatsOfAll(all) {}
    std::optional<Fix> m_last;
    int m_sameTime = 1;
    int m_sameAll = 1;
};

/// North and east of `to` as seen from `from`, metres in the plane that touches the ellipsoid: dLat M and dLon N cos(lat) with M = a (1 - e2) / w^3, N = a / w,
/// w = sqrt(1 - e2 sin2 lat), a = 6378137 m, 1/f = 298.257223563. Within a lot its error is below a millimetre.
/// @source radii [EPSG-GN72]
struct Offset {
    double northM = 0;
    double eastM = 0;
};
Offset offsetBetween(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude);

}  // namespace groundcount::position
