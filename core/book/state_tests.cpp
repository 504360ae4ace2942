#include "book/canonical.h"
#include "book/row_reader.h"
#include "book/state_query.h"
#include "book/test_stream.h"

#include <algorithm>
#include <set>

namespace groundcount::book {

namespace {

constexpr const char* kTests =
    "SELECT t.id, t.number, t.lot, coalesce(l.name, ''), t.lift, t.gauge, coalesce(g.name, ''), t.person, coalesce(p.name, ''),"
    " coalesce(p.certificate, ''), coalesce(nullif(t.material, ''), l.material, ''), coalesce(m.name, ''),"
    " coalesce(nullif(t.proctor, ''), l.proctor, ''), coalesce(x.name, ''), t.retest_of, coalesce(o.number, ''), t.rework,"
    " coalesce(f.number, 0), t.purpose, t.state, t.sealed_steps, t.waiting_for, t.reasons, t.started_at, t.verdict_at,"
    " t.offset_minutes, coalesce(t.north, 0), coalesce(t.east, 0), t.grid_unit, coalesce(t.latitude_deg, 0),"
    " coalesce(t.longitude_deg, 0), t.ellipsoid_height_m, t.sigma_north_m, t.sigma_east_m, t.fixes, t.fix_kind, t.station,"
    " t.offset_ft, t.mode, t.depth_in, t.wet, t.water, t.dry, t.content_pct, t.compaction_pct, t.maximum, t.optimum_pct,"
    " t.coarse_pct, t.uncertainty_pct, t.minimum_pct, t.maximum_pct, t.window_low_pct, t.window_high_pct,"
    " coalesce(c.density, ''), coalesce(c.moisture, ''), t.density_count, t.moisture_count, t.overrides,"
    " coalesce(c.override_reason, ''), t.rule_set, t.core, t.record, t.device, t.conflict FROM test_row t"
    " LEFT JOIN lot_row l ON l.id = t.lot LEFT JOIN lift_row f ON f.id = t.lift LEFT JOIN gauge_row g ON g.id = t.gauge"
    " LEFT JOIN person_row p ON p.id = t.person"
    " LEFT JOIN material_row m ON m.id = coalesce(nullif(t.material, ''), l.material)"
    " LEFT JOIN proctor_row x ON x.id = coalesce(nullif(t.proctor, ''), l.proctor)"
    " LEFT JOIN test_row o ON o.id = nullif(t.retest_of, '')"
    " LEFT JOIN standard_count_row c ON c.id = (SELECT subject FROM record WHERE hash = nullif(t.standard_count, ''))";

void readTest(RowReader row, const JobRow& job, TestRow& t)
{
    int purpose = 0;
    int state = 0;
    std::string reasons;
    std::string unit;
    std::string standardOverride;
    row >> t.id >> t.number >> t.lot >> t.lotName >> t.lift >> t.gauge >> t.gaugeName >> t.person >> t.personName >>
        t.certificate >> t.material >> t.materialName >> t.proctor >> t.proctorName >> t.retestOf >> t.retestOfNumber >>
        t.rework >> t.liftNumber >> purpose >> state >> t.sealedSteps >> t.waitingFor >> reasons >> t.startedAt >>
        t.verdictAt >> t.offsetMinutes >> t.north >> t.east >> unit >> t.latitudeDeg >> t.longitudeDeg >>
        t.ellipsoidHeightM >> t.sigmaNorthM >> t.sigmaEastM >> t.fixes >> t.fixKind >> t.stationFt >> t.offsetFt >> t.mode >>
        t.depthInText >> t.wet >> t.water >> t.dry >> t.contentPct >> t.compactionPct >> t.maximum >> t.optimumPct >>
        t.coarsePct >> t.uncertaintyPct >> t.minimumPct >> t.maximumPct >> t.windowLowPct >> t.windowHighPct >>
        t.densityStandard >> t.moistureStandard >> t.densityCount >> t.moistureCount >> t.overrides >> standardOverride >>
        t.ruleSetHash >> t.coreVersion >> t.recordHash >> t.device >> t.conflict;
    t.purpose = static_cast<TestPurpose>(purpose);
    t.state = static_cast<TestState>(state);
    if (reasons != "[]")
        if (const auto list = readJson(reasons); list && list->is_array())
            for (const auto& reason : *list)
                if (reason.is_string())
                    t.reasons.push_back(*reason.get_ptr<const std::string*>());
    if (!standardOverride.empty())
        t.overrides += (t.overrides.empty() ? "" : "; ") + standardOverride;
    if (!unit.empty() && metresPer(unit) != job.metresPerGridUnit) {
        t.north *= metresPer(unit) / job.metresPerGridUnit;
        t.east *= metresPer(unit) / job.metresPerGridUnit;
    }
}

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// "26A" is "26"; a number without trailing letters after digits is left as it is.
std::string withoutLetters(const std::string& number)
{
    std::size_t end = number.size();
    while (end > 0 && number[end - 1] >= 'A' && number[end - 1] <= 'Z')
        --end;
    return end > 0 && isDigit(number[end - 1]) ? number.substr(0, end) : number;
}

}  // namespace

std::string retestNumber(const std::string& parentNumber, int retest)
{
    std::string letters;
    for (int n = retest; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return parentNumber + letters;
}

Result<std::vector<TestRow>> StateQuery::tests(const TestFilter& filter) const
{
    const auto job = this->job();
    if (!job)
        return tl::unexpected(job.error());
    return readAll<TestRow>(m_store.database(),
        std::string(kTests) + " WHERE (?1 = '' OR t.lot = ?1) AND (?2 = '' OR t.lift = ?2) AND (?3 = '' OR t.person = ?3)"
                              " ORDER BY t.started_at, t.id",
        {filter.lot, filter.lift, filter.person}, [&](RowReader row, TestRow& t) { readTest(row, *job, t); });
}

Result<std::vector<TestRow>> testsOfLot(const Store& store, const std::string& lot)
{
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    return readAll<TestRow>(store.database(), std::string(kTests) + " WHERE t.lot = ?1 ORDER BY t.started_at, t.id", {lot},
                            [&](RowReader row, TestRow& t) { readTest(row, *job, t); });
}

Result<void> eachTestByNumber(const Store& store, const std::function<Result<void>(const TestRow&)>& sink)
{
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    // Only ids are sorted; whole rows would not fit the sorter's memory.
    auto order = store.database().use("SELECT id FROM test_row ORDER BY number COLLATE test_number, id");
    if (!order)
        return tl::unexpected(order.error());
    const std::string byId = std::string(kTests) + " WHERE t.id = ?1";
    for (;;) {
        const auto more = order->step();
        if (!more || !*more)
            return more ? Result<void>{} : tl::unexpected(more.error());
        auto query = store.database().use(byId);
        if (!query)
            return tl::unexpected(query.error());
        const auto found = query->bind(1, order->text(0)).step();
        if (!found)
            return tl::unexpected(found.error());
        TestRow test;
        readTest(RowReader(*query), *job, test);
        if (const auto taken = sink(test); !taken)
            return taken;
    }
}

Result<TestRow> StateQuery::test(const std::string& id) const
{
    const auto job = this->job();
    if (!job)
        return tl::unexpected(job.error());
    auto rows = readAll<TestRow>(m_store.database(), std::string(kTests) + " WHERE t.id = ?1", {id},
                                 [&](RowReader row, TestRow& t) { readTest(row, *job, t); });
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return refused("No test of this book has the subject " + id.substr(0, 36) + ".");
    return std::move(rows->front());
}

Result<std::string> StateQuery::nextTestNumber() const
{
    const auto numbers = readAll<std::string>(m_store.database(), "SELECT number FROM test_row", {},
                                              [](RowReader row, std::string& number) { row >> number; });
    if (!numbers)
        return tl::unexpected(numbers.error());
    long long greatest = 0;
    for (const std::string& number : *numbers) {
        const std::string digits = withoutLetters(number);
        if (!digits.empty() && digits.size() < 16 && std::all_of(digits.begin(), digits.end(), isDigit))
            greatest = std::max(greatest, std::stoll(digits));
    }
    return std::to_string(greatest + 1);
}

Result<std::string> StateQuery::nextRetestNumber(const std::string& testId) const
{
    const auto rows = readAll<std::pair<std::string, std::pair<std::string, std::string>>>(
        m_store.database(), "SELECT id, number, retest_of FROM test_row", {},
        [](RowReader row, auto& t) { row >> t.first >> t.second.first >> t.second.second; });
    if (!rows)
        return tl::unexpected(rows.error());
    std::string root = testId;
    std::string number;
    std::set<std::string> passed;  // a hostile book may hold a ring of retests
    const auto find = [&](const std::string& id) {
        return std::find_if(rows->begin(), rows->end(), [&](const auto& t) { return t.first == id; });
    };
    for (auto it = find(root); it != rows->end() && passed.insert(root).second; it = find(root)) {
        number = it->second.first;
        if (it->second.second.empty() || find(it->second.second) == rows->end())
            break;
        root = it->second.second;
    }
    if (number.empty())
        return refused("No test of this book has the subject " + testId.substr(0, 36) + ".");
    std::set<std::string> taken;
    for (const auto& t : *rows)
        taken.insert(t.second.first);
    int retest = 1;
    while (taken.contains(retestNumber(number, retest)))
        ++retest;
    return retestNumber(number, retest);
}

}  // namespace groundcount::book
