#pragma once

#include "map/map_scene.h"
#include "view/row_list.h"
#include "view/session.h"

#include <atomic>
#include <string>
#include <vector>

namespace groundcount::view {

/// What speaks for ground of a test: a programme has many of them, and a whole row is eight times as long.
struct GroundTest {
    explicit GroundTest(const book::TestRow& test);
    std::string id, number, lift, retestOf, verdictAt;
    book::TestState state;
    double north, east;  ///< job's grid
};

/// Rows of which only that is filled in.
std::vector<book::TestRow> rowsOf(const std::vector<GroundTest>& tests);

/// What the ground of a lift's tests is worked out of, taken from the pages' rows so that another thread can do it.
struct CoverageAsk {
    struct Part {
        book::LotRow lot;
        book::LiftRow lift;
        std::vector<GroundTest> tests;  ///< of the lift
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

/// One walk over the tests. On the GUI thread.
CoverageAsk askCoverage(Session& session, int liftNumber, map::MapVertex origin);

/// What ground the tests of a lift stand for: the cell of each test, failing ones hatched, lots without a test stippled, and the
/// largest untested patch as a ring. On any thread; ends early, with nothing, when `stop` is set.
CoverageShown workOut(const CoverageAsk& ask, const std::atomic<bool>& stop);

}  // namespace groundcount::view
