#include "app/sample_book.h"

#include "book/kinds.h"
#include "book/live.h"
#include "book/store.h"
#include "gis/crs.h"
#include "position/position_source.h"
#include "view/day_view.h"
#include "view/desk.h"

#include <QImage>
#include <QtTest>

using namespace groundcount;
using namespace groundcount::tests;
using view::TestSheet;

namespace {

bool passed(TestSheet& sheet, SampleBook& book)
{
    return placeByTape(sheet, "5338.3", "14.2", 0) && clearByEye(sheet) && seatAtEightInches(sheet) && countReadout(sheet, book, "129.9", "14.4") &&
           digNothingCoarse(sheet) && sheet.seal();
}

std::vector<book::Record> sealedOf(view::Session& session, const QString& test, const char* kind)
{
    return session.store().records({.subject = test.toStdString(), .kind = kind}).value();
}

QString text(const QObject* object, const char* property)
{
    return object->property(property).toString();
}

}  // namespace

/// What is sealed is changed only by another record with a reason: amendments, voids, conflicts, notes and photos on the sheet.
class TestRecordTest : public QObject {
    Q_OBJECT

private slots:
    void amendsAReadingWithItsReasonAndMakesTheVerdictAgain()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY2(passed(sheet, book), qPrintable(sheet.trouble()));
        sheet.pickStep(TestSheet::Count);
        QVERIFY(sheet.property("canAmend").toBool());
        sheet.askAmend();
        QVERIFY(sheet.ask()->isOpen());
        sheet.answer("  ");
        QVERIFY(sheet.ask()->isOpen());
        QCOMPARE(text(sheet.ask(), "missing"), QString("Say why. The reason is sealed with it."));
        sheet.answer("typed 129.9 for 126.9");
        QVERIFY(!sheet.ask()->isOpen());
        QCOMPARE(text(&sheet, "amending"), QString("Amending: typed 129.9 for 126.9"));
        sheet.countStep()->retype(1);
        QVERIFY(typeEntry(sheet, {"126.9", "14.4"}));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QCOMPARE(sheet.step(), static_cast<int>(TestSheet::Verdict));
        // By hand: 126.9 - 14.4 = 112.5; 100 x 112.5 / 118.6 = 94.857
        QCOMPARE(text(sheet.verdict(), "compaction"), QString("94.9"));
        // Day knows when it looks into the records; the first frame does not wait for that.
        view::DayView day;
        day.setSession(&book.session());
        QCOMPARE(day.results()->rows().size(), std::size_t(1));
        day.setWhole(true);
        QCOMPARE(day.results()->rows().size(), std::size_t(0));
        QCOMPARE(day.waiting()->rows().front().second, QString("amended: seal its verdict again"));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QCOMPARE(day.waiting()->rows().size(), std::size_t(0));
        QCOMPARE(day.results()->rows().size(), std::size_t(1));
        const auto readings = sealedOf(book.session(), sheet.testId(), "reading");
        QCOMPARE(readings.size(), std::size_t(2));
        QCOMPARE(readings[1].amends, readings[0].hash);
        QCOMPARE(readings[1].reason, std::string("typed 129.9 for 126.9"));
        const auto verdicts = sealedOf(book.session(), sheet.testId(), "verdict");
        QCOMPARE(verdicts.size(), std::size_t(2));
        QCOMPARE(verdicts[1].reason, std::string("typed 129.9 for 126.9"));
        QVERIFY(book.session().snapshot().tests.front().state == book::TestState::Fail);
        const auto rows = sheet.record()->history()->rows();
        QCOMPARE(rows.size(), std::size_t(8));
        QVERIFY2(rows[6].second.contains(QString("wet density lb ft3: 129.9 %1 126.9").arg(QChar(0x2192))), qPrintable(rows[6].second));
        QVERIFY(rows[3].second.endsWith("replaced later"));
    }

    void keepsAnOpenAmendmentThroughAKillAndGivesItUpOnDemand()
    {
        SampleBook book;
        QString id;
        {
            TestSheet sheet;
            sheet.setSession(&book.session());
            sheet.begin();
            QVERIFY2(passed(sheet, book), qPrintable(sheet.trouble()));
            id = sheet.testId();
            sheet.pickStep(TestSheet::Seat);
            sheet.askAmend();
            sheet.answer("depth was 6 in.");
            sheet.seat()->pickDepth(0);
        }
        const auto session = book.reopened();
        TestSheet sheet;
        sheet.setSession(session.get());
        sheet.open(id);
        QCOMPARE(sheet.step(), static_cast<int>(TestSheet::Seat));
        QCOMPARE(text(&sheet, "amending"), QString("Amending: depth was 6 in."));
        QCOMPARE(sheet.seat()->draft().value("depth").toString(), QString("6"));
        sheet.dropAmendment();
        QVERIFY(sheet.seat()->isSealed());
        QCOMPARE(sheet.seat()->draft().value("depth").toString(), QString("8"));
        QCOMPARE(sealedOf(*session, id, "seating").size(), std::size_t(1));
        QVERIFY(sheet.verdict()->isSealed());
    }

    void keepsTheSealedPositionWhenAPlaceIsAmended()
    {
        SampleBook book;
        QVERIFY(book.session().replay(GROUNDCOUNT_SOURCE_DIR "/demo/walk.nmea"));
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        const auto here = book.session().crs()->toGeographic({482338.3, 1204614.2});
        QVERIFY(here.has_value());
        for (int i = 0; i < 22; ++i) {
            position::Fix fix;
            fix.latitude = here->latitudeDeg;
            fix.longitude = here->longitudeDeg;
            fix.sigmaNorthM = fix.sigmaEastM = 0.15;
            fix.quality = 2;
            fix.qualityWord = "differential";
            fix.utc = QTime(15, 21, i);
            emit book.session().positionSource()->fixed(fix);
        }
        sheet.place()->pickPurpose(1);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        sheet.pickStep(TestSheet::Place);
        sheet.askAmend();
        sheet.answer("it was drawn site 3");
        QCOMPARE(sheet.place()->property("fixesText").toString(), QString("22 fixes"));
        sheet.place()->pickPurpose(0);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        const auto sites = sealedOf(book.session(), sheet.testId(), "test-site");
        QCOMPARE(sites.size(), std::size_t(2));
        QCOMPARE(book::textAt(sites[1].body, "grid_north_usft"), book::textAt(sites[0].body, "grid_north_usft"));
        QCOMPARE(sites[1].body.at("fixes").get<int>(), 22);
        QVERIFY(sites[1].body.contains("latitude_deg") && sites[1].body.contains("sigma_north_m"));
        QCOMPARE(book::textAt(sites[1].body, "number"), book::textAt(sites[0].body, "number"));
        QCOMPARE(sites[1].body.at("site").get<int>(), 3);
    }

    void takesATestOutAndNeverUsesItsNumberAgain()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY2(passed(sheet, book), qPrintable(sheet.trouble()));
        sheet.askVoid();
        QCOMPARE(text(sheet.ask(), "title"), QString("Void test 1"));
        sheet.answer("wrong lift");
        QVERIFY(book.session().snapshot().tests.front().state == book::TestState::Void);
        QCOMPARE(text(&sheet, "voidText"), QString("Void: wrong lift"));
        for (int step = 0; step < TestSheet::kSteps; ++step) {
            sheet.pickStep(step);
            QVERIFY(!sheet.property("canAmend").toBool());
            QVERIFY(!sheet.seal());
        }
        sheet.begin();
        QCOMPARE(text(&sheet, "title"), QString("Test 2"));
    }

    void showsAConflictAndSettlesItWithBothSidesKept()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY2(passed(sheet, book), qPrintable(sheet.trouble()));
        const auto reading = sealedOf(book.session(), sheet.testId(), "reading").front();
        for (const char* wet : {"127.9", "131.9"}) {
            auto body = reading.body;
            body["wet_density_lb_ft3"] = wet;
            QVERIFY(book.session().seal("reading", reading.subject, body, reading.hash, std::string("read again as ") + wet).has_value());
        }
        sheet.open(sheet.testId());
        QVERIFY(book.session().snapshot().tests.front().conflict);
        const auto rivals = sheet.record()->conflict()->rows();
        QCOMPARE(rivals.size(), std::size_t(2));
        QVERIFY(text(sheet.record(), "conflictText").startsWith("Reading was amended twice"));
        sheet.record()->keep(rivals[0].id);
        QVERIFY(!book.session().snapshot().tests.front().conflict);
        QVERIFY(sheet.record()->conflict()->rows().empty());
        const auto live = book.session().store().record(rivals[0].id.toStdString())->body;
        const auto all = sealedOf(book.session(), sheet.testId(), "reading");
        QCOMPARE(all.size(), std::size_t(5));
        const book::LiveRecords now(all);
        QVERIFY(now.latest("reading")->body == live);
        QVERIFY(!sheet.verdict()->isSealed());
    }

    void aTestOpensAtItsStepsWhateverWasShownOfTheOneBefore()
    {
        SampleBook book;
        view::Desk desk(&book.session());
        desk.start();
        QVERIFY(placeByTape(*desk.sheet(), "5338.3", "14.2", 0));
        const QString test = desk.sheet()->testId();
        desk.closeTest();
        desk.openRecord(test);
        QVERIFY(desk.sheet()->property("recordShown").toBool());
        desk.closeTest();
        desk.openTest(test);
        QVERIFY(!desk.sheet()->property("recordShown").toBool());
    }

    void placesAHazardSeenFromTheTestAndJudgesItAtOnce()
    {
        SampleBook book;
        view::Desk desk(&book.session());
        TestSheet& sheet = *desk.sheet();
        desk.start();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0));
        sheet.clear()->addHazard();
        view::ObstacleSheet& obstacle = *desk.obstacle();
        QVERIFY(obstacle.isOpen());
        QVERIFY(!obstacle.seal());
        obstacle.pickKind(3);
        obstacle.typeDistance();
        obstacle.entry()->field(0)->type("8");
        obstacle.entry()->done();
        QCOMPARE(text(&obstacle, "notYet"), QString("Seal: say in which direction"));
        obstacle.pickDirection(2);
        obstacle.setName("Parked loader");
        QVERIFY2(obstacle.seal(), qPrintable(text(&obstacle, "trouble")));
        QVERIFY(!obstacle.isOpen());
        const auto& placed = book.session().snapshot().obstacles.back();
        // 8 ft due east of 5338.3, 14.2 Rt on a line that runs due north: 22.2 Rt, unsure by 8 sin 22.5 deg = 3.06 ft.
        QVERIFY(std::abs(placed.east - (sample::kEast0 + 22.2)) < 0.01);
        QVERIFY(std::abs(placed.north - (sample::kNorth0 + 338.3)) < 0.01);
        QCOMPARE(placed.uncertaintyFt, 3.1);
        const auto* vehicles = sheet.clear()->hazard(view::Hazard::Vehicles);
        QCOMPARE(vehicles->property("known").toString(), QString("Parked loader, from the map, %1 ft").arg(QString("±3.1")));
        QCOMPARE(vehicles->property("word").toString(), QString("Too close"));
    }

    void seesTheOtherGaugesOfTheBook()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0));
        const auto first = sealedOf(book.session(), sheet.testId(), "test-site").front();
        const auto other = view::Session::newId();
        QVERIFY(book.session().seal("gauge", other, {{"name", "Gauge 04"}, {"serial", "0004"}, {"prescale", "1"}}).has_value());
        auto body = first.body;
        body["gauge"] = other;
        body["number"] = "2";
        body["purpose"] = "directed";
        body.erase("draw");
        body.erase("site");
        body["grid_north_usft"] = sample::text(sample::kNorth0 + 358.3);
        QVERIFY(book.session().seal("test-site", view::Session::newId(), body).has_value());
        sheet.open(sheet.testId());
        const auto* gauges = sheet.clear()->hazard(view::Hazard::OtherGauges);
        QCOMPARE(gauges->property("word").toString(), QString("Too close"));
        QVERIFY2(gauges->property("known").toString().startsWith("Gauge 04, from the map"), qPrintable(gauges->property("known").toString()));
    }

    void attachesNotesAndPhotosAndRefusesWhatIsNoPicture()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0));
        QVERIFY(!sheet.record()->addNote("   "));
        QVERIFY2(sheet.record()->addNote("Rain since nine."), qPrintable(text(sheet.record(), "trouble")));
        QCOMPARE(book::textAt(sealedOf(book.session(), sheet.testId(), "note").front().body, "text"), std::string("Rain since nine."));
        QTemporaryDir folder;
        QImage image(60, 40, QImage::Format_RGB32);
        image.fill(Qt::darkGray);
        const QString picture = folder.filePath("hole.png");
        QVERIFY(image.save(picture));
        QVERIFY2(sheet.record()->addPhoto(QUrl::fromLocalFile(picture)), qPrintable(text(sheet.record(), "trouble")));
        const auto photo = sealedOf(book.session(), sheet.testId(), "photo").front();
        QCOMPARE(book::textAt(photo.body, "media_type"), std::string("image/png"));
        QFile file(picture);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(QByteArray::fromStdString(*book.session().store().blob(book::textAt(photo.body, "blob"))), file.readAll());
        QCOMPARE(sheet.record()->property("photos").toStringList().size(), 1);
        QVERIFY(sheet.record()->property("photos").toStringList().front().startsWith("data:image/png;base64,"));
        const QString words = folder.filePath("words.png");
        QFile bad(words);
        QVERIFY(bad.open(QIODevice::WriteOnly) && bad.write("no picture") > 0);
        bad.close();
        QVERIFY(!sheet.record()->addPhoto(QUrl::fromLocalFile(words)));
        QCOMPARE(text(sheet.record(), "trouble"), QString("words.png is no JPEG or PNG picture that can be shown."));
        QVERIFY(!sheet.record()->addPhoto(QUrl("https://example.invalid/a.png")));
        QCOMPARE(sealedOf(book.session(), sheet.testId(), "photo").size(), std::size_t(1));
    }

    void noticesSwappedDigitsAMovedPointAndSwappedFields()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY2(passed(sheet, book), qPrintable(sheet.trouble()));
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5210", "8", 0) && clearByEye(sheet) && seatAtEightInches(sheet));
        sheet.countStep()->start();
        book.wait(61);
        sheet.countStep()->tick();
        sheet.countStep()->pickForm(1);
        sheet.countStep()->enterReading();
        auto* entry = sheet.entry();
        QVERIFY(entry);
        QCOMPARE(entry->note(), QString("Test 1 with this gauge and material: 129.9 and 14.4"));
        entry->field(1)->type("14.4");
        entry->field(0)->type("192.9");
        QVERIFY2(entry->field(0)->doubt().contains("outside the calibrated range") || entry->field(0)->doubt().contains("swapped"), qPrintable(entry->field(0)->doubt()));
        entry->field(0)->type("129.9");
        entry->field(1)->type("41.4");
        QCOMPARE(entry->field(1)->doubt(), QString("Two digits may be swapped: last time it was 14.4."));
        entry->field(1)->type("1.44");
        QCOMPARE(entry->field(1)->doubt(), QString("The decimal point may be off: last time it was 14.4."));
        entry->field(1)->type("14.6");
        QCOMPARE(entry->field(1)->doubt(), QString());
        // Counts the wrong way round: 2800 and 700 are the standard counts.
        sheet.closeEntry();
        sheet.countStep()->pickForm(0);
        sheet.countStep()->enterReading();
        entry = sheet.entry();
        entry->field(0)->type("162");
        entry->field(1)->type("2700");
        QVERIFY2(entry->field(1)->doubt().contains("wrong way round") || entry->field(0)->doubt().contains("wrong way round"), qPrintable(entry->field(1)->doubt() + entry->field(0)->doubt()));
    }
};

QTEST_MAIN(TestRecordTest)
#include "test_record_test.moc"
