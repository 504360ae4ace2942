// Where a test stands: lots with corners, jobs with several lines or none.
#include "app/sample_book.h"

#include "book/kinds.h"
#include "gis/area_profile.h"
#include "view/day_view.h"
#include "view/map_content.h"
#include "paper/sheets.h"
#include "view/map_view.h"
#include "view/profile_view.h"

#include <QtTest>

#include <algorithm>

using namespace groundcount;
using namespace groundcount::tests;
using view::TestSheet;

namespace {

book::Body corner(int ring, double north, double east)
{
    return {{"ring", ring}, {"grid_north_usft", sample::text(north)}, {"grid_east_usft", sample::text(east)}};
}

/// Adds to the sample book: a lot with corners 400 ft east of the line with a hole in it, one lift, one drawn site.
struct Pad {
    std::string lot = book::newSubject(), lift = book::newSubject(), draw;

    explicit Pad(view::Session& session)
    {
        const double n = sample::kNorth0, e = sample::kEast0 + 400;
        book::Body body{{"name", "Pad 1"}, {"material", session.snapshot().materials.front().id}, {"proctor", session.snapshot().proctors.front().id},
                        {"minimum_pct", "95"}, {"tests_per_lift", 3}, {"area", book::Body::array()}};
        for (const auto& c : {corner(1, n, e), corner(1, n, e + 100), corner(1, n + 100, e + 100), corner(1, n + 100, e), corner(2, n + 40, e + 40),
                              corner(2, n + 40, e + 60), corner(2, n + 60, e + 60), corner(2, n + 60, e + 40)})
            body["area"].push_back(c);
        must(session.seal("lot", lot, body));
        must(session.seal("lift", lift, {{"lot", lot}, {"number", 1}, {"thickness_in", "8"}}));
        const book::Body site{{"number", 1}, {"r_along", "0.2"}, {"r_across", "0.2"}, {"grid_north_usft", sample::text(n + 20)}, {"grid_east_usft", sample::text(e + 20)}};
        draw = must(session.seal("draw", book::newSubject(), {{"lot", lot}, {"lift", lift}, {"generator", "g"}, {"seed", "s"}, {"policy", "p"},
                                                              {"sites", book::Body::array({site})}, {"rejected", book::Body::array()}}));
    }

    static std::string must(const Result<book::Record>& sealed)
    {
        if (!sealed)
            qFatal("%s", sealed.error().what.c_str());
        return sealed->hash;
    }
};

QString said(TestSheet& sheet, const char* name)
{
    return sheet.place()->property(name).toString();
}

}  // namespace

class PlaceTest : public QObject {
    Q_OBJECT

private slots:
    void aLotWithCornersHoldsAPointOfTheMap();
    void itsHoleIsOutsideEveryLot();
    void itsDrawnSiteIsAimedAtWithoutAStation();
    void theTapeGoesAlongTheChosenLine();
    void aPlaceBelongsToTheLotOfItsOwnLine();
    void theProfileOfAPadGoesAlongItsLongestSide();
    void theSheetOfAPadDrawsEachLift();
    void theMapDrawsEveryLine();
};

void PlaceTest::aLotWithCornersHoldsAPointOfTheMap()
{
    SampleBook book;
    const Pad pad(book.session());
    TestSheet sheet;
    sheet.setSession(&book.session());
    sheet.beginAtPoint(sample::kNorth0 + 30, sample::kEast0 + 430);
    QCOMPARE(said(sheet, "lotText"), QString("Lot Pad 1, lift 1"));
    QCOMPARE(said(sheet, "fixKind"), QString("on the map"));
    QCOMPARE(said(sheet, "stripBegin"), QString());
    sheet.place()->pickPurpose(1);
    QCOMPARE(sheet.property("sealNotYet").toString(), QString());
    QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
    const auto& test = book.session().snapshot().tests.back();
    QCOMPARE(test.lot, pad.lot);
    QCOMPARE(test.north, sample::kNorth0 + 30);
    QCOMPARE(test.east, sample::kEast0 + 430);
    QCOMPARE(test.fixKind, std::string("on the map"));
    // opened again, it shows what was sealed
    TestSheet again;
    again.setSession(&book.session());
    again.open(QString::fromStdString(test.id));
    QCOMPARE(said(again, "lotText"), QString("Lot Pad 1, lift 1"));
    QCOMPARE(said(again, "grid"), QString("N 482,030.0   E 1,205,030.0"));
}

void PlaceTest::itsHoleIsOutsideEveryLot()
{
    SampleBook book;
    const Pad pad(book.session());
    TestSheet sheet;
    sheet.setSession(&book.session());
    sheet.beginAtPoint(sample::kNorth0 + 50, sample::kEast0 + 450);
    QCOMPARE(said(sheet, "lotText"), QString("Outside every lot"));
    sheet.place()->pickPurpose(1);
    QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: outside every lot"));
}

void PlaceTest::itsDrawnSiteIsAimedAtWithoutAStation()
{
    SampleBook book;
    const Pad pad(book.session());
    const QString site = QString::fromStdString(pad.draw + "/1");
    view::DayView day;
    day.setSession(&book.session());
    QVERIFY(day.owed()->count() > 0);
    bool listed = false;
    for (const auto& row : day.owed()->rows()) {
        if (row.id != site)
            continue;
        listed = true;
        QCOMPARE(row.lead + row.title, QString("N 482,020, E 1,205,020"));
    }
    QVERIFY(listed);
    TestSheet sheet;
    sheet.setSession(&book.session());
    sheet.beginAt(site);
    QCOMPARE(sheet.place()->draft().value("purpose").toString(), QString("random"));
    QVERIFY(!sheet.place()->draft().contains("station"));
    // there is no receiver: the point that the finger shows is taken
    sheet.place()->aimAtPoint(sample::kNorth0 + 21, sample::kEast0 + 420);
    QCOMPARE(said(sheet, "siteText"), QString("Drawn site 1 is 1.0 ft away"));
    QVERIFY2(sheet.seal(), qPrintable(sheet.trouble() + sheet.property("sealNotYet").toString()));
    // The sites are listed by their draw's hash, which every run makes anew.
    const auto& sites = book.session().snapshot().sites;
    const auto taken = std::find_if(sites.begin(), sites.end(), [&](const auto& s) { return s.draw == pad.draw; });
    QVERIFY(taken != sites.end());
    QCOMPARE(taken->testId, book.session().snapshot().tests.back().id);
}

void PlaceTest::theTapeGoesAlongTheChosenLine()
{
    SampleBook book;
    const auto ramp = addRamp(book.session());
    TestSheet sheet;
    sheet.setSession(&book.session());
    sheet.begin();
    QCOMPARE(sheet.place()->lineWords(), QStringList({"Line A", "Ramp B"}));
    QVERIFY(!placeByTape(sheet, "5210", "14.2", 1));  // along Line A: N-4 lies elsewhere
    sheet.place()->pickLine(1);
    QCOMPARE(sheet.place()->lineIndex(), 1);
    QCOMPARE(said(sheet, "lotText"), QString("Lot R-1, lift 3"));
    QCOMPARE(said(sheet, "grid"), QString("N 481,985.8   E 1,205,810.0"));  // 210 ft east along the ramp, 14.2 ft right of it is south
    QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
    const auto record = book.session().store().records({.subject = book.session().snapshot().tests.back().id, .kind = "test-site"}).value().front();
    QCOMPARE(book::textAt(record.body, "alignment"), ramp);
}

void PlaceTest::aPlaceBelongsToTheLotOfItsOwnLine()
{
    SampleBook book;
    addRamp(book.session());
    TestSheet sheet;
    sheet.setSession(&book.session());
    sheet.beginAtPoint(sample::kNorth0 - 14.2, sample::kEast0 + 1210);
    QCOMPARE(said(sheet, "lotText"), QString("Lot R-1, lift 3"));
    QCOMPARE(said(sheet, "station"), QString("52+10.0"));
    view::MapView map;
    map.setSession(&book.session());
    map.touch(sample::kEast0 + 1210 - map.originEast(), sample::kNorth0 - 14.2 - map.originNorth());
    QCOMPARE(map.touchedText(), QString("Ramp B 52+10, 14 Rt"));
}

void PlaceTest::theProfileOfAPadGoesAlongItsLongestSide()
{
    SampleBook book;
    book::LotRow lot;
    lot.id = "pad";
    lot.name = "Pad 2";
    // 120 ft long at azimuth 36.87 degrees (3 : 4), 50 ft wide
    lot.area = R"([{"grid_north_usft":"1000","grid_east_usft":"2000"},{"grid_north_usft":"1096","grid_east_usft":"2072"},)"
               R"({"grid_north_usft":"1066","grid_east_usft":"2112"},{"grid_north_usft":"970","grid_east_usft":"2040"}])";
    book::LiftRow lift;
    lift.lot = lot.id;
    lift.number = 2;
    book::TestRow test;
    test.lot = lot.id;
    test.liftNumber = 2;
    test.north = 1048;
    test.east = 2036;
    const std::vector<book::TestRow> tests{test};
    const auto profile = gis::areaProfile(lot, book.session().job(), std::span(&lift, 1), tests);
    QCOMPARE(profile.lots.size(), std::size_t(1));
    QVERIFY(std::abs(profile.endFt - 120) < 1e-6);
    QVERIFY(std::abs(profile.azimuthDeg - 36.8698976) < 1e-6);
    QCOMPARE(profile.points.size(), std::size_t(1));
    QVERIFY(std::abs(profile.points.front().stationFt - 60) < 1e-6);
    QCOMPARE(profile.unit, std::string("ft"));
    QVERIFY(profile.lowest == 2 && profile.highest == 2);
    QVERIFY(gis::areaProfile(book::LotRow{}, book.session().job(), {}, tests).lots.empty());

    const Pad pad(book.session());
    view::ProfileView page;
    page.setLot(QString::fromStdString(pad.lot));
    page.setSession(&book.session());
    QVERIFY(page.plot().isThere());
    QVERIFY(page.property("note").toString().contains("corners"));
    page.setLot(QString::fromStdString(book.session().snapshot().lots.front().id));
    QVERIFY(page.property("note").toString().isEmpty());
}

void PlaceTest::theSheetOfAPadDrawsEachLift()
{
    SampleBook book;
    const Pad pad(book.session());
    const auto sheet = paper::lotSheet({book.session().store(), "b", "m"}, pad.lot);
    QVERIFY2(sheet, sheet ? "" : sheet.error().what.c_str());
    QCOMPARE(std::count_if(sheet->blocks.begin(), sheet->blocks.end(), [](const auto& block) { return std::holds_alternative<paper::Drawing>(block); }), 1);
}

void PlaceTest::theMapDrawsEveryLine()
{
    SampleBook book;
    const auto lines = [&] {
        const auto scene = view::mapContent(book.session(), map::kEveryLift);
        return std::count_if(scene->lines.begin(), scene->lines.end(), [](const auto& l) { return l.style == map::LineStyle::Alignment; });
    };
    QCOMPARE(lines(), 1);
    QVERIFY(view::mapContent(book.session(), map::kEveryLift)->labels.empty());  // one line needs no name
    addRamp(book.session());
    QCOMPARE(lines(), 2);
    const auto scene = view::mapContent(book.session(), map::kEveryLift);
    QCOMPARE(scene->labels.size(), std::size_t(2));
    QCOMPARE(scene->labels.back().text, QString("Ramp B"));
    const auto lot = std::find_if(scene->areas.begin(), scene->areas.end(), [](const auto& a) { return a.label == "R-1"; });
    QVERIFY(lot != scene->areas.end());
    const auto origin = view::sceneOrigin(book.session());
    for (const auto& v : lot->rings.front()) {
        QVERIFY(v.east + origin.east > sample::kEast0 + 1099 && v.east + origin.east < sample::kEast0 + 1501);
        QVERIFY(std::abs(v.north + origin.north - sample::kNorth0) < 20.01);
    }
}

QTEST_GUILESS_MAIN(PlaceTest)
#include "place_test.moc"
