#pragma once

#include "method/error.h"

#include <cstdint>
#include <map>
#include <memory>
#include <sqlite3.h>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// A thin layer over the SQLite C interface: errors as values, statements prepared once. Private to core/book.
namespace groundcount::book {

/// One value of a row: missing, whole number, real number, text.
using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;

/// A prepared statement in use; gives itself back when it ends.
class Statement {
public:
    explicit Statement(sqlite3_stmt* handle) : m_handle(handle) {}
    Statement(Statement&& other) noexcept : m_handle(std::exchange(other.m_handle, nullptr)) {}
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    Statement& operator=(Statement&&) = delete;
    ~Statement();

    /// Binds parameter `index` (from 1). Texts are copied.
    Statement& bind(int index, const Cell& value);
    Statement& bindBlob(int index, std::string_view bytes);
    /// @return true with a row, false at the end. @error Unavailable with SQLite's words.
    Result<bool> step();

    std::string text(int column) const;  ///< text or blob, "" for NULL
    std::string_view view(int column) const;  ///< the same, valid until the next step
    std::int64_t whole(int column) const;
    double real(int column) const;
    bool isNull(int column) const;
    Cell cell(int column) const;
    int columns() const;

private:
    sqlite3_stmt* m_handle;
};

/// How the file is opened.
enum class Access { ReadOnly, ReadWrite, Create };

class Database {
public:
    /// Opens a file. Immutable opening is tried when a read-only place refuses the write-ahead log's helper files.
    /// @error Unavailable with SQLite's words.
    static Result<Database> open(const std::string& path, Access access);
    /// Opens through the sqlite3_vfs of this name, held by this connection alone: no shared memory is asked for.
    /// @error Unavailable with SQLite's words.
    static Result<Database> openOn(const std::string& vfs, const std::string& path, Access access);

    Result<void> exec(const std::string& sql);
    /// A statement for `sql`, prepared at its first use.
    Result<Statement> use(const std::string& sql);
    /// The first column of the first row; "" when there is none.
    Result<std::string> ask(const std::string& sql);
    Error said(const std::string& doing) const;
    int lastCode() const;

private:
    int connect(const std::string& uri, Access access, const char* vfs);
    Error notOpened(int code) const;
    struct Close {
        void operator()(sqlite3* db) const { sqlite3_close_v2(db); }
    };
    struct Finalize {
        void operator()(sqlite3_stmt* s) const { sqlite3_finalize(s); }
    };
    std::string m_path;
    std::unique_ptr<sqlite3, Close> m_db;
    std::map<std::string, std::unique_ptr<sqlite3_stmt, Finalize>, std::less<>> m_prepared;
};

/// BEGIN IMMEDIATE ... COMMIT; rolls back when it ends without a commit.
class Transaction {
public:
    static Result<Transaction> begin(Database& db);
    Transaction(Transaction&& other) noexcept : m_db(std::exchange(other.m_db, nullptr)) {}
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();
    Result<void> commit();

private:
    explicit Transaction(Database& db) : m_db(&db) {}
    Database* m_db;
};

}  // namespace groundcount::book
