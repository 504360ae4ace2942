#pragma once

#include "book/review.h"
#include "book/review_tests.h"
#include "book/sealed_facts.h"
#include "method/quantity.h"

#include <map>
#include <string>
#include <unordered_map>
#include <utility>

/// The parts of the review, private to it: each looks at one matter and adds what it finds.
namespace groundcount::book {

/// Settings of the review, read once.
struct ReviewRules {
    double standardDensityPct = 0, standardMoisturePct = 0, standardAgeHours = 0;
    double fixes = 0;
    Length accuracy, retestDistance;
};

/// What was found about each test that is not void.
class Findings {
public:
    /// @param tests must outlive this object
    explicit Findings(const CheckedTests& tests);
    /// Adds a sentence to a test's line of a kind; kNoTest and a test that is void are left out.
    void add(std::uint32_t test, Unusual kind, const std::string& sentence);
    std::vector<UnusualLine> lines() const;

private:
    const CheckedTests& m_tests;
    std::map<std::pair<std::uint32_t, Unusual>, std::string> m_found;
};

/// Overrides, positions, places of retests, counts given twice: from the rows alone.
void reviewRows(const CheckedTests& tests, double metresPerGridUnit, const ReviewRules& rules, Findings& into);
/// Papers and standard counts in force at each test.
Result<void> reviewPapers(const Store& store, const CheckedTests& tests, const ReviewRules& rules, Findings& into);
/// Amendments after a verdict and times of sealing.
void reviewSealing(const SealedFacts& facts, Findings& into);
/// Clearances and readings that nothing amends.
void reviewBodies(const SealedFacts& facts, const CheckedTests& tests, Findings& into);

}  // namespace groundcount::book
