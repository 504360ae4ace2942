#pragma once

#include "method/accept/random_place.h"
#include "method/error.h"
#include "method/site/alignment.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace groundcount::method {

/// Random sites for a lot between two stations: equal sublots in order, the same number of sites in each.
struct StripPlan {
    Strip strip;
    int sublots = 1;         ///< 1 to 1000
    int sitesPerSublot = 1;  ///< 1 to 100
    EdgePolicy policy = EdgePolicy::Shrink;
};

struct StripSite {
    int sublot = 1;     ///< counted from the begin
    double along = 0;   ///< r1 within the sublot
    double across = 0;  ///< r2
    RandomPlace place;
    std::string why;  ///< of a rejected draw: "inside the edge strip", or what the exclusion said
};

/// A draw with everything needed to repeat it and to show that nothing was hidden.
struct StripDraw {
    std::uint64_t seed = 0;
    std::string generator;            ///< `RandomSource::kName`
    std::vector<StripSite> sites;     ///< in order of drawing
    std::vector<StripSite> rejected;  ///< draws inside an edge strip, in order of drawing
};

/// Draws r1, then r2 for one site after another, sublot by sublot; a rejected pair is kept and both numbers are drawn again.
/// @error Refused: as `placeFromNumbers`; sublots or sites outside the ranges; more than 10 000 rejected draws for one site.
/// @source [D3665-SCOPE], [LA-S605], [SK-STP107]
Result<StripDraw> drawInStrip(const StripPlan& plan, std::uint64_t seed);

/// Why a place may not be tested, "" when it may: an obstacle with its clearance, for example.
using StripExclusion = std::function<std::string(const RandomPlace&)>;
/// The same, and a place that `excluded` names a reason for is rejected like one inside an edge strip.
/// @error Refused as above, the last reason being named. @source redraw keeps the chance equal over the open ground [COMPUTED]
Result<StripDraw> drawInStrip(const StripPlan& plan, std::uint64_t seed, const StripExclusion& excluded);

/// An area of the plane: the outer ring and holes, each at least 3 corners, closed without repeating the first.
struct PlanArea {
    std::vector<PlanPoint> ring;
    std::vector<std::vector<PlanPoint>> holes;
};

struct AreaSite {
    double alongNorth = 0;  ///< r1 over the north extent
    double alongEast = 0;   ///< r2 over the east extent
    PlanPoint point;
    std::string why;  ///< of a rejected draw
};

struct AreaDraw {
    std::uint64_t seed = 0;
    std::string generator;
    std::vector<AreaSite> sites;
    std::vector<AreaSite> rejected;  ///< outside the area or nearer to its edge than allowed
};

/// Random sites of equal chance over an area: r1 and r2 over its extent, rejected outside the area (even-odd rule) or nearer to
/// a ring than `edgeFt`.
/// @param count 1 to 1000 @param edgeFt at least 0
/// @error Refused: outside the ranges, a ring of fewer than 3 corners or without area, NaN, more than 10 000 rejected draws for one site.
/// @source [D3665-SCOPE], [LA-S605]; rejection keeps the chance equal [COMPUTED]
Result<AreaDraw> drawInArea(const PlanArea& area, int count, double edgeFt, std::uint64_t seed);

using AreaExclusion = std::function<std::string(PlanPoint)>;
/// The same, and a point that `excluded` names a reason for is rejected too. @error Refused as above.
Result<AreaDraw> drawInArea(const PlanArea& area, int count, double edgeFt, std::uint64_t seed, const AreaExclusion& excluded);

/// Distance from a point to a line of points; inside a closed ring 0. @param path at least 1 point @param closed the last joins
/// the first @source [COMPUTED]
double distanceToPath(const std::vector<PlanPoint>& path, bool closed, PlanPoint point);

/// Whether the point lies inside (even-odd rule) and at least `edgeFt` from every ring. @source [COMPUTED]
bool insideArea(const PlanArea& area, PlanPoint point, double edgeFt);

}  // namespace groundcount::method
