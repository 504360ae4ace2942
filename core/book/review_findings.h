#pragma once

#include "book/review.h"
#include "book/store.h"
#include "method/quantity.h"

#include <array>
#include <span>
#include <string>
#include <unordered_map>

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
    static constexpr std::size_t kKinds = 10;
    explicit Findings(std::span<const TestRow> tests);
    /// Adds a sentence to a test's line of a kind; a test that is void or unknown is left out.
    void add(const std::string& test, Unusual kind, const std::string& sentence);
    const TestRow* test(const std::string& id) const;
    std::vector<UnusualLine> lines() const;

private:
    struct Of {
        const TestRow* test = nullptr;
        std::array<std::string, kKinds> what;
    };
    std::vector<Of> m_all;
    std::unordered_map<std::string, std::size_t> m_at;
};

/// Overrides, positions, places of retests, counts given twice: from the rows alone.
void reviewRows(std::span<const TestRow> tests, double metresPerGridUnit, const ReviewRules& rules, Findings& into);
/// Papers and standard counts in force at each test.
Result<void> reviewPapers(const Store& store, std::span<const TestRow> tests, const ReviewRules& rules, Findings& into);
/// Amendments after a verdict and times of sealing.
Result<void> reviewSealing(const Store& store, Findings& into);
/// Bodies of readings and clearances.
Result<void> reviewBodies(const Store& store, Findings& into);

}  // namespace groundcount::book
