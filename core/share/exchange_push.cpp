#include "book/carrier_mark.h"
#include "book/hash.h"
#include "share/exchange_job.h"

#include <algorithm>

namespace groundcount::share {

namespace {

constexpr const char* kPushed = "pushed";  // mark: this book's row up to which it was sent

class Pusher {
public:
    explicit Pusher(Job& job) : m_job(job) {}

    void add(std::string text)
    {
        m_bytes += text.size();
        m_texts.push_back(std::move(text));
    }
    bool isFull() const { return m_texts.size() >= kTexts || m_bytes >= kBytes; }

    /// Asks which of the texts are missing there, and adds those under the job's counter.
    Result<void> send(Pushed& report)
    {
        if (m_texts.empty())
            return {};
        std::vector<std::string> hashes;
        for (const std::string& text : m_texts)
            hashes.push_back(book::sha256Bytes(text));
        auto absent = m_job.server.run("SELECT u.place FROM unnest($2::bytea[]) WITH ORDINALITY AS u(hash, place) WHERE NOT EXISTS"
                                       " (SELECT 1 FROM groundcount.sealed s WHERE s.project_id = $1 AND s.text_hash = u.hash) ORDER BY u.place",
                                       {uuidOf(m_job.id), bytesListOf(hashes)});
        if (!absent)
            return tl::unexpected(absent.error());
        std::vector<std::string> missing;
        missing.reserve(static_cast<std::size_t>(absent->rows()));
        for (int row = 0; row < absent->rows(); ++row)
            missing.push_back(std::move(m_texts.at(static_cast<std::size_t>(absent->whole(row, 0) - 1))));
        if (!missing.empty())
            if (auto put = insert(missing); !put)
                return put;
        report.sent += missing.size();
        report.known += m_texts.size() - missing.size();
        m_texts.clear();
        m_bytes = 0;
        return {};
    }

private:
    Result<void> insert(const std::vector<std::string>& texts)
    {
        auto work = Work::begin(m_job.server);
        if (!work)
            return tl::unexpected(work.error());
        // the row lock makes numbers visible in their order; the greatest number is asked for as well, so that a counter set back harms nobody
        auto counter = m_job.server.run("SELECT last_seq FROM groundcount.project WHERE project_id = $1 FOR UPDATE", {uuidOf(m_job.id)});
        if (!counter)
            return tl::unexpected(counter.error());
        if (counter->rows() == 0)
            return refused("The server no longer admits this login to the job " + m_job.id + ".");
        auto greatest = m_job.server.run("SELECT coalesce(max(seq), 0) FROM groundcount.sealed WHERE project_id = $1", {uuidOf(m_job.id)});
        if (!greatest)
            return tl::unexpected(greatest.error());
        const std::int64_t last = std::max(counter->whole(0, 0), greatest->whole(0, 0));
        auto put = m_job.server.run("INSERT INTO groundcount.sealed(project_id, text_hash, seq, text)"
                                    " SELECT $1, sha256(u.text), $2 + u.place, u.text FROM unnest($3::bytea[]) WITH ORDINALITY AS u(text, place)"
                                    " ON CONFLICT (project_id, text_hash) DO NOTHING",
                                    {uuidOf(m_job.id), wholeOf(last), bytesListOf(texts)});
        if (!put)
            return tl::unexpected(put.error());
        auto moved = m_job.server.run("UPDATE groundcount.project SET last_seq = $2 WHERE project_id = $1",
                                      {uuidOf(m_job.id), wholeOf(last + static_cast<std::int64_t>(texts.size()))});
        if (!moved)
            return tl::unexpected(moved.error());
        return work->commit();
    }

    Job& m_job;
    std::vector<std::string> m_texts;
    std::size_t m_bytes = 0;
};

Result<void> pushRecords(book::Store& store, Job& job, Pushed& report, const book::KeepOn& keepOn)
{
    Pusher pusher(job);
    auto pushed = numberMark(store, job, kPushed);
    for (;;) {
        if (!pushed)
            return tl::unexpected(pushed.error());
        const auto batch = store.storedRecords({{}, {}, *pushed, kTexts});
        if (!batch)
            return tl::unexpected(batch.error());
        if (batch->empty())
            return {};
        for (const book::StoredRecord& one : *batch) {
            auto text = book::textOfRecord(one.record);
            if (!text)
                return tl::unexpected(text.error());
            pusher.add(std::move(*text));
        }
        if (auto sent = pusher.send(report); !sent)
            return sent;
        *pushed = batch->back().row;
        if (auto noted = book::setCarrierMark(store, job.begun, kPushed, std::to_string(*pushed)); !noted)
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
    std::vector<std::string> waiting;
    const auto settle = [&]() -> Result<void> {
        if (auto sent = pusher.send(report); !sent)
            return sent;
        for (const std::string& hash : waiting)
            if (auto noted = book::setCarrierMark(store, job.begun, hash, "there"); !noted)
                return noted;
        waiting.clear();
        return {};
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
        pusher.add(std::move(*text));
        waiting.push_back(hash);
        if (!pusher.isFull())
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
