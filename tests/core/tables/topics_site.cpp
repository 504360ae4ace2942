#include "topics.h"

#include "method/accept/random_place.h"
#include "method/accept/stratify.h"
#include "method/site/alignment.h"
#include "method/site/angle.h"
#include "method/site/curve.h"
#include "method/site/nmea.h"
#include "method/site/station_equation.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <stdexcept>

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

template <class T>
tl::unexpected<Error> errorOf(const Result<T>& result)
{
    return tl::unexpected(result.error());
}

std::string feetText(double stationFt) { return stationText(stationFt, 100, 2); }

int placesOf(const std::string& text)
{
    const auto point = text.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

Result<Outcome> stationTextTopic(const Row& row)
{
    const auto value = parseStation(row.text("text"), row.number("per"));
    if (!value)
        return errorOf(value);
    Outcome outcome{"ok", {{"want_value", *value}}, {}};
    if (stationText(*value, row.number("per"), placesOf(row.text("text"))) != row.text("text"))
        outcome.objections.push_back("written back it is not the same text");
    return outcome;
}

Result<Outcome> stationChain(const Row& row)
{
    const auto from = parseStation(row.text("from"), 100);
    if (!from)
        return errorOf(from);
    int places = placesOf(row.text("from"));
    for (const auto& add : row.words("add"))
        places = std::max(places, placesOf(add));
    double station = *from;
    std::vector<std::string> stations;
    for (const double add : row.numbers("add"))
        stations.push_back(stationText(station += add, 100, places));
    return Outcome{"ok", {{"want_stations", stations}}, {}};
}

Result<Outcome> stationEquation(const Row& row)
{
    const StationEquation equation{row.number("back_ft"), row.number("ahead_ft")};
    Outcome outcome{"ok", {{"want_gap", equationGapFt(equation)}}, {}};
    if (row.text("ask") == "distance") {
        const auto distance = distanceAcrossFt(equation, row.number("from_ft"), row.number("to_ft"));
        if (!distance)
            return errorOf(distance);
        outcome.want["want_value"] = *distance;
        return outcome;
    }
    if (row.text("ask") != "exists")
        throw std::runtime_error("unknown ask " + row.text("ask"));
    const auto places = distancesFromEquationFt(equation, row.number("from_ft"));
    if (!places)
        return errorOf(places);
    outcome.result = places->size() > 1 ? "ambiguous" : "ok";
    outcome.want["want_candidates"] = *places;
    return outcome;
}

Result<CurveElements> curveOf(const Row& row)
{
    const auto deflection = parseAngleDeg(row.text("deflection"));
    if (!deflection)
        return errorOf(deflection);
    const std::string& definition = row.text("definition");
    if (definition == "radius")
        return simpleCurve(row.number("value"), *deflection);
    const auto degree = parseAngleDeg(row.text("value"));
    if (!degree)
        return errorOf(degree);
    if (definition != "arc" && definition != "chord")
        throw std::runtime_error("unknown definition " + definition);
    return simpleCurveFromDegree(definition == "arc" ? DegreeDefinition::Arc : DegreeDefinition::Chord, *degree, *deflection);
}

Result<Outcome> curves(const Row& row)
{
    const auto curve = curveOf(row);
    if (!curve)
        return errorOf(curve);
    Outcome outcome{"ok",
                    {{"want_R", curve->radiusFt},
                     {"want_T", curve->tangentFt},
                     {"want_L", curve->lengthFt},
                     {"want_LC", curve->longChordFt},
                     {"want_M", curve->middleOrdinateFt},
                     {"want_E", curve->externalFt}},
                    {}};
    if (!row.has("PI_ft") && !row.has("PC_ft"))
        return outcome;
    const CurveStations stations = row.has("PI_ft") ? stationsFromPi(*curve, row.number("PI_ft")) : stationsFromPc(*curve, row.number("PC_ft"));
    outcome.want["want_PI"] = feetText(stations.piFt);
    outcome.want["want_PC"] = feetText(stations.pcFt);
    outcome.want["want_PT"] = feetText(stations.ptFt);
    return outcome;
}

Result<Outcome> curvePairs(const Row& row)
{
    return tangentBetweenFt(row.number("PI_1_ft"), row.number("PI_2_ft"), row.number("T_1"), row.number("T_2")).map([](double left) {
        return Outcome{"ok", {{"want_tangent_between", left}}, {}};
    });
}

Result<Outcome> wrongTangent(const Row& row)
{
    const double pi1 = row.pairNumber("inputs", "PI1");
    const double pi2 = row.pairNumber("inputs", "PI2");
    const double t1 = row.pairNumber("inputs", "T1");
    const double t2 = row.pairNumber("inputs", "T2");
    const double left = leftBetweenCurvesFt(pi1, pi2, t1, t2);
    Outcome outcome{meets(left, row.text("printed"), -1) ? "printed" : "wrong", {{"want_correct", left}}, {}};
    if (left < 0 && tangentBetweenFt(pi1, pi2, t1, t2))
        outcome.objections.push_back("overlapping curves were not refused");
    return outcome;
}

Result<Outcome> curveStationEquation(const Row& row)
{
    const auto back = parseAngleDeg(row.text("azimuth_back"));
    const auto ahead = parseAngleDeg(row.text("azimuth_ahead"));
    if (!back || !ahead)
        return errorOf(back ? ahead : back);
    const double deflection = std::abs(std::remainder(*ahead - *back, 360.0));
    const auto radius = radiusFromTangentFt(row.number("T"), deflection);
    if (!radius)
        return errorOf(radius);
    const auto curve = simpleCurve(*radius, deflection);
    if (!curve)
        return errorOf(curve);
    const CurveStations stations = stationsFromPi(*curve, row.number("PI_ft"));
    const StationEquation equation{stations.ptFt, stations.piFt + curve->tangentFt};
    return Outcome{"ok",
                   {{"want_deflection_deg", deflection},
                    {"want_R", curve->radiusFt},
                    {"want_L", curve->lengthFt},
                    {"want_PC", feetText(stations.pcFt)},
                    {"want_PT_back", feetText(equation.backFt)},
                    {"want_PT_ahead", feetText(equation.aheadFt)},
                    {"want_gap", equationGapFt(equation)}},
                   {}};
}

Result<Outcome> chordDegree(const Row& row)
{
    return chordDegreeDeg(row.number("R"), row.number("chord")).map([](double degree) {
        return Outcome{"ok", {{"want_half_angle_deg", degree / 2}, {"want_degree", degree}}, {}};
    });
}

struct BuiltAlignment {
    CurveElements curve;
    CurveStations stations;
    Alignment line;
};

// Tangents long enough for every point of the tables; the tables name no ends.
constexpr double kTangentFt = 20000;

Result<BuiltAlignment> builtAlignment(const Row& row)
{
    const auto azimuth = parseAngleDeg(row.text("azimuth_back"));
    const auto degree = parseAngleDeg(row.text("degree_arc"));
    const auto deflection = parseAngleDeg(row.text("deflection"));
    if (!azimuth || !degree || !deflection)
        return errorOf(!azimuth ? azimuth : !degree ? degree : deflection);
    const std::string& turn = row.text("turn");
    if (turn != "left" && turn != "right")
        throw std::runtime_error("unknown turn " + turn);
    const auto curve = simpleCurveFromDegree(DegreeDefinition::Arc, *degree, *deflection);
    if (!curve)
        return errorOf(curve);
    const CurveStations stations = stationsFromPi(*curve, row.number("PI_ft"));
    const double a = *azimuth * M_PI / 180;
    const double b = (*azimuth + (turn == "right" ? 1 : -1) * *deflection) * M_PI / 180;
    const PlanPoint pi{row.number("PI_north"), row.number("PI_east")};
    const double reach = curve->tangentFt + kTangentFt;
    auto line = Alignment::fromIntersections({pi.northFt - reach * std::cos(a), pi.eastFt - reach * std::sin(a)}, {{pi, curve->radiusFt}},
                                             {pi.northFt + reach * std::cos(b), pi.eastFt + reach * std::sin(b)}, stations.pcFt - kTangentFt, {});
    if (!line)
        return errorOf(line);
    return BuiltAlignment{*curve, stations, std::move(*line)};
}

Result<Outcome> alignments(const Row& row)
{
    const auto built = builtAlignment(row);
    if (!built)
        return errorOf(built);
    const auto pc = built->line.at(built->stations.pcFt, 0);
    const auto pt = built->line.at(built->stations.ptFt, 0);
    const auto ahead = built->line.azimuthDeg(built->stations.ptFt + 1);
    if (!pc || !pt)
        return errorOf(pc ? pt : pc);
    if (!ahead)
        return errorOf(ahead);
    return Outcome{"ok",
                   {{"want_R", built->curve.radiusFt},
                    {"want_T", built->curve.tangentFt},
                    {"want_L", built->curve.lengthFt},
                    {"want_PC", feetText(built->stations.pcFt)},
                    {"want_PT", feetText(built->stations.ptFt)},
                    {"want_PC_north", pc->northFt},
                    {"want_PC_east", pc->eastFt},
                    {"want_PT_north", pt->northFt},
                    {"want_PT_east", pt->eastFt},
                    {"want_azimuth_ahead_deg", *ahead}},
                   {}};
}

Result<Outcome> stationOffset(const Row& row)
{
    const Table table = row.table().companion("alignments");
    for (const Row& candidate : table.rows()) {
        if (candidate.text("id") != row.text("alignment"))
            continue;
        const auto built = builtAlignment(candidate);
        if (!built)
            return errorOf(built);
        const auto foot = built->line.locate(row.number("north"), row.number("east"));
        if (!foot)
            return errorOf(foot);
        Outcome outcome{"ok",
                        {{"want_station_ft", foot->station.feet},
                         {"want_station", feetText(foot->station.feet)},
                         {"want_offset_right_ft", foot->offsetRightFt}},
                        {}};
        const auto back = built->line.at(foot->station, foot->offsetRightFt);
        if (!back || !(std::hypot(back->northFt - row.number("north"), back->eastFt - row.number("east")) < 1e-6))
            outcome.objections.push_back("station and offset do not lead back to the point");
        return outcome;
    }
    throw std::runtime_error("no alignment " + row.text("alignment"));
}

Result<Outcome> randomLocation(const Row& row)
{
    const std::string& policy = row.text("edge_policy");
    if (policy == "clamp")
        return refused("Clamping a draw to the edge is biased; use shrink or redraw.");
    if (policy != "shrink" && policy != "redraw")
        throw std::runtime_error("unknown edge policy " + policy);
    const double edge = row.number("edge_ft");
    const auto place = placeFromNumbers({row.number("begin_ft"), row.number("length_ft"), row.number("width_ft"), edge, edge}, row.number("r_along"),
                                        row.number("r_across"), policy == "shrink" ? EdgePolicy::Shrink : EdgePolicy::Redraw);
    if (!place)
        return errorOf(place);
    return Outcome{place->insideEdge ? "redraw" : "ok",
                   {{"want_station_ft", place->stationFt},
                    {"want_station", feetText(place->stationFt)},
                    {"want_from_left_ft", place->fromLeftFt},
                    {"want_offset_right_ft", place->offsetRightFt}},
                   {}};
}

Result<Outcome> randomPickTopic(const Row& row)
{
    const std::string& rule = row.text("rule");
    if (rule == "product")
        return randomProduct(row.number("multiplier"), row.number("random")).map([](double v) { return Outcome{"ok", {{"want_value", v}}, {}}; });
    if (rule != "nearest" && rule != "floor_plus_one")
        throw std::runtime_error("unknown rule " + rule);
    return randomPick(static_cast<int>(row.number("multiplier")), row.number("random"), rule == "nearest" ? PickRule::Nearest : PickRule::FloorPlusOne)
        .map([](int v) { return Outcome{"ok", {{"want_value", static_cast<double>(v)}}, {}}; });
}

Result<Outcome> stratification(const Row& row)
{
    const int sublots = static_cast<int>(row.numberOr("sublots", 0));
    const auto size = sublotSize(row.number("total"), sublots);
    if (!size)
        return errorOf(size);
    Outcome outcome{"ok", {{"want_sublot", *size}}, {}};
    if (!row.has("unit_size"))
        return outcome;
    const auto total = Decimal::parse(row.text("total"));
    const auto unit = Decimal::parse(row.text("unit_size"));
    if (!total || !unit)
        return errorOf(total ? unit : total);
    const auto units = unitsPerSublot(*total, sublots, *unit);
    if (!units)
        return errorOf(units);
    outcome.want["want_candidates"] = static_cast<double>(*units);
    return outcome;
}

Result<Outcome> nmeaChecksum(const Row& row)
{
    const auto sum = sentenceChecksum(row.text("sentence"));
    if (!sum)
        return errorOf(sum);
    char text[8];
    std::snprintf(text, sizeof text, "%02X", static_cast<unsigned>(*sum));
    return Outcome{"ok", {{"want_checksum", std::string(text)}}, {}};
}

Result<Outcome> nmeaGga(const Row& row)
{
    const auto fix = parseGga(row.text("sentence"));
    if (!fix)
        return errorOf(fix);
    if (const auto ok = acceptableAsTestPlace(fix->quality); !ok)
        return tl::unexpected(ok.error());
    Outcome outcome{"ok",
                    {{"want_lat_deg", fix->latitudeDeg}, {"want_lon_deg", fix->longitudeDeg}, {"want_quality", static_cast<double>(fix->quality)}},
                    {}};
    if (fix->hdop)
        outcome.want["want_hdop"] = *fix->hdop;
    if (fix->altitudeMslM)
        outcome.want["want_alt_msl_m"] = *fix->altitudeMslM;
    if (fix->ellipsoidHeightM)
        outcome.want["want_h_ellipsoid_m"] = *fix->ellipsoidHeightM;
    return outcome;
}

Result<Outcome> nmeaGst(const Row& row)
{
    const auto errors = parseGst(row.text("sentence"));
    if (!errors)
        return errorOf(errors);
    Outcome outcome{"ok",
                    {{"want_sigma_lat_m", errors->sigmaLatM}, {"want_sigma_lon_m", errors->sigmaLonM}, {"want_drms_m", errors->drmsM}},
                    {}};
    if (errors->sigmaAltM)
        outcome.want["want_sigma_alt_m"] = *errors->sigmaAltM;
    return outcome;
}

}  // namespace

std::vector<Topic> siteTopics()
{
    return {{"station_text", stationTextTopic},
            {"station_chain", stationChain},
            {"station_equation", stationEquation},
            {"curves", curves},
            {"curve_pairs", curvePairs},
            {"published_but_wrong/tangent", wrongTangent},
            {"curve_station_equation", curveStationEquation},
            {"chord_degree", chordDegree},
            {"alignments", alignments},
            {"station_offset", stationOffset},
            {"random_location", randomLocation},
            {"random_pick", randomPickTopic},
            {"stratification", stratification},
            {"nmea_checksum", nmeaChecksum},
            {"nmea_gga", nmeaGga},
            {"nmea_gst", nmeaGst}};
}

}  // namespace groundcount::tables
