#include "view/lots_view.h"

#include "method/site/station.h"
#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/standing_words.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>
#include <set>

namespace groundcount::view {
namespace {

const book::LotRow* lotById(const Snapshot& all, const QString& id)
{
    const auto at = std::find_if(all.lots.begin(), all.lots.end(), [&](const auto& l) { return QString::fromStdString(l.id) == id; });
    return at == all.lots.end() ? nullptr : &*at;
}

template <class Named>
QString nameOf(const std::vector<Named>& list, const std::string& id)
{
    const auto at = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.id == id; });
    return at == list.end() ? QString() : QString::fromStdString(at->name);
}

}  // namespace

LotsView::LotsView(QObject* parent) : QObject(parent) {}

void LotsView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &LotsView::refresh);
    refresh();
    emit sessionChanged();
}

void LotsView::setChosenLot(const QString& id)
{
    if (id == m_chosen)
        return;
    m_chosen = id;
    if (m_session)
        refresh();
}

void LotsView::refresh()
{
    const Snapshot& all = m_session->snapshot();
    std::vector<Row> rows;
    int made = 0, open = 0;
    std::vector<book::ReviewedLot> reviewed;
    if (m_session->isOpen())
        if (auto lots = book::reviewedLots(m_session->store(), {all.lots, all.lifts, all.tests, all.job.metresPerGridUnit, all.retestDistance}, {}))
            reviewed = std::move(*lots);
    for (const auto& lot : reviewed) {
        const auto& tally = lot.tally;
        const int failed = static_cast<int>(tally.openFailures.size());
        Row row;
        row.id = QString::fromStdString(lot.lot->id);
        row.mark = failed > 0 ? Mark::Fail : tally.required > 0 && tally.owed() == 0 ? Mark::Pass : Mark::Owed;
        row.title = tr("Lot %1").arg(QString::fromStdString(lot.lot->name));
        row.second = nameOf(all.materials, lot.lot->material) + (lot.standing == book::Standing::Underway || lot.standing == book::Standing::FailureOpen ? QString() : ", " + wordOf(lot.standing));
        row.figure = QString::number(tally.made);
        row.unit = tally.required > 0 ? tr("of %1").arg(tally.required) : QString();
        row.word = failed > 0 ? tr("%n failure(s) open", nullptr, failed) : tally.owed() == 0 ? tr("all made") : tr("%1 owed").arg(tally.owed());
        row.wordMark = failed > 0 ? Mark::Fail : Mark::Nothing;
        row.chevron = true;
        rows.push_back(std::move(row));
        made += tally.made;
        open += failed;
        if (QString::fromStdString(lot.lot->id) == m_chosen)
            showStanding(lot);
    }
    const auto owed = std::count_if(all.sites.begin(), all.sites.end(), [](const auto& site) { return site.testId.empty(); });
    m_lots.setRows(std::move(rows));
    m_summary = tr("%1 made, %2 owed, %3 open").arg(made).arg(owed).arg(open);
    if (const auto* lot = lotById(all, m_chosen))
        refreshLot(*lot);
    emit changed();
}

void LotsView::showStanding(const book::ReviewedLot& lot)
{
    m_standingMark = static_cast<int>(markOf(lot.standing));
    m_standingWord = wordOf(lot.standing);
    m_standingReason = reasonOf(lot.tally, lot.review, static_cast<int>(lot.changes.size()));
}

void LotsView::refreshLot(const book::LotRow& lot)
{
    const Snapshot& all = m_session->snapshot();
    m_lotTitle = tr("Lot %1").arg(QString::fromStdString(lot.name));
    m_lotContext = nameOf(all.materials, lot.material);
    m_requirement = requirementText(lot);
    m_columns.clear();
    const int sublots = std::max(1, lot.sublots);
    for (int i = 0; i < sublots; ++i)
        m_columns << (lot.beginStationFt ? QString::fromStdString(method::stationText(sublotBegin(lot, i), 100.0, 0)) : QString());
    std::vector<LiftLine> lines;
    std::vector<Row> failures, tests;
    const TestsByLift byLift(all);
    for (const auto* lift : liftsOf(all, lot)) {
        const LiftState state = liftState(all, byLift, lot, *lift);
        LiftLine line;
        line.number = lift->number;
        line.made = tr("%1 of %2").arg(state.made).arg(state.required);
        line.complete = state.made >= state.required;
        line.cells.resize(static_cast<std::size_t>(sublots));
        const auto put = [&](const std::optional<double>& station, const std::string& id, Mark mark) {
            const int at = !isByStations(lot) ? 0 : station ? sublotOf(lot, *station) : -1;  // a lot with corners is one cell
            if (at < 0)
                return;
            Row cell;
            cell.id = QString::fromStdString(id);
            cell.mark = mark;
            line.cells[static_cast<std::size_t>(at)].push_back(std::move(cell));
        };
        for (const auto* test : state.tests) {
            // A failure settled by its retest gives way to the retest; both stay in the list below.
            if (test->state != book::TestState::Fail || std::find(state.openFailures.begin(), state.openFailures.end(), test) != state.openFailures.end())
                put(test->stationFt, test->id, markOf(test->state));
            tests.push_back(testRow(*test));
        }
        for (const auto* site : state.owed)
            put(site->stationFt, site->draw, Mark::Owed);
        for (const auto* test : state.openFailures) {
            Row row = testRow(*test);
            row.title = ' ' + tr("is open, %1").arg(ageText(test->verdictAt, m_session->now().toString(Qt::ISODateWithMs)));
            QStringList why;
            for (const auto& reason : test->reasons)
                why << QString::fromStdString(reason);
            row.second = tr("%1 %, %2").arg(shownDecimal(test->compactionPct), why.join(", "));
            row.figure.clear();
            row.unit.clear();
            row.word = tr("lift %1").arg(lift->number);
            row.wordMark = Mark::Nothing;
            failures.push_back(std::move(row));
        }
        lines.push_back(std::move(line));
    }
    m_lifts.setLines(std::move(lines));
    m_failures.setRows(std::move(failures));
    m_tests.setRows(std::move(tests));
    showGauges(lot);
}

void LotsView::showGauges(const book::LotRow& lot)
{
    std::set<std::pair<std::string, std::string>> gauges;  // by name
    for (const auto& test : m_session->snapshot().tests)
        if (test.lot == lot.id && !test.gauge.empty())
            gauges.emplace(test.gaugeName, test.gauge);
    std::vector<Row> rows;
    for (const auto& [name, id] : gauges) {
        Row row = Row::ofWords(tr("Custody of %1").arg(QString::fromStdString(name)), {}, {});
        row.id = QString::fromStdString(id);
        row.chevron = true;
        rows.push_back(std::move(row));
    }
    m_gauges.setRows(std::move(rows));
}

QString requirementText(const book::LotRow& lot)
{
    QStringList parts;
    if (!lot.minimumPctText.empty() && !lot.maximumPctText.empty())
        parts << LotsView::tr("%1 to %2 %").arg(shownDecimal(lot.minimumPctText), shownDecimal(lot.maximumPctText));
    else if (!lot.minimumPctText.empty())
        parts << LotsView::tr("%1 % or more").arg(shownDecimal(lot.minimumPctText));
    else if (!lot.maximumPctText.empty())
        parts << LotsView::tr("%1 % or less").arg(shownDecimal(lot.maximumPctText));
    const auto bound = [](const std::string& text) {
        const QString shown = shownDecimal(text);
        return shown.startsWith(QChar(0x2212)) || shown == "0" ? shown : '+' + shown;
    };
    const bool percent = lot.windowKind == "percent of optimum";
    const QString unit = percent ? LotsView::tr("% of optimum") : LotsView::tr("of optimum");
    if (lot.windowKind == "points" || percent) {
        if (!lot.windowLowText.empty() && !lot.windowHighText.empty())
            parts << LotsView::tr("moisture %1 to %2 %3").arg(bound(lot.windowLowText), bound(lot.windowHighText), unit);
        else if (!lot.windowLowText.empty())
            parts << LotsView::tr("moisture from %1 %2").arg(bound(lot.windowLowText), unit);
        else if (!lot.windowHighText.empty())
            parts << LotsView::tr("moisture up to %1 %2").arg(bound(lot.windowHighText), unit);
    }
    return parts.isEmpty() ? LotsView::tr("No requirement") : parts.join(", ");
}

}  // namespace groundcount::view
