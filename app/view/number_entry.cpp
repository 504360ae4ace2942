#include "view/number_entry.h"

#include <utility>

namespace groundcount::view {

EntryField::EntryField(QString label, QString unit, QString text, QObject* parent)
    : QObject(parent), m_label(std::move(label)), m_unit(std::move(unit)), m_text(std::move(text))
{
}

void EntryField::type(const QString& text)
{
    if (text == m_text)
        return;
    m_text = text;
    emit changed();
    emit typed();
}

void EntryField::setDoubt(const QString& sentence)
{
    if (sentence == m_doubt)
        return;
    m_doubt = sentence;
    emit changed();
}

NumberEntry::NumberEntry(QString title, QString context, QString doneText, QObject* parent)
    : QObject(parent), m_title(std::move(title)), m_context(std::move(context)), m_doneText(std::move(doneText))
{
}

EntryField* NumberEntry::add(const QString& label, const QString& unit, const QString& text)
{
    auto* field = new EntryField(label, unit, text, this);
    connect(field, &EntryField::typed, this, &NumberEntry::typed);
    m_fields.push_back(field);
    return field;
}

void NumberEntry::setChoice(const QStringList& words, int chosen)
{
    m_choiceWords = words;
    m_choice = chosen;
}

QList<QObject*> NumberEntry::fields() const
{
    return {m_fields.begin(), m_fields.end()};
}

void NumberEntry::choose(int index)
{
    if (index == m_choice)
        return;
    m_choice = index;
    emit changed();
    emit typed();
}

void NumberEntry::setNote(const QString& sentence, const QString& word, Mark mark)
{
    if (sentence == m_note && word == m_noteWord && mark == m_noteMark)
        return;
    m_note = sentence;
    m_noteWord = word;
    m_noteMark = mark;
    emit changed();
}

void NumberEntry::setNotYet(const QString& reason)
{
    if (reason == m_notYet)
        return;
    m_notYet = reason;
    emit changed();
}

void NumberEntry::goTo(int index)
{
    if (index == m_at || index < 0 || index >= static_cast<int>(m_fields.size()))
        return;
    m_at = index;
    emit changed();
}

QString NumberEntry::nextText() const
{
    return isAtLast() ? m_doneText : tr("Next: %1").arg(m_fields[static_cast<std::size_t>(m_at) + 1]->label().toLower());
}

void NumberEntry::next()
{
    if (isAtLast())
        done();
    else
        goTo(m_at + 1);
}

void NumberEntry::done()
{
    if (!m_notYet.isEmpty())
        return;
    // Said once more: a value that was offered and is taken as it stands counts as typed.
    emit typed();
    emit finished();
}

}  // namespace groundcount::view
