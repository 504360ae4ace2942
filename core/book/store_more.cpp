#include "book/hash.h"
#include "book/store_inner.h"

#include <filesystem>

namespace groundcount::book {

namespace {

Result<void> run(Database& db, const std::string& sql, std::initializer_list<Cell> values)
{
    auto statement = db.use(sql);
    if (!statement)
        return tl::unexpected(statement.error());
    int index = 0;
    for (const Cell& value : values)
        statement->bind(++index, value);
    const auto done = statement->step();
    return done ? Result<void>{} : tl::unexpected(done.error());
}

}  // namespace

Result<std::string> Store::bookId() const
{
    return m_inner->bookId();
}

Result<std::int64_t> Store::lastRow() const
{
    const auto last = m_inner->db.ask("SELECT coalesce(max(row), 0) FROM record");
    return last.map([](const std::string& text) { return static_cast<std::int64_t>(std::stoll(text)); });
}

Result<std::int64_t> Store::dataVersion() const
{
    const auto version = m_inner->db.ask("PRAGMA data_version");
    return version.map([](const std::string& text) { return static_cast<std::int64_t>(std::stoll(text)); });
}

Result<void> Store::saveDraft(const std::string& subject, const std::string& step, const std::string& text)
{
    if (auto may = m_inner->writable(); !may)
        return may;
    return run(m_inner->db, "INSERT INTO draft VALUES(?,?,?) ON CONFLICT(subject, step) DO UPDATE SET text = excluded.text",
               {subject, step, text});
}

Result<std::string> Store::draft(const std::string& subject, const std::string& step) const
{
    auto query = m_inner->db.use("SELECT text FROM draft WHERE subject = ? AND step = ?");
    if (!query)
        return tl::unexpected(query.error());
    const auto row = query->bind(1, subject).bind(2, step).step();
    if (!row)
        return tl::unexpected(row.error());
    return *row ? query->text(0) : std::string();
}

Result<void> Store::dropDraft(const std::string& subject, const std::string& step)
{
    if (auto may = m_inner->writable(); !may)
        return may;
    return run(m_inner->db, "DELETE FROM draft WHERE subject = ? AND step = ?", {subject, step});
}

Result<std::string> Store::putBlob(std::string_view content)
{
    if (auto may = m_inner->writable(); !may)
        return tl::unexpected(may.error());
    const std::string hash = blake2b256Hex(content);
    auto insertion = m_inner->db.use("INSERT INTO blob VALUES(?, ?) ON CONFLICT DO NOTHING");
    if (!insertion)
        return tl::unexpected(insertion.error());
    const auto done = insertion->bind(1, hash).bindBlob(2, content).step();
    if (!done)
        return tl::unexpected(done.error());
    return hash;
}

Result<std::string> Store::blob(const std::string& hash) const
{
    auto query = m_inner->db.use("SELECT content FROM blob WHERE hash = ?");
    if (!query)
        return tl::unexpected(query.error());
    const auto row = query->bind(1, hash).step();
    if (!row)
        return tl::unexpected(row.error());
    if (!*row)
        return refused("No content of this book has the hash " + hash.substr(0, 64) + ".");
    std::string content = query->text(0);
    if (blake2b256Hex(content) != hash)
        return unavailable("The stored content no longer gives its hash " + hash.substr(0, 64) + ".");
    return content;
}

Result<std::vector<std::string>> Store::blobHashes() const
{
    auto query = m_inner->db.use("SELECT hash FROM blob ORDER BY hash");
    if (!query)
        return tl::unexpected(query.error());
    std::vector<std::string> hashes;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return hashes;
        hashes.push_back(query->text(0));
    }
}

Result<void> Store::handOver(const std::string& path) const
{
    std::error_code code;
    if (std::filesystem::exists(path, code))
        return refused("A hand-over copy needs a free name; " + path + " exists.");
    const std::string part = path + ".part";
    std::filesystem::remove(part, code);
    if (auto copied = run(m_inner->db, "VACUUM INTO ?", {part}); !copied) {
        std::filesystem::remove(part, code);
        return copied;
    }
    {
        auto copy = Database::open(part, Access::ReadWrite);
        if (!copy)
            return tl::unexpected(copy.error());
        // secure_delete overwrites the drafts' bytes in the copy: they were never meant for others; carriers' marks are this copy's own
        if (auto cleaned = copy->exec("PRAGMA synchronous=FULL; PRAGMA secure_delete=ON; DELETE FROM draft; DROP TABLE IF EXISTS carrier_mark;"); !cleaned)
            return cleaned;
    }
    std::filesystem::rename(part, path, code);
    if (code)
        return unavailable("The hand-over copy could not be named " + path + ": " + code.message() + ".");
    return {};
}

Result<void> Store::limitPages(std::int64_t pages)
{
    const auto answer = m_inner->db.ask("PRAGMA max_page_count=" + std::to_string(pages));
    return answer ? Result<void>{} : tl::unexpected(answer.error());
}

}  // namespace groundcount::book
