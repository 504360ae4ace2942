#include "view/tests_view.h"

#include "book/local_time.h"
#include "view/figure_text.h"
#include "view/test_rows.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string_view>

namespace groundcount::view {
namespace {

constexpr std::size_t kDays = 7;  // the newest; an older day is found by lot or person

/// What a test is sorted by, but for the day; of the row itself, since a million are looked at.
std::string_view keyOf(const book::TestRow& test, TestsView::By by)
{
    switch (by) {
    case TestsView::State: return book::word(test.state);
    case TestsView::Person: return test.person;
    case TestsView::Gauge: return test.gauge;
    case TestsView::Material: return test.material;
    case TestsView::Day:
    case TestsView::kBys: break;
    }
    return {};
}

/// Local days since 1970-01-01.
std::int64_t dayOf(const book::TestRow& test)
{
    return static_cast<std::int64_t>(std::floor(static_cast<double>(book::millisecondsOf(test.startedAt) + test.offsetMinutes * 60'000LL) / 86'400'000.0));
}

QString wordFor(const book::TestRow& test, TestsView::By by)
{
    switch (by) {
    case TestsView::State: return wordOf(test.state);
    case TestsView::Person: return QString::fromStdString(test.personName);
    case TestsView::Gauge: return QString::fromStdString(test.gaugeName);
    case TestsView::Material: return QString::fromStdString(test.materialName);
    case TestsView::Day:
    case TestsView::kBys: break;
    }
    return localText(test.startedAt, test.offsetMinutes, QStringLiteral("MMM d"));
}

}  // namespace

void TestsView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &TestsView::refresh);
    refresh();
    emit sessionChanged();
}

void TestsView::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    refresh();
}

void TestsView::pick(By by, int index)
{
    Filter& filter = m_by[by];
    if (index < 0 || index >= static_cast<int>(filter.words.size()) || index == filter.chosen)
        return;
    filter.chosen = index;
    apply();
}

void TestsView::pickAll()
{
    for (Filter& filter : m_by)
        filter.chosen = 0;
    apply();
}

void TestsView::refresh()
{
    if (!m_session)
        return;
    const Snapshot& all = m_session->snapshot();
    const std::string lot = m_lot.toStdString();
    std::array<std::map<std::string, QString>, kBys> found;
    std::array<std::string_view, kBys> last;  // tests that stand together are mostly alike
    std::optional<std::int64_t> lastDay;
    for (const auto& test : all.tests) {
        if (!lot.empty() && test.lot != lot)
            continue;
        for (const By by : {State, Person, Gauge, Material})
            if (const auto key = keyOf(test, by); !key.empty() && key != last[by]) {
                last[by] = key;
                if (auto [at, isNew] = found[by].try_emplace(std::string(key)); isNew)
                    at->second = wordFor(test, by);
            }
        if (const auto day = dayOf(test); day != lastDay) {
            found[Day].emplace(book::localDay(test.startedAt, test.offsetMinutes), wordFor(test, Day));
            lastDay = day;
        }
    }
    while (found[Day].size() > kDays)
        found[Day].erase(found[Day].begin());
    for (const By by : {State, Person, Gauge, Material, Day}) {
        Filter& filter = m_by[by];
        const std::string kept = filter.keys.empty() ? std::string() : filter.key();
        filter.words = QStringList{tr("All")};
        filter.keys = {std::string()};
        for (const auto& [key, word] : found[by]) {
            filter.keys.push_back(key);
            filter.words << word;
        }
        const auto at = std::find(filter.keys.begin(), filter.keys.end(), kept);
        filter.chosen = at == filter.keys.end() ? 0 : static_cast<int>(at - filter.keys.begin());
    }
    const auto named = std::find_if(all.lots.begin(), all.lots.end(), [&](const auto& l) { return l.id == lot; });
    m_title = named == all.lots.end() ? tr("Every lot") : tr("Lot %1").arg(QString::fromStdString(named->name));
    apply();
}

void TestsView::apply()
{
    const auto& tests = m_session->snapshot().tests;
    const std::string lot = m_lot.toStdString();
    std::vector<By> asked;
    QStringList words;
    for (const By by : {State, Person, Gauge, Material, Day})
        if (m_by[by].chosen > 0) {
            asked.push_back(by);
            words << m_by[by].words[m_by[by].chosen];
        }
    const std::int64_t day = book::millisecondsOf(m_by[Day].key() + "T00:00:00.000Z") / 86'400'000;
    const auto isLike = [&](const book::TestRow& test, By by) { return by == Day ? dayOf(test) == day : keyOf(test, by) == m_by[by].key(); };
    std::vector<std::uint32_t> places;
    for (std::size_t i = tests.size(); i-- > 0;) {  // the newest first
        const auto& test = tests[i];
        if ((lot.empty() || test.lot == lot) && std::all_of(asked.begin(), asked.end(), [&](By by) { return isLike(test, by); }))
            places.push_back(static_cast<std::uint32_t>(i));
    }
    m_filterText = words.isEmpty() ? tr("All tests") : words.join(QStringLiteral(", "));
    m_tests.show(m_session, std::move(places));
    emit changed();
}

}  // namespace groundcount::view
