#include "gis/lot_draw.h"
#include "gis/lot_ground.h"
#include "book/kinds.h"
#include "method/accept/random_source.h"

#include <QTest>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>

using namespace groundcount;

namespace {

/// A straight line north from station 50+00 and a lot of 600 by 80 ft on it, as the job's records say it.
struct Ground {
    book::JobRow job;
    std::vector<book::AlignmentRow> lines;
    std::vector<book::ObstacleRow> obstacles;
    method::RuleSet rules = method::neutralRules();
    book::LotRow lot;

    Ground()
    {
        job.gridUnit = "ft";
        job.metresPerGridUnit = 0.3048;
        lines.push_back({"line", "A", "", R"({"name":"A","unit":"ft","begin_station":"5000","begin_north":"1000","begin_east":"2000","begin_azimuth_deg":"0","elements":[{"kind":"line","length":"1200"}]})"});
        lot.id = "lot";
        lot.name = "N-4";
        lot.beginStationFt = 5000;
        lot.endStationFt = 5600;
        lot.leftFt = 30;
        lot.rightFt = 50;
        lot.sublots = 4;
        lot.testsPerLift = 4;
    }
    Result<book::Body> draw(int sites, double edgeFt, std::uint64_t seed) const { return gis::drawLot(lot, "lift", {job, lines, obstacles, rules}, {sites, Length::feet(edgeFt), seed}); }
};

double at(const book::Body& site, const char* key) { return QString::fromStdString(book::textAt(site, key)).toDouble(); }

/// Upper tail of the chi-square of counts that should be equal.
double uniformP(const std::vector<int>& counts)
{
    double total = 0;
    for (int c : counts)
        total += c;
    const double expected = total / static_cast<double>(counts.size());
    double sum = 0;
    for (int c : counts)
        sum += (c - expected) * (c - expected) / expected;
    return boost::math::cdf(boost::math::complement(boost::math::chi_squared(static_cast<double>(counts.size()) - 1), sum));
}

}  // namespace

class LotDrawTest : public QObject {
    Q_OBJECT
private slots:
    void eachSublotGetsItsSitesAndTheRecordRepeatsByHand()
    {
        Ground ground;
        const auto body = ground.draw(8, 3, 42);
        QVERIFY2(body, body ? "" : body.error().what.c_str());
        QVERIFY(book::checkBody("draw", [&] { auto b = *body; b["lot"] = "00000000-0000-4000-8000-000000000000"; b["lift"] = b["lot"]; return b; }()));
        QCOMPARE(body->at("sites").size(), std::size_t(8));
        method::RandomSource random(42);
        std::size_t next = 0, rejected = 0;
        while (next < 8) {
            const double r1 = random.next(), r2 = random.next();
            const double fromLeft = r2 * 80;
            const bool edge = fromLeft < 3 || fromLeft > 77;
            const auto& site = edge ? body->at("rejected")[rejected++] : body->at("sites")[next];
            const int sublot = static_cast<int>(edge ? next : next++) / 2;
            QVERIFY(std::fabs(at(site, "r_along") - r1) < 1e-8);
            QVERIFY(std::fabs(at(site, "station") - (5000 + 150 * (sublot + r1))) < 1e-3);
            QVERIFY(std::fabs(at(site, "offset_ft") - (fromLeft - 30)) < 1e-3);
            QVERIFY(std::fabs(at(site, "grid_north_ft") - (at(site, "station") - 4000)) < 2e-3);
            QVERIFY(std::fabs(at(site, "grid_east_ft") - (at(site, "offset_ft") + 2000)) < 2e-3);
            QCOMPARE(site.contains("why"), edge);
        }
        QCOMPARE(body->at("rejected").size(), rejected);
        QVERIFY(*ground.draw(8, 3, 42) == *body);
    }

    void noSiteLiesWithinTheClearanceOfAnObstacle()
    {
        Ground ground;
        book::ObstacleRow wall;
        wall.name = "Abutment";
        wall.obstacleKind = "wall";
        wall.path = R"([{"grid_north_ft":"1100","grid_east_ft":"1970"},{"grid_north_ft":"1100","grid_east_ft":"2030"}])";
        wall.uncertaintyFt = 1;
        ground.obstacles.push_back(wall);
        book::ObstacleRow roller;
        roller.name = "Roller";
        roller.obstacleKind = "vehicle";
        roller.north = 1400;
        roller.east = 2010;
        ground.obstacles.push_back(roller);
        int rejected = 0;
        for (std::uint64_t seed = 1; seed <= 500; ++seed) {
            const auto body = ground.draw(4, 0, seed);
            QVERIFY2(body, body ? "" : body.error().what.c_str());
            for (const auto& site : body->at("sites")) {
                const double north = at(site, "grid_north_ft"), east = at(site, "grid_east_ft");
                const double eastOfWall = std::max({0.0, 1970 - east, east - 2030});
                QVERIFY(std::hypot(north - 1100, eastOfWall) > 3 - 2e-3);  // 24 in. and 1 ft of uncertainty
                QVERIFY(std::hypot(north - 1400, east - 2010) > 15 - 2e-3);
            }
            for (const auto& site : body->at("rejected"))
                rejected += QString::fromStdString(book::textAt(site, "why")).contains("asked for");
        }
        // open to chance: 500 draws a sublot, 374 and 707 of 12 000 ft2 within a clearance give 45 on average, s about 6.5
        QVERIFY2(rejected > 20 && rejected < 70, qPrintable(QString::number(rejected)));
    }

    void sitesAreUniformInEverySublotOutsideTheEdges()
    {
        const Ground ground;
        std::vector<std::vector<int>> along(4, std::vector<int>(10)), across(4, std::vector<int>(10));
        for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
            const auto body = ground.draw(4, 5, seed);
            QVERIFY(body);
            for (std::size_t i = 0; i < 4; ++i) {
                const auto& site = body->at("sites")[i];
                const double begin = 5000 + 150 * static_cast<double>(i);
                ++along[i][std::min<std::size_t>(9, static_cast<std::size_t>((at(site, "station") - begin) / 15))];
                ++across[i][std::min<std::size_t>(9, static_cast<std::size_t>((at(site, "offset_ft") + 25) / 7))];
            }
        }
        for (std::size_t i = 0; i < 4; ++i) {
            QVERIFY(uniformP(along[i]) > 1e-4);
            QVERIFY(uniformP(across[i]) > 1e-4);
        }
    }

    void anAwkwardAreaIsDrawnUniformlyAndItsHoleNever()
    {
        Ground ground;
        ground.lot.beginStationFt.reset();
        ground.lot.endStationFt.reset();
        // an L of three squares of 100 ft with a hole of 40 ft in the corner square
        ground.lot.area = R"([{"ring":1,"grid_north_ft":"1100","grid_east_ft":"2000"},{"ring":1,"grid_north_ft":"1300","grid_east_ft":"2000"},{"ring":1,"grid_north_ft":"1300","grid_east_ft":"2100"},{"ring":1,"grid_north_ft":"1200","grid_east_ft":"2100"},{"ring":1,"grid_north_ft":"1200","grid_east_ft":"2200"},{"ring":1,"grid_north_ft":"1100","grid_east_ft":"2200"},{"ring":2,"grid_north_ft":"1130","grid_east_ft":"2030"},{"ring":2,"grid_north_ft":"1170","grid_east_ft":"2030"},{"ring":2,"grid_north_ft":"1170","grid_east_ft":"2070"},{"ring":2,"grid_north_ft":"1130","grid_east_ft":"2070"}])";
        std::vector<int> strips(10);  // of the two squares without a hole, five each
        for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
            const auto body = ground.draw(5, 0, seed);
            QVERIFY2(body, body ? "" : body.error().what.c_str());
            for (const auto& site : body->at("sites")) {
                const double north = at(site, "grid_north_ft") - 1100, east = at(site, "grid_east_ft") - 2000;
                QVERIFY(!(north > 100.01 && east > 100.01));
                QVERIFY(!(north > 30.01 && north < 69.99 && east > 30.01 && east < 69.99));
                if (north > 100)
                    ++strips[std::min<std::size_t>(4, static_cast<std::size_t>((north - 100) / 20))];
                else if (east > 100)
                    ++strips[5 + std::min<std::size_t>(4, static_cast<std::size_t>((east - 100) / 20))];
            }
        }
        QVERIFY(uniformP(strips) > 1e-4);
    }

    void aBuildingPadWithoutALineIsDrawnByItsGridPlaces()
    {
        Ground ground;
        ground.lines.clear();
        ground.lot.beginStationFt.reset();
        ground.lot.endStationFt.reset();
        ground.lot.area = R"([{"ring":1,"grid_north_ft":"1100","grid_east_ft":"2000"},{"ring":1,"grid_north_ft":"1200","grid_east_ft":"2000"},{"ring":1,"grid_north_ft":"1200","grid_east_ft":"2100"},{"ring":1,"grid_north_ft":"1100","grid_east_ft":"2100"}])";
        const auto body = ground.draw(5, 3, 11);
        QVERIFY2(body, body ? "" : body.error().what.c_str());
        QCOMPARE(body->at("sites").size(), std::size_t(5));
        for (const auto& site : body->at("sites")) {
            QVERIFY(!site.contains("station") && !site.contains("offset_ft"));
            QVERIFY(at(site, "grid_north_ft") >= 1103 && at(site, "grid_north_ft") <= 1197);
            QVERIFY(at(site, "grid_east_ft") >= 2003 && at(site, "grid_east_ft") <= 2097);
        }
    }

    void refusesWhatCannotBeDrawn()
    {
        Ground ground;
        const auto odd = ground.draw(6, 0, 1);
        QVERIFY(!odd);
        QVERIFY(odd.error().what.find("multiple of the lot's 4 sublots") != std::string::npos);
        QVERIFY(!ground.draw(4, 40, 1));
        book::ObstacleRow all;
        all.name = "Stockpile";
        all.obstacleKind = "structure";
        all.radiusFt = 1000;
        all.north = 1300;
        all.east = 2000;
        ground.obstacles.push_back(all);
        const auto full = ground.draw(4, 0, 1);
        QVERIFY(!full);
        QVERIFY(full.error().what.find("Stockpile") != std::string::npos);
        ground.lot.beginStationFt.reset();
        QVERIFY(!ground.draw(4, 0, 1));
    }
};

QTEST_GUILESS_MAIN(LotDrawTest)
#include "lot_draw_test.moc"
