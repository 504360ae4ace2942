// From an empty field book to a drawn site on Day, by finger: job, line, material, lot, lift, draw. Nothing is asked of another program.
#include "app/kit_bench.h"
#include "app/sample_book.h"

#include "book/kinds.h"
#include "view/desk.h"
#include "view/lift_sheet.h"
#include "view/line_sheet.h"
#include "view/lot_sheet.h"

#include <QStandardPaths>

#include <algorithm>
#include <cmath>

using namespace groundcount;
using namespace groundcount::tests;

namespace {

/// Types into the open entry of a sheet and closes it.
void typeInto(view::KitForm& form, const QStringList& texts)
{
    QVERIFY(form.entry());
    for (int i = 0; i < texts.size(); ++i)
        form.entry()->field(i)->type(texts[i]);
    form.entry()->done();
}

QString said(const view::KitForm& form, const char* name)
{
    return form.property(name).toString();
}

}  // namespace

class BeginJobTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        if (!qEnvironmentVariable("GROUNDCOUNT_SHOTS").isEmpty())
            QDir().mkpath(qEnvironmentVariable("GROUNDCOUNT_SHOTS"));
    }

    void fromNothingToADrawnSite_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("360x640") << QSize(360, 640);
        QTest::newRow("412x915") << QSize(412, 915);
        QTest::newRow("1280x800") << QSize(1280, 800);
    }
    void fromNothingToADrawnSite()
    {
        QFETCH(QSize, size);
        QTemporaryDir folder;
        KitApp app(folder.filePath("own.fieldbook"));
        QVERIFY(app.start(size));
        QVERIFY(app.waitFor("kitAct"));
        QCOMPARE(app.textOf("kitAct"), QString("Begin a job"));
        app.picture("begin-day");
        QVERIFY(app.touch("kitAct"));
        beginJob(app);
        QVERIFY(app.touch("place_lots"));
        QVERIFY(app.touch("addLot"));
        QVERIFY(app.waitFor("lotPage"));
        app.picture("begin-lot-lacks");
        addLine(app);
        addMaterial(app);
        addLot(app);
        QVERIFY(app.waitFor("addLift"));
        QVERIFY(app.touch("addLift"));
        QVERIFY(app.touch("liftThickness"));
        QVERIFY(app.type({"8"}));
        app.picture("begin-lift");
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(book::textAt(app.newest("lift"), "thickness_in"), std::string("8"));
        QVERIFY(app.touch("drawLink"));
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(app.session().snapshot().sites.size(), std::size_t(4));
        QVERIFY(app.touch("place_day"));
        QVERIFY(app.waitFor("owedRows/row3"));
        QCOMPARE(app.textOf("kitAct"), QString("Add a gauge"));
        app.picture("begin-owed");
        // A killed program finds all of it again.
        app.kill();
        QVERIFY(app.start(size));
        QVERIFY(app.waitFor("owedRows/row3"));
    }

    void aLotThatCannotBeSaysWhy()
    {
        SampleBook book;
        view::LotSheet lot;
        lot.setSession(&book.session());
        QCOMPARE(lot.sealNotYet(), QString("Seal: type the lot's name"));
        lot.setName("N-4");
        QCOMPARE(lot.sealNotYet(), QString("Seal: the book has a lot N-4 already"));
        lot.setName("N-5");
        lot.typeStations();
        typeInto(lot, {"5600", "5200"});
        lot.typeSides();
        typeInto(lot, {"30", "30"});
        QVERIFY2(lot.sealNotYet().contains("5600") && lot.sealNotYet().contains("5200"), qPrintable(lot.sealNotYet()));
        lot.typeStations();
        typeInto(lot, {"5600", "9000"});  // the line ends at 62+00
        QVERIFY2(lot.sealNotYet().contains("90+00"), qPrintable(lot.sealNotYet()));
        lot.typeStations();
        typeInto(lot, {"5600", "6000"});
        lot.pickReference(0);
        lot.typeCompaction();
        typeInto(lot, {"950", ""});
        QCOMPARE(lot.sealNotYet(), QString("Percent compaction is 950; allowed: above 0 to 150"));
        lot.typeCompaction();
        typeInto(lot, {"95", "105"});
        lot.pickWindow(1);
        lot.typeDriest();
        lot.entry()->choose(1);
        typeInto(lot, {"3"});
        lot.typeWettest();
        typeInto(lot, {"2"});
        QCOMPARE(lot.sealNotYet(), QString("The window's wettest, 2, is not above its driest, 3"));
        lot.typeDriest();
        lot.entry()->choose(0);
        typeInto(lot, {"3"});
        lot.typeTests();
        typeInto(lot, {"2.5", ""});
        QCOMPARE(lot.sealNotYet(), QString("Tests per lift are 2.5; allowed: whole numbers from 1 to 1000"));
        lot.typeTests();
        typeInto(lot, {"3", ""});
        QCOMPARE(lot.sealNotYet(), QString());
        QVERIFY2(lot.seal(), qPrintable(lot.trouble()));
        const auto& row = book.session().snapshot().lots.back();
        QCOMPARE(row.name, std::string("N-5"));
        QCOMPARE(row.windowLowText + " " + row.windowHighText, std::string("-3 2"));
        QCOMPARE(row.sublots, 3);
    }

    void aSealedLotChangesWithAReason()
    {
        SampleBook book;
        view::LotSheet lot;
        lot.setSession(&book.session());
        lot.setSubject(QString::fromStdString(book.lot));
        QCOMPARE(said(lot, "driest") + ' ' + said(lot, "wettest"), QString(QChar(0x2212)) + "2 2");
        QCOMPARE(said(lot, "stations"), QString("50+00 to 56+00"));
        QCOMPARE(lot.sealNotYet(), QString("Nothing has changed"));
        lot.typeCompaction();
        typeInto(lot, {"98", ""});
        QCOMPARE(lot.sealNotYet(), QString("Seal: say why it changes"));
        lot.setWhy("addendum 2");
        QVERIFY2(lot.seal(), qPrintable(lot.trouble()));
        const auto& lots = book.session().snapshot().lots;
        QCOMPARE(lots.size(), std::size_t(1));
        QCOMPARE(lots.front().minimumPctText, std::string("98"));
        QCOMPARE(lots.front().windowLowText, std::string("-2"));
        QCOMPARE(lots.front().testsPerLift, 4);
        QCOMPARE(lot.sealNotYet(), QString("Nothing has changed"));
    }

    void whatALotLacksLeadsBackToIt()
    {
        SampleBook book;
        view::Desk desk(&book.session());
        desk.setPlace("lots");
        desk.setKit("lot");
        desk.setKit("line");
        desk.setKit("site-file");
        desk.setKit({});
        QCOMPARE(desk.kit(), QString("lot"));
        desk.setKit("person");  // chosen from the list beside it: nothing to come back to
        desk.setKit({});
        QCOMPARE(desk.kit(), QString());
        QCOMPARE(desk.place(), QString("lots"));
    }

    void aLineOfNoLengthIsRefused()
    {
        SampleBook book;
        view::LineSheet line;
        line.setSession(&book.session());
        line.setName("B");
        line.typeBegin();
        typeInto(line, {"1000"});
        line.typeFrom();
        typeInto(line, {"482000", "1204600"});
        line.typeTo();
        typeInto(line, {"482000.5", "1204600"});
        QVERIFY2(line.sealNotYet().contains("at least 1 ft apart; they lie 0.5000 ft apart"), qPrintable(line.sealNotYet()));
        line.typeTo();
        typeInto(line, {"482300", "1205000"});
        QVERIFY2(line.seal(), qPrintable(line.trouble()));
        const auto& lines = book.session().lines().all();
        QCOMPARE(lines.size(), std::size_t(2));
        const auto added = std::find_if(lines.begin(), lines.end(), [](const auto& one) { return one.name == "B"; });
        QVERIFY(added != lines.end());
        const auto end = added->line.at(1500, 0);  // 3-4-5: 300 north, 400 east
        QVERIFY(end && std::fabs(end->northFt - 482300) < 1e-3 && std::fabs(end->eastFt - 1205000) < 1e-3);
    }

    void aLiftIsAddedOnce()
    {
        SampleBook book;
        view::LiftSheet lift;
        lift.setSession(&book.session());
        lift.setSubject(QString::fromStdString(book.lot));
        QCOMPARE(lift.numberText(), QString("8"));
        lift.typeLift();
        typeInto(lift, {"7", "8"});
        QCOMPARE(lift.sealNotYet(), QString("Seal: the lot has a lift 7 already"));
        lift.typeLift();
        typeInto(lift, {"8", "200"});
        QCOMPARE(lift.sealNotYet(), QString("The thickness is 200 in.; allowed: above 0 to 60"));
        lift.typeLift();
        typeInto(lift, {"8", "8"});
        QVERIFY2(lift.seal(), qPrintable(lift.trouble()));
        QCOMPARE(lift.numberText(), QString("9"));
    }

private:
    static void beginJob(KitApp& app)
    {
        QVERIFY(app.waitFor("jobPage"));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Seal: type the job's name"));
        QVERIFY(app.write("jobName", "kettle road fill"));
        QVERIFY(app.write("jobPlace", "invented county"));
        QVERIFY(app.write("jobSystem_words", "nowhere at all"));
        QVERIFY(app.touch("jobSystem_find"));
        QVERIFY(app.waitFor("jobSystem_trouble"));
        QVERIFY(app.write("jobSystem_words", "arkansas north 2011 ftus"));
        QVERIFY(app.touch("jobSystem_find"));
        QVERIFY(app.touchRow("jobSystem_found", "NAD83(2011) / Arkansas North (ftUS)"));
        QVERIFY(app.write("jobPerson", "r example"));
        QVERIFY(app.touch("jobRole/choice_0"));
        app.picture("begin-job");
        QCOMPARE(app.textOf("kitSeal"), QString("Begin the job"));
        QVERIFY(app.touch("kitSeal"));
        QVERIFY(app.waitFor("kitAct"));
        const auto& job = app.session().job();
        QCOMPARE(job.name, std::string("kettle road fill"));
        QCOMPARE(job.epsg, 6411);
        QCOMPARE(job.gridUnit, std::string("ftUS"));
        QCOMPARE(app.session().person().name, std::string("r example"));
    }
    static void addLine(KitApp& app)
    {
        QVERIFY(app.touch("lotNeedsLine"));
        QVERIFY(app.waitFor("linePage"));
        QVERIFY(app.write("lineName", "line a"));
        QVERIFY(app.touch("lineBegin"));
        QVERIFY(app.type({"5000"}));
        QVERIFY(app.touch("lineFrom"));
        QVERIFY(app.type({"482000", "1204600"}));
        QVERIFY(app.touch("lineTo"));
        QVERIFY(app.type({"482600", "1204600"}));
        QCOMPARE(app.textOf("lineText"), QString("600.00 ft long, azimuth 0.0000° from grid north, to station 56+00.00"));
        app.picture("begin-line");
        QVERIFY(app.touch("kitSeal"));
        QVERIFY(app.waitFor("lotPage"));
        QVERIFY(!app.find("lotNeedsLine"));
    }
    static void addMaterial(KitApp& app)
    {
        QVERIFY(app.touch("lotNeedsReference"));
        QVERIFY(app.waitFor("materialPage"));
        QVERIFY(app.write("materialName", "silty clay"));
        QVERIFY(app.write("proctorName", "p-1"));
        QVERIFY(app.write("proctorStandard", "t 99"));
        QVERIFY(app.touch("peakBy/choice_3"));
        QVERIFY(app.touch("byHand"));
        QVERIFY(app.type({"118.6", "12.8"}));
        QVERIFY(app.touch("kitSeal"));
        QVERIFY(app.touch("back"));
        QVERIFY(app.waitFor("lotPage"));
        QVERIFY(!app.find("lotNeedsReference"));
    }
    static void addLot(KitApp& app)
    {
        QVERIFY(app.write("lotName", "k-1"));
        QVERIFY(app.touch("lotStations"));
        QVERIFY(app.type({"5000", "5400"}));
        QVERIFY(app.touch("lotSides"));
        QVERIFY(app.type({"30", "30"}));
        QVERIFY(app.touch("lotReference/choice_0"));
        QVERIFY(app.touch("lotCompaction"));
        QVERIFY(app.type({"95", ""}));
        QVERIFY(app.touch("lotWindowKind/choice_1"));
        QVERIFY(app.touch("lotDriest"));
        QVERIFY(app.type({"2"}));
        QVERIFY(app.touch("lotWettest"));
        QVERIFY(app.type({"2"}));
        QVERIFY(app.touch("lotTestsPerLift"));
        QVERIFY(app.type({"4", ""}));
        app.picture("begin-lot");
        QVERIFY(app.touch("kitSeal"));
        QCOMPARE(book::textAt(app.newest("lot").at("window"), "low"), std::string("-2"));
    }
};

QTEST_MAIN(BeginJobTest)
#include "begin_job_test.moc"
