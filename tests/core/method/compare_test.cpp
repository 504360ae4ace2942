#include "method/accept/compare.h"
#include "method/accept/control_chart.h"
#include "method/accept/outlier.h"

#include <QtTest>
#include <cmath>
#include <random>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

class CompareTest : public QObject {
    Q_OBJECT
private slots:
    void theRangeOfTwoHasClosedFactors()
    {
        // n = 2: d2 = 2/sqrt(pi), d3 = sqrt(2 - 4/pi); n = 3: d2 = 3/sqrt(pi) (closed forms of the normal range).
        QVERIFY(std::abs(chartFactors(2)->d2 - 2 / std::sqrt(M_PI)) < 1e-9);
        QVERIFY(std::abs(chartFactors(2)->d3 - std::sqrt(2 - 4 / M_PI)) < 1e-8);
        QVERIFY(std::abs(chartFactors(3)->d2 - 3 / std::sqrt(M_PI)) < 1e-9);
        QVERIFY(!chartFactors(1));
        QVERIFY(!chartFactors(101));
        double before = 0;
        for (const int n : {2, 3, 4, 5, 8, 12, 25, 50, 100}) {
            const auto factors = chartFactors(n);
            QVERIFY(factors->d2 > before && factors->lowerRange >= 0 && factors->d3 > 0);
            before = factors->d2;
        }
    }
    void theRangeFactorsMeetASimulation()
    {
        std::mt19937_64 random(5);
        std::normal_distribution<double> normal;
        double sum = 0;
        double squares = 0;
        constexpr int kRounds = 200000;
        for (int i = 0; i < kRounds; ++i) {
            double low = 1e9;
            double high = -1e9;
            for (int k = 0; k < 5; ++k) {
                const double x = normal(random);
                low = std::min(low, x);
                high = std::max(high, x);
            }
            sum += high - low;
            squares += (high - low) * (high - low);
        }
        const double mean = sum / kRounds;
        QVERIFY(std::abs(mean - chartFactors(5)->d2) < 0.01);
        QVERIFY(std::abs(std::sqrt(squares / kRounds - mean * mean) - chartFactors(5)->d3) < 0.01);
    }
    void anOutlierLimitIsTheQualityIndexOfOneInN()
    {
        // Far beyond any sample the statistic cannot exceed (n - 1)/sqrt(n).
        for (int n = 3; n < 40; ++n) {
            QVERIFY(*outlierCritical(n, 0.001, Sides::Two) < (n - 1) / std::sqrt(n));
            QVERIFY(*outlierCritical(n, 0.05, Sides::One) < *outlierCritical(n, 0.05, Sides::Two));
            QVERIFY(std::abs(*outlierCritical(n, 0.05, Sides::One) - *outlierCritical(n, 0.1, Sides::Two)) < 1e-12);
        }
        QVERIFY(!outlierCritical(2, 0.05, Sides::One));
        QVERIFY(!outlierCritical(5, 0, Sides::One));
        QVERIFY(!outlierCritical(5, std::nan(""), Sides::One));
    }
    void findsTheSuspectedValue()
    {
        const std::vector<double> x{97.1, 96.4, 98.2, 91.0, 97.7, 96.9};
        QCOMPARE(testLargestDeviation(x, 0.05, Sides::Two)->index, std::size_t(3));
        QVERIFY(!testLargestDeviation(std::vector<double>(6, 95.3), 0.05, Sides::Two));
        QVERIFY(!gapRatio11(std::vector<double>{1, 2}, End::High));
        QVERIFY(!gapRatio11(std::vector<double>{1, 2, 2, 2}, End::High));
        QVERIFY(!gapRatio11(std::vector<double>{1, std::nan(""), 2}, End::High));
    }
    void swappingTheSamplesMirrorsTheTests()
    {
        const std::vector<double> x{96.4, 97.0, 95.8, 98.1, 96.6};
        const std::vector<double> y{95.1, 96.9, 94.2, 97.7};
        for (auto* compare : {&comparePooled, &compareUnequal}) {
            const auto a = (*compare)(x, y, 0.05);
            const auto b = (*compare)(y, x, 0.05);
            QVERIFY(std::abs(a->t + b->t) < 1e-12);
            QVERIFY(std::abs(a->p - b->p) < 1e-12);
            QVERIFY(std::abs(a->low + b->high) < 1e-9);
        }
        const auto f = compareVariances(x, y, 0.05);
        const auto g = compareVariances(y, x, 0.05);
        QVERIFY(std::abs(f->f * g->f - 1) < 1e-12);
        QVERIFY(std::abs(f->p - g->p) < 1e-9);
        QVERIFY(std::abs(f->ratioLow * g->ratioHigh - 1) < 1e-9);
        QCOMPARE(f->fCritical, g->fCritical);
    }
    void theIntervalTouchesZeroWhereThePValueIsAlpha()
    {
        const std::vector<double> x{96.4, 97.0, 95.8, 98.1, 96.6};
        const std::vector<double> y{95.1, 96.9, 94.2, 97.7};
        const auto first = compareUnequal(x, y, 0.05);
        const auto second = compareUnequal(x, y, first->p);
        QVERIFY(std::abs(second->low) < 1e-9);
    }
    void refusesWithoutSpreadPairsOrLevel()
    {
        const std::vector<double> flat(4, 95.3);
        const std::vector<double> x{96.4, 97.0, 95.8, 98.1};
        QVERIFY(!compareVariances(x, flat, 0.05));
        QVERIFY(!comparePooled(flat, flat, 0.05));
        QVERIFY(comparePooled(x, flat, 0.05));
        QVERIFY(!comparePaired(x, std::vector<double>{1, 2, 3}, 0.05, 2));
        QVERIFY(!comparePaired(x, flat, 0.05, 10));
        QVERIFY(!comparePaired(std::vector<double>{96.1, 97.2, 98.3}, std::vector<double>{95.1, 96.2, 97.3}, 0.05, 2));
        QVERIFY(!comparePooled(x, flat, 0));
        QVERIFY(!comparePooled(x, std::vector<double>{1}, 0.05));
        QVERIFY(!comparePooled(x, std::vector<double>{1, std::nan("")}, 0.05));
    }
    void refusesChartsOfOneValueOrUnequalGroups()
    {
        QVERIFY(!individualsChart(std::vector<double>{1}));
        QVERIFY(!subgroupChart({{1, 2}, {1, 2, 3}}));
        QVERIFY(!subgroupChart({{1, 2}}));
        QVERIFY(!subgroupChart({{1}, {2}}));
        QVERIFY(!knownSigmaLimits(1, 0, 5, 2));
        QVERIFY(!knownSigmaLimits(1, 1, 0, 2));
    }
};

QTEST_GUILESS_MAIN(CompareTest)
#include "compare_test.moc"
