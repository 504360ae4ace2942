#include "method/soil/natural_spline.h"
#include "method/soil/peak.h"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

std::vector<CompactionPoint> pointsOf(const std::vector<double>& w, const std::vector<double>& d)
{
    std::vector<CompactionPoint> points;
    for (std::size_t i = 0; i < w.size(); ++i)
        points.push_back({WaterContent::percent(w[i]), DryDensity::kgPerM3(d[i])});
    return points;
}

struct Draw {
    std::mt19937_64 source{20260109};
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(source); }
};

}  // namespace

class CompactionPeakTest : public QObject {
    Q_OBJECT
private slots:
    void findsTheVertexOfAnExactParabolaInAnyOrder()
    {
        Draw draw;
        for (int i = 0; i < 2000; ++i) {
            const double optimum = draw.between(8, 25);
            const double maximum = draw.between(1500, 2200);
            const double c = draw.between(2, 20);
            std::vector<double> w, d;
            for (double away = -4; away <= 4; away += 2) {
                w.push_back(optimum + away + draw.between(-0.4, 0.4));
                d.push_back(maximum - c * (w.back() - optimum) * (w.back() - optimum));
            }
            auto points = pointsOf(w, d);
            std::shuffle(points.begin(), points.end(), draw.source);
            const auto search = findPeak(points, std::nullopt, PeakRules{});
            QVERIFY2(search.has_value(), search ? "" : search.error().what.c_str());
            for (const auto& peak : {search->local, *search->parabola}) {
                QVERIFY(std::fabs(peak.optimum.percent() - optimum) < 1e-6);
                QVERIFY(std::fabs(peak.maximum.kgPerM3() - maximum) < 1e-6);
            }
        }
    }

    /// A spline is compared with its own definition: it meets the points, and its highest place beats a fine search.
    void theSplineMeetsItsPointsAndItsHighestPlaceIsTheHighest()
    {
        Draw draw;
        for (int i = 0; i < 500; ++i) {
            std::vector<double> w, d;
            for (int k = 0; k < 6; ++k) {
                w.push_back(8 + 2 * k + draw.between(-0.5, 0.5));
                d.push_back(1700 + 150 * std::sin(k * 0.6) + draw.between(-5, 5));
            }
            const auto spline = NaturalSpline::through(w, d);
            for (std::size_t k = 0; k < w.size(); ++k)
                QVERIFY(std::fabs(spline->at(w[k]) - d[k]) < 1e-9);
            const auto highest = spline->highest();
            for (double x = w.front(); x <= w.back(); x += 0.001)
                QVERIFY(spline->at(x) <= highest.y + 1e-9);
            QVERIFY(std::fabs(spline->at(highest.x) - highest.y) < 1e-9);
        }
    }

    void aDentOfEightIsToleratedAndMoreIsTwoHumps()
    {
        const std::vector<double> w{8, 10, 12, 14, 16, 18};
        QVERIFY(findPeak(pointsOf(w, {1800, 1850, 1842, 1900, 1880, 1800}), std::nullopt, PeakRules{}));
        QVERIFY(!findPeak(pointsOf(w, {1800, 1850, 1841.9, 1900, 1880, 1800}), std::nullopt, PeakRules{}));
    }

    void refusesWhatHasNoPeak()
    {
        const auto refuses = [](const std::vector<double>& w, const std::vector<double>& d) { return !findPeak(pointsOf(w, d), std::nullopt, PeakRules{}); };
        QVERIFY(refuses({8, 10}, {1800, 1850}));
        QVERIFY(refuses({8, 10, 12}, {1900, 1850, 1800}));
        QVERIFY(refuses({8, 10, 12}, {1800, 1850, 1900}));
        QVERIFY(refuses({8, 10, 10, 12}, {1800, 1850, 1860, 1800}));
        QVERIFY(refuses({8, 10, 12}, {1800, std::nan(""), 1800}));
        QVERIFY(refuses({-1, 10, 12}, {1800, 1900, 1800}));
        QVERIFY(!refuses({8, 10, 12}, {1800, 1850, 1800}));
    }

    void warnsInTheOrderOfTheMethod()
    {
        // Three points, 5 points of water apart, above saturation for Gs 2.6.
        const auto search = findPeak(pointsOf({10, 15, 20}, {1900, 1990, 1800}), SolidsAndWater{2.6, DensityOfWater::kgPerM3(1000)}, PeakRules{});
        const std::vector<PeakWarning> first{PeakWarning::FewPoints, PeakWarning::OneSide, PeakWarning::Gap, PeakWarning::AboveZeroAirVoids};
        QVERIFY(search->warnings.size() >= first.size());
        QVERIFY(std::equal(first.begin(), first.end(), search->warnings.begin()));
    }

    void aStraightLineHasNoVertex()
    {
        QVERIFY(!vertexOf({1, 2, 0}));
        QVERIFY(!vertexOf({1, 2, 0.1}));
        QVERIFY(!vertexOf({1, std::nan(""), -1}));
        const double x[] = {1, 2, 2, 1};
        QVERIFY(!fitParabola(x, x));
    }
};

QTEST_GUILESS_MAIN(CompactionPeakTest)
#include "compaction_peak_test.moc"
