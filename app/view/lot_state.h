#pragma once

#include "view/session.h"

#include <string_view>
#include <unordered_map>
#include <vector>

namespace groundcount::view {

/// What one lot and lift has and lacks, counted from the rows.
struct LiftState {
    const book::LiftRow* lift = nullptr;
    int made = 0;      ///< random tests with a verdict
    int required = 0;  ///< the lot's tests per lift
    std::vector<const book::TestRow*> tests;      ///< not void, in order
    std::vector<const book::SiteRow*> owed;       ///< drawn sites without a test
    std::vector<const book::TestRow*> openFailures;
};

/// The tests of every lift that are not void, sorted out in one pass over all of them.
class TestsByLift {
public:
    /// @param all must outlive this object
    explicit TestsByLift(const Snapshot& all);
    const std::vector<const book::TestRow*>& of(const book::LiftRow& lift) const;

private:
    std::unordered_map<std::string_view, std::vector<const book::TestRow*>> m_tests;
    std::vector<const book::TestRow*> m_none;
};

/// The lift's number for each of the columns' subjects; 0 for one that is no lift.
std::vector<int> liftNumbers(const Snapshot& all, const book::TestColumns& columns);

/// Open failures are those of book::RetestChains within the rule set's distance.
LiftState liftState(const Snapshot& all, const TestsByLift& tests, const book::LotRow& lot, const book::LiftRow& lift);
/// Lifts of a lot, newest first.
std::vector<const book::LiftRow*> liftsOf(const Snapshot& all, const book::LotRow& lot);
/// The sublot (from 0) that holds a station; -1 when the lot has no station range or the station lies outside.
int sublotOf(const book::LotRow& lot, double stationFt);
/// Station at which a sublot begins (index = sublots gives the end).
double sublotBegin(const book::LotRow& lot, int sublot);

}  // namespace groundcount::view
