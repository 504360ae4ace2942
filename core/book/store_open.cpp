#include "book/hash.h"
#include "book/seal.h"
#include "book/store_inner.h"

#include <cstdlib>
#include <filesystem>
#include <sodium.h>

namespace groundcount::book {

namespace {

const std::string kCache = "PRAGMA cache_size=-32768";  // KiB

Result<void> writeAheadLog(Database& db)
{
    const auto answer = db.ask("PRAGMA journal_mode=WAL");
    if (!answer)
        return tl::unexpected(answer.error());
    if (*answer != "wal")
        return unavailable("The field book needs a write-ahead log, which this disk does not allow (journal mode is \"" + *answer +
                           "\"); keep it on a local disk.");
    return db.exec("PRAGMA synchronous=FULL; PRAGMA fullfsync=1; PRAGMA checkpoint_fullfsync=1;"
                   "PRAGMA foreign_keys=ON; PRAGMA cell_size_check=ON; PRAGMA secure_delete=ON;" + kCache);
}

Result<void> readyToWrite(Database& db, OpenMode mode)
{
    if (auto log = writeAheadLog(db); !log)
        return log;
    auto transaction = Transaction::begin(db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    if (mode == OpenMode::Create)
        if (auto made = makeTables(db); !made)
            return made;
    return transaction->commit();
}

/// A database with nothing in it: the power failed while a book was being made, before its only transaction.
bool isUnmade(Database& db)
{
    return db.ask("SELECT (SELECT count(*) FROM sqlite_schema) + (SELECT application_id FROM pragma_application_id())"
                  " + (SELECT user_version FROM pragma_user_version())").value_or("") == "0";
}

Result<void> foldIsCurrent(Store& store)
{
    return store.hasCurrentFold() ? Result<void>{} : store.rebuild();
}

}  // namespace

bool Store::hasCurrentFold() const
{
    return database().ask("SELECT version FROM fold").value_or("") == std::to_string(kFoldVersion);
}

Result<void> makeTables(Database& db)
{
    if (auto made = db.exec(
            "PRAGMA application_id=" + std::to_string(kApplicationId) + "; PRAGMA user_version=" + std::to_string(kFormat) + ";"
            "CREATE TABLE record(row INTEGER PRIMARY KEY, hash TEXT NOT NULL UNIQUE, kind TEXT NOT NULL, subject TEXT NOT NULL,"
            " amends TEXT NOT NULL, reason TEXT NOT NULL, by_person TEXT NOT NULL, at TEXT NOT NULL,"
            " offset_minutes INTEGER NOT NULL, device TEXT NOT NULL, seq INTEGER NOT NULL, prev TEXT NOT NULL,"
            " body TEXT NOT NULL, signature TEXT NOT NULL) STRICT;"
            "CREATE INDEX record_subject ON record(subject);"
            "CREATE INDEX record_kind ON record(kind);"
            "CREATE INDEX record_chain ON record(device, seq);"
            "CREATE TABLE draft(subject TEXT NOT NULL, step TEXT NOT NULL, text TEXT NOT NULL, PRIMARY KEY(subject, step)) STRICT;"
            "CREATE TABLE blob(hash TEXT PRIMARY KEY, content BLOB NOT NULL) STRICT;"
            "CREATE TABLE book(id TEXT NOT NULL) STRICT;"
            "INSERT INTO book VALUES('');"
            "CREATE TABLE fold(version INTEGER NOT NULL) STRICT;"
            "INSERT INTO fold VALUES(" + std::to_string(kFoldVersion) + ");"); !made)
        return made;
    if (auto made = makeDerivedTables(db); !made)
        return made;
    return makeDerivedIndexes(db);
}

Result<void> checkFormat(Database& db, const std::string& path)
{
    const auto id = db.ask("PRAGMA application_id");
    const auto version = db.ask("PRAGMA user_version");
    if (!id || !version)
        return tl::unexpected(!id ? id.error() : version.error());
    if (*id != std::to_string(kApplicationId))
        return refused("A field book has the application id 1195591234; " + path + " has " + *id + " and is none.");
    if (*version == "1")
        return idOfFormat1(db);
    if (*version != std::to_string(kFormat))
        return refused("This program reads field books of formats 1 and 2; " + path + " is of format " + *version + ".");
    return {};
}

int formatOf(Database& db)
{
    return db.ask("PRAGMA user_version").value_or("") == "1" ? 1 : kFormat;
}

Result<void> idOfFormat1(Database& db)
{
    return db.exec("CREATE TEMP TABLE book(id TEXT NOT NULL); INSERT INTO temp.book VALUES('')");
}

std::string firstDamage(Database& db, std::int64_t most, std::int64_t after)
{
    auto rows = db.use(std::string("SELECT ") + kRecordColumns + " FROM record WHERE row > max((SELECT coalesce(max(row), 0) FROM record) - ?1, ?2) ORDER BY row");
    if (!rows)
        return rows.error().what;
    rows->bind(1, most).bind(2, after);
    for (;;) {
        const auto row = rows->step();
        if (!row)
            return row.error().what;
        if (!*row)
            return {};
        // Bodies are stored canonically: this is the text that was hashed, without reading its JSON; `check` reads it.
        const Record record = envelopeOf(*rows, 0);
        if (blake2b256Hex(canonicalRecord(record, rows->text(kBodyColumn)).value_or("")) != record.hash)
            return "The content no longer gives its hash: " + nameOf(record) + ".";
    }
}

Result<Store> Store::open(const std::string& path, OpenMode mode, std::optional<DeviceKey> key)
{
    std::error_code ignored;
    const bool exists = std::filesystem::exists(path, ignored);
    if (mode == OpenMode::Create && exists)
        return refused("A new field book needs a free name; " + path + " exists.");
    if (mode != OpenMode::Create && !exists)
        return refused("The field book " + path + " does not exist.");
    return openBy([&](Access access) { return Database::open(path, access); }, path, mode, std::move(key));
}

Result<Store> Store::openOn(const std::string& vfs, const std::string& path, OpenMode mode, std::optional<DeviceKey> key)
{
    auto store = openBy([&](Access access) { return Database::openOn(vfs, path, access); }, path, mode, std::move(key));
    if (store)
        store->m_inner->isAlone = true;
    return store;
}

Result<Store> Store::readBeside() const
{
    if (m_inner->isAlone)
        return refused("The field book " + path() + " is held by one program alone and cannot be read by a second connection.");
    auto db = Database::open(path(), Access::ReadOnly);
    if (!db)
        return tl::unexpected(db.error());
    auto inner = std::make_unique<Inner>();
    inner->db = std::move(*db);
    inner->path = path();
    inner->readOnly = true;
    if (auto cache = inner->db.exec(kCache); !cache)
        return tl::unexpected(cache.error());
    if (auto format = checkFormat(inner->db, path()); !format)
        return tl::unexpected(format.error());
    inner->format = formatOf(inner->db);
    inner->checkedUpTo = m_inner->checkedUpTo;
    inner->damage = damage().empty() ? firstDamage(inner->db, kCheckedAtOpen, m_inner->checkedUpTo) : damage();
    return Store(std::move(inner));
}

Result<Store> Store::openBy(const Connect& connect, const std::string& path, OpenMode mode, std::optional<DeviceKey> key)
{
    if (sodium_init() < 0)
        return unavailable("The signing library did not start.");
    auto db = connect(mode == OpenMode::Create     ? Access::Create
                      : mode == OpenMode::ReadOnly ? Access::ReadOnly
                                                   : Access::ReadWrite);
    if (!db)
        return tl::unexpected(db.error());
    auto inner = std::make_unique<Inner>();
    inner->db = std::move(*db);
    inner->path = path;
    inner->key = std::move(key);
    inner->readOnly = mode == OpenMode::ReadOnly;
    if (mode != OpenMode::Create && isUnmade(inner->db)) {
        if (mode == OpenMode::ReadOnly)
            return refused("The field book " + path + " is empty, its making was cut short; opened for writing it is made again.");
        mode = OpenMode::Create;
    }
    if (mode != OpenMode::Create) {
        if (auto format = checkFormat(inner->db, path); !format)
            return tl::unexpected(format.error());
        inner->format = formatOf(inner->db);
        const auto last = inner->db.ask("SELECT coalesce(max(row), 0) FROM record");  // before the check: what comes meanwhile is no part of it
        inner->damage = firstDamage(inner->db, kCheckedAtOpen, 0);
        inner->checkedUpTo = last ? std::strtoll(last->c_str(), nullptr, 10) : 0;
    }
    if (!inner->damage.empty() && !inner->readOnly) {
        inner->readOnly = true;
        auto again = connect(Access::ReadOnly);
        if (!again)
            return tl::unexpected(again.error());
        inner->db = std::move(*again);
        if (auto format = checkFormat(inner->db, path); !format)
            return tl::unexpected(format.error());
    }
    const bool writes = !inner->readOnly;
    if (writes)
        if (auto ready = readyToWrite(inner->db, mode); !ready)
            return tl::unexpected(ready.error());
    Store store(std::move(inner));
    if (writes)
        if (auto current = foldIsCurrent(store); !current)
            return tl::unexpected(current.error());
    return store;
}

}  // namespace groundcount::book
