#include "app/sample_book.h"

#include "book/kinds.h"
#include "book/store.h"
#include "gis/crs.h"
#include "position/position_source.h"

#include <QtTest>

using namespace groundcount;
using namespace groundcount::tests;
using view::Mark;
using view::TestSheet;

namespace {

view::HazardCard* hazard(TestSheet& sheet, view::Hazard which)
{
    return sheet.clear()->hazard(which);
}

std::vector<book::Record> sealedOf(view::Session& session, const QString& test, const char* kind)
{
    return session.store().records({.subject = test.toStdString(), .kind = kind}).value();
}

}  // namespace

class TestSheetTest : public QObject {
    Q_OBJECT

private slots:
    void beginsWithTheNextNumberAndSixOpenSteps()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QCOMPARE(sheet.property("title").toString(), QString("Test 1"));
        QCOMPARE(sheet.property("context").toString(), QString("Gauge 07"));
        QCOMPARE(sheet.steps()->rowCount(), 6);
        QCOMPARE(sheet.step(), 0);
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: wait for a position"));
        QVERIFY(!sheet.seal());
    }

    void findsLotLiftSublotAndDrawnSiteFromTheTape()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        sheet.place()->typePlace();
        QVERIFY(typeEntry(sheet, {"5338.3", "14.2"}));
        QCOMPARE(sheet.place()->property("station").toString(), QString("53+38.3"));
        QCOMPARE(sheet.place()->property("offset").toString(), QString("14.2"));
        QCOMPARE(sheet.place()->property("offsetUnit").toString(), QString("ft Rt"));
        QCOMPARE(sheet.place()->property("lotText").toString(), QString("Lot N-4, lift 7"));
        QCOMPARE(sheet.place()->property("sublotText").toString(), QString("sublot 3, found on the map"));
        QCOMPARE(sheet.place()->property("siteText").toString(), QString("Drawn site 3 is 0.4 ft away"));
        QCOMPARE(sheet.place()->property("grid").toString(), QString("N 482,338.3   E 1,204,614.2"));
    }

    void refusesAPlaceOutsideEveryLotAndKeepsTheTypedText()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(!placeByTape(sheet, "5800", "14.2", 1));
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: outside every lot"));
        QCOMPARE(sheet.place()->draft().value("station").toString(), QString("5800"));
        QVERIFY(!sheet.trouble().isEmpty());
        QVERIFY(book.session().snapshot().tests.empty());
    }

    void averagesFixesHeldStill()
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
            fix.latitude = here->latitudeDeg + (i % 3 - 1) * 1e-7;
            fix.longitude = here->longitudeDeg + (i % 2 ? 1e-7 : -1e-7);
            fix.sigmaNorthM = 0.15;
            fix.sigmaEastM = 0.15;
            fix.quality = 2;
            fix.qualityWord = "differential";
            fix.utc = QTime(15, 21, i);
            emit book.session().positionSource()->fixed(fix);
        }
        QCOMPARE(sheet.place()->property("fixesText").toString(), QString("22 fixes"));
        QCOMPARE(sheet.place()->property("fixKind").toString(), QString("differential"));
        // 2DRMS = 2 sqrt(0.15^2 + 0.15^2) m = 0.4243 m = 1.392 ft
        QCOMPARE(sheet.place()->property("accuracy").toString(), QString("±1.4"));
        QCOMPARE(sheet.place()->property("station").toString(), QString("53+38.3"));
        sheet.place()->pickPurpose(0);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        const auto site = sealedOf(book.session(), sheet.testId(), "test-site");
        QCOMPARE(site.size(), std::size_t(1));
        QCOMPARE(site[0].body.at("fixes").get<int>(), 22);
        QCOMPARE(book::textAt(site[0].body, "purpose"), std::string("random"));
        QCOMPARE(site[0].body.at("site").get<int>(), 3);
    }

    void passesATestFromPlaceToVerdict()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY2(placeByTape(sheet, "5338.3", "14.2", 0), qPrintable(sheet.trouble()));
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: settle 4 hazards first"));
        QVERIFY2(clearByEye(sheet), qPrintable(sheet.trouble()));
        QVERIFY2(seatAtEightInches(sheet), qPrintable(sheet.trouble()));
        QVERIFY2(countReadout(sheet, book, "129.9", "14.4"), qPrintable(sheet.trouble()));
        QVERIFY2(digNothingCoarse(sheet), qPrintable(sheet.trouble()));
        QCOMPARE(sheet.step(), 5);
        // By hand: 129.9 - 14.4 = 115.5; 100 x 115.5 / 118.6 = 97.386; 100 x 14.4 / 115.5 = 12.468; 12.8 -2 .. +2.
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Pass"));
        QCOMPARE(sheet.verdict()->property("compaction").toString(), QString("97.4"));
        QCOMPARE(sheet.verdict()->property("moisture").toString(), QString("12.5"));
        QCOMPARE(sheet.verdict()->property("dry").toString(), QString("115.5"));
        const auto line = sheet.verdict()->property("moistureLine").value<view::LimitFigure>();
        QCOMPARE(line.labels, QStringList({"10.8", "optimum 12.8", "14.8"}));
        QCOMPARE(line.lowLimit, 0.25);
        QVERIFY(sheet.verdict()->arithmetic()->count() > 4);
        QCOMPARE(sheet.verdict()->nextSteps()->rows().front().title, QString("Fill the hole"));
        // Site 2 lies 128.3 ft back and 6.2 ft to the left: hypot = 128.4
        QCOMPARE(sheet.verdict()->nextSteps()->rows().back().second, QString("128 ft S, 52+10, 8 Rt"));
        QSignalSpy finished(&sheet, &TestSheet::finished);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QCOMPARE(finished.count(), 1);
        QCOMPARE(book.session().snapshot().tests.size(), std::size_t(1));
        QVERIFY(book.session().snapshot().tests.front().state == book::TestState::Pass);
        QCOMPARE(book.session().snapshot().tests.front().compactionPct, std::string("97.4"));
    }

    void failsAndNumbersTheRetest()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1) && clearByEye(sheet) && seatAtEightInches(sheet));
        QVERIFY(countReadout(sheet, book, "126.5", "17.35") && digNothingCoarse(sheet));
        // 126.5 - 17.35 = 109.15; 92.03 %; 15.895 %, 1.1 above 14.8.
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Fail"));
        QCOMPARE(sheet.verdict()->property("reasons").toString(), QString("Density low, too wet"));
        QCOMPARE(sheet.verdict()->property("compaction").toString(), QString("92.0"));
        const auto& next = sheet.verdict()->nextSteps()->rows();
        QCOMPARE(next[0].title, QString("Dry it back, then roll again"));
        QCOMPARE(next[0].second, QString("1.1 points above the wet limit of 14.8 %"));
        QCOMPARE(next[1].title, QString("Retest 1A, same place and lift"));
        QVERIFY(sheet.seal());
        const QString failed = sheet.testId();

        sheet.beginRetest(failed);
        QCOMPARE(sheet.property("title").toString(), QString("Test 1A"));
        sheet.place()->typePlace();
        QVERIFY(typeEntry(sheet, {"5338.3", "14.2"}));
        QCOMPARE(sheet.place()->property("siteText").toString(), QString("Test 1 was 0.0 ft away"));
        sheet.place()->setRework("dried back, 4 passes");
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        const auto site = sealedOf(book.session(), sheet.testId(), "test-site");
        QCOMPARE(book::textAt(site[0].body, "number"), std::string("1A"));
        QCOMPARE(book::textAt(site[0].body, "retest_of"), failed.toStdString());
        QCOMPARE(book::textAt(site[0].body, "rework"), std::string("dried back, 4 passes"));
        QVERIFY(clearByEye(sheet) && seatAtEightInches(sheet) && countReadout(sheet, book, "129.9", "14.4") && digNothingCoarse(sheet) && sheet.seal());
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Pass"));
    }

    void takesAimAtADrawnSite()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.beginAt(book.siteId(4));
        QCOMPARE(sheet.place()->purposeIndex(), 0);
        sheet.place()->typePlace();
        QCOMPARE(sheet.entry()->typedAt(0), QString("5520.0"));
        QCOMPARE(sheet.entry()->choice(), 0);
        QVERIFY(typeEntry(sheet, {"5521", "5"}));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QCOMPARE(sealedOf(book.session(), sheet.testId(), "test-site")[0].body.at("site").get<int>(), 4);
    }

    void locksLaterStepsUntilEarlierOnesAreSealed()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        sheet.pickStep(3);
        QCOMPARE(sheet.property("lock").toString(), QString("Seal: place first"));
        QVERIFY(!sheet.seal());
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0) == false);  // the count step is shown, not the place
        sheet.pickStep(0);
        QVERIFY(sheet.seal());
        sheet.pickStep(3);
        QCOMPARE(sheet.property("lock").toString(), QString("Seal: settle the hazards first"));
    }

    void judgesTheMapAgainstTheRuleInThreeAnswers()
    {
        SampleBook book({.trenchOffset = false, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        auto* face = hazard(sheet, view::Hazard::VerticalFace);
        QCOMPARE(face->property("word").toString(), QString("Too close"));
        QCOMPARE(face->property("known").toString(), QString("Drop inlet, from the map, ±1.2 in."));
        emit face->tapeWanted();
        QVERIFY(typeEntry(sheet, {"23"}));
        QCOMPARE(face->property("word").toString(), QString("Too close"));
        emit face->tapeWanted();
        QVERIFY(typeEntry(sheet, {"24"}));
        QCOMPARE(face->property("word").toString(), QString("Clear"));
        QVERIFY(face->isSettled());
    }

    void refusesATrenchCorrectionWithoutAnOffsetOfToday()
    {
        SampleBook book({.trenchOffset = false, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        auto* face = hazard(sheet, view::Hazard::VerticalFace);
        QCOMPARE(face->property("acts").toStringList(), QStringList({"Trench correction", "Move the test"}));
        face->act(0);
        QVERIFY(!face->isSettled());
        QVERIFY(face->property("remark").toString().startsWith("No trench offset of today"));
    }

    void correctsInATrenchWithCounts()
    {
        SampleBook book({.trenchOffset = true, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        hazard(sheet, view::Hazard::VerticalFace)->act(0);
        for (const auto which : {view::Hazard::People, view::Hazard::Vehicles, view::Hazard::OtherGauges})
            hazard(sheet, which)->act(0);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        const auto clearance = sealedOf(book.session(), sheet.testId(), "clearance");
        QCOMPARE(book::textAt(clearance[0].body.at("hazards")[0], "remedy"), std::string("trench correction"));
        QVERIFY(seatAtEightInches(sheet));
        sheet.countStep()->start();
        book.wait(60);
        sheet.countStep()->tick();
        sheet.countStep()->enterReading();
        // A = 12, B = 0.02, C = 0.05, standard 2800: 2360 counts are 129.90 lb/ft3; (190 - 20)/700 gives (0.24286 - 0.02)/0.0155 = 14.38.
        QVERIFY(typeEntry(sheet, {"2360", "190"}));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QVERIFY(digNothingCoarse(sheet));
        QCOMPARE(sheet.verdict()->property("wet").toString(), QString("129.9"));
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Pass"));
        QCOMPARE(sheet.verdict()->property("moisture").toString(), QString("12.4"));
    }

    void asksForCountsInATrench()
    {
        SampleBook book({.trenchOffset = true, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        hazard(sheet, view::Hazard::VerticalFace)->act(0);
        for (const auto which : {view::Hazard::People, view::Hazard::Vehicles, view::Hazard::OtherGauges})
            hazard(sheet, which)->act(0);
        QVERIFY(sheet.seal() && seatAtEightInches(sheet));
        QVERIFY(!countReadout(sheet, book, "129.9", "14.4"));
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: a trench correction needs counts"));
    }

    void makesAnOverriddenTestInformationOnly()
    {
        SampleBook book({.trenchOffset = false, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        auto* face = hazard(sheet, view::Hazard::VerticalFace);
        QVERIFY(face->canOverride());
        face->overrideWith("engineer asks for a look");
        QVERIFY(face->isSettled());
        for (const auto which : {view::Hazard::People, view::Hazard::Vehicles, view::Hazard::OtherGauges})
            hazard(sheet, which)->act(0);
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QVERIFY(seatAtEightInches(sheet) && countReadout(sheet, book, "129.9", "14.4") && digNothingCoarse(sheet));
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Information only"));
        QVERIFY(sheet.seal());
        QVERIFY(book.session().snapshot().tests.front().state == book::TestState::InformationOnly);
    }

    void movesTheTestByAmendingItsPlace()
    {
        SampleBook book({.trenchOffset = false, .wall = true, .standardCount = true});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1));
        hazard(sheet, view::Hazard::VerticalFace)->act(1);
        QCOMPARE(sheet.step(), 0);
        sheet.place()->typePlace();
        QVERIFY(typeEntry(sheet, {"5330", "14.2"}));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        const auto sites = sealedOf(book.session(), sheet.testId(), "test-site");
        QCOMPARE(sites.size(), std::size_t(2));
        QCOMPARE(sites[1].amends, sites[0].hash);
        QCOMPARE(sites[1].reason, std::string("moved: vertical face too close"));
        QCOMPARE(sheet.step(), 1);
        QCOMPARE(hazard(sheet, view::Hazard::VerticalFace)->property("word").toString(), QString("Clear"));
    }

    void refusesAShallowHole()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1) && clearByEye(sheet));
        sheet.seat()->pickSurface(1);
        sheet.seat()->pickRock(0);
        sheet.seat()->pickDepth(1);
        sheet.seat()->typeHole();
        QVERIFY(typeEntry(sheet, {"9"}));
        QVERIFY(!sheet.seal());
        QVERIFY(!sheet.seat()->property("holeTrouble").toString().isEmpty());
        QCOMPARE(sheet.trouble(), sheet.seat()->property("holeTrouble").toString());
        QCOMPARE(sheet.seat()->hole(), QString("9"));
        sheet.seat()->pickRock(1);
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: the gauge must not rock"));
    }

    void waitsForTheMinimumOfACountAndSurvivesAKill()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1) && clearByEye(sheet) && seatAtEightInches(sheet));
        const QString id = sheet.testId();
        sheet.countStep()->start();
        book.wait(37);
        sheet.countStep()->tick();
        QCOMPARE(sheet.countStep()->property("timerFigure").toString(), QString("0:23"));
        QCOMPARE(sheet.countStep()->property("enterNotYet").toString(), QString("Enter the reading in 0:23"));
        sheet.countStep()->enterReading();
        QVERIFY(sheet.entry() == nullptr);

        book.wait(10);
        auto again = book.reopened();
        TestSheet second;
        second.setSession(again.get());
        second.open(id);
        QCOMPARE(second.step(), 3);
        QCOMPARE(second.countStep()->stage(), view::CountStep::Running);
        QCOMPARE(second.countStep()->property("timerFigure").toString(), QString("0:13"));
    }

    void restoresTypedTextOfATestThatIsNotPlacedYet()
    {
        SampleBook book;
        QString id;
        {
            TestSheet sheet;
            sheet.setSession(&book.session());
            sheet.begin();
            id = sheet.testId();
            sheet.place()->typePlace();
            sheet.entry()->field(0)->type("5338");
            sheet.entry()->field(1)->type("1");
        }
        auto again = book.reopened();
        TestSheet second;
        second.setSession(again.get());
        second.begin();
        QCOMPARE(second.testId(), id);
        second.place()->typePlace();
        QCOMPARE(second.entry()->typedAt(0), QString("5338"));
        QCOMPARE(second.entry()->typedAt(1), QString("1"));
    }

    void questionsSwappedNumbers()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1) && clearByEye(sheet) && seatAtEightInches(sheet));
        QVERIFY(!countReadout(sheet, book, "14.4", "129.9"));
        QVERIFY(sheet.trouble().endsWith("Are the two numbers the wrong way round?"));
        QCOMPARE(sheet.countStep()->draft().value("first1").toString(), QString("14.4"));
        sheet.countStep()->enterReading();
        QVERIFY(typeEntry(sheet, {"180", "14.4"}) == true);
        sheet.countStep()->enterReading();
        QVERIFY(sheet.entry()->field(0)->doubt().contains("outside the calibrated range, 70 to 170"));
    }

    void comparesASecondReadingWhileItIsTyped()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0) && clearByEye(sheet) && seatAtEightInches(sheet));
        sheet.countStep()->start();
        book.wait(61);
        sheet.countStep()->pickForm(1);
        sheet.countStep()->enterReading();
        QVERIFY(typeEntry(sheet, {"129.9", "14.4"}));
        sheet.countStep()->secondAct(0);
        QCOMPARE(sheet.countStep()->stage(), view::CountStep::Ready);
        sheet.countStep()->start();
        book.wait(61);
        sheet.countStep()->enterReading();
        auto* entry = sheet.entry();
        entry->field(0)->type("129.6");
        entry->field(1)->type("14.4");
        // 0.3/129.9 = 0.23 %, 5 % allowed by the neutral rule set
        QCOMPARE(entry->note(), QString("0.2 % apart, 5.0 allowed"));
        QCOMPARE(entry->noteWord(), QString("use the mean"));
        entry->field(0)->type("139.6");
        QCOMPARE(entry->noteWord(), QString("another spot"));
        entry->done();
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: the readings are apart"));
        QCOMPARE(sheet.countStep()->property("secondActs").toStringList(), QStringList({"Count again", "A new spot"}));
        const QString old = sheet.testId();
        sheet.countStep()->secondAct(1);
        QVERIFY(sheet.testId() != old);
        QCOMPARE(sheet.step(), 0);
        QCOMPARE(sheet.place()->purposeIndex(), 0);
        QCOMPARE(sealedOf(book.session(), old, "reading").size(), std::size_t(2));
        QCOMPARE(sealedOf(book.session(), old, "void").size(), std::size_t(1));
        QCOMPARE(sheet.property("title").toString(), QString("Test 2"));
    }

    void isProvisionalUntilTheSampleComes()
    {
        SampleBook book;
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 1) && clearByEye(sheet) && seatAtEightInches(sheet) && countReadout(sheet, book, "129.9", "14.4"));
        sheet.dig()->pickSample(2);
        QVERIFY(sheet.seal());
        QCOMPARE(sheet.step(), 5);
        QCOMPARE(sheet.verdict()->property("word").toString(), QString("Provisional"));
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QVERIFY(book.session().snapshot().tests.front().state == book::TestState::Waiting);
        const QString id = sheet.testId();

        TestSheet later;
        later.setSession(&book.session());
        later.open(id);
        QCOMPARE(later.step(), 4);
        later.dig()->pickSample(1);
        later.dig()->pickSieve(1);
        later.dig()->typeMasses();
        later.entry()->field(0)->type("480");
        later.entry()->field(1)->type("3200");
        QVERIFY(later.entry()->field(1)->doubt().contains("wrong way round"));
        QVERIFY(typeEntry(later, {"3200", "480", "0"}));
        QVERIFY2(later.seal(), qPrintable(later.trouble()));
        const auto samples = sealedOf(book.session(), id, "sample");
        QCOMPARE(samples.size(), std::size_t(2));
        QCOMPARE(samples[1].amends, samples[0].hash);
        QVERIFY(later.verdict()->property("coarse").toString().startsWith("Maximum corrected for"));
        QVERIFY2(later.seal(), qPrintable(later.trouble()));
        const auto verdicts = sealedOf(book.session(), id, "verdict");
        QCOMPARE(verdicts.size(), std::size_t(2));
        QCOMPARE(verdicts[1].amends, verdicts[0].hash);
        QVERIFY(book.session().snapshot().tests.front().state != book::TestState::Waiting);
    }

    void asksForAReasonWhenTheGaugeIsNotReady()
    {
        SampleBook book({.trenchOffset = false, .wall = false, .standardCount = false});
        TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(!placeByTape(sheet, "5338.3", "14.2", 1));
        QCOMPARE(sheet.property("sealNotYet").toString(), QString("Seal: the gauge is not ready"));
        sheet.place()->giveGaugeReason("block left at the office");
        QVERIFY2(sheet.seal(), qPrintable(sheet.trouble()));
        QVERIFY(!book::textAt(sealedOf(book.session(), sheet.testId(), "test-site")[0].body, "gauge_override_reason").empty());
    }
};

QTEST_MAIN(TestSheetTest)
#include "test_sheet_test.moc"
