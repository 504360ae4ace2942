#include "book/retest_chain.h"

#include "method/limit.h"

namespace groundcount::book {

namespace {

std::vector<const TestRow*> pointersTo(std::span<const TestRow> tests)
{
    std::vector<const TestRow*> pointers;
    pointers.reserve(tests.size());
    for (const TestRow& t : tests)
        pointers.push_back(&t);
    return pointers;
}

}  // namespace

RetestChains::RetestChains(std::span<const TestRow> tests, double metresPerGridUnit, Length farthest)
    : RetestChains(pointersTo(tests), metresPerGridUnit, farthest)
{
}

RetestChains::RetestChains(std::vector<const TestRow*> tests, double metresPerGridUnit, Length farthest)
    : m_tests(std::move(tests)), m_metresPerGridUnit(metresPerGridUnit), m_farthest(farthest)
{
    for (const TestRow* t : m_tests) {
        m_byId.emplace(t->id, t);
        if (!t->retestOf.empty())
            m_retestsOf.emplace(t->retestOf, t);
    }
}

std::optional<Length> RetestChains::distanceToParent(const TestRow& retest) const
{
    const auto parent = m_byId.find(retest.retestOf);
    return parent == m_byId.end() ? std::nullopt : distanceBetween(retest, *parent->second, m_metresPerGridUnit);
}

const TestRow* RetestChains::answerTo(const TestRow& test) const
{
    const TestRow* answer = nullptr;
    const auto [first, last] = m_retestsOf.equal_range(test.id);
    for (auto it = first; it != last; ++it) {
        const TestRow& retest = *it->second;
        if (retest.lift != test.lift || (retest.state != TestState::Pass && retest.state != TestState::Fail))
            continue;
        if (const auto away = distanceToParent(retest); away && !atMost(away->metres(), m_farthest.metres()))
            continue;
        // the latest word counts; two at one instant are told apart by their ids
        if (!answer || retest.startedAt > answer->startedAt || (retest.startedAt == answer->startedAt && retest.id > answer->id))
            answer = &retest;
    }
    return answer;
}

bool RetestChains::isOpen(const TestRow& test) const
{
    return test.state == TestState::Fail && !answerTo(test);
}

const TestRow* RetestChains::closedBy(const TestRow& test) const
{
    const TestRow* at = &test;
    // a retest that names itself or its own retest, from a damaged book, ends the walk
    for (std::size_t steps = 0; at->state == TestState::Fail && steps <= m_tests.size(); ++steps) {
        at = answerTo(*at);
        if (!at)
            return nullptr;
    }
    return at != &test && at->state == TestState::Pass ? at : nullptr;
}

std::vector<const TestRow*> RetestChains::open() const
{
    std::vector<const TestRow*> found;
    for (const TestRow* t : m_tests)
        if (isOpen(*t))
            found.push_back(t);
    return found;
}

}  // namespace groundcount::book
