#pragma once

#include "method/error.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <sqlite3.h>
#include <string>
#include <string_view>
#include <utility>

/// A GeoPackage while it is written: SQLite with errors as values. Private to core/gis. Why not through GDAL: docs/decisions/0008.
namespace groundcount::gis {

class GeoPackageStatement {
public:
    explicit GeoPackageStatement(sqlite3_stmt* handle) : m_handle(handle) {}

    /// Parameters from 1. Texts and blobs must outlive the next `run`.
    void bind(int index, std::string_view text) { sqlite3_bind_text64(m_handle.get(), index, text.data(), text.size(), SQLITE_STATIC, SQLITE_UTF8); }
    void bind(int index, const char* text) { bind(index, std::string_view(text)); }
    void bind(int index, double number) { sqlite3_bind_double(m_handle.get(), index, number); }
    void bind(int index, std::int64_t number) { sqlite3_bind_int64(m_handle.get(), index, number); }
    void bindBlob(int index, std::string_view bytes) { sqlite3_bind_blob64(m_handle.get(), index, bytes.data(), bytes.size(), SQLITE_STATIC); }
    void bindNull(int index) { sqlite3_bind_null(m_handle.get(), index); }
    /// Binds from the first on, in order.
    template <class... Value>
    GeoPackageStatement& with(const Value&... values)
    {
        int index = 0;
        (bind(++index, values), ...);
        return *this;
    }
    /// Runs it to its end and makes it ready for the next values. @error Unavailable with SQLite's words.
    Result<void> run();

private:
    struct Finalize {
        void operator()(sqlite3_stmt* handle) const { sqlite3_finalize(handle); }
    };
    std::unique_ptr<sqlite3_stmt, Finalize> m_handle;
};

class GeoPackageStore {
public:
    /// A new file without journal: it is made out of sight and thrown away when it does not become whole (StagedFile).
    /// @error Unavailable with SQLite's words.
    static Result<GeoPackageStore> create(const std::string& path);

    /// SQLite's quick check of a file: "ok", what is wrong, or "" when `keepOn` stopped it. @error Unavailable with SQLite's words.
    static Result<std::string> quickCheck(const std::string& path, const std::function<bool()>& keepOn);

    Result<void> exec(const std::string& sql);
    Result<GeoPackageStatement> prepare(const std::string& sql);
    /// The first column of the first row as text, "" without one.
    Result<std::string> ask(const std::string& sql);
    /// Commits and closes; the store is empty after it.
    Result<void> finish();

private:
    explicit GeoPackageStore(sqlite3* handle) : m_handle(handle) {}
    struct Close {
        void operator()(sqlite3* handle) const { sqlite3_close_v2(handle); }
    };
    std::unique_ptr<sqlite3, Close> m_handle;
};

/// A name within double quotes, a text within single ones.
std::string sqlName(const std::string& name);
std::string sqlText(const std::string& text);

}  // namespace groundcount::gis
