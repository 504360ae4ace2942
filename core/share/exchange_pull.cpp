#include "book/carrier_mark.h"
#include "book/later_flush.h"
#include "share/exchange_job.h"

#include <algorithm>
#include <chrono>
#include <future>
#include <limits>
#include <optional>

namespace groundcount::share {

namespace {

constexpr std::chrono::milliseconds kTellWithin{50};
constexpr std::int64_t kFirst = std::numeric_limits<std::int64_t>::min(), kLast = std::numeric_limits<std::int64_t>::max();

/// A range of the server's numbers that is read by itself, and the marks of how far it was: the number up to which it was read, and how many texts that were.
/// Two of them, since a member may put a text under the last number there is: what honest devices add comes before it, and is found there without reading all again.
struct Range {
    std::int64_t first, last;
    const char *pulled, *seen;
};
constexpr std::int64_t kUsual = std::int64_t{1} << 62;
constexpr Range kRanges[] = {{kFirst, kUsual, "pulled", "seen"}, {kUsual + 1, kLast, "pulled beyond", "seen beyond"}};

/// The next texts from a number ($2) on, at most so many ($3, less one) and so long ($4), up to a number ($5). A range of numbers and not a LIMIT: on a table that is not yet
/// analysed the planner would sort all that is left for each. It begins at the least number there is, since a member may have left holes of any size.
constexpr const char* kNext = "SELECT seq, text FROM (SELECT seq, text, sum(octet_length(text)) OVER (ORDER BY seq) - octet_length(text) AS before"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2 AND seq <= least($5, $3 + (SELECT least(min(seq), 9223372036854775807 - $3)"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2))) AS sized WHERE before < $4 ORDER BY seq";

/// How far a range was read; one below its first number when it was not.
struct Place {
    std::optional<std::int64_t> pulled;
    std::int64_t seen = 0;
    bool isAtEnd(const Range& range) const { return pulled && *pulled >= range.last; }
    std::int64_t next(const Range& range) const { return pulled ? *pulled + 1 : range.first; }
};

Result<Place> placeIn(const book::Store& store, const Job& job, const Range& range)
{
    const auto mark = book::carrierMark(store, job.begun, range.pulled);
    const auto pulled = numberMark(store, job, range.pulled), seen = numberMark(store, job, range.seen);
    for (const auto* number : {&pulled, &seen})
        if (!mark || !*number)
            return tl::unexpected(mark ? number->error() : mark.error());
    // a book of an earlier version has one mark for all numbers
    return mark->empty() ? Place{} : Place{std::min(*pulled, range.last), *seen};
}

Result<void> note(book::Store& store, const Job& job, const Range& range, const Place& place)
{
    const std::pair<std::string, std::string> marks[] = {{range.pulled, place.pulled ? std::to_string(*place.pulled) : ""},
                                                         {range.seen, place.pulled ? std::to_string(place.seen) : ""}};
    return book::setCarrierMarks(store, job.begun, marks);
}

/// Texts that lie here, read and verified, and the place behind them.
struct Part {
    book::ReadTexts texts;
    Place behind;
    int count = 0;
};

Result<Part> partFrom(Job& job, const Range& range, const Place& place)
{
    if (place.isAtEnd(range))
        return Part{};
    auto rows = job.server.run(kNext, {uuidOf(job.id), wholeOf(place.next(range)), wholeOf(std::int64_t{kTexts} - 1), wholeOf(std::int64_t{kBytes}), wholeOf(range.last)});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->rows() == 0)
        return Part{};
    std::vector<std::string_view> texts;
    texts.reserve(static_cast<std::size_t>(rows->rows()));
    for (int row = 0; row < rows->rows(); ++row)
        texts.push_back(rows->view(row, 1));
    return Part{book::ReadTexts(texts), {rows->whole(rows->rows() - 1, 0), place.seen + rows->rows()}, rows->rows()};
}

Result<book::BundleReport> take(book::Store& store, const Job& job, const Range& range, Part part)
{
    auto taken = book::takeTexts(store, std::move(part.texts), job.id);
    if (!taken)
        return taken;
    const auto noted = note(store, job, range, part.behind);
    return noted ? taken : tl::unexpected(noted.error());
}

void add(const book::BundleReport& part, book::BundleReport& to)
{
    to.taken += part.taken;
    to.known += part.known;
    to.blobs += part.blobs;
    to.refused.insert(to.refused.end(), part.refused.begin(), part.refused.end());
}

/// Reads a range on from its mark to the server's end. A part is fetched, read and verified on this thread while the one before it is taken on another; the book is never
/// used by both at once.
Result<void> pullOn(book::Store& store, Job& job, const Range& range, book::BundleReport& report, const book::KeepOn& keepOn)
{
    const auto begin = placeIn(store, job, range);
    auto part = begin ? partFrom(job, range, *begin) : tl::unexpected(begin.error());
    for (std::int64_t seen = begin ? begin->seen : 0;;) {
        if (!part)
            return tl::unexpected(part.error());
        if (part->count == 0)
            return {};
        const Place behind = part->behind;
        auto taking = std::async(std::launch::async, [&, own = std::move(*part)]() mutable { return take(store, job, range, std::move(own)); });
        part = partFrom(job, range, behind);
        const auto goesOn = [&] { return keepOn(static_cast<std::size_t>(seen)); };
        bool isWanted = true;
        while (taking.wait_for(kTellWithin) != std::future_status::ready)  // the disk may take its time
            isWanted = goesOn() && isWanted;
        const auto taken = taking.get();
        if (!taken)
            return tl::unexpected(taken.error());
        add(*taken, report);
        seen = behind.seen;
        if (!isWanted || !goesOn()) {
            report.stopped = true;
            return {};
        }
    }
}

/// How many of the texts up to the mark are there now that were not read: a text that was put behind the mark.
Result<bool> hasMissed(const book::Store& store, Job& job, const Range& range)
{
    const auto place = placeIn(store, job, range);
    if (!place)
        return tl::unexpected(place.error());
    if (!place->pulled)
        return false;
    auto there = job.server.run("SELECT count(*) FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2 AND seq <= $3",
                                {uuidOf(job.id), wholeOf(range.first), wholeOf(*place->pulled)});
    return there.map([&](const Answer& answer) { return answer.whole(0, 0) != place->seen; });
}

/// Reads a range from its mark, and again from its start when a text was put behind the mark.
Result<void> pullWhole(book::Store& store, Job& job, const Range& range, book::BundleReport& report, const book::KeepOn& keepOn)
{
    const auto before = report.refused.size();
    if (auto read = pullOn(store, job, range, report, keepOn); !read || report.stopped)
        return read;
    const auto missed = hasMissed(store, job, range);
    if (!missed)
        return tl::unexpected(missed.error());
    if (!*missed)
        return {};
    if (auto noted = note(store, job, range, {}); !noted)
        return noted;
    report.refused.resize(before);  // the second reading lists them again
    return pullOn(store, job, range, report, keepOn);
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
        for (const Range& range : kRanges)
            if (auto read = pullWhole(store, *job, range, report, keepOn); !read || report.stopped)
                return read;
        return {};
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
