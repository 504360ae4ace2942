#pragma once

#include "position/averager.h"
#include "view/row_list.h"
#include "view/sheet_step.h"

#include <QPointF>
#include <QStringList>
#include <QVariantList>

#include <optional>

namespace groundcount::view {

/// Step 1: where the test is. A mean of fixes held still, station and offset by tape, or a point of the map; lot, lift and sublot are
/// found from it; random, directed or retest.
class PlaceStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(PlaceStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(bool byTape READ byTape NOTIFY changed)
    /// By tape or on the map: without the receiver.
    Q_PROPERTY(bool byHand READ byHand NOTIFY changed)
    /// The lines that can be measured along, the one in use, and what to do where the job has none.
    Q_PROPERTY(QStringList lineWords READ lineWords NOTIFY changed)
    Q_PROPERTY(int lineIndex READ lineIndex NOTIFY changed)
    Q_PROPERTY(QString lineMissing READ lineMissing NOTIFY changed)
    Q_PROPERTY(QString accuracyLabel MEMBER m_accuracyLabel NOTIFY changed)
    Q_PROPERTY(QString accuracy MEMBER m_accuracy NOTIFY changed)
    Q_PROPERTY(QString fixKind MEMBER m_fixKind NOTIFY changed)
    Q_PROPERTY(QString fixesLabel MEMBER m_fixesLabel NOTIFY changed)
    Q_PROPERTY(QString fixesText MEMBER m_fixesText NOTIFY changed)
    Q_PROPERTY(QString scatterNote MEMBER m_scatterNote NOTIFY changed)
    Q_PROPERTY(QVariantList scatter MEMBER m_scatter NOTIFY changed)
    Q_PROPERTY(double circleRadius MEMBER m_circleRadius NOTIFY changed)
    Q_PROPERTY(double squaresAcross MEMBER m_squaresAcross NOTIFY changed)
    Q_PROPERTY(bool hasScatterSite MEMBER m_hasScatterSite NOTIFY changed)
    Q_PROPERTY(QPointF scatterSite MEMBER m_scatterSite NOTIFY changed)
    Q_PROPERTY(bool noReceiver READ hasNoReceiver NOTIFY changed)
    Q_PROPERTY(QString positionTrouble MEMBER m_positionTrouble NOTIFY changed)
    Q_PROPERTY(QString station MEMBER m_station NOTIFY changed)
    Q_PROPERTY(QString offset MEMBER m_offset NOTIFY changed)
    Q_PROPERTY(QString offsetUnit MEMBER m_offsetUnit NOTIFY changed)
    Q_PROPERTY(QString siteText MEMBER m_siteText NOTIFY changed)
    Q_PROPERTY(QString lotText MEMBER m_lotText NOTIFY changed)
    Q_PROPERTY(QString sublotText MEMBER m_sublotText NOTIFY changed)
    Q_PROPERTY(QList<qreal> stripDividers MEMBER m_stripDividers NOTIFY changed)
    Q_PROPERTY(QList<int> stripMarks MEMBER m_stripMarks NOTIFY changed)
    Q_PROPERTY(QList<qreal> stripAlong MEMBER m_stripAlong NOTIFY changed)
    Q_PROPERTY(QList<qreal> stripAcross MEMBER m_stripAcross NOTIFY changed)
    Q_PROPERTY(QString stripBegin MEMBER m_stripBegin NOTIFY changed)
    Q_PROPERTY(QString stripMiddle MEMBER m_stripMiddle NOTIFY changed)
    Q_PROPERTY(QString stripEnd MEMBER m_stripEnd NOTIFY changed)
    Q_PROPERTY(QString gridLabel MEMBER m_gridLabel NOTIFY changed)
    Q_PROPERTY(QString grid MEMBER m_grid NOTIFY changed)
    Q_PROPERTY(QStringList liftWords MEMBER m_liftWords NOTIFY changed)
    Q_PROPERTY(int liftIndex MEMBER m_liftIndex NOTIFY changed)
    Q_PROPERTY(QStringList purposeWords READ purposeWords NOTIFY changed)
    Q_PROPERTY(int purposeIndex READ purposeIndex NOTIFY changed)
    Q_PROPERTY(bool asksRetestOf READ asksRetestOf NOTIFY changed)
    Q_PROPERTY(QString retestText MEMBER m_retestText NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* failures READ failures CONSTANT)
    Q_PROPERTY(QString rework READ rework WRITE setRework NOTIFY changed)
    Q_PROPERTY(QString gaugeMissing MEMBER m_gaugeMissing NOTIFY changed)
    Q_PROPERTY(QString gaugeReason READ gaugeReason NOTIFY changed)

public:
    PlaceStep(SheetFacts& facts, QObject* parent);

    bool byTape() const { return typed("by") == "tape"; }
    bool byHand() const { return byTape() || typed("by") == "map"; }
    QStringList lineWords() const;
    int lineIndex() const;
    QString lineMissing() const;
    Q_INVOKABLE void pickLine(int index);
    QStringList purposeWords() const;
    int purposeIndex() const;
    bool asksRetestOf() const { return typed("purpose") == "retest" && !has("retest_of"); }
    QString gaugeReason() const { return typed("gauge_reason"); }
    QString rework() const { return typed("rework"); }
    void setRework(const QString& text) { type("rework", text); }
    RowList* failures() { return &m_failures; }

    /// Station and offset by tape, instead of the receiver.
    Q_INVOKABLE void typePlace();
    Q_INVOKABLE void useReceiver();
    Q_INVOKABLE void averageAgain();
    Q_INVOKABLE void pickPurpose(int index);
    Q_INVOKABLE void pickLift(int index);
    Q_INVOKABLE void pickFailure(const QString& testId);
    /// Why a test is made with a gauge that may not count today; the test becomes information only.
    Q_INVOKABLE void giveGaugeReason(const QString& reason);
    /// Number that the test will have: the next one, or that of the retested test with a letter.
    QString shownNumber() const;
    void aimAt(const book::SiteRow& site);
    void aimAtPoint(double north, double east);
    /// Amended without a new position: the one that was sealed stays until it is averaged again.
    void keepPosition();

    QString sealText() const override { return tr("Seal place"); }
    Result<std::vector<book::Entry>> entries() const override;
    static QJsonObject textOf(const book::Body& testSite);

    /// Begins or ends listening to the receiver.
    bool hasNoReceiver() const { return m_facts.session && !m_facts.session->positionSource(); }
    void listen(bool on);

protected:
    void refresh() override;
    void judgeEntry(NumberEntry& entry) override;

private:
    bool keepsPosition() const { return has("keep") && !byHand(); }
    const JobLine* tapedLine() const;
    QString placeWord() const;
    void takeFix(const position::Fix& fix);
    void showReceiver();
    void showAverage(const position::Average& average);
    void findPlace();
    void findLot();
    void chooseLift();
    void findSite();
    void showStrip(const book::LotRow& lot);
    void addStripMark(const book::LotRow& lot, double stationFt, double offsetFt, Mark mark);
    void showPurpose();
    QString whyNotYet() const;
    Result<book::Body> body() const;
    book::Body keptPosition(book::Body body) const;

    position::Averager m_averager;
    QMetaObject::Connection m_fixes, m_receivers;
    RowList m_failures;

    // Found from text, fixes and book; everything below is derived again on every change.
    std::optional<double> m_north, m_east, m_latitude, m_longitude, m_stationFt, m_offsetFt;
    std::optional<book::LotRow> m_lot;
    const JobLine* m_line = nullptr;  ///< that the station counts along
    std::optional<book::LiftRow> m_lift;
    std::optional<book::SiteRow> m_site;
    QString m_placeTrouble;

    QString m_accuracyLabel, m_accuracy, m_fixKind, m_fixesLabel, m_fixesText, m_scatterNote, m_positionTrouble;
    QVariantList m_scatter;
    double m_circleRadius = 0, m_squaresAcross = 3;
    bool m_hasScatterSite = false;
    QPointF m_scatterSite;
    QString m_station, m_offset, m_offsetUnit, m_siteText, m_lotText, m_sublotText;
    QList<qreal> m_stripDividers, m_stripAlong, m_stripAcross;
    QList<int> m_stripMarks;
    QString m_stripBegin, m_stripMiddle, m_stripEnd, m_gridLabel, m_grid;
    QStringList m_liftWords;
    int m_liftIndex = -1;
    QString m_retestText, m_gaugeMissing;
};

}  // namespace groundcount::view
