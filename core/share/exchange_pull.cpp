#include "book/later_flush.h"
#include "share/pull_parts.h"

#include <future>

namespace groundcount::share {

namespace {

/// Reads a range on from its mark to the server's end. One part is taken while the next is read and verified and the one behind that is fetched, each on a thread of its
/// own: only the first uses the book, only the last the server.
Result<void> pullOn(book::Store& store, Job& job, const Range& range, book::BundleReport& report, const book::KeepOn& keepOn)
{
    const auto begin = placeIn(store, job, range);
    if (!begin)
        return tl::unexpected(begin.error());
    const auto fetchBehind = [&](const Place& place) { return std::async(std::launch::async, [&, place] { return fetch(job, range, place); }); };
    auto fetching = fetchBehind(*begin);
    for (Taking taking(store, job, range, begin->seen, report);;) {
        const auto fetched = fetching.get();
        const bool isMore = fetched && *fetched;
        if (isMore)
            fetching = fetchBehind((*fetched)->behind);
        const auto isWanted = isMore ? taking.add(verified(**fetched), keepOn) : taking.finish(keepOn);
        if (!isWanted || !fetched)
            return tl::unexpected(isWanted ? fetched.error() : isWanted.error());
        report.stopped = !*isWanted;
        if (report.stopped || !isMore)
            return {};
    }
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
    std::size_t seen = 0;
    const book::KeepOn told = [&](std::size_t texts) { return keepOn(seen = texts); };
    // the server holds what comes; what a power cut takes, it takes with the mark behind it, and the next pull reads it again
    auto flush = book::LaterFlush::begin(store);
    if (!flush)
        return tl::unexpected(flush.error());
    const auto done = [&]() -> Result<void> {
        auto job = jobOn(address, *last > 0 ? *own : join, impatience.asked());
        if (!job)
            return tl::unexpected(job.error());
        for (const Range& range : ranges())
            if (auto read = pullWhole(store, *job, range, report, told); !read || report.stopped)
                return read;
        return {};
    }();
    report.stopped |= impatience.ended();
    if (report.taken + report.known + report.blobs > 0) {
        auto flushing = std::async(std::launch::async, [&] { return flush->end(); });
        while (flushing.wait_for(kTellWithin) != std::future_status::ready)
            keepOn(seen);  // it goes on, whatever the answer
        if (auto flushed = flushing.get(); !flushed)
            return tl::unexpected(flushed.error());
    }
    if (!done && !impatience.ended())
        return tl::unexpected(done.error());
    report.whole = !report.stopped;
    return report;
}

}  // namespace groundcount::share
