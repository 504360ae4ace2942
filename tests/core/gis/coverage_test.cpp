#include "gis/lot_ground.h"

#include <QtTest>
#include <cmath>
#include <numbers>

using namespace groundcount;
using namespace groundcount::gis;
using method::PlanArea;

namespace {

/// Corners as north, east.
PlanArea rectangle(double north, double east, double height, double width)
{
    return {{{north, east}, {north, east + width}, {north + height, east + width}, {north + height, east}}, {}};
}

const Length kMetre = Length::metres(1);

const std::string kCurve = R"({"unit":"ft","begin_station":"1000","begin_north":"0","begin_east":"0","begin_azimuth_deg":"0",
    "elements":[{"kind":"line","length":"100"},{"kind":"curve","radius":"200","turn":"right","length":"150"},{"kind":"line","length":"50"}]})";

book::JobRow footJob()
{
    book::JobRow job;
    job.gridUnit = "ft";
    job.metresPerGridUnit = 0.3048;
    return job;
}

book::TestRow test(const char* number, double north, double east, book::TestState state)
{
    book::TestRow t;
    t.id = t.number = number;
    t.lift = "lift";
    t.north = north;
    t.east = east;
    t.state = state;
    t.verdictAt = "2026-06-09T10:00:00.000Z";
    return t;
}

}  // namespace

class CoverageTest : public QObject {
    Q_OBJECT

private slots:
    void partsARectangleByHand()
    {
        // 40 m x 10 m; tests at 5 and 25 m: the border lies at 15 m. Share of 2: 200 m2; 150 and 250, of which 50 beyond.
        const std::vector<CoverageSite> sites{{"1", {5, 5}, SiteAnswer::Pass}, {"2", {5, 25}, SiteAnswer::Fail}};
        const auto c = coverageOf(rectangle(0, 0, 10, 40), sites, 2, kMetre);
        QVERIFY2(c, c ? "" : c.error().what.c_str());
        QCOMPARE(c->cells.size(), std::size_t{2});
        QVERIFY(std::abs(c->cells[0].surface.squareMetres() - 150) < 1e-6);
        QVERIFY(std::abs(c->cells[1].surface.squareMetres() - 250) < 1e-6);
        QVERIFY(std::abs(c->passed.squareMetres() - 150) < 1e-6);
        QVERIFY(std::abs(c->failed.squareMetres() - 200) < 1e-6);
        QVERIFY(std::abs(c->untested.squareMetres() - 50) < 1e-6);
        // Farthest: a corner at the far end, 15 along and 5 across.
        QVERIFY(std::abs(c->farthest.radius.metres() - std::hypot(15, 5)) < 1e-6);
        QVERIFY(std::abs(c->patch.radius.metres() - 5) < 0.011);
    }

    void countsACircleWithinHoles()
    {
        // A square ring 30 m wide round a hole of 10 m: without tests the patch fits a corner. Its centre lies on the diagonal,
        // r from two edges and r from the hole's corner at 10, 10: r = (10 - r) sqrt 2.
        PlanArea ground = rectangle(0, 0, 30, 30);
        ground.holes.push_back({{10, 10}, {10, 20}, {20, 20}, {20, 10}});
        const auto c = coverageOf(ground, {}, 4, kMetre);
        QVERIFY(c);
        QVERIFY(std::abs(c->ground.squareMetres() - 800) < 1e-9);
        QVERIFY(std::abs(c->untested.squareMetres() - 800) < 1e-9);
        QVERIFY(std::abs(c->patch.radius.metres() - 10 * std::numbers::sqrt2 / (1 + std::numbers::sqrt2)) < 0.011);
        QCOMPARE(c->farthest.radius.metres(), 0.0);
    }

    void letsTheLastTestOfAPlaceSpeak()
    {
        const std::vector<CoverageSite> sites{{"1", {5, 5}, SiteAnswer::Fail}, {"1A", {5.0001, 5}, SiteAnswer::Pass}, {"9", {50, 50}, SiteAnswer::Pass}};
        const auto c = coverageOf(rectangle(0, 0, 10, 10), sites, 1, kMetre);
        QVERIFY(c);
        QCOMPARE(c->cells.size(), std::size_t{1});
        QCOMPARE(c->cells[0].sites, (std::vector<std::size_t>{0, 1}));
        QCOMPARE(c->passed, c->ground);
        QCOMPARE(c->outside, (std::vector<std::size_t>{2}));
    }

    void refusesWhatIsNoGround_data()
    {
        QTest::addColumn<int>("what");
        QTest::addColumn<QString>("sentence");
        QTest::newRow("two corners") << 0 << "at least 3 corners";
        QTest::newRow("a bow") << 1 << "must not cross";
        QTest::newRow("a hole outside") << 2 << "must not cross";
        QTest::newRow("not a number") << 3 << "at least 3 corners that are numbers";
        QTest::newRow("a flat ring") << 4 << "must";
        QTest::newRow("no tests needed") << 5 << "1 to 1 000 000 tests";
        QTest::newRow("a test nowhere") << 6 << "The place of test 7";
        QTest::newRow("no unit") << 7 << "unit of the plan";
    }
    void refusesWhatIsNoGround()
    {
        QFETCH(int, what);
        QFETCH(QString, sentence);
        PlanArea ground = rectangle(0, 0, 10, 10);
        std::vector<CoverageSite> sites;
        if (what == 0)
            ground.ring.resize(2);
        if (what == 1)
            std::swap(ground.ring[1], ground.ring[2]);
        if (what == 2)
            ground.holes.push_back(rectangle(20, 20, 5, 5).ring);
        if (what == 3)
            ground.ring[2].northFt = std::nan("");
        if (what == 4)
            ground.ring = {{0, 0}, {0, 5}, {0, 10}};
        if (what == 6)
            sites.push_back({"7", {std::nan(""), 0}, SiteAnswer::Pass});
        const auto c = coverageOf(ground, sites, what == 5 ? 0 : 1, what == 7 ? Length() : kMetre);
        QVERIFY(!c);
        QCOMPARE(c.error().fault, Fault::Refused);
        QVERIFY2(QString::fromStdString(c.error().what).contains(sentence), c.error().what.c_str());
    }

    void followsACurveToTheStatedSagitta()
    {
        book::LotRow lot;
        lot.name = "A";
        lot.beginStationFt = 1050;
        lot.endStationFt = 1280;
        lot.leftFt = 30;
        lot.rightFt = 20;
        const std::vector<book::AlignmentRow> lines{{"line", "Main", "", kCurve}};
        const auto ground = lotGround(lot, footJob(), lines);
        QVERIFY2(ground, ground ? "" : ground.error().what.c_str());
        const auto c = coverageOf(*ground, {}, 1, Length::feet(1));
        QVERIFY(c);
        // Tangents 50 and 30 ft of 50 ft width; the curve to the right has its left edge outside: 0.75 rad (230^2 - 180^2)/2.
        const double whole = 80 * 50 + 0.75 * (230.0 * 230 - 180.0 * 180) / 2;
        const double chords = kEdgeSagitta.feet() * 0.75 * (230 + 180);
        QVERIFY2(std::abs(c->ground.squareFeet() - whole) < chords, qPrintable(QString::number(c->ground.squareFeet() - whole)));
    }

    void refusesALotWithoutOneLine()
    {
        book::LotRow lot;
        lot.name = "A";
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), {}).error().what).contains("is not sealed"));
        lot.beginStationFt = 1050;
        lot.endStationFt = 1280;
        lot.leftFt = 230;  // wider than nothing on the outside of the curve
        lot.rightFt = 210; // wider than the radius of the curve
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), {}).error().what).contains("the job has 0."));
        std::vector<book::AlignmentRow> lines{{"line", "Main", "", kCurve}};
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), lines).error().what).contains("fold over itself"));
        lines.push_back({"ramp", "Ramp", "", kCurve});
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), lines).error().what).contains("the job has 2."));
        lot.alignment = "ramp";
        lot.rightFt = 20;
        QVERIFY(lotGround(lot, footJob(), lines));
        book::JobRow metric = footJob();
        metric.gridUnit = "m";
        QVERIFY(QString::fromStdString(lotGround(lot, metric, lines).error().what).contains("must be in the unit of the job's grid, m; it is in ft"));
        lot.endStationFt = 1020;
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), lines).error().what).contains("must begin before it ends"));
    }

    void readsSealedCornersInEveryUnit()
    {
        book::LotRow lot;
        lot.name = "B";
        lot.area = R"([{"ring":1,"grid_north_m":"0","grid_east_m":"0"},{"ring":1,"grid_north_m":"0","grid_east_m":"30.48"},
            {"ring":1,"grid_north_ft":"50","grid_east_ft":"100"},{"ring":1,"grid_north_ft":"50","grid_east_ft":"0"},
            {"ring":2,"grid_north_ft":"10","grid_east_ft":"10"},{"ring":2,"grid_north_ft":"10","grid_east_ft":"20"},{"ring":2,"grid_north_ft":"20","grid_east_ft":"20"}])";
        const auto ground = lotGround(lot, footJob(), {});
        QVERIFY2(ground, ground ? "" : ground.error().what.c_str());
        QCOMPARE(ground->holes.size(), std::size_t{1});
        const auto c = coverageOf(*ground, {}, 1, Length::feet(1));
        QVERIFY(c && std::abs(c->ground.squareFeet() - 4950) < 1e-6);
        lot.area = R"([{"ring":1,"grid_north_yd":"0"}])";
        QVERIFY(QString::fromStdString(lotGround(lot, footJob(), {}).error().what).contains("must have grid_north_ft, grid_north_usft or grid_north_m"));
        lot.area = "[";
        QVERIFY(!lotGround(lot, footJob(), {}));
    }

    void letsARetestSpeakForItsParent()
    {
        auto retest = test("1A", 5, 6, book::TestState::Pass);
        retest.retestOf = "1";
        retest.verdictAt = "2026-06-09T11:00:00.000Z";
        auto waiting = test("2A", 5, 26, book::TestState::Waiting);
        waiting.retestOf = "2";
        auto elsewhere = test("4", 1, 1, book::TestState::Pass);
        elsewhere.lift = "another";
        const std::vector<book::TestRow> tests{retest, test("1", 5, 5, book::TestState::Fail), test("2", 5, 25, book::TestState::Fail), waiting,
                                               test("3", 0, 0, book::TestState::Pass), test("5", 1, 1, book::TestState::Void), elsewhere};
        const auto sites = speakingTests(tests, "lift");
        QCOMPARE(sites.size(), std::size_t{2});
        QCOMPARE(sites[0].number, std::string("2"));
        QCOMPARE(sites[0].answer, SiteAnswer::Fail);
        QCOMPARE(sites[1].number, std::string("1A"));
    }
};

QTEST_GUILESS_MAIN(CoverageTest)
#include "coverage_test.moc"
