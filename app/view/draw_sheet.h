#pragma once

#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// Random sites for a lift of a lot: lift, number, edge and seed are chosen, the draw is shown with every rejected place, then
/// sealed; its sites are owed on Day. The seed is drawn once for a lift and stays, so that nobody picks the sites they like.
class DrawSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList liftWords MEMBER m_liftWords NOTIFY changed)
    Q_PROPERTY(int lift MEMBER m_lift NOTIFY changed)
    Q_PROPERTY(QString sitesText MEMBER m_sites NOTIFY changed)
    Q_PROPERTY(QString edgeText MEMBER m_edge NOTIFY changed)
    Q_PROPERTY(QString seedText MEMBER m_seed NOTIFY changed)
    Q_PROPERTY(QString policyText MEMBER m_policy NOTIFY changed)
    Q_PROPERTY(QString drawnText MEMBER m_drawnText NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* drawn READ drawn CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* rejected READ rejected CONSTANT)

public:
    explicit DrawSheet(QObject* parent = nullptr) : KitForm(parent) {}
    RowList* drawn() { return &m_drawn; }
    RowList* rejected() { return &m_rejected; }

    Q_INVOKABLE void pickLift(int index);
    Q_INVOKABLE void typeSites();
    Q_INVOKABLE void typeEdge();
    /// A seed given by somebody else, for example read out before witnesses.
    Q_INVOKABLE void typeSeed();

protected:
    const char* draftName() const override { return "draw"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    const book::LotRow* lotRow() const;
    const book::LiftRow* liftRow() const;
    void offerSeed();
    Result<book::Body> body() const;
    void show(const book::Body& draw);
    QString seedKey() const;

    QStringList m_liftWords;
    int m_lift = -1;
    QString m_sites, m_edge, m_seed, m_policy, m_drawnText;
    RowList m_drawn, m_rejected;
};

}  // namespace groundcount::view
