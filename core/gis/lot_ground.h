#pragma once

#include "book/state.h"
#include "gis/coverage.h"
#include "method/accept/draw.h"
#include "method/error.h"
#include "method/site/alignment.h"

#include <span>
#include <string>
#include <vector>

namespace groundcount::gis {

/// Chords of curved edges stray at most this far from the curve.
inline constexpr Length kEdgeSagitta = Length::metres(0.005);

/// The ground between two stations and two offsets of a line: left edge forward, right edge back, curves in chords that stray
/// at most `kEdgeSagitta`.
/// @param line in units of `gridUnit` @param beginStation, endStation in its unit, each naming one place, begin before end
/// @param leftOffset, rightOffset distances from the line, both at least 0 and not both 0
/// @error Refused: a station off the line or naming two places, begin not before end, no width, an edge that folds over itself
///   because an offset is wider than the radius of a curve.
/// @source offsets square to the line [SK-STP107]; chords [COMPUTED]
Result<method::PlanArea> stripGround(const method::Alignment& line, double beginStation, double endStation, Length leftOffset,
                                     Length rightOffset, Length gridUnit);

/// The line that a lot's stations count along: the one it names, else the job's only one.
/// @error Refused: no such line, or none named among several; another unit than the grid's; as `alignmentFrom`.
Result<method::Alignment> lotLine(const book::LotRow& lot, const book::JobRow& job, std::span<const book::AlignmentRow> lines);

/// A lot's ground in the job's grid: its sealed corners, else the strip between its stations.
/// @param lines the job's alignments; a lot by stations that names none needs exactly one
/// @error Refused: neither corners nor stations with offsets, another alignment unit than the grid's, and as `stripGround`.
Result<method::PlanArea> lotGround(const book::LotRow& lot, const book::JobRow& job, std::span<const book::AlignmentRow> lines);

/// The sealed path of an obstacle in the job's grid; its place alone when it has none.
/// @error Refused: a text that is not such a list.
Result<std::vector<method::PlanPoint>> obstaclePath(const book::ObstacleRow& obstacle, const book::JobRow& job);

/// The tests that speak for a lift's ground, in the order of their verdicts: those that pass or fail and are not void. A failed
/// test whose retest has a verdict no longer speaks. A test without a place is left out. @source retest chain [SJC-CQA], [DESIGN]
std::vector<CoverageSite> speakingTests(std::span<const book::TestRow> tests, const std::string& lift);

/// Coverage of one lift by the rows of a book; the frequency is the lot's tests per lift.
/// @param tests of any lift; those of `lift` are taken
/// @error as `lotGround` and `coverageOf`; Refused for a lot whose tests per lift are not sealed as 1 or more.
Result<Coverage> liftCoverage(const book::LotRow& lot, const book::LiftRow& lift, const book::JobRow& job,
                              std::span<const book::AlignmentRow> lines, std::span<const book::TestRow> tests);

}  // namespace groundcount::gis
