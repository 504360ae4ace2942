#pragma once

#include "book/record.h"
#include "method/error.h"
#include "view/number_entry.h"
#include "view/session.h"

#include <QJsonObject>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <string>
#include <vector>

namespace groundcount::view {

/// A sheet of Kit that ends in sealed records: standard counts, custody, papers and so on. What a person types is kept as text
/// under a key and saved as a local draft on every edit; everything shown is derived from that text and the book.
class KitForm : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(KitForm)
    QML_UNCREATABLE("the base of Kit's sheets")
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(QString subject READ subject WRITE setSubject NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString contextLine READ contextLine NOTIFY changed)
    Q_PROPERTY(QString sealText MEMBER m_sealText NOTIFY changed)
    Q_PROPERTY(QString sealNotYet MEMBER m_sealNotYet NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::NumberEntry* entry READ entry NOTIFY entryChanged)

public:
    explicit KitForm(QObject* parent) : QObject(parent) {}

    Session* session() const { return m_session; }
    void setSession(Session* session);
    /// The thing that the sheet is about, or empty for a new one.
    QString subject() const { return QString::fromStdString(m_subject); }
    void setSubject(const QString& id);
    NumberEntry* entry() const { return m_entry; }
    /// What the sheet is about, under its title.
    QString contextLine() const { return m_context.isEmpty() || m_context2.isEmpty() ? m_context + m_context2 : m_context + QStringLiteral(", ") + m_context2; }
    QString trouble() const { return m_trouble; }
    QString sealText() const { return m_sealText; }
    QString sealNotYet() const { return m_sealNotYet; }
    const QJsonObject& draft() const { return m_draft; }

    /// Seals what the sheet holds and drops the draft. On refusal `trouble` has the sentence and everything typed stays.
    /// @return whether it is on disk
    Q_INVOKABLE bool seal();
    Q_INVOKABLE void closeEntry();
    /// Throws the draft away and shows what the book has.
    Q_INVOKABLE void startAgain();

signals:
    void sessionChanged();
    void changed();
    void entryChanged();
    /// Everything is on disk.
    void sealed(const QString& subject);

protected:
    /// Under which name the draft lies in the book.
    virtual const char* draftName() const = 0;
    /// What the sheet is about when nobody said.
    virtual std::string defaultSubject() const { return {}; }
    /// The text that the book has for this subject, when there is no draft.
    virtual QJsonObject fromBook() const { return {}; }
    /// Sets everything shown, `m_sealText` and `m_sealNotYet` included.
    virtual void refresh() = 0;
    /// @error Refused with the sentence that says why not
    virtual Result<std::vector<book::Entry>> entries() const = 0;
    /// Called while an entry is typed into, so that the sheet can set doubts and notes.
    virtual void judgeEntry(NumberEntry&) {}
    /// Told after sealing, before the sheet is derived anew.
    virtual void afterSeal() {}

    bool isReady() const { return m_session && m_session->isOpen(); }
    QString typed(const char* key) const { return m_draft.value(QLatin1String(key)).toString(); }
    QString typed(const QString& key) const { return m_draft.value(key).toString(); }
    bool has(const char* key) const { return !typed(key).isEmpty(); }
    std::string text(const char* key) const { return typed(key).trimmed().toStdString(); }
    std::optional<double> number(const QString& key) const;
    void type(const QString& key, const QString& text) { typeAll({{key, text}}); }
    /// Keeps several texts at once, saves the draft, derives and tells once.
    void typeAll(const QJsonObject& texts);
    /// Puts a text into the body under `key` when there is one.
    void put(book::Body& body, const char* key, const char* typedUnder) const;
    /// Opens an entry whose fields go to `keys`, and whose choice goes to `choiceKey` as its index.
    void open(NumberEntry* entry, const QStringList& keys, const QString& choiceKey = {});
    /// Opens year, month and day for the date under `key`; a fresh one offers today.
    void openDate(const QString& key, const QString& name);
    void derive();
    void setSubjectQuietly(const std::string& id) { m_subject = id; }

    Session* m_session = nullptr;
    std::string m_subject;
    QString m_title, m_context, m_context2, m_sealText, m_sealNotYet, m_trouble;

private:
    void load();
    void setEntry(NumberEntry* entry);
    void saveDraft();
    std::string draftKey() const;

    QJsonObject m_draft;
    NumberEntry* m_entry = nullptr;
    bool m_isSealing = false;
};

/// "2026-06-09" as "Jun 9, 2026"; empty stays empty.
QString dateText(const std::string& isoDate);
QString dateText(const QString& isoDate);
/// The local day of the session, ISO 8601.
QString todayOf(const Session& session);
/// Whether a paper's date lies before today; an empty date never does.
bool isPast(const std::string& isoDate, const Session& session);
/// The next UTC-free ISO date of typed parts, or empty when they are no date. "2026", "6", "9" gives "2026-06-09".
QString isoDate(const QString& year, const QString& month, const QString& day);
/// "seen", "second-hand", "own", "from memory".
QString markWord(method::Mark mark);

}  // namespace groundcount::view
