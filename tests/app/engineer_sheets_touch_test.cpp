// Statistics, random sites, profile, tests by filter and coverage in the whole app: by finger and by mouse.
#include "app/command_bench.h"
#include "app/kit_bench.h"
#include "app/running_app.h"
#include "app/text_faults.h"
#include "view/desk.h"

#include <QDesktopServices>
#include <QFile>
#include <QStandardPaths>

/// In place of the system's viewer.
class Viewer : public QObject {
    Q_OBJECT

public:
    QList<QUrl> opened;

public slots:
    void open(const QUrl& url) { opened << url; }
};

class EngineerSheetsTouchTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    using Hand = RunningApp::Hand;

    groundcount::ui::StartOptions options(const QString& book, QSize size, const QString& open) const
    {
        groundcount::ui::StartOptions o;
        o.book = book;
        o.size = size;
        o.open = open;
        o.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
        return o;
    }

    QString freshDay() const
    {
        const QString name = QString::fromLatin1(QTest::currentTestFunction()) + QString::fromLatin1(QTest::currentDataTag()).remove(' ') + ".fieldbook";
        QFile::copy(m_bench.path("day.fieldbook"), m_bench.path(name));
        return m_bench.path(name);
    }

    static void hands()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("hand");
        QTest::newRow("finger 412x915") << QSize(412, 915) << static_cast<int>(Hand::Finger);
        QTest::newRow("mouse 1280x800") << QSize(1280, 800) << static_cast<int>(Hand::Mouse);
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
    }

    void figuresAreThoseOfGroundbookAndUnfold_data() { hands(); }
    void figuresAreThoseOfGroundbookAndUnfold()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const auto lots = Bench::object(m_bench.run({"lots", m_bench.path("day.fieldbook"), "--lot", "N-3", "--json"}).out)["lots"_k].toArray();
        const double mean = lots.first().toObject()["mean"_k].toDouble();
        QVERIFY(mean > 90);
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), size, "lot:N-3")));
        QVERIFY(app.waitFor("figuresLink"));
        QVERIFY(app.press("figuresLink", with));
        QVERIFY(app.waitFor("figuresPage"));
        QVERIFY(app.find("lotChart"));
        const QString shown = app.find("fold_0")->property("figure").toString();
        QVERIFY2(qAbs(shown.toDouble() - mean) <= 0.005000001 && shown.size() == 5, qPrintable(shown));
        QVERIFY(!app.find("figureArithmetic"));
        QVERIFY(app.press("figure_0", with));
        QVERIFY(app.waitFor("figureArithmetic"));
        QVERIFY(app.press("figure_0", with));
        QVERIFY(QTest::qWaitFor([&] { return !app.find("figureArithmetic"); }, 2000));
        QVERIFY(app.press("choice_1", with));  // moisture
        QCOMPARE(app.find("plotNames")->property("chosen").toInt(), 1);
    }

    void drawnSitesAreSealedAndOwedOnDay_data() { hands(); }
    void drawnSitesAreSealedAndOwedOnDay()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay();
        QString seed;
        {
            RunningApp app;
            QVERIFY(app.start(options(book, size, "lot:N-3")));
            QVERIFY(app.waitFor("drawLink"));
            QVERIFY(app.press("drawLink", with));
            QVERIFY(app.waitFor("drawPage"));
            seed = app.find("drawSeed")->property("value").toString();
            QCOMPARE(seed.size(), 9);
            // off each edge 3 ft, typed on the keypad
            QVERIFY(app.press("drawEdge", with));
            QVERIFY(app.waitFor("entryPane"));
            QVERIFY(app.press("key_3", with));
            QVERIFY(app.press("keypadNext", with));
            QVERIFY(QTest::qWaitFor([&] { return !app.find("entryPane"); }, 3000));
            QVERIFY(app.find("drawEdge")->property("value").toString().endsWith('3'));
            QVERIFY(app.press("kitSeal", with));
            QVERIFY(app.waitForText("drawnText", "drawn already"));
            QVERIFY(app.find("drawSeed")->property("value").toString() != seed);  // the next draw has a seed of its own
        }
        const auto shown = m_bench.run({"draw", book, "--lot", "N-3", "--lift", "8", "--edge", "3", "--seed", seed, "--json"});
        QCOMPARE(shown.code, 0);
        const auto sites = Bench::object(shown.out)["sites"_k].toArray();
        QCOMPARE(sites.size(), 4);
        RunningApp day;
        QVERIFY(day.start(options(book, size, {})));
        QVERIFY(day.waitFor("dayPage"));
        const QString station = QString::number(qRound(sites.first().toObject()["station"_k].toString().toDouble()));
        const QString shownStation = station.left(2) + '+' + station.mid(2, 2);
        bool found = false;
        for (QQuickItem* item : gallery::items(day.window()->contentItem()))
            found = found || item->property("lead").toString() == shownStation;
        QVERIFY2(found, qPrintable(shownStation));
        QVERIFY(m_bench.run({"check", book}).code == 0);
    }

    void testsAreFoundByStateAndGauge_data() { hands(); }
    void testsAreFoundByStateAndGauge()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        RunningApp app;
        auto o = options(m_bench.path("day.fieldbook"), size, {});
        o.place = QStringLiteral("lots");
        QVERIFY(app.start(o));
        QVERIFY(app.waitFor("allTestsLink"));
        QVERIFY(app.press("allTestsLink", with));
        QVERIFY(app.waitFor("testsPage"));
        const int all = app.find("testList")->property("count").toInt();
        QVERIFY(all >= 14);
        QVERIFY(app.press("filterLink", with));
        QVERIFY(app.waitFor("byState"));
        // the words come in the order of the states' names; the failing ones are found among them
        QQuickItem* bar = app.find("byState_choice");
        QQuickItem* fail = nullptr;
        for (QQuickItem* item : gallery::items(bar))
            if (item->property("modelData").toString() == QStringLiteral("Fail"))
                fail = item;
        QVERIFY(fail);
        fail->setObjectName("failChoice");
        QVERIFY(app.press("failChoice", with));
        const int failed = app.find("testList")->property("count").toInt();
        QVERIFY2(failed >= 1 && failed < all, qPrintable(QString::number(failed)));
        QVERIFY(app.textOf("filterLink").startsWith("Fail"));
        QVERIFY(app.press("test_0", with));
        QVERIFY(app.waitFor("testPage"));
    }

    void theKeyboardWalksTheTests()
    {
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), {1280, 800}, "lot:N-3/tests")));
        QVERIFY(app.waitFor("testList"));
        app.find("testList")->forceActiveFocus();
        app.key(Qt::Key_Down);
        app.key(Qt::Key_Down);
        QCOMPARE(app.find("testList")->property("currentIndex").toInt(), 2);
        app.key(Qt::Key_Return);
        QVERIFY(app.waitFor("testPage"));
    }

    void theProfileShowsEachLift()
    {
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), {412, 915}, "lot:N-3/profile")));
        QVERIFY(app.waitFor("profile"));
        QCOMPARE(app.find("profileLifts")->property("rows").value<QObject*>()->property("count").toInt(), 2);
        QVERIFY(app.find("profile")->property("visible").toBool());
    }

    void theMapShowsCoverageWithItsFigures_data() { hands(); }
    void theMapShowsCoverageWithItsFigures()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const auto told = QJsonDocument::fromJson(m_bench.run({"coverage", m_bench.path("day.fieldbook"), "--lot", "N-4", "--lift", "7", "--json"}).out).array().first().toObject();
        const QString untested = QString::number(100 * told["untested_m2"_k].toDouble() / told["ground_m2"_k].toDouble(), 'f', 0);
        RunningApp app;
        auto o = options(m_bench.path("day.fieldbook"), size, {});
        o.place = QStringLiteral("map");
        QVERIFY(app.start(o));
        QVERIFY(app.waitFor("coverageButton"));
        QVERIFY(!app.find("coverageCard"));
        QVERIFY(app.press("coverageButton", with));
        QVERIFY(app.waitFor("coverageCard"));
        // It is worked out beside the pages and appears when it is ready.
        const auto isShown = [&] {
            for (QQuickItem* item : gallery::items(app.find("coverageRows")))
                if (item->property("title").toString().startsWith("Lot N-4") && item->property("figure").toString() == untested)
                    return true;
            return false;
        };
        QVERIFY2(QTest::qWaitFor(isShown, 10000), qPrintable(untested));
        QVERIFY(app.press("coverageButton", with));
        QVERIFY(QTest::qWaitFor([&] { return !app.find("coverageCard"); }, 2000));
    }

    /// Whatever lies under the map, its controls lie beside each other and wholly on it, and no word of the page is cut.
    void theMapsControlsLieApart_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<QByteArray>("text");
        for (const QSize size : {QSize(360, 640), QSize(412, 915), QSize(1280, 800)})
            for (const QByteArray text : {"100", "150"})
                QTest::addRow("%dx%d %s", size.width(), size.height(), text.constData()) << size << text;
    }
    void theMapsControlsLieApart()
    {
        QFETCH(QSize, size);
        QFETCH(QByteArray, text);
        KitApp app(freshDay());
        QVERIFY(app.start(size, QStringLiteral("coverage"), "2026-06-09T14:12:00-05:00"));
        app.engine().singletonInstance<groundcount::view::Desk*>(qmlTypeId("Groundcount", 1, 0, "Desk"))->screen()->showText(text);
        const auto apart = [&app] {
            const auto boxOf = [&app](const char* name) { return app.find(name)->mapRectToScene(QRectF(0, 0, app.find(name)->width(), app.find(name)->height())); };
            const QRectF map = boxOf("groundMap"), picker = boxOf("liftPicker"), buttons = boxOf("mapButtons");
            return map.contains(picker) && map.contains(buttons) && !picker.intersects(buttons);
        };
        QVERIFY(app.waitFor("coverageCard") && app.waitStill("locateButton"));
        app.picture("coverage");
        QVERIFY(apart());
        QVERIFY(app.touch("legendButton") && app.waitFor("legendSiteFile") && app.waitStill("locateButton"));
        app.picture("legend");
        QVERIFY(apart());
        const QStringList faults = text_faults::faultsOf(app.window(), app.find("mapPage"));
        QVERIFY2(faults.isEmpty(), qPrintable(faults.join('\n')));
        QVERIFY(app.touch("legendClose") && app.waitFor("coverageCard"));
        QVERIFY(app.touch("coverageButton") && app.waitStill("locateButton"));
        QVERIFY(!app.find("coverageCard"));
        QVERIFY(apart());
        // A place that is held (map_touch_test holds it by finger).
        QVERIFY(QMetaObject::invokeMethod(app.find("groundMap"), "heldAt", Q_ARG(double, 0), Q_ARG(double, 0)));
        QVERIFY(app.waitFor("heldCard") && app.waitStill("locateButton"));
        app.picture("held");
        QVERIFY(apart());
    }

    void aLotsSheetsAreSeenBeforeTheyAreSaved_data() { hands(); }
    void aLotsSheetsAreSeenBeforeTheyAreSaved()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), size, "lot:N-4")));
        QVERIFY(app.waitFor("lotSheetLink"));
        QVERIFY(app.press("lotSheetLink", with));
        QVERIFY(app.waitFor("paperPage_0"));
        QCOMPARE(app.find("paperHead")->property("title").toString(), QString("Lot N-4"));
        const double whole = app.find("paperPage_0")->width();
        app.key(Qt::Key_Plus, Qt::KeypadModifier);
        QVERIFY(app.find("paperPage_0")->width() > 1.5 * whole);
        QTest::qWait(200);  // the scroll bar learns of the new height with the next frame
        const QQuickItem* scroll = app.find("paperScroll");
        QCOMPARE(scroll->property("contentY").toDouble(), 0.0);
        app.key(Qt::Key_Down);
        QTRY_VERIFY(scroll->property("contentY").toDouble() > 0);
        const double line = scroll->property("contentY").toDouble();
        app.key(Qt::Key_PageDown);
        QTRY_VERIFY(scroll->property("contentY").toDouble() > line + 100);
        QTRY_VERIFY(!scroll->property("moving").toBool());
        app.key(Qt::Key_Home);
        QTRY_COMPARE(scroll->property("contentY").toDouble(), 0.0);
        app.key(Qt::Key_Escape);
        QVERIFY(QTest::qWaitFor([&] { return !app.find("paperPage"); }, 2000));
        QVERIFY(app.press("reviewSheetLink", with));
        QVERIFY(app.waitFor("paperPage_0"));
        QCOMPARE(app.find("paperHead")->property("title").toString(), QString("Review of lot N-4"));
        QVERIFY(app.press("back", with));
        QVERIFY(QTest::qWaitFor([&] { return !app.find("paperPage"); }, 2000));
        QQuickItem* custody = gallery::byName(app.find("custodySheets"), QStringLiteral("row0"));
        QVERIFY(custody);
        QVERIFY(app.press(custody, with));
        QVERIFY(app.waitFor("paperPage_0"));
        QVERIFY(app.find("paperHead")->property("title").toString().startsWith("Gauge custody"));
    }

    void aSheetGoesToTheViewerThatPrintsIt()
    {
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), {1280, 800}, "paper:review:N-4")));
        QVERIFY(app.waitFor("paperPage_0"));
        Viewer viewer;
        QDesktopServices::setUrlHandler(QStringLiteral("file"), &viewer, "open");
        app.key(Qt::Key_P, Qt::ControlModifier);
        QTRY_COMPARE(viewer.opened.size(), 1);
        QFile file(viewer.opened.first().toLocalFile());
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.read(5) == "%PDF-" && file.fileName().endsWith("review-of-lot-n-4.pdf"));
        QCOMPARE(app.textOf("paperTrouble"), QString());
        QVERIFY(app.press("paperPrint", Hand::Mouse));
        QTRY_COMPARE(viewer.opened.size(), 2);
        QDesktopServices::unsetUrlHandler(QStringLiteral("file"));
        QVERIFY(app.press("paperPrint", Hand::Mouse));
        QVERIFY(app.waitForText("paperTrouble", "No program of this device shows a PDF"));
    }

    void wideTheChosenTestStandsBesideTheMap()
    {
        RunningApp app;
        auto o = options(m_bench.path("day.fieldbook"), {1280, 800}, {});
        o.place = QStringLiteral("map");
        QVERIFY(app.start(o));
        QVERIFY(app.waitFor("mapList"));
        QQuickItem* row = gallery::byName(app.find("mapList"), QStringLiteral("row0"));
        QVERIFY(row);
        row->setObjectName("firstTest");
        QVERIFY(app.press("firstTest", Hand::Mouse));
        QVERIFY(app.waitFor("mapDetail"));
        const double listEnd = app.find("mapList")->mapToScene(QPointF(app.find("mapList")->width(), 0)).x();
        const QQuickItem* map = app.find("groundMap");
        const double mapEnd = map->mapToScene(QPointF(map->width(), 0)).x();
        QVERIFY(map->mapToScene(QPointF()).x() >= listEnd);
        QVERIFY(app.find("mapDetail")->mapToScene(QPointF()).x() >= mapEnd - 1);
        QVERIFY(map->width() > 300);
        QVERIFY(app.press("detailRecord", Hand::Mouse));
        QVERIFY(app.waitFor("recordPage"));
    }
};

QTEST_MAIN(EngineerSheetsTouchTest)
#include "engineer_sheets_touch_test.moc"
