#include "method/accept/sublot.h"
#include "method/accept/weighted.h"
#include "method/explain/explain_line.h"
#include "method/soil/family_curve.h"

#include <QTest>
#include <cmath>
#include <limits>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

class PlaceInLotTest : public QObject {
    Q_OBJECT
private slots:
    void everyStationOfALotLiesInOneSublot()
    {
        std::mt19937_64 random(3);
        for (int i = 0; i < 20000; ++i) {
            const StationRange lot{std::uniform_real_distribution<double>(-500, 50000)(random), 0};
            StationRange whole{lot.begin, lot.begin + std::uniform_real_distribution<double>(0.1, 3000)(random)};
            const int n = static_cast<int>(random() % 40) + 1;
            const double station = i % 4 ? std::uniform_real_distribution<double>(whole.begin, whole.end)(random)
                                         : *sublotBegin(whole, n, static_cast<int>(random() % static_cast<unsigned>(n + 1)));
            const auto at = sublotAt(whole, n, station);
            QVERIFY(at);
            QVERIFY(*at >= 0 && *at < n);
            QVERIFY(*sublotBegin(whole, n, *at) <= station);
            QVERIFY(*at == n - 1 || station < *sublotBegin(whole, n, *at + 1));
        }
        const StationRange lot{4600, 5100};
        QCOMPARE(*sublotBegin(lot, 5, 2), 4800.0);
        QCOMPARE(*sublotBegin(lot, 5, 5), 5100.0);
        QCOMPARE(*sublotAt(lot, 5, 4799.99), 1);
        QCOMPARE(*sublotAt(lot, 5, 4800), 2);
        QCOMPARE(*sublotAt(lot, 5, 5100), 4);
    }

    /// By hand: (200 x 95 + 100 x 98)/300 = 96.
    void unequalSublotsWeighTheirResults()
    {
        const double results[] = {95, 98}, sizes[] = {200, 100}, equal[] = {7, 7};
        QCOMPARE(*weightedMean(results, sizes), 96.0);
        QCOMPARE(*weightedMean(results, equal), 96.5);
        QCOMPARE(judgeWeightedMeanAndMinimum(results, sizes, 2, 96, 95, {})->verdict, LotVerdict::Pass);
        QCOMPARE(judgeWeightedMeanAndMinimum(results, sizes, 2, 96.1, 95, {})->verdict, LotVerdict::Fail);
        QCOMPARE(judgeMeanAndMinimum(results, 2, 96.1, 95, {})->verdict, LotVerdict::Pass);
        QCOMPARE(judgeWeightedMeanAndMinimum(results, sizes, 2, 96, 95.1, {})->verdict, LotVerdict::Fail);
        const double none[] = {200, 0}, one[] = {200};
        QVERIFY(!weightedMean(results, none));
        QVERIFY(!weightedMean(results, one));
        QVERIFY(!weightedMean({}, {}));
        QVERIFY(!judgeWeightedMeanAndMinimum(results, sizes, 3, 96, 95, {}));
    }

    /// Two invented curves with their points: what the blend gives at t must lead back to t.
    void onePointFindsTheCurveOfItsPoint()
    {
        const auto point = [](double w, double d) { return CompactionPoint{WaterContent::percent(w), DryDensity::lbPerFt3(d)}; };
        const CompactionPoint lowPoints[] = {point(10, 100.2), point(12.5, 104.9), point(15, 107.6), point(17, 106.1), point(19, 102.4)};
        const CompactionPoint highPoints[] = {point(7, 108.3), point(9, 113.2), point(11, 117.1), point(13, 114.4), point(15, 109.0)};
        const auto low = MeasuredCurve::through(lowPoints, {WaterContent::percent(15.4), DryDensity::lbPerFt3(107.8)});
        const auto high = MeasuredCurve::through(highPoints, {WaterContent::percent(11.2), DryDensity::lbPerFt3(117.2)});
        QVERIFY(low && high);
        const OnePointWindow window{0.8, 1.0};
        // the peaks themselves, from the point a tenth drier of optimum on the curve
        for (const auto& [curve, t] : {std::pair{&*low, 0.0}, {&*high, 1.0}}) {
            const auto w = WaterContent::percent(curve->peak().optimum.percent() * 0.9);
            const auto found = onePointPeak(*low, *high, w, *curve->shape().at(w), window);
            QVERIFY2(found, found ? "" : found.error().what.c_str());
            QVERIFY(std::fabs(found->t - t) < 1e-6);
            QVERIFY(std::fabs(found->maximum.lbPerFt3() - curve->peak().maximum.lbPerFt3()) < 1e-5);
            QVERIFY(std::fabs(found->ratio - 0.9) < 1e-6);
        }
        for (double t = 0.05; t < 1; t += 0.05) {
            const double optimum = (1 - t) * 15.4 + t * 11.2, w = optimum * 0.92;
            const double dry = (1 - t) * low->shape().at(WaterContent::percent(w + 15.4 - optimum))->lbPerFt3() +
                               t * high->shape().at(WaterContent::percent(w + 11.2 - optimum))->lbPerFt3();
            const auto found = onePointPeak(*low, *high, WaterContent::percent(w), DryDensity::lbPerFt3(dry), window);
            QVERIFY2(found, found ? "" : found.error().what.c_str());
            QVERIFY(std::fabs(found->t - t) < 1e-7);
            QVERIFY(std::fabs(found->optimum.percent() - optimum) < 1e-6);
            QVERIFY(std::fabs(found->maximum.lbPerFt3() - ((1 - t) * 107.8 + t * 117.2)) < 1e-6);
        }
    }

    /// Dense points of parabolas: nearly the closed form of the three-number curve.
    void measuredParabolasGiveNearlyTheClosedForm()
    {
        const auto dense = [](double optimum, double maximum, double c) {
            std::vector<CompactionPoint> points;
            for (double w = optimum - 5; w <= optimum + 5; w += 0.25)
                points.push_back({WaterContent::percent(w), DryDensity::kgPerM3(maximum - c * (w - optimum) * (w - optimum))});
            return points;
        };
        const FamilyCurve first{WaterContent::percent(15), DryDensity::kgPerM3(1750), 6}, second{WaterContent::percent(11), DryDensity::kgPerM3(1900), 9};
        const auto low = MeasuredCurve::through(dense(15, 1750, 6), {first.optimum, first.maximum});
        const auto high = MeasuredCurve::through(dense(11, 1900, 9), {second.optimum, second.maximum});
        QVERIFY(low && high);
        for (const double dry : {1760.0, 1800.0, 1840.0}) {
            const auto closed = onePointPeak(first, second, WaterContent::percent(11.2), DryDensity::kgPerM3(dry), {0.8, 1.0});
            const auto measured = onePointPeak(*low, *high, WaterContent::percent(11.2), DryDensity::kgPerM3(dry), {0.8, 1.0});
            QVERIFY2(closed && measured, measured ? "" : measured.error().what.c_str());
            QVERIFY(std::fabs(closed->maximum.kgPerM3() - measured->maximum.kgPerM3()) < 1.0);
        }
    }

    void onePointRefusesWhatNoCurvePassesThrough()
    {
        const auto point = [](double w, double d) { return CompactionPoint{WaterContent::percent(w), DryDensity::lbPerFt3(d)}; };
        const CompactionPoint lowPoints[] = {point(10, 100.2), point(12.5, 104.9), point(15, 107.6), point(19, 102.4)};
        const CompactionPoint highPoints[] = {point(7, 108.3), point(9, 113.2), point(11, 117.1), point(15, 109.0)};
        const Peak lowPeak{WaterContent::percent(15.4), DryDensity::lbPerFt3(107.8)}, highPeak{WaterContent::percent(11.2), DryDensity::lbPerFt3(117.2)};
        const auto low = MeasuredCurve::through(lowPoints, lowPeak), high = MeasuredCurve::through(highPoints, highPeak);
        QVERIFY(low && high);
        const OnePointWindow window{0.8, 1.0};
        const auto w = WaterContent::percent(10.5);
        QVERIFY(!onePointPeak(*high, *low, w, DryDensity::lbPerFt3(108), window));
        QVERIFY(onePointPeak(*low, *high, w, DryDensity::lbPerFt3(125), window).error().what.find("full test") != std::string::npos);
        QVERIFY(onePointPeak(*low, *high, w, DryDensity::lbPerFt3(90), window).error().what.find("full test") != std::string::npos);
        QVERIFY(!onePointPeak(*low, *high, WaterContent::percent(25), DryDensity::lbPerFt3(108), window));
        QVERIFY(!onePointPeak(*low, *high, WaterContent::percent(-1), DryDensity::lbPerFt3(108), window));
        QVERIFY(!MeasuredCurve::through(lowPoints, {WaterContent::percent(15.4), DryDensity::lbPerFt3(107.5)}));  // a point above the peak
        QVERIFY(!MeasuredCurve::through(lowPoints, {WaterContent::percent(9), DryDensity::lbPerFt3(110)}));       // optimum outside
        QVERIFY(!MeasuredCurve::through({lowPoints, 2}, {WaterContent::percent(12), DryDensity::lbPerFt3(110)})); // too few
    }

    void curvesAndFeetExplainThemselves()
    {
        const auto curve = simpleCurve(1000, 40).value();
        const auto steps = explainCurve(curve, stationsFromPi(curve, 5000), 100);
        const auto valueOf = [&](const std::vector<ExplainStep>& all, const char* name) {
            for (const auto& s : all)
                if (s.name == name)
                    return s.value;
            return std::string("no such step");
        };
        QCOMPARE(valueOf(steps, "Tangent length T"), std::string("363.970"));  // 1000 tan 20 degrees
        QCOMPARE(valueOf(steps, "Station of PC"), std::string("46+36.03"));
        QCOMPARE(valueOf(steps, "Station of PT"), std::string("53+34.16"));  // PC + 1000 x 40 pi/180
        const auto line = Alignment::fromElements({0, 0}, 0, 1000, {{500, 0, Turn::Right, 0}}, {{1200, 1300}}).value();
        const PlanPoint where{250, -12.5};
        const auto found = line.locate(where.northFt, where.eastFt).value();
        const auto foot = explainStationOffset(line, where, found, 100);
        QCOMPARE(valueOf(foot, "Station"), std::string("13+50.00 (after equation 1)"));
        QCOMPARE(valueOf(foot, "Distance along the line"), std::string("250.00"));
        QCOMPARE(valueOf(foot, "Offset"), std::string("12.50 Lt"));
        for (const auto& s : foot)
            QVERIFY(!s.formula.empty() && !s.numbers.empty() && !s.source.empty());
    }

    void refusesWhatIsNoPlaceInALot()
    {
        const StationRange lot{4600, 5100};
        QVERIFY(!sublotAt(lot, 5, 4599.9));
        QVERIFY(!sublotAt(lot, 5, 5100.1));
        QVERIFY(!sublotAt(lot, 5, std::nan("")));
        QVERIFY(!sublotAt(lot, 0, 4700));
        QVERIFY(!sublotAt({5100, 4600}, 5, 4700));
        QVERIFY(!sublotBegin(lot, 5, 6));
        QVERIFY(!sublotBegin(lot, 5, -1));
        QVERIFY(sublotAt(lot, 5, 5200).error().what.find("4600 to 5100") != std::string::npos);
    }
};

QTEST_GUILESS_MAIN(PlaceInLotTest)
#include "place_in_lot_test.moc"
