#include "view/limit_scale.h"

#include <QtTest>

#include <cmath>

using namespace groundcount::view;

class LimitScaleTest : public QObject {
    Q_OBJECT

private slots:
    void putsARequiredDistanceInTheMiddle()
    {
        const auto scale = LimitScale::forDistance(24);
        const auto line = scale.place({.low = 24, .high = {}, .value = 17, .spread = {}}, Mark::TooClose);
        QCOMPARE(line.lowLimit, 0.5);
        QCOMPARE(line.value, 17.0 / 48.0);
        QVERIFY(std::isnan(line.highLimit));
        QVERIFY(std::isnan(line.spreadLow));
        QCOMPARE(line.mark, static_cast<int>(Mark::TooClose));
    }

    void holdsAFarDistanceAtTheEnd() { QCOMPARE(LimitScale::forDistance(30).fraction(214), 1.0); }

    void keepsNotANumberAbsent() { QVERIFY(std::isnan(LimitScale(0, 1).fraction(kNoFraction))); }

    void putsAMinimumInTheMiddleWithRoom()
    {
        const LimitReading reading{.low = 95, .high = {}, .value = 97.4, .spread = 1.8};
        const auto scale = LimitScale::around(reading, 6);
        QCOMPARE(scale.low(), 89.0);
        QCOMPARE(scale.high(), 101.0);
        const auto line = scale.place(reading, Mark::Pass);
        QCOMPARE(line.lowLimit, 0.5);
        QCOMPARE(line.value, (97.4 - 89) / 12);
        QCOMPARE(line.spreadLow, (95.6 - 89) / 12);
        QCOMPARE(line.spreadHigh, (99.2 - 89) / 12);
    }

    void widensForAValueFarBelowItsLimit()
    {
        const LimitReading reading{.low = 95, .high = {}, .value = 80, .spread = 2};
        const auto scale = LimitScale::around(reading, 6);
        QVERIFY(scale.fraction(78) > 0);
        QVERIFY(scale.fraction(78) < scale.fraction(80));
        QCOMPARE(scale.fraction(95), 0.5);
    }

    void leavesHalfTheWindowOutsideEachBound()
    {
        const LimitReading window{.low = 10.8, .high = 14.8, .value = 12.5, .spread = 0.8};
        const auto line = LimitScale::around(window, 3).place(window, Mark::Pass);
        QCOMPARE(line.lowLimit, 0.25);
        QCOMPARE(line.highLimit, 0.75);
    }

    void showsAValueWithoutLimits()
    {
        const LimitReading alone{.low = {}, .high = {}, .value = 12.5, .spread = {}};
        QCOMPARE(LimitScale::around(alone, 3).place(alone, Mark::Waiting).value, 0.5);
    }

    void keepsLabelsInOrderAndKnowsTheMeasuredOne()
    {
        LimitFigure line;
        addLabel(line, 0.5, "24 in. needed", LabelKind::Plain);
        addLabel(line, 0.7, "31 in.", LabelKind::Measured);
        addLabel(line, 0.1, "0", LabelKind::Plain);
        QCOMPARE(line.labels, QStringList({"0", "24 in. needed", "31 in."}));
        QCOMPARE(line.measuredLabel, 2);
    }
};

QTEST_GUILESS_MAIN(LimitScaleTest)
#include "limit_scale_test.moc"
