#include "gis/crs.h"

#include "gis/geodesy.h"
#include "gis/proj_object.h"
#include "method/quantity.h"
#include "method/sentence.h"

#include <cmath>
#include <cstdlib>

namespace groundcount::gis {
namespace {

/// Where heights or a datum's shift are bound to a system, the plane system that they are bound to.
ProjObject planeOf(PJ_CONTEXT* context, const PJ* system)
{
    ProjObject plane = owned(proj_clone(context, system));
    for (;;) {
        const PJ_TYPE type = plane ? proj_get_type(plane.get()) : PJ_TYPE_UNKNOWN;
        if (type == PJ_TYPE_BOUND_CRS)
            plane = owned(proj_get_source_crs(context, plane.get()));
        else if (type == PJ_TYPE_COMPOUND_CRS)
            plane = owned(proj_crs_get_sub_crs(context, plane.get(), 0));
        else
            return plane;
    }
}

std::string wktOf(PJ_CONTEXT* context, const PJ* system, PJ_WKT_TYPE type)
{
    const char* const options[] = {"MULTILINE=NO", "OUTPUT_AXIS=YES", nullptr};
    const char* text = proj_as_wkt(context, system, type, options);
    return text ? text : "";
}

}  // namespace

struct Crs::Machine {
    ProjContext context = newProjContext();
    ProjObject system = owned(nullptr);  ///< as it was named
    ProjObject plane = owned(nullptr);   ///< projected or geographic
    ProjObject way = owned(nullptr);     ///< from the plane to its own degrees
    bool projected = false;
    double metres = 0;     ///< of a projected system's unit, as the definition prints it
    std::string unit;
};

Crs::Crs(std::unique_ptr<Machine> machine) : m_machine(std::move(machine)) {}

Crs::Crs(const Crs& other) : m_machine(std::make_unique<Machine>())
{
    auto* context = m_machine->context.get();
    m_machine->system = owned(proj_clone(context, other.m_machine->system.get()));
    m_machine->plane = owned(proj_clone(context, other.m_machine->plane.get()));
    m_machine->way = owned(proj_clone(context, other.m_machine->way.get()));
    m_machine->projected = other.m_machine->projected;
    m_machine->metres = other.m_machine->metres;
    m_machine->unit = other.m_machine->unit;
}

Crs::Crs(Crs&&) noexcept = default;
Crs::~Crs() = default;

Crs& Crs::operator=(Crs other) noexcept
{
    std::swap(m_machine, other.m_machine);
    return *this;
}

Result<Crs> Crs::checked(std::unique_ptr<Machine> machine, const std::string& what)
{
    auto* context = machine->context.get();
    machine->plane = planeOf(context, machine->system.get());
    const PJ_TYPE type = machine->plane ? proj_get_type(machine->plane.get()) : PJ_TYPE_UNKNOWN;
    machine->projected = type == PJ_TYPE_PROJECTED_CRS;
    if (!machine->projected && type != PJ_TYPE_GEOGRAPHIC_2D_CRS && type != PJ_TYPE_GEOGRAPHIC_3D_CRS)
        return refused("The coordinate system must be a projected or a geographic one; " + what + " is neither.");
    const ProjObject degrees = owned(proj_crs_get_geodetic_crs(context, machine->plane.get()));
    if (degrees)
        machine->way = wayBetween(context, machine->plane.get(), degrees.get());
    if (!machine->way)
        return refused("The coordinate system " + what + " must have a projection that this program can compute.");
    const ProjObject axes = owned(proj_crs_get_coordinate_system(context, machine->plane.get()));
    const char* unit = nullptr;
    if (axes && proj_cs_get_axis_info(context, axes.get(), 0, nullptr, nullptr, nullptr, &machine->metres, &unit, nullptr, nullptr) && unit)
        machine->unit = unit;
    return Crs(std::move(machine));
}

Result<Crs> Crs::fromEpsg(int code)
{
    auto machine = std::make_unique<Machine>();
    const std::string text = std::to_string(code);
    if (code > 0)
        machine->system = owned(proj_create_from_database(machine->context.get(), "EPSG", text.c_str(), PJ_CATEGORY_CRS, 0, nullptr));
    if (!machine->system)
        return refused("The EPSG code must be one of the EPSG data set; it is " + text + ".");
    return checked(std::move(machine), "EPSG:" + text);
}

Result<Crs> Crs::fromWkt(std::string_view text)
{
    auto machine = std::make_unique<Machine>();
    const std::string whole(text);
    const char* const options[] = {"STRICT=NO", nullptr};
    PROJ_STRING_LIST complaints = nullptr;
    if (!whole.empty())
        machine->system = owned(proj_create_from_wkt(machine->context.get(), whole.c_str(), options, nullptr, &complaints));
    proj_string_list_destroy(complaints);
    if (!machine->system)
        return refused("The coordinate system must be written as well-known text; it begins with \"" + whole.substr(0, 30) + "\".");
    return checked(std::move(machine), "\"" + whole.substr(0, 60) + "\"");
}

Result<void> Crs::selfTest()
{
    const ProjContext context = newProjContext();
    const ProjObject probe = owned(proj_create_from_database(context.get(), "EPSG", "6420", PJ_CATEGORY_CRS, 0, nullptr));
    if (!probe)
        return unavailable("The coordinate system database proj.db does not answer for EPSG:6420; check the PROJ installation.");
    return {};
}

std::string Crs::name() const
{
    const char* name = proj_get_name(m_machine->system.get());
    return name ? name : "";
}

std::optional<int> Crs::epsg() const
{
    const char* authority = proj_get_id_auth_name(m_machine->system.get(), 0);
    const char* code = proj_get_id_code(m_machine->system.get(), 0);
    if (!authority || !code || std::string_view(authority) != "EPSG")
        return std::nullopt;
    return std::atoi(code);
}

bool Crs::isProjected() const
{
    return m_machine->projected;
}

double Crs::metresPerUnit() const
{
    if (!isProjected())
        return 0;
    // Definitions print 15 digits at most; the exact ratio is known.
    for (const double exact : {1.0, kMetrePerFoot, kMetrePerSurveyFoot})
        if (std::abs(m_machine->metres - exact) < 1e-12)
            return exact;
    return m_machine->metres;
}

std::string Crs::unitName() const
{
    if (!isProjected())
        return "degree";
    const double metres = metresPerUnit();
    return metres == 1.0 ? "metre" : metres == kMetrePerFoot ? "foot" : metres == kMetrePerSurveyFoot ? "US survey foot" : m_machine->unit;
}

std::string Crs::wkt2() const
{
    return wktOf(m_machine->context.get(), m_machine->system.get(), PJ_WKT2_2019);
}

std::string Crs::wkt1() const
{
    return wktOf(m_machine->context.get(), m_machine->system.get(), PJ_WKT1_GDAL);
}

bool Crs::isSameAs(const Crs& other) const
{
    return proj_is_equivalent_to_with_ctx(m_machine->context.get(), m_machine->system.get(), other.m_machine->system.get(),
                                          PJ_COMP_EQUIVALENT_EXCEPT_AXIS_ORDER_GEOGCRS) != 0;
}

Result<LatLon> Crs::toGeographic(GridPoint point) const
{
    if (!std::isfinite(point.north) || !std::isfinite(point.east))
        return refused("The grid coordinates of a point must be numbers.");
    const auto position = movedPlace(m_machine->way.get(), PJ_FWD, point.east, point.north);
    if (!position)
        return refused("The point north " + shownNumber(point.north) + ", east " + shownNumber(point.east) + " must lie within the reach of " + name() + ".");
    return LatLon{position->y, position->x};
}

Result<GridPoint> Crs::fromGeographic(LatLon position) const
{
    if (const auto ok = checkPosition(position); !ok)
        return tl::unexpected(ok.error());
    const auto grid = movedPlace(m_machine->way.get(), PJ_INV, position.longitudeDeg, position.latitudeDeg);
    if (!grid)
        return refused("The position " + shownNumber(position.latitudeDeg) + ", " + shownNumber(position.longitudeDeg) + " must lie within the reach of "
                       + name() + ".");
    return GridPoint{grid->y, grid->x};
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
