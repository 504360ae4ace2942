#include "method/uncertainty/compaction.h"

#include "method/gauge/calibration.h"
#include "method/soil/in_place.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr double kLb = kKgPerM3PerLbPerFt3;
constexpr int kDraws = 200000;

/// Mean and standard deviation of draws, and the share at or above a level.
struct Sample {
    double sum = 0, squares = 0;
    int count = 0, reached = 0;
    double level = 0;
    void add(double value)
    {
        sum += value;
        squares += value * value;
        ++count;
        reached += value >= level ? 1 : 0;
    }
    double mean() const { return sum / count; }
    double sd() const { return std::sqrt((squares - sum * sum / count) / (count - 1)); }
    double share() const { return static_cast<double>(reached) / count; }
};

}  // namespace

/// The formulas are first order; the draws go through the same arithmetic as a test and know nothing of them.
class UncertaintyTest : public QObject {
    Q_OBJECT
private slots:
    void drawsOfTheSubtractionRouteScatterAsComputed()
    {
        const auto wet = WetDensity::lbPerFt3(132.4);
        const auto water = WaterDensity::lbPerFt3(11.8);
        const auto maximum = DryDensity::lbPerFt3(124.6);
        const auto u = compactionUncertainty(wet, WetDensity::lbPerFt3(0.5), water, WaterDensity::lbPerFt3(0.4), maximum, DryDensity::lbPerFt3(0.9));
        std::mt19937_64 source(20260106);
        std::normal_distribution<double> normal;
        Sample dry, compaction;
        compaction.level = 95.0;
        for (int i = 0; i < kDraws; ++i) {
            const auto place = dryFromWater(WetDensity::lbPerFt3(132.4 + 0.5 * normal(source)), WaterDensity::lbPerFt3(11.8 + 0.4 * normal(source)));
            dry.add(place->dry.lbPerFt3());
            compaction.add(percentCompaction(place->dry, DryDensity::lbPerFt3(124.6 + 0.9 * normal(source)))->percent());
        }
        QVERIFY(std::fabs(dry.sd() / u->dryStandard.lbPerFt3() - 1) < 0.01);
        QVERIFY(std::fabs(compaction.sd() / u->standardPct - 1) < 0.01);
        QVERIFY(std::fabs(compaction.mean() - u->compactionPct) < 0.02);
        QVERIFY(std::fabs(compaction.share() - u->chanceAtLeast(95.0)) < 0.003);
    }

    void drawsOfTheOvenRouteScatterAsComputed()
    {
        const auto u = compactionUncertainty(WetDensity::kgPerM3(2121), WetDensity::kgPerM3(8), WaterContent::percent(9.8),
                                             WaterContent::percent(0.4), DryDensity::kgPerM3(1996), DryDensity::kgPerM3(14));
        std::mt19937_64 source(20260107);
        std::normal_distribution<double> normal;
        Sample dry, compaction;
        compaction.level = 96.0;
        for (int i = 0; i < kDraws; ++i) {
            const auto place = dryFromContent(WetDensity::kgPerM3(2121 + 8 * normal(source)), WaterContent::percent(9.8 + 0.4 * normal(source)));
            dry.add(place->dry.kgPerM3());
            compaction.add(percentCompaction(place->dry, DryDensity::kgPerM3(1996 + 14 * normal(source)))->percent());
        }
        QVERIFY(std::fabs(dry.sd() / u->dryStandard.kgPerM3() - 1) < 0.01);
        QVERIFY(std::fabs(compaction.sd() / u->standardPct - 1) < 0.01);
        QVERIFY(std::fabs(compaction.share() - u->chanceAtLeast(96.0)) < 0.003);
    }

    /// Pulses by the Poisson law, F to a displayed count, through ratio and calibration.
    void drawnPulsesScatterAsComputed()
    {
        DensityCurve curve;
        curve.a = 12.0;
        curve.bPerKgPerM3 = 0.019 / kLb;
        curve.c = 0.05;
        const WaterCurve water{0.012, 0.0165 / kLb, {}, {}};
        const auto uDensity = ratioUncertainty({3010, 2853, 16, 1, 4});
        const auto uWater = ratioUncertainty({146, 671, 16, 1, 4});
        std::mt19937_64 source(20260108);
        std::poisson_distribution<int> test(3010 * 16), standard(2853 * 16 * 4), moisture(146 * 16), moistureStandard(671 * 16 * 4);
        Sample density, waterDrawn;
        for (int i = 0; i < kDraws; ++i) {
            density.add(wetDensity(curve, *countRatio(test(source) / 16.0, standard(source) / 64.0))->lbPerFt3());
            waterDrawn.add(waterDensity(water, *countRatio(moisture(source) / 16.0, moistureStandard(source) / 64.0))->lbPerFt3());
        }
        QVERIFY(std::fabs(density.sd() / wetUncertainty(*uDensity, curve.bPerKgPerM3, curve.c)->lbPerFt3() - 1) < 0.01);
        QVERIFY(std::fabs(waterDrawn.sd() / waterUncertainty(*uWater, water.slopePerKgPerM3)->lbPerFt3() - 1) < 0.01);
    }

    void chancesOfOneLevelFallAsItRises()
    {
        const auto u = compactionUncertainty(WetDensity::kgPerM3(2121), WetDensity::kgPerM3(8), WaterContent::percent(9.8),
                                             WaterContent::percent(0.4), DryDensity::kgPerM3(1996), DryDensity::kgPerM3(14));
        QVERIFY(std::fabs(u->chanceAtLeast(u->compactionPct) - 0.5) < 1e-12);
        for (double level = 90; level < 105; level += 0.5)
            QVERIFY(u->chanceAtLeast(level) > u->chanceAtLeast(level + 0.5));
        const auto sure = compactionUncertainty(WetDensity::kgPerM3(2121), {}, WaterContent::percent(9.8), {}, DryDensity::kgPerM3(1996), {});
        QCOMPARE(sure->chanceAtLeast(95.0), 1.0);
        QCOMPARE(sure->chanceAtLeast(99.0), 0.0);
    }

    void refusesPulsesAndTimesThatAreNotAboveNothing()
    {
        const Counting sound{3010, 2853, 16, 1, 4};
        QVERIFY(ratioUncertainty(sound));
        for (double Counting::*field : {&Counting::testCount, &Counting::standardCount, &Counting::prescale, &Counting::testMinutes, &Counting::standardMinutes})
            for (const double bad : {0.0, -1.0, std::nan("")}) {
                Counting broken = sound;
                broken.*field = bad;
                QVERIFY(!ratioUncertainty(broken));
            }
        QVERIFY(!compactionUncertainty(WetDensity::kgPerM3(2121), WetDensity::kgPerM3(8), WaterContent::percent(9.8), WaterContent::percent(0.4),
                                       DryDensity::kgPerM3(1996), DryDensity::kgPerM3(std::nan(""))));
        QVERIFY(!inQuadrature({1.0, -1.0}));
        QCOMPARE(*inQuadrature({3.0, 4.0}), 5.0);
    }

    /// Method section 2: one percent of 2850 counts is about half of one standard deviation with F = 1, and over four of
    /// them with F = 16 and 4 minutes.
    void onePercentIsFourDeviationsOnlyForLongScaledCounts()
    {
        const double plain = *countDeviationPercent(2850, 1, 1);
        const double longer = *countDeviationPercent(2850, 16, 4);
        QVERIFY(std::fabs(1.0 / plain - 0.534) < 0.001);
        QVERIFY(std::fabs(1.0 / longer - 4.271) < 0.001);
    }
};

QTEST_GUILESS_MAIN(UncertaintyTest)
#include "uncertainty_test.moc"
