#include "view/map_view.h"

#include "book/test_columns.h"
#include "view/lot_state.h"
#include "view/map_content.h"
#include "view/test_rows.h"

#include <algorithm>
#include <iterator>

namespace groundcount::view {

MapView::MapView(QObject* parent) : QObject(parent)
{
    connect(&m_beside, &BesideWork::ended, this, &MapView::takeCoverage);
}

void MapView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &MapView::refresh);
    refresh();
    emit sessionChanged();
}

void MapView::refresh()
{
    const Snapshot& all = m_session->snapshot();
    m_lifts.clear();
    for (const auto& lift : all.lifts)
        m_lifts.push_back(lift.number);
    std::sort(m_lifts.begin(), m_lifts.end());
    m_lifts.erase(std::unique(m_lifts.begin(), m_lifts.end()), m_lifts.end());
    if (std::find(m_lifts.begin(), m_lifts.end(), m_lift) == m_lifts.end())
        m_lift = startLift();
    setLift(m_lift);
}

int MapView::startLift() const
{
    // The lift under work: the one with the newest test, else the highest.
    if (const auto* columns = m_session->columns(); columns && columns->size() > 0)
        if (const int number = liftNumbers(m_session->snapshot(), *columns)[columns->lift.back()]; number > 0)
            return number;
    const auto& tests = m_session->snapshot().tests;
    const auto newest = std::max_element(tests.begin(), tests.end(), [](const auto& a, const auto& b) { return a.startedAt < b.startedAt; });
    if (newest != tests.end() && newest->liftNumber > 0)
        return newest->liftNumber;
    return m_lifts.empty() ? map::kEveryLift : m_lifts.back();
}

void MapView::setLift(int lift)
{
    m_lift = lift;
    m_origin = sceneOrigin(*m_session);
    auto scene = mapContent(*m_session, lift);
    m_background.layUnder(*scene, *m_session, m_origin, m_theme);
    m_hasContent = !scene->points.empty() || !scene->lines.empty();
    m_plain = scene;
    m_source.setScene(scene);
    startCoverage();
    refreshWords();
    emit changed();
    emit chosenChanged();
}

void MapView::startCoverage()
{
    // What was begun for another lift or an earlier state of the book is dropped.
    m_beside.stop();
    m_coverage.setRows({});
    if (!m_coverageShown || m_session->isReading())
        return;
    m_shown = std::make_shared<CoverageShown>();
    m_beside.start([ask = askCoverage(*m_session, m_lift, m_origin), shown = m_shown](const std::atomic<bool>& stop) { *shown = workOut(ask, stop); });
}

void MapView::takeCoverage()
{
    auto scene = std::make_shared<map::MapScene>(*m_plain);
    std::move(m_shown->areas.begin(), m_shown->areas.end(), std::back_inserter(scene->areas));
    std::move(m_shown->rings.begin(), m_shown->rings.end(), std::back_inserter(scene->rings));
    m_coverage.setRows(std::move(m_shown->rows));
    m_source.setScene(std::move(scene));
    emit changed();
}

void MapView::refreshWords()
{
    const Snapshot& all = m_session->snapshot();
    QStringList lots;
    int made = 0, required = 0, open = 0;
    std::vector<std::uint32_t> places;
    const TestsByLift byLift(all);
    for (const auto& lot : all.lots) {
        for (const auto* lift : liftsOf(all, lot)) {
            if (lift->number != m_lift)
                continue;
            const LiftState state = liftState(all, byLift, lot, *lift);
            lots << QString::fromStdString(lot.name);
            made += state.made;
            required += state.required;
            open += static_cast<int>(state.openFailures.size());
            for (const auto* test : state.tests)
                places.push_back(static_cast<std::uint32_t>(test - all.tests.data()));
        }
    }
    m_tests.show(places.size(), [session = m_session, places](std::size_t i) {
        const auto& tests = session->snapshot().tests;
        return places[i] < tests.size() ? testRow(tests[places[i]]) : Row();
    });
    constexpr int kNamedInTitle = 3; // more of them would push the map off a phone
    m_title = lots.isEmpty()                 ? tr("Map")
              : lots.size() == 1             ? tr("Lot %1, lift %2").arg(lots.first()).arg(m_lift)
              : lots.size() <= kNamedInTitle ? tr("Lots %1, lift %2").arg(lots.join(", ")).arg(m_lift)
                                             : tr("%1 lots, lift %2").arg(lots.size()).arg(m_lift);
    m_subtitle = lots.isEmpty() ? tr("No lots in this book yet")
                 : m_session->isReading() ? tr("Reading the tests…")
                                : tr("%1 of %2 made").arg(made).arg(required) + (open > 0 ? ", " + tr("%n failure(s) open", nullptr, open) : QString());
}

void MapView::setTheme(const QString& theme)
{
    if (theme == m_theme)
        return;
    m_theme = theme;
    if (!m_session)
        return;
    if (m_plain && m_plain->ground)
        setLift(m_lift);  // only the background gives way to the theme
    else
        emit changed();
}

void MapView::showCoverage(bool shown)
{
    if (shown == m_coverageShown)
        return;
    m_coverageShown = shown;
    if (m_session) {
        m_source.setScene(m_plain);
        startCoverage();
        emit changed();
    }
}

bool MapView::isReading() const
{
    return m_beside.isRunning() || (m_session && m_session->isReading());
}

QString MapView::liftText() const
{
    return m_lift == map::kEveryLift ? tr("all") : QString::number(m_lift);
}

bool MapView::canGoUp() const
{
    return !m_lifts.empty() && m_lift < m_lifts.back();
}

bool MapView::canGoDown() const
{
    return !m_lifts.empty() && m_lift > m_lifts.front();
}

void MapView::goUp()
{
    const auto at = std::upper_bound(m_lifts.begin(), m_lifts.end(), m_lift);
    if (at != m_lifts.end())
        setLift(*at);
}

void MapView::goDown()
{
    const auto at = std::lower_bound(m_lifts.begin(), m_lifts.end(), m_lift);
    if (at != m_lifts.begin())
        setLift(*std::prev(at));
}

}  // namespace groundcount::view
