#pragma once

#include "book/state.h"
#include "method/quantity.h"
#include "method/site/heading.h"

#include <optional>
#include <span>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace groundcount::book {

/// Failing tests and the retests that answer them. A failure is settled when a retest of it at the same lift, and no
/// farther from it than the rules allow, has a verdict: a passing one closes it; a failing one carries it on and is itself
/// the open one, so that a chain counts once. @source [SJC-CQA], [CO-EMB]; same place and lift [DESIGN]
class RetestChains {
public:
    /// @param tests of the whole book or of whole lots; they must outlive this object
    /// @param metresPerGridUnit of the tests' coordinates, above 0 @param farthest retest from its failing test; a retest
    ///   whose place or parent's place is not known is taken at its word
    RetestChains(std::span<const TestRow> tests, double metresPerGridUnit, Length farthest);
    RetestChains(std::vector<const TestRow*> tests, double metresPerGridUnit, Length farthest);

    bool isOpen(const TestRow& test) const;
    /// The passing retest that ends the chain that begins at a failed test; nullptr while it is open or for another state.
    const TestRow* closedBy(const TestRow& test) const;
    /// Every open failure, in the order of the tests.
    std::vector<const TestRow*> open() const;
    /// Distance of a retest from the test that it names; nothing when one place is not known or there is no such test.
    std::optional<Length> distanceToParent(const TestRow& retest) const;

private:
    const TestRow* answerTo(const TestRow& test) const;
    std::vector<const TestRow*> m_tests;
    std::unordered_map<std::string_view, const TestRow*> m_byId;
    std::unordered_multimap<std::string_view, const TestRow*> m_retestsOf;
    double m_metresPerGridUnit;
    Length m_farthest;
};

/// Distance of two tests in the grid; nothing when the place of one is not known. @tparam Test has `north` and `east` in grid units, both 0
///   when the place is not known @param metresPerGridUnit above 0
template <class Test>
std::optional<Length> distanceBetween(const Test& a, const Test& b, double metresPerGridUnit)
{
    if ((a.north == 0 && a.east == 0) || (b.north == 0 && b.east == 0))
        return std::nullopt;
    const auto way = method::headingOf({Length::metres((a.north - b.north) * metresPerGridUnit), Length::metres((a.east - b.east) * metresPerGridUnit)});
    return way ? std::optional(way->distance) : std::nullopt;
}

}  // namespace groundcount::book
