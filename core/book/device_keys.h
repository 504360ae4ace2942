#pragma once

#include "book/store.h"
#include "method/error.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// Device keys in a book, and those that the book itself retires: a lost phone, a key that may have been copied.
/// docs/record-format.md, "Retired keys".
namespace groundcount::book {

/// What a live `retired-key` record says of one key.
struct Retirement {
    std::int64_t last = 0;  ///< its records up to this number stand
    std::string by, at, why, hash;
};

/// "That key was retired on 2026-06-09 (phone lost): its records stand up to number 12."
std::string sentence(const Retirement& retirement);

/// Retired keys by device; of several retirements of one key the one with the smallest number speaks. A retired key cannot
/// take its own retirement back: its voids and amendments beyond the number do not count.
using RetiredKeys = std::map<std::string, Retirement, std::less<>>;
Result<RetiredKeys> retiredKeys(const Store& store);

/// A device that sealed something in this book.
struct KeyInUse {
    std::string device;
    std::int64_t records = 0, last = 0;  ///< last: greatest number
    std::string firstAt, lastAt;         ///< UTC
    std::optional<Retirement> retirement;
};

/// By key.
Result<std::vector<KeyInUse>> keysInUse(const Store& store);

}  // namespace groundcount::book
