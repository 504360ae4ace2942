#include "view/review_view.h"

#include "view/standing_words.h"

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
