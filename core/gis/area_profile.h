#pragma once

#include "book/lot_chart.h"
#include "book/state.h"

#include <span>

namespace groundcount::gis {

/// The profile of a lot that is given by its corners: lifts against the distance along its longest side.
///   distance of a place P = (P - P0) . u, u = direction of the longest side of the outer ring, P0 = its corner with the least (P . u)
/// Azimuth of u from grid north, degrees, 0 <= azimuth < 180, so that the sides of a rectangle do not depend on where its ring begins.
/// @param lifts, tests of any lot; those of `lot` are taken, tests without a place and void ones left out
/// @return distances in the profile's `unit`; empty (no lots) for a lot without corners @source [DESIGN]
book::LineProfile areaProfile(const book::LotRow& lot, const book::JobRow& job, std::span<const book::LiftRow> lifts, std::span<const book::TestRow> tests);

}  // namespace groundcount::gis
