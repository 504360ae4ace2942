#include "view/sheet_step.h"

#include <utility>

namespace groundcount::view {

void SheetStep::restore(const QJsonObject& typed)
{
    m_draft = typed;
    m_isSealed = false;
    derive();
}

void SheetStep::showSealed(const QJsonObject& typed)
{
    m_draft = typed;
    m_isSealed = true;
    derive();
}

void SheetStep::reopen()
{
    m_isSealed = false;
    derive();
}

void SheetStep::derive()
{
    refresh();
    emit changed();
}

void SheetStep::type(const char* key, const QString& text)
{
    typeAll({{QLatin1String(key), text}});
}

void SheetStep::typeAll(const QJsonObject& texts)
{
    if (m_isSealed)
        return;
    QJsonObject next = m_draft;
    for (auto it = texts.begin(); it != texts.end(); ++it) {
        if (it->toString().isEmpty())
            next.remove(it.key());
        else
            next.insert(it.key(), it.value());
    }
    if (next == m_draft)
        return;
    m_draft = next;
    derive();
    emit edited();
}

book::Entry SheetStep::entry(const char* kind, book::Body body) const
{
    book::Entry made;
    made.kind = kind;
    made.subject = m_facts.testId;
    made.body = std::move(body);
    return made;
}

void SheetStep::open(NumberEntry* entry, const std::vector<std::string>& keys)
{
    if (m_isSealed)
        return delete entry;
    connect(entry, &NumberEntry::typed, this, [this, entry, keys] {
        QJsonObject texts;
        for (std::size_t i = 0; i < keys.size(); ++i)
            texts.insert(QString::fromStdString(keys[i]), entry->typedAt(static_cast<int>(i)));
        typeAll(texts);
        judgeEntry(*entry);
    });
    connect(entry, &NumberEntry::finished, this, [this] { emit entryOpened(nullptr); });
    judgeEntry(*entry);
    emit entryOpened(entry);
}

}  // namespace groundcount::view
