#include "book/kinds.h"
#include "view/test_sheet.h"

#include <QJsonDocument>

namespace groundcount::view {

bool TestSheet::seal()
{
    if (!isOpen() || card(m_step)->isSealed())
        return false;
    if (const QString lock = lockOf(m_step); !lock.isEmpty()) {
        setTrouble(lock);
        return false;
    }
    const auto made = card(m_step)->entries();
    const auto sealed = made ? sealEntries(*made) : Result<void>(tl::unexpected(made.error()));
    if (!sealed) {
        setTrouble(QString::fromStdString(sealed.error().what));
        return false;
    }
    setTrouble({});
    setEntry(nullptr);
    const int was = m_step;
    if (was == Place)
        m_book->dropDraft(newDraftKey());
    readAgain(was);
    if (was == Verdict) {
        m_book->dropDraft(m_facts.testId);
        goTo(Verdict);
        emit finished(testId());
        return true;
    }
    // A waiting sample counts as done for now: the verdict that follows is provisional.
    const int next = was == Dig ? static_cast<int>(Verdict) : firstUnsealed();
    goTo(next);
    return true;
}

std::string TestSheet::amendedBy(const book::Entry& entry) const
{
    if (m_step != Count)
        return m_sealedHash[static_cast<std::size_t>(m_step)];
    // Each reading is a record of its own; only the one of the same number is replaced.
    return m_readingHash[entry.body.at("number").get<int>() == 2 ? 1 : 0];
}

Result<void> TestSheet::sealEntries(std::vector<book::Entry> entries)
{
    for (auto& entry : entries) {
        if (!entry.amends.empty())
            continue;
        entry.amends = amendedBy(entry);
        if (entry.amends.empty())
            continue;
        const bool completes = m_step == Dig && m_amendStep != Dig;
        const QString reason = m_step == Verdict ? m_lateReason : completes ? QString() : m_amendReason;
        entry.reason = reason.isEmpty() ? "the sample was completed" : reason.toStdString();
    }
    if (const auto sealed = m_facts.session->sealAll(std::move(entries)); !sealed)
        return tl::unexpected(sealed.error());
    return {};
}

void TestSheet::askAmend()
{
    if (!m_canAmend)
        return;
    const QString word = m_steps.items()[static_cast<std::size_t>(m_step)].word;
    m_ask->open(SheetAsk::About::Amend, tr("Amend: %1").arg(word),
                tr("What was sealed stays in the book beside the new record, with your reason. The verdict is made again."), tr("Amend it"));
}

void TestSheet::askVoid()
{
    if (!hasRecord() || isVoid())
        return;
    m_recordShown = false;
    emit recordShownChanged();
    m_ask->open(SheetAsk::About::Void, tr("Void test %1").arg(m_facts.number),
                tr("The test stays in the book as void, with your reason. Its number is not used again, and it decides nothing."), tr("Void the test"));
}

void TestSheet::answer(const QString& reason)
{
    const QString given = reason.simplified();
    if (given.isEmpty())
        return m_ask->miss(tr("Say why. The reason is sealed with it."));
    const auto about = m_ask->about();
    m_ask->close();
    if (about == SheetAsk::About::Amend) {
        amend(m_step, given);
        return m_place->keepPosition();
    }
    if (about != SheetAsk::About::Void || !sealVoid(given))
        return;
    m_book->dropDraft(m_facts.testId);
    readSealed();
    goTo(m_step);
}

void TestSheet::amend(int step, const QString& reason)
{
    m_amendStep = step;
    m_amendReason = reason;
    card(step)->reopen();
    saveDraft();
    goTo(step);
}

void TestSheet::dropAmendment()
{
    if (m_amendStep < 0)
        return;
    const int was = m_amendStep;
    readAgain(was);
    goTo(was);
}

void TestSheet::readAgain(int without)
{
    // What is typed ahead in other steps stays a draft; the text of the step `without` leaves it.
    const int amended = m_amendStep == without ? -1 : m_amendStep;
    const QString reason = m_amendReason;
    std::array<QJsonObject, kSteps> ahead;
    for (int i = 0; i < kSteps; ++i)
        if (i != without && !card(i)->isSealed())
            ahead[static_cast<std::size_t>(i)] = card(i)->draft();
    readSealed();
    if (amended >= 0) {
        m_amendStep = amended;
        m_amendReason = reason;
        card(amended)->reopen();
    }
    for (int i = 0; i < kSteps; ++i)
        if (!card(i)->isSealed() && !ahead[static_cast<std::size_t>(i)].isEmpty())
            card(i)->restore(ahead[static_cast<std::size_t>(i)]);
    saveDraft();
}

void TestSheet::moveTest(const QString& reason)
{
    amend(Place, reason);
}

bool TestSheet::sealVoid(const QString& reason)
{
    book::Entry entry;
    entry.kind = "void";
    entry.subject = m_facts.testId;
    entry.reason = reason.toStdString();
    const auto sealed = m_facts.session->seal(std::move(entry));
    if (!sealed)
        setTrouble(QString::fromStdString(sealed.error().what));
    return sealed.has_value();
}

void TestSheet::takeNewSpot(const QString& reason)
{
    const QJsonObject place = m_place->draft();
    const std::string old = m_facts.testId;
    // Readings are evidence: they are sealed although they disagree, and the test is void with the reason.
    if (const auto sealed = sealEntries(m_count->readingEntries()); !sealed)
        return setTrouble(QString::fromStdString(sealed.error().what));
    if (!sealVoid(reason))
        return;
    m_book->dropDraft(old);
    beginNew();
    // Same purpose and lift; the place itself is taken anew.
    QJsonObject kept;
    for (const char* key : {"purpose", "retest_of", "rework", "lift", "draw", "site"})
        if (const auto value = place.value(QLatin1String(key)); !value.toString().isEmpty())
            kept.insert(QLatin1String(key), value);
    m_place->restore(kept);
    saveDraft();
}

}  // namespace groundcount::view
