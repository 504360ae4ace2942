#include "method/soil/one_point.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

FamilyCurve curve(double optimum, double maximumLb, double cLb)
{
    return {WaterContent::percent(optimum), DryDensity::lbPerFt3(maximumLb), cLb * kKgPerM3PerLbPerFt3};
}

const OnePointWindow kWindow{0.80, 1.00};

}  // namespace

class OnePointTest : public QObject {
    Q_OBJECT
private slots:
    void findsTheCurveAPointWasMadeFrom()
    {
        const auto low = curve(15, 110, 0.30);
        const auto high = curve(12, 120, 0.50);
        std::mt19937_64 source(20260110);
        for (int i = 0; i < 5000; ++i) {
            const double t = std::uniform_real_distribution<double>(0.001, 0.999)(source);
            const double optimum = 15 - 3 * t;
            const double w = optimum * std::uniform_real_distribution<double>(0.81, 0.99)(source);
            const double dry = 110 + 10 * t - (0.30 + 0.20 * t) * (w - optimum) * (w - optimum);
            const auto peak = onePointPeak(low, high, WaterContent::percent(w), DryDensity::lbPerFt3(dry), kWindow);
            QVERIFY2(peak.has_value(), peak ? "" : peak.error().what.c_str());
            QVERIFY(std::fabs(peak->t - t) < 1e-9);
            QVERIFY(std::fabs(peak->maximum.lbPerFt3() - (110 + 10 * t)) < 1e-7);
            QVERIFY(std::fabs(peak->ratio - w / optimum) < 1e-9);
        }
    }

    void refusesOutsideTheFamilyAndTheWindow()
    {
        const auto low = curve(15, 110, 0.30);
        const auto high = curve(12, 120, 0.50);
        const auto at = [&](double w, double dry) { return onePointPeak(low, high, WaterContent::percent(w), DryDensity::lbPerFt3(dry), kWindow); };
        QVERIFY(at(11.9, 113.9));
        QVERIFY(!at(11.9, 121.0));
        QVERIFY(!at(11.9, 90.0));
        QVERIFY(!at(9.0, 111.0));
        QVERIFY(!at(std::nan(""), 111.0));
        QVERIFY(!onePointPeak(high, low, WaterContent::percent(11.9), DryDensity::lbPerFt3(113.9), kWindow));
        QVERIFY(onePointRatio(WaterContent::percent(10.0), WaterContent::percent(12.5), kWindow));
        QVERIFY(!onePointRatio(WaterContent::percent(9.99), WaterContent::percent(12.5), kWindow));
        QVERIFY(!onePointRatio(WaterContent::percent(12.51), WaterContent::percent(12.5), kWindow));
    }

    void aFamilyIsOfOneMethod()
    {
        const std::vector<std::string> one{"A", "A", "A"};
        const std::vector<std::string> mixed{"A", "A", "C"};
        QVERIFY(checkFamily(3, one, 3));
        QVERIFY(!checkFamily(3, mixed, 3));
        QVERIFY(!checkFamily(2, std::span(one).first(2), 3));
        QVERIFY(!checkFamily(3, std::span(one).first(2), 3));
    }
};

QTEST_GUILESS_MAIN(OnePointTest)
#include "one_point_test.moc"
