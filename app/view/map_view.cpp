#include "view/map_view.h"

#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/map_content.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

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
    if (!m_coverageShown)
        return;
    m_shown = std::make_shared<CoverageShown>();
    m_beside.start([ask = askCoverage(*m_session, m_lift, m_origin), shown = m_shown](const std::atomic<bool>& stop) { *shown = workOut(ask, stop); });
}

void MapView::takeCoverage()
{
    auto scene = std::make_shared<map::MapScene>(*m_source.scene());
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
    std::vector<Row> rows;
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
                rows.push_back(testRow(*test));
        }
    }
    m_tests.setRows(std::move(rows));
    m_title = lots.isEmpty() ? tr("Map") : lots.size() == 1 ? tr("Lot %1, lift %2").arg(lots.first()).arg(m_lift)
                                                            : tr("Lots %1, lift %2").arg(lots.join(", ")).arg(m_lift);
    m_subtitle = lots.isEmpty() ? tr("No lots in this book yet")
                                : tr("%1 of %2 made").arg(made).arg(required) + (open > 0 ? ", " + tr("%n failure(s) open", nullptr, open) : QString());
}

void MapView::setTheme(const QString& theme)
{
    if (theme == m_theme)
        return;
    m_theme = theme;
    if (m_session)
        setLift(m_lift);
}

void MapView::showCoverage(bool shown)
{
    if (shown == m_coverageShown)
        return;
    m_coverageShown = shown;
    if (m_session)
        setLift(m_lift);
}

void MapView::showFacts(const book::TestRow& test)
{
    const QString density = m_session->job().densityUnit == "kg/m3" ? tr("kg/m³") : tr("lb/ft³");
    const auto add = [&](const QString& label, const QString& fact) {
        if (fact.trimmed().isEmpty())
            return;
        m_chosenFactLabels << label;
        m_chosenFacts << fact;
    };
    const auto pair = [](const std::string& a, const std::string& b) { return a.empty() || b.empty() ? QString() : shownDecimal(a) + QStringLiteral(", ") + shownDecimal(b); };
    add(tr("Moisture"), test.contentPct.empty() ? QString() : shownDecimal(test.contentPct) + QStringLiteral(" %"));
    add(tr("Dry, wet"), test.dry.empty() ? QString() : pair(test.dry, test.wet) + ' ' + density);
    add(tr("Maximum"), test.maximum.empty() ? QString() : shownDecimal(test.maximum) + ' ' + density + ' ' + QString::fromStdString(test.proctorName));
    add(tr("Gauge"), QString::fromStdString(test.gaugeName) + (test.depthInText.empty() ? QString() : ", " + tr("%1 in.").arg(shownDecimal(test.depthInText))));
    add(tr("By"), QString::fromStdString(test.personName) + ", " + localText(test.startedAt, test.offsetMinutes, QStringLiteral("MMM d, h:mm")));
    add(tr("Retest of"), QString::fromStdString(test.retestOfNumber));
    add(tr("Record"), QString::fromStdString(test.recordHash.substr(0, 8)));
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

void MapView::choose(const QString& id)
{
    m_chosenId = id;
    m_chosen = {};
    m_chosenIsTest = false;
    m_chosenFacts.clear();
    m_chosenFactLabels.clear();
    const Snapshot& all = m_session->snapshot();
    for (const auto& test : all.tests) {
        if (QString::fromStdString(test.id) != id)
            continue;
        m_chosen = testRow(test);
        m_chosen.title = tr("Test %1, %2").arg(QString::fromStdString(test.number), wordOf(test.state).toLower());
        m_chosen.second = stationOffsetText(test.stationFt, test.offsetFt) + ", " + QString::fromLatin1(book::word(test.purpose));
        m_chosen.figure += m_chosen.figure.isEmpty() ? QString() : QStringLiteral(" %");
        m_chosenIsTest = true;
        showFacts(test);
    }
    for (const auto& site : all.sites) {
        if (QString::fromStdString(site.draw + "/" + std::to_string(site.number)) != id)
            continue;
        m_chosen.mark = Mark::Owed;
        m_chosen.title = tr("Site %1, owed").arg(site.number);
        m_chosen.second = siteWords(site);
    }
    for (const auto& obstacle : all.obstacles) {
        if (QString::fromStdString(obstacle.id) == id) {
            m_chosen.title = QString::fromStdString(obstacle.name);
            m_chosen.second = QString::fromStdString(obstacle.obstacleKind);
        }
    }
    if (m_chosen.title.isEmpty())
        m_chosenId.clear();
    emit chosenChanged();
}

void MapView::touch(double east, double north)
{
    m_touchedText.clear();
    if (const auto& lines = m_session->lines(); !lines.isEmpty()) {
        const auto foot = lines.nearest(north + m_origin.north, east + m_origin.east);
        m_touchedText = foot ? lines.words(*foot) : tr("Beside the alignment's ends");
    }
    m_isHeld = false;
    emit touchedChanged();
}

void MapView::hold(double east, double north, double pixelsPerMetre)
{
    // Half of the 48 px that a fingertip in a glove covers.
    constexpr double kFingertipPixels = 24;
    choose({});
    touch(east, north);
    m_isHeld = true;
    m_heldNorth = north + m_origin.north;
    m_heldEast = east + m_origin.east;
    m_heldUncertainty = pixelsPerMetre > 0 ? kFingertipPixels / pixelsPerMetre : 0;
    emit touchedChanged();
}

void MapView::letGo()
{
    m_isHeld = false;
    emit touchedChanged();
}

}  // namespace groundcount::view
