#include "method/gauge/offsets.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr MoistureVariant kAll[] = {MoistureVariant::DryBasis, MoistureVariant::WetBasis, MoistureVariant::MassOffset,
                                    MoistureVariant::PercentOffset, MoistureVariant::Ratio};

MoistureSample sample(double oven, double wet, double water)
{
    return {WaterContent::percent(oven), WetDensity::lbPerFt3(wet), WaterDensity::lbPerFt3(water)};
}

}  // namespace

class GaugeOffsetsTest : public QObject {
    Q_OBJECT
private slots:
    /// method.md section 8: all five variants give back the oven value exactly for the sample they came from.
    void everyVariantGivesBackTheOvenOfItsOwnSample()
    {
        std::mt19937_64 source(20260102);
        const auto between = [&](double low, double high) { return std::uniform_real_distribution<double>(low, high)(source); };
        for (int i = 0; i < 5000; ++i) {
            const double wet = between(100, 150);
            const auto one = sample(between(2, 30), wet, wet * between(0.03, 0.25));
            for (const auto variant : kAll) {
                const auto calibration = moistureCalibration(variant, std::span(&one, 1), 1);
                QVERIFY(calibration.has_value());
                const auto result = dryFromGauge(one.wet, one.gaugeWater, calibration->correction);
                QVERIFY(result.has_value());
                QVERIFY(std::fabs(result->content.percent() - one.oven.percent()) < 1e-9);
                // Whatever the variant, water and dry mass add up to the wet density.
                QVERIFY(std::fabs(result->water.kgPerM3() + result->dry.kgPerM3() - one.wet.kgPerM3()) < 1e-9);
            }
        }
    }

    void aFactorOfNothingChangesNothing()
    {
        const auto raw = dryFromGauge(WetDensity::lbPerFt3(131.5), WaterDensity::lbPerFt3(16.7));
        for (const auto variant : kAll) {
            const double nothing = variant == MoistureVariant::Ratio ? 1.0 : 0.0;
            const auto result = dryFromGauge(WetDensity::lbPerFt3(131.5), WaterDensity::lbPerFt3(16.7), {variant, nothing});
            QVERIFY(std::fabs(result->dry.kgPerM3() - raw->dry.kgPerM3()) < 1e-9);
        }
    }

    void refusesTooFewSamplesAndWaterBelowNothing()
    {
        const auto one = sample(12.6, 131.2, 16.3);
        QVERIFY(!moistureCalibration(MoistureVariant::DryBasis, std::span(&one, 1), 5));
        QVERIFY(!moistureCalibration(MoistureVariant::DryBasis, {}, 0));
        QVERIFY(!dryFromGauge(WetDensity::lbPerFt3(120), WaterDensity::lbPerFt3(1), {MoistureVariant::PercentOffset, -2.0}));
        QVERIFY(!dryFromGauge(WetDensity::lbPerFt3(120), WaterDensity::lbPerFt3(10), {MoistureVariant::DryBasis, std::nan("")}));
        QVERIFY(!dryFromGauge(WetDensity::lbPerFt3(120), WaterDensity::lbPerFt3(10), {MoistureVariant::DryBasis, -1.0}));
        const auto dry = sample(12.6, 131.2, 0.0);
        QVERIFY(!moistureCalibration(MoistureVariant::Ratio, std::span(&dry, 1), 1));
    }

    void trenchTakesTheWallOffTheCount()
    {
        QCOMPARE(*trenchCorrected(168, 703, 671), 136.0);
        QCOMPARE(*trenchCorrected(168, 640, 671), 199.0);  // a wall may also lower the count
        QVERIFY(!trenchCorrected(168, 839, 671));          // exactly nothing left
        QCOMPARE(*trenchCorrected(168, 838, 671), 1.0);
    }

    /// Reference: the definition of the paired t with t(0.975, 4) = 2.776445 as printed in any table of Student's t.
    void biasIsSignificantOnlyBeyondStudentsT()
    {
        const auto lb = [](double v) { return WetDensity::lbPerFt3(v); };
        const WetDensity reference[] = {lb(118.9), lb(121.4), lb(119.6), lb(120.8), lb(122.1)};
        const WetDensity near[] = {lb(118.4), lb(121.9), lb(119.9), lb(120.4), lb(122.2)};
        const auto bias = densityBias(reference, near, 0.05);
        QVERIFY(std::fabs(bias->tCritical - 2.776445) < 1e-6);
        QVERIFY(!bias->isSignificant);
        QVERIFY(std::fabs(bias->t) < bias->tCritical);
        const WetDensity apart[] = {lb(117.9), lb(120.4), lb(118.6), lb(119.8), lb(121.1)};
        QVERIFY(densityBias(reference, apart, 0.05)->isSignificant);  // every difference 1: beyond doubt
        QVERIFY(!densityBias(reference, std::span(near).first(4), 0.05));
        QVERIFY(!densityBias(reference, near, 0.0));
    }

    void moistureLimitIsInclusive()
    {
        const auto w = [](double v) { return WaterContent::percent(v); };
        QCOMPARE(moistureCheck(w(9.7), w(8.7), 1.0)->use, MoistureSource::Gauge);
        QCOMPARE(moistureCheck(w(8.7), w(9.7), 1.0)->use, MoistureSource::Gauge);
        QCOMPARE(moistureCheck(w(9.71), w(8.7), 1.0)->use, MoistureSource::Oven);
        QVERIFY(!moistureCheck(w(-1), w(8.7), 1.0));
        QVERIFY(!moistureCheck(w(9.7), w(8.7), std::nan("")));
    }
};

QTEST_GUILESS_MAIN(GaugeOffsetsTest)
#include "gauge_offsets_test.moc"
