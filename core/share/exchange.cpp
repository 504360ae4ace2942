#include "share/exchange.h"

#include "book/carrier_mark.h"
#include "book/hash.h"
#include "book/seal.h"
#include "share/connection.h"

#include <algorithm>
#include <charconv>
#include <limits>

namespace groundcount::share {

namespace {

constexpr std::size_t kTexts = 500;            // a transaction of some tenths of a second holds the job's counter no longer
constexpr std::size_t kBytes = 8U << 20U;
constexpr const char* kPulled = "pulled";      // marks: the server's number up to which it was read,
constexpr const char* kSeen = "seen";          // how many texts that were,
constexpr const char* kPushed = "pushed";      // and this book's row up to which it was sent

/// A job on a server: `begun` tells one server from another that was set up again in its place.
struct Job {
    Connection server;
    std::string id, begun;
};

Result<Job> jobOn(const std::string& address, const std::string& id)
{
    if (!book::isSubject(id))
        return refused("A shared server carries books that have an id; this one has none: it is empty, or of format 1.");
    auto server = Connection::open(address);
    if (!server)
        return tl::unexpected(server.error());
    auto project = server->run("SELECT begun::text FROM groundcount.project WHERE project_id = $1", {uuidOf(id)});
    if (!project)
        return tl::unexpected(project.error());
    if (project->rows() == 0)
        return refused("The server does not admit this login to the job " + id + ", or does not know it; its administrator admits logins.");
    return Job{std::move(*server), id, project->bytes(0, 0)};
}

std::int64_t wholeFrom(const std::string& text)
{
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

Result<std::int64_t> numberMark(const book::Store& store, const Job& job, const char* name)
{
    return book::carrierMark(store, job.begun, name).map(wholeFrom);
}

/// Where a pull goes on. It begins below every number, since a member may have put a text under any.
Result<std::int64_t> pulledMark(const book::Store& store, const Job& job)
{
    return book::carrierMark(store, job.begun, kPulled).map([](const std::string& text) {
        return text.empty() ? std::numeric_limits<std::int64_t>::min() : wholeFrom(text);
    });
}

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

/// Reads on from the mark to the server's end.
Result<void> pullOn(book::Store& store, Job& job, book::BundleReport& report, const book::KeepOn& keepOn)
{
    auto cursor = pulledMark(store, job), seen = numberMark(store, job, kSeen);
    for (;;) {
        if (!cursor || !seen)
            return tl::unexpected(cursor ? seen.error() : cursor.error());
        auto rows = job.server.run(
            "SELECT seq, text FROM (SELECT seq, text, sum(octet_length(text)) OVER (ORDER BY seq) - octet_length(text) AS before FROM"
            " (SELECT seq, text FROM groundcount.sealed WHERE project_id = $1 AND seq > $2 ORDER BY seq LIMIT $3) AS part) AS sized"
            " WHERE before < $4 ORDER BY seq",
            {uuidOf(job.id), wholeOf(*cursor), wholeOf(std::int64_t{kTexts}), wholeOf(std::int64_t{kBytes})});
        if (!rows)
            return tl::unexpected(rows.error());
        if (rows->rows() == 0)
            return {};
        std::vector<std::string> texts;
        for (int row = 0; row < rows->rows(); ++row)
            texts.push_back(rows->bytes(row, 1));
        const auto part = book::takeTexts(store, texts, job.id);
        if (!part)
            return tl::unexpected(part.error());
        report.taken += part->taken;
        report.known += part->known;
        report.blobs += part->blobs;
        report.refused.insert(report.refused.end(), part->refused.begin(), part->refused.end());
        *cursor = rows->whole(rows->rows() - 1, 0);
        *seen += rows->rows();
        for (const auto& [name, value] : {std::pair(kPulled, *cursor), std::pair(kSeen, *seen)})
            if (auto noted = book::setCarrierMark(store, job.begun, name, std::to_string(value)); !noted)
                return noted;
        if (!keepOn(static_cast<std::size_t>(*seen))) {
            report.stopped = true;
            return {};
        }
    }
}

/// How many of the texts up to the mark are there now that were not read: a text that was put behind the mark.
Result<bool> hasMissed(const book::Store& store, Job& job)
{
    const auto cursor = pulledMark(store, job), seen = numberMark(store, job, kSeen);
    if (!cursor || !seen)
        return tl::unexpected(cursor ? seen.error() : cursor.error());
    auto there = job.server.run("SELECT count(*) FROM groundcount.sealed WHERE project_id = $1 AND seq <= $2", {uuidOf(job.id), wholeOf(*cursor)});
    return there.map([&](const Answer& answer) { return answer.whole(0, 0) != *seen; });
}

}  // namespace

Result<Pushed> push(book::Store& store, const std::string& address, const book::KeepOn& keepOn)
{
    const auto id = store.bookId();
    if (!id)
        return tl::unexpected(id.error());
    auto job = jobOn(address, *id);
    if (!job)
        return tl::unexpected(job.error());
    Pushed report;
    if (auto records = pushRecords(store, *job, report, keepOn); !records)
        return tl::unexpected(records.error());
    if (!report.stopped)
        if (auto contents = pushContents(store, *job, report, keepOn); !contents)
            return tl::unexpected(contents.error());
    return report;
}

Result<book::BundleReport> pull(book::Store& store, const std::string& address, const std::string& join, const book::KeepOn& keepOn)
{
    const auto own = store.bookId();
    if (!own)
        return tl::unexpected(own.error());
    const auto last = store.lastRow();
    if (!last)
        return tl::unexpected(last.error());
    if (!join.empty() && *last > 0 && join != *own)
        return refused("This book is the job " + *own + "; a copy of the job " + join.substr(0, 36) + " needs a new book.");
    auto job = jobOn(address, *last > 0 ? *own : join);
    if (!job)
        return tl::unexpected(job.error());
    book::BundleReport report;
    if (auto done = pullOn(store, *job, report, keepOn); !done)
        return tl::unexpected(done.error());
    if (report.stopped)
        return report;
    const auto missed = hasMissed(store, *job);
    if (!missed)
        return tl::unexpected(missed.error());
    if (*missed) {
        for (const char* const name : {kPulled, kSeen})
            if (auto noted = book::setCarrierMark(store, job->begun, name, ""); !noted)
                return tl::unexpected(noted.error());
        report.refused.clear();  // the second reading lists them again
        if (auto done = pullOn(store, *job, report, keepOn); !done)
            return tl::unexpected(done.error());
    }
    report.whole = !report.stopped;
    return report;
}

}  // namespace groundcount::share
