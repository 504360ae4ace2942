#pragma once

#include "method/accept/random_place.h"
#include "method/error.h"
#include "method/site/alignment.h"

#include <cstdint>
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

/// An area of the plane: the outer ring and holes, each at least 3 corners, closed without repeating the first.
struct PlanArea {
    std::vector<PlanPoint> ring;
    std::vector<std::vector<PlanPoint>> holes;
};

struct AreaSite {
    double alongNorth = 0;  ///< r1 over the north extent
    double alongEast = 0;   ///< r2 over the east extent
    PlanPoint point;
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

/// Whether the point lies inside (even-odd rule) and at least `edgeFt` from every ring. @source [COMPUTED]
bool insideArea(const PlanArea& area, PlanPoint point, double edgeFt);

}  // namespace groundcount::method
