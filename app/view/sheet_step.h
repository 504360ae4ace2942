#pragma once

#include "book/record.h"
#include "method/error.h"
#include "view/number_entry.h"
#include "view/sheet_facts.h"

#include <QJsonObject>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace groundcount::view {

/// One of the six steps. What a person typed or chose is kept as text under a key, so that leaving the page, a draft and a
/// sealed record are shown by the same way: everything on the screen is derived from that text and the book.
class SheetStep : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(SheetStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(bool isSealed READ isSealed NOTIFY changed)
    Q_PROPERTY(QString notYet READ notYet NOTIFY changed)

public:
    SheetStep(SheetFacts& facts, QObject* parent) : QObject(parent), m_facts(facts) {}

    bool isSealed() const { return m_isSealed; }
    /// Why the step cannot be sealed yet, as the text of its button; empty when it can.
    QString notYet() const { return m_notYet; }
    const QJsonObject& draft() const { return m_draft; }

    /// Shows a draft, or nothing.
    void restore(const QJsonObject& typed);
    /// Shows what was sealed.
    void showSealed(const QJsonObject& typed);
    /// Takes the seal off for an amendment: the text stays and can be typed over.
    void reopen();
    /// Derives everything shown from text and book, then tells once.
    void derive();

    /// Text of the button that seals.
    virtual QString sealText() const = 0;
    /// The records to seal, subject and bodies set.
    /// @error Refused with the sentence that says why not
    virtual Result<std::vector<book::Entry>> entries() const = 0;

signals:
    void changed();
    /// Typed text or a choice changed: the draft is to be saved.
    void edited();
    /// Numbers are to be typed; nullptr closes.
    void entryOpened(groundcount::view::NumberEntry* entry);

protected:
    virtual void refresh() = 0;

    QString typed(const char* key) const { return m_draft.value(QLatin1String(key)).toString(); }
    bool has(const char* key) const { return !typed(key).isEmpty(); }
    /// Keeps a text under its key and derives again. Does nothing while sealed.
    void type(const char* key, const QString& text);
    /// Several keys at once, told once.
    void typeAll(const QJsonObject& texts);
    void setNotYet(const QString& reason) { m_notYet = reason; }
    book::Entry entry(const char* kind, book::Body body) const;
    /// Opens an entry whose fields go to `keys` on every key pressed.
    void open(NumberEntry* entry, const std::vector<std::string>& keys);
    /// Called while an entry is typed into, so that the step can set doubts and notes.
    virtual void judgeEntry(NumberEntry&) {}

    SheetFacts& m_facts;

private:
    QJsonObject m_draft;
    QString m_notYet;
    bool m_isSealed = false;
};

}  // namespace groundcount::view
