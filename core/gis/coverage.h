#pragma once

#include "gis/surface.h"
#include "method/accept/draw.h"
#include "method/error.h"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace groundcount::gis {

enum class SiteAnswer { Pass, Fail };

/// A test that speaks for ground: its place in plan and its verdict.
struct CoverageSite {
    std::string number;
    method::PlanPoint point;
    SiteAnswer answer = SiteAnswer::Pass;
};

/// The ground that is nearer to one place of testing than to any other.
struct CoverageCell {
    std::vector<std::size_t> sites;  ///< tests at this place, as indexes of the input, at least one; the last one speaks
    SiteAnswer answer = SiteAnswer::Pass;
    Surface surface;
    Surface beyondShare;                    ///< max(0, surface - share)
    std::vector<method::PlanArea> areas;    ///< the cell cut to the ground; several where the ground parts it
};

/// A circle on the ground; radius 0 when there is none.
struct GroundCircle {
    method::PlanPoint centre;
    Length radius;
};

struct Coverage {
    Surface ground;   ///< the whole lift
    Surface share;    ///< most ground that one test may stand for: ground/required
    Surface passed;   ///< ground of passing tests within their share
    Surface failed;   ///< ground of failing tests within their share
    Surface untested; ///< ground beyond the shares; passed + failed + untested = ground
    std::vector<CoverageCell> cells;    ///< in the order of their first test
    std::vector<std::size_t> outside;   ///< tests that lie off the ground and stand for none of it
    GroundCircle patch;     ///< largest circle within the ground without a test in it
    GroundCircle farthest;  ///< centre: the place of the ground that is farthest from a test; radius: how far. Radius 0 without tests
};

/// Ground that each test of a lift stands for, what is left untested, and the largest untested patch.
///
/// cell_i = {p in ground : |p - s_i| <= |p - s_j| for all j} (Voronoi diagram, cut to the ground);
/// share = A/n; untested = sum of max(0, A_i - share) over the cells, A without tests;
/// patch = the largest circle inside the ground whose inside holds no test, to 0.01 m; farthest = max over p of min_i |p - s_i|,
/// found on the corners of the cut cells, where a distance to a point within a convex cell has its maximum.
/// Places are taken to the millimetre; tests at one place share a cell and the last of them in the list speaks.
/// A test stands for ground on paper only: between tests nothing is known, and the specification decides how many are enough.
/// @param ground outer ring and holes in plan, in units of `gridUnit`, rings valid and not crossing
/// @param sites at most 1 000 000, in the order of their verdicts @param requiredTests n for this lift, 1 to 1 000 000
/// @param gridUnit length of one unit of the plan, above 0
/// @return figures and shapes; shapes in the units of the plan
/// @error Refused: an invalid ring (GEOS's reason is given), ground without area, n outside its range, NaN. Unavailable: the
///   cells do not add up to the ground to 1e-6 of it.
/// @source cells and circles [COMPUTED] by GEOS; the share as the frequency rule read area by area [DESIGN]
Result<Coverage> coverageOf(const method::PlanArea& ground, std::span<const CoverageSite> sites, int requiredTests, Length gridUnit);

}  // namespace groundcount::gis
