#include "gis/geopackage_store.h"

namespace groundcount::gis {
namespace {

constexpr int kStepsBetweenQuestions = 1000;  // of SQLite's machine: some microseconds

Error said(sqlite3* handle)
{
    return {Fault::Unavailable, std::string("The GeoPackage was not written: ") + sqlite3_errmsg(handle) + " (SQLite "
                                    + std::to_string(sqlite3_extended_errcode(handle)) + ")."};
}

std::string within(char quote, const std::string& text)
{
    std::string out(1, quote);
    for (const char c : text)
        out += c == quote ? std::string(2, quote) : std::string(1, c);
    return out + quote;
}

}  // namespace

std::string sqlName(const std::string& name)
{
    return within('"', name);
}

std::string sqlText(const std::string& text)
{
    return within('\'', text);
}

Result<void> GeoPackageStatement::run()
{
    int code = SQLITE_ROW;
    while (code == SQLITE_ROW)
        code = sqlite3_step(m_handle.get());
    if (code != SQLITE_DONE)
        return tl::unexpected(said(sqlite3_db_handle(m_handle.get())));
    sqlite3_reset(m_handle.get());
    return {};
}

Result<GeoPackageStore> GeoPackageStore::create(const std::string& path)
{
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX, nullptr);
    GeoPackageStore store(handle);
    if (code != SQLITE_OK)
        return tl::unexpected(said(handle));
    // 64 MiB of cache bounds the memory whatever the number of rows.
    if (const auto set = store.exec("PRAGMA page_size=4096;PRAGMA cache_size=-65536;PRAGMA journal_mode=OFF;PRAGMA synchronous=OFF;"
                                    "PRAGMA application_id=0x47504B47;PRAGMA user_version=10300;BEGIN");
        !set)
        return tl::unexpected(set.error());
    return store;
}

Result<std::string> GeoPackageStore::quickCheck(const std::string& path, const std::function<bool()>& keepOn)
{
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX, nullptr);
    GeoPackageStore store(handle);
    if (code != SQLITE_OK)
        return tl::unexpected(said(handle));
    if (keepOn)
        sqlite3_progress_handler(handle, kStepsBetweenQuestions, [](void* asked) { return (*static_cast<const std::function<bool()>*>(asked))() ? 0 : 1; },
                                 const_cast<std::function<bool()>*>(&keepOn));
    auto word = store.ask("PRAGMA quick_check");
    return !word && sqlite3_errcode(handle) == SQLITE_INTERRUPT ? Result<std::string>(std::string()) : word;
}

Result<void> GeoPackageStore::exec(const std::string& sql)
{
    if (sqlite3_exec(m_handle.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        return tl::unexpected(said(m_handle.get()));
    return {};
}

Result<GeoPackageStatement> GeoPackageStore::prepare(const std::string& sql)
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_handle.get(), sql.c_str(), static_cast<int>(sql.size()), &statement, nullptr) != SQLITE_OK)
        return tl::unexpected(said(m_handle.get()));
    return GeoPackageStatement(statement);
}

Result<std::string> GeoPackageStore::ask(const std::string& sql)
{
    std::string first;
    const auto keep = [](void* into, int, char** values, char**) {
        auto& text = *static_cast<std::string*>(into);
        if (text.empty() && values[0])
            text = values[0];
        return 0;
    };
    if (sqlite3_exec(m_handle.get(), sql.c_str(), keep, &first, nullptr) != SQLITE_OK)
        return tl::unexpected(said(m_handle.get()));
    return first;
}

Result<void> GeoPackageStore::finish()
{
    if (const auto committed = exec("COMMIT"); !committed)
        return committed;
    m_handle.reset();
    return {};
}

}  // namespace groundcount::gis
