#include "book/carrier_mark.h"
#include "book/hash.h"
#include "book/later_flush.h"
#include "book/stored_text.h"
#include "share/exchange_job.h"

#include <algorithm>
#include <future>
#include <limits>
#include <set>
#include <utility>

namespace groundcount::share {

namespace {

constexpr const char* kPushed = "pushed";  // mark: this book's row up to which it was sent

/// Texts that are sent together.
struct Batch {
    std::vector<std::string> texts, hashes;
    std::size_t bytes = 0;
    std::int64_t lastRow = 0;

    void add(std::string text)
    {
        bytes += text.size();
        hashes.push_back(book::sha256Bytes(text));
        texts.push_back(std::move(text));
    }
    bool isFull() const { return texts.size() >= kTexts || bytes >= kBytes; }
};

class Pusher {
public:
    explicit Pusher(Job& job) : m_job(job) {}

    /// Adds the texts that are not there. Those that are there are asked for first, unless there were none before: then the server says it.
    Result<void> send(Batch batch, Pushed& report)
    {
        const std::size_t all = batch.texts.size();
        if (m_asks && all > 0)
            if (auto left = leaveOut(batch); !left)
                return left;
        const auto put = batch.texts.empty() ? Result<std::size_t>(0) : insert(batch);
        if (!put)
            return tl::unexpected(put.error());
        report.sent += *put;
        report.known += all - *put;
        m_asks = *put < all;
        return {};
    }

private:
    Result<void> leaveOut(Batch& batch)
    {
        auto there = m_job.server.run("SELECT text_hash FROM groundcount.sealed WHERE project_id = $1 AND text_hash = ANY($2)",
                                      {uuidOf(m_job.id), bytesListOf(batch.hashes)});
        if (!there)
            return tl::unexpected(there.error());
        std::set<std::string> known;
        for (int row = 0; row < there->rows(); ++row)
            known.insert(there->bytes(row, 0));
        Batch missing;
        for (std::size_t i = 0; i < batch.texts.size(); ++i)
            if (!known.contains(batch.hashes[i])) {
                missing.texts.push_back(std::move(batch.texts[i]));
                missing.hashes.push_back(std::move(batch.hashes[i]));
            }
        batch = std::move(missing);
        return {};
    }

    /// @return how many are there that were not
    Result<std::size_t> insert(const Batch& batch)
    {
        // the server takes rows faster that it need not hold back until it has looked for others with their keys
        auto put = insert(batch, "");
        if (!put && put.error().fault == Fault::Refused)
            put = insert(batch, " ON CONFLICT (project_id, text_hash) DO NOTHING");
        return put;
    }

    Result<std::size_t> insert(const Batch& batch, const std::string& onConflict)
    {
        const Parameter job = uuidOf(m_job.id);
        auto work = Work::begun(m_job.server);
        // the row lock makes numbers visible in their order; the greatest number is asked for as well, so that a counter set back harms nobody
        const auto counters = m_job.server.runAll({Work::opening(),
                                                   {"SELECT last_seq FROM groundcount.project WHERE project_id = $1 FOR UPDATE", {job}},
                                                   {"SELECT coalesce(max(seq), 0) FROM groundcount.sealed WHERE project_id = $1", {job}}});
        if (!counters)
            return tl::unexpected(counters.error());
        if (counters->at(1).rows() == 0)
            return refused("The server no longer admits this login to the job " + m_job.id + ".");
        const auto many = static_cast<std::int64_t>(batch.texts.size());
        auto last = Result<std::int64_t>(std::max({std::int64_t{0}, counters->at(1).whole(0, 0), counters->at(2).whole(0, 0)}));
        if (*last > std::numeric_limits<std::int64_t>::max() - many)
            last = lastWithRoom(many);
        if (!last)
            return tl::unexpected(last.error());
        const auto put = m_job.server.runAll({{"INSERT INTO groundcount.sealed(project_id, text_hash, seq, text)"
                                               " SELECT $1, u.hash, $2 + u.place, u.text FROM unnest($3::bytea[], $4::bytea[]) WITH ORDINALITY AS u(hash, text, place)" +
                                                   onConflict,
                                               {job, wholeOf(*last), bytesListOf(batch.hashes), bytesListOf(batch.texts)}},
                                              {"UPDATE groundcount.project SET last_seq = $2 WHERE project_id = $1", {job, wholeOf(*last + many)}},
                                              {"COMMIT", {}}});
        if (!put)
            return tl::unexpected(put.error());
        work.committed();
        return static_cast<std::size_t>(put->at(0).changed());
    }

    /// The greatest number with so many free behind it: a member may have used the last one there is, or set the counter there.
    Result<std::int64_t> lastWithRoom(std::int64_t many)
    {
        auto found = m_job.server.run("SELECT seq FROM (SELECT seq, lead(seq, 1, 9223372036854775807) OVER (ORDER BY seq) AS next FROM groundcount.sealed"
                                      " WHERE project_id = $1) AS placed WHERE seq >= 0 AND next - seq > $2 ORDER BY seq DESC LIMIT 1",
                                      {uuidOf(m_job.id), wholeOf(many)});
        return found.map([](const Answer& answer) { return answer.rows() == 0 ? std::int64_t{0} : answer.whole(0, 0); });
    }

    bool m_asks = true;
    Job& m_job;
};

/// The records behind a row of the book; none at its end.
Result<Batch> recordsAfter(const book::Store& store, std::int64_t row)
{
    auto texts = book::storedTexts(store, row, kTexts);
    if (!texts)
        return tl::unexpected(texts.error());
    Batch batch;
    for (book::StoredText& one : *texts) {
        batch.add(std::move(one.text));
        batch.lastRow = one.row;
    }
    return batch;
}

/// The next batch is read and written out while the server works on one; the book is never used by both threads at once.
Result<void> pushRecords(book::Store& store, Job& job, Pushed& report, const book::KeepOn& keepOn)
{
    Pusher pusher(job);
    const auto pushed = numberMark(store, job, kPushed);
    auto batch = pushed ? recordsAfter(store, *pushed) : tl::unexpected(pushed.error());
    for (;;) {
        if (!batch)
            return tl::unexpected(batch.error());
        if (batch->texts.empty())
            return {};
        const std::int64_t last = batch->lastRow;
        auto next = std::async(std::launch::async, [&store, last] { return recordsAfter(store, last); });
        const auto sent = pusher.send(std::move(*batch), report);
        batch = next.get();
        if (!sent)
            return sent;
        if (auto noted = book::setCarrierMark(store, job.begun, kPushed, std::to_string(last)); !noted)
            return noted;
        if (!keepOn(report.sent + report.known)) {
            report.stopped = true;
            return {};
        }
    }
}

Result<void> pushContents(book::Store& store, Job& job, Pushed& report, const book::KeepOn& keepOn)
{
    const auto hashes = store.blobHashes();
    if (!hashes)
        return tl::unexpected(hashes.error());
    Pusher pusher(job);
    Batch batch;
    std::vector<std::pair<std::string, std::string>> waiting;
    const auto settle = [&]() -> Result<void> {
        if (auto sent = pusher.send(std::exchange(batch, {}), report); !sent)
            return sent;
        return book::setCarrierMarks(store, job.begun, std::exchange(waiting, {}));
    };
    for (const std::string& hash : *hashes) {
        const auto there = book::carrierMark(store, job.begun, hash);
        if (!there)
            return tl::unexpected(there.error());
        if (!there->empty())
            continue;
        const auto content = store.blob(hash);
        if (!content)
            return tl::unexpected(content.error());
        auto text = book::textOfContent(hash, *content);
        if (!text)
            return tl::unexpected(text.error());
        batch.add(std::move(*text));
        waiting.emplace_back(hash, "there");
        if (!batch.isFull())
            continue;
        if (auto settled = settle(); !settled)
            return settled;
        if (!keepOn(report.sent + report.known)) {
            report.stopped = true;
            return {};
        }
    }
    return settle();
}

}  // namespace

Result<Pushed> push(book::Store& store, const std::string& address, const book::KeepOn& keepOn, const Patience& patience)
{
    const auto id = store.bookId();
    if (!id)
        return tl::unexpected(id.error());
    Impatience impatience(patience);
    Pushed report;
    const auto notes = book::LaterFlush::begin(store);  // a note of what was sent that a power cut takes costs time only
    if (!notes)
        return tl::unexpected(notes.error());
    const auto done = [&]() -> Result<void> {
        auto job = jobOn(address, *id, impatience.asked());
        if (!job)
            return tl::unexpected(job.error());
        if (auto records = pushRecords(store, *job, report, keepOn); !records || report.stopped)
            return records;
        return pushContents(store, *job, report, keepOn);
    }();
    report.stopped |= impatience.ended();
    if (!done && !impatience.ended())
        return tl::unexpected(done.error());
    return report;
}

}  // namespace groundcount::share
