#include "method/site/heading.h"

#include <cmath>
#include <numbers>
#include <string>

namespace groundcount::method {
namespace {

constexpr double kRadians = std::numbers::pi / 180;

}  // namespace

Result<Heading> headingOf(const GridShift& shift)
{
    const double north = shift.north.metres();
    const double east = shift.east.metres();
    if (!std::isfinite(north) || !std::isfinite(east))
        return refused("Both parts of a shift must be finite lengths; they are " + std::to_string(north) + " m and " + std::to_string(east) + " m.");
    const double degrees = std::atan2(east, north) / kRadians;
    // -1e-16 would become 360, which is the same direction as 0.
    const double bearing = degrees < 0 ? degrees + 360 : degrees;
    return Heading{Length::metres(std::hypot(north, east)), bearing < 360 ? bearing : 0};
}

Result<GridShift> shiftOf(Length distance, double bearingDeg)
{
    if (!(distance.metres() >= 0) || !std::isfinite(distance.metres()))
        return refused("A distance must be at least 0 m and finite; it is " + std::to_string(distance.metres()) + " m.");
    if (!std::isfinite(bearingDeg))
        return refused("A bearing must be a finite number of degrees; it is " + std::to_string(bearingDeg) + ".");
    return GridShift{Length::metres(distance.metres() * std::cos(bearingDeg * kRadians)), Length::metres(distance.metres() * std::sin(bearingDeg * kRadians))};
}

Result<Length> acrossOf(Length distance, double unsureDeg)
{
    if (!(unsureDeg >= 0 && unsureDeg <= 90))
        return refused("The angle that a direction may be off must be 0 to 90 degrees; it is " + std::to_string(unsureDeg) + ".");
    auto across = shiftOf(distance, unsureDeg);
    if (!across)
        return tl::unexpected(across.error());
    return across->east;
}

}  // namespace groundcount::method
