#include "method/soil/shape_curve.h"

#include <QTest>
#include <cmath>

using namespace groundcount;
using namespace groundcount::method;

namespace {

/// Published compaction points [SOILPHYS] (tests/tables/proctor_peaks.tsv, PK-MD-02).
const std::vector<CompactionPoint> kPoints = [] {
    std::vector<CompactionPoint> points;
    for (const auto& [w, d] : {std::pair{8.3, 1.86}, {9.2, 1.92}, {10.8, 1.95}, {12.6, 1.90}, {13.5, 1.87}})
        points.push_back({WaterContent::percent(w), DryDensity::kgPerM3(d * 1000)});
    return points;
}();

}  // namespace

class ShapeCurveTest : public QObject {
    Q_OBJECT
private slots:
    void passesThroughEveryPoint()
    {
        const auto curve = ShapeCurve::through(kPoints);
        QVERIFY(curve);
        for (const auto& p : kPoints)
            QVERIFY(std::fabs(curve->at(p.content)->kgPerM3() - p.dry.kgPerM3()) < 1e-9);
    }

    void neverRisesAboveTheHighestPointAndIsMonotoneBetween()
    {
        const auto curve = ShapeCurve::through(kPoints).value();
        QCOMPARE(curve.highest().optimum.percent(), 10.8);
        double before = curve.at(WaterContent::percent(8.3))->kgPerM3();
        for (int i = 1; i <= 520; ++i) {
            const double w = 8.3 + i * 0.01;
            const double d = curve.at(WaterContent::percent(w))->kgPerM3();
            QVERIFY(d <= 1950 + 1e-9);
            QVERIFY2(w <= 10.8 ? d >= before - 1e-9 : d <= before + 1e-9, qPrintable(QString::number(w)));
            before = d;
        }
    }

    void refusesWhatCannotBeDrawn()
    {
        QVERIFY(!ShapeCurve::through(std::span(kPoints).first(3)));
        auto twice = kPoints;
        twice[1].content = twice[0].content;
        QVERIFY(ShapeCurve::through(twice).error().what.find("8.3") != std::string::npos);
        auto negative = kPoints;
        negative[2].dry = DryDensity::kgPerM3(-1);
        QVERIFY(!ShapeCurve::through(negative));
        auto nan = kPoints;
        nan[2].content = WaterContent::percent(std::nan(""));
        QVERIFY(!ShapeCurve::through(nan));
        QVERIFY(ShapeCurve::through(kPoints)->at(WaterContent::percent(20)).error().what.find("20.0") != std::string::npos);
    }
};

QTEST_GUILESS_MAIN(ShapeCurveTest)
#include "shape_curve_test.moc"
