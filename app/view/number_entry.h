#pragma once

#include "view/mark.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <vector>

namespace groundcount::view {

/// One number that is typed on the keypad: its label, unit, text as typed and a doubt about it in words.
class EntryField : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(EntryField)
    QML_UNCREATABLE("belongs to a NumberEntry")
    Q_PROPERTY(QString label MEMBER m_label CONSTANT)
    Q_PROPERTY(QString unit MEMBER m_unit CONSTANT)
    Q_PROPERTY(QString text READ text WRITE type NOTIFY changed)
    Q_PROPERTY(QString doubt READ doubt NOTIFY changed)

public:
    EntryField(QString label, QString unit, QString text, QObject* parent);
    QString label() const { return m_label; }
    QString text() const { return m_text; }
    QString doubt() const { return m_doubt; }
    /// What the person typed, kept letter by letter.
    void type(const QString& text);
    void setDoubt(const QString& sentence);

signals:
    void changed();
    void typed();

private:
    QString m_label, m_unit, m_text, m_doubt;
};

/// A group of numbers typed together, shown over the sheet with the keypad. The step that opens it says what follows from
/// each key: doubts per field, one line of comparison, whether it can be closed.
class NumberEntry : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(NumberEntry)
    QML_UNCREATABLE("comes from a step of the sheet")
    Q_PROPERTY(QString title MEMBER m_title CONSTANT)
    Q_PROPERTY(QString context MEMBER m_context CONSTANT)
    Q_PROPERTY(QList<QObject*> fields READ fields CONSTANT)
    Q_PROPERTY(QStringList choiceWords MEMBER m_choiceWords CONSTANT)
    Q_PROPERTY(int choice READ choice WRITE choose NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString noteWord READ noteWord NOTIFY changed)
    Q_PROPERTY(int noteMark READ noteMark NOTIFY changed)
    Q_PROPERTY(int at READ at WRITE goTo NOTIFY changed)
    Q_PROPERTY(QString nextText READ nextText NOTIFY changed)
    Q_PROPERTY(QString nextNotYet READ nextNotYet NOTIFY changed)
    Q_PROPERTY(QString notYet READ notYet NOTIFY changed)

public:
    NumberEntry(QString title, QString context, QString doneText, QObject* parent);

    EntryField* add(const QString& label, const QString& unit, const QString& text);
    /// A two-cell choice beside the numbers, for what a key cannot say (Lt or Rt).
    void setChoice(const QStringList& words, int chosen);

    QString title() const { return m_title; }
    QString context() const { return m_context; }
    QList<QObject*> fields() const;
    EntryField* field(int index) const { return m_fields[static_cast<std::size_t>(index)]; }
    QString typedAt(int index) const { return field(index)->text(); }
    int choice() const { return m_choice; }
    void choose(int index);
    QString note() const { return m_note; }
    QString noteWord() const { return m_noteWord; }
    int noteMark() const { return static_cast<int>(m_noteMark); }
    QString notYet() const { return m_notYet; }

    void setNote(const QString& sentence, const QString& word, Mark mark);
    void setNotYet(const QString& reason);

    /// The field that is typed into.
    int at() const { return m_at; }
    void goTo(int index);
    /// Text of the button under the keypad: "Next: moisture", or what the last one does.
    QString nextText() const;
    /// Why the last field's button cannot be pressed yet.
    QString nextNotYet() const { return isAtLast() ? m_notYet : QString(); }
    /// To the next field; from the last one closes the entry with what was typed.
    Q_INVOKABLE void next();
    /// Closes the entry with what was typed, unless something is missing.
    Q_INVOKABLE void done();

signals:
    void changed();
    void typed();
    void finished();

private:
    QString m_title, m_context, m_doneText, m_note, m_noteWord, m_notYet;
    Mark m_noteMark = Mark::Nothing;
    QStringList m_choiceWords;
    int m_choice = -1;
    int m_at = 0;
    bool isAtLast() const { return m_at + 1 >= static_cast<int>(m_fields.size()); }
    std::vector<EntryField*> m_fields;
};

}  // namespace groundcount::view
