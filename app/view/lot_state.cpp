#include "view/lot_state.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {

bool isOpenFailure(const book::TestRow& test, const std::vector<book::TestRow>& tests)
{
    if (test.state != book::TestState::Fail)
        return false;
    for (const auto& other : tests) {
        if (other.retestOf != test.id || other.lift != test.lift)
            continue;
        // A failed retest carries the failure on; it is open itself, so the first of the chain is not counted twice.
        if (other.state == book::TestState::Pass || other.state == book::TestState::Fail)
            return false;
    }
    return true;
}

LiftState liftState(const Snapshot& all, const book::LotRow& lot, const book::LiftRow& lift)
{
    LiftState state;
    state.lift = &lift;
    state.required = lot.testsPerLift;
    for (const auto& test : all.tests) {
        if (test.lift != lift.id || test.state == book::TestState::Void)
            continue;
        state.tests.push_back(&test);
        if (test.purpose == book::TestPurpose::Random && test.state != book::TestState::Open)
            ++state.made;
        if (isOpenFailure(test, all.tests))
            state.openFailures.push_back(&test);
    }
    for (const auto& site : all.sites) {
        if (site.lift == lift.id && site.testId.empty())
            state.owed.push_back(&site);
    }
    return state;
}

std::vector<const book::LiftRow*> liftsOf(const Snapshot& all, const book::LotRow& lot)
{
    std::vector<const book::LiftRow*> lifts;
    for (const auto& lift : all.lifts) {
        if (lift.lot == lot.id)
            lifts.push_back(&lift);
    }
    std::sort(lifts.begin(), lifts.end(), [](const auto* a, const auto* b) { return a->number > b->number; });
    return lifts;
}

double sublotBegin(const book::LotRow& lot, int sublot)
{
    const double begin = lot.beginStationFt.value_or(0);
    const double length = lot.endStationFt.value_or(0) - begin;
    return begin + length * sublot / std::max(1, lot.sublots);
}

int sublotOf(const book::LotRow& lot, double stationFt)
{
    if (!lot.beginStationFt || !lot.endStationFt || !(stationFt >= *lot.beginStationFt && stationFt <= *lot.endStationFt))
        return -1;
    for (int i = std::max(1, lot.sublots) - 1; i > 0; --i) {
        if (stationFt >= sublotBegin(lot, i))
            return i;
    }
    return 0;
}

}  // namespace groundcount::view
