#pragma once

#include "book/test_columns.h"

/// One pass over a range of the table of tests. Private to core/book.
namespace groundcount::book {

/// Runs `act` on each column of `c` that stands by tests.
template <class Columns, class Act>
void eachColumn(Columns& c, const Act& act)
{
    const auto each = [&act](auto&... columns) { (act(columns), ...); };
    each(c.id, c.number, c.compactionPct, c.startedMs, c.north, c.east, c.lot, c.lift, c.person, c.state, c.purpose, c.conflict);
}

/// Reads the tests of rows `from` to `to`, both included, in the order of the table.
/// @param metresPerGridUnit of the job: other units are turned into it @error Unavailable when the book cannot be read.
Result<void> readRange(const Store& store, std::int64_t from, std::int64_t to, double metresPerGridUnit, TestColumns& into);

}  // namespace groundcount::book
