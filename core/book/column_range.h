#pragma once

#include "book/test_columns.h"

#include <cstdint>
#include <tuple>

/// One pass over a range of the table of tests. Private to core/book.
namespace groundcount::book {

/// The columns that stand by tests; the first half is about as long as the second, so that two threads can share them.
inline constexpr std::tuple kColumns{&TestColumns::id, &TestColumns::number, &TestColumns::north, &TestColumns::lot, &TestColumns::state, &TestColumns::purpose,
                                     &TestColumns::compactionPct, &TestColumns::startedMs, &TestColumns::east, &TestColumns::lift, &TestColumns::person, &TestColumns::conflict};

/// Runs `act` on a pointer to each column.
template <class Act>
void eachColumn(const Act& act)
{
    std::apply([&act](auto... columns) { (act(columns), ...); }, kColumns);
}

/// Reads the tests of rows `from` to `to`, both included, in the order of the table.
/// @param rows how many there may be, a hint
/// @param metresPerGridUnit of the job: other units are turned into it @error Unavailable when the book cannot be read.
Result<void> readRange(const Store& store, std::int64_t from, std::int64_t to, std::int64_t rows, double metresPerGridUnit, TestColumns& into);

}  // namespace groundcount::book
