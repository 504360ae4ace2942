#include "book/lot_statistics.h"
#include "book/retest_chain.h"
#include "method/rules/rule_set.h"

#include <QTest>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::book;

namespace {

StatisticsRules neutral()
{
    return statisticsRules(method::neutralRules()).value();
}

LotRow lot()
{
    LotRow l;
    l.id = "lot";
    l.name = "N-1";
    l.minimumPctText = "95";
    l.testsPerLift = 5;
    return l;
}

std::vector<LiftRow> lifts(int n)
{
    std::vector<LiftRow> all;
    for (int i = 1; i <= n; ++i)
        all.push_back({"lift" + std::to_string(i), "lot", i, "8"});
    all.push_back({"other", "another lot", 1, "8"});
    return all;
}

TestRow test(int number, const char* pct, TestState state = TestState::Pass)
{
    TestRow t;
    t.id = "t" + std::to_string(number);
    t.number = std::to_string(number);
    t.lot = "lot";
    t.lift = "lift1";
    t.state = state;
    t.compactionPct = pct;
    char at[40];
    std::snprintf(at, sizeof at, "2026-06-09T12:%02d:00.000Z", number);
    t.startedAt = at;
    t.north = 1000 + number;
    t.east = 500;
    t.gauge = "g1";
    t.material = "m1";
    t.proctor = "p1";
    return t;
}

TestRow retest(int number, const TestRow& of, const char* pct, TestState state)
{
    TestRow t = test(number, pct, state);
    t.purpose = TestPurpose::Retest;
    t.retestOf = of.id;
    t.lift = of.lift;
    t.north = of.north;
    return t;
}

LotStatistics worked(const std::vector<TestRow>& tests, const StatisticsRules& rules = neutral(), int liftCount = 2)
{
    return lotStatistics(lot(), lifts(liftCount), tests, 0.3048, rules).value();
}

}  // namespace

class LotStatisticsTest : public QObject {
    Q_OBJECT
private slots:
    void countsWhatIsOwedAndMade()
    {
        std::vector<TestRow> tests{test(1, "96.0"), test(2, "97.0"), test(3, "", TestState::Open), test(4, "95.5", TestState::Waiting),
                                   test(5, "99", TestState::Void), test(6, "98.0"), test(7, "94.0", TestState::Fail)};
        tests[5].purpose = TestPurpose::Directed;
        tests.push_back(test(8, "97"));
        tests.back().lot = "another lot";
        const auto s = worked(tests);
        QCOMPARE(s.lifts, 2);
        QCOMPARE(s.required, 10);
        QCOMPARE(s.made, 4);  // 1, 2, 4 (waits), 7
        QCOMPARE(s.random, 5);
        QCOMPARE(s.directed, 1);
        QCOMPARE(s.waiting, 1);
        QCOMPARE(s.openFailures.size(), std::size_t(1));
        QCOMPARE(s.openFailures[0]->number, std::string("7"));
        QCOMPARE(s.values.size(), std::size_t(3));
        QCOMPARE(s.leftOut, std::vector<std::string>{"4 (waiting)"});
    }

    void figuresAreThoseOfASecondWay()
    {
        std::mt19937_64 random(41);
        for (int n = 3; n <= 12; ++n) {
            std::vector<TestRow> tests;
            std::vector<double> x;
            for (int i = 0; i < n; ++i) {
                const double pct = std::round(std::normal_distribution<double>(96.5, 1.2)(random) * 10) / 10;
                tests.push_back(test(i + 1, QByteArray::number(pct, 'f', 1).constData(), pct < 95 ? TestState::Fail : TestState::Pass));
                x.push_back(pct);
            }
            const auto s = worked(tests);
            double sum = 0, squares = 0;
            for (const double v : x)
                sum += v;
            for (const double v : x)
                squares += (v - sum / n) * (v - sum / n);
            const double mean = sum / n, sd = std::sqrt(squares / (n - 1));
            QVERIFY(std::fabs(*s.mean.value - mean) < 1e-10);
            QVERIFY(std::fabs(s.spread.value->sd - sd) < 1e-10);
            // the law of the quality index straight from the incomplete beta function [AQLSCHEMES]
            const double q = (mean - 95) / sd;
            const double z = std::min(1.0, std::max(0.0, 0.5 - q * std::sqrt(n) / (2 * (n - 1))));
            QVERIFY(std::fabs(s.pwl.value->pwl - 100 * (1 - boost::math::ibeta(n / 2.0 - 1, n / 2.0 - 1, z))) < 1e-9);
            QCOMPARE(s.movingMeans.size(), static_cast<std::size_t>(std::max(0, n - 3)));
            for (std::size_t i = 0; i < s.movingMeans.size(); ++i)
                QVERIFY(std::fabs(s.movingMeans[i] - (x[i] + x[i + 1] + x[i + 2] + x[i + 3]) / 4) < 1e-12);
        }
    }

    void theRuleSetSaysWhatStandsForAFailure()
    {
        std::vector<TestRow> tests{test(1, "93.0", TestState::Fail), test(2, "96.0"), test(3, "97.0")};
        tests.push_back(retest(4, tests[0], "95.5", TestState::Pass));
        StatisticsRules rules = neutral();
        auto s = worked(tests, rules);
        QCOMPARE(s.values.size(), std::size_t(3));
        QCOMPARE(s.values[0].compactionPct, 95.5);
        QCOMPARE(s.values[0].insteadOf, std::string("1"));
        QVERIFY(s.openFailures.empty());
        QCOMPARE(s.retests, 1);
        rules.retested = Retested::FailedTest;
        QCOMPARE(worked(tests, rules).values[0].compactionPct, 93.0);
        rules.retested = Retested::Nothing;
        s = worked(tests, rules);
        QCOMPARE(s.values.size(), std::size_t(2));
        QCOMPARE(s.leftOut, std::vector<std::string>{"1 (failed, closed by 4)"});
        QVERIFY(!s.pwl.value);
        QVERIFY(!s.pwl.whyNot.empty());
    }

    void aChainIsOpenUntilItsLastRetestPassesAtThePlace()
    {
        std::vector<TestRow> tests{test(1, "93.0", TestState::Fail)};
        const auto open = [&] {
            std::vector<std::string> numbers;
            for (const auto* t : RetestChains(tests, 0.3048, Length::feet(10)).open())
                numbers.push_back(t->number);
            return numbers;
        };
        QCOMPARE(open(), std::vector<std::string>{"1"});
        tests.push_back(retest(2, tests[0], "94.0", TestState::Fail));
        QCOMPARE(open(), std::vector<std::string>{"2"});
        tests.push_back(retest(3, tests[1], "96.0", TestState::Pass));
        QVERIFY(open().empty());
        QCOMPARE(RetestChains(tests, 0.3048, Length::feet(10)).closedBy(tests[0])->number, std::string("3"));
        tests[2].lift = "lift2";
        QCOMPARE(open(), std::vector<std::string>{"2"});
        tests[2].lift = "lift1";
        tests[2].north += 10.1;  // feet
        QCOMPARE(open(), std::vector<std::string>{"2"});
        tests[2].north -= 0.1;
        QVERIFY(open().empty());
        tests[2].state = TestState::Waiting;
        QCOMPARE(open(), std::vector<std::string>{"2"});
        tests[1].retestOf = "t2";  // a damaged book: it names itself
        QVERIFY(!RetestChains(tests, 0.3048, Length::feet(10)).closedBy(tests[1]));
    }

    void outliersAreFlaggedAndStay()
    {
        std::vector<TestRow> tests;
        for (int i = 1; i <= 9; ++i)
            tests.push_back(test(i, i % 2 ? "96.4" : "96.9"));
        tests.push_back(test(10, "104.0"));
        const auto s = worked(tests);
        QVERIFY(s.outlier.value->flagged);
        QCOMPARE(s.values[s.outlier.value->index].test->number, std::string("10"));
        QCOMPARE(s.values.size(), std::size_t(10));
        tests.pop_back();
        QVERIFY(!worked(tests).outlier.value->flagged);
    }

    void chartsBeginAnewWithTheGaugeAndTheReference()
    {
        std::vector<TestRow> tests;
        for (int i = 1; i <= 12; ++i) {
            tests.push_back(test(i, i % 2 ? "96.0" : "96.6"));
            tests.back().gauge = i <= 6 ? "g1" : "g2";
            tests.back().proctor = i <= 9 ? "p1" : "p2";
        }
        tests[4].compactionPct = "99.9";
        const auto charts = controlCharts(tests, "").value();
        QCOMPARE(charts.size(), std::size_t(3));
        for (const auto& chart : charts) {
            std::vector<double> x;
            for (const auto* t : chart.tests)
                x.push_back(std::stod(t->compactionPct));
            double mean = 0, ranges = 0;
            for (std::size_t i = 0; i < x.size(); ++i) {
                mean += x[i] / static_cast<double>(x.size());
                ranges += i ? std::fabs(x[i] - x[i - 1]) / static_cast<double>(x.size() - 1) : 0;
            }
            std::vector<std::size_t> outside;
            for (std::size_t i = 0; i < x.size(); ++i)
                if (std::fabs(x[i] - mean) > 2.66 * ranges || (i && std::fabs(x[i] - x[i - 1]) > 3.267 * ranges))
                    outside.push_back(i);
            QVERIFY(std::fabs(chart.chart.value->values.upper - (mean + 2.66 * ranges)) < 1e-9);
            QCOMPARE(chart.outside, outside);
        }
        QVERIFY(controlCharts(tests, "another lot")->empty());
    }

    void settingsOutsideTheirRangeAreRefused()
    {
        auto rules = method::neutralRules();
        rules.limits["lot.moving_mean"].value = Decimal::parse("1").value();
        QVERIFY(!statisticsRules(rules));
        rules = method::neutralRules();
        rules.limits["lot.outlier_level"].value = Decimal::parse("50").value();
        QVERIFY(!statisticsRules(rules));
        rules = method::neutralRules();
        rules.choices.erase("pwl.q");
        QVERIFY(!statisticsRules(rules));
        rules = method::neutralRules();
        rules.choices["pwl.q"].word = "0.01";
        rules.choices["pwl.mean"].word = "0.1";
        QCOMPARE(statisticsRules(rules)->chain.qPlaces, std::optional<int>(2));
        QCOMPARE(statisticsRules(rules)->chain.meanPlaces, std::optional<int>(1));
        QVERIFY(!statisticsRules(rules)->chain.sdPlaces);
        LotRow broken = lot();
        broken.minimumPctText = "ninety";
        QVERIFY(!lotStatistics(broken, lifts(1), {}, 0.3048, neutral()));
    }
};

QTEST_GUILESS_MAIN(LotStatisticsTest)
#include "lot_statistics_test.moc"
