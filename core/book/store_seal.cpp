#include "book/checked_record.h"
#include "book/kinds.h"
#include "book/retired.h"
#include "book/seal.h"
#include "book/store_inner.h"

namespace groundcount::book {

Result<Record> Store::Inner::sealOne(const Entry& entry)
{
    if (auto form = checkEnvelope(entry); !form)
        return tl::unexpected(form.error());
    if (auto body = checkBody(entry.kind, entry.body); !body)
        return tl::unexpected(body.error());
    if (!entry.amends.empty()) {
        const auto amended = find(entry.amends);
        if (!amended)
            return tl::unexpected(amended.error());
        if (amended->kind != entry.kind || amended->subject != entry.subject)
            return refused("An amendment must have the kind and subject of what it amends; it is a " + entry.kind +
                           " for " + nameOf(*amended) + ".");
    }
    const auto book = bookId();
    if (!book)
        return tl::unexpected(book.error());
    std::int64_t seq = 1;
    std::string prev;
    {
        auto last = db.use("SELECT seq, hash FROM record WHERE device = ? ORDER BY seq DESC LIMIT 1");
        if (!last)
            return tl::unexpected(last.error());
        const auto row = last->bind(1, key->device()).step();
        if (!row)
            return tl::unexpected(row.error());
        if (*row) {
            seq = last->whole(0) + 1;
            prev = last->text(1);
        }
    }
    if (auto good = isGood(key->device(), seq); !good)
        return tl::unexpected(good.error());
    auto record = sealEntry(entry, *key, seq, prev, *book);
    if (!record)
        return record;
    const auto sound = verifiedBody(*record);
    if (!sound)
        return tl::unexpected(sound.error());
    if (auto inserted = insert(*record, *sound); !inserted)
        return tl::unexpected(inserted.error());
    return record;
}

Result<Record> Store::seal(const Entry& entry)
{
    auto records = sealAll({&entry, 1});
    if (!records)
        return tl::unexpected(records.error());
    return std::move(records->front());
}

Result<std::vector<Record>> Store::sealAll(std::span<const Entry> entries)
{
    return sealThen(entries, [](const std::vector<Record>&) { return std::vector<Entry>(); });
}

Result<std::vector<Record>> Store::sealThen(std::span<const Entry> first, const Following& following)
{
    if (auto may = m_inner->writable(); !may)
        return tl::unexpected(may.error());
    if (!m_inner->key)
        return refused("Sealing needs this device's key; the book was opened without one.");
    auto transaction = Transaction::begin(m_inner->db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    std::vector<Record> records;
    std::set<std::string> subjects;
    const auto sealEach = [&](std::span<const Entry> entries) -> Result<void> {
        for (const Entry& entry : entries) {
            auto record = m_inner->sealOne(entry);
            if (!record)
                return tl::unexpected(record.error());
            subjects.insert(record->subject);
            records.push_back(std::move(*record));
        }
        return {};
    };
    if (!first.empty())
        if (auto named = m_inner->nameBook(bookIdOf(first.front(), m_inner->key->device())); !named)
            return tl::unexpected(named.error());
    if (auto sealed = sealEach(first); !sealed)
        return tl::unexpected(sealed.error());
    const auto more = following(records);
    if (!more)
        return tl::unexpected(more.error());
    if (auto sealed = sealEach(*more); !sealed)
        return tl::unexpected(sealed.error());
    if (auto folded = m_inner->fold(subjects); !folded)
        return tl::unexpected(folded.error());
    if (auto done = transaction->commit(); !done)
        return tl::unexpected(done.error());
    return records;
}

}  // namespace groundcount::book
