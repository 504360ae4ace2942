#pragma once

#include "method/soil/peak.h"
#include "view/kit_form.h"
#include "view/proctor_plot.h"
#include "view/row_list.h"

namespace groundcount::view {

/// A material with its moisture-density test: points as typed, the curve with the zero-air-voids line, the peak by one of the
/// core's methods or by hand, the coarse particles. The subject is the test (the material comes with it).
class MaterialSheet : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOld READ isOld NOTIFY changed)
    Q_PROPERTY(QStringList materialWords READ materialWords NOTIFY changed)
    Q_PROPERTY(int materialIndex READ materialIndex NOTIFY changed)
    Q_PROPERTY(bool isNewMaterial READ isNewMaterial NOTIFY changed)
    Q_PROPERTY(QString material READ material NOTIFY changed)
    Q_PROPERTY(QString description READ description NOTIFY changed)
    Q_PROPERTY(QString soilClass READ soilClass NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString standard READ standard NOTIFY changed)
    Q_PROPERTY(QString method READ method NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(bool asksWhy MEMBER m_asksWhy NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* points READ points CONSTANT)
    Q_PROPERTY(QString pointsText MEMBER m_pointsText NOTIFY changed)
    Q_PROPERTY(QStringList peakWords READ peakWords CONSTANT)
    Q_PROPERTY(int peakIndex READ peakIndex NOTIFY changed)
    Q_PROPERTY(QString maximum MEMBER m_maximum NOTIFY changed)
    Q_PROPERTY(QString optimum MEMBER m_optimum NOTIFY changed)
    Q_PROPERTY(QString spread MEMBER m_spread NOTIFY changed)
    Q_PROPERTY(QString densityUnit READ densityUnit NOTIFY changed)
    Q_PROPERTY(QString byHand MEMBER m_byHand NOTIFY changed)
    Q_PROPERTY(QString saturation MEMBER m_saturation NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* warnings READ warnings CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* otherPeaks READ otherPeaks CONSTANT)
    Q_PROPERTY(QString refusal MEMBER m_refusal NOTIFY changed)
    Q_PROPERTY(QString gravity READ gravity NOTIFY changed)
    Q_PROPERTY(QString uncertainty READ uncertainty NOTIFY changed)
    Q_PROPERTY(QString coarse MEMBER m_coarse NOTIFY changed)
    Q_PROPERTY(groundcount::view::ProctorPlot plot MEMBER m_plot NOTIFY changed)

public:
    enum PeakBy { ThreePoints, Parabola, Spline, ByHand };
    Q_ENUM(PeakBy)

    explicit MaterialSheet(QObject* parent = nullptr) : KitForm(parent) {}

    bool isOld() const { return !m_subject.empty(); }
    QStringList materialWords() const;
    int materialIndex() const;
    bool isNewMaterial() const { return !has("material"); }
    QString material() const { return typed("m.name"); }
    QString description() const { return typed("m.description"); }
    QString soilClass() const { return typed("m.class"); }
    QString name() const { return typed("name"); }
    QString standard() const { return typed("standard"); }
    QString method() const { return typed("method"); }
    QString why() const { return typed("why"); }
    QString gravity() const { return typed("gs"); }
    QString uncertainty() const { return typed("u"); }
    RowList* points() { return &m_points; }
    RowList* warnings() { return &m_warnings; }
    RowList* otherPeaks() { return &m_otherPeaks; }
    QStringList peakWords() const { return {tr("3 points"), tr("Parabola"), tr("Spline"), tr("By hand")}; }
    int peakIndex() const { return typed("peak").toInt(); }
    QString densityUnit() const;

    Q_INVOKABLE void pickMaterial(int index);
    Q_INVOKABLE void setMaterial(const QString& text) { type(QStringLiteral("m.name"), text); }
    Q_INVOKABLE void setDescription(const QString& text) { type(QStringLiteral("m.description"), text); }
    Q_INVOKABLE void setSoilClass(const QString& text) { type(QStringLiteral("m.class"), text); }
    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void setStandard(const QString& text) { type(QStringLiteral("standard"), text); }
    Q_INVOKABLE void setMethod(const QString& text) { type(QStringLiteral("method"), text); }
    Q_INVOKABLE void setWhy(const QString& text) { type(QStringLiteral("why"), text); }
    Q_INVOKABLE void typePoints();
    Q_INVOKABLE void addPoint();
    Q_INVOKABLE void pickPeak(int index) { type(QStringLiteral("peak"), QString::number(index)); }
    Q_INVOKABLE void typeByHand();
    Q_INVOKABLE void typeGravity();
    Q_INVOKABLE void typeUncertainty();
    Q_INVOKABLE void typeCoarse();

protected:
    const char* draftName() const override { return "material"; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void judgeEntry(NumberEntry& entry) override;
    void afterSeal() override;

private:
    static constexpr int kUsualPoints = 5;
    int pointCount() const;
    std::vector<method::CompactionPoint> typedPoints() const;
    void refreshPeak();
    void refreshPlot(const std::vector<method::CompactionPoint>& points);
    QString whyNotYet() const;
    bool materialDiffers() const;
    bool testDiffers() const;
    DryDensity dry(double value) const;
    std::string densityKey() const;
    bool isMetric() const;

    mutable std::string m_newId;
    std::optional<method::Peak> m_peak;
    QString m_pointsText, m_maximum, m_optimum, m_spread, m_byHand, m_saturation, m_refusal, m_coarse;
    bool m_asksWhy = false;
    ProctorPlot m_plot;
    RowList m_points, m_warnings, m_otherPeaks;
};

}  // namespace groundcount::view
