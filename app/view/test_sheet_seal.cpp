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
    // What is typed ahead in other steps stays a draft; the sealed step's text leaves it.
    std::array<QJsonObject, kSteps> ahead;
    for (int i = 0; i < kSteps; ++i)
        if (i != was && !card(i)->isSealed())
            ahead[static_cast<std::size_t>(i)] = card(i)->draft();
    readSealed();
    for (int i = 0; i < kSteps; ++i)
        if (!card(i)->isSealed() && !ahead[static_cast<std::size_t>(i)].isEmpty())
            card(i)->restore(ahead[static_cast<std::size_t>(i)]);
    saveDraft();
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

Result<void> TestSheet::sealEntries(std::vector<book::Entry> entries)
{
    // Every body is checked before the first is sealed, so that two readings stand or fall together.
    for (const auto& entry : entries)
        if (const auto checked = book::checkBody(entry.kind, entry.body); !checked)
            return checked;
    const auto& before = m_sealedHash[static_cast<std::size_t>(m_step)];
    for (auto& entry : entries) {
        if (!before.empty() && entry.amends.empty()) {
            entry.amends = before;
            entry.reason = m_step == Dig ? "the sample was completed" : m_step == Verdict ? "the sample was completed" : m_amendReason.toStdString();
        }
        if (const auto sealed = m_facts.session->seal(std::move(entry)); !sealed)
            return tl::unexpected(sealed.error());
    }
    return {};
}

void TestSheet::moveTest(const QString& reason)
{
    m_amendReason = reason;
    m_place->reopen();
    goTo(Place);
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
