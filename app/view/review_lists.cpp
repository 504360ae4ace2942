#include "view/review_view.h"

#include "book/state_query.h"
#include "book/store.h"
#include "gis/failure_ground.h"
#include "view/figure_text.h"
#include "view/map_coverage.h"
#include "view/standing_words.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>
#include <iterator>

namespace groundcount::view {

void ReviewView::showFailures(const book::ReviewedLot& lot)
{
    std::vector<Row> rows;
    std::vector<book::LiftRow> lifts;
    for (const auto& lift : lot.lifts) {
        if (lift.tally.openFailures.empty() || !isOfPart(lift.lift->id))
            continue;
        lifts.push_back(*lift.lift);
        for (const auto* test : lift.tally.openFailures) {
            Row row = testRow(*test);
            row.title = ' ' + tr("is open, %1").arg(ageText(test->verdictAt, m_session->now().toString(Qt::ISODateWithMs)));
            QStringList why{shownDecimal(test->compactionPct) + QStringLiteral(" %")};
            for (const auto& reason : test->reasons)
                why << QString::fromStdString(reason);
            row.second = why.join(QStringLiteral(", "));
            row.figure.clear();
            row.unit.clear();
            row.word = tr("lift %1").arg(lift.lift->number);
            row.wordMark = Mark::Nothing;
            rows.push_back(std::move(row));
        }
    }
    m_failures.setRows(std::move(rows));
    measureFailures(*lot.lot, std::move(lifts));
}

void ReviewView::measureFailures(const book::LotRow& lot, std::vector<book::LiftRow> lifts)
{
    m_beside.stop();
    const Snapshot& all = m_session->snapshot();
    auto lines = book::StateQuery(m_session->store()).alignments();
    if (lifts.empty() || !lines)
        return;
    std::vector<GroundTest> ofLot;
    for (const auto& test : all.tests)
        if (test.lot == lot.id)
            ofLot.emplace_back(test);
    m_ground = std::make_shared<Ground>();
    m_beside.start([lot, lifts = std::move(lifts), job = all.job, lines = std::move(*lines), tests = std::move(ofLot), into = m_ground](const std::atomic<bool>& stop) {
        const auto rows = rowsOf(tests);
        for (const auto& lift : lifts) {
            if (stop)
                return;
            const auto byNumber = gis::failureGround(lot, lift, job, lines, rows);
            for (const auto& test : tests)
                if (const auto ground = byNumber.find(test.number); test.lift == lift.id && ground != byNumber.end())
                    into->emplace(test.id, ground->second);
        }
    });
}

void ReviewView::takeGround()
{
    std::vector<Row> rows = m_failures.rows();
    for (Row& row : rows)
        if (const auto area = m_ground->find(row.id.toStdString()); area != m_ground->end())
            row.figure = surfaceText(area->second, m_session->job());
    m_failures.setRows(std::move(rows));
    emit changed();
}

void ReviewView::showOwed(const book::ReviewedLot& lot)
{
    std::vector<Row> rows;
    for (const auto& lift : lot.lifts) {
        if (!isOfPart(lift.lift->id))
            continue;
        int drawn = 0;
        for (const auto& site : m_session->snapshot().sites) {
            if (site.lift != lift.lift->id || !site.testId.empty())
                continue;
            ++drawn;
            Row row;
            row.id = QString::fromStdString(site.draw) + '/' + QString::number(site.number);
            row.mark = Mark::Owed;
            row.title = tr("Site %1").arg(site.number);
            row.second = siteWords(site);
            row.word = tr("lift %1").arg(lift.lift->number);
            rows.push_back(std::move(row));
        }
        if (lift.tally.owed() > drawn) {
            Row row;
            row.mark = Mark::Owed;
            row.title = tr("%n test(s) without a drawn site", nullptr, lift.tally.owed() - drawn);
            row.word = tr("lift %1").arg(lift.lift->number);
            rows.push_back(std::move(row));
        }
    }
    m_owed.setRows(std::move(rows));
}

void ReviewView::showChanges(const book::ReviewedLot& lot)
{
    std::vector<Row> rows;
    for (const auto& change : lot.changes) {
        if (!change.lift.empty() && !isOfPart(change.lift))
            continue;
        Row row;
        row.id = QString::fromStdString(change.test.empty() ? std::string() : change.subject);
        row.title = change.test.empty() ? recordWord(change.kind) : tr("Test %1, %2").arg(QString::fromStdString(change.test), recordWord(change.kind));
        row.second = tr("%1 by %2").arg(localText(change.at, change.offsetMinutes, QStringLiteral("MMM d, h:mm")),
                                        change.byName.empty() ? tr("a person not in this book") : QString::fromStdString(change.byName));
        if (!change.reason.empty())
            row.second += '\n' + tr("because: %1").arg(QString::fromStdString(change.reason));
        row.word = QString::fromStdString(change.hash.substr(0, 8));
        rows.push_back(std::move(row));
    }
    m_changes.setRows(std::move(rows));
}

void ReviewView::showUnusual()
{
    std::map<std::string, std::string> liftOf;
    for (const auto& test : m_session->snapshot().tests)
        if (test.lot == m_lot.toStdString())
            liftOf.emplace(test.id, test.lift);
    std::vector<Row> rows;
    for (const auto& line : m_search->lines()) {
        const auto lift = liftOf.find(line.test);
        if (lift == liftOf.end() || !isOfPart(lift->second))
            continue;
        Row row;
        row.id = QString::fromStdString(line.test);
        row.title = tr("Test %1, %2").arg(QString::fromStdString(line.number), wordOf(line.kind));
        row.second = QString::fromStdString(line.what);
        rows.push_back(std::move(row));
    }
    m_unusualText = m_search->isRunning()            ? tr("Looking through the book…")
                    : !m_search->trouble().isEmpty() ? m_search->trouble()
                    : rows.empty()                  ? tr("Nothing unusual was found.") : QString();
    m_unusual.setRows(std::move(rows));
    emit unusualChanged();
}

}  // namespace groundcount::view
