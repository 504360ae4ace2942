#include "view/kit_form.h"

#include "book/kinds.h"
#include "book/store.h"

#include <QCoreApplication>
#include <QDate>
#include <QJsonDocument>
#include <QLocale>

namespace groundcount::view {

void KitForm::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    if (session)
        connect(session, &Session::recordsChanged, this, [this] {
            if (!m_isSealing)
                derive();
        });
    load();
    emit sessionChanged();
}

void KitForm::setSubject(const QString& id)
{
    if (id.toStdString() == m_subject)
        return;
    m_subject = id.toStdString();
    load();
}

std::string KitForm::draftKey() const
{
    return m_subject.empty() ? m_session->person().id : m_subject;
}

void KitForm::load()
{
    if (!isReady())
        return;
    m_trouble.clear();
    setEntry(nullptr);
    if (m_subject.empty())
        m_subject = defaultSubject();
    const auto kept = m_session->store().draft(draftKey(), draftName());
    m_draft = kept && !kept->empty() ? QJsonDocument::fromJson(QByteArray::fromStdString(*kept)).object() : QJsonObject();
    if (m_draft.isEmpty())
        m_draft = fromBook();
    derive();
}

void KitForm::startAgain()
{
    if (!isReady())
        return;
    (void)m_session->store().dropDraft(draftKey(), draftName());
    load();
}

void KitForm::derive()
{
    if (!isReady())
        return;
    refresh();
    emit changed();
}

void KitForm::saveDraft()
{
    const auto saved = m_session->store().saveDraft(draftKey(), draftName(), QJsonDocument(m_draft).toJson(QJsonDocument::Compact).toStdString());
    m_trouble = saved ? QString() : QString::fromStdString(saved.error().what);
}

void KitForm::typeAll(const QJsonObject& texts)
{
    QJsonObject next = m_draft;
    for (auto it = texts.begin(); it != texts.end(); ++it) {
        if (it->toString().isEmpty())
            next.remove(it.key());
        else
            next.insert(it.key(), it.value());
    }
    if (next == m_draft || !isReady())
        return;
    m_draft = next;
    saveDraft();
    derive();
}

std::optional<double> KitForm::number(const QString& key) const
{
    const auto decimal = Decimal::parse(typed(key).toStdString());
    return decimal ? std::optional(decimal->value()) : std::nullopt;
}

void KitForm::put(book::Body& body, const char* key, const char* typedUnder) const
{
    if (const std::string value = text(typedUnder); !value.empty())
        body[key] = value;
}

void KitForm::setEntry(NumberEntry* entry)
{
    if (m_entry == entry)
        return;
    if (m_entry)
        m_entry->deleteLater();
    m_entry = entry;
    emit entryChanged();
}

void KitForm::closeEntry()
{
    setEntry(nullptr);
}

void KitForm::open(NumberEntry* entry, const QStringList& keys, const QString& choiceKey)
{
    connect(entry, &NumberEntry::typed, this, [this, entry, keys, choiceKey] {
        QJsonObject texts;
        for (int i = 0; i < keys.size(); ++i)
            texts.insert(keys[i], entry->typedAt(i));
        if (!choiceKey.isEmpty())
            texts.insert(choiceKey, entry->choice() > 0 ? QString::number(entry->choice()) : QString());  // the first is the plain case
        typeAll(texts);
        judgeEntry(*entry);
    });
    connect(entry, &NumberEntry::finished, this, [this] { setEntry(nullptr); });
    judgeEntry(*entry);
    setEntry(entry);
}

void KitForm::openDate(const QString& key, const QString& name)
{
    const QString kept = typed(key).isEmpty() ? todayOf(*m_session) : typed(key);
    auto* entry = new NumberEntry(name, {}, tr("Use this date"), this);
    const QStringList parts = kept.split('-');
    entry->add(tr("Year"), {}, parts.value(0));
    entry->add(tr("Month"), {}, QString::number(parts.value(1).toInt()));
    entry->add(tr("Day"), {}, QString::number(parts.value(2).toInt()));
    const auto judge = [entry] {
        const QString date = isoDate(entry->typedAt(0), entry->typedAt(1), entry->typedAt(2));
        entry->setNote(dateText(date), {}, Mark::Nothing);
        entry->setNotYet(date.isEmpty() ? tr("There is no such day") : QString());
    };
    connect(entry, &NumberEntry::typed, this, judge);
    connect(entry, &NumberEntry::finished, this, [this, entry, key] {
        type(key, isoDate(entry->typedAt(0), entry->typedAt(1), entry->typedAt(2)));
        setEntry(nullptr);
    });
    judge();
    setEntry(entry);
}

bool KitForm::seal()
{
    if (!isReady() || !m_sealNotYet.isEmpty() || m_session->isReadOnly())
        return false;
    const auto made = entries();
    std::string refusal = made ? std::string() : made.error().what;
    if (made) {
        for (const auto& entry : *made)
            if (const auto checked = book::checkBody(entry.kind, entry.body); !checked && refusal.empty())
                refusal = checked.error().what;
    }
    m_isSealing = true;
    if (made && refusal.empty())
        if (const auto records = m_session->sealAll(*made); !records)
            refusal = records.error().what;
    m_isSealing = false;
    if (!refusal.empty()) {
        m_trouble = QString::fromStdString(refusal);
        derive();
        return false;
    }
    (void)m_session->store().dropDraft(draftKey(), draftName());
    m_trouble.clear();
    setEntry(nullptr);
    m_draft = {};
    afterSeal();
    if (m_draft.isEmpty())
        m_draft = fromBook();
    derive();
    emit sealed(subject());
    return true;
}

QString dateText(const QString& isoDate)
{
    const QDate day = QDate::fromString(isoDate, Qt::ISODate);
    return day.isValid() ? QLocale(QLocale::English, QLocale::UnitedStates).toString(day, "MMM d, yyyy") : isoDate;
}

QString dateText(const std::string& isoDate)
{
    return dateText(QString::fromStdString(isoDate));
}

QString todayOf(const Session& session)
{
    return session.now().toOffsetFromUtc(session.offsetMinutes() * 60).date().toString(Qt::ISODate);
}

bool isPast(const std::string& isoDate, const Session& session)
{
    return !isoDate.empty() && QString::fromStdString(isoDate) < todayOf(session);
}

QString isoDate(const QString& year, const QString& month, const QString& day)
{
    const QDate date(year.toInt(), month.toInt(), day.toInt());
    return year.size() == 4 && date.isValid() ? date.toString(Qt::ISODate) : QString();
}

QString markWord(method::Mark mark)
{
    const auto word = [](const char* text) { return QCoreApplication::translate("KitForm", text); };
    switch (mark) {
    case method::Mark::Seen: return word(QT_TRANSLATE_NOOP("KitForm", "seen"));
    case method::Mark::SecondHand: return word(QT_TRANSLATE_NOOP("KitForm", "second-hand"));
    case method::Mark::Own: return word(QT_TRANSLATE_NOOP("KitForm", "own"));
    case method::Mark::Memory: break;
    }
    return word(QT_TRANSLATE_NOOP("KitForm", "from memory"));
}

}  // namespace groundcount::view
