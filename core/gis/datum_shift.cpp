#include "gis/datum_shift.h"

#include "method/sentence.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <memory>
#include <proj.h>

namespace groundcount::gis {
namespace {

std::string term(const char* key, double value)
{
    std::array<char, 64> text{};
    // 17 digits give the double back exactly.
    std::snprintf(text.data(), text.size(), " +%s=%.17g", key, value);
    return text.data();
}

Result<PJ_COORD> run(const std::string& definition, PJ_DIRECTION direction, PJ_COORD in)
{
    const std::unique_ptr<PJ_CONTEXT, PJ_CONTEXT* (*)(PJ_CONTEXT*)> context(proj_context_create(), proj_context_destroy);
    proj_context_set_enable_network(context.get(), 0);
    proj_log_level(context.get(), PJ_LOG_NONE);
    const std::unique_ptr<PJ, PJ* (*)(PJ*)> operation(proj_create(context.get(), definition.c_str()), proj_destroy);
    if (!operation)
        return refused("The datum shift must be one that PROJ knows; it is \"" + definition + "\".");
    const PJ_COORD out = proj_trans(operation.get(), direction, in);
    if (!std::isfinite(out.xyz.x) || !std::isfinite(out.xyz.y) || !std::isfinite(out.xyz.z))
        return refused("The point must lie within the reach of the datum shift.");
    return out;
}

bool finite(const Geocentric& point)
{
    return std::isfinite(point.xM) && std::isfinite(point.yM) && std::isfinite(point.zM);
}

std::string cartesian(const Ellipsoid& ellipsoid)
{
    return "+proj=cart" + term("a", ellipsoid.semiMajorM) + (ellipsoid.inverseFlattening == 0 ? term("b", ellipsoid.semiMajorM) : term("rf", ellipsoid.inverseFlattening));
}

}  // namespace

Result<Geocentric> applyDatumShift(const DatumShift& shift, RotationConvention convention, const Geocentric& source)
{
    for (const double value : {shift.shiftXM, shift.shiftYM, shift.shiftZM, shift.rotationXArcSec, shift.rotationYArcSec, shift.rotationZArcSec, shift.scalePpm})
        if (!std::isfinite(value))
            return refusedValue("A parameter of the datum shift", value, "", "a number");
    if (!finite(source))
        return refused("The geocentric coordinates of a point must be numbers.");
    const std::string definition = "+proj=helmert" + term("x", shift.shiftXM) + term("y", shift.shiftYM) + term("z", shift.shiftZM)
                                   + term("rx", shift.rotationXArcSec) + term("ry", shift.rotationYArcSec) + term("rz", shift.rotationZArcSec)
                                   + term("s", shift.scalePpm)
                                   + (convention == RotationConvention::PositionVector ? " +convention=position_vector" : " +convention=coordinate_frame");
    return run(definition, PJ_FWD, proj_coord(source.xM, source.yM, source.zM, 0)).map([](const PJ_COORD& c) {
        return Geocentric{c.xyz.x, c.xyz.y, c.xyz.z};
    });
}

Result<Geocentric> toGeocentric(const Ellipsoid& ellipsoid, LatLon position, double heightM)
{
    if (const auto ok = checkPosition(position); !ok)
        return tl::unexpected(ok.error());
    if (!std::isfinite(heightM))
        return refusedValue("The ellipsoid height", heightM, " m", "a number");
    return run(cartesian(ellipsoid), PJ_FWD, proj_coord(proj_torad(position.longitudeDeg), proj_torad(position.latitudeDeg), heightM, 0))
        .map([](const PJ_COORD& c) { return Geocentric{c.xyz.x, c.xyz.y, c.xyz.z}; });
}

Result<GeographicHeight> fromGeocentric(const Ellipsoid& ellipsoid, const Geocentric& point)
{
    if (!finite(point))
        return refused("The geocentric coordinates of a point must be numbers.");
    return run(cartesian(ellipsoid), PJ_INV, proj_coord(point.xM, point.yM, point.zM, 0)).map([](const PJ_COORD& c) {
        return GeographicHeight{{proj_todeg(c.lpz.phi), proj_todeg(c.lpz.lam)}, c.lpz.z};
    });
}

}  // namespace groundcount::gis
