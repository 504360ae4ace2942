#include "method/site/alignment.h"
#include "method/site/curve.h"

#include <QtTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

const PlanPoint kBegin{612345.678, 6561234.567};

Alignment winding()
{
    return *Alignment::fromElements(kBegin, 37.25, 1000,
                                    {{400, 0, Turn::Right, 0},
                                     {500, 900, Turn::Right, 0},
                                     {250, 0, Turn::Right, 0},
                                     {700, 650, Turn::Left, 0},
                                     {300, 1200, Turn::Right, 0},
                                     {350, 0, Turn::Right, 0}},
                                    {});
}

}  // namespace

class AlignmentTest : public QObject {
    Q_OBJECT
private slots:
    void closesToAMillionthOfAFootOverRandomPoints()
    {
        const Alignment line = winding();
        std::mt19937_64 random(20261125);
        std::uniform_real_distribution<double> along(0, line.lengthFt());
        std::uniform_real_distribution<double> across(-300, 300);
        double worst = 0;
        for (int i = 0; i < 20000; ++i) {
            const double station = 1000 + along(random);
            const double offset = across(random);
            const auto p = line.at(station, offset);
            QVERIFY(p);
            const auto back = line.locate(p->northFt, p->eastFt);
            QVERIFY(back);
            QVERIFY(std::abs(back->offsetRightFt) <= std::abs(offset) + 1e-6);
            const auto again = line.at(back->station, back->offsetRightFt);
            QVERIFY(again);
            worst = std::max(worst, std::hypot(again->northFt - p->northFt, again->eastFt - p->eastFt));
            if (std::abs(offset) < 100) {
                worst = std::max(worst, std::abs(back->station.feet - station));
                worst = std::max(worst, std::abs(back->offsetRightFt - offset));
            }
        }
        QVERIFY2(worst < 1e-6, qPrintable(QString::number(worst)));
    }
    void locatesNoFartherThanADenseWalkAlongTheLine()
    {
        const Alignment line = winding();
        std::mt19937_64 random(7);
        std::uniform_real_distribution<double> around(-400, 400);
        int compared = 0;
        for (int i = 0; i < 300; ++i) {
            const auto base = line.at(1000 + line.lengthFt() * i / 300.0, 0);
            const double north = base->northFt + around(random);
            const double east = base->eastFt + around(random);
            double least = 1e99;
            double at = 0;
            for (double s = 0; s <= line.lengthFt(); s += 0.5) {
                const auto p = line.at(1000 + s, 0);
                if (const double d = std::hypot(p->northFt - north, p->eastFt - east); d < least) {
                    least = d;
                    at = s;
                }
            }
            if (at == 0 || at + 0.5 >= line.lengthFt())
                continue;  // nearest to an end: no perpendicular foot need exist
            const auto found = line.locate(north, east);
            QVERIFY(found);
            QVERIFY(std::abs(std::abs(found->offsetRightFt) - least) < 0.06);
            ++compared;
        }
        QVERIFY(compared > 200);
    }
    void offsetsToTheRightOfNorthAreEast()
    {
        const auto north = Alignment::fromElements({0, 0}, 0, 0, {{100, 0, Turn::Right, 0}}, {});
        const auto foot = north->locate(40, 12);
        QCOMPARE(foot->station.feet, 40.0);
        QCOMPARE(foot->offsetRightFt, 12.0);
        QCOMPARE(north->locate(40, -12)->offsetRightFt, -12.0);
    }
    void azimuthTurnsWithTheArcs()
    {
        const Alignment line = winding();
        QCOMPARE(*line.azimuthDeg(1000.0), 37.25);
        QVERIFY(std::abs(*line.azimuthDeg(1900.0) - (37.25 + 500.0 / 900 * 180 / M_PI)) < 1e-9);
    }
    void piBuildAgreesWithTheCurveElements()
    {
        // Curve I = 40 right at R = 18000/(4 pi), the data of [CRV-HW] on a made-up back tangent.
        const double radius = *radiusFromDegreeFt(DegreeDefinition::Arc, 4);
        const double a = (65 + 35 / 60.0 + 20 / 3600.0) * M_PI / 180;
        const double b = a + 40 * M_PI / 180;
        const PlanPoint pi{1234.56, 1654.32};
        const auto line = Alignment::fromIntersections({pi.northFt - 1000 * std::cos(a), pi.eastFt - 1000 * std::sin(a)}, {{pi, radius}},
                                                       {pi.northFt + 1000 * std::cos(b), pi.eastFt + 1000 * std::sin(b)}, 1325, {});
        QVERIFY(line);
        const auto curve = simpleCurveFromDegree(DegreeDefinition::Arc, 4, 40);
        QVERIFY(std::abs(line->lengthFt() - (2000 - 2 * curve->tangentFt + curve->lengthFt)) < 1e-8);
        const auto pt = line->at(stationsFromPi(*curve, 2325).ptFt, 0);
        QVERIFY(std::hypot(pt->northFt - 1094.4563, pt->eastFt - 2156.4910) < 1e-4);
    }
    void refusesOverlappingCurves()
    {
        const auto line = Alignment::fromIntersections({0, 0}, {{{1000, 0}, 800}, {{1300, 300}, 800}}, {{1300}, {2000}}, 0, {});
        QVERIFY(!line);
        QVERIFY(line.error().what.find("overlap") != std::string::npos);
    }
    void reportsTies()
    {
        // Between two parallel legs of a hairpin both are equally far.
        const auto hairpin = Alignment::fromElements({0, 0}, 0, 0, {{500, 0, Turn::Right, 0}, {M_PI * 100, 100, Turn::Right, 0}, {500, 0, Turn::Right, 0}}, {});
        const auto middle = hairpin->locate(250, 100);
        QVERIFY(middle);
        QCOMPARE(middle->ties.size(), std::size_t(1));
        QVERIFY(std::abs(middle->station.feet - 250) < 1e-9);
        QVERIFY(std::abs(middle->ties[0].station.feet - (1000 + M_PI * 100 - 250)) < 1e-9);
        QVERIFY(hairpin->locate(250, 99)->ties.empty());
    }
    void aSmoothJointIsNoTie()
    {
        const Alignment line = winding();
        const auto joint = line.at(1400.0, 12);
        const auto foot = line.locate(joint->northFt, joint->eastFt);
        QVERIFY(foot->ties.empty());
        QVERIFY(std::abs(foot->station.feet - 1400) < 1e-6);
    }
    void takesTheCornerWhereThereIsNoPerpendicular()
    {
        const auto kinked = Alignment::fromElements({0, 0}, 0, 0, {{100, 0, Turn::Right, 0}, {100, 0, Turn::Right, 30}}, {});
        const auto outside = kinked->locate(102, -10);
        QVERIFY(outside);
        QVERIFY(outside->atCorner);
        QCOMPARE(outside->station.feet, 100.0);
        QVERIFY(std::abs(outside->offsetRightFt + std::hypot(2.0, 10.0)) < 1e-9);
        const auto inside = kinked->locate(95, 20);
        QVERIFY(!inside->atCorner);
    }
    void refusesBeyondTheEndsAndTheCentreOfACurve()
    {
        const auto line = Alignment::fromElements({0, 0}, 0, 0, {{100, 0, Turn::Right, 0}}, {});
        QVERIFY(!line->locate(-1, 0));
        QVERIFY(!line->locate(101, 0));
        QVERIFY(!line->locate(std::nan(""), 0));
        const auto arc = Alignment::fromElements({0, 0}, 0, 0, {{100, 100, Turn::Right, 0}}, {});
        QVERIFY(!arc->locate(0, 100));
        QVERIFY(!line->at(101.0, 0));
    }
    void takesStationsThroughAnOverlapEquation()
    {
        const auto line = Alignment::fromElements({0, 0}, 90, 0, {{1000, 0, Turn::Right, 0}}, {{500, 450}});
        QVERIFY(!line->at(470.0, 0));
        QVERIFY(std::abs(line->at(Station{470, 0}, 0)->eastFt - 470) < 1e-9);
        QVERIFY(std::abs(line->at(Station{470, 1}, 0)->eastFt - 520) < 1e-9);
        const auto foot = line->locate(-3, 520);
        QCOMPARE(foot->station.region, 1);
        QVERIFY(std::abs(foot->station.feet - 470) < 1e-9);
        QVERIFY(std::abs(foot->offsetRightFt - 3) < 1e-9);
    }
    void drawsArcsWithinTheSagitta()
    {
        const Alignment line = winding();
        for (const PlanPoint& p : line.polyline(0.1)) {
            const auto foot = line.locate(p.northFt, p.eastFt);
            QVERIFY(foot);
            QVERIFY(std::abs(foot->offsetRightFt) < 1e-6);
        }
        // Half way along a chord the line strays most.
        double most = 0;
        const auto points = line.polyline(0.1);
        for (std::size_t i = 1; i < points.size(); ++i) {
            const auto foot = line.locate((points[i - 1].northFt + points[i].northFt) / 2, (points[i - 1].eastFt + points[i].eastFt) / 2);
            QVERIFY(foot);
            most = std::max(most, std::abs(foot->offsetRightFt));
        }
        QVERIFY2(most <= 0.1 && most > 0.03, qPrintable(QString::number(most)));
    }
    /// Where 1 less the sagitta's part of the radius is 1 to the computer.
    void drawsAnArcThatIsAlmostStraight()
    {
        const auto arc = Alignment::fromElements({0, 0}, 0, 0, {{100, 1e17, Turn::Right, 0}}, {});
        QVERIFY(arc);
        QCOMPARE(arc->polyline(0.1).size(), std::size_t{2});
    }
    void refusesUselessPieces()
    {
        QVERIFY(!Alignment::fromElements({0, 0}, 0, 0, {}, {}));
        QVERIFY(!Alignment::fromElements({0, 0}, 0, 0, {{0, 0, Turn::Right, 0}}, {}));
        QVERIFY(!Alignment::fromElements({0, 0}, 0, 0, {{10, -1, Turn::Right, 0}}, {}));
        QVERIFY(!Alignment::fromElements({0, 0}, 0, 0, {{100, 10, Turn::Right, 0}}, {}));
        QVERIFY(!Alignment::fromIntersections({0, 0}, {{{0, 0}, 10}}, {10, 10}, 0, {}));
    }
};

QTEST_GUILESS_MAIN(AlignmentTest)
#include "alignment_test.moc"
