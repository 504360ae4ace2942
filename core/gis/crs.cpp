#include "gis/crs.h"

#include "gis/geodesy.h"
#include "method/quantity.h"
#include "method/sentence.h"

#include <cmath>
#include <cpl_conv.h>
#include <cpl_error.h>
#include <cstdlib>
#include <ogr_spatialref.h>

namespace groundcount::gis {
namespace {

std::shared_ptr<OGRSpatialReference> emptySystem()
{
    auto system = std::shared_ptr<OGRSpatialReference>(new OGRSpatialReference, [](OGRSpatialReference* s) { s->Release(); });
    system->SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return system;
}

// GDAL complains on stderr by default; here every complaint becomes an Error.
struct Quiet {
    Quiet() { CPLPushErrorHandler(CPLQuietErrorHandler); }
    ~Quiet() { CPLPopErrorHandler(); }
};

std::unique_ptr<OGRCoordinateTransformation> transformation(const OGRSpatialReference& from, const OGRSpatialReference& to)
{
    return std::unique_ptr<OGRCoordinateTransformation>(OGRCreateCoordinateTransformation(&from, &to));
}

}  // namespace

Crs::Crs(std::shared_ptr<const OGRSpatialReference> system) : m_system(std::move(system))
{
    const Quiet quiet;
    const std::unique_ptr<OGRSpatialReference, void (*)(OGRSpatialReference*)> base(m_system->CloneGeogCS(), [](OGRSpatialReference* s) { s->Release(); });
    if (!base)
        return;
    base->SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    m_toGeographic = transformation(*m_system, *base);
    m_fromGeographic = transformation(*base, *m_system);
}

Crs::Crs(const Crs& other) : m_system(other.m_system), m_toGeographic(other.m_toGeographic->Clone()), m_fromGeographic(other.m_fromGeographic->Clone()) {}
Crs::Crs(Crs&&) noexcept = default;
Crs::~Crs() = default;

Crs& Crs::operator=(Crs other) noexcept
{
    std::swap(m_system, other.m_system);
    std::swap(m_toGeographic, other.m_toGeographic);
    std::swap(m_fromGeographic, other.m_fromGeographic);
    return *this;
}

Result<Crs> Crs::checked(std::shared_ptr<OGRSpatialReference> system, const std::string& what)
{
    if (!system->IsProjected() && !system->IsGeographic())
        return refused("The coordinate system must be a projected or a geographic one; " + what + " is neither.");
    Crs crs(std::move(system));
    if (!crs.m_toGeographic || !crs.m_fromGeographic)
        return refused("The coordinate system " + what + " must have a projection that this program can compute.");
    return crs;
}

Result<Crs> Crs::fromEpsg(int code)
{
    const Quiet quiet;
    auto system = emptySystem();
    if (code <= 0 || system->importFromEPSG(code) != OGRERR_NONE)
        return refused("The EPSG code must be one of the EPSG data set; it is " + std::to_string(code) + ".");
    return checked(std::move(system), "EPSG:" + std::to_string(code));
}

Result<Crs> Crs::fromWkt(std::string_view text)
{
    const Quiet quiet;
    auto system = emptySystem();
    const std::string whole(text);
    if (whole.empty() || system->importFromWkt(whole.c_str()) != OGRERR_NONE)
        return refused("The coordinate system must be written as well-known text; it begins with \"" + whole.substr(0, 30) + "\".");
    return checked(std::move(system), "\"" + whole.substr(0, 60) + "\"");
}

std::string Crs::name() const
{
    const char* name = m_system->GetName();
    return name ? name : "";
}

std::optional<int> Crs::epsg() const
{
    const char* authority = m_system->GetAuthorityName(nullptr);
    const char* code = m_system->GetAuthorityCode(nullptr);
    if (!authority || !code || std::string_view(authority) != "EPSG")
        return std::nullopt;
    return std::atoi(code);
}

bool Crs::isProjected() const
{
    return m_system->IsProjected() != 0;
}

double Crs::metresPerUnit() const
{
    if (!isProjected())
        return 0;
    const double metres = m_system->GetLinearUnits(nullptr);
    // Definitions print 15 digits at most; the exact ratio is known.
    for (const double exact : {1.0, kMetrePerFoot, kMetrePerSurveyFoot})
        if (std::abs(metres - exact) < 1e-12)
            return exact;
    return metres;
}

std::string Crs::unitName() const
{
    if (!isProjected())
        return "degree";
    const double metres = metresPerUnit();
    if (metres == 1.0)
        return "metre";
    if (metres == kMetrePerFoot)
        return "foot";
    if (metres == kMetrePerSurveyFoot)
        return "US survey foot";
    const char* name = nullptr;
    m_system->GetLinearUnits(&name);
    return name ? name : "";
}

std::string Crs::wkt2() const
{
    const char* const options[] = {"FORMAT=WKT2_2019", "MULTILINE=NO", nullptr};
    char* text = nullptr;
    const Quiet quiet;
    std::string wkt;
    if (m_system->exportToWkt(&text, options) == OGRERR_NONE && text)
        wkt = text;
    CPLFree(text);
    return wkt;
}

Result<LatLon> Crs::toGeographic(GridPoint point) const
{
    if (!std::isfinite(point.north) || !std::isfinite(point.east))
        return refused("The grid coordinates of a point must be numbers.");
    const Quiet quiet;
    double x = point.east;
    double y = point.north;
    if (!m_toGeographic->Transform(1, &x, &y) || !std::isfinite(x) || !std::isfinite(y))
        return refused("The point north " + shownNumber(point.north) + ", east " + shownNumber(point.east) + " must lie within the reach of " + name() + ".");
    return LatLon{y, x};
}

Result<GridPoint> Crs::fromGeographic(LatLon position) const
{
    if (const auto ok = checkPosition(position); !ok)
        return tl::unexpected(ok.error());
    const Quiet quiet;
    double x = position.longitudeDeg;
    double y = position.latitudeDeg;
    if (!m_fromGeographic->Transform(1, &x, &y) || !std::isfinite(x) || !std::isfinite(y))
        return refused("The position " + shownNumber(position.latitudeDeg) + ", " + shownNumber(position.longitudeDeg) + " must lie within the reach of "
                       + name() + ".");
    return GridPoint{y, x};
}

Result<GridFactors> Crs::factorsAt(LatLon position) const
{
    if (!isProjected())
        return refused("Convergence and scale need a projected system; " + name() + " is geographic.");
    const auto projection = Projection::fromDefinition(wkt2());
    if (!projection)
        return tl::unexpected(projection.error());
    return projection->factorsAt(position);
}

}  // namespace groundcount::gis
