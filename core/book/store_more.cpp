#include "book/derived.h"
#include "book/hash.h"
#include "book/kinds.h"
#include "book/seal.h"
#include "book/store_inner.h"

#include <algorithm>
#include <cstdio>
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

std::string shown(const Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        return std::to_string(*whole);
    if (const auto* real = std::get_if<double>(&cell)) {
        char text[40];
        std::snprintf(text, sizeof text, "%.17g", *real);
        return text;
    }
    const auto* text = std::get_if<std::string>(&cell);
    return text ? "'" + *text + "'" : "-";
}

}  // namespace

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

Result<MergeReport> Store::take(std::span<const Record> records)
{
    if (auto may = m_inner->writable(); !may)
        return tl::unexpected(may.error());
    auto transaction = Transaction::begin(m_inner->db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    MergeReport report;
    std::set<std::string> subjects;
    for (const Record& record : records) {
        if (auto sound = verifyRecord(record); !sound) {
            report.refused.push_back(sound.error().what);
            continue;
        }
        if (auto body = checkBody(record.kind, record.body); !body) {
            report.refused.push_back(body.error().what + " Record: " + nameOf(record) + ".");
            continue;
        }
        const auto here = m_inner->has(record.hash);
        if (!here)
            return tl::unexpected(here.error());
        if (*here) {
            ++report.known;
            continue;
        }
        if (auto inserted = m_inner->insert(record); !inserted)
            return tl::unexpected(inserted.error());
        subjects.insert(record.subject);
        ++report.taken;
    }
    if (auto folded = m_inner->fold(subjects); !folded)
        return tl::unexpected(folded.error());
    if (auto done = transaction->commit(); !done)
        return tl::unexpected(done.error());
    return report;
}

Result<MergeReport> Store::mergeFrom(const Store& other)
{
    constexpr std::size_t kAtOnce = 2000;  // a transaction stays far below the 100 MB that a write-ahead log likes
    MergeReport all;
    const auto hashes = other.blobHashes();
    if (!hashes)
        return tl::unexpected(hashes.error());
    for (const std::string& hash : *hashes) {
        const auto content = other.blob(hash);
        if (!content) {
            all.refused.push_back(content.error().what);
            continue;
        }
        if (auto kept = putBlob(*content); !kept)
            return tl::unexpected(kept.error());
    }
    for (std::int64_t after = 0;;) {
        auto query = other.m_inner->db.use(std::string("SELECT row, ") + kRecordColumns + " FROM record WHERE row > ? ORDER BY row LIMIT ?");
        if (!query)
            return tl::unexpected(query.error());
        query->bind(1, after).bind(2, static_cast<std::int64_t>(kAtOnce));
        std::vector<Record> batch;
        std::size_t seen = 0;
        for (;; ++seen) {
            const auto row = query->step();
            if (!row)
                return tl::unexpected(row.error());
            if (!*row)
                break;
            after = query->whole(0);
            auto record = recordOf(*query, 1);
            if (record)
                batch.push_back(std::move(*record));
            else
                all.refused.push_back(record.error().what);
        }
        if (seen == 0)
            return all;
        const auto part = take(batch);
        if (!part)
            return tl::unexpected(part.error());
        all.taken += part->taken;
        all.known += part->known;
        all.refused.insert(all.refused.end(), part->refused.begin(), part->refused.end());
    }
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
        // secure_delete overwrites the drafts' bytes in the copy: they were never meant for others
        if (auto cleaned = copy->exec("PRAGMA synchronous=FULL; PRAGMA secure_delete=ON; DELETE FROM draft;"); !cleaned)
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

Result<void> Store::rebuild()
{
    if (auto may = m_inner->writable(); !may)
        return may;
    Database& db = m_inner->db;
    auto transaction = Transaction::begin(db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    if (auto dropped = dropDerivedTables(db); !dropped)
        return dropped;
    if (auto made = makeDerivedTables(db); !made)
        return made;
    auto subjects = db.use("SELECT DISTINCT subject FROM record");
    if (!subjects)
        return tl::unexpected(subjects.error());
    for (;;) {
        const auto row = subjects->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            break;
        if (auto folded = m_inner->fold({subjects->text(0)}); !folded)
            return folded;
    }
    if (auto noted = db.exec("DELETE FROM fold; INSERT INTO fold VALUES(" + std::to_string(kFoldVersion) + ")"); !noted)
        return noted;
    return transaction->commit();
}

Result<std::string> Store::derivedText() const
{
    std::string all;
    for (const DerivedTable& table : derivedTables()) {
        auto query = m_inner->db.use(std::string("SELECT * FROM ") + table.name);
        if (!query)
            return tl::unexpected(query.error());
        std::vector<std::string> lines;
        for (;;) {
            const auto row = query->step();
            if (!row)
                return tl::unexpected(row.error());
            if (!*row)
                break;
            std::string line = table.name;
            for (int i = 0; i < query->columns(); ++i)
                line += "|" + shown(query->cell(i));
            lines.push_back(line + "\n");
        }
        std::sort(lines.begin(), lines.end());
        for (const std::string& line : lines)
            all += line;
    }
    return all;
}

Result<std::string> Store::staleDerived() const
{
    auto memory = Database::open(":memory:", Access::Create);
    if (!memory)
        return tl::unexpected(memory.error());
    if (auto made = makeDerivedTables(*memory); !made)
        return tl::unexpected(made.error());
    auto subjects = m_inner->db.use("SELECT DISTINCT subject FROM record");
    if (!subjects)
        return tl::unexpected(subjects.error());
    const auto linesOf = [](Database& db, const DerivedTable& table, const std::string& subject) -> Result<std::vector<std::string>> {
        auto query = db.use(std::string("SELECT * FROM ") + table.name + " WHERE id = ?");
        if (!query)
            return tl::unexpected(query.error());
        query->bind(1, subject);
        std::vector<std::string> lines;
        for (;;) {
            const auto row = query->step();
            if (!row)
                return tl::unexpected(row.error());
            if (!*row)
                break;
            std::string line;
            for (int i = 0; i < query->columns(); ++i)
                line += "|" + shown(query->cell(i));
            lines.push_back(line);
        }
        std::sort(lines.begin(), lines.end());
        return lines;
    };
    for (;;) {
        const auto row = subjects->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return std::string();
        const std::string subject = subjects->text(0);
        const auto records = m_inner->ofSubject(subject);
        if (!records)
            return tl::unexpected(records.error());
        if (auto folded = foldSubject(*memory, subject, *records); !folded)
            return tl::unexpected(folded.error());
        for (const DerivedTable& table : derivedTables()) {
            const auto here = linesOf(m_inner->db, table, subject);
            const auto there = linesOf(*memory, table, subject);
            if (!here || !there || *here != *there)
                return here ? subject : Result<std::string>(tl::unexpected(here.error()));
            if (auto emptied = memory->exec(std::string("DELETE FROM ") + table.name); !emptied)
                return tl::unexpected(emptied.error());
        }
    }
}

}  // namespace groundcount::book
