#include "share/pull_parts.h"

#include <string_view>
#include <utility>
#include <vector>

namespace groundcount::share {

namespace {

constexpr std::size_t kTakenAtOnce = 2000;  // texts; with fewer, each commit writes the same pages of the indexes again

/// The next texts from a number ($2) on, at most so many ($3, less one) and so long ($4), up to a number ($5). A range of numbers and not a LIMIT: on a table that is not yet
/// analysed the planner would sort all that is left for each. It begins at the least number there is, since a member may have left holes of any size.
constexpr const char* kNext = "SELECT seq, text FROM (SELECT seq, text, sum(octet_length(text)) OVER (ORDER BY seq) - octet_length(text) AS before"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2 AND seq <= least($5, $3 + (SELECT least(min(seq), 9223372036854775807 - $3)"
                              " FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2))) AS sized WHERE before < $4 ORDER BY seq";

Result<book::BundleReport> take(book::Store& store, const Job& job, const Range& range, Part part, const std::atomic<bool>& givenUp)
{
    auto taken = book::takeTexts(store, std::move(part.texts), job.id, givenUp);
    if (!taken || taken->stopped)
        return taken;
    const auto noted = note(store, job, range, part.behind);
    return noted ? taken : tl::unexpected(noted.error());
}

}  // namespace

Result<std::optional<Fetched>> fetch(Job& job, const Range& range, const Place& place)
{
    if (place.isAtEnd(range))
        return std::nullopt;
    auto rows = job.server.run(kNext, {uuidOf(job.id), wholeOf(place.next(range)), wholeOf(std::int64_t{kTexts} - 1), wholeOf(std::int64_t{kBytes}), wholeOf(range.last)});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->rows() == 0)
        return std::nullopt;
    const Place behind{rows->whole(rows->rows() - 1, 0), place.seen + rows->rows()};
    return Fetched{std::move(*rows), behind};
}

Part verified(const Fetched& fetched)
{
    std::vector<std::string_view> texts;
    std::size_t bytes = 0;
    for (int row = 0; row < fetched.rows.rows(); ++row) {
        texts.push_back(fetched.rows.view(row, 1));
        bytes += texts.back().size();
    }
    return {book::ReadTexts(texts), fetched.behind, texts.size(), bytes};
}

Result<bool> Taking::add(Part part, const book::KeepOn& keepOn)
{
    m_waiting.texts.append(std::move(part.texts));
    m_waiting.behind = part.behind;
    m_waiting.count += part.count;
    m_waiting.bytes += part.bytes;
    m_givenUp = !keepOn(static_cast<std::size_t>(m_seen));
    if (m_givenUp)
        return end(keepOn);
    if (m_waiting.count < kTakenAtOnce && m_waiting.bytes < kBytes)
        return true;
    auto isWanted = end(keepOn);
    if (isWanted && *isWanted)
        begin();
    return isWanted;
}

Result<bool> Taking::finish(const book::KeepOn& keepOn)
{
    auto isWanted = end(keepOn);
    if (!isWanted || !*isWanted || m_waiting.count == 0)
        return isWanted;
    begin();
    return end(keepOn);
}

void Taking::begin()
{
    m_next = m_waiting.behind.seen;
    m_result = std::async(std::launch::async, [this, part = std::exchange(m_waiting, {})]() mutable { return take(m_store, m_job, m_range, std::move(part), m_givenUp); });
}

Result<bool> Taking::end(const book::KeepOn& keepOn)
{
    if (!m_result.valid())
        return !m_givenUp;
    while (!isDone(kTellWithin))  // the disk may take its time
        if (!keepOn(static_cast<std::size_t>(m_seen)))
            m_givenUp = true;
    const auto part = m_result.get();
    if (!part)
        return tl::unexpected(part.error());
    m_report.add(*part);
    m_report.blobs += part->blobs;
    if (part->stopped)
        return false;
    m_seen = m_next;
    return !m_givenUp && keepOn(static_cast<std::size_t>(m_seen));
}

}  // namespace groundcount::share
