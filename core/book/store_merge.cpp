#include "book/checked_record.h"
#include "book/retired.h"
#include "book/seal.h"
#include "book/store_inner.h"

#include <algorithm>
#include <atomic>
#include <map>
#include <optional>

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
    /// @return none when it was given up
    static Result<std::optional<MergeReport>> take(Store& into, std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp);

private:
    Taking(Store::Inner& inner, MergeReport& report) : m_inner(inner), m_report(report) {}
    Result<void> all(std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp);

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

    Result<void> fold(const std::atomic<bool>& givenUp)
    {
        for (auto of = m_arrived.begin(); of != m_arrived.end() && !givenUp; ++of)
            if (auto folded = m_inner.foldArrived(of->first, of->second); !folded)
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
    return Taking::take(into, std::move(records), false).map([](auto report) { return *std::move(report); });
}

Result<std::optional<MergeReport>> takeChecked(Store& into, std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp)
{
    return Taking::take(into, std::move(records), givenUp);
}

Result<void> Taking::all(std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp)
{
    if (auto begun = begin(); !begun)
        return begun;
    std::stable_partition(records.begin(), records.end(), [](const CheckedRecord& one) { return one.record().kind == "retired-key"; });
    for (auto sound = records.begin(); sound != records.end() && !givenUp; ++sound) {
        if (!sound->fault().empty())
            m_report.refused.push_back(sound->fault());
        else if (auto done = one(std::move(*sound)); !done)
            return done;
    }
    return fold(givenUp);
}

Result<std::optional<MergeReport>> Taking::take(Store& into, std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp)
{
    Store::Inner& inner = *into.m_inner;
    if (auto may = inner.writable(); !may)
        return tl::unexpected(may.error());
    auto transaction = Transaction::begin(inner.db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    MergeReport report;
    if (auto done = Taking(inner, report).all(std::move(records), givenUp); !done)
        return tl::unexpected(done.error());
    if (givenUp)
        return std::nullopt;
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
