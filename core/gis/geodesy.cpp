#include "gis/geodesy.h"

#include "method/sentence.h"

#include <cmath>
#include <geodesic.h>
#include <numbers>

namespace groundcount::gis {
namespace {

constexpr double kRadians = std::numbers::pi / 180;

Result<void> checkEllipsoid(const Ellipsoid& ellipsoid)
{
    if (!isPositive(ellipsoid.semiMajorM))
        return refusedValue("The semi-major axis", ellipsoid.semiMajorM, " m", "above 0 m");
    if (!isNotNegative(ellipsoid.inverseFlattening) || ellipsoid.inverseFlattening == 1)
        return refusedValue("The inverse flattening", ellipsoid.inverseFlattening, "", "above 1, or 0 for a sphere");
    return {};
}

double flattening(const Ellipsoid& ellipsoid)
{
    return ellipsoid.inverseFlattening == 0 ? 0 : 1 / ellipsoid.inverseFlattening;
}

Result<void> checkNumbers(GridPoint point)
{
    if (!std::isfinite(point.north) || !std::isfinite(point.east))
        return refused("The grid coordinates of a point must be numbers.");
    return {};
}

}  // namespace

Result<void> checkPosition(LatLon position)
{
    if (!(std::abs(position.latitudeDeg) <= 90))
        return refusedValue("The latitude", position.latitudeDeg, " degrees", "-90 to 90 degrees");
    if (!(std::abs(position.longitudeDeg) <= 360))
        return refusedValue("The longitude", position.longitudeDeg, " degrees", "-360 to 360 degrees");
    return {};
}

Result<double> elevationFactor(const Ellipsoid& ellipsoid, double latitudeDeg, double heightM)
{
    if (const auto ok = checkEllipsoid(ellipsoid); !ok)
        return tl::unexpected(ok.error());
    if (const auto ok = checkPosition({latitudeDeg, 0}); !ok)
        return tl::unexpected(ok.error());
    // Below the deepest trench and above any construction.
    if (!(heightM >= -12'000) || !(heightM <= 100'000))
        return refusedValue("The ellipsoid height", heightM, " m", "-12000 to 100000 m");
    const double f = flattening(ellipsoid);
    const double e2 = f * (2 - f);
    const double s = std::sin(latitudeDeg * kRadians);
    const double w2 = 1 - e2 * s * s;
    const double n = ellipsoid.semiMajorM / std::sqrt(w2);
    const double m = n * (1 - e2) / w2;
    const double radius = 2 * m * n / (m + n);
    return radius / (radius + heightM);
}

Result<double> combinedFactor(double pointScale, double elevation)
{
    if (!isPositive(pointScale))
        return refusedValue("The point scale", pointScale, "", "above 0");
    if (!isPositive(elevation))
        return refusedValue("The elevation factor", elevation, "", "above 0");
    return pointScale * elevation;
}

Result<Length> groundDistance(Length grid, double factor)
{
    if (!isPositive(factor))
        return refusedValue("The combined factor", factor, "", "above 0");
    if (!isNotNegative(grid.metres()))
        return refusedValue("The grid distance", grid.metres(), " m", "at least 0 m");
    return Length::metres(grid.metres() / factor);
}

Result<Geodesic> geodesicBetween(const Ellipsoid& ellipsoid, LatLon from, LatLon to)
{
    if (const auto ok = checkEllipsoid(ellipsoid); !ok)
        return tl::unexpected(ok.error());
    for (const LatLon& end : {from, to})
        if (const auto ok = checkPosition(end); !ok)
            return tl::unexpected(ok.error());
    geod_geodesic geodesic;
    geod_init(&geodesic, ellipsoid.semiMajorM, flattening(ellipsoid));
    Geodesic line;
    geod_inverse(&geodesic, from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg, &line.lengthM, &line.azimuth1Deg, &line.azimuth2Deg);
    return line;
}

Result<LatLon> geodesicFrom(const Ellipsoid& ellipsoid, LatLon from, double azimuthDeg, double lengthM)
{
    if (const auto ok = checkEllipsoid(ellipsoid); !ok)
        return tl::unexpected(ok.error());
    if (const auto ok = checkPosition(from); !ok)
        return tl::unexpected(ok.error());
    if (!std::isfinite(azimuthDeg) || !std::isfinite(lengthM))
        return refused("The azimuth and the length of a line must be numbers.");
    geod_geodesic geodesic;
    geod_init(&geodesic, ellipsoid.semiMajorM, flattening(ellipsoid));
    LatLon to;
    geod_direct(&geodesic, from.latitudeDeg, from.longitudeDeg, azimuthDeg, lengthM, &to.latitudeDeg, &to.longitudeDeg, nullptr);
    return to;
}

Result<GridPoint> applySimilarity(const Similarity& fit, GridPoint source)
{
    if (!isPositive(fit.scale))
        return refusedValue("The scale of a site fit", fit.scale, "", "above 0");
    if (!std::isfinite(fit.shiftEast) || !std::isfinite(fit.shiftNorth) || !std::isfinite(fit.rotationArcSec))
        return refused("The shifts and the rotation of a site fit must be numbers.");
    if (const auto ok = checkNumbers(source); !ok)
        return tl::unexpected(ok.error());
    const double turn = fit.rotationArcSec / 3600 * kRadians;
    const double c = fit.scale * std::cos(turn);
    const double s = fit.scale * std::sin(turn);
    return GridPoint{fit.shiftNorth + source.north * c - source.east * s, fit.shiftEast + source.east * c + source.north * s};
}

Result<GridPoint> applyAffine(const Affine& fit, GridPoint source)
{
    const GridPoint target{fit.b0 + fit.b1 * source.east + fit.b2 * source.north, fit.a0 + fit.a1 * source.east + fit.a2 * source.north};
    if (const auto ok = checkNumbers(target); !ok)
        return tl::unexpected(ok.error());
    return target;
}

Result<double> footMixUpFt(double coordinateFt)
{
    if (!std::isfinite(coordinateFt))
        return refusedValue("The coordinate", coordinateFt, " ft", "a number");
    // 500000/499999 - 1 = 1/499999 without the loss of six digits.
    return coordinateFt / 499'999.0;
}

}  // namespace groundcount::gis
