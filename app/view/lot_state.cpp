#include "view/lot_state.h"

#include "book/retest_chain.h"
#include "book/test_columns.h"
#include "method/accept/sublot.h"

#include <algorithm>

namespace groundcount::view {

TestsByLift::TestsByLift(const Snapshot& all)
{
    for (const auto& lift : all.lifts)
        m_tests[lift.id];
    auto lift = m_tests.end();
    for (const auto& test : all.tests) {
        // tests of a lift mostly stand together
        if (lift == m_tests.end() || lift->first != test.lift)
            lift = m_tests.find(test.lift);
        if (lift != m_tests.end() && test.state != book::TestState::Void)
            lift->second.push_back(&test);
    }
}

std::vector<int> liftNumbers(const Snapshot& all, const book::TestColumns& columns)
{
    std::unordered_map<std::string_view, int> numbers;
    for (const auto& lift : all.lifts)
        numbers.emplace(lift.id, lift.number);
    std::vector<int> ofSubjects;
    for (const auto& subject : columns.subjects) {
        const auto found = numbers.find(subject);
        ofSubjects.push_back(found == numbers.end() ? 0 : found->second);
    }
    return ofSubjects;
}

const std::vector<const book::TestRow*>& TestsByLift::of(const book::LiftRow& lift) const
{
    const auto found = m_tests.find(lift.id);
    return found == m_tests.end() ? m_none : found->second;
}

LiftState liftState(const Snapshot& all, const TestsByLift& tests, const book::LotRow& lot, const book::LiftRow& lift)
{
    LiftState state;
    state.lift = &lift;
    state.required = lot.testsPerLift;
    const auto& ofLift = tests.of(lift);
    const book::RetestChains chains(ofLift, all.job.metresPerGridUnit, all.retestDistance);
    state.openFailures = chains.open();
    for (const auto* one : ofLift) {
        const auto& test = *one;
        state.tests.push_back(&test);
        if (test.purpose == book::TestPurpose::Random && test.state != book::TestState::Open)
            ++state.made;
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
    return method::sublotBegin({lot.beginStationFt.value_or(0), lot.endStationFt.value_or(0)}, std::max(1, lot.sublots), sublot).value_or(lot.beginStationFt.value_or(0));
}

int sublotOf(const book::LotRow& lot, double stationFt)
{
    if (!lot.beginStationFt || !lot.endStationFt)
        return -1;
    return method::sublotAt({*lot.beginStationFt, *lot.endStationFt}, std::max(1, lot.sublots), stationFt).value_or(-1);
}

}  // namespace groundcount::view
