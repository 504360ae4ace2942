#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <atomic>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

/// Tests of long books, a few in memory at a time.
namespace groundcount::book {

/// Gives every test in the order of numberBefore, of one number by id; ends with the first error, also one of the sink, which must
/// not ask the same store for tests.
/// @error Unavailable when the book cannot be read.
Result<void> eachTestByNumber(const Store& store, const std::function<Result<void>(const TestRow&)>& sink);

/// Whether the book holds more tests than `most`; counts no further. @error Unavailable when the book cannot be read.
Result<bool> hasMoreTests(const Store& store, std::int64_t most);

/// Every test, as StateQuery::tests; ends early when `stop` is set. @error Unavailable when the book cannot be read, or was stopped.
Result<std::vector<TestRow>> allTests(const Store& store, const std::atomic<bool>& stop);

/// The order of StateQuery::tests: by start, then by id.
inline bool startsBefore(const TestRow& a, const TestRow& b)
{
    return a.startedAt != b.startedAt ? a.startedAt < b.startedAt : a.id < b.id;
}

/// Tests of one lot by start, earliest first, found by the index of lots. @error Unavailable when the book cannot be read.
Result<std::vector<TestRow>> testsOfLot(const Store& store, const std::string& lot);

/// The tests with these ids and their retests, which show the first one's number; a test may stand in it twice.
/// @error Unavailable when the book cannot be read.
Result<std::vector<TestRow>> testsTouchedBy(const Store& store, const std::vector<std::string>& ids);

/// The sites of one draw (hash of its record) as StateQuery::sites has them. @error Unavailable when the book cannot be read.
Result<std::vector<SiteRow>> sitesOfDraw(const Store& store, const std::string& draw);

}  // namespace groundcount::book
