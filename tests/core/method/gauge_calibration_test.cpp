#include "method/gauge/calibration.h"

#include <QTest>
#include <cmath>
#include <limits>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr double kLb = kKgPerM3PerLbPerFt3;
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

/// Made-up curve of no real gauge.
DensityCurve curve(double a, double bPerLb, double c)
{
    DensityCurve made;
    made.a = a;
    made.bPerKgPerM3 = bPerLb / kLb;
    made.c = c;
    return made;
}

/// Legal curves: A 2 to 20, B 0.005 to 0.037 per lb/ft3 (the attenuation bound of method.md section 5), C -0.1 to 0.1.
struct Draw {
    std::mt19937_64 source{20260101};
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(source); }
    DensityCurve legalCurve() { return curve(between(2, 20), between(0.005, 0.037), between(-0.1, 0.1)); }
};

}  // namespace

class GaugeCalibrationTest : public QObject {
    Q_OBJECT
private slots:
    void densityToRatioAndBackIsTheSameDensity()
    {
        Draw draw;
        for (int i = 0; i < 20000; ++i) {
            const auto c = draw.legalCurve();
            const auto density = WetDensity::lbPerFt3(draw.between(60, 180));
            const auto ratio = countRatioOf(c, density);
            QVERIFY(ratio.has_value());
            if (*ratio <= 0)
                continue;  // a negative C may leave no count at all; nothing to read back
            const auto back = wetDensity(c, *ratio);
            QVERIFY2(back.has_value(), back ? "" : back.error().what.c_str());
            QVERIFY(std::fabs(back->kgPerM3() - density.kgPerM3()) < 1e-9 * density.kgPerM3() * 1e2);
        }
    }

    void waterToRatioAndBackIsTheSameWater()
    {
        Draw draw;
        for (int i = 0; i < 20000; ++i) {
            const WaterCurve c{draw.between(-0.02, 0.05), draw.between(0.01, 0.02) / kLb, {}, {}};
            const auto water = WaterDensity::lbPerFt3(draw.between(3, 40));
            const auto back = waterDensity(c, *countRatioOf(c, water));
            QVERIFY(back.has_value());
            QVERIFY(std::fabs(back->kgPerM3() - water.kgPerM3()) < 1e-9);
        }
    }

    void aHigherRatioIsALowerDensityAndMoreWater()
    {
        Draw draw;
        for (int i = 0; i < 2000; ++i) {
            const auto c = draw.legalCurve();
            const WaterCurve w{0.0, draw.between(0.01, 0.02) / kLb, {}, {}};
            const double low = draw.between(0.2, 1.0);
            const double high = low + draw.between(1e-6, 0.5);
            QVERIFY(*wetDensity(c, low) > *wetDensity(c, high));
            QVERIFY(*waterDensity(w, low) < *waterDensity(w, high));
        }
    }

    void neverGivesANumberThatIsNotFiniteOrNegative()
    {
        Draw draw;
        const double odd[] = {0.0, -1.0, kNaN, std::numeric_limits<double>::infinity(), 1e-300, 1e300};
        int refusals = 0;
        for (int i = 0; i < 20000; ++i) {
            auto c = draw.legalCurve();
            double ratio = draw.between(-0.2, 25);
            const auto pick = static_cast<std::size_t>(draw.between(0, 5.999));
            if (i % 5 == 1)
                c.a = odd[pick];
            if (i % 5 == 2)
                c.bPerKgPerM3 = odd[pick];
            if (i % 5 == 3)
                c.c = odd[pick];
            if (i % 5 == 4)
                ratio = odd[pick];
            const auto density = wetDensity(c, ratio);
            if (!density) {
                ++refusals;
                QVERIFY(!density.error().what.empty() && density.error().fault == Fault::Refused);
                continue;
            }
            QVERIFY(density->kgPerM3() >= 0);
            QVERIFY(!std::isnan(density->kgPerM3()));
        }
        QVERIFY(refusals > 1000 && refusals < 19000);
    }

    void slopeIsTheDifferenceQuotient()
    {
        const auto c = curve(12.0, 0.019, 0.05);
        const auto at = [&](double lb) { return *countRatioOf(c, WetDensity::lbPerFt3(lb)); };
        const double slope = *ratioPerWetDensity(c, WetDensity::lbPerFt3(125)) * kLb;
        QVERIFY(std::fabs(slope - (at(125.001) - at(124.999)) / 0.002) < 1e-9);
        // dD/dCR is the inverse of dCR/dD at the same place.
        QVERIFY(std::fabs(wetDensityPerRatio(c, at(125)) / kLb * slope - 1.0) < 1e-12);
    }

    void logarithmicInterpolationIsExactOnATableOfItsOwnCurve()
    {
        const auto c = curve(12.0, 0.019, 0.05);
        std::vector<CalibrationRow> rows;
        for (double lb = 110; lb <= 130; lb += 5)
            rows.push_back({WetDensity::lbPerFt3(lb), *countRatioOf(c, WetDensity::lbPerFt3(lb))});
        const double bound = linearStepError(c.bPerKgPerM3, WetDensity::lbPerFt3(5))->lbPerFt3();
        for (double lb = 110; lb <= 130; lb += 0.1) {
            const double ratio = *countRatioOf(c, WetDensity::lbPerFt3(lb));
            const auto log = wetDensityFromTable(rows, ratio, c.c);
            const auto linear = wetDensityFromTable(rows, ratio);
            if (!log || !linear)
                continue;  // the last bits may put the first and the last row outside
            QVERIFY(std::fabs(log->lbPerFt3() - lb) < 1e-9);
            QVERIFY(linear->lbPerFt3() >= lb - 1e-9);
            QVERIFY(linear->lbPerFt3() - lb <= bound);
        }
        QVERIFY(!wetDensityFromTable(rows, 0.9));
        QVERIFY(!wetDensityFromTable(rows, 1.6));
        std::swap(rows[1], rows[2]);
        QVERIFY(!wetDensityFromTable(rows, 1.2));
    }

    void warnsOnlyOutsideAStatedRange()
    {
        auto c = curve(12.0, 0.019, 0.05);
        QCOMPARE(calibratedRange(c, WetDensity::lbPerFt3(300)), Range::Inside);
        c.rangeLow = WetDensity::lbPerFt3(100);
        c.rangeHigh = WetDensity::lbPerFt3(150);
        QCOMPARE(calibratedRange(c, WetDensity::lbPerFt3(100)), Range::Inside);
        QCOMPARE(calibratedRange(c, WetDensity::lbPerFt3(150.1)), Range::Outside);
        QCOMPARE(calibratedRange(c, WetDensity::lbPerFt3(99.9)), Range::Outside);
    }

    void refusesCountsThatAreNoCounts()
    {
        for (const double bad : {0.0, -3.0, kNaN, std::numeric_limits<double>::infinity()}) {
            QVERIFY(!countRatio(bad, 2853));
            QVERIFY(!countRatio(3010, bad));
        }
        const auto refusal = countRatio(3010, -3);
        QCOMPARE(refusal.error().what, std::string("Standard count is -3; it must be above 0."));
    }
};

QTEST_GUILESS_MAIN(GaugeCalibrationTest)
#include "gauge_calibration_test.moc"
