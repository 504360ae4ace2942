#include "view/people_view.h"

#include "book/lot_comparison.h"
#include "book/store.h"

#include <algorithm>

namespace groundcount::view {

const book::PersonRow* PersonSheet::sealedRow() const
{
    const auto& people = m_session->snapshot().people;
    const auto at = std::find_if(people.begin(), people.end(), [&](const auto& p) { return p.id == m_subject; });
    return m_subject.empty() || at == people.end() ? nullptr : &*at;
}

QJsonObject PersonSheet::fromBook() const
{
    QJsonObject texts;
    const auto* row = sealedRow();
    if (!row)
        return texts;
    for (const auto& [key, text] : {std::pair("name", row->name), std::pair("certificate", row->certificate), std::pair("expires", row->certificateExpires)})
        if (!text.empty())
            texts.insert(QLatin1String(key), QString::fromStdString(text));
    texts.insert(QStringLiteral("role"), row->role == "engineer" ? QStringLiteral("1") : QStringLiteral("0"));
    if (const auto parties = book::partiesOf(m_session->store()); parties && parties->contains(row->id))
        texts.insert(QStringLiteral("party"), parties->at(row->id) == "agency" ? QStringLiteral("1") : QStringLiteral("0"));
    return texts;
}

void PersonSheet::refresh()
{
    const auto* row = sealedRow();
    m_title = row ? QString::fromStdString(row->name) : tr("New person");
    m_isAtWork = row && row->id == m_session->person().id;
    m_canTakeOver = row && !m_isAtWork && !m_session->isReadOnly();
    m_expires = dateText(typed("expires"));
    m_expiryCaution = isPast(text("expires"), *m_session) ? tr("The certificate ended %1.").arg(m_expires) : QString();
    QJsonObject now = draft();
    now.remove(QStringLiteral("why"));
    const bool differs = now != fromBook();
    m_asksWhy = row && differs;
    m_sealText = row ? tr("Seal what changed") : tr("Seal the person");
    m_sealNotYet = name().trimmed().isEmpty() ? tr("Seal: type the name")
                   : roleIndex() < 0          ? tr("Seal: choose the role")
                   : !differs                 ? tr("Nothing has changed")
                   : m_asksWhy && why().trimmed().isEmpty() ? tr("Seal: say why it changes")
                                                            : QString();
}

void PersonSheet::takeOver()
{
    if (!m_canTakeOver)
        return;
    if (const auto kept = m_session->store().saveDraft("device", "person", m_subject); !kept)
        return m_session->setTrouble(QString::fromStdString(kept.error().what));
    m_session->readAgain();
}

Result<std::vector<book::Entry>> PersonSheet::entries() const
{
    const auto* row = sealedRow();
    m_newId = row ? m_subject : Session::newId();
    book::Entry entry;
    entry.kind = "person";
    entry.subject = m_newId;
    entry.body = {{"name", text("name")}, {"role", roleIndex() == 1 ? "engineer" : "technician"}};
    if (partyIndex() >= 0)
        entry.body["party"] = partyIndex() == 1 ? "agency" : "contractor";
    put(entry.body, "certificate", "certificate");
    put(entry.body, "certificate_expires", "expires");
    if (row) {
        entry.amends = row->hash;
        entry.reason = text("why");
    }
    return std::vector{entry};
}

}  // namespace groundcount::view
