#include "book/kinds.h"
#include "book/seal.h"
#include "book/store_inner.h"

namespace groundcount::book {

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

}  // namespace groundcount::book
