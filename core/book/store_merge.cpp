#include "book/checked_record.h"
#include "book/retired.h"
#include "book/seal.h"
#include "book/store_inner.h"

#include <algorithm>
#include <map>

namespace groundcount::book {

namespace {

std::string shortId(const std::string& book)
{
    return book.empty() ? "none (format 1)" : book;
}

}  // namespace

/// Takes sound records one after the other inside a transaction.
class Taking {
public:
    static Result<MergeReport> take(Store& into, std::vector<CheckedRecord> records);

private:
    Taking(Store::Inner& inner, MergeReport& report) : m_inner(inner), m_report(report) {}

    Result<void> begin()
    {
        const auto id = m_inner.bookId();
        if (!id)
            return tl::unexpected(id.error());
        m_book = *id;
        const auto any = m_inner.db.ask("SELECT 1 FROM record LIMIT 1");
        if (!any)
            return tl::unexpected(any.error());
        m_isEmpty = any->empty() && m_inner.format != 1;
        return hear();
    }

    Result<void> one(CheckedRecord&& sound)
    {
        const Record& record = sound.record();
        const auto here = m_inner.has(record.hash);
        if (!here)
            return tl::unexpected(here.error());
        if (*here) {
            ++m_report.known;
            return {};
        }
        if (!m_isEmpty && record.book != m_book)
            return no("It was sealed in another field book (id " + shortId(record.book) + ", this one is " + shortId(m_book) + "): ", record);
        if (const auto retired = m_retired.find(record.device); retired != m_retired.end()) {
            const auto fork = forks(record);
            if (!fork)
                return tl::unexpected(fork.error());
            if (*fork || !stands(record, retired->second))
                return no(sentence(retired->second) + (*fork ? " Another record has this number: " : " Beyond it: "), record);
        }
        if (m_isEmpty) {
            if (auto named = m_inner.nameBook(record.book); !named)
                return named;
            m_book = record.book;
            m_isEmpty = false;
        }
        if (auto inserted = m_inner.insert(record, sound.body()); !inserted)
            return inserted;
        ++m_report.taken;
        const bool speaksOfKeys = record.kind == "retired-key" || record.kind == "void";
        std::vector<Record>& ofSubject = m_arrived[record.subject];
        ofSubject.push_back(std::move(sound).release());
        return speaksOfKeys ? hear() : Result<void>{};
    }

    Result<void> fold()
    {
        for (const auto& [subject, records] : m_arrived)
            if (auto folded = m_inner.foldArrived(subject, records); !folded)
                return folded;
        return {};
    }

    Result<void> no(const std::string& why, const Record& record)
    {
        m_report.refused.push_back(why + nameOf(record) + ".");
        return {};
    }

    Result<void> hear()
    {
        auto keys = retiredKeys(m_inner.db);
        if (!keys)
            return tl::unexpected(keys.error());
        m_retired = std::move(*keys);
        return {};
    }

    Result<bool> forks(const Record& record)
    {
        auto query = m_inner.db.use("SELECT 1 FROM record WHERE device = ? AND seq = ?");
        if (!query)
            return tl::unexpected(query.error());
        return query->bind(1, record.device).bind(2, record.seq).step();
    }

    Store::Inner& m_inner;
    MergeReport& m_report;
    std::map<std::string, std::vector<Record>> m_arrived;  // of each subject
    std::string m_book;
    bool m_isEmpty = false;
    RetiredKeys m_retired;
};

Result<MergeReport> Store::take(std::span<const Record> records)
{
    if (auto may = m_inner->writable(); !may)
        return tl::unexpected(may.error());
    return takeChecked(*this, checked({records.begin(), records.end()}));
}

Result<MergeReport> takeChecked(Store& into, std::vector<CheckedRecord> records)
{
    return Taking::take(into, std::move(records));
}

Result<MergeReport> Taking::take(Store& into, std::vector<CheckedRecord> records)
{
    Store::Inner& inner = *into.m_inner;
    if (auto may = inner.writable(); !may)
        return tl::unexpected(may.error());
    auto transaction = Transaction::begin(inner.db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    MergeReport report;
    Taking taking(inner, report);
    if (auto begun = taking.begin(); !begun)
        return tl::unexpected(begun.error());
    std::stable_partition(records.begin(), records.end(), [](const CheckedRecord& one) { return one.record().kind == "retired-key"; });
    for (CheckedRecord& one : records) {
        if (!one.fault().empty())
            report.refused.push_back(one.fault());
        else if (auto done = taking.one(std::move(one)); !done)
            return tl::unexpected(done.error());
    }
    if (auto folded = taking.fold(); !folded)
        return tl::unexpected(folded.error());
    if (auto done = transaction->commit(); !done)
        return tl::unexpected(done.error());
    return report;
}

Result<MergeReport> Store::mergeFrom(const Store& other)
{
    constexpr std::size_t kAtOnce = 2000;  // a transaction stays far below the 100 MB that a write-ahead log likes
    MergeReport all;
    const auto ours = bookId(), theirs = other.bookId(), empty = m_inner->db.ask("SELECT 1 WHERE NOT EXISTS (SELECT 1 FROM record)");
    const auto nothing = other.m_inner->db.ask("SELECT 1 WHERE NOT EXISTS (SELECT 1 FROM record)");
    for (const auto* asked : {&ours, &theirs, &empty, &nothing})
        if (!*asked)
            return tl::unexpected(asked->error());
    if (empty->empty() && nothing->empty() && *ours != *theirs)
        return refused("Only copies of one field book can be merged; " + other.path() + " has the id " + shortId(*theirs) + ", this one " +
                       shortId(*ours) + ". Each job is one book.");
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
    const auto takeBatch = [&](std::vector<Record> batch) -> Result<void> {
        const auto part = takeChecked(*this, checked(std::move(batch)));
        if (!part)
            return tl::unexpected(part.error());
        all.taken += part->taken;
        all.known += part->known;
        all.refused.insert(all.refused.end(), part->refused.begin(), part->refused.end());
        return {};
    };
    // retired keys first, then everything else in its order of arrival
    for (const std::string which : {"kind = 'retired-key'", "kind <> 'retired-key'"}) {
        for (std::int64_t after = 0;;) {
            auto query = other.m_inner->db.use(std::string("SELECT row, ") + kRecordColumns + " FROM record WHERE row > ? AND " + which +
                                               " ORDER BY row LIMIT ?");
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
                break;
            if (auto taken = takeBatch(std::move(batch)); !taken)
                return tl::unexpected(taken.error());
        }
    }
    return all;
}

}  // namespace groundcount::book
