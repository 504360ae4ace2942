#pragma once

#include "method/gauge/offsets.h"
#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// An offset of a gauge with the evidence that it comes from: trench (two standard counts), moisture (samples dried elsewhere),
/// density (spots measured twice). Dated, located, tied to gauge, depth and material.
class OffsetSheet : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList kindWords READ kindWords CONSTANT)
    Q_PROPERTY(int kind READ kind NOTIFY changed)
    Q_PROPERTY(bool isSealed READ isSealed NOTIFY changed)
    Q_PROPERTY(QStringList gaugeWords READ gaugeWords NOTIFY changed)
    Q_PROPERTY(int gaugeIndex READ gaugeIndex NOTIFY changed)
    Q_PROPERTY(QStringList materialWords READ materialWords NOTIFY changed)
    Q_PROPERTY(int materialIndex READ materialIndex NOTIFY changed)
    Q_PROPERTY(QStringList variantWords READ variantWords CONSTANT)
    Q_PROPERTY(int variant READ variant NOTIFY changed)
    Q_PROPERTY(QString variantText MEMBER m_variantText NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString on MEMBER m_on NOTIFY changed)
    Q_PROPERTY(QString expires MEMBER m_expires NOTIFY changed)
    Q_PROPERTY(QString depth READ depth NOTIFY changed)
    Q_PROPERTY(QString evidenceText MEMBER m_evidenceText NOTIFY changed)
    Q_PROPERTY(QString typeText MEMBER m_typeText NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* evidence READ evidence CONSTANT)
    Q_PROPERTY(QString figure MEMBER m_figure NOTIFY changed)
    Q_PROPERTY(QString unit MEMBER m_unit NOTIFY changed)
    Q_PROPERTY(QString meaning MEMBER m_meaning NOTIFY changed)
    Q_PROPERTY(QString doubt MEMBER m_doubt NOTIFY changed)

public:
    enum Kind { Trench, Moisture, Density };
    Q_ENUM(Kind)

    explicit OffsetSheet(QObject* parent = nullptr) : KitForm(parent) {}

    QStringList kindWords() const { return {tr("Trench"), tr("Moisture"), tr("Density")}; }
    int kind() const { return has("kind") ? typed("kind").toInt() : -1; }
    bool isSealed() const { return !m_subject.empty(); }
    QStringList gaugeWords() const;
    int gaugeIndex() const;
    QStringList materialWords() const;
    int materialIndex() const;
    QStringList variantWords() const { return {tr("Dry basis"), tr("Wet basis"), tr("Mass"), tr("Points"), tr("Ratio")}; }
    int variant() const { return typed("variant").toInt(); }
    QString place() const { return typed("place"); }
    QString depth() const { return typed("depth"); }
    RowList* evidence() { return &m_evidence; }

    Q_INVOKABLE void pickKind(int index);
    Q_INVOKABLE void pickGauge(int index);
    Q_INVOKABLE void pickMaterial(int index);
    Q_INVOKABLE void pickVariant(int index) { type(QStringLiteral("variant"), QString::number(index)); }
    Q_INVOKABLE void setPlace(const QString& text) { type(QStringLiteral("place"), text); }
    Q_INVOKABLE void typeOn() { openDate(QStringLiteral("on"), tr("Taken on")); }
    Q_INVOKABLE void typeExpires() { openDate(QStringLiteral("expires"), tr("Ends")); }
    Q_INVOKABLE void typeDepth();
    Q_INVOKABLE void typeEvidence();
    Q_INVOKABLE void addEvidence();

protected:
    const char* draftName() const override { return "offset"; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void judgeEntry(NumberEntry& entry) override;
    void afterSeal() override { setSubjectQuietly(m_newId); }

private:
    static constexpr int kUsualSamples = 3;  ///< fewer say little about their scatter; common practice, no source

    void refreshTrench();
    void refreshMoisture();
    void refreshDensity();
    void showEvidence();
    QString whyNotYet() const;
    std::vector<method::MoistureSample> samples() const;
    int evidenceCount() const;
    bool isMetric() const;
    QString densityUnit() const;
    std::string densityKey() const;
    std::string gaugeId() const;

    mutable std::string m_newId;
    std::string m_value;  ///< the factor, bias or offset as it will be sealed
    QString m_variantText, m_on, m_expires, m_evidenceText, m_typeText, m_figure, m_unit, m_meaning, m_doubt;
    RowList m_evidence;
};

}  // namespace groundcount::view
