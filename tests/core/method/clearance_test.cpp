#include "method/site/clearance.h"

#include "method/site/hole_depth.h"
#include "method/site/moisture_sample.h"

#include <QtTest>
#include <cmath>

using namespace groundcount;
using namespace groundcount::method;

class ClearanceTest : public QObject {
    Q_OBJECT
private slots:
    void tellsThreeAnswersApart()
    {
        const auto judge = [](double measured, double u) {
            return *judgeClearance(Length::feet(measured), Length::feet(u), Length::inches(24), Inclusive::Yes);
        };
        QCOMPARE(judge(2.0, 0), ClearanceAnswer::Clear);
        QCOMPARE(judge(1.99, 0), ClearanceAnswer::TooClose);
        QCOMPARE(judge(2.5, 0.5), ClearanceAnswer::Clear);
        QCOMPARE(judge(2.4, 0.5), ClearanceAnswer::CannotTell);
        QCOMPARE(judge(1.5, 0.5), ClearanceAnswer::CannotTell);
        QCOMPARE(judge(1.4, 0.5), ClearanceAnswer::TooClose);
        QCOMPARE(judge(6, 13), ClearanceAnswer::CannotTell);
    }
    void leavesTheLimitOutWhenItIsNotInclusive()
    {
        const auto judge = [](double measured, double u) {
            return *judgeClearance(Length::feet(measured), Length::feet(u), Length::feet(15), Inclusive::No);
        };
        QCOMPARE(judge(15, 0), ClearanceAnswer::TooClose);
        QCOMPARE(judge(15.01, 0), ClearanceAnswer::Clear);
        QCOMPARE(judge(14, 1), ClearanceAnswer::TooClose);
    }
    void refusesNegativeAndUnknownDistances()
    {
        const auto zero = Length::metres(0);
        QVERIFY(!judgeClearance(Length::metres(-1), zero, Length::metres(3), Inclusive::Yes));
        QVERIFY(!judgeClearance(Length::metres(1), Length::metres(-1), Length::metres(3), Inclusive::Yes));
        QVERIFY(!judgeClearance(Length::metres(1), zero, zero, Inclusive::Yes));
        QVERIFY(!judgeClearance(Length::metres(std::nan("")), zero, Length::metres(3), Inclusive::Yes));
        QVERIFY(!judgeClearance(Length::metres(1), Length::metres(std::nan("")), Length::metres(3), Inclusive::Yes));
    }
    void wantsTheHoleTwoInchesBelowTheTest()
    {
        const auto in = [](double v) { return Length::inches(v); };
        QVERIFY(checkHole(in(8), in(10), in(2), in(8)));
        QVERIFY(!checkHole(in(8), in(9.9), in(2), in(8)));
        QVERIFY(!checkHole(in(10), in(12), in(2), in(8)));
        QVERIFY(checkHole(Length::metres(0.2), Length::metres(0.25), Length::metres(0.05), in(8)));
        QVERIFY(!checkHole(in(0), in(10), in(2), in(8)));
        QVERIFY(!checkHole(in(8), Length::metres(std::nan("")), in(2), in(8)));
    }
    void findsTheSampleMassByTheLargestParticle()
    {
        // Rows of method.md section 11 [D2216-TXT], [WAQTC-T255], from memory there.
        QCOMPARE(*leastMoistureSampleG(MoistureSampleRule::D2216ToOnePercent, Length::inches(0.75)), 250.0);
        QCOMPARE(*leastMoistureSampleG(MoistureSampleRule::D2216ToTenthPercent, Length::inches(0.75)), 2500.0);
        QCOMPARE(*leastMoistureSampleG(MoistureSampleRule::T265, Length::inches(0.75)), 500.0);
        QCOMPARE(*leastMoistureSampleG(MoistureSampleRule::T255, Length::inches(3)), 13000.0);
        QVERIFY(!leastMoistureSampleG(MoistureSampleRule::T265, Length::inches(3)));
        QVERIFY(!leastMoistureSampleG(MoistureSampleRule::T255, Length::inches(0)));
        QVERIFY(!leastMoistureSampleG(MoistureSampleRule::T255, Length::metres(std::nan(""))));
    }
};

QTEST_GUILESS_MAIN(ClearanceTest)
#include "clearance_test.moc"
