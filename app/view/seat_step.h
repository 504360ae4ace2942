#pragma once

#include "view/sheet_step.h"

#include <QStringList>

namespace groundcount::view {

/// Step 3: how the gauge sits: surface, no rocking, depth out of the calibrated ones, the hole against the rule and the lift.
class SeatStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(SeatStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(QStringList surfaceWords READ surfaceWords CONSTANT)
    Q_PROPERTY(int surfaceIndex READ surfaceIndex NOTIFY changed)
    Q_PROPERTY(QStringList rockWords READ rockWords CONSTANT)
    Q_PROPERTY(int rockIndex READ rockIndex NOTIFY changed)
    Q_PROPERTY(QStringList depthWords MEMBER m_depthWords NOTIFY changed)
    Q_PROPERTY(int depthIndex MEMBER m_depthIndex NOTIFY changed)
    Q_PROPERTY(bool needsHole MEMBER m_needsHole NOTIFY changed)
    Q_PROPERTY(QString hole READ hole NOTIFY changed)
    Q_PROPERTY(QString holeNeed MEMBER m_holeNeed NOTIFY changed)
    Q_PROPERTY(QString holeTrouble MEMBER m_holeTrouble NOTIFY changed)
    Q_PROPERTY(QString lift MEMBER m_lift NOTIFY changed)
    Q_PROPERTY(QString voids MEMBER m_voids NOTIFY changed)
    Q_PROPERTY(QString caution READ caution CONSTANT)

public:
    using SheetStep::SheetStep;

    QStringList surfaceWords() const { return {tr("Smooth"), tr("Voids filled")}; }
    int surfaceIndex() const { return typed("surface") == "smooth" ? 0 : typed("surface") == "filled" ? 1 : -1; }
    QStringList rockWords() const { return {tr("Sits flat"), tr("It rocks")}; }
    int rockIndex() const { return typed("rocks") == "no" ? 0 : typed("rocks") == "yes" ? 1 : -1; }
    QString hole() const { return typed("hole"); }
    QString caution() const;

    Q_INVOKABLE void pickSurface(int index);
    Q_INVOKABLE void pickRock(int index);
    Q_INVOKABLE void pickDepth(int index);
    Q_INVOKABLE void typeHole();

    QString sealText() const override { return tr("Seal the seating"); }
    Result<std::vector<book::Entry>> entries() const override;
    static QJsonObject textOf(const book::Body& seating);
    /// Mode belongs to the calibration's curve, not to the seating record: direct for every depth but 0.
    static QString modeOf(const QString& depthIn);

protected:
    void refresh() override;
    void judgeEntry(NumberEntry& entry) override;

private:
    void listDepths();
    void checkTheHole();
    QString whyNotYet() const;

    QStringList m_depthWords, m_depths;
    int m_depthIndex = -1;
    bool m_needsHole = true;
    std::string m_liftThickness;
    QString m_holeNeed, m_holeTrouble, m_lift, m_voids;
};

}  // namespace groundcount::view
