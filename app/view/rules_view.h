#pragma once

#include "method/rules/rule_set.h"
#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// The rule set in force, every limit and choice with its source, and a copy of it with other values: what differs is shown, the
/// source of what differs is named, and sealing puts the copy in force for the job.
class RulesSheet : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::RowList* limits READ limits CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* choices READ choices CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* differences READ differences CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* words READ words CONSTANT)
    Q_PROPERTY(QString wordsTitle MEMBER m_wordsTitle NOTIFY changed)
    Q_PROPERTY(QString wordsId MEMBER m_wordsId NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString revision READ revision NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QStringList markWords READ markWords CONSTANT)
    Q_PROPERTY(int markIndex READ markIndex NOTIFY changed)
    Q_PROPERTY(bool isCopy MEMBER m_isCopy NOTIFY changed)
    Q_PROPERTY(QString note MEMBER m_note NOTIFY changed)

public:
    explicit RulesSheet(QObject* parent = nullptr) : KitForm(parent) {}

    RowList* limits() { return &m_limits; }
    RowList* choices() { return &m_choices; }
    RowList* differences() { return &m_differences; }
    RowList* words() { return &m_words; }
    QString name() const { return typed("name"); }
    QString revision() const { return typed("revision"); }
    QString source() const { return typed("source"); }
    QStringList markWords() const { return {tr("Seen"), tr("2nd hand"), tr("Memory"), tr("Own")}; }
    int markIndex() const { return has("mark") ? typed("mark").toInt() : -1; }

    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void setRevision(const QString& text) { type(QStringLiteral("revision"), text); }
    Q_INVOKABLE void setSource(const QString& text) { type(QStringLiteral("source"), text); }
    Q_INVOKABLE void pickMark(int index) { type(QStringLiteral("mark"), QString::number(index)); }
    Q_INVOKABLE void typeLimit(const QString& key);
    Q_INVOKABLE void openChoice(const QString& key);
    Q_INVOKABLE void pickWord(const QString& word);

protected:
    const char* draftName() const override { return "rule set"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    /// The rule set in force with what was typed put in. @error Refused for a value that is no decimal
    Result<method::RuleSet> copy() const;
    void refreshRows();
    void refreshDifferences();
    void refreshWords();

    QString m_wordsTitle, m_wordsId, m_openChoice, m_note;
    bool m_isCopy = false;
    RowList m_limits, m_choices, m_differences, m_words;
};

}  // namespace groundcount::view
