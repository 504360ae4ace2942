#include "gis/geodesy.h"
#include "gis/proj_object.h"
#include "method/sentence.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace groundcount::gis {
namespace {

std::string term(const char* key, double value)
{
    std::array<char, 64> text{};
    // 17 digits give the double back exactly.
    std::snprintf(text.data(), text.size(), " +%s=%.17g", key, value);
    return text.data();
}

std::string definitionOf(const ProjectionParameters& p)
{
    std::string text;
    switch (p.method) {
    case ProjectionMethod::TransverseMercator:
        text = "+proj=tmerc" + term("lat_0", p.latitude0Deg) + term("lon_0", p.longitude0Deg) + term("k_0", p.scale0);
        break;
    case ProjectionMethod::LambertConic:
        text = "+proj=lcc" + term("lat_0", p.latitude0Deg) + term("lon_0", p.longitude0Deg) + term("lat_1", p.parallel1Deg) + term("lat_2", p.parallel2Deg)
               + term("k_0", p.scale0);
        break;
    case ProjectionMethod::ObliqueMercatorFromOrigin:
        text = "+proj=omerc +no_uoff" + term("lat_0", p.latitude0Deg) + term("lonc", p.longitude0Deg) + term("k_0", p.scale0) + term("alpha", p.azimuthDeg)
               + term("gamma", p.azimuthDeg);
        break;
    }
    text += term("x_0", p.falseEastM) + term("y_0", p.falseNorthM) + term("a", p.ellipsoid.semiMajorM);
    return text + (p.ellipsoid.inverseFlattening == 0 ? term("b", p.ellipsoid.semiMajorM) : term("rf", p.ellipsoid.inverseFlattening));
}

std::string place(LatLon position)
{
    return "The position " + shownNumber(position.latitudeDeg) + ", " + shownNumber(position.longitudeDeg);
}

}  // namespace

struct Projection::Machine {
    ProjContext context;
    ProjObject operation;
};

Projection::Projection(std::unique_ptr<Machine> machine) : m_machine(std::move(machine)) {}
Projection::Projection(Projection&&) noexcept = default;
Projection& Projection::operator=(Projection&&) noexcept = default;
Projection::~Projection() = default;

Result<Projection> Projection::make(const ProjectionParameters& parameters)
{
    for (const double value : {parameters.latitude0Deg, parameters.longitude0Deg, parameters.scale0, parameters.parallel1Deg, parameters.parallel2Deg,
                               parameters.azimuthDeg, parameters.falseEastM, parameters.falseNorthM, parameters.ellipsoid.inverseFlattening})
        if (!std::isfinite(value))
            return refused("The parameters of a projection must be numbers.");
    if (!isPositive(parameters.scale0) || !isPositive(parameters.ellipsoid.semiMajorM))
        return refused("The scale and the semi-major axis of a projection must be above 0; they are " + shownNumber(parameters.scale0) + " and "
                       + shownNumber(parameters.ellipsoid.semiMajorM) + " m.");
    return fromDefinition(definitionOf(parameters));
}

Result<Projection> Projection::fromDefinition(const std::string& definition)
{
    ProjContext context = newProjContext();
    ProjObject operation = owned(proj_create(context.get(), definition.c_str()));
    if (!operation)
        return refused("The projection must be one that PROJ knows; it is \"" + definition.substr(0, 120) + "\".");
    return Projection(std::make_unique<Machine>(Machine{std::move(context), std::move(operation)}));
}

Result<GridPoint> Projection::forward(LatLon position) const
{
    if (const auto ok = checkPosition(position); !ok)
        return tl::unexpected(ok.error());
    proj_errno_reset(m_machine->operation.get());
    const PJ_COORD grid = proj_trans(m_machine->operation.get(), PJ_FWD, proj_coord(proj_torad(position.longitudeDeg), proj_torad(position.latitudeDeg), 0, 0));
    if (!std::isfinite(grid.xy.x) || !std::isfinite(grid.xy.y))
        return refused(place(position) + " must lie within the reach of the projection.");
    return GridPoint{grid.xy.y, grid.xy.x};
}

Result<LatLon> Projection::inverse(GridPoint point) const
{
    if (!std::isfinite(point.north) || !std::isfinite(point.east))
        return refused("The grid coordinates of a point must be numbers.");
    proj_errno_reset(m_machine->operation.get());
    const PJ_COORD position = proj_trans(m_machine->operation.get(), PJ_INV, proj_coord(point.east, point.north, 0, 0));
    if (!std::isfinite(position.lp.lam) || !std::isfinite(position.lp.phi))
        return refused("The point north " + shownNumber(point.north) + ", east " + shownNumber(point.east) + " must lie within the reach of the projection.");
    return LatLon{proj_todeg(position.lp.phi), proj_todeg(position.lp.lam)};
}

Result<GridFactors> Projection::factorsAt(LatLon position) const
{
    if (const auto ok = checkPosition(position); !ok)
        return tl::unexpected(ok.error());
    proj_errno_reset(m_machine->operation.get());
    const PJ_FACTORS factors = proj_factors(m_machine->operation.get(), proj_coord(proj_torad(position.longitudeDeg), proj_torad(position.latitudeDeg), 0, 0));
    if (proj_errno(m_machine->operation.get()) != 0 || !(factors.meridional_scale > 0))
        return refused(place(position) + " must lie within the reach of the projection.");
    return GridFactors{proj_todeg(factors.meridian_convergence), factors.meridional_scale};
}

Result<Ellipsoid> ellipsoidNamed(std::string_view name)
{
    const ProjContext context = newProjContext();
    const PJ_TYPE kind = PJ_TYPE_ELLIPSOID;
    const std::string whole(name);
    // "Everest 1830 (1967)" stands for "Everest 1830 (1967 Definition)": exact first, then the beginning of a name.
    for (const int approximate : {0, 1}) {
        const std::unique_ptr<PJ_OBJ_LIST, void (*)(PJ_OBJ_LIST*)> found(
            proj_create_from_name(context.get(), "EPSG", whole.c_str(), &kind, 1, approximate, 1, nullptr), proj_list_destroy);
        if (!found || proj_list_get_count(found.get()) == 0 || whole.empty())
            continue;
        const ProjObject ellipsoid = owned(proj_list_get(context.get(), found.get(), 0));
        Ellipsoid result;
        if (ellipsoid && proj_ellipsoid_get_parameters(context.get(), ellipsoid.get(), &result.semiMajorM, nullptr, nullptr, &result.inverseFlattening))
            return result;
    }
    return refused("The ellipsoid must be one of the EPSG data set; it is \"" + whole + "\".");
}

}  // namespace groundcount::gis
