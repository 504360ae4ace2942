#pragma once

#include "view/kit_form.h"

namespace groundcount::view {

/// A person of the job with role and certificate.
class PersonSheet : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QStringList roleWords READ roleWords CONSTANT)
    Q_PROPERTY(int roleIndex READ roleIndex NOTIFY changed)
    /// For whom the person tests; -1 while it is not said.
    Q_PROPERTY(QStringList partyWords READ partyWords CONSTANT)
    Q_PROPERTY(int partyIndex READ partyIndex NOTIFY changed)
    Q_PROPERTY(QString certificate READ certificate NOTIFY changed)
    Q_PROPERTY(QString expires MEMBER m_expires NOTIFY changed)
    Q_PROPERTY(QString expiryCaution MEMBER m_expiryCaution NOTIFY changed)
    /// Whether this person signs what is sealed on this device, and whether that can be said of a sealed person.
    Q_PROPERTY(bool isAtWork MEMBER m_isAtWork NOTIFY changed)
    Q_PROPERTY(bool canTakeOver MEMBER m_canTakeOver NOTIFY changed)
    Q_PROPERTY(bool asksWhy MEMBER m_asksWhy NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)

public:
    explicit PersonSheet(QObject* parent = nullptr) : KitForm(parent) {}

    QString name() const { return typed("name"); }
    QStringList roleWords() const { return {tr("Technician"), tr("Engineer")}; }
    int roleIndex() const { return has("role") ? typed("role").toInt() : -1; }
    QStringList partyWords() const { return {tr("Contractor"), tr("Agency")}; }
    int partyIndex() const { return has("party") ? typed("party").toInt() : -1; }
    QString certificate() const { return typed("certificate"); }
    QString why() const { return typed("why"); }

    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void pickRole(int index) { type(QStringLiteral("role"), QString::number(index)); }
    Q_INVOKABLE void pickParty(int index) { type(QStringLiteral("party"), QString::number(index)); }
    Q_INVOKABLE void setCertificate(const QString& text) { type(QStringLiteral("certificate"), text); }
    Q_INVOKABLE void typeExpires() { openDate(QStringLiteral("expires"), tr("Certificate ends")); }
    /// From now on this person signs on this device; kept in this device's copy of the book, never sealed.
    Q_INVOKABLE void takeOver();
    Q_INVOKABLE void setWhy(const QString& text) { type(QStringLiteral("why"), text); }

protected:
    const char* draftName() const override { return "person"; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void afterSeal() override { setSubjectQuietly(m_newId); }

private:
    const book::PersonRow* sealedRow() const;

    mutable std::string m_newId;
    QString m_expires, m_expiryCaution;
    bool m_asksWhy = false, m_isAtWork = false, m_canTakeOver = false;
};

}  // namespace groundcount::view
