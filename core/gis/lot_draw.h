#pragma once

#include "book/record.h"
#include "book/state.h"
#include "method/accept/draw.h"
#include "method/error.h"
#include "method/quantity.h"
#include "method/rules/rule_set.h"

#include <cstdint>
#include <span>

namespace groundcount::gis {

/// What a draw of random sites reads of the book.
struct DrawGround {
    const book::JobRow& job;
    std::span<const book::AlignmentRow> lines;
    std::span<const book::ObstacleRow> obstacles;
    const method::RuleSet& rules;  ///< clearance.vertical_face, clearance.vehicles, clearance.other_gauges
};

/// How sites are drawn: along a lot given by stations in equal sublots, `sites` parted evenly among them; over an area at once.
struct LotDrawPlan {
    int sites = 0;           ///< 1 to 100 for each sublot; a multiple of the lot's sublots
    Length edge;             ///< strip along each edge where nothing is tested, at least 0
    std::uint64_t seed = 0;
};

/// Draws random sites for a lift of a lot and writes the body of a `draw` record: each site and each rejected draw with its
/// random numbers, station, offset and grid place, so that anyone can repeat it from the seed. A draw inside an edge strip, or
/// nearer to an obstacle than its clearance (its radius and uncertainty added), is rejected and both numbers are drawn anew.
/// Obstacle kinds: vehicle and gauge keep their own clearance, every other that of a vertical face.
/// @param lotLift id of the lift
/// @error Refused: as method::drawInStrip, method::drawInArea and lotGround; sites that the sublots cannot share; a site of an
///   area that has no station on the job's line.
/// @source [D3665-SCOPE], [LA-S605], [SK-STP107]; clearances are the rule set's
Result<book::Body> drawLot(const book::LotRow& lot, const std::string& lotLift, const DrawGround& ground, const LotDrawPlan& plan);

}  // namespace groundcount::gis
