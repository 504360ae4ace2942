#include "topics.h"

#include "gis/crs.h"
#include "gis/datum_shift.h"
#include "gis/geodesy.h"
#include "method/site/angle.h"

#include <cmath>
#include <cstdio>
#include <map>
#include <optional>
#include <stdexcept>

namespace groundcount::tables {
namespace {

using namespace groundcount::gis;

template <class T>
tl::unexpected<Error> errorOf(const Result<T>& result)
{
    return tl::unexpected(result.error());
}

ProjectionMethod methodOf(const std::string& word)
{
    if (word == "TM")
        return ProjectionMethod::TransverseMercator;
    if (word == "LCC")
        return ProjectionMethod::LambertConic;
    if (word == "HOM")
        return ProjectionMethod::ObliqueMercatorFromOrigin;
    throw std::runtime_error("unknown method " + word);
}

Result<Projection> projectionOf(const Row& row)
{
    const auto ellipsoid = ellipsoidNamed(row.hasColumn("ellipsoid") ? row.text("ellipsoid") : "GRS 1980");
    if (!ellipsoid)
        return errorOf(ellipsoid);
    ProjectionParameters p;
    p.method = methodOf(row.text("method"));
    p.ellipsoid = *ellipsoid;
    p.latitude0Deg = row.number("lat0_deg");
    p.longitude0Deg = row.number("lon0_deg");
    p.scale0 = row.numberOr("k0", 1);
    p.parallel1Deg = row.numberOr("sp1_deg", 0);
    p.parallel2Deg = row.numberOr("sp2_deg", 0);
    p.azimuthDeg = row.numberOr("azimuth_deg", 0);
    p.falseEastM = row.number("fe_m");
    p.falseNorthM = row.number("fn_m");
    return Projection::make(p);
}

// The same place through the EPSG code of the row: another definition of the zone, the same grid.
void checkByCode(const Row& row, LatLon position, GridPoint grid, Outcome& outcome)
{
    if (!row.has("epsg"))
        return;
    const auto crs = Crs::fromEpsg(static_cast<int>(row.number("epsg")));
    if (!crs) {
        outcome.objections.push_back(crs.error().what);
        return;
    }
    const auto other = crs->fromGeographic(position);
    if (!other || !(std::hypot(other->north - grid.north, other->east - grid.east) < 0.001))
        outcome.objections.push_back("EPSG:" + row.text("epsg") + " gives another grid position");
    const auto back = crs->toGeographic(grid);
    if (!back || !(std::abs(back->latitudeDeg - position.latitudeDeg) < 1e-8))
        outcome.objections.push_back("EPSG:" + row.text("epsg") + " does not lead back");
}

Result<Outcome> gridPosition(const Row& row)
{
    const auto projection = projectionOf(row);
    if (!projection)
        return errorOf(projection);
    const LatLon position{row.number("lat_deg"), row.number("lon_deg")};
    const auto grid = projection->forward(position);
    if (!grid)
        return errorOf(grid);
    const auto factors = projection->factorsAt(position);
    if (!factors)
        return errorOf(factors);
    Outcome outcome{"ok",
                    {{"want_north_m", grid->north},
                     {"want_east_m", grid->east},
                     {"want_convergence_deg", factors->convergenceDeg},
                     {"want_scale", factors->pointScale}},
                    {}};
    if (row.hasColumn("epsg"))
        checkByCode(row, position, *grid, outcome);
    return outcome;
}

Result<Outcome> gridFeet(const Row& row)
{
    const std::string& foot = row.text("foot");
    if (foot != "usft" && foot != "ft")
        throw std::runtime_error("unknown foot " + foot);
    const double metres = foot == "usft" ? kMetrePerSurveyFoot : kMetrePerFoot;
    const auto projection = projectionOf(row);
    if (!projection)
        return errorOf(projection);
    const auto lat = method::parseAngleDeg(row.text("lat"));
    const auto lon = method::parseAngleDeg(row.text("lon"));
    if (!lat || !lon)
        return errorOf(lat ? lon : lat);
    const auto grid = projection->forward({*lat, *lon});
    if (!grid)
        return errorOf(grid);
    return Outcome{"ok", {{"want_north_ft", grid->north / metres}, {"want_east_ft", grid->east / metres}}, {}};
}

Result<Outcome> combined(const Row& row)
{
    auto outcome = gridPosition(row);
    if (!outcome)
        return outcome;
    if (!row.has("height_m"))
        return outcome;
    const auto ellipsoid = ellipsoidNamed("GRS 1980");
    if (!ellipsoid)
        return errorOf(ellipsoid);
    const auto elevation = elevationFactor(*ellipsoid, row.number("lat_deg"), row.number("height_m"));
    if (!elevation)
        return errorOf(elevation);
    const auto factor = combinedFactor(std::get<double>(outcome->want.at("want_scale")), *elevation);
    if (!factor)
        return errorOf(factor);
    outcome->want["want_elevation_factor"] = *elevation;
    outcome->want["want_combined_factor"] = *factor;
    if (!row.has("grid_distance_m"))
        return outcome;
    const auto ground = groundDistance(Length::metres(row.number("grid_distance_m")), *factor);
    if (!ground)
        return errorOf(ground);
    outcome->want["want_ground_distance_m"] = ground->metres();
    return outcome;
}

Result<Outcome> geodesic(const Row& row)
{
    const auto ellipsoid = ellipsoidNamed("WGS 84");
    if (!ellipsoid)
        return errorOf(ellipsoid);
    const LatLon from{row.number("lat1_deg"), row.number("lon1_deg")};
    const LatLon to{row.number("lat2_deg"), row.number("lon2_deg")};
    const auto line = geodesicBetween(*ellipsoid, from, to);
    if (!line)
        return errorOf(line);
    Outcome outcome{"ok", {{"want_length_m", line->lengthM}, {"want_azimuth1_deg", line->azimuth1Deg}, {"want_azimuth2_deg", line->azimuth2Deg}}, {}};
    const auto end = geodesicFrom(*ellipsoid, from, row.number("want_azimuth1_deg"), row.number("want_length_m"));
    // 1e-9 degree is a tenth of a millimetre.
    if (!end || !(std::abs(end->latitudeDeg - to.latitudeDeg) < 1e-9)
        || !(std::abs(std::remainder(end->longitudeDeg - to.longitudeDeg, 360)) < 1e-9 / std::max(0.01, std::cos(to.latitudeDeg * M_PI / 180))))
        outcome.objections.push_back("the direct problem does not lead to the second point");
    return outcome;
}

Result<Outcome> footMixup(const Row& row)
{
    return footMixUpFt(row.number("coordinate")).map([](double error) { return Outcome{"ok", {{"want_error_ft", error}}, {}}; });
}

/// The inputs of a worked example by key.
class Inputs {
public:
    explicit Inputs(const Row& row)
    {
        for (const auto& [key, value] : row.pairs("inputs"))
            m_values[key] = value;
        if (row.has("note") && row.text("note").find("survey feet") != std::string::npos)
            m_metresPerUnit = kMetrePerSurveyFoot;
        else if (row.has("note") && row.text("note").find("links") != std::string::npos)
            m_metresPerUnit = 0.201166195164;  // Clarke's link of the worked example of method 9806
    }
    bool has(const std::string& key) const { return m_values.count(key) > 0; }
    double number(const std::string& key) const
    {
        if (!has(key))
            throw std::runtime_error("no key " + key + " in column inputs");
        return readNumber(m_values.at(key));
    }
    double angle(const std::string& key) const
    {
        const auto value = method::parseAngleDeg(has(key) ? m_values.at(key) : "");
        if (!value)
            throw std::runtime_error(key + ": " + value.error().what);
        return *value;
    }
    std::string text(const std::string& key) const { return m_values.at(key); }
    double metresPerUnit() const { return m_metresPerUnit; }
    /// The first key of several that is there.
    std::string either(std::initializer_list<const char*> keys) const
    {
        for (const char* key : keys)
            if (has(key))
                return key;
        throw std::runtime_error(std::string("no key ") + *keys.begin() + " in column inputs");
    }

private:
    std::map<std::string, std::string> m_values;
    double m_metresPerUnit = 1;
};

std::string term(const char* key, double value)
{
    char text[64];
    std::snprintf(text, sizeof text, " +%s=%.17g", key, value);
    return text;
}

// PROJ operation of a map projection by its EPSG method code; empty for a code that is no projection here.
std::string operationOf(const std::string& code, const Inputs& in)
{
    const auto lat0 = [&] { return term("lat_0", in.has("lat0") ? in.angle("lat0") : 0); };
    const auto lon0 = [&] { return term("lon_0", in.has("lon0") ? in.angle("lon0") : 0); };
    const auto k0 = [&] { return term("k_0", in.has("k0") ? in.number("k0") : 1); };
    const auto parallels = [&] { return term("lat_1", in.angle("sp1")) + term("lat_2", in.angle("sp2")); };
    const auto poleOf = [&] {
        const std::string key = in.has("lat0") ? "lat0" : in.has("latts") ? "latts" : in.has("sp1") ? "sp1" : "lat";
        return term("lat_0", in.angle(key) < 0 ? -90 : 90);
    };
    const auto trueScale = [&] { return term("lat_ts", in.angle(in.either({"sp1", "latts", "lat_ts", "latf"}))); };
    const auto oblique = [&] {
        return term("lat_0", in.angle("latc")) + term("lonc", in.angle("lonc")) + term("alpha", in.angle("azimuth"))
               + term("gamma", in.angle(in.has("rectified") ? "rectified" : "azimuth"));
    };
    if (code == "9801")
        return "lcc" + lat0() + lon0() + term("lat_1", in.angle("lat0")) + k0();
    if (code == "9802")
        return "lcc" + lat0() + lon0() + parallels();
    if (code == "1051")
        return "lcc" + lat0() + lon0() + parallels() + term("k_0", in.number("scaling"));
    if (code == "9804")
        return "merc" + lon0() + k0();
    if (code == "9805")
        return "merc" + lon0() + trueScale();
    if (code == "9806")
        return "cass" + lat0() + lon0();
    if (code == "9807")
        return "tmerc" + lat0() + lon0() + k0();
    if (code == "9808")
        return "tmerc +axis=wsu" + lat0() + lon0() + k0();
    if (code == "9809")
        return "sterea" + lat0() + lon0() + k0();
    if (code == "9810")
        return "stere" + poleOf() + lon0() + k0();
    if (code == "9829")
        return "stere" + poleOf() + lon0() + trueScale();
    if (code == "9812")
        return "omerc +no_uoff" + oblique() + k0();
    if (code == "9815")
        return "omerc" + oblique() + k0();
    if (code == "9818")
        return "poly" + lat0() + lon0();
    if (code == "9820")
        return "laea" + lat0() + lon0();
    if (code == "9822")
        return "aea" + lat0() + lon0() + parallels();
    if (code == "1024")
        return "webmerc" + lat0() + lon0();
    return {};
}

Result<Outcome> workedProjection(const std::string& operation, const Inputs& in)
{
    const auto ellipsoid = ellipsoidNamed(in.text("ellipsoid"));
    if (!ellipsoid)
        return errorOf(ellipsoid);
    const double metres = in.metresPerUnit();
    const std::string definition = "+proj=" + operation + term("x_0", (in.has("fe") ? in.number("fe") : 0) * metres)
                                   + term("y_0", (in.has("fn") ? in.number("fn") : 0) * metres) + term("a", ellipsoid->semiMajorM)
                                   + term("rf", ellipsoid->inverseFlattening);
    const auto projection = Projection::fromDefinition(definition);
    if (!projection)
        return errorOf(projection);
    const auto grid = projection->forward({in.angle("lat"), in.angle("lon")});
    if (!grid)
        return errorOf(grid);
    Outcome outcome{"ok", {{"want_1", grid->east / metres}, {"want_2", grid->north / metres}}, {}};
    const auto back = projection->inverse(*grid);
    if (!back || !(std::abs(back->latitudeDeg - in.angle("lat")) < 1e-8))
        outcome.objections.push_back("the inverse does not lead back");
    return outcome;
}

Outcome three(double x, double y, double z)
{
    return {"ok", {{"want_1", x}, {"want_2", y}, {"want_3", z}}, {}};
}

// Shifts, rotations in arc-seconds and scale in ppm between geocentric axes; 9603 and 1031 only shift.
Result<Outcome> geocentric(const std::string& code, const Inputs& in)
{
    const Geocentric source{in.number(in.either({"x", "X", "xs"})), in.number(in.either({"y", "Y", "ys"})), in.number(in.either({"z", "Z", "zs"}))};
    DatumShift shift;
    shift.shiftXM = in.number(in.either({"tx", "dx", "dX"}));
    shift.shiftYM = in.number(in.either({"ty", "dy", "dY"}));
    shift.shiftZM = in.number(in.either({"tz", "dz", "dZ"}));
    if (code != "9603" && code != "1031") {
        shift.rotationXArcSec = in.number("rx");
        shift.rotationYArcSec = in.number("ry");
        shift.rotationZArcSec = in.number("rz");
        shift.scalePpm = in.number("ds");
    }
    const bool frame = code == "9607" || code == "1032";
    return applyDatumShift(shift, frame ? RotationConvention::CoordinateFrame : RotationConvention::PositionVector, source)
        .map([](const Geocentric& p) { return three(p.xM, p.yM, p.zM); });
}

Result<Outcome> cartesian(const Inputs& in)
{
    const auto ellipsoid = ellipsoidNamed(in.text("ellipsoid"));
    if (!ellipsoid)
        return errorOf(ellipsoid);
    if (in.has("lat"))
        return toGeocentric(*ellipsoid, {in.angle("lat"), in.angle("lon")}, in.number("h")).map([](const Geocentric& p) {
            return three(p.xM, p.yM, p.zM);
        });
    return fromGeocentric(*ellipsoid, {in.number("x"), in.number("y"), in.number("z")}).map([](const GeographicHeight& p) {
        return three(p.position.latitudeDeg, p.position.longitudeDeg, p.heightM);
    });
}

Result<Outcome> epsgWorked(const Row& row)
{
    const Inputs in(row);
    const std::string& code = row.text("method");
    if (const std::string operation = operationOf(code, in); !operation.empty())
        return workedProjection(operation, in);
    if (code == "9621") {
        const Similarity fit{in.number("xto"), in.number("yto"), in.number("m"), in.number("theta")};
        return applySimilarity(fit, {in.number("n"), in.number("e")}).map([](GridPoint p) {
            return Outcome{"ok", {{"want_1", p.east}, {"want_2", p.north}}, {}};
        });
    }
    if (code == "9624") {
        const Affine fit{in.number("a0"), in.number("a1"), in.number("a2"), in.number("b0"), in.number("b1"), in.number("b2")};
        return applyAffine(fit, {in.number("y"), in.number("x")}).map([](GridPoint p) {
            return Outcome{"ok", {{"want_1", p.east}, {"want_2", p.north}}, {}};
        });
    }
    if (code == "9603" || code == "1031" || code == "9606" || code == "1033" || code == "9607" || code == "1032")
        return geocentric(code, in);
    if (code == "9602")
        return cartesian(in);
    throw std::runtime_error("unknown method " + code);
}

}  // namespace

std::vector<Topic> geodesyTopics()
{
    return {{"state_plane_83", gridPosition},
            {"state_plane_83_feet", gridFeet},
            {"utm_83", gridPosition},
            {"combined_factor", combined},
            {"geodesic", geodesic},
            {"foot_mixup", footMixup},
            {"epsg_worked", epsgWorked}};
}

}  // namespace groundcount::tables
