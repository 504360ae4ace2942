#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

/// What the review looks at in each test: a fifth of a whole row. Private to it.
namespace groundcount::book {

inline constexpr std::uint32_t kNoTest = 0xFFFFFFFF;

/// Keeps each text once and gives its place.
class TextPool {
public:
    /// @param guess the place of a text that is likely the same one
    std::uint32_t place(std::string_view text, std::uint32_t guess = 0);
    const std::string& operator[](std::uint32_t place) const { return m_texts[place]; }
    std::size_t size() const { return m_texts.size(); }

private:
    std::vector<std::string> m_texts;
    std::unordered_map<std::string, std::uint32_t> m_places;
};

struct CheckedTest {
    std::string id, number, retestOf, startedAt, densityCount, moistureCount, overrides;
    std::string day;  ///< of the start, at the place
    std::uint32_t lot = 0, lift = 0, gauge = 0, person = 0, standardCount = 0;  ///< places in CheckedTests::names
    int fixes = 0;
    bool isByTape = false;
    TestState state = TestState::Open;
    double north = 0, east = 0;  ///< in the unit of the job's coordinate system
    std::optional<double> sigmaNorthM, sigmaEastM;
};

struct CheckedTests {
    std::vector<CheckedTest> rows;  ///< by start, then by id
    TextPool names;                 ///< ids of lots, lifts, gauges, persons; hashes of standard counts
    std::unordered_map<std::string, int> liftNumbers;  ///< by the lift's id
    /// The place of a test in `rows`; kNoTest for a subject that is no test.
    std::uint32_t find(std::string_view id) const;

    std::unordered_map<std::string_view, std::uint32_t> places;  ///< of the ids in `rows`, which own the texts
};

/// Reads what the review looks at. @error Unavailable when the book cannot be read.
Result<CheckedTests> checkedTests(const Store& store, double metresPerGridUnit);

}  // namespace groundcount::book
