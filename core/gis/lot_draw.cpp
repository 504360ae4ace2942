#include "gis/lot_draw.h"

#include "gis/lot_ground.h"
#include "method/decimal.h"
#include "method/limit.h"
#include "method/sentence.h"

#include <cmath>

namespace groundcount::gis {
namespace {

using method::PlanPoint;

/// An obstacle ready to measure from.
struct Keep {
    std::string name;
    std::vector<PlanPoint> path;
    bool closed = false;
    double leastMetres = 0;  ///< clearance, radius and uncertainty together
};

Result<double> clearanceMetres(const method::RuleSet& rules, const std::string& obstacleKind)
{
    const char* key = obstacleKind == "vehicle" ? "clearance.vehicles" : obstacleKind == "gauge" ? "clearance.other_gauges" : "clearance.vertical_face";
    const auto limit = rules.limits.find(key);
    if (limit == rules.limits.end())
        return refused("Rule set \"" + rules.name + "\": limit \"" + key + "\" is missing.");
    const double value = limit->second.value.value();
    const std::string& unit = limit->second.unit;
    return unit == "in" ? Length::inches(value).metres() : unit == "m" ? value : Length::feet(value).metres();
}

Result<std::vector<Keep>> obstaclesOf(const DrawGround& ground)
{
    std::vector<Keep> all;
    for (const auto& o : ground.obstacles) {
        auto path = obstaclePath(o, ground.job);
        const auto clearance = clearanceMetres(ground.rules, o.obstacleKind);
        if (!path || !clearance)
            return tl::unexpected(path ? clearance.error() : path.error());
        if (!path->empty())
            all.push_back({o.name, std::move(*path), o.closed, *clearance + Length::feet(o.radiusFt + o.uncertaintyFt).metres()});
    }
    return all;
}

std::string tooNear(const std::vector<Keep>& obstacles, PlanPoint at, double metresPerUnit)
{
    for (const Keep& o : obstacles) {
        const double metres = method::distanceToPath(o.path, o.closed, at) * metresPerUnit;
        if (!atLeast(metres, o.leastMetres))
            return shownNumber(std::round(Length::metres(metres).feet() * 10) / 10) + " ft from " + o.name + ", at least "
                   + shownNumber(std::round(Length::metres(o.leastMetres).feet() * 10) / 10) + " ft asked for";
    }
    return {};
}

/// Numbers as they are sealed: random numbers in full, lengths to 0.001.
std::string full(double value) { return reportedText(value, 8, TieRule::HalfEven); }
std::string length(double value) { return reportedText(value, 3, TieRule::HalfEven); }

class Writer {
public:
    explicit Writer(const book::JobRow& job) : m_unit(job.gridUnit == "ftUS" ? "usft" : job.gridUnit) {}

    struct Foot {
        double station = 0, offsetFt = 0;
    };
    book::Body one(int number, double along, double across, const std::optional<Foot>& foot, PlanPoint at, const std::string& why) const
    {
        book::Body body{{"number", number}, {"r_along", full(along)}, {"r_across", full(across)},
                        {"grid_north_" + m_unit, length(at.northFt)}, {"grid_east_" + m_unit, length(at.eastFt)}};
        if (foot) {
            body["station"] = length(foot->station);
            body["offset_ft"] = length(foot->offsetFt);
        }
        if (!why.empty())
            body["why"] = why;
        return body;
    }

private:
    std::string m_unit;
};

book::Body headOf(const book::LotRow& lot, const std::string& lift, const std::string& generator, std::uint64_t seed, const std::string& policy)
{
    return {{"lot", lot.id}, {"lift", lift}, {"generator", generator}, {"seed", std::to_string(seed)}, {"policy", policy}, {"sites", book::Body::array()}, {"rejected", book::Body::array()}};
}

Result<book::Body> drawAlong(const book::LotRow& lot, const std::string& lift, const DrawGround& ground, const LotDrawPlan& plan, const std::vector<Keep>& obstacles)
{
    const auto line = lotLine(lot, ground.job, ground.lines);
    if (!line)
        return tl::unexpected(line.error());
    const auto alongOf = [&](double station) { return line->stations().only(station).and_then([&](const method::Station& s) { return line->stations().alongFt(s); }); };
    const auto begin = alongOf(*lot.beginStationFt);
    const auto end = alongOf(*lot.endStationFt);
    if (!begin || !end)
        return tl::unexpected(begin ? end.error() : begin.error());
    const double unit = ground.job.metresPerGridUnit;
    const double left = Length::feet(lot.leftFt.value_or(0)).metres() / unit, right = Length::feet(lot.rightFt.value_or(0)).metres() / unit;
    const double edge = plan.edge.metres() / unit;
    const int sublots = std::max(1, lot.sublots);
    if (plan.sites < 1 || plan.sites % sublots != 0)
        return refused("The number of sites must be a multiple of the lot's " + std::to_string(sublots) + " sublots, so that each gets as many; it is " + std::to_string(plan.sites) + ".");
    method::StripPlan strip{{*begin, *end - *begin, left + right, edge, edge}, sublots, plan.sites / sublots, method::EdgePolicy::Redraw};
    const auto placed = [&](const method::RandomPlace& place) -> Result<std::pair<method::Station, PlanPoint>> {
        const auto station = line->stations().stationAt(place.stationFt);
        if (!station)
            return tl::unexpected(station.error());
        const auto at = line->at(*station, place.fromLeftFt - left);
        if (!at)
            return tl::unexpected(at.error());
        return std::pair{*station, *at};
    };
    std::optional<Error> trouble;
    const auto draw = method::drawInStrip(strip, plan.seed, [&](const method::RandomPlace& place) {
        const auto at = placed(place);
        if (!at)
            trouble = at.error();
        return at ? tooNear(obstacles, at->second, unit) : std::string();
    });
    if (!draw || trouble)
        return tl::unexpected(draw ? *trouble : draw.error());
    const Writer writer(ground.job);
    book::Body body = headOf(lot, lift, draw->generator, draw->seed, "redraw, edge " + length(plan.edge.feet()) + " ft, " + std::to_string(sublots) + " sublots, obstacles by the rule set");
    const auto put = [&](const method::StripSite& site, int number, const char* list) -> Result<void> {
        const auto at = placed(site.place);
        if (!at)
            return tl::unexpected(at.error());
        body[list].push_back(writer.one(number, site.along, site.across, Writer::Foot{at->first.feet, Length::metres((site.place.fromLeftFt - left) * unit).feet()}, at->second, site.why));
        return {};
    };
    int number = 0;
    for (const auto& site : draw->sites)
        if (auto done = put(site, ++number, "sites"); !done)
            return tl::unexpected(done.error());
    number = 0;
    for (const auto& site : draw->rejected)
        if (auto done = put(site, ++number, "rejected"); !done)
            return tl::unexpected(done.error());
    return body;
}

Result<book::Body> drawOver(const book::LotRow& lot, const std::string& lift, const DrawGround& ground, const LotDrawPlan& plan, const std::vector<Keep>& obstacles)
{
    const auto area = lotGround(lot, ground.job, ground.lines);
    if (!area)
        return tl::unexpected(area.error());
    // A building pad has no line: its sites are known by their grid places alone.
    const auto line = lotLine(lot, ground.job, ground.lines);
    const double unit = ground.job.metresPerGridUnit;
    const auto draw = method::drawInArea(*area, plan.sites, plan.edge.metres() / unit, plan.seed, [&](PlanPoint at) { return tooNear(obstacles, at, unit); });
    if (!draw)
        return tl::unexpected(draw.error());
    const Writer writer(ground.job);
    book::Body body = headOf(lot, lift, draw->generator, draw->seed, "area, edge " + length(plan.edge.feet()) + " ft, obstacles by the rule set");
    const auto footOf = [&](PlanPoint point) -> std::optional<Writer::Foot> {
        const auto foot = line ? line->locate(point.northFt, point.eastFt) : Result<method::StationOffset>(tl::unexpected(line.error()));
        return foot ? std::optional(Writer::Foot{foot->station.feet, Length::metres(foot->offsetRightFt * unit).feet()}) : std::nullopt;
    };
    int number = 0;
    for (const auto& site : draw->sites)
        body["sites"].push_back(writer.one(++number, site.alongNorth, site.alongEast, footOf(site.point), site.point, {}));
    number = 0;
    for (const auto& site : draw->rejected)
        body["rejected"].push_back(writer.one(++number, site.alongNorth, site.alongEast, footOf(site.point), site.point, site.why));
    return body;
}

}  // namespace

Result<book::Body> drawLot(const book::LotRow& lot, const std::string& lotLift, const DrawGround& ground, const LotDrawPlan& plan)
{
    const auto obstacles = obstaclesOf(ground);
    if (!obstacles)
        return tl::unexpected(obstacles.error());
    if (!lot.area.empty())
        return drawOver(lot, lotLift, ground, plan, *obstacles);
    if (!lot.beginStationFt || !lot.endStationFt || (!lot.leftFt && !lot.rightFt))
        return refused("Lot " + lot.name + " has no ground to draw in: it needs corners, or two stations and the offsets to its edges.");
    return drawAlong(lot, lotLift, ground, plan, *obstacles);
}

}  // namespace groundcount::gis
