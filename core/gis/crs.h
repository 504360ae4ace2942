#pragma once

#include "method/error.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace groundcount::gis {

/// A geographic position, degrees; north and east positive.
struct LatLon {
    double latitudeDeg = 0;
    double longitudeDeg = 0;
};

/// A position in the grid of a system, in its own length unit.
struct GridPoint {
    double north = 0;
    double east = 0;
};

/// How the grid differs from the ground of the ellipsoid at one place.
struct GridFactors {
    double convergenceDeg = 0;  ///< grid north seen from true north, east positive
    double pointScale = 1;      ///< grid length per ellipsoid length
};

/// A coordinate reference system. The one place where spatial references are made: axis order is always east, north
/// (longitude, latitude) and no network is asked. Geographic positions are on the datum of the system itself: nothing here
/// changes a datum, so the realization that is stored is the one that was measured. Copies are independent; one object
/// serves one thread at a time.
class Crs {
public:
    /// @param code EPSG code of a projected or geographic 2D system
    /// @error Refused: a code that is not in the EPSG data set, or another kind of system. @source [EPSG-GN72]
    static Result<Crs> fromEpsg(int code);
    /// @param text WKT 1 or WKT 2 (ISO 19162), as in a GeoPackage or a .prj file
    /// @error Refused: text that cannot be read, or another kind of system.
    static Result<Crs> fromWkt(std::string_view text);

    /// Whether the coordinate system database answers, for a start that says at once what is broken.
    /// @error Unavailable: proj.db is missing or too old.
    static Result<void> selfTest();

    Crs(const Crs& other);
    Crs(Crs&&) noexcept;
    Crs& operator=(Crs other) noexcept;
    ~Crs();

    /// Name as in its definition, for example "NAD83 / Missouri Central".
    std::string name() const;
    /// EPSG code where the definition carries one.
    std::optional<int> epsg() const;
    bool isProjected() const;
    /// "metre", "US survey foot", "foot", "degree", or the name in the definition.
    std::string unitName() const;
    /// Metres in one unit of a projected system, exact for both feet (1200/3937, 0.3048); 0 for a geographic one.
    /// @source [FR-85-62698]
    double metresPerUnit() const;
    /// WKT 2 (2019) in one line, for sealing with a job.
    std::string wkt2() const;

    /// Grid to geographic on its own datum. @error Refused: NaN, or a place outside what the projection can turn back.
    Result<LatLon> toGeographic(GridPoint point) const;
    /// Geographic on its own datum to grid.
    /// @param position latitude -90 to 90, longitude -360 to 360 @error Refused outside; NaN; not projectable.
    Result<GridPoint> fromGeographic(LatLon position) const;
    /// Convergence and point scale at a place. @error Refused as `fromGeographic`; a geographic system.
    /// @source [NGS-NCATLIB]
    Result<GridFactors> factorsAt(LatLon position) const;

    /// WKT 1 in one line; "" where WKT 1 cannot say it.
    std::string wkt1() const;
    /// Whether both define the same system; names and the order of degrees do not count.
    bool isSameAs(const Crs& other) const;

private:
    struct Machine;
    explicit Crs(std::unique_ptr<Machine> machine);
    static Result<Crs> checked(std::unique_ptr<Machine> machine, const std::string& what);
    std::unique_ptr<Machine> m_machine;
};

}  // namespace groundcount::gis
