#pragma once

#include "book/store.h"
#include "method/error.h"

#include <string>
#include <vector>

/// Reading a whole book against its own seals.
namespace groundcount::book {

enum class Finding {
    Unreadable,       ///< a row or page cannot be read
    Content,          ///< envelope, hash or signature does not hold
    Form,             ///< a body breaks the form of its kind
    Gap,              ///< a running number is missing in a device's chain
    Fork,             ///< one device has two records of one number in this book: a copy was written to on its own
    Link,             ///< a record's link is not the hash of the one before it
    Retired,          ///< sealed by a retired key beyond the number that it stands for
    Amends,           ///< amends a record that is not here or of another kind or subject
    Verdict,          ///< today's core gives another verdict, or cannot give one
    Blob,             ///< a content is missing or no longer gives its hash
    Derived           ///< the derived tables are not what the records say
};

const char* word(Finding finding);

struct AuditLine {
    Finding finding = Finding::Content;
    std::string what;  ///< one sentence that names the record
};

struct AuditReport {
    std::size_t records = 0;
    std::size_t devices = 0;
    std::size_t verdicts = 0;
    std::vector<AuditLine> lines;
    bool isClean() const { return lines.empty(); }
};

/// Checks the file's pages and indexes, then every record: envelope, hash, signature, body, place in its device's chain, amended record; recomputes every
/// verdict that is not voided; reads every content; folds every subject again and compares.
/// A chain whose newest records were cut off cannot be told from a shorter one: keep a second copy, or note the last hash.
/// @error Unavailable when the book cannot be read at all.
Result<AuditReport> check(const Store& store);

/// One change of a subject, in order: who, when, what, why.
struct HistoryLine {
    std::string hash, kind, by, byName, at;
    int offsetMinutes = 0;
    std::string device;
    std::int64_t seq = 0;
    std::string amends, reason;
    std::vector<std::string> changes;  ///< "minimum_pct: 95 -> 90" against the amended record; empty for a first record
    bool isLive = false;
};

/// Everything sealed about a subject, oldest first. @error Refused when the book has no record of it.
Result<std::vector<HistoryLine>> history(const Store& store, const std::string& subject);

}  // namespace groundcount::book
