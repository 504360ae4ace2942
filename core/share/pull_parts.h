#pragma once

#include "book/bundle.h"
#include "share/pull_place.h"

#include <atomic>
#include <chrono>
#include <cstdint>
#include <future>
#include <optional>

/// The three steps of a pull, each of which can be done while the others are: fetch, verify, take. Private to core/share.
namespace groundcount::share {

/// Whoever waits hears at least so often that it goes on.
inline constexpr std::chrono::milliseconds kTellWithin{50};

/// Texts as the server gave them, and the place behind them.
struct Fetched {
    Answer rows;
    Place behind;
};

/// The texts behind a place; none at the end of the range. @error as Connection::run
Result<std::optional<Fetched>> fetch(Job& job, const Range& range, const Place& place);

/// Texts that were read and verified, and the place behind them.
struct Part {
    book::ReadTexts texts;
    Place behind;
    std::size_t count = 0, bytes = 0;
};

/// On every core.
Part verified(const Fetched& fetched);

/// Takes parts on a thread of its own, as many texts at once as kTakenAtOnce (.cpp) says: fewer transactions write fewer pages. A stop gives up what is not yet
/// committed.
class Taking {
public:
    /// @param seen texts of the range that were read before
    Taking(book::Store& store, const Job& job, const Range& range, std::int64_t seen, book::BundleReport& report)
        : m_store(store), m_job(job), m_range(range), m_report(report), m_seen(seen)
    {
    }

    /// @return what `keepOn` says, which is asked each time and while it takes long @error of the book
    Result<bool> add(Part part, const book::KeepOn& keepOn);
    /// Takes what waits. @return as add
    Result<bool> finish(const book::KeepOn& keepOn);

private:
    bool isDone(std::chrono::milliseconds within) const { return m_result.wait_for(within) == std::future_status::ready; }
    void begin();
    Result<bool> end(const book::KeepOn& keepOn);

    book::Store& m_store;
    const Job& m_job;
    const Range& m_range;
    book::BundleReport& m_report;
    Part m_waiting;
    std::atomic<bool> m_givenUp = false;
    std::int64_t m_seen, m_next = 0;  // texts
    std::future<Result<book::BundleReport>> m_result;
};

}  // namespace groundcount::share
