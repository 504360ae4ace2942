// Kit by finger on the real app: every sheet is filled, sealed and read back from the book; a killed program loses nothing typed.
#include "app/kit_bench.h"

#include "book/kinds.h"
#include "view/kit_form.h"

#include <QStandardPaths>

using namespace groundcount;

class KitSheetsTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    int m_copies = 0;

    /// A fresh copy of the demo book.
    QString book()
    {
        const QString path = m_bench.path(QStringLiteral("kit-%1.fieldbook").arg(++m_copies));
        return QFile::copy(m_bench.path(QStringLiteral("day.fieldbook")), path) ? path : QString();
    }
    static std::string at(const book::Body& body, const char* key) { return book::textAt(body, key); }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        if (!qEnvironmentVariable("GROUNDCOUNT_SHOTS").isEmpty())
            QDir().mkpath(qEnvironmentVariable("GROUNDCOUNT_SHOTS"));
    }

    void theDaysButtonLeadsToTheCountsAndTheyOpenTheDay_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("360x640") << QSize(360, 640);
        QTest::newRow("1280x800") << QSize(1280, 800);
    }
    void theDaysButtonLeadsToTheCountsAndTheyOpenTheDay()
    {
        QFETCH(QSize, size);
        KitApp app(book());
        QVERIFY(app.start(size));
        QVERIFY(app.waitFor("kitAct"));
        QCOMPARE(app.textOf("kitAct"), QString("Take standard counts"));
        app.picture("day-missing");
        QVERIFY(app.touch("kitAct"));
        QVERIFY(app.waitFor("standardCountsPage"));
        QVERIFY(app.find("kitSealNotYet"));
        for (const char* check : {"check_warm", "check_block", "check_gauges", "check_around"})
            QVERIFY(app.touch(check));
        QVERIFY(app.touch("typeCounts"));
        // Accepted before: 2858, 2851, 2854, 2846 and 649, 652, 648, 648; their means 2852.25 and 649.25.
        QVERIFY(app.type({"2850", "650", "2853", "649", "2849", "651"}));
        app.picture("counts-typing");
        QVERIFY(app.type({"2852", "648"}));
        QCOMPARE(app.textOf("kitSeal"), QString("Seal the standard counts"));
        app.picture("counts-accepted");
        QVERIFY(app.touch("kitSeal"));
        const auto body = app.newest("standard-count");
        QCOMPARE(at(body, "density_count"), std::string("2851.0"));
        QCOMPARE(at(body, "moisture_count"), std::string("649.5"));
        QCOMPARE(body.at("accepted").get<bool>(), true);
        QCOMPARE(body.at("density_counts"), book::Body::array({"2850", "2853", "2849", "2852"}));
        QCOMPARE(body.at("density_before"), book::Body::array({"2846", "2854", "2851", "2858"}));
        QCOMPARE(at(body, "density_mean"), std::string("2852.25"));
        QCOMPARE(at(body, "density_deviation_pct"), std::string("-0.044"));  // 100 (2851.0 - 2852.25)/2852.25
        QCOMPARE(app.session().gaugeMissing(), QString());
        app.picture("counts-sealed");
        QVERIFY(app.touch("back"));
        QVERIFY(app.waitFor("kitList"));
        QVERIFY(app.touch("place_day"));
        QVERIFY(app.waitFor("startTest"));
    }

    void aRefusedSetSaysWhatToDoAndIsKept()
    {
        KitApp app(book());
        QVERIFY(app.start({412, 915}, "kit:counts"));
        QVERIFY(app.waitFor("standardCountsPage"));
        QVERIFY(!app.find("toStability"));
        for (int set = 0; set < 2; ++set) {
            for (const char* check : {"check_warm", "check_block", "check_gauges", "check_around"})
                QVERIFY(app.touch(check));
            QVERIFY(app.touch("countsHow/choice_1"));
            QVERIFY(app.touch("typeCounts"));
            QVERIFY(app.type({"2890", "649"}));  // 1.32 % above 2852.25
            QVERIFY(app.find("countsTodo/row2"));
            QCOMPARE(app.textOf("kitSeal"), QString("Seal the refused set"));
            if (set == 0)
                app.picture("counts-refused");
            QVERIFY(app.touch("kitSeal"));
            QCOMPARE(app.newest("standard-count").at("accepted").get<bool>(), false);
            app.session().setClock(app.session().now().addSecs(600).toOffsetFromUtc(-5 * 3600));
        }
        QVERIFY(app.find("toStability"));
        QCOMPARE(app.session().gaugeMissing(), QString("Standard counts not accepted"));
        // A person may answer for it, by name and reason.
        for (const char* check : {"check_warm", "check_block", "check_gauges", "check_around"})
            QVERIFY(app.touch(check));
        QVERIFY(app.touch("countsHow/choice_1"));
        QVERIFY(app.touch("typeCounts"));
        QVERIFY(app.type({"2890", "649"}));
        QVERIFY(app.write("countsReason", "agreed by m lindqvist"));
        QCOMPARE(app.textOf("kitSeal"), QString("Seal, used with a reason"));
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(at(app.newest("standard-count"), "override_reason"), std::string("agreed by m lindqvist"));
        QCOMPARE(app.session().gaugeMissing(), QString());
    }

    void aKilledProgramKeepsTheCountsTypedSoFar()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:counts"));
        QVERIFY(app.touch("check_warm"));
        QVERIFY(app.touch("typeCounts"));
        QVERIFY(app.type({"2850", "650"}));
        QVERIFY(app.keys("285"));
        app.kill();
        QVERIFY(app.start({360, 640}, "kit:counts"));
        QVERIFY(app.waitFor("standardCountsPage"));
        QCOMPARE(app.find("check_warm")->property("seen").toBool(), true);
        QCOMPARE(app.find("check_block")->property("seen").toBool(), false);
        QVERIFY(app.touch("typeCounts"));
        QVERIFY(app.waitFor("entryField_2"));
        QCOMPARE(app.textOf("entryField_0"), QString("2850"));
        QCOMPARE(app.textOf("entryField_1"), QString("650"));
        QCOMPARE(app.textOf("entryField_2"), QString("285"));
    }

    void custodyIsSealedWithWhereAndWhatWasSeen()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:custody"));
        QVERIFY(app.waitFor("custodyPage"));
        QVERIFY(app.touch("custodyEvent/choice_1"));
        QVERIFY(app.find("papersCaution"));
        QVERIFY(app.write("custodyPlace", "truck 3"));
        QVERIFY(app.touch("custodyBarriers/choice_1"));
        QVERIFY(app.find("barrierCaution"));
        QVERIFY(app.touch("custodyBarriers/choice_2"));
        QVERIFY(!app.find("barrierCaution"));
        QVERIFY(app.touch("check_badge"));
        QVERIFY(app.touch("check_papers"));
        QVERIFY(!app.find("papersCaution"));
        app.picture("custody");
        QVERIFY(app.touch("kitSeal"));
        const auto body = app.newest("custody");
        QCOMPARE(at(body, "event"), std::string("in transit"));
        QCOMPARE(at(body, "place"), std::string("truck 3"));
        QCOMPARE(body.at("barriers").get<int>(), 2);
        QVERIFY(body.at("badge").get<bool>() && body.at("papers").get<bool>());
        QCOMPARE(app.session().gauge()->custodyEvent, std::string("in transit"));
        QVERIFY(app.find("kitSealNotYet"));  // nothing left to seal
    }

    void aGaugeComesWithCurvesFromCsvAndItsLeakTest()
    {
        const QString csv = m_bench.write(QStringLiteral("curves.csv"),
                                          "depth_in,a,b_per_lb_ft3,c,e,slope_per_lb_ft3\n"
                                          "0,1.9000,0.00850,0.1000,0.0120,0.02620\n"
                                          "8,7.9000,0.01820,-0.0500,,\n");
        KitApp app(book());
        QVERIFY(app.start({412, 915}, "kit:gauge"));
        QVERIFY(app.waitFor("gaugePapersPage"));
        QVERIFY(app.write("gaugeName", "gauge 12"));
        QVERIFY(app.write("gaugeSerial", "00412"));
        QVERIFY(app.touch("gaugePrescale"));
        QVERIFY(app.type({"16"}));
        QVERIFY(app.touch("lookForFiles"));
        QVERIFY(app.write("csvPath", csv));
        QVERIFY(app.touch("importPath"));
        QVERIFY2(app.textOf("importText").startsWith("2 depths"), qPrintable(app.textOf("importText")));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Seal: the calibration needs its date"));
        QVERIFY(app.touch("calibratedOn"));
        QVERIFY(app.touch("keypadNext") && app.touch("keypadNext") && app.touch("keypadNext"));  // today is offered
        QVERIFY(app.touch("leakTestedOn"));
        QVERIFY(app.touch("keypadNext") && app.touch("keypadNext") && app.touch("keypadNext"));
        QVERIFY(app.touch("leakResult/choice_0"));
        app.picture("gauge");
        QVERIFY(app.touch("kitSeal"));
        const auto gauge = app.newest("gauge");
        QCOMPARE(at(gauge, "serial"), std::string("00412"));
        QCOMPARE(at(gauge, "prescale"), std::string("16"));
        const auto calibration = app.newest("calibration");
        QCOMPARE(at(calibration, "on"), std::string("2026-06-10"));
        QCOMPARE(calibration.at("curves").size(), std::size_t{2});
        QCOMPARE(at(calibration.at("curves")[0], "mode"), std::string("backscatter"));
        QCOMPARE(at(calibration.at("curves")[1], "c"), std::string("-0.0500"));
        QCOMPARE(at(calibration.at("water"), "slope_per_lb_ft3"), std::string("0.02620"));
        QCOMPARE(at(app.newest("leak-test"), "result"), std::string("no leak"));
        QCOMPARE(app.session().snapshot().gauges.size(), std::size_t{2});
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Nothing has changed"));
    }

    void aMaterialIsSealedWithThePeakOfItsPoints()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:material"));
        QVERIFY(app.waitFor("materialPage"));
        QVERIFY(app.touch("typePoints"));
        // The demo's own five points: three points give 118.6 at 12.8, as on its sealed sheet.
        QVERIFY(app.type({"9.2", "112.3", "11.1", "116.7", "12.7", "118.6", "14.5", "116.8", "16.3", "112.9"}));
        QVERIFY(app.waitFor("proctorChart"));
        QCOMPARE(app.find("maximum")->property("figure").toString(), QString("118.6"));
        QCOMPARE(app.find("optimum")->property("figure").toString(), QString("12.8"));
        QVERIFY(app.touch("solidsGravity"));
        QVERIFY(app.type({"2.68"}));
        QVERIFY2(app.textOf("saturation").contains("saturated at the peak"), qPrintable(app.textOf("saturation")));
        QVERIFY(app.touch("coarse"));
        QVERIFY(app.type({"2.62", "1.5"}));
        QVERIFY(app.touch("materialChoice/choice_1"));
        QVERIFY(app.write("materialName", "fill b"));
        QVERIFY(app.write("proctorName", "p-13"));
        QVERIFY(app.write("proctorStandard", "t 99"));
        app.picture("material");
        QVERIFY2(app.find("kitSeal"), qPrintable(app.textOf("kitSealNotYet")));
        QVERIFY(app.touch("kitSeal"));
        const auto body = app.newest("proctor");
        QCOMPARE(at(body, "max_dry_density_lb_ft3"), std::string("118.6"));
        QCOMPARE(at(body, "optimum_pct"), std::string("12.8"));
        QCOMPARE(at(body, "peak_by"), std::string("three points"));
        QCOMPARE(at(body, "coarse_gravity"), std::string("2.62"));
        QCOMPARE(body.at("points").size(), std::size_t{5});
        QCOMPARE(at(app.newest("material"), "name"), std::string("fill b"));
        // By hand it is amended, and only with a reason.
        QVERIFY(app.touch("peakBy/choice_3"));
        QVERIFY(app.touch("byHand"));
        QVERIFY(app.touch("key_backspace") && app.touch("key_backspace"));
        QVERIFY(app.keys(".9") && app.touch("keypadNext") && app.touch("keypadNext"));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Seal: say why it is amended"));
        QVERIFY(app.write("proctorWhy", "drawn anew"));
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(at(app.newest("proctor"), "max_dry_density_lb_ft3"), std::string("118.9"));
        QCOMPARE(app.session().snapshot().proctors.size(), std::size_t{2});
    }

    void aCopyOfTheRulesShowsWhatDiffersAndComesIntoForce()
    {
        KitApp app(book());
        QVERIFY(app.start({412, 915}, "kit:rules"));
        QVERIFY(app.waitFor("rulesPage"));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Touch a limit to change it in a copy"));
        QVERIFY(app.touch("ruleLimits/row1"));  // gauge to any person
        QVERIFY(app.type({"20"}));
        QVERIFY(app.find("differences/row0"));
        QCOMPARE(app.find("differences/row0")->property("second").toString(), QString("was 15 ft"));
        QVERIFY(app.write("copyName", "county fill"));
        QVERIFY(app.write("copyRevision", "3"));
        QVERIFY(app.write("copySource", "letter of june 10"));
        QVERIFY(app.touch("copyMark/choice_0"));
        app.picture("rules");
        const auto before = app.session().job().ruleSet;
        QVERIFY(app.touch("kitSeal"));
        QVERIFY(app.session().job().ruleSet != before);
        const auto& limit = app.session().ruleSet().limits.find("clearance.people")->second;
        QCOMPARE(limit.value.text(), std::string("20"));
        QCOMPARE(limit.source, std::string("letter of june 10"));
        QCOMPARE(limit.note, std::string("was 15 ft (COMMON)"));
        QCOMPARE(app.session().ruleSet().revision, std::string("3"));
        QVERIFY(!app.find("differences/row0"));
    }

    void aTrenchOffsetHasItsTwoCountsAndAsksAboutALargeOne()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:offset"));
        QVERIFY(app.waitFor("offsetPage"));
        QVERIFY(app.touch("offsetKind/choice_0"));
        QVERIFY(app.touch("typeEvidence"));
        QVERIFY(app.keys("840") && app.touch("keypadNext"));
        QVERIFY(app.keys("650") && app.touch("keypadNext"));
        QVERIFY(app.touch("keypadNext") && app.touch("keypadNext"));
        QVERIFY(app.waitFor("offsetDoubt"));  // 29 % of the standard count, 20 % is the rule's warning
        QVERIFY(app.touch("typeEvidence"));
        QVERIFY(app.touch("key_backspace") && app.touch("key_backspace") && app.touch("key_backspace"));
        QVERIFY(app.keys("671") && app.touch("keypadNext") && app.touch("keypadNext") && app.touch("keypadNext") && app.touch("keypadNext"));
        QVERIFY(!app.find("offsetDoubt"));
        QCOMPARE(app.find("offsetFigure")->property("figure").toString(), QString("+21"));
        QVERIFY(app.write("offsetPlace", "culvert at 47+26"));
        app.picture("offset");
        QVERIFY(app.touch("kitSeal"));
        const auto body = app.newest("offset");
        QCOMPARE(at(body, "moisture_standard_in_trench"), std::string("671"));
        QCOMPARE(at(body, "moisture_standard_outside"), std::string("650"));
        QCOMPARE(at(body, "expires"), std::string("2026-06-10"));
    }

    void aTestTooCloseToAWallLeadsToTheTrenchOffsetAndBack()
    {
        KitApp app(book());
        // On the demo day itself, when the counts are accepted.
        QVERIFY(app.start({360, 640}, "new", "2026-06-09T14:12:00-05:00"));
        QVERIFY(app.touch("typePlace"));
        QVERIFY(app.type({"4726.1"}));
        QVERIFY(app.touch("entryChoice/choice_0"));  // left, 27 ft: the headwall's edge is at 27.8 ft
        QVERIFY(app.type({"27"}));
        QVERIFY(app.touch("purpose/choice_1"));
        QVERIFY2(app.touch("seal"), qPrintable(app.textOf("sealNotYet")));
        QVERIFY(app.waitFor("act_face_0"));
        app.picture("too-close");
        QCOMPARE(app.textOf("act_face_0"), QString("Trench correction"));
        QVERIFY(app.touch("act_face_0"));
        QVERIFY(app.touch("toOffset_face"));
        QVERIFY(app.waitFor("offsetPage"));
        QVERIFY(!app.find("testPage"));
        QVERIFY(app.touch("offsetKind/choice_0"));
        QVERIFY(app.touch("typeEvidence"));
        QVERIFY(app.type({"671"}));
        for (int i = 0; i < 3; ++i)
            QVERIFY(app.touch("keypadNext"));  // outside: today's standard counts are offered
        QVERIFY(app.write("offsetPlace", "headwall"));
        QVERIFY2(app.touch("kitSeal"), qPrintable(app.textOf("kitSealNotYet")));
        QVERIFY(app.touch("back"));
        QVERIFY(app.waitFor("testPage"));
        QVERIFY(!app.find("toOffset_face"));
        QCOMPARE(app.find("hazardRow_face")->property("settled").toBool(), true);
    }

    void aMoistureOffsetComesFromSamples()
    {
        KitApp app(book());
        QVERIFY(app.start({412, 915}, "kit:offset"));
        QVERIFY(app.touch("offsetKind/choice_1"));
        QVERIFY(app.touch("offsetVariant/choice_3"));
        QVERIFY(app.touch("typeEvidence"));
        // Gauge 100 x 12/(112 - 12) = 12 %, dried 11, 10.5 and 11.5: dw = -1.00 points.
        QVERIFY(app.type({"11", "112", "12", "10.5", "112", "12", "11.5", "112", "12"}));
        QCOMPARE(app.find("offsetFigure")->property("figure").toString(), QStringLiteral("\u22121.00"));
        QVERIFY(app.write("offsetPlace", "borrow pit 2"));
        QVERIFY(app.touch("kitSeal"));
        const auto body = app.newest("offset");
        QCOMPARE(at(body, "variant"), std::string("percent offset"));
        QCOMPARE(at(body, "factor"), std::string("-1.00"));
        QCOMPARE(body.at("evidence").size(), std::size_t{3});
    }

    void aPersonIsSealedAndALateCertificateShows()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:person"));
        QVERIFY(app.waitFor("personPage"));
        QVERIFY(app.write("personName", "t example"));
        QVERIFY(app.touch("personRole/choice_0"));
        QVERIFY(app.write("personCertificate", "invented 7"));
        QVERIFY(app.touch("personExpires"));
        for (int i = 0; i < 4; ++i)
            QVERIFY(app.touch("key_backspace"));
        QVERIFY(app.type({"2025"}));
        QVERIFY(app.touch("keypadNext") && app.touch("keypadNext"));
        QVERIFY(app.waitFor("certificateCaution"));
        app.picture("person");
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(app.session().snapshot().people.size(), std::size_t{3});
        QCOMPARE(at(app.newest("person"), "certificate_expires"), std::string("2025-06-10"));
    }

    void whoIsAtWorkSignsAndIsRememberedOnThisDevice()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}));
        QCOMPARE(app.session().person().name, std::string("R. Okafor"));
        QVERIFY(app.touch("place_kit"));
        QVERIFY(app.touchRow("kitPeople", "M. Lindqvist"));
        QVERIFY(app.touch("takeOver"));
        QVERIFY(app.waitFor("atWork"));
        QVERIFY(!app.find("takeOver"));
        QCOMPARE(app.session().person().name, std::string("M. Lindqvist"));
        app.picture("person-at-work");
        app.kill();
        QVERIFY(app.start({360, 640}, "kit:custody"));
        QCOMPARE(app.session().person().name, std::string("M. Lindqvist"));
        QVERIFY(app.touch("custodyEvent/choice_2") && app.write("custodyPlace", "north approach") && app.touch("custodyBarriers/choice_2") && app.touch("kitSeal"));
        const auto records = app.session().store().records({.subject = {}, .kind = "custody"});
        QVERIFY(records && records->back().by == app.session().person().id);
    }

    void aStabilityTestNeedsThePrescaleAndThenJudgesTheScatter()
    {
        KitApp app(book());
        QVERIFY(app.start({360, 640}, "kit:stability"));
        QVERIFY(app.waitFor("stabilityPage"));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Seal: type the gauge's prescale in its papers first"));
    }
};

QTEST_MAIN(KitSheetsTest)
#include "kit_sheets_test.moc"
