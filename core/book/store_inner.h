#pragma once

#include "book/database.h"
#include "book/store.h"

#include <set>

/// What a Store holds, and the statements that its parts share. Private to core/book.
namespace groundcount::book {

inline constexpr int kApplicationId = 0x47434642;  // "GCFB"
inline constexpr int kFormat = 1;                  // user_version

/// The record columns in the order of `recordOf`.
inline constexpr const char* kRecordColumns =
    "hash, kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature";

/// Reads a record out of columns `first` and up. @error Refused when its body is not JSON.
Result<Record> recordOf(const Statement& row, int first);

struct Store::Inner {
    Database db;
    std::string path;
    std::string damage;
    bool readOnly = false;
    std::optional<DeviceKey> key;

    Result<Record> find(const std::string& hash);
    Result<bool> has(const std::string& hash);
    Result<void> insert(const Record& record);
    Result<std::vector<Record>> ofSubject(const std::string& subject);
    Result<void> fold(const std::set<std::string>& subjects);
    Result<void> writable() const;
    Result<Record> sealOne(const Entry& entry);
};

/// Makes or checks the tables of an open file. Store-opening parts.
Result<void> makeTables(Database& db);
Result<void> checkFormat(Database& db, const std::string& path);
/// "" or the first broken record among the newest `most`.
std::string firstDamage(Database& db, std::int64_t most);

}  // namespace groundcount::book
