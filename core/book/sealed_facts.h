#pragma once

#include "book/review_tests.h"
#include "book/store.h"
#include "method/error.h"

#include <cstdint>
#include <string>
#include <vector>

/// What the review needs of every record, gathered in one pass over the book. Private to it.
namespace groundcount::book {

struct SealedFacts {
    /// One record of the book.
    struct Sealed {
        std::int64_t seq = 0, atMs = 0;
        std::uint32_t test = kNoTest;
        std::uint16_t device = 0, kind = 0;  ///< places in `words`
        bool isPart = false;                 ///< of the evidence of a test, and no amendment
    };
    struct Verdict {  ///< not provisional
        std::int64_t seq = 0;
        std::uint32_t test = kNoTest;
        std::uint16_t device = 0;
    };
    struct Amended {  ///< a record that a verdict rests on
        std::uint32_t test = kNoTest;
        std::string kind, at;  ///< of the amendment
    };
    struct Reading {  ///< that nothing amends
        std::int64_t atMs = 0, seq = 0, number = 0, seconds = 0;
        std::uint32_t test = kNoTest;
        bool isCounted = false;
        std::string figures;
    };
    struct Clearance {  ///< that nothing amends
        std::int64_t atMs = 0, seq = 0;
        std::uint32_t test = kNoTest;
        std::vector<std::string> sentences;  ///< of the hazards that are not kept clear of
    };
    std::vector<Sealed> sealed;  ///< in the order of arrival, like the others
    std::vector<Verdict> verdicts;
    std::vector<Amended> amended;
    std::vector<Reading> readings;
    std::vector<Clearance> clearances;
    TextPool words;
};

/// Gathers what the review needs. @param ranges of rows that are read side by side, each by a connection of its own; 0 = one for each
///   core when the book is long @error Unavailable when the book cannot be read.
Result<SealedFacts> sealedFacts(const Store& store, const CheckedTests& tests, unsigned ranges = 0);

}  // namespace groundcount::book
