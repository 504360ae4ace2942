#include "book/carrier_mark.h"
#include "book/later_flush.h"
#include "share/exchange_job.h"

#include <limits>

namespace groundcount::share {

namespace {

constexpr const char* kPulled = "pulled";  // marks: the server's number up to which it was read,
constexpr const char* kSeen = "seen";      // and how many texts that were

/// The next texts, at most so many ($3, less one) and so long. A range of numbers and not a LIMIT: on a table that is not yet analysed the planner would sort
/// all that is left for each. The range begins at the least number, since a member may have left holes of any size, and ends at the greatest there is.
constexpr const char* kNext = "SELECT seq, text FROM (SELECT seq, text, sum(octet_length(text)) OVER (ORDER BY seq) - octet_length(text) AS before"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq > $2 AND seq <= $3 + (SELECT least(min(seq), 9223372036854775807 - $3)"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq > $2)) AS sized WHERE before < $4 ORDER BY seq";

/// Where a pull goes on. It begins below every number, since a member may have put a text under any.
Result<std::int64_t> pulledMark(const book::Store& store, const Job& job)
{
    const auto mark = book::carrierMark(store, job.begun, kPulled);
    if (!mark)
        return tl::unexpected(mark.error());
    return mark->empty() ? Result<std::int64_t>(std::numeric_limits<std::int64_t>::min()) : numberMark(store, job, kPulled);
}

/// Reads on from the mark to the server's end.
Result<void> pullOn(book::Store& store, Job& job, book::BundleReport& report, const book::KeepOn& keepOn)
{
    auto cursor = pulledMark(store, job), seen = numberMark(store, job, kSeen);
    for (;;) {
        if (!cursor || !seen)
            return tl::unexpected(cursor ? seen.error() : cursor.error());
        auto rows = job.server.run(kNext, {uuidOf(job.id), wholeOf(*cursor), wholeOf(std::int64_t{kTexts} - 1), wholeOf(std::int64_t{kBytes})});
        if (!rows)
            return tl::unexpected(rows.error());
        if (rows->rows() == 0)
            return {};
        std::vector<std::string> texts;
        texts.reserve(static_cast<std::size_t>(rows->rows()));
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
        const std::pair<std::string, std::string> marks[] = {{kPulled, std::to_string(*cursor)}, {kSeen, std::to_string(*seen)}};
        if (auto noted = book::setCarrierMarks(store, job.begun, marks); !noted)
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

/// Reads again from the start when a text was put behind the mark.
Result<void> pullMissed(book::Store& store, Job& job, book::BundleReport& report, const book::KeepOn& keepOn)
{
    const auto missed = hasMissed(store, job);
    if (!missed)
        return tl::unexpected(missed.error());
    if (!*missed)
        return {};
    const std::pair<std::string, std::string> none[] = {{kPulled, ""}, {kSeen, ""}};
    if (auto noted = book::setCarrierMarks(store, job.begun, none); !noted)
        return noted;
    report.refused.clear();  // the second reading lists them again
    return pullOn(store, job, report, keepOn);
}

}  // namespace

Result<book::BundleReport> pull(book::Store& store, const std::string& address, const std::string& join, const book::KeepOn& keepOn, const Patience& patience)
{
    const auto own = store.bookId();
    if (!own)
        return tl::unexpected(own.error());
    const auto last = store.lastRow();
    if (!last)
        return tl::unexpected(last.error());
    if (!join.empty() && *last > 0 && join != *own)
        return refused("This book is the job " + *own + "; a copy of the job " + join.substr(0, 36) + " needs a new book.");
    Impatience impatience(patience);
    book::BundleReport report;
    // the server holds what comes; what a power cut takes, it takes with the mark behind it, and the next pull reads it again
    auto flush = book::LaterFlush::begin(store);
    if (!flush)
        return tl::unexpected(flush.error());
    const auto done = [&]() -> Result<void> {
        auto job = jobOn(address, *last > 0 ? *own : join, impatience.asked());
        if (!job)
            return tl::unexpected(job.error());
        if (auto read = pullOn(store, *job, report, keepOn); !read || report.stopped)
            return read;
        return pullMissed(store, *job, report, keepOn);
    }();
    report.stopped |= impatience.ended();
    if (report.taken + report.known + report.blobs > 0)
        if (auto flushed = flush->end(); !flushed)
            return tl::unexpected(flushed.error());
    if (!done && !impatience.ended())
        return tl::unexpected(done.error());
    report.whole = !report.stopped;
    return report;
}

}  // namespace groundcount::share
