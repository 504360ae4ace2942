#include "gis/coverage.h"

#include "gis/plane_shapes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace groundcount::gis {
namespace {

using method::PlanArea;
using method::PlanPoint;
using Shape = PlaneShapes::Shape;

constexpr double kSnapMetres = 0.001;
constexpr double kPatchMetres = 0.01;
constexpr double kWholeWithin = 1e-6;

struct Place {
    PlanPoint point;
    std::vector<std::size_t> sites;
};

/// One calculation; everything in grid units.
class Work {
public:
    Work(const PlanArea& ground, std::span<const CoverageSite> sites, Length gridUnit)
        : m_shapes(ground.ring.front()), m_sites(sites), m_unitM(gridUnit.metres()), m_ground(m_shapes.polygon(ground))
    {
    }

    Result<Coverage> run(int requiredTests)
    {
        if (!m_ground)
            return refused("The ground of a lift must be an area; " + m_shapes.complaint() + ".");
        if (const std::string fault = m_shapes.fault(m_ground.get()); !fault.empty())
            return refused("The rings of a lift's ground must not cross or touch along a line; GEOS says \"" + fault + "\".");
        const double whole = m_shapes.area(m_ground.get());
        if (!(whole > 0))
            return refused("The ground of a lift must have an area above 0.");
        const double share = whole / requiredTests;
        m_result.ground = surface(whole);
        m_result.share = surface(share);
        gatherPlaces();
        if (const auto cut = m_places.empty() ? Result<void>{} : cutCells(); !cut)
            return tl::unexpected(cut.error());
        double sum = 0;
        double passed = 0;
        double failed = 0;
        double beyond = m_places.empty() ? whole : 0;
        for (CoverageCell& cell : m_result.cells) {
            const double area = cell.surface.squareMetres() / (m_unitM * m_unitM);
            sum += area;
            (cell.answer == SiteAnswer::Pass ? passed : failed) += std::min(area, share);
            cell.beyondShare = surface(std::max(0.0, area - share));
            beyond += std::max(0.0, area - share);
        }
        if (!m_places.empty() && !(std::abs(sum - whole) <= kWholeWithin * whole))
            return unavailable("The cells of the tests must add up to the ground of the lift; they give " + std::to_string(sum / whole) + " of it.");
        m_result.passed = surface(passed);
        m_result.failed = surface(failed);
        m_result.untested = surface(beyond);
        if (const auto patch = findPatch(); !patch)
            return tl::unexpected(patch.error());
        return std::move(m_result);
    }

private:
    Surface surface(double gridArea) const { return Surface::squareMetres(gridArea * m_unitM * m_unitM); }
    Length length(double grid) const { return Length::metres(grid * m_unitM); }

    void gatherPlaces()
    {
        auto* context = m_shapes.context();
        const GEOSPreparedGeometry* prepared = GEOSPrepare_r(context, m_ground.get());
        std::map<std::pair<double, double>, std::size_t> known;
        const double step = kSnapMetres / m_unitM;
        const auto snapped = [step](double value) { return std::round(value / step) * step; };
        for (std::size_t i = 0; i < m_sites.size(); ++i) {
            const PlanPoint point{snapped(m_sites[i].point.northFt), snapped(m_sites[i].point.eastFt)};
            const Shape at = m_shapes.points({point});
            if (GEOSPreparedIntersects_r(context, prepared, at.get()) != 1) {
                m_result.outside.push_back(i);
                continue;
            }
            const auto [found, fresh] = known.try_emplace({point.northFt, point.eastFt}, m_places.size());
            if (fresh)
                m_places.push_back({point, {}});
            m_places[found->second].sites.push_back(i);
        }
        GEOSPreparedGeom_destroy_r(context, prepared);
    }

    /// The uncut diagram. Its frame is ten times the envelope it is given, so that the frame's own corners, which GEOS treats
    /// as sites, reach no part of the ground.
    Shape diagram(const std::vector<PlanPoint>& points) const
    {
        auto* context = m_shapes.context();
        const Shape sites = m_shapes.points(points);
        const Shape envelope = m_shapes.own(GEOSEnvelope_r(context, m_ground.get()));
        return m_shapes.own(GEOSVoronoiDiagram_r(context, sites.get(), envelope.get(), 0, 0));
    }

    Result<void> cutCells()
    {
        auto* context = m_shapes.context();
        if (m_places.size() == 1) {
            addCell(m_places.front(), m_ground.get());
            return {};
        }
        std::vector<PlanPoint> points;
        for (const Place& place : m_places)
            points.push_back(place.point);
        const Shape cells = diagram(points);
        if (!cells)
            return unavailable("GEOS did not part the ground among the tests: " + m_shapes.complaint() + ".");
        const GEOSPreparedGeometry* prepared = GEOSPrepare_r(context, m_ground.get());
        std::vector<Shape> owned;  // the tree below keeps pointers
        GEOSSTRtree* tree = GEOSSTRtree_create_r(context, 10);
        std::vector<std::size_t> indexes(points.size());
        for (std::size_t i = 0; i < points.size(); ++i) {
            indexes[i] = i;
            owned.push_back(m_shapes.points({points[i]}));
            GEOSSTRtree_insert_r(context, tree, owned.back().get(), &indexes[i]);
        }
        std::vector<Shape> cut(points.size());
        std::string trouble;
        for (int i = 0; i < GEOSGetNumGeometries_r(context, cells.get()) && trouble.empty(); ++i) {
            const GEOSGeometry* cell = GEOSGetGeometryN_r(context, cells.get(), i);
            const std::size_t site = siteOf(cell, tree, owned);
            Shape piece = m_shapes.own(GEOSPreparedContains_r(context, prepared, cell) == 1 ? GEOSGeom_clone_r(context, cell)
                                                                                             : GEOSIntersection_r(context, cell, m_ground.get()));
            if (!piece || site >= cut.size() || cut[site])
                trouble = "GEOS did not cut the cells of the tests to the ground: " + m_shapes.complaint() + ".";
            else
                cut[site] = std::move(piece);
        }
        GEOSSTRtree_destroy_r(context, tree);
        GEOSPreparedGeom_destroy_r(context, prepared);
        if (!trouble.empty())
            return unavailable(trouble);
        for (std::size_t i = 0; i < cut.size(); ++i)
            if (cut[i])
                addCell(m_places[i], cut[i].get());
        return {};
    }

    /// The diagram comes in no order: the site of a convex cell is the one nearest to its centroid.
    std::size_t siteOf(const GEOSGeometry* cell, GEOSSTRtree* tree, const std::vector<Shape>& owned) const
    {
        struct Distance {
            GEOSContextHandle_t context;
            const std::vector<Shape>* points;
        } distance{m_shapes.context(), &owned};
        const Shape centre = m_shapes.own(GEOSGetCentroid_r(m_shapes.context(), cell));
        const auto measure = [](const void* item, const void* centroid, double* result, void* user) {
            const auto* d = static_cast<const Distance*>(user);
            return GEOSDistance_r(d->context, (*d->points)[*static_cast<const std::size_t*>(item)].get(),
                                  static_cast<const GEOSGeometry*>(centroid), result);
        };
        const void* nearest = GEOSSTRtree_nearest_generic_r(m_shapes.context(), tree, centre.get(), centre.get(), measure, &distance);
        return nearest ? *static_cast<const std::size_t*>(nearest) : owned.size();
    }

    void addCell(const Place& place, const GEOSGeometry* piece)
    {
        CoverageCell cell;
        cell.sites = place.sites;
        cell.answer = m_sites[place.sites.back()].answer;
        cell.surface = surface(m_shapes.area(piece));
        cell.areas = m_shapes.areas(piece);
        for (const PlanArea& area : cell.areas)
            for (const PlanPoint& corner : area.ring) {
                const Length away = length(std::hypot(corner.northFt - place.point.northFt, corner.eastFt - place.point.eastFt));
                if (away > m_result.farthest.radius)
                    m_result.farthest = {corner, away};
            }
        m_result.cells.push_back(std::move(cell));
    }

    Result<void> findPatch()
    {
        auto* context = m_shapes.context();
        std::vector<GEOSGeometry*> parts{GEOSBoundary_r(context, m_ground.get())};
        std::vector<PlanPoint> points;
        for (const Place& place : m_places)
            points.push_back(place.point);
        if (!points.empty())
            parts.push_back(m_shapes.points(points).release());
        const Shape obstacles = m_shapes.own(GEOSGeom_createCollection_r(context, GEOS_GEOMETRYCOLLECTION, parts.data(), static_cast<unsigned>(parts.size())));
        const Shape radius = m_shapes.own(GEOSLargestEmptyCircle_r(context, obstacles.get(), m_ground.get(), kPatchMetres / m_unitM));
        if (!radius)
            return unavailable("GEOS did not find the largest untested patch: " + m_shapes.complaint() + ".");
        double reach = 0;
        GEOSLength_r(context, radius.get(), &reach);
        const auto line = m_shapes.path(radius.get());
        if (!line.empty())
            m_result.patch = {line.front(), length(reach)};
        return {};
    }

    PlaneShapes m_shapes;
    std::span<const CoverageSite> m_sites;
    double m_unitM;
    Shape m_ground;
    std::vector<Place> m_places;
    Coverage m_result;
};

bool finite(const std::vector<PlanPoint>& ring)
{
    return std::all_of(ring.begin(), ring.end(), [](const PlanPoint& p) { return std::isfinite(p.northFt) && std::isfinite(p.eastFt); });
}

}  // namespace

Result<Coverage> coverageOf(const PlanArea& ground, std::span<const CoverageSite> sites, int requiredTests, Length gridUnit)
{
    if (!(requiredTests >= 1 && requiredTests <= 1'000'000))
        return refused("A lift must need 1 to 1 000 000 tests for its coverage; it needs " + std::to_string(requiredTests) + ".");
    if (sites.size() > 1'000'000)
        return refused("A lift's coverage takes at most 1 000 000 tests; there are " + std::to_string(sites.size()) + ".");
    if (!(gridUnit.metres() > 0 && std::isfinite(gridUnit.metres())))
        return refused("The unit of the plan must be above 0 m; it is " + std::to_string(gridUnit.metres()) + ".");
    bool numbers = finite(ground.ring);
    for (const auto& hole : ground.holes)
        numbers = numbers && finite(hole) && hole.size() >= 3;
    if (!numbers || ground.ring.size() < 3)
        return refused("Every ring of a lift's ground must have at least 3 corners that are numbers; the outer one has " + std::to_string(ground.ring.size()) + ".");
    for (const CoverageSite& site : sites)
        if (!finite({site.point}))
            return refused("The place of test " + site.number + " must be two numbers.");
    return Work(ground, sites, gridUnit).run(requiredTests);
}

}  // namespace groundcount::gis
