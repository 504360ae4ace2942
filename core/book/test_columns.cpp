#include "book/test_columns.h"

#include "book/column_range.h"
#include "book/database.h"
#include "book/read_view.h"
#include "book/state_query.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>
#include <thread>
#include <unordered_map>

namespace groundcount::book {

namespace {

constexpr std::int64_t kRowsWorthAThread = 20'000;

template <class Value>
void arrange(std::vector<Value>& column, const std::vector<std::uint32_t>& order)
{
    std::vector<Value> arranged;
    arranged.reserve(column.size());
    for (const std::uint32_t i : order)
        arranged.push_back(std::move(column[i]));
    column = std::move(arranged);
}

void byStart(TestColumns& c)
{
    std::vector<std::uint32_t> order(c.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto before = [&](std::uint32_t a, std::uint32_t b) {
        return c.startedMs[a] != c.startedMs[b] ? c.startedMs[a] < c.startedMs[b] : c.id[a] < c.id[b];
    };
    if (std::is_sorted(order.begin(), order.end(), before))
        return;
    std::sort(order.begin(), order.end(), before);
    eachColumn(c, [&order](auto& column) { arrange(column, order); });
}

/// One range of rows, read by a store of its own; the first by the one that was asked.
struct Side {
    std::unique_ptr<Store> store;
    std::optional<ReadView> view;
    TestColumns columns;
    Result<void> done;
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

/// Puts the rows of another range behind these.
void append(TestColumns& all, TestColumns some)
{
    std::unordered_map<std::string, std::uint32_t> known;
    for (std::uint32_t i = 0; i < all.subjects.size(); ++i)
        known.emplace(all.subjects[i], i);
    std::vector<std::uint32_t> places;
    for (std::string& subject : some.subjects) {
        const auto [place, isNew] = known.try_emplace(subject, static_cast<std::uint32_t>(all.subjects.size()));
        if (isNew)
            all.subjects.push_back(std::move(subject));
        places.push_back(place->second);
    }
    for (auto* column : {&some.lot, &some.lift, &some.person})
        for (std::uint32_t& place : *column)
            place = places[place];
    const auto join = [](auto& to, auto& from) { to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end())); };
    join(all.id, some.id);
    join(all.number, some.number);
    join(all.compactionPct, some.compactionPct);
    join(all.startedMs, some.startedMs);
    join(all.north, some.north);
    join(all.east, some.east);
    join(all.lot, some.lot);
    join(all.lift, some.lift);
    join(all.person, some.person);
    join(all.state, some.state);
    join(all.purpose, some.purpose);
    join(all.conflict, some.conflict);
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
        side.done = readRange(side.store ? *side.store : store, from, to, job->metresPerGridUnit, side.columns);
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
    TestColumns columns = std::move(sides[0].columns);
    for (std::size_t i = 1; i < sides.size(); ++i)
        append(columns, std::move(sides[i].columns));
    byStart(columns);
    return columns;
}

}  // namespace groundcount::book
