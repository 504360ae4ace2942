#include "method/accept/draw.h"

#include "method/accept/frequency.h"
#include "method/accept/random_source.h"
#include "method/accept/retest.h"
#include "method/accept/stratify.h"

#include <QtTest>
#include <cmath>
#include <set>

using namespace groundcount;
using namespace groundcount::method;

namespace {

const StripPlan kPlan{{10000, 1000, 24, 2, 1}, 5, 2, EdgePolicy::Redraw};

}  // namespace

class DrawTest : public QObject {
    Q_OBJECT
private slots:
    void theGeneratorIsTheOneOfTheStandard()
    {
        // ISO C++ [rand.predef]: the 10000th number of a default mt19937_64 is 9981545732273789042.
        std::mt19937_64 engine;
        engine.discard(9999);
        QCOMPARE(engine(), std::uint64_t(9981545732273789042u));
        RandomSource random(std::mt19937_64::default_seed);
        double last = 0;
        for (int i = 0; i < 10000; ++i)
            last = random.next();
        QCOMPARE(last, static_cast<double>(9981545732273789042u >> 11) / 9007199254740992.0);
    }
    void theSameSeedDrawsTheSameSites()
    {
        const auto a = drawInStrip(kPlan, 42);
        const auto b = drawInStrip(kPlan, 42);
        const auto c = drawInStrip(kPlan, 43);
        QCOMPARE(a->sites.size(), std::size_t(10));
        for (std::size_t i = 0; i < 10; ++i) {
            QCOMPARE(a->sites[i].place.stationFt, b->sites[i].place.stationFt);
            QVERIFY(a->sites[i].place.stationFt != c->sites[i].place.stationFt);
        }
        QCOMPARE(a->generator, std::string(RandomSource::kName));
    }
    void keepsEveryRejectedDraw()
    {
        const auto draw = drawInStrip(kPlan, 7);
        // Replaying the generator gives sites and rejects in one sequence and nothing else.
        RandomSource random(7);
        std::size_t site = 0;
        std::size_t reject = 0;
        while (site < draw->sites.size()) {
            const double along = random.next();
            const double across = random.next();
            if (draw->sites[site].along == along && draw->sites[site].across == across) {
                ++site;
                continue;
            }
            QVERIFY(reject < draw->rejected.size());
            QCOMPARE(draw->rejected[reject].along, along);
            QCOMPARE(draw->rejected[reject].across, across);
            ++reject;
        }
        QCOMPARE(reject, draw->rejected.size());
        QVERIFY(reject > 0);
    }
    void drawsOneSublotAfterTheOther()
    {
        const auto draw = drawInStrip(kPlan, 3);
        for (std::size_t i = 0; i < draw->sites.size(); ++i) {
            const StripSite& site = draw->sites[i];
            QCOMPARE(site.sublot, static_cast<int>(i / 2) + 1);
            QVERIFY(site.place.stationFt >= 10000 + 200 * (site.sublot - 1) && site.place.stationFt < 10000 + 200 * site.sublot);
            QVERIFY(site.place.fromLeftFt >= 2 && site.place.fromLeftFt <= 23);
            QVERIFY(std::abs(site.place.offsetRightFt - (site.place.fromLeftFt - 12)) < 1e-12);
        }
    }
    void bothPoliciesAreUniformOverTheOpenWidth_data()
    {
        QTest::addColumn<int>("policy");
        QTest::newRow("shrink") << static_cast<int>(EdgePolicy::Shrink);
        QTest::newRow("redraw") << static_cast<int>(EdgePolicy::Redraw);
    }
    void bothPoliciesAreUniformOverTheOpenWidth()
    {
        QFETCH(int, policy);
        StripPlan plan = kPlan;
        plan.policy = static_cast<EdgePolicy>(policy);
        plan.sublots = 100;
        plan.sitesPerSublot = 100;
        const auto draw = drawInStrip(plan, 11);
        std::array<int, 10> bins{};
        for (const StripSite& site : draw->sites)
            ++bins[std::min<std::size_t>(9, static_cast<std::size_t>((site.place.fromLeftFt - 2) / 21 * 10))];
        double chi2 = 0;
        for (const int count : bins)
            chi2 += (count - 1000.0) * (count - 1000.0) / 1000;
        // 99.9 % point of chi-square with 9 degrees of freedom is 27.88 (common tables); clamping would give hundreds.
        QVERIFY2(chi2 < 27.88, qPrintable(QString::number(chi2)));
    }
    void drawsInAnAreaWithAHoleAndAnEdge()
    {
        const PlanArea area{{{0, 0}, {0, 200}, {100, 200}, {100, 100}, {200, 100}, {200, 0}}, {{{20, 20}, {20, 60}, {60, 60}, {60, 20}}}};
        const auto draw = drawInArea(area, 1000, 5, 99);
        QVERIFY(draw);
        QCOMPARE(draw->sites.size(), std::size_t(1000));
        int east = 0;
        for (const AreaSite& site : draw->sites) {
            const double n = site.point.northFt;
            const double e = site.point.eastFt;
            QVERIFY(n >= 5 && e >= 5 && n <= 195 && e <= 195);
            QVERIFY(n <= 100 && e <= 195 ? true : e <= 95);
            QVERIFY(std::hypot(n - 100, e - 100) >= 5);
            QVERIFY(!(n > 15 && n < 65 && e > 20 && e < 60));
            east += e > 105 ? 1 : 0;
        }
        QVERIFY(!draw->rejected.empty());
        for (const AreaSite& site : draw->rejected)
            QVERIFY(!insideArea(area, site.point, 5));
        // Share of the open area beyond 105 ft east, about (200-110) 90/open; drawn within 5 standard deviations.
        const double open = 190.0 * 90 + 90 * 100.0 - (50 * 40 + 40 * 10 + M_PI * 25);
        const double share = 90.0 * 90 / open;
        QVERIFY(std::abs(east / 1000.0 - share) < 5 * std::sqrt(share * (1 - share) / 1000));
    }
    void refusesDrawsThatCannotBe()
    {
        StripPlan plan = kPlan;
        plan.strip.leftEdgeFt = 23;
        QVERIFY(!drawInStrip(plan, 1));
        plan = kPlan;
        plan.sublots = 0;
        QVERIFY(!drawInStrip(plan, 1));
        const PlanArea square{{{0, 0}, {0, 10}, {10, 10}, {10, 0}}, {}};
        QVERIFY(drawInArea(square, 3, 4, 1));
        QVERIFY(!drawInArea(square, 3, 5.1, 1));
        QVERIFY(!drawInArea(square, 0, 0, 1));
        QVERIFY(!drawInArea({{{0, 0}, {5, 5}, {10, 10}}, {}}, 1, 0, 1));
        QVERIFY(!drawInArea({{{0, 0}, {5, std::nan("")}, {10, 0}}, {}}, 1, 0, 1));
        QVERIFY(!placeFromNumbers(kPlan.strip, std::nan(""), 0.5, EdgePolicy::Shrink));
    }
    void countsTestsOnDecimals()
    {
        const auto count = [](const char* quantity, const char* unit, int each, int minimum) {
            return *requiredTests({*Decimal::parse(unit), each, minimum}, *Decimal::parse(quantity));
        };
        QCOMPARE(count("0.3", "0.1", 1, 0), 3);
        QCOMPARE(count("0.30000000001", "0.1", 1, 0), 4);
        QCOMPARE(count("1000000", "1", 1, 0), 1000000);
        QCOMPARE(count("4.2", "0.7", 2, 0), 12);
        QVERIFY(!requiredTests({*Decimal::parse("0.001"), 1, 0}, *Decimal::parse("100000")));
        QVERIFY(!requiredTests({*Decimal::parse("1"), 0, 0}, *Decimal::parse("1")));
        QVERIFY(!requiredTests({*Decimal::parse("1"), 1, -1}, *Decimal::parse("1")));
        QCOMPARE(*unitsPerSublot(*Decimal::parse("0.6"), 2, *Decimal::parse("0.1")), 3);
        QVERIFY(!unitsPerSublot(*Decimal::parse("10"), 4, *Decimal::parse("3")));
        QVERIFY(!randomPick(0, 0.5, PickRule::Nearest));
        QVERIFY(!randomPick(5, std::nan(""), PickRule::FloorPlusOne));
    }
    void lettersRetestsWithoutRepeating()
    {
        std::set<std::string> seen;
        for (int i = 1; i <= 18278; ++i)
            QVERIFY(seen.insert(*retestNumber("12", i)).second);
        QCOMPARE(*retestNumber("12", 26), std::string("12Z"));
        QCOMPARE(*retestNumber("12", 702), std::string("12ZZ"));
        QCOMPARE(*retestNumber("12", 703), std::string("12AAA"));
        QVERIFY(!retestNumber("12A", 1));
        QVERIFY(!retestNumber("", 1));
        QVERIFY(!retestNumber("12", 18279));
    }
};

QTEST_GUILESS_MAIN(DrawTest)
#include "draw_test.moc"
