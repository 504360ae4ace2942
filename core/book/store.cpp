#include "book/canonical.h"
#include "book/retired.h"
#include "book/seal.h"
#include "book/store_inner.h"

namespace groundcount::book {

Store::Store(std::unique_ptr<Inner> inner) : m_inner(std::move(inner)) {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;

Store::~Store()
{
    if (m_inner && !m_inner->readOnly)
        std::ignore = m_inner->db.ask("PRAGMA wal_checkpoint(TRUNCATE)");
}

const std::string& Store::damage() const { return m_inner->damage; }
bool Store::isReadOnly() const { return m_inner->readOnly; }
const std::string& Store::path() const { return m_inner->path; }
Database& Store::database() const { return m_inner->db; }

Record envelopeOf(const Statement& row, int first)
{
    Record r;
    std::string* const texts[] = {&r.hash, &r.kind, &r.subject, &r.amends, &r.reason, &r.by, &r.at};
    for (int i = 0; i < 7; ++i)
        *texts[i] = row.text(first + i);
    r.offsetMinutes = static_cast<int>(row.whole(first + 7));
    r.device = row.text(first + 8);
    r.seq = row.whole(first + 9);
    r.prev = row.text(first + 10);
    r.signature = row.text(first + 12);
    r.book = row.text(first + 13);
    return r;
}

Result<Record> recordOf(const Statement& row, int first)
{
    Record r = envelopeOf(row, first);
    auto body = readJson(row.text(first + kBodyColumn));
    if (!body)
        return refused("The body cannot be read (" + body.error().what + "): " + nameOf(r) + ".");
    r.body = std::move(*body);
    return r;
}

Result<void> Store::Inner::writable() const
{
    if (!damage.empty())
        return refused("The field book is damaged and can only be read. " + damage);
    if (readOnly)
        return refused("The field book " + path + " is open for reading only.");
    return {};
}

Result<std::string> Store::Inner::bookId()
{
    return db.ask("SELECT id FROM book");
}

Result<void> Store::Inner::nameBook(const std::string& id)
{
    if (format == 1)
        return {};
    const auto empty = db.ask("SELECT 1 WHERE (SELECT id FROM book) = '' AND NOT EXISTS (SELECT 1 FROM record)");
    if (!empty)
        return tl::unexpected(empty.error());
    if (empty->empty())
        return {};
    auto naming = db.use("UPDATE book SET id = ?");
    if (!naming)
        return tl::unexpected(naming.error());
    const auto named = naming->bind(1, id).step();
    return named ? Result<void>{} : tl::unexpected(named.error());
}

Result<void> Store::Inner::isGood(const std::string& device, std::int64_t seq)
{
    const auto retired = retiredKeys(db);
    if (!retired)
        return tl::unexpected(retired.error());
    const auto own = retired->find(device);
    if (own == retired->end() || seq <= own->second.last)
        return {};
    return refused("This device can no longer seal in this book. " + sentence(own->second));
}

Result<Record> Store::Inner::find(const std::string& hash)
{
    auto query = db.use(std::string("SELECT ") + kRecordColumns + " FROM record WHERE hash = ?");
    if (!query)
        return tl::unexpected(query.error());
    const auto row = query->bind(1, hash).step();
    if (!row)
        return tl::unexpected(row.error());
    if (!*row)
        return refused("No record of this book has the hash " + hash.substr(0, 64) + ".");
    return recordOf(*query, 0);
}

Result<bool> Store::Inner::has(const std::string& hash)
{
    auto query = db.use("SELECT 1 FROM record WHERE hash = ?");
    if (!query)
        return tl::unexpected(query.error());
    return query->bind(1, hash).step();
}

Result<void> Store::Inner::insert(const Record& r, const std::string& body)
{
    static const std::string kInsert = std::string("INSERT INTO record(") + kStoredColumns + ") VALUES(?,?,?,?,?,?,?,?,?,?,?,?,?)";
    auto insertion = db.use(kInsert);
    if (!insertion)
        return tl::unexpected(insertion.error());
    const std::pair<int, const std::string*> texts[] = {{0, &r.hash}, {1, &r.kind}, {2, &r.subject}, {3, &r.amends}, {4, &r.reason}, {5, &r.by},
        {6, &r.at}, {8, &r.device}, {10, &r.prev}, {11, &body}, {12, &r.signature}};
    for (const auto& [column, text] : texts)
        insertion->bind(column + 1, *text);
    const auto done = insertion->bind(8, std::int64_t{r.offsetMinutes}).bind(10, r.seq).step();
    if (!done)
        return tl::unexpected(done.error());
    static const std::string kBack = std::string("SELECT ") + kRecordColumns + " FROM record WHERE row = last_insert_rowid()";
    auto back = db.use(kBack);
    if (!back)
        return tl::unexpected(back.error());
    const auto row = back->step();
    if (!row)
        return tl::unexpected(row.error());
    bool same = *row && back->whole(7) == r.offsetMinutes && back->whole(9) == r.seq && back->view(13) == r.book;
    for (const auto& [column, text] : texts)
        same = same && back->view(column) == *text;
    return same ? Result<void>{} : unavailable("The disk gave back something else than was written: " + nameOf(r) + ".");
}

Result<std::vector<Record>> Store::Inner::ofSubject(const std::string& subject)
{
    auto query = db.use(std::string("SELECT ") + kRecordColumns + " FROM record WHERE subject = ?");
    if (!query)
        return tl::unexpected(query.error());
    query->bind(1, subject);
    std::vector<Record> records;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return records;
        auto record = recordOf(*query, 0);
        if (!record)
            return tl::unexpected(record.error());
        records.push_back(std::move(*record));
    }
}

Result<void> Store::Inner::foldOne(const std::string& subject, Before before)
{
    const auto records = ofSubject(subject);
    if (!records)
        return tl::unexpected(records.error());
    return foldSubject(db, subject, *records, records->size() == 1 ? Before::Nothing : before);
}

Result<void> Store::Inner::foldArrived(const std::string& subject, std::span<const Record> arrived)
{
    std::int64_t all = 0;
    {
        auto query = db.use("SELECT count(*) FROM record WHERE subject = ?");
        if (!query)
            return tl::unexpected(query.error());
        if (const auto row = query->bind(1, subject).step(); !row)
            return tl::unexpected(row.error());
        all = query->whole(0);
    }
    const bool isNew = std::cmp_equal(all, arrived.size());
    return isNew ? foldSubject(db, subject, arrived, Before::Nothing) : foldOne(subject, Before::Rows);
}

Result<void> Store::Inner::fold(const std::set<std::string>& subjects)
{
    for (const std::string& subject : subjects)
        if (auto folded = foldOne(subject, Before::Rows); !folded)
            return folded;
    return {};
}

Result<Record> Store::record(const std::string& hash) const
{
    return m_inner->find(hash);
}

Result<std::vector<StoredRecord>> Store::storedRecords(const RecordFilter& filter) const
{
    std::string sql = std::string("SELECT row, ") + kRecordColumns + " FROM record WHERE row > ?1";
    if (!filter.subject.empty())
        sql += " AND subject = ?3";
    if (!filter.kind.empty())
        sql += " AND kind = ?4";
    auto query = m_inner->db.use(sql + " ORDER BY row LIMIT ?2");
    if (!query)
        return tl::unexpected(query.error());
    query->bind(1, filter.afterRow).bind(2, static_cast<std::int64_t>(filter.most));
    query->bind(3, filter.subject).bind(4, filter.kind);
    std::vector<StoredRecord> records;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return records;
        auto record = recordOf(*query, 1);
        if (!record)
            return tl::unexpected(record.error());
        records.push_back({query->whole(0), std::move(*record)});
    }
}

Result<std::vector<Record>> Store::records(const RecordFilter& filter) const
{
    auto stored = storedRecords(filter);
    if (!stored)
        return tl::unexpected(stored.error());
    std::vector<Record> records;
    for (StoredRecord& one : *stored)
        records.push_back(std::move(one.record));
    return records;
}

}  // namespace groundcount::book
