#pragma once

#include "book/database.h"
#include "book/derived.h"
#include "book/store.h"

#include <set>

/// What a Store holds, and the statements that its parts share. Private to core/book.
namespace groundcount::book {

inline constexpr int kApplicationId = 0x47434642;  // "GCFB"
inline constexpr int kFormat = 2;                  // user_version; 1 had no book id

/// The stored parts of a record.
inline constexpr const char* kStoredColumns =
    "hash, kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature";
/// A record in the order of `recordOf`: the stored parts and the book's id, which all its records share.
inline constexpr const char* kRecordColumns =
    "hash, kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature, (SELECT id FROM book)";

/// Column of the body among both.
inline constexpr int kBodyColumn = 11;

/// Reads everything but the body out of columns `first` and up.
Record envelopeOf(const Statement& row, int first);
/// Reads a record out of columns `first` and up. @error Refused when its body is not JSON.
Result<Record> recordOf(const Statement& row, int first);

struct Store::Inner {
    Database db;
    std::string path;
    std::string damage;
    bool readOnly = false;
    bool isAlone = false;            ///< no other connection can be had to the file
    std::int64_t checkedUpTo = 0;    ///< the last row whose hash was checked at opening, with those before it
    int format = kFormat;
    std::optional<DeviceKey> key;

    Result<Record> find(const std::string& hash);
    Result<bool> has(const std::string& hash);
    /// @param body the canonical text of the record's body
    Result<void> insert(const Record& record, const std::string& body);
    Result<std::vector<Record>> ofSubject(const std::string& subject);
    Result<void> foldOne(const std::string& subject, Before before);
    Result<void> fold(const std::set<std::string>& subjects);
    /// @param arrived all of the subject's records that were just inserted
    Result<void> foldArrived(const std::string& subject, std::span<const Record> arrived);
    Result<void> writable() const;
    Result<std::string> bookId();
    Result<void> nameBook(const std::string& id);  ///< gives an empty book its id; no other may hold records
    Result<Record> sealOne(const Entry& entry);
    /// @error Refused when the key `device` is retired and the number is beyond the last one that it stands for.
    Result<void> isGood(const std::string& device, std::int64_t seq);
};

/// Makes or checks the tables of an open file. Store-opening parts.
Result<void> makeTables(Database& db);
Result<void> checkFormat(Database& db, const std::string& path);
int formatOf(Database& db);
/// Gives a book of format 1 the empty id that its records were sealed with, without writing to the file.
Result<void> idOfFormat1(Database& db);
/// "" or the first broken record among the newest `most` that stand behind row `after`.
std::string firstDamage(Database& db, std::int64_t most, std::int64_t after);

}  // namespace groundcount::book
