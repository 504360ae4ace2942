#pragma once

#include "view/reading_check.h"
#include "view/sheet_step.h"

#include <QStringList>
#include <QTimer>

#include <optional>

namespace groundcount::view {

/// Step 4: one or two readings, each counted for the rule's time while everybody stands outside the ring, then typed.
class CountStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(CountStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed)
    Q_PROPERTY(QString readingTitle MEMBER m_readingTitle NOTIFY changed)
    Q_PROPERTY(QString typeText READ typeText NOTIFY changed)
    Q_PROPERTY(QString depthText MEMBER m_depthText NOTIFY changed)
    Q_PROPERTY(QString orientationText MEMBER m_orientationText NOTIFY changed)
    Q_PROPERTY(QString timerCaption MEMBER m_timerCaption NOTIFY changed)
    Q_PROPERTY(QString timerFigure MEMBER m_timerFigure NOTIFY changed)
    Q_PROPERTY(double timerValue MEMBER m_timerValue NOTIFY changed)
    Q_PROPERTY(double timerLimit READ timerLimit CONSTANT)
    Q_PROPERTY(QString timerLimitLabel MEMBER m_timerLimitLabel NOTIFY changed)
    Q_PROPERTY(QString enterNotYet MEMBER m_enterNotYet NOTIFY changed)
    Q_PROPERTY(bool ringKnown MEMBER m_ringKnown NOTIFY changed)
    Q_PROPERTY(QString ringDistance MEMBER m_ringDistance NOTIFY changed)
    Q_PROPERTY(QString ringUnit MEMBER m_ringUnit NOTIFY changed)
    Q_PROPERTY(QString ringSpread MEMBER m_ringSpread NOTIFY changed)
    Q_PROPERTY(int ringMark READ ringMark NOTIFY changed)
    Q_PROPERTY(QString ringWord MEMBER m_ringWord NOTIFY changed)
    Q_PROPERTY(QString ringLabel MEMBER m_ringLabel NOTIFY changed)
    Q_PROPERTY(QString ringSource MEMBER m_ringSource NOTIFY changed)
    Q_PROPERTY(double distanceInRings MEMBER m_distanceInRings NOTIFY changed)
    Q_PROPERTY(double accuracyInRings MEMBER m_accuracyInRings NOTIFY changed)
    Q_PROPERTY(double ringBearing MEMBER m_ringBearing NOTIFY changed)
    Q_PROPERTY(QStringList formWords READ formWords CONSTANT)
    Q_PROPERTY(int formIndex READ formIndex NOTIFY changed)
    Q_PROPERTY(QStringList readingLines MEMBER m_readingLines NOTIFY changed)
    Q_PROPERTY(QString comparison MEMBER m_comparison NOTIFY changed)
    Q_PROPERTY(QString comparisonWord MEMBER m_comparisonWord NOTIFY changed)
    Q_PROPERTY(int comparisonMark READ comparisonMark NOTIFY changed)
    Q_PROPERTY(QString readingTrouble MEMBER m_readingTrouble NOTIFY changed)
    Q_PROPERTY(QStringList secondActs MEMBER m_secondActs NOTIFY changed)
    Q_PROPERTY(QString caution READ caution CONSTANT)
    Q_PROPERTY(QString struckTitle READ struckTitle CONSTANT)
    Q_PROPERTY(QStringList struckLines READ struckLines CONSTANT)

public:
    enum Stage { Ready, Running, Typed };
    Q_ENUM(Stage)

    CountStep(SheetFacts& facts, QObject* parent);

    Stage stage() const { return m_stage; }
    double timerLimit() const;
    QString typeText() const { return tr("Type reading %1").arg(readingAtHand()); }
    int ringMark() const { return static_cast<int>(m_ringMark); }
    int comparisonMark() const { return static_cast<int>(m_comparisonMark); }
    QStringList formWords() const;
    int formIndex() const;
    bool isApart() const { return m_isApart; }
    QString caution() const { return tr("Keep people and vehicles out."); }
    QString struckTitle() const { return tr("If the gauge is struck"); }
    QStringList struckLines() const;

    /// Begins the count of the reading at hand; the start is kept in the draft, so that it runs on when the page is left.
    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();
    /// After the minimum: the numbers of the reading are typed.
    Q_INVOKABLE void enterReading();
    /// Opens the numbers of a reading that was typed already.
    Q_INVOKABLE void retype(int reading);
    Q_INVOKABLE void pickForm(int index);
    /// Does act number `index` of `secondActs`.
    Q_INVOKABLE void secondAct(int index);
    /// Looks at clock and position again.
    Q_INVOKABLE void tick();

    QString sealText() const override { return tr("Seal the reading"); }
    Result<std::vector<book::Entry>> entries() const override;
    /// The readings as evidence, whether or not they agree.
    std::vector<book::Entry> readingEntries() const;
    static QJsonObject textOf(const std::vector<book::Body>& readings);

signals:
    /// The time that the rule set asks for has just run out.
    void minimumOver();
    /// The two readings are apart and the person gives this place up, with the sentence that says so.
    void newSpotWanted(const QString& reason);

protected:
    void refresh() override;
    void judgeEntry(NumberEntry& entry) override;

private:
    enum class SecondAct { Turn90, Turn180, Drop, CountAgain, NewSpot };
    /// Key of a text of one reading: "first2".
    static QString numbered(const char* key, int reading);
    int readingAtHand() const;
    QString at(const char* key, int reading) const;
    bool hasReading(int reading) const { return !at("first", reading).isEmpty() && !at("second", reading).isEmpty(); }
    TypedForm form() const;
    int elapsedSeconds() const;
    int leastSeconds() const;
    void showTimer();
    void showRing();
    void showReadings();
    void offerSecond();
    std::optional<TypedReading> typedReading(int reading) const;
    ReadingPapers papers() const;
    QString orientation(int reading) const;
    QString orientationWord(int reading) const;
    void openEntry(int reading);
    QString slipOf(int reading, NumberEntry& entry) const;
    QString whyNotYet() const;
    book::Body readingBody(int reading) const;
    bool isSecondAlways() const;

    QTimer m_timer;
    Stage m_stage = Ready;
    int m_entryReading = 1;  ///< whose numbers are open on the keypad
    QString m_readingTitle, m_depthText, m_orientationText, m_timerCaption, m_timerFigure, m_timerLimitLabel, m_enterNotYet;
    double m_timerValue = 0;
    bool m_ringKnown = false, m_isApart = false;
    QString m_ringDistance, m_ringUnit, m_ringSpread, m_ringWord, m_ringLabel, m_ringSource;
    Mark m_ringMark = Mark::CannotTell, m_comparisonMark = Mark::Nothing;
    double m_distanceInRings = 0, m_accuracyInRings = 0, m_ringBearing = 0;
    QStringList m_readingLines, m_secondActs;
    std::vector<SecondAct> m_secondActList;
    QString m_comparison, m_comparisonWord, m_readingTrouble;
};

}  // namespace groundcount::view
