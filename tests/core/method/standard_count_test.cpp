#include "method/gauge/decay.h"
#include "method/gauge/stability.h"
#include "method/gauge/standard_count.h"

#include <QTest>
#include <cmath>
#include <random>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

class StandardCountTest : public QObject {
    Q_OBJECT
private slots:
    void averagesTheLastFourOnly()
    {
        const std::vector<double> earlier{9999, 2861, 2849, 2856, 2846};
        const auto check = percentCheck(earlier, 2879, 1.0, {4, FewCounts::AverageThem});
        QCOMPARE(check->mean, 2853.0);
        QVERIFY(check->isAccepted);
        QVERIFY(!percentCheck(earlier, 2879, 1.0, {5, FewCounts::AverageThem})->isAccepted);
    }

    void limitsAreInclusiveWhateverBinaryMakesOfThem()
    {
        for (int mean = 100; mean <= 4000; ++mean) {
            const std::vector<double> earlier(4, mean);
            for (const double percent : {0.1, 0.3, 0.7, 1.0, 1.1, 2.0}) {
                const double edge = mean + mean * percent / 100.0;
                QVERIFY(percentCheck(earlier, edge, percent, {})->isAccepted);
                QVERIFY(!percentCheck(earlier, edge + 1e-4, percent, {})->isAccepted);
            }
        }
    }

    void refusesWithoutEnoughEarlierCounts()
    {
        const std::vector<double> three{3120, 3098, 3107};
        QVERIFY(percentCheck(three, 3131, 1.0, {4, FewCounts::AverageThem}));
        QVERIFY(!percentCheck(three, 3131, 1.0, {4, FewCounts::Refuse}));
        QVERIFY(!percentCheck({}, 3131, 1.0, {4, FewCounts::AverageThem}));
        QVERIFY(!percentCheck(three, std::nan(""), 1.0, {}));
        QVERIFY(!percentCheck(three, 3131, 0.0, {}));
    }

    void secondCountHasToAgreeWithTheFirstAndWithTheRecord()
    {
        const TwoStepLimits limits{1.0, 1.0, 2.0};
        QCOMPARE(twoStepCheck(2850, 2878.5, {}, limits)->outcome, TwoStepOutcome::AcceptFirst);
        QCOMPARE(twoStepCheck(2850, 2879, {}, limits)->outcome, TwoStepOutcome::TakeSecond);
        QCOMPARE(twoStepCheck(2850, 2885, 2893, limits)->outcome, TwoStepOutcome::AcceptSecond);
        QCOMPARE(twoStepCheck(2850, 2885, 2850, limits)->outcome, TwoStepOutcome::Fail);      // 1.2 % apart
        QCOMPARE(twoStepCheck(2850, 2908, 2900, limits)->outcome, TwoStepOutcome::Fail);      // first beyond 2 %
        QVERIFY(!twoStepCheck(2850, 2885, 0.0, limits));
    }

    void halfOfTheSourceIsLeftAfterOneHalfLife()
    {
        QCOMPARE(*decayFactor(11023, 11023), 0.5);
        // Two spans one after the other decay like the sum.
        QVERIFY(std::fabs(*decayFactor(10975.76, 700) * *decayFactor(10975.76, 300) - *decayFactor(10975.76, 1000)) < 1e-14);
        // method.md section 2: against a fixed count, Cs-137 decay alone uses up 1 % in 160 days.
        QVERIFY(std::fabs(1.0 - *decayFactor(10975.76, 160) - 0.01) < 0.0001);
        QVERIFY(!decayBand(2410, -1, 10975.76, 0.01, 2401));
        QVERIFY(!decayBand(2410, 10, 10975.76, 1.0, 2401));
    }

    /// A healthy gauge drawn from the Poisson law fails the 0.75 to 1.25 band about as often as the chi-square law says.
    void healthyGaugesFailTheBandAsOftenAsComputed()
    {
        std::mt19937_64 source(20260103);
        std::poisson_distribution<int> pulses(2850);
        int outside = 0;
        constexpr int kSets = 20000;
        for (int set = 0; set < kSets; ++set) {
            std::vector<double> counts(20);
            for (auto& count : counts)
                count = pulses(source);
            outside += stabilityCheck(counts, 1, 0.75, 1.25)->verdict != BandVerdict::Inside ? 1 : 0;
        }
        const double expected = *chanceOutside(20, 0.75, 1.25);
        const double found = static_cast<double>(outside) / kSets;
        QVERIFY(std::fabs(expected - 0.12) < 0.005);  // method.md section 4
        QVERIFY2(std::fabs(found - expected) < 4 * std::sqrt(expected * (1 - expected) / kSets), qPrintable(QString::number(found)));
    }

    void theBandOfTheConfidenceLeavesTheRestOutside()
    {
        for (const int n : {2, 5, 10, 20, 50})
            for (const double confidence : {0.5, 0.9, 0.95, 0.99}) {
                const auto band = stabilityBand(n, confidence);
                QVERIFY(std::fabs(*chanceOutside(n, band->low, band->high) - (1 - confidence)) < 1e-9);
            }
        QVERIFY(!stabilityBand(1, 0.9));
        QVERIFY(!stabilityBand(20, 1.0));
    }

    void prescaledCountsAreJudgedByTheirScaledScatter()
    {
        const std::vector<double> counts{2859, 2847, 2871, 2852, 2864, 2834, 2844, 2876, 2851, 2840};
        const auto plain = stabilityCheck(counts, 1, 0.75, 1.25);
        const auto scaled = stabilityCheck(counts, 16, 0.75, 1.25);
        QCOMPARE(plain->verdict, BandVerdict::BelowBand);
        QCOMPARE(scaled->verdict, BandVerdict::Inside);
        QVERIFY(std::fabs(scaled->scaledRatio - 4 * plain->scaledRatio) < 1e-12);
    }

    void driftNeedsALimitOfTheRuleSet()
    {
        const std::vector<double> first{2851, 2847, 2860};
        const std::vector<double> second{2838, 2849, 2836};
        QVERIFY(!driftCheck(first, second, std::nan("")));
        QVERIFY(driftCheck(first, second, 0.5)->isAccepted);
        QVERIFY(!driftCheck(first, second, 0.3)->isAccepted);
        QVERIFY(!driftCheck(std::span(first).first(1), second, 0.5));
    }
};

QTEST_GUILESS_MAIN(StandardCountTest)
#include "standard_count_test.moc"
