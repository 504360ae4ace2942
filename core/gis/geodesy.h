#pragma once

#include "gis/crs.h"
#include "method/error.h"
#include "method/quantity.h"

#include <memory>
#include <string>
#include <string_view>

namespace groundcount::gis {

/// An ellipsoid of revolution.
struct Ellipsoid {
    double semiMajorM = 0;
    double inverseFlattening = 0;  ///< 0 for a sphere
};

/// Refuses a latitude outside -90 to 90, a longitude outside -360 to 360, NaN.
Result<void> checkPosition(LatLon position);

/// Ellipsoid by its name in the EPSG data set, for example "GRS 1980", "Clarke 1866".
/// @error Refused: no such name. @source [EPSG-GN72]
Result<Ellipsoid> ellipsoidNamed(std::string_view name);

enum class ProjectionMethod {
    TransverseMercator,         ///< lat0, lon0, k0
    LambertConic,               ///< lat0, lon0, sp1, sp2 (k0 scales it, 1 as a rule)
    ObliqueMercatorFromOrigin   ///< Hotine, variant A: lat0, lon0, k0, azimuth; rectified by the same angle
};

/// A map projection by its parameters; degrees and metres.
struct ProjectionParameters {
    ProjectionMethod method = ProjectionMethod::TransverseMercator;
    Ellipsoid ellipsoid;
    double latitude0Deg = 0;
    double longitude0Deg = 0;
    double scale0 = 1;
    double parallel1Deg = 0;
    double parallel2Deg = 0;
    double azimuthDeg = 0;
    double falseEastM = 0;
    double falseNorthM = 0;
};

/// A projection computed by PROJ. Grid positions are in metres unless the definition names another unit. Move-only; one
/// object serves one thread at a time.
class Projection {
public:
    /// @error Refused: parameters that PROJ cannot take, NaN. @source [EPSG-GN72], [NGS-NCATLIB]
    static Result<Projection> make(const ProjectionParameters& parameters);
    /// @param definition a PROJ operation ("+proj=...") or a projected system as well-known text
    /// @error Refused: not understood.
    static Result<Projection> fromDefinition(const std::string& definition);

    Projection(Projection&&) noexcept;
    Projection& operator=(Projection&&) noexcept;
    ~Projection();

    /// Only for an operation, not for a system. @error Refused: outside its reach, NaN.
    Result<GridPoint> forward(LatLon position) const;
    Result<LatLon> inverse(GridPoint point) const;
    /// Convergence and point scale. @error Refused: outside its reach, NaN. @source [NGS-NCATLIB]
    Result<GridFactors> factorsAt(LatLon position) const;

private:
    struct Machine;
    explicit Projection(std::unique_ptr<Machine> machine);
    std::unique_ptr<Machine> m_machine;
};

/// Elevation factor Ra/(Ra + h), Ra = 2 M N/(M + N), M and N the radii of curvature of the meridian and the prime vertical.
/// @param heightM h, ellipsoid height (not the height above sea level), -12 000 to 100 000
/// @error Refused outside the ranges, NaN. @source [NGS-NCATLIB]
Result<double> elevationFactor(const Ellipsoid& ellipsoid, double latitudeDeg, double heightM);

/// Combined factor = point scale x elevation factor; ground distance = grid distance/combined factor.
/// @error Refused: a factor not above 0, NaN. @source [NGS-NCATLIB]
Result<double> combinedFactor(double pointScale, double elevationFactor);
Result<Length> groundDistance(Length grid, double combinedFactor);

/// Shortest line on an ellipsoid.
struct Geodesic {
    double lengthM = 0;
    double azimuth1Deg = 0;  ///< at the first point, -180 to 180, from north clockwise
    double azimuth2Deg = 0;  ///< forward azimuth at the second point
};

/// Inverse problem, by the geodesic routines of PROJ. @error Refused: positions, NaN. @source [KARNEY-T]
Result<Geodesic> geodesicBetween(const Ellipsoid& ellipsoid, LatLon from, LatLon to);
/// Direct problem: the second point. @param azimuthDeg any @param lengthM any finite @source [KARNEY-T]
Result<LatLon> geodesicFrom(const Ellipsoid& ellipsoid, LatLon from, double azimuthDeg, double lengthM);

/// Similarity of a four-parameter site fit: E = shiftE + m (e cos t + n sin t), N = shiftN + m (n cos t - e sin t).
struct Similarity {
    double shiftEast = 0;
    double shiftNorth = 0;
    double scale = 1;
    double rotationArcSec = 0;  ///< t
};
/// @error Refused: scale not above 0, NaN. @source [EPSG-GN72] method 9621
Result<GridPoint> applySimilarity(const Similarity& fit, GridPoint source);

/// Affine: E = a0 + a1 e + a2 n, N = b0 + b1 e + b2 n. @source [EPSG-GN72] method 9624
struct Affine {
    double a0 = 0, a1 = 1, a2 = 0;
    double b0 = 0, b1 = 0, b2 = 1;
};
/// @error Refused: NaN. @source [EPSG-GN72] method 9624
Result<GridPoint> applyAffine(const Affine& fit, GridPoint source);

/// Error in feet when a coordinate in US survey feet is read as international feet: x (500000/499999 - 1).
/// @error Refused: NaN. @source [FR-85-62698]
Result<double> footMixUpFt(double coordinateFt);

}  // namespace groundcount::gis
