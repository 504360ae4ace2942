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
std::optional<book::ReviewedLot> reviewedLot(Session& session, const QString& lot)
{
    const Snapshot& all = session.snapshot();
    if (!session.isOpen() || lot.isEmpty())
        return std::nullopt;
    auto lots = book::reviewedLots(session.store(), {all.lots, all.lifts, all.tests, all.job.metresPerGridUnit, all.retestDistance}, lot.toStdString());
    if (!lots || lots->empty())
        return std::nullopt;
    return std::move(lots->front());
}

ReviewView::ReviewView(QObject* parent) : QObject(parent)
{
    connect(&m_beside, &BesideWork::ended, this, &ReviewView::takeGround);
}

void ReviewView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &ReviewView::refresh);
    m_search = session->findChild<UnusualSearch*>();
    if (!m_search)
        m_search = new UnusualSearch(session);
    connect(m_search, &UnusualSearch::changed, this, &ReviewView::showUnusual);
    refresh();
    emit sessionChanged();
}

void ReviewView::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    m_part.clear();
    m_trouble.clear();
    refresh();
}

void ReviewView::setPart(const QString& id)
{
    // the row of the lot itself carries the lot's id
    const QString part = id == m_lot ? QString() : id;
    if (part == m_part)
        return;
    m_part = part;
    m_trouble.clear();
    refresh();
}

void ReviewView::setReviewer(int index)
{
    if (index == m_reviewer || index < 0 || index >= m_reviewers.size())
        return;
    m_reviewer = index;
    emit changed();
}

void ReviewView::refresh()
{
    if (!m_session || m_lot.isEmpty())
        return;
    m_engineers.clear();
    m_reviewers.clear();
    for (const auto& person : m_session->snapshot().people)
        if (person.role == "engineer") {
            m_engineers.push_back(person);
            m_reviewers << QString::fromStdString(person.name);
        }
    m_reviewer = std::clamp(m_reviewer, 0, std::max(0, static_cast<int>(m_reviewers.size()) - 1));
    const auto lot = reviewedLot(*m_session, m_lot);
    if (!lot)
        return;
    m_title = tr("Lot %1").arg(QString::fromStdString(lot->lot->name));
    showParts(*lot);
    showFailures(*lot);
    showOwed(*lot);
    showChanges(*lot);
    m_search->start(m_session->store(), m_session->ruleSet(), m_session->store().lastRow().value_or(0));
    showUnusual();
    emit changed();
}

void ReviewView::showParts(const book::ReviewedLot& lot)
{
    std::vector<Row> rows;
    const auto add = [&](const QString& id, const QString& title, const auto& part, int changes) {
        Row row;
        row.id = id;
        row.mark = markOf(part.standing);
        row.title = title;
        row.second = reasonOf(part.tally, part.review, changes);
        row.word = wordOf(part.standing);
        row.wordMark = row.mark == Mark::Pass || row.mark == Mark::Fail ? row.mark : Mark::Nothing;
        if (m_part == id || (m_part.isEmpty() && id == m_lot)) {
            m_partName = title;
            m_standingMark = static_cast<int>(row.mark);
            m_standingWord = row.word;
            m_reason = row.second;
            m_tally = part.tally;
        }
        rows.push_back(std::move(row));
    };
    add(m_lot, tr("Whole lot"), lot, static_cast<int>(lot.changes.size()));
    for (const auto& lift : lot.lifts) {
        const auto isNew = [&](const book::ReviewChange& c) { return c.lift.empty() || c.lift == lift.lift->id; };
        add(QString::fromStdString(lift.lift->id), tr("Lift %1").arg(lift.lift->number), lift,
            static_cast<int>(std::count_if(lot.changes.begin(), lot.changes.end(), isNew)));
    }
    m_parts.setRows(std::move(rows));
    m_notAccepted.clear();
    book::PersonRow reviewer;
    reviewer.role = "engineer";
    if (m_engineers.empty())
        m_notAccepted = tr("No engineer is sealed in this book; add one on Kit.");
    else if (!book::mayReview(reviewer, {}, m_tally, book::ReviewWord::Accepted, {}))
        m_notAccepted = tr("Not yet to be accepted: %1").arg(reasonOf(m_tally, std::nullopt, 0));
}

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

bool ReviewView::accept()
{
    return say(book::ReviewWord::Accepted, {});
}

bool ReviewView::giveBack(const QString& reason)
{
    return say(book::ReviewWord::Returned, reason);
}

bool ReviewView::acceptWithException(const QString& reason)
{
    return say(book::ReviewWord::AcceptedWithException, reason);
}

bool ReviewView::say(book::ReviewWord word, const QString& note)
{
    const auto fail = [&](const QString& sentence) {
        m_trouble = sentence;
        emit changed();
        return false;
    };
    if (m_engineers.empty())
        return fail(m_notAccepted);
    const book::PersonRow& by = m_engineers[static_cast<std::size_t>(m_reviewer)];
    const QString reason = note.trimmed();
    if (word != book::ReviewWord::Accepted && reason.isEmpty())
        return fail(tr("The reason is missing: without one the word cannot be defended."));
    if (const auto may = book::mayReview(by, m_partName.toStdString(), m_tally, word, reason.toStdString()); !may)
        return fail(QString::fromStdString(may.error().what));
    const auto body = book::reviewBody(m_session->store(), word, reason.toStdString());
    if (!body)
        return fail(QString::fromStdString(body.error().what));
    book::Entry entry;
    entry.kind = "review";
    entry.subject = (m_part.isEmpty() ? m_lot : m_part).toStdString();
    entry.by = by.id;
    entry.body = *body;
    m_trouble.clear();
    if (const auto sealed = m_session->seal(std::move(entry)); !sealed)
        return fail(QString::fromStdString(sealed.error().what));
    return true;
}

}  // namespace groundcount::view
