#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

namespace groundcount::book {

/// Content of a record. Readings are decimal text as typed with the unit in the key; see docs/record-format.md.
using Body = nlohmann::json;

/// What a person is about to seal; the store adds device, running number, link, hash and signature.
struct Entry {
    std::string kind;     ///< one of docs/record-format.md, "Kinds"; unknown kinds pass through
    std::string subject;  ///< UUID of the thing it speaks of, lower case
    std::string amends;   ///< hash of the record it replaces, or empty
    std::string reason;   ///< why; required with `amends` and for kind `void`
    std::string by;       ///< UUID of the person
    std::string at;       ///< UTC "2026-06-09T15:41:07.250Z", always three decimals
    int offsetMinutes = 0;  ///< local time minus UTC, -840 to 840
    Body body = Body::object();
};

/// A sealed record: an Entry with its place in the device's chain. Never updated, never deleted.
struct Record : Entry {
    std::string book;    ///< UUID of the book it was sealed in; empty in a book of format 1
    std::string device;  ///< Ed25519 public key, 64 hex digits
    std::int64_t seq = 0;  ///< 1, 2, 3 ... per device and book
    std::string prev;    ///< hash of the device's previous record in this book, empty for seq 1
    std::string hash;    ///< BLAKE2b-256 of canonicalText(), 64 hex digits
    std::string signature;  ///< Ed25519 by `device` over the 32 hash bytes, 128 hex digits
};

}  // namespace groundcount::book
