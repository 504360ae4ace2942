#pragma once

#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// Where a gauge is and who answers for it: signed out, in transit, at site, signed in, with what was seen on the way.
class CustodySheet : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList gaugeWords READ gaugeWords NOTIFY changed)
    Q_PROPERTY(int gaugeIndex READ gaugeIndex NOTIFY changed)
    Q_PROPERTY(QStringList eventWords READ eventWords CONSTANT)
    Q_PROPERTY(int eventIndex READ eventIndex NOTIFY changed)
    Q_PROPERTY(QStringList barrierWords READ barrierWords CONSTANT)
    Q_PROPERTY(int barrierIndex READ barrierIndex NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString who MEMBER m_who NOTIFY changed)
    Q_PROPERTY(QString now MEMBER m_now NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* checks READ checks CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* history READ history CONSTANT)
    Q_PROPERTY(QString barrierCaution MEMBER m_barrierCaution NOTIFY changed)
    Q_PROPERTY(QString badgeCaution MEMBER m_badgeCaution NOTIFY changed)
    Q_PROPERTY(QString papersCaution MEMBER m_papersCaution NOTIFY changed)
    Q_PROPERTY(QString caution READ caution CONSTANT)
    Q_PROPERTY(QString governs READ governs CONSTANT)

public:
    explicit CustodySheet(QObject* parent = nullptr) : KitForm(parent) {}

    QStringList gaugeWords() const;
    int gaugeIndex() const;
    QStringList eventWords() const { return {tr("Sign out"), tr("In transit"), tr("At site"), tr("Sign in")}; }
    int eventIndex() const { return has("event") ? typed("event").toInt() : -1; }
    QStringList barrierWords() const { return {tr("None"), tr("One"), tr("Two or more")}; }
    int barrierIndex() const { return has("barriers") ? typed("barriers").toInt() : -1; }
    QString place() const { return typed("place"); }
    RowList* checks() { return &m_checks; }
    RowList* history() { return &m_history; }
    /// @source [NRC-70FR2001], [NRC-03-096], [NRC-IN86-67]
    QString caution() const;
    QString governs() const;

    Q_INVOKABLE void pickGauge(int index);
    Q_INVOKABLE void pickEvent(int index) { type(QStringLiteral("event"), QString::number(index)); }
    Q_INVOKABLE void pickBarriers(int index) { type(QStringLiteral("barriers"), QString::number(index)); }
    Q_INVOKABLE void setPlace(const QString& text) { type(QStringLiteral("place"), text); }
    Q_INVOKABLE void see(const QString& check);

protected:
    const char* draftName() const override { return "custody"; }
    std::string defaultSubject() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    void refreshHistory();

    QString m_who, m_now, m_barrierCaution, m_badgeCaution, m_papersCaution;
    RowList m_checks, m_history;
};

}  // namespace groundcount::view
