#include "method/accept/retest.h"
#include "method/accept/weighted.h"
#include "method/explain/explain_compare.h"
#include "method/explain/explain_draw.h"
#include "method/explain/explain_lot.h"
#include "method/explain/explain_uncertainty.h"

#include "core/method/explained.h"

#include <algorithm>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

namespace {

QString limitsText(const ControlLimits& limits) { return sixDigits(limits.lower) + " to " + sixDigits(limits.upper); }

}  // namespace

/// The inputs are rows of tests/tables, named by their id; what the function gives must be what the last step says.
class ExplainLotTest : public QObject {
    Q_OBJECT
private slots:
    void frequencyOfRowFRQ01()
    {
        const FrequencyRule rule{*Decimal::parse("500"), 1, 1};
        const int required = requiredTests(rule, *Decimal::parse("1760")).value();
        explains(explainFrequency(rule, *Decimal::parse("1760"), required, "ft"), QString::number(required));
    }

    void acceptanceForms()
    {
        const std::vector<double> good{95.2, 96.8, 95.0, 97.1}, low{95.2, 96.8, 94.9, 97.1};
        explains(explainLot(good, EveryForm{95}, judgeEvery(good, 95).value()), "pass");
        explains(explainLot(low, EveryForm{95}, judgeEvery(low, 95).value()), "fail");
        explains(explainLot(good, BandForm{95, 97}, judgeBand(good, 95, 97).value()), "fail");
        const auto mean = judgeMeanAndMinimum(good, 4, 96, 94, MeanRounding{1}).value();
        const auto steps = explainLot(good, MeanForm{96, 94, MeanRounding{1}}, mean);
        explains(steps, "pass");
        explainsStep(steps, "Mean", sixDigits(*mean.decidingMean) + " %");
        const auto moving = judgeMovingMean(low, 2, 96, {}).value();
        const auto movingSteps = explainLot(low, MovingMeanForm{2, 96, {}}, moving);
        explains(movingSteps, "fail");
        explainsStep(movingSteps, "Lowest moving mean", sixDigits(*moving.decidingMean) + " %");
    }

    void percentWithinLimitsOfRowPWLE01()
    {
        const std::vector<double> x{96.0, 97.0, 99.0, 100.0};
        PwlChain chain;
        chain.sdPlaces = 1;
        chain.table = PwlTable::NextHigherWhole;
        const auto lot = lotPwl(x, {96.3, {}}, chain).value();
        const auto steps = explainPwl({96.3, {}}, chain, lot);
        explains(steps, places(lot.pwl, 2) + " %");
        explains(steps, "82.00 %");
        explainsStep(steps, "Lower quality index", places(*lot.qLower, 4));
        const auto two = lotPwl(x, {95.0, 101.0}, {}).value();
        explains(explainPwl({95.0, 101.0}, {}, two), places(two.pwl, 2) + " %");
        const std::vector<double> same{96.5, 96.5, 96.5};
        explains(explainPwl({95.0, {}}, {}, lotPwl(same, {95.0, {}}, {}).value()), "100.00 %");
    }

    void payFactorTakesTheStepThatApplies()
    {
        explains(explainPay(steppedPaySteps(), 80, payFactor(steppedPaySteps(), 80).value()), places(payFactor(steppedPaySteps(), 80).value(), 4));
        explains(explainPay(linearPaySteps(), 80, payFactor(linearPaySteps(), 80).value()), places(0.95, 4));
    }

    void outlierOfRowOUT02()
    {
        const std::vector<double> x{568, 570, 570, 570, 572, 572, 572, 578, 584, 596};
        const auto test = testLargestDeviation(x, 0.05, Sides::One).value();
        const auto steps = explainOutlier(x, 0.05, Sides::One, test);
        explains(steps, "flagged");
        explainsStep(steps, "Largest deviation", places(test.g, 4));
        explainsStep(steps, "Critical value", places(test.critical, 4));
    }

    void variancesOfRowFX2()
    {
        const std::vector<double> x{12.4, 11.1, 13.9, 10.2, 14.6, 12.0, 9.7, 13.3}, y{12.1, 12.3, 12.0, 12.5, 12.2, 12.4};
        const auto test = compareVariances(x, y, 0.01).value();
        const auto steps = explainVariances(x, y, 0.01, test);
        explains(steps, "different");
        explainsStep(steps, "Variance ratio F", places(test.fLargerOverSmaller, 4));
        explainsStep(steps, "Critical value", places(test.fCritical, 4));
    }

    void meansOfRowFT03AndTheOtherTests()
    {
        const std::vector<double> x{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0}, y{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
        const auto welch = compareUnequal(x, y, 0.05).value();
        const auto steps = explainMeans(MeanComparison::Unequal, x, y, 0.05, welch);
        explains(steps, "no difference shown");
        explainsStep(steps, "t", places(welch.t, 4));
        explainsStep(steps, "Interval of the difference", sixDigits(welch.low) + " to " + sixDigits(welch.high));
        explains(explainMeans(MeanComparison::Pooled, x, y, 0.05, comparePooled(x, y, 0.05).value()), "no difference shown");
        explains(explainMeans(MeanComparison::Paired, x, y, 0.05, comparePaired(x, y, 0.05, 10).value()), "different");
    }

    void individualsOfRowCI2()
    {
        const std::vector<double> x{11.2, 12.7, 10.4, 11.9, 13.1, 12.2, 10.8};
        const auto chart = individualsChart(x).value();
        const auto steps = explainIndividuals(x, chart);
        explains(steps, limitsText(chart.values));
        explainsStep(steps, "Upper limit of the moving range", sixDigits(chart.movingRangeUpper));
    }

    void subgroupsOfRowCS1AndAKnownSigma()
    {
        const std::vector<std::vector<double>> groups{{96.1, 97.4, 95.8}, {97.0, 96.2, 98.1}, {95.5, 96.9, 97.7}, {96.6, 97.2, 96.0}};
        const auto chart = subgroupChart(groups).value();
        const auto factors = chartFactors(3).value();
        const auto steps = explainSubgroups(4, 3, factors, chart);
        explains(steps, limitsText(chart.means));
        explainsStep(steps, "Mean range", sixDigits(chart.meanRange));
        const auto limits = knownSigmaLimits(96, 1.2, 4, 3).value();
        explains(explainKnownSigma(96, 1.2, 4, 3, limits), limitsText(limits));
    }

    void countingUncertaintyOfRowsGC90AndGC91()
    {
        const Counting density{3010, 2853, 16, 1, 4}, moisture{146, 671, 16, 1, 4};
        const auto d = ratioUncertainty(density).value();
        explains(explainRatioUncertainty(density, d), places(d.absolute, 6));
        const double b = 0.019 / kKgPerM3PerLbPerFt3, m = 0.0165 / kKgPerM3PerLbPerFt3;
        const auto wet = wetUncertainty(d, b, 0.05).value();
        explains(explainWetUncertainty(d, b, 0.05, wet, DensityUnit::LbPerFt3), places(wet.lbPerFt3(), 3) + " lb/ft3");
        QVERIFY(explainWetUncertainty(d, b, 0.05, wet, DensityUnit::LbPerFt3).back().numbers.find("0.019000") != std::string::npos);
        const auto water = waterUncertainty(ratioUncertainty(moisture).value(), m).value();
        explains(explainWaterUncertainty(ratioUncertainty(moisture).value(), m, water, DensityUnit::LbPerFt3), places(water.lbPerFt3(), 3) + " lb/ft3");
    }

    void chainOfRowsGC92AndGC93()
    {
        const auto lb = [](double x) { return DryDensity::lbPerFt3(x); };
        const auto sub = compactionUncertainty(WetDensity::lbPerFt3(132.4), WetDensity::lbPerFt3(0.5), WaterDensity::lbPerFt3(11.8), WaterDensity::lbPerFt3(0.4), lb(124.6), lb(0.9)).value();
        const auto steps = explainCompactionUncertainty({WetDensity::lbPerFt3(132.4), WetDensity::lbPerFt3(0.5)}, {WaterDensity::lbPerFt3(11.8), WaterDensity::lbPerFt3(0.4)},
                                                        {lb(124.6), lb(0.9)}, 95, sub, DensityUnit::LbPerFt3);
        explains(steps, QChar(0xB1) + places(sub.expandedPct, 2) + " %");
        explainsStep(steps, "Uncertainty of the dry density", places(sub.dryStandard.lbPerFt3(), 3) + " lb/ft3");
        explainsStep(steps, "Chance that the true percent is at least 95", "98.0 %");
        explainsStep(steps, "Largest part", "mostly the maximum density, 65 %");
        const auto kg = [](double x) { return DryDensity::kgPerM3(x); };
        const auto oven = compactionUncertainty(WetDensity::kgPerM3(2121), WetDensity::kgPerM3(8), WaterContent::percent(9.8), WaterContent::percent(0.4), kg(1996), kg(14)).value();
        const auto ovenSteps = explainCompactionUncertainty({WetDensity::kgPerM3(2121), WetDensity::kgPerM3(8)}, {WaterContent::percent(9.8), WaterContent::percent(0.4)},
                                                            {kg(1996), kg(14)}, 95, oven, DensityUnit::KgPerM3);
        explains(ovenSteps, QChar(0xB1) + places(oven.expandedPct, 2) + " %");
    }

    void everyDrawOfAStripStandsWithItsNumbers()
    {
        const StripPlan plan{{10000, 500, 24, 4, 4}, 2, 3, EdgePolicy::Redraw};
        const auto draw = drawInStrip(plan, 20260609).value();
        QVERIFY2(!draw.rejected.empty(), "the case must have a rejected draw");
        const auto steps = explainStripDraw(plan, draw);
        explains(steps, "6 sites");
        QCOMPARE(steps.front().numbers, std::string("seed 20260609"));
        QCOMPARE(steps.size(), 3 + draw.sites.size() + draw.rejected.size());
        explainsStep(steps, "Sublots", "250.0 ft, 3 in each");
        const auto& last = draw.sites.back();
        QCOMPARE(last.sublot, 2);
        explainsStep(steps, "Site 6 in sublot 2", places(last.place.stationFt, 1) + " ft, " + places(last.place.fromLeftFt, 1) + " ft from the left");
        // by hand from what the step says: r1 over the second half of the strip
        QCOMPARE(places(10250 + last.along * 250, 1), places(last.place.stationFt, 1));
        QVERIFY(std::any_of(steps.begin(), steps.end(), [](const ExplainStep& step) { return step.name.starts_with("Rejected draw 1 ") && step.value.ends_with("inside the edge strip"); }));
    }

    void everyDrawOfAnAreaStandsWithItsNumbers()
    {
        const PlanArea area{{{100, 200}, {160, 200}, {160, 240}}, {}};
        const auto draw = drawInArea(area, 3, 2, 7).value();
        QVERIFY2(!draw.rejected.empty(), "half of the extent is outside");
        const auto steps = explainAreaDraw(area, 2, draw);
        explains(steps, "3 sites");
        explainsStep(steps, "Extent", QString("60.00") + kTimes + "40.00");
        const auto& site = draw.sites.front();
        explainsStep(steps, "Site 1", "north " + places(100 + site.alongNorth * 60, 2) + ", east " + places(200 + site.alongEast * 40, 2));
    }

    void weightsAndRetestNumbers()
    {
        const std::vector<double> results{95.1, 97.3, 99.1}, lengths{500, 250, 250};
        const auto mean = weightedMean(results, lengths).value();
        const auto steps = explainWeightedMean(results, lengths, mean);
        explains(steps, places((95.1 * 2 + 97.3 + 99.1) / 4, 2));
        explainsStep(steps, "Results, with the size that each stands for", "1000 in all");
        explains(explainRetestNumber("021", 2, retestNumber("021", 2).value()), "021B");
    }
};

QTEST_GUILESS_MAIN(ExplainLotTest)
#include "explain_lot_test.moc"
