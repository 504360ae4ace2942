#include "book/review_tests.h"

#include "book/local_time.h"
#include "book/row_reader.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace groundcount::book {

namespace {

constexpr const char* kChecked =
    "SELECT id, number, retest_of, started_at, density_count, moisture_count, overrides, lot, lift, gauge, person, standard_count, offset_minutes,"
    " fixes, fix_kind, state, coalesce(north, 0), coalesce(east, 0), sigma_north_m, sigma_east_m, grid_unit FROM test_row";

void readChecked(const Statement& from, double metresPerGridUnit, TextPool& names, const CheckedTest& before, CheckedTest& t)
{
    int offset = 0;
    int state = 0;
    std::string kind;
    std::string unit;
    RowReader row(from);
    row >> t.id >> t.number >> t.retestOf >> t.startedAt >> t.densityCount >> t.moistureCount >> t.overrides;
    const auto place = [&](int column, std::uint32_t guess) { return names.place(from.view(column), guess); };
    t.lot = place(7, before.lot);
    t.lift = place(8, before.lift);
    t.gauge = place(9, before.gauge);
    t.person = place(10, before.person);
    t.standardCount = place(11, before.standardCount);
    row.skip(5);
    row >> offset >> t.fixes >> kind >> state >> t.north >> t.east >> t.sigmaNorthM >> t.sigmaEastM >> unit;
    t.isByTape = kind == "by tape";
    t.state = static_cast<TestState>(state);
    t.day = localDay(t.startedAt, offset);
    if (const double per = unit.empty() ? metresPerGridUnit : metresPer(unit); per != metresPerGridUnit) {
        t.north *= per / metresPerGridUnit;
        t.east *= per / metresPerGridUnit;
    }
}

}  // namespace

std::uint32_t TextPool::place(std::string_view text, std::uint32_t guess)
{
    if (guess < m_texts.size() && m_texts[guess] == text)
        return guess;
    const auto [place, isNew] = m_places.try_emplace(std::string(text), static_cast<std::uint32_t>(m_texts.size()));
    if (isNew)
        m_texts.emplace_back(text);
    return place->second;
}

std::uint32_t CheckedTests::find(std::string_view id) const
{
    const auto found = places.find(id);
    return found == places.end() ? kNoTest : found->second;
}

Result<CheckedTests> checkedTests(const Store& store, double metresPerGridUnit)
{
    CheckedTests all;
    const auto count = store.database().ask("SELECT count(*) FROM test_row");
    auto query = store.database().use(kChecked);
    if (!count || !query)
        return tl::unexpected(count ? query.error() : count.error());
    all.rows.reserve(std::strtoull(count->c_str(), nullptr, 10));
    const CheckedTest none;
    for (;;) {
        const auto more = query->step();
        if (!more)
            return tl::unexpected(more.error());
        if (!*more)
            break;
        CheckedTest test;
        readChecked(*query, metresPerGridUnit, all.names, all.rows.empty() ? none : all.rows.back(), test);
        all.rows.push_back(std::move(test));
    }
    const auto before = [](const CheckedTest& a, const CheckedTest& b) { return std::tie(a.startedAt, a.id) < std::tie(b.startedAt, b.id); };
    if (!std::is_sorted(all.rows.begin(), all.rows.end(), before))
        std::sort(all.rows.begin(), all.rows.end(), before);
    all.places.reserve(all.rows.size());
    for (std::uint32_t i = 0; i < all.rows.size(); ++i)
        all.places.emplace(all.rows[i].id, i);
    struct Lift {
        std::string id;
        int number = 0;
    };
    const auto lifts = readAll<Lift>(store.database(), "SELECT id, number FROM lift_row", {}, [](RowReader row, Lift& l) { row >> l.id >> l.number; });
    if (!lifts)
        return tl::unexpected(lifts.error());
    for (const Lift& lift : *lifts)
        all.liftNumbers.emplace(lift.id, lift.number);
    return all;
}

}  // namespace groundcount::book
