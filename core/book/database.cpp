#include "book/database.h"

#include "book/number_order.h"

#include <filesystem>

namespace groundcount::book {

namespace {

std::string uriOf(const std::string& path)
{
    std::string uri = "file:";
    for (const char c : path) {
        if (c == '?' || c == '#' || c == '%') {
            constexpr char kHex[] = "0123456789ABCDEF";
            uri += '%';
            uri += kHex[static_cast<unsigned char>(c) >> 4U];
            uri += kHex[static_cast<unsigned char>(c) & 0x0FU];
        } else {
            uri += c;
        }
    }
    return uri;
}

std::string plain(int code, const char* words)
{
    switch (code & 0xFF) {
    case SQLITE_FULL: return "the disk is full";
    case SQLITE_READONLY: return "it can only be read";
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return "another program holds it";
    case SQLITE_CANTOPEN: return "it cannot be opened";
    case SQLITE_NOTADB: return "it is no database";
    case SQLITE_CORRUPT: return "the file is damaged";
    case SQLITE_IOERR: return "the disk reported an error";
    default: return words;
    }
}

int compareNumbers(void*, int sizeA, const void* a, int sizeB, const void* b)
{
    const std::string_view one(static_cast<const char*>(a), static_cast<std::size_t>(sizeA));
    const std::string_view two(static_cast<const char*>(b), static_cast<std::size_t>(sizeB));
    return numberBefore(one, two) ? -1 : numberBefore(two, one) ? 1 : 0;
}

}  // namespace

Statement::~Statement()
{
    if (m_handle) {
        sqlite3_reset(m_handle);
        sqlite3_clear_bindings(m_handle);
    }
}

Statement& Statement::bind(int index, const Cell& value)
{
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        sqlite3_bind_int64(m_handle, index, *whole);
    else if (const auto* real = std::get_if<double>(&value))
        sqlite3_bind_double(m_handle, index, *real);
    else if (const auto* text = std::get_if<std::string>(&value))
        sqlite3_bind_text64(m_handle, index, text->data(), text->size(), SQLITE_TRANSIENT, SQLITE_UTF8);
    else
        sqlite3_bind_null(m_handle, index);
    return *this;
}

Statement& Statement::bindBlob(int index, std::string_view bytes)
{
    sqlite3_bind_blob64(m_handle, index, bytes.data(), bytes.size(), SQLITE_TRANSIENT);
    return *this;
}

Result<bool> Statement::step()
{
    const int code = sqlite3_step(m_handle);
    if (code == SQLITE_ROW)
        return true;
    if (code == SQLITE_DONE)
        return false;
    sqlite3* db = sqlite3_db_handle(m_handle);
    return unavailable("The field book could not be read or written: " + plain(code, sqlite3_errmsg(db)) +
                       " (SQLite " + std::to_string(sqlite3_extended_errcode(db)) + ").");
}

std::string Statement::text(int column) const
{
    return std::string(view(column));
}

std::string_view Statement::view(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_handle, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle, column));
    return bytes ? std::string_view(bytes, size) : std::string_view();
}

std::int64_t Statement::whole(int column) const
{
    return sqlite3_column_int64(m_handle, column);
}

double Statement::real(int column) const
{
    return sqlite3_column_double(m_handle, column);
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(m_handle, column) == SQLITE_NULL;
}

Cell Statement::cell(int column) const
{
    switch (sqlite3_column_type(m_handle, column)) {
    case SQLITE_NULL: return std::monostate{};
    case SQLITE_INTEGER: return whole(column);
    case SQLITE_FLOAT: return real(column);
    default: return text(column);
    }
}

int Statement::columns() const
{
    return sqlite3_column_count(m_handle);
}

int Database::connect(const std::string& uri, Access access, const char* vfs)
{
    sqlite3* raw = nullptr;
    int flags = SQLITE_OPEN_URI | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOMUTEX;
    flags |= access == Access::ReadOnly ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE;
    if (access == Access::Create)
        flags |= SQLITE_OPEN_CREATE;
    const int code = sqlite3_open_v2(uri.c_str(), &raw, flags, vfs);
    m_db.reset(raw);
    if (code != SQLITE_OK)
        return code;
    sqlite3_busy_timeout(raw, 5000);
    sqlite3_create_collation(raw, "test_number", SQLITE_UTF8, nullptr, compareNumbers);
    // before the first read: a write-ahead log without shared memory must be held exclusively from its first use
    if (vfs)
        sqlite3_exec(raw, "PRAGMA locking_mode=EXCLUSIVE", nullptr, nullptr, nullptr);
    return sqlite3_exec(raw, "SELECT count(*) FROM sqlite_schema", nullptr, nullptr, nullptr);
}

Error Database::notOpened(int code) const
{
    return Error{Fault::Unavailable, "The field book " + m_path + " could not be opened: " +
                                         plain(code, m_db ? sqlite3_errmsg(m_db.get()) : "no memory") + " (SQLite " +
                                         std::to_string(code) + ")."};
}

Result<Database> Database::open(const std::string& path, Access access)
{
    Database database;
    database.m_path = path;
    int code = database.connect(uriOf(path), access, nullptr);
    std::error_code missing;
    const auto walSize = std::filesystem::file_size(path + "-wal", missing);
    if (code != SQLITE_OK && access == Access::ReadOnly && (missing || walSize == 0) && std::filesystem::exists(path, missing))
        code = database.connect(uriOf(path) + "?immutable=1", access, nullptr);  // a read-only card: no helper files can be made beside the book
    if (code != SQLITE_OK)
        return tl::unexpected(database.notOpened(code));
    return database;
}

Result<Database> Database::openOn(const std::string& vfs, const std::string& path, Access access)
{
    Database database;
    database.m_path = path;
    if (const int code = database.connect(uriOf(path), access, vfs.c_str()); code != SQLITE_OK)
        return tl::unexpected(database.notOpened(code));
    return database;
}

Error Database::said(const std::string& doing) const
{
    const int code = sqlite3_extended_errcode(m_db.get());
    return Error{Fault::Unavailable, "The field book " + m_path + " could not be " + doing + ": " +
                                         plain(code, sqlite3_errmsg(m_db.get())) + " (SQLite " + std::to_string(code) + ")."};
}

int Database::lastCode() const
{
    return sqlite3_errcode(m_db.get());
}

Result<void> Database::exec(const std::string& sql)
{
    if (sqlite3_exec(m_db.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        return tl::unexpected(said("changed"));
    return {};
}

Result<Statement> Database::use(const std::string& sql)
{
    // The same text may be running already (a query inside its own loop): blanks at its end make it a second statement.
    std::string key = sql;
    auto found = m_prepared.find(key);
    while (found != m_prepared.end() && sqlite3_stmt_busy(found->second.get())) {
        key += ' ';
        found = m_prepared.find(key);
    }
    if (found == m_prepared.end()) {
        sqlite3_stmt* raw = nullptr;
        if (sqlite3_prepare_v3(m_db.get(), sql.c_str(), -1, SQLITE_PREPARE_PERSISTENT, &raw, nullptr) != SQLITE_OK)
            return tl::unexpected(said("read"));
        found = m_prepared.emplace(key, std::unique_ptr<sqlite3_stmt, Finalize>(raw)).first;
    }
    return Statement(found->second.get());
}

Result<std::string> Database::ask(const std::string& sql)
{
    auto statement = use(sql);
    if (!statement)
        return tl::unexpected(statement.error());
    const auto row = statement->step();
    if (!row)
        return tl::unexpected(row.error());
    return *row ? statement->text(0) : std::string();
}

Result<Transaction> Transaction::begin(Database& db)
{
    if (auto begun = db.exec("BEGIN IMMEDIATE"); !begun)
        return tl::unexpected(begun.error());
    return Transaction(db);
}

Transaction::~Transaction()
{
    if (m_db)
        std::ignore = m_db->exec("ROLLBACK");
}

Result<void> Transaction::commit()
{
    if (auto done = m_db->exec("COMMIT"); !done)
        return done;
    m_db = nullptr;
    return {};
}

}  // namespace groundcount::book
