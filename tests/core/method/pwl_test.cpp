#include "method/accept/pwl.h"

#include "method/accept/lot_forms.h"
#include "method/accept/pay.h"

#include <QtTest>
#include <cmath>
#include <limits>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

// Closed forms of method.md section 24, a second way beside the incomplete beta function.
double closedForm(double q, int n)
{
    const double c = std::min(1.0, std::max(-1.0, q * std::sqrt(n) / (n - 1)));
    const double z = (1 - c) / 2;
    const double phi = std::acos(c);
    switch (n) {
    case 3:
        return 0.5 - std::asin(c) / M_PI;
    case 4:
        return std::min(1.0, std::max(0.0, 0.5 - q / 3));
    case 5:
        return (phi - std::sin(phi) * std::cos(phi)) / M_PI;
    case 6:
        return 3 * z * z - 2 * z * z * z;
    case 7:
        return (phi - std::sin(phi) * std::cos(phi) - 2.0 / 3 * std::pow(std::sin(phi), 3) * std::cos(phi)) / M_PI;
    case 8:
        return 10 * std::pow(z, 3) - 15 * std::pow(z, 4) + 6 * std::pow(z, 5);
    default:
        return 35 * std::pow(z, 4) - 84 * std::pow(z, 5) + 70 * std::pow(z, 6) - 20 * std::pow(z, 7);
    }
}

}  // namespace

class PwlTest : public QObject {
    Q_OBJECT
private slots:
    void agreesWithTheClosedForms()
    {
        for (const int n : {3, 4, 5, 6, 7, 8, 10})
            for (double q = -3; q <= 3; q += 0.01)
                QVERIFY2(std::abs(*percentWithin(q, n) - 100 * (1 - closedForm(q, n))) < 1e-9, qPrintable(QString("n %1 Q %2").arg(n).arg(q)));
    }
    void theInverseLeadsBack()
    {
        for (int n = 3; n <= 60; ++n)
            for (int percent = 1; percent < 100; ++percent)
                QVERIFY(std::abs(*percentWithin(*qualityIndexFor(percent, n), n) - percent) < 1e-9);
    }
    void manyResultsTendToTheNormalDistribution()
    {
        QVERIFY(std::abs(*qualityIndexForManyResults(97.5) - 1.959963985) < 1e-8);  // z of 97.5 %, common tables
        QVERIFY(std::abs(*qualityIndexFor(97.5, 100000) - 1.959963985) < 1e-4);
    }
    void isExactlyHundredFromQmaxAndZeroBelowItsNegative()
    {
        for (int n = 3; n <= 30; ++n) {
            const double most = *qualityIndexMax(n);
            QCOMPARE(*percentWithin(most, n), 100.0);
            QCOMPARE(*percentWithin(-most, n), 0.0);
            QCOMPARE(*percentWithin(1e300, n), 100.0);
            if (n <= 8)  // for larger n the rest is below the last digit of a double
                QVERIFY(*percentWithin(most - 0.1, n) < 100);
        }
    }
    void keepsTheSignOfQ()
    {
        for (double q = 0; q < 2; q += 0.1)
            QVERIFY(std::abs(*percentWithin(q, 7) + *percentWithin(-q, 7) - 100) < 1e-10);
    }
    void refusesSmallLotsAndUnknownNumbers()
    {
        QVERIFY(!percentWithin(1, 2));
        QVERIFY(!percentWithin(kNan, 5));
        QVERIFY(!qualityIndexFor(101, 5));
        QVERIFY(!qualityIndexFor(kNan, 5));
        QVERIFY(!qualityIndexFor(90, 2));
        const std::vector<double> lot{95, 96, 97};
        QVERIFY(!lotPwl(lot, {}, {}));
        QVERIFY(!lotPwl(lot, {97, 95}, {}));
        QVERIFY(!lotPwl(lot, {kNan, {}}, {}));
        QVERIFY(!lotPwl(std::vector<double>{95, kNan, 97}, {95, {}}, {}));
        QVERIFY(!lotPwl(lot, {95, {}}, {9, {}, {}, TieRule::HalfEven, PwlTable::Exact}));
        QVERIFY(!lotPwlFromSummary(5, 96, -1, {95, {}}, {}));
    }
    void equalResultsHaveNoSpreadWhateverTheirBinaryForm()
    {
        const std::vector<double> lot(7, 95.3);
        QCOMPARE(lotPwl(lot, {95.3, {}}, {})->pwl, 100.0);
        QCOMPARE(lotPwl(lot, {95.4, {}}, {})->pwl, 0.0);
        QCOMPARE(lotPwl(lot, {95.3, {}}, {})->sd, 0.0);
    }
    void readsWholePercentsUpOrToTheNearest()
    {
        // n = 4 is linear: PWL = 50 + 100 Q/3.
        const std::vector<double> lot{96, 97, 99, 100};  // [P401-SLIDES]
        QCOMPARE(lotPwl(lot, {96.3, {}}, {{}, 1, {}, TieRule::HalfEven, PwlTable::NextHigherWhole})->pwl, 82.0);
        QCOMPARE(lotPwl(lot, {96.3, {}}, {{}, 1, {}, TieRule::HalfEven, PwlTable::NearestWhole})->pwl, 81.0);
        // A Q that is an entry (0.9000 is 80 %) stays that entry.
        QCOMPARE(lotPwlFromSummary(4, 95.9, 1, {95, {}}, {{}, {}, {}, TieRule::HalfEven, PwlTable::NextHigherWhole})->pwl, 80.0);
        // A negative Q is 100 minus the entry of its size.
        QCOMPARE(lotPwlFromSummary(4, 94.08, 1, {95, {}}, {{}, {}, {}, TieRule::HalfEven, PwlTable::NextHigherWhole})->pwl, 100 - 81.0);
    }
    void judgesTheFormsOnDecimals()
    {
        // Neither mean is exact in binary; both are 95 in decimals.
        const std::vector<double> lot{95.1, 94.9, 95.2, 94.8};
        QCOMPARE(judgeMovingMean(lot, 2, 95.0, {})->verdict, LotVerdict::Pass);
        QCOMPARE(judgeMeanAndMinimum(lot, 4, 95.0, 94.8, {})->verdict, LotVerdict::Pass);
        QCOMPARE(judgeMeanAndMinimum(lot, 4, 95.0, 94.81, {})->verdict, LotVerdict::Fail);
        QCOMPARE(judgeMeanAndMinimum({{94.96, 94.96, 94.96}}, 3, 95.0, 90, {})->verdict, LotVerdict::Fail);
        QCOMPARE(judgeMeanAndMinimum({{94.96, 94.96, 94.96}}, 3, 95.0, 90, MeanRounding{1})->verdict, LotVerdict::Pass);
        QVERIFY(!judgeEvery({}, 95));
        QVERIFY(!judgeEvery({{kNan}}, 95));
        QVERIFY(!judgeBand({{96.0}}, 100, 95));
        QVERIFY(!judgeMovingMean(lot, 1, 95, {}));
        QVERIFY(!judgeMovingMean(lot, 5, 95, {}));
    }
    void paysByStepsWithoutAHole()
    {
        for (double pwl = 55; pwl <= 100; pwl += 0.5)
            QVERIFY(payFactor(steppedPaySteps(), pwl));
        QVERIFY(!payFactor(steppedPaySteps(), 54.99));
        QVERIFY(!payFactor(linearPaySteps(), 100.1));
        QVERIFY(!payFactor(linearPaySteps(), kNan));
    }
};

QTEST_GUILESS_MAIN(PwlTest)
#include "pwl_test.moc"
