#pragma once

#include "method/rules/rule_set.h"
#include "view/kit_form.h"
#include "view/row_list.h"

#include <QUrl>

namespace groundcount::view {

/// The job of a field book: begun here with its coordinate system, rule set and first person; later its name and place can be
/// put right with a reason. The system stays, since every place in the book counts in it.
class JobSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOld READ isOld NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString systemText MEMBER m_systemText NOTIFY changed)
    Q_PROPERTY(QString systemTrouble MEMBER m_systemTrouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* systems READ systems CONSTANT)
    Q_PROPERTY(QString rulesText MEMBER m_rulesText NOTIFY changed)
    Q_PROPERTY(QString rulesTrouble MEMBER m_rulesTrouble NOTIFY changed)
    Q_PROPERTY(QString densityText MEMBER m_densityText NOTIFY changed)
    /// Whether nobody is in the book yet, so that the one who begins it is asked for.
    Q_PROPERTY(bool asksPerson MEMBER m_asksPerson NOTIFY changed)
    Q_PROPERTY(QString person READ person NOTIFY changed)
    Q_PROPERTY(QStringList roleWords READ roleWords CONSTANT)
    Q_PROPERTY(int roleIndex READ roleIndex NOTIFY changed)
    Q_PROPERTY(bool asksWhy MEMBER m_asksWhy NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)

public:
    explicit JobSheet(QObject* parent = nullptr) : KitForm(parent) {}

    bool isOld() const { return m_session && !m_session->job().id.empty(); }
    QString name() const { return typed("name"); }
    QString place() const { return typed("place"); }
    RowList* systems() { return &m_systems; }
    QString person() const { return typed("person"); }
    QStringList roleWords() const { return {tr("Technician"), tr("Engineer")}; }
    int roleIndex() const { return has("role") ? typed("role").toInt() : -1; }
    QString why() const { return typed("why"); }

    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void setPlace(const QString& text) { type(QStringLiteral("place"), text); }
    Q_INVOKABLE void setPerson(const QString& text) { type(QStringLiteral("person"), text); }
    Q_INVOKABLE void pickRole(int index) { type(QStringLiteral("role"), QString::number(index)); }
    Q_INVOKABLE void setWhy(const QString& text) { type(QStringLiteral("why"), text); }
    /// Finds coordinate systems by code, name or place.
    Q_INVOKABLE void searchSystem(const QString& words);
    Q_INVOKABLE void pickSystem(const QString& code);
    /// Takes the rule set of a file (JSON) instead of the neutral one.
    Q_INVOKABLE void takeRules(const QUrl& file);

protected:
    const char* draftName() const override { return "job"; }
    std::string defaultSubject() const override { return m_session->job().id; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void afterSeal() override;

private:
    Result<method::RuleSet> rules() const;
    Result<std::vector<book::Entry>> amendment() const;
    QString notYet() const;

    QString m_systemText, m_systemTrouble, m_rulesText, m_rulesTrouble, m_densityText;
    bool m_asksPerson = false, m_asksWhy = false;
    RowList m_systems;
};

}  // namespace groundcount::view
