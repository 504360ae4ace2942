#pragma once

#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// A gauge with its papers: serial and sources as typed, calibration curves per depth typed or read from CSV, leak test. What
/// changed is sealed, each as a record of its own.
class GaugePapers : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString serial READ serial NOTIFY changed)
    Q_PROPERTY(QString sources READ sources NOTIFY changed)
    Q_PROPERTY(QString prescale READ prescale NOTIFY changed)
    Q_PROPERTY(QString calibratedOn MEMBER m_calibratedOn NOTIFY changed)
    Q_PROPERTY(QString calibrationExpires MEMBER m_calibrationExpires NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* curves READ curves CONSTANT)
    Q_PROPERTY(QString water MEMBER m_water NOTIFY changed)
    Q_PROPERTY(QString calibrationCounts MEMBER m_calibrationCounts NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* files READ files CONSTANT)
    Q_PROPERTY(bool filesShown MEMBER m_filesShown NOTIFY changed)
    Q_PROPERTY(QString path READ path NOTIFY changed)
    Q_PROPERTY(QString importText MEMBER m_importText NOTIFY changed)
    Q_PROPERTY(QString leakTestedOn MEMBER m_leakTestedOn NOTIFY changed)
    Q_PROPERTY(QString leakExpires MEMBER m_leakExpires NOTIFY changed)
    Q_PROPERTY(QStringList leakWords READ leakWords CONSTANT)
    Q_PROPERTY(int leakIndex READ leakIndex NOTIFY changed)
    Q_PROPERTY(bool asksWhy MEMBER m_asksWhy NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QString expiryCaution MEMBER m_expiryCaution NOTIFY changed)
    Q_PROPERTY(bool isOld READ isOld NOTIFY changed)

public:
    explicit GaugePapers(QObject* parent = nullptr) : KitForm(parent) {}

    QString name() const { return typed("name"); }
    QString serial() const { return typed("serial"); }
    QString sources() const { return typed("sources"); }
    QString prescale() const { return typed("prescale"); }
    QString path() const { return typed("path"); }
    QString why() const { return typed("why"); }
    RowList* curves() { return &m_curves; }
    RowList* files() { return &m_files; }
    QStringList leakWords() const { return {tr("No leak"), tr("Leak")}; }
    int leakIndex() const { return has("leak.result") ? typed("leak.result").toInt() : -1; }
    bool isOld() const { return !m_subject.empty(); }

    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void setSerial(const QString& text) { type(QStringLiteral("serial"), text); }
    Q_INVOKABLE void setSources(const QString& text) { type(QStringLiteral("sources"), text); }
    Q_INVOKABLE void setPath(const QString& text) { type(QStringLiteral("path"), text); }
    Q_INVOKABLE void setWhy(const QString& text) { type(QStringLiteral("why"), text); }
    Q_INVOKABLE void typePrescale();
    Q_INVOKABLE void typeDate(const QString& which);
    Q_INVOKABLE void typeCurve(const QString& number);
    Q_INVOKABLE void addCurve();
    Q_INVOKABLE void typeWater();
    Q_INVOKABLE void typeCalibrationCounts();
    Q_INVOKABLE void lookForFiles();
    Q_INVOKABLE void importFile(const QString& path);
    Q_INVOKABLE void pickLeak(int index) { type(QStringLiteral("leak.result"), QString::number(index)); }

protected:
    const char* draftName() const override { return "gauge papers"; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void judgeEntry(NumberEntry& entry) override;
    void afterSeal() override;

private:
    book::Entry gaugeEntry(const std::string& gauge) const;
    book::Entry calibrationEntry(const std::string& gauge) const;
    book::Entry leakEntry(const std::string& gauge) const;
    bool differs(const QStringList& keyStarts) const;
    std::string densityKey() const;
    QString densityUnit() const;
    int curveCount() const { return typed("n").toInt(); }
    std::string signedText(const QString& key) const;

    mutable std::string m_newId;
    QString m_calibratedOn, m_calibrationExpires, m_water, m_calibrationCounts, m_importText, m_leakTestedOn, m_leakExpires, m_expiryCaution;
    bool m_filesShown = false, m_asksWhy = false;
    RowList m_curves, m_files;
};

}  // namespace groundcount::view
