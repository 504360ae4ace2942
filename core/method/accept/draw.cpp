#include "method/accept/draw.h"

#include "method/accept/random_source.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

// A site that was not found by then has an open share below about 0.1 %: the edge is wrong.
constexpr int kMostRejected = 10'000;
constexpr const char* kInsideEdge = "inside the edge strip";
constexpr const char* kOutside = "outside the area or nearer to its edge than allowed";

double distanceToSegment(PlanPoint p, PlanPoint a, PlanPoint b)
{
    const double north = b.northFt - a.northFt;
    const double east = b.eastFt - a.eastFt;
    const double square = north * north + east * east;
    const double t = square == 0 ? 0 : std::clamp(((p.northFt - a.northFt) * north + (p.eastFt - a.eastFt) * east) / square, 0.0, 1.0);
    return std::hypot(p.northFt - a.northFt - t * north, p.eastFt - a.eastFt - t * east);
}

double doubleArea(const std::vector<PlanPoint>& ring)
{
    double sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const PlanPoint a{ring[i].northFt - ring[0].northFt, ring[i].eastFt - ring[0].eastFt};
        const PlanPoint& next = ring[(i + 1) % ring.size()];
        sum += a.northFt * (next.eastFt - ring[0].eastFt) - a.eastFt * (next.northFt - ring[0].northFt);
    }
    return std::abs(sum);
}

Result<void> checkRing(const std::vector<PlanPoint>& ring)
{
    if (ring.size() < 3)
        return refused("A ring of an area must have at least 3 corners; it has " + std::to_string(ring.size()) + ".");
    for (const PlanPoint& p : ring)
        if (!std::isfinite(p.northFt) || !std::isfinite(p.eastFt))
            return refused("The corners of an area must be numbers.");
    if (!(doubleArea(ring) > 0))
        return refused("A ring of an area must enclose something; its area is 0.");
    return {};
}

bool crosses(PlanPoint p, PlanPoint a, PlanPoint b)
{
    if ((a.northFt > p.northFt) == (b.northFt > p.northFt))
        return false;
    return p.eastFt < a.eastFt + (p.northFt - a.northFt) / (b.northFt - a.northFt) * (b.eastFt - a.eastFt);
}

}  // namespace

Result<StripDraw> drawInStrip(const StripPlan& plan, std::uint64_t seed)
{
    return drawInStrip(plan, seed, [](const RandomPlace&) { return std::string(); });
}

Result<StripDraw> drawInStrip(const StripPlan& plan, std::uint64_t seed, const StripExclusion& excluded)
{
    if (plan.sublots < 1 || plan.sublots > 1000)
        return refusedValue("The number of sublots", plan.sublots, "", "1 to 1000");
    if (plan.sitesPerSublot < 1 || plan.sitesPerSublot > 100)
        return refusedValue("The number of sites in a sublot", plan.sitesPerSublot, "", "1 to 100");
    RandomSource random(seed);
    StripDraw draw{seed, std::string(RandomSource::kName), {}, {}};
    for (int sublot = 0; sublot < plan.sublots; ++sublot) {
        Strip part = plan.strip;
        part.lengthFt = plan.strip.lengthFt / plan.sublots;
        part.beginFt = plan.strip.beginFt + sublot * part.lengthFt;
        for (int site = 0; site < plan.sitesPerSublot; ++site)
            for (int rejected = 0;; ++rejected) {
                StripSite drawn{sublot + 1, random.next(), random.next(), {}, {}};
                const auto place = placeFromNumbers(part, drawn.along, drawn.across, plan.policy);
                if (!place)
                    return tl::unexpected(place.error());
                drawn.place = *place;
                drawn.why = place->insideEdge ? kInsideEdge : excluded(*place);
                if (drawn.why.empty()) {
                    draw.sites.push_back(drawn);
                    break;
                }
                if (rejected == kMostRejected)
                    return refused("The open width must leave room for a draw; 10000 draws for one site were rejected, the last one: " + drawn.why + ".");
                draw.rejected.push_back(drawn);
            }
    }
    return draw;
}

bool insideArea(const PlanArea& area, PlanPoint point, double edgeFt)
{
    bool inside = false;
    const auto walk = [&](const std::vector<PlanPoint>& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const PlanPoint& a = ring[i];
            const PlanPoint& b = ring[(i + 1) % ring.size()];
            if (edgeFt > 0 && distanceToSegment(point, a, b) < edgeFt)
                return false;
            inside = inside != crosses(point, a, b);
        }
        return true;
    };
    return walk(area.ring) && std::all_of(area.holes.begin(), area.holes.end(), walk) && inside;
}

double distanceToPath(const std::vector<PlanPoint>& path, bool closed, PlanPoint point)
{
    if (closed && path.size() >= 3 && insideArea({path, {}}, point, 0))
        return 0;
    double least = std::hypot(point.northFt - path.front().northFt, point.eastFt - path.front().eastFt);
    for (std::size_t i = 1; i < path.size(); ++i)
        least = std::min(least, distanceToSegment(point, path[i - 1], path[i]));
    return closed ? std::min(least, distanceToSegment(point, path.back(), path.front())) : least;
}

Result<AreaDraw> drawInArea(const PlanArea& area, int count, double edgeFt, std::uint64_t seed)
{
    return drawInArea(area, count, edgeFt, seed, [](PlanPoint) { return std::string(); });
}

Result<AreaDraw> drawInArea(const PlanArea& area, int count, double edgeFt, std::uint64_t seed, const AreaExclusion& excluded)
{
    if (count < 1 || count > 1000)
        return refusedValue("The number of sites", count, "", "1 to 1000");
    if (!isNotNegative(edgeFt))
        return refusedValue("The distance from the edge", edgeFt, "", "at least 0");
    if (const auto ok = checkRing(area.ring); !ok)
        return tl::unexpected(ok.error());
    for (const auto& hole : area.holes)
        if (const auto ok = checkRing(hole); !ok)
            return tl::unexpected(ok.error());
    const auto byNorth = std::minmax_element(area.ring.begin(), area.ring.end(), [](const auto& a, const auto& b) { return a.northFt < b.northFt; });
    const auto byEast = std::minmax_element(area.ring.begin(), area.ring.end(), [](const auto& a, const auto& b) { return a.eastFt < b.eastFt; });
    const double south = byNorth.first->northFt;
    const double west = byEast.first->eastFt;
    const double height = byNorth.second->northFt - south;
    const double width = byEast.second->eastFt - west;
    RandomSource random(seed);
    AreaDraw draw{seed, std::string(RandomSource::kName), {}, {}};
    for (int site = 0; site < count; ++site)
        for (int rejected = 0;; ++rejected) {
            AreaSite drawn{random.next(), random.next(), {}, {}};
            drawn.point = {south + drawn.alongNorth * height, west + drawn.alongEast * width};
            drawn.why = insideArea(area, drawn.point, edgeFt) ? excluded(drawn.point) : kOutside;
            if (drawn.why.empty()) {
                draw.sites.push_back(drawn);
                break;
            }
            if (rejected == kMostRejected)
                return refused("The open area must leave room for a draw; 10000 draws for one site were rejected, the last one: " + drawn.why + ".");
            draw.rejected.push_back(drawn);
        }
    return draw;
}

}  // namespace groundcount::method
