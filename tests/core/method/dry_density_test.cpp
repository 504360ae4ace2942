#include "method/soil/in_place.h"

#include <QTest>
#include <cmath>
#include <limits>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

struct Draw {
    std::mt19937_64 source{20260104};
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(source); }
};

}  // namespace

class DryDensityTest : public QObject {
    Q_OBJECT
private slots:
    /// method.md section 9: w from subtraction put into the oven route gives the same dry density to 1e-9.
    void theTwoRoutesAgree()
    {
        Draw draw;
        for (int i = 0; i < 50000; ++i) {
            const auto wet = WetDensity::lbPerFt3(draw.between(60, 180));
            const auto water = WaterDensity::kgPerM3(wet.kgPerM3() * draw.between(0, 0.6));
            const auto gauge = dryFromWater(wet, water);
            const auto oven = dryFromContent(wet, gauge->content);
            QVERIFY(std::fabs(gauge->dry.kgPerM3() - oven->dry.kgPerM3()) < 1e-9);
            QVERIFY(std::fabs(gauge->water.kgPerM3() - oven->water.kgPerM3()) < 1e-9);
        }
    }

    void moreWaterIsLessDryAndMoreWetIsMoreDry()
    {
        Draw draw;
        for (int i = 0; i < 5000; ++i) {
            const double wet = draw.between(1000, 2500);
            const double water = draw.between(0, 400);
            const auto at = [](double rho, double m) { return dryFromWater(WetDensity::kgPerM3(rho), WaterDensity::kgPerM3(m))->dry; };
            QVERIFY(at(wet, water) > at(wet, water + 0.001));
            QVERIFY(at(wet, water) < at(wet + 0.001, water));
        }
    }

    void theGuardsRefuse()
    {
        const auto wet = [](double v) { return WetDensity::kgPerM3(v); };
        const auto water = [](double v) { return WaterDensity::kgPerM3(v); };
        for (const double bad : {0.0, -1.0, kNaN, std::numeric_limits<double>::infinity()})
            QVERIFY(!dryFromWater(wet(bad), water(1)));
        QVERIFY(!dryFromWater(wet(2000), water(2000)));
        QVERIFY(!dryFromWater(wet(2000), water(-0.001)));
        QVERIFY(!dryFromWater(wet(2000), water(kNaN)));
        QVERIFY(dryFromWater(wet(2000), water(0)));
        QVERIFY(!dryFromContent(wet(2000), WaterContent::percent(-0.1)));
        QVERIFY(!percentCompaction(DryDensity::kgPerM3(1900), DryDensity::kgPerM3(0)));
        QVERIFY(!percentCompaction(DryDensity::kgPerM3(kNaN), DryDensity::kgPerM3(1900)));
    }

    void saturationIsHundredOnItsLine()
    {
        Draw draw;
        const auto rhoW = DensityOfWater::lbPerFt3(62.4);
        for (int i = 0; i < 5000; ++i) {
            const double gs = draw.between(2.5, 3.0);
            const auto w = WaterContent::percent(draw.between(1, 40));
            const double saturation = draw.between(10, 100);
            const auto dry = dryAtSaturation(gs, rhoW, w, saturation);
            QVERIFY(std::fabs(*saturationPercent(*dry, w, gs, rhoW) - saturation) < 1e-9);
            const double air = draw.between(0, 50);
            QVERIFY(std::fabs(voids(*dryAtAirVoids(gs, rhoW, w, air), w, gs, rhoW)->airVoidsPercent - air) < 1e-9);
            QVERIFY(std::fabs(waterAtSaturation(*dryAtSaturation(gs, rhoW, w, 100), gs, rhoW)->percent() - w.percent()) < 1e-9);
        }
    }

    void saturationLineAndAirVoidsLineAreTwoLines()
    {
        const auto rhoW = DensityOfWater::kgPerM3(1000);
        const auto w = WaterContent::percent(12);
        QVERIFY(dryAtSaturation(2.7, rhoW, w, 95)->kgPerM3() - dryAtAirVoids(2.7, rhoW, w, 5)->kgPerM3() > 50);
        QCOMPARE(dryAtSaturation(2.7, rhoW, w, 100)->kgPerM3(), dryAtAirVoids(2.7, rhoW, w, 0)->kgPerM3());
    }

    void impossibleSoilIsReportedAndDenserThanItsSolidsRefused()
    {
        const auto rhoW = DensityOfWater::kgPerM3(1000);
        const auto found = voids(DryDensity::kgPerM3(1937.5), WaterContent::percent(14.9), 2.69, rhoW);
        QVERIFY(found->saturationPercent > 100 && !found->isPossible());
        QVERIFY(!voids(DryDensity::kgPerM3(2690), WaterContent::percent(1), 2.69, rhoW));
        QVERIFY(!voids(DryDensity::kgPerM3(1900), WaterContent::percent(1), 0, rhoW));
        QVERIFY(!dryAtSaturation(2.7, rhoW, WaterContent::percent(12), 0));
        QVERIFY(!dryAtAirVoids(2.7, rhoW, WaterContent::percent(12), 100.1));
        QVERIFY(!dryAtAirVoids(2.7, rhoW, WaterContent::percent(kNaN), 5));
    }
};

QTEST_GUILESS_MAIN(DryDensityTest)
#include "dry_density_test.moc"
