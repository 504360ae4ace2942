#pragma once

#include "map/map_scene.h"
#include "view/row_list.h"
#include "view/session.h"

#include <atomic>
#include <vector>

namespace groundcount::view {

/// What the ground of a lift's tests is worked out of, taken from the pages' rows so that another thread can do it.
struct CoverageAsk {
    struct Part {
        book::LotRow lot;
        book::LiftRow lift;
        std::vector<book::TestRow> tests;  ///< of the lift; only what speaks for ground is filled in
    };
    book::JobRow job;
    Result<std::vector<book::AlignmentRow>> lines;
    JobLines along;  ///< what the stations of a patch are told by
    map::MapVertex origin;                  ///< of the scene, job's grid
    int liftNumber = 0;
    std::vector<Part> parts;
};

struct CoverageShown {
    std::vector<map::MapArea> areas;
    std::vector<map::MapRing> rings;
    std::vector<Row> rows;  ///< for each lot with that lift: passed, failed, untested and the patch, or why there are no figures
};

/// A copy with only what speaks for ground: a programme's rows are many and long.
book::TestRow forGround(const book::TestRow& test);

/// One walk over the tests. On the GUI thread.
CoverageAsk askCoverage(Session& session, int liftNumber, map::MapVertex origin);

/// What ground the tests of a lift stand for: the cell of each test, failing ones hatched, lots without a test stippled, and the
/// largest untested patch as a ring. On any thread; ends early, with nothing, when `stop` is set.
CoverageShown workOut(const CoverageAsk& ask, const std::atomic<bool>& stop);

}  // namespace groundcount::view
