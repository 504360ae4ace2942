#pragma once

#include "book/store.h"
#include "method/error.h"

#include <string>
#include <vector>

namespace groundcount::book {

/// Where a hand-over comes from, so that it can be held against the book.
struct Provenance {
    std::string text;      ///< JSON, docs/geopackage-layers.md "Provenance"; the same records give the same text
    std::string latestAt;  ///< time of the latest record, UTC; 1970-01-01T00:00:00.000Z in an empty book
};

/// Book, job, number and digest of the records, head of each device's chain, version of the core, and every rule set that
/// judged a test or that the job names, whole.
/// digest = BLAKE2b-256 over the hashes of all records, 64 lower-case hexadecimal digits each, in ascending order without a separator.
/// @error Unavailable when the book cannot be read. @source RFC 7693
Result<Provenance> provenanceOf(const Store& store);

/// A photo that speaks today: neither amended nor void, nor is the thing it shows.
struct PhotoRow {
    std::string subject;  ///< UUID of the test or other thing that it shows
    std::string blob, mediaType, name, hash, at;
};

/// By time, then hash. @error Unavailable when the book cannot be read.
Result<std::vector<PhotoRow>> photosOf(const Store& store);

}  // namespace groundcount::book
