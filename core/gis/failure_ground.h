#pragma once

#include "gis/lot_ground.h"

#include <map>
#include <string>

namespace groundcount::gis {

/// The ground that each failing test of a lift stands for, by the test's number: its cell within its share of the coverage.
/// A failure whose retest has a verdict no longer speaks and is not there; nor is one that lies off the lot.
/// @return empty where the lift has no coverage (no area, no frequency) @source as `coverageOf`
std::map<std::string, Surface> failureGround(const book::LotRow& lot, const book::LiftRow& lift, const book::JobRow& job,
                                             std::span<const book::AlignmentRow> lines, std::span<const book::TestRow> tests);

}  // namespace groundcount::gis
