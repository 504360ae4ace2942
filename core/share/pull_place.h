#pragma once

#include "share/exchange_job.h"

#include <cstdint>
#include <optional>
#include <span>

/// How far a pull read the server's numbers. Private to core/share.
namespace groundcount::share {

/// A range of the server's numbers that is read by itself, and the marks of how far it was: the number up to which it was read, and how many texts that were.
struct Range {
    std::int64_t first, last;
    const char *pulled, *seen;
};

/// Two of them, since a member may put a text under the last number there is: what honest devices add comes before it, and is found there without reading all again.
std::span<const Range> ranges();

/// How far a range was read; one below its first number when it was not.
struct Place {
    std::optional<std::int64_t> pulled;
    std::int64_t seen = 0;
    bool isAtEnd(const Range& range) const { return pulled && *pulled >= range.last; }
    std::int64_t next(const Range& range) const { return pulled ? *pulled + 1 : range.first; }
};

/// @error of the book
Result<Place> placeIn(const book::Store& store, const Job& job, const Range& range);
Result<void> note(book::Store& store, const Job& job, const Range& range, const Place& place);

/// Whether a text was put behind the mark: the server has not so many up to it as were read. @error of book or server
Result<bool> hasMissed(const book::Store& store, Job& job, const Range& range);

}  // namespace groundcount::share
