#include "book/canonical.h"
#include "book/row_reader.h"
#include "book/state_query.h"
#include "book/test_names.h"
#include "book/test_stream.h"

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <numeric>

namespace groundcount::book {

namespace {

constexpr const char* kTests =
    "SELECT id, number, lot, lift, gauge, person, material, proctor, retest_of, rework, purpose, state, sealed_steps, waiting_for, reasons,"
    " started_at, verdict_at, offset_minutes, coalesce(north, 0), coalesce(east, 0), grid_unit, coalesce(latitude_deg, 0),"
    " coalesce(longitude_deg, 0), ellipsoid_height_m, sigma_north_m, sigma_east_m, fixes, fix_kind, station, offset_ft, mode, depth_in, wet,"
    " water, dry, content_pct, compaction_pct, maximum, optimum_pct, coarse_pct, uncertainty_pct, minimum_pct, maximum_pct, window_low_pct,"
    " window_high_pct, standard_count, density_count, moisture_count, overrides, rule_set, core, record, device, conflict FROM test_row";

const std::atomic<bool> kNoStop = false;

/// Reads the rows of kTests, with the names they point to.
class TestReader {
public:
    TestReader(Database& db, double metresPerGridUnit) : m_db(db), m_metres(metresPerGridUnit), m_names(db) {}

    /// Runs kTests with a condition; `place` says where the next row is read to, `take` has it then.
    template <class Place, class Take>
    Result<void> each(const std::string& where, std::initializer_list<std::string> values, Place place, Take take)
    {
        auto query = m_db.use(kTests + where);
        if (!query)
            return tl::unexpected(query.error());
        int index = 0;
        for (const std::string& value : values)
            query->bind(++index, value);
        for (;;) {
            const auto more = query->step();
            if (!more || !*more)
                return more ? Result<void>{} : tl::unexpected(more.error());
            TestRow& test = place();
            if (auto taken = read(*query, test).and_then([&] { return take(test); }); !taken)
                return taken;
        }
    }

    /// @param expected rows that are likely, so that none is moved while the list grows
    /// @param stop ends the reading with an error
    Result<std::vector<TestRow>> list(const std::string& where, std::initializer_list<std::string> values, std::size_t expected = 0,
                                      const std::atomic<bool>& stop = kNoStop)
    {
        std::vector<TestRow> rows;
        rows.reserve(expected);
        const auto read = each(where, values, [&]() -> TestRow& { return rows.emplace_back(); },
                               [&](TestRow&) { return stop ? Result<void>(unavailable("The reading of the tests was stopped.")) : Result<void>{}; });
        if (!read)
            return tl::unexpected(read.error());
        return byStart(std::move(rows));
    }

private:
    Result<void> read(const Statement& from, TestRow& t)
    {
        int purpose = 0;
        int state = 0;
        std::string reasons;
        std::string unit;
        std::string standardCount;
        RowReader row(from);
        row >> t.id >> t.number >> t.lot >> t.lift >> t.gauge >> t.person >> t.material >> t.proctor >> t.retestOf >> t.rework >> purpose >>
            state >> t.sealedSteps >> t.waitingFor >> reasons >> t.startedAt >> t.verdictAt >> t.offsetMinutes >> t.north >> t.east >> unit >>
            t.latitudeDeg >> t.longitudeDeg >> t.ellipsoidHeightM >> t.sigmaNorthM >> t.sigmaEastM >> t.fixes >> t.fixKind >> t.stationFt >>
            t.offsetFt >> t.mode >> t.depthInText >> t.wet >> t.water >> t.dry >> t.contentPct >> t.compactionPct >> t.maximum >>
            t.optimumPct >> t.coarsePct >> t.uncertaintyPct >> t.minimumPct >> t.maximumPct >> t.windowLowPct >> t.windowHighPct >>
            standardCount >> t.densityCount >> t.moistureCount >> t.overrides >> t.ruleSetHash >> t.coreVersion >> t.recordHash >> t.device >>
            t.conflict;
        t.purpose = static_cast<TestPurpose>(purpose);
        t.state = static_cast<TestState>(state);
        if (reasons != "[]")
            if (const auto list = readJson(reasons); list && list->is_array())
                for (const auto& reason : *list)
                    if (reason.is_string())
                        t.reasons.push_back(*reason.get_ptr<const std::string*>());
        if (const double per = unit.empty() ? m_metres : metresPer(unit); per != m_metres) {
            t.north *= per / m_metres;
            t.east *= per / m_metres;
        }
        return m_names.fill(t, standardCount);
    }

    /// A book mostly stands in this order; otherwise each row is moved once, since rows are wide.
    static std::vector<TestRow> byStart(std::vector<TestRow> rows)
    {
        if (std::is_sorted(rows.begin(), rows.end(), startsBefore))
            return rows;
        std::vector<std::size_t> order(rows.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return startsBefore(rows[a], rows[b]); });
        std::vector<TestRow> sorted;
        sorted.reserve(rows.size());
        for (const std::size_t i : order)
            sorted.push_back(std::move(rows[i]));
        return sorted;
    }

    Database& m_db;
    double m_metres;
    TestNames m_names;
};

Result<TestReader> readerOf(const Store& store)
{
    return StateQuery(store).job().map([&](const JobRow& job) { return TestReader(store.database(), job.metresPerGridUnit); });
}

}  // namespace

Result<std::vector<TestRow>> StateQuery::tests(const TestFilter& filter) const
{
    auto reader = readerOf(m_store);
    if (!reader)
        return tl::unexpected(reader.error());
    if (filter.lot.empty() && filter.lift.empty() && filter.person.empty())
        return allTests(m_store, kNoStop);
    return reader->list(" WHERE (?1 = '' OR lot = ?1) AND (?2 = '' OR lift = ?2) AND (?3 = '' OR person = ?3)",
                        {filter.lot, filter.lift, filter.person});
}

Result<bool> hasMoreTests(const Store& store, std::int64_t most)
{
    return store.database().ask("SELECT count(*) FROM (SELECT 1 FROM test_row LIMIT " + std::to_string(most + 1) + ")").map([&](const std::string& count) {
        return std::strtoll(count.c_str(), nullptr, 10) > most;
    });
}

Result<std::vector<TestRow>> allTests(const Store& store, const std::atomic<bool>& stop)
{
    const auto rows = store.database().ask("SELECT count(*) FROM test_row");
    if (!rows)
        return tl::unexpected(rows.error());
    return readerOf(store).and_then([&](TestReader reader) { return reader.list("", {}, std::strtoull(rows->c_str(), nullptr, 10), stop); });
}

Result<std::vector<TestRow>> testsOfLot(const Store& store, const std::string& lot)
{
    return readerOf(store).and_then([&](TestReader reader) { return reader.list(" WHERE lot = ?1", {lot}); });
}

Result<void> eachTestByNumber(const Store& store, const std::function<Result<void>(const TestRow&)>& sink)
{
    auto reader = readerOf(store);
    if (!reader)
        return tl::unexpected(reader.error());
    // Only ids are sorted; whole rows would not fit the sorter's memory.
    auto order = store.database().use("SELECT id FROM test_row ORDER BY number COLLATE test_number, id");
    if (!order)
        return tl::unexpected(order.error());
    for (;;) {
        const auto more = order->step();
        if (!more || !*more)
            return more ? Result<void>{} : tl::unexpected(more.error());
        TestRow test;
        if (const auto given = reader->each(" WHERE id = ?1", {order->text(0)}, [&]() -> TestRow& { return test = {}; }, sink); !given)
            return given;
    }
}

Result<std::vector<TestRow>> testsTouchedBy(const Store& store, const std::vector<std::string>& ids)
{
    auto reader = readerOf(store);
    if (!reader)
        return tl::unexpected(reader.error());
    std::vector<TestRow> touched;
    for (const std::string& id : ids) {
        auto rows = reader->list(" WHERE id = ?1 OR (retest_of = ?1 AND retest_of <> '')", {id});
        if (!rows)
            return rows;
        std::move(rows->begin(), rows->end(), std::back_inserter(touched));
    }
    return touched;
}

Result<TestRow> StateQuery::test(const std::string& id) const
{
    auto rows = readerOf(m_store).and_then([&](TestReader reader) { return reader.list(" WHERE id = ?1", {id}); });
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return refused("No test of this book has the subject " + id.substr(0, 36) + ".");
    return std::move(rows->front());
}

}  // namespace groundcount::book
