#include "book/test_columns.h"

#include "book/column_range.h"
#include "book/database.h"
#include "book/parallel.h"
#include "book/read_view.h"
#include "book/state_query.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <limits>
#include <optional>
#include <thread>
#include <type_traits>
#include <unordered_map>
#include <utility>

namespace groundcount::book {

namespace {

constexpr std::int64_t kRowsWorthAThread = 20'000;

/// One range of rows, read by a store of its own; the first by the one that was asked.
struct Side {
    std::unique_ptr<Store> store;
    std::optional<ReadView> view;
    TestColumns columns;
    std::vector<std::uint32_t> places;  ///< of its subjects among all
    Result<void> done;
};

/// A test: which range it was read in, and its row there.
struct Place {
    std::uint32_t side, row;
};

/// Stores that see the book at one moment; none where that cannot be had: somebody sealed between, or the file is held by one store alone.
std::vector<Side> sidesOf(const Store& store, unsigned ranges)
{
    std::vector<Side> sides(ranges);
    std::optional<std::int64_t> moment;
    for (Side& side : sides) {
        auto beside = store.readBeside();
        if (!beside)
            return {};
        side.store = std::make_unique<Store>(std::move(*beside));
        auto view = ReadView::begin(*side.store);
        const auto last = side.store->lastRow();
        if (!view || !last || (moment && *moment != *last))
            return {};
        moment = *last;
        side.view.emplace(std::move(*view));
    }
    return sides;
}

/// The tests in the order of their start, each range sorted by itself before.
class Order {
public:
    explicit Order(const std::vector<Side>& sides) : m_sides(sides) {}

    void sortOne(std::uint32_t side, std::vector<Place>& rows) const
    {
        for (std::uint32_t row = 0; row < m_sides[side].columns.size(); ++row)
            rows.push_back({side, row});
        if (!std::is_sorted(rows.begin(), rows.end(), *this))
            std::sort(rows.begin(), rows.end(), *this);
    }

    std::vector<Place> all() const
    {
        std::vector<std::vector<Place>> sorted(m_sides.size());
        inRanges(m_sides.size(), 1, [&](std::size_t from, std::size_t to) {
            for (std::size_t side = from; side < to; ++side) {
                sorted[side].reserve(m_sides[side].columns.size());
                sortOne(static_cast<std::uint32_t>(side), sorted[side]);
            }
        });
        std::vector<Place> merged = std::move(sorted[0]);
        for (std::size_t side = 1; side < sorted.size(); ++side) {
            std::vector<Place> both;
            both.reserve(merged.size() + sorted[side].size());
            std::merge(merged.begin(), merged.end(), sorted[side].begin(), sorted[side].end(), std::back_inserter(both), *this);
            merged = std::move(both);
        }
        return merged;
    }

    bool operator()(Place a, Place b) const
    {
        const TestColumns &one = m_sides[a.side].columns, &other = m_sides[b.side].columns;
        return one.startedMs[a.row] != other.startedMs[b.row] ? one.startedMs[a.row] < other.startedMs[b.row] : one.id[a.row] < other.id[b.row];
    }

private:
    const std::vector<Side>& m_sides;
};

/// The subjects of all ranges; each range learns the places of its own among them.
std::vector<std::string> subjectsOf(std::vector<Side>& sides)
{
    std::vector<std::string> all;
    std::unordered_map<std::string, std::uint32_t> known;
    for (Side& side : sides)
        for (std::string& subject : side.columns.subjects) {
            const auto [place, isNew] = known.try_emplace(subject, static_cast<std::uint32_t>(all.size()));
            if (isNew)
                all.push_back(std::move(subject));
            side.places.push_back(place->second);
        }
    return all;
}

/// The rows of all ranges as one, in the order of their start.
TestColumns joined(std::vector<Side> sides)
{
    const std::vector<Place> order = Order(sides).all();
    TestColumns all;
    all.subjects = subjectsOf(sides);
    std::vector<std::function<void()>> columns;
    eachColumn([&](auto column) {
        columns.emplace_back([&, column] {
            auto& into = all.*column;
            into.reserve(order.size());
            for (const Place at : order)
                into.push_back(std::move((sides[at.side].columns.*column)[at.row]));
            if constexpr (std::is_same_v<decltype(column), decltype(&TestColumns::lot)>)  // lot, lift and person are places among the range's own subjects
                for (std::size_t i = 0; i < order.size(); ++i)
                    into[i] = sides[order[i].side].places[into[i]];
        });
    });
    inRanges(columns.size(), 1, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i)
            columns[i]();
    });
    return all;
}

}  // namespace

std::string TestColumns::idText(std::size_t i) const
{
    constexpr char kHex[] = "0123456789abcdef";
    std::string text;
    for (std::size_t k = 0; k < 16; ++k) {
        if (k == 4 || k == 6 || k == 8 || k == 10)
            text += '-';
        text += kHex[id[i][k] >> 4U];
        text += kHex[id[i][k] & 0x0FU];
    }
    return text;
}

Result<TestColumns> testColumns(const Store& store, unsigned ranges)
{
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    const auto most = store.database().ask("SELECT coalesce(max(rowid), 0) FROM test_row");
    if (!most)
        return tl::unexpected(most.error());
    const std::int64_t rows = std::strtoll(most->c_str(), nullptr, 10);
    if (ranges == 0)
        ranges = static_cast<unsigned>(std::clamp<std::int64_t>(rows / kRowsWorthAThread, 1, std::max(1U, std::thread::hardware_concurrency())));
    auto sides = ranges > 1 ? sidesOf(store, ranges) : std::vector<Side>();
    if (sides.empty())
        sides.emplace_back();  // one pass over the store itself
    const auto bound = [&](std::size_t i) { return rows * static_cast<std::int64_t>(i) / static_cast<std::int64_t>(sides.size()); };
    const auto read = [&](std::size_t i) {
        Side& side = sides[i];
        // open at both ends: the last row number is a hint, and none is left out
        const std::int64_t from = i == 0 ? std::numeric_limits<std::int64_t>::min() : bound(i) + 1;
        const std::int64_t to = i + 1 == sides.size() ? std::numeric_limits<std::int64_t>::max() : bound(i + 1);
        side.done = readRange(side.store ? *side.store : store, from, to, bound(i + 1) - bound(i), job->metresPerGridUnit, side.columns);
    };
    std::vector<std::thread> threads;
    for (std::size_t i = 1; i < sides.size(); ++i)
        threads.emplace_back(read, i);
    read(0);
    for (std::thread& thread : threads)
        thread.join();
    for (const Side& side : sides)
        if (!side.done)
            return tl::unexpected(side.done.error());
    return joined(std::move(sides));
}

}  // namespace groundcount::book
