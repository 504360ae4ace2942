#pragma once

#include "view/sheet_step.h"

#include <QStringList>

namespace groundcount::view {

/// Step 5: the sample under the gauge: coarse particles by mass, and a water content of another method. Both may wait; the
/// verdict is provisional until then.
class DigStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(DigStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(QStringList sampleWords READ sampleWords CONSTANT)
    Q_PROPERTY(int sampleIndex READ sampleIndex NOTIFY changed)
    Q_PROPERTY(bool isWeighed READ isWeighed NOTIFY changed)
    Q_PROPERTY(QStringList sieveWords READ sieveWords CONSTANT)
    Q_PROPERTY(int sieveIndex READ sieveIndex NOTIFY changed)
    Q_PROPERTY(QString masses MEMBER m_masses NOTIFY changed)
    Q_PROPERTY(QString sampleTrouble MEMBER m_sampleTrouble NOTIFY changed)
    Q_PROPERTY(QString sampleDoubt MEMBER m_sampleDoubt NOTIFY changed)
    Q_PROPERTY(QStringList moistureWords READ moistureWords CONSTANT)
    Q_PROPERTY(int moistureIndex READ moistureIndex NOTIFY changed)
    Q_PROPERTY(QStringList methodWords READ methodWords CONSTANT)
    Q_PROPERTY(int methodIndex READ methodIndex NOTIFY changed)
    Q_PROPERTY(QString otherContent READ otherContent NOTIFY changed)
    Q_PROPERTY(bool isWaiting READ isWaiting NOTIFY changed)
    Q_PROPERTY(QString waitingText MEMBER m_waitingText NOTIFY changed)
    Q_PROPERTY(QString rule MEMBER m_rule NOTIFY changed)

public:
    using SheetStep::SheetStep;

    QStringList sampleWords() const { return {tr("No coarse"), tr("Weigh it"), tr("Later")}; }
    int sampleIndex() const;
    bool isWeighed() const { return typed("sample") == "weighed"; }
    QStringList sieveWords() const { return {tr("No. 4"), tr("3/4 in.")}; }
    int sieveIndex() const { return typed("sieve") == "No. 4" ? 0 : typed("sieve") == "3/4 in." ? 1 : -1; }
    QStringList moistureWords() const { return {tr("Gauge's"), tr("Other, now"), tr("Other, later")}; }
    int moistureIndex() const;
    QStringList methodWords() const { return {tr("Oven"), tr("Carbide"), tr("Microwave")}; }
    int methodIndex() const;
    QString otherContent() const { return typed("other"); }
    bool isWaiting() const;
    std::string waiting() const;

    Q_INVOKABLE void pickSample(int index);
    Q_INVOKABLE void pickSieve(int index);
    Q_INVOKABLE void typeMasses();
    Q_INVOKABLE void pickMoisture(int index);
    Q_INVOKABLE void pickMethod(int index);
    Q_INVOKABLE void typeContent();

    QString sealText() const override { return tr("Seal the sample"); }
    Result<std::vector<book::Entry>> entries() const override;
    static QJsonObject textOf(const book::Body& sample);

protected:
    void refresh() override;
    void judgeEntry(NumberEntry& entry) override;

private:
    QString whyNotYet() const;

    QString m_masses, m_sampleTrouble, m_sampleDoubt, m_waitingText, m_rule;
};

}  // namespace groundcount::view
