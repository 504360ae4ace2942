#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

/// What a map and a long list of tests show, column by column: a book of a million tests stands in some hundred bytes each.
namespace groundcount::book {

/// Row `i` of every column is one test; tests stand by start, earliest first.
struct TestColumns {
    std::vector<std::array<std::uint8_t, 16>> id;  ///< UUID
    std::vector<std::string> number, compactionPct;  ///< percent compaction as sealed, "" without a verdict
    std::vector<std::int64_t> startedMs;           ///< UTC, milliseconds since 1970-01-01
    std::vector<double> north, east;               ///< in the unit of the job's coordinate system; NaN when the place is not recorded
    std::vector<std::uint32_t> lot, lift, person;  ///< places in `subjects`
    std::vector<TestState> state;
    std::vector<TestPurpose> purpose;
    std::vector<std::uint8_t> conflict;            ///< 1 for two amendments of one record
    std::vector<std::string> subjects;             ///< distinct lots, lifts and persons (UUID)

    std::size_t size() const { return id.size(); }
    std::string idText(std::size_t i) const;       ///< 8-4-4-4-12
};

/// Reads the columns of every test. @param ranges of rows that are read side by side, each by a connection of its own, all at one moment; 0 = one for
///   each core when the book is long @error Unavailable when the book cannot be read.
Result<TestColumns> testColumns(const Store& store, unsigned ranges = 0);

}  // namespace groundcount::book
