#pragma once

#include "view/hazard_card.h"
#include "view/sheet_step.h"

namespace groundcount::view {

/// Step 2: the four hazards. Nothing is counted before each of them is settled.
class ClearStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(ClearStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(QList<QObject*> hazards READ hazards CONSTANT)
    Q_PROPERTY(QString summary MEMBER m_summary NOTIFY changed)
    Q_PROPERTY(QString rules MEMBER m_rules NOTIFY changed)
    Q_PROPERTY(bool isOverridden READ isOverridden NOTIFY changed)

public:
    ClearStep(SheetFacts& facts, QObject* parent);

    QList<QObject*> hazards() const { return {m_cards.begin(), m_cards.end()}; }
    HazardCard* hazard(Hazard which) const { return m_cards[static_cast<std::size_t>(which)]; }
    bool isOverridden() const;

    QString sealText() const override { return tr("Seal the clearances"); }
    Result<std::vector<book::Entry>> entries() const override;
    static QJsonObject textOf(const book::Body& clearance);

    /// Something that is not on the map yet is to be placed there, seen from this test.
    Q_INVOKABLE void addHazard();

signals:
    void hazardWanted(double north, double east, double uncertaintyMetres, const QString& placeText);
    /// The person chose to move the test; the place is to be sealed again with this reason.
    void moveWanted(const QString& reason);

protected:
    void refresh() override;

private:
    void keep(const QString& key, const QJsonObject& texts);
    void takeTape(HazardCard* card);
    int unsettled() const;

    std::vector<HazardCard*> m_cards;
    QString m_summary, m_rules;
};

}  // namespace groundcount::view
