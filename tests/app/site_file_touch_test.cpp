// The page "Site file" in the whole app, by finger and by mouse: what was found, what is asked, what is sealed.
#include "app/running_app.h"
#include "app/site_sample.h"
#include "book/state_query.h"
#include "book/store.h"
#include "map/map_item.h"
#include "view/map_content.h"
#include "view/beside_work.h"

#include <QStandardPaths>
#include <QtMath>

#include <algorithm>
#include <cmath>

using namespace groundcount;

class SiteFileTouchTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    using Hand = RunningApp::Hand;

    ui::StartOptions options(const QString& book, QSize size) const
    {
        ui::StartOptions o;
        o.book = book;
        o.size = size;
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
    static QQuickItem* in(const RunningApp& app, const char* parent, const char* name)
    {
        QQuickItem* item = app.find(parent);
        return item ? gallery::byName(item, QString::fromLatin1(name)) : nullptr;
    }
    static bool typeInto(const RunningApp& app, const char* field, const QString& text, Hand with)
    {
        if (!app.press(field, with))
            return false;
        app.key(Qt::Key_A, Qt::ControlModifier);
        app.type(text);
        return app.find(field)->property("text").toString() == text;
    }
    static bool is(const RunningApp& app, const char* row, const char* kind, Hand with)
    {
        return app.press(in(app, "siteLayers", row), with) && app.press(in(app, "siteKind", kind), with);
    }
    static std::vector<book::ObstacleRow> obstacles(const QString& file)
    {
        const auto store = book::Store::open(file.toStdString(), book::OpenMode::ReadOnly);
        return store ? book::StateQuery(*store).obstacles().value_or(std::vector<book::ObstacleRow>()) : std::vector<book::ObstacleRow>();
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        view::setForeignReader(Bench::program().toStdString());
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
    }

    void takesLotsPipesAndStructuresOver_data() { hands(); }
    void takesLotsPipesAndStructuresOver()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay();
        const auto before = obstacles(book).size();
        {
            RunningApp app;
            auto o = options(book, size);
            o.place = QStringLiteral("lots");
            QVERIFY(app.start(o));
            QVERIFY(app.waitFor("lotsSiteFileLink") && app.press("lotsSiteFileLink", with));
            QVERIFY(app.waitFor("siteFilePage"));
            QCOMPARE(app.textOf("kitSealNotYet"), QString("Choose a file first"));
            QVERIFY(typeInto(app, "sitePath_input", site_sample::plans(m_bench), with));
            QVERIFY(app.press("siteRead", with));
            QVERIFY(QTest::qWaitFor([&] { return in(app, "siteLayers", "row2") != nullptr; }, 20000));
            QCOMPARE(in(app, "siteFound", "row0")->property("word").toString(), QString("GeoJSON"));
            QVERIFY(!app.find("siteFileQuestions"));  // RFC 7946 says the system
            QCOMPARE(in(app, "siteLayers", "row0")->property("second").toString(), QString("2 areas: B-1, B-2"));
            QCOMPARE(app.textOf("kitSealNotYet"), QString("Say what a layer is first"));
            QVERIFY(is(app, "row0", "choice_1", with));  // lots
            QVERIFY(is(app, "row1", "choice_3", with));  // pipe
            QVERIFY(is(app, "row2", "choice_3", with));  // structure
            QCOMPARE(app.textOf("kitSealNotYet"), QString("Choose the reference test first"));
            QVERIFY(app.press(in(app, "siteReference", "choice_0"), with));
            QVERIFY(app.press("siteTests", with));
            QVERIFY(app.waitFor("key_5"));
            QVERIFY(app.press("key_5", with) && app.press("keypadNext", with));
            QVERIFY(app.textOf("sitePlaceNote").contains(" ft from the begin"));
            auto* map = qobject_cast<map::MapItem*>(app.find("sitePreview"));
            QVERIFY(map && map->source()->scene()->areas.size() >= 2 && map->source()->scene()->obstacles.size() > before);
            const QString folder = qEnvironmentVariable("GROUNDCOUNT_SHOTS");
            if (!folder.isEmpty()) {
                QVERIFY(QTest::qWaitFor([&] { return map->isSettled(); }, 5000));
                app.window()->grabWindow().save(QStringLiteral("%1/site-file-%2.png").arg(folder).arg(size.width()));
            }
            QCOMPARE(app.textOf("kitSeal"), QString("Seal 4 things"));
            QVERIFY(app.press("kitSeal", with));
            QVERIFY(app.waitForText("siteDone", "plans.geojson is taken over"));
        }
        const auto all = obstacles(book);
        QCOMPARE(all.size(), before + 2);
        // Station 50+00, 60 left, as laid out; the file has 8 decimals of a degree, 4 thousandths of a foot.
        const auto manhole = std::find_if(all.begin(), all.end(), [](const auto& o) { return o.name == "Manhole 3"; });
        QVERIFY(manhole != all.end() && manhole->obstacleKind == "structure");
        const double d = 600, a = qDegreesToRadians(14.0);
        QVERIFY(qAbs(manhole->north - (481411.320 + d * std::cos(a) + 60 * std::sin(a))) < 0.01);
        QVERIFY(qAbs(manhole->east - (1204631.819 + d * std::sin(a) - 60 * std::cos(a))) < 0.01);
        // The map draws the sealed area and the sealed path, not only a place.
        view::Session session(nullptr);
        QVERIFY(session.open(book, m_bench.path("other.key")));
        const auto scene = view::mapContent(session, map::kEveryLift);
        QVERIFY(std::any_of(scene->areas.begin(), scene->areas.end(), [](const auto& area) { return area.label == "B-2" && area.rings.front().size() == 4; }));
        QVERIFY(std::any_of(scene->lines.begin(), scene->lines.end(), [](const auto& line) { return line.style == map::LineStyle::Edge && line.run.size() == 3; }));
    }

    void asksWhatADrawingDoesNotSay_data() { hands(); }
    void asksWhatADrawingDoesNotSay()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay();
        {
            RunningApp app;
            auto o = options(book, size);
            o.open = "site-file:" + site_sample::walls(m_bench);
            QVERIFY(app.start(o));
            QVERIFY(QTest::qWaitFor([&] { return in(app, "siteLayers", "row0") != nullptr; }, 20000));
            QCOMPARE(app.textOf("kitSealNotYet"), QString("Say the coordinate system first"));
            QVERIFY(typeInto(app, "siteSystem_words_input", "arkansas north 2011 ftus", with));
            QVERIFY(app.press("siteSystem_find", with));
            QVERIFY(QTest::qWaitFor([&] { auto* row = in(app, "siteSystem_found", "row0"); return row && row->property("figure") == "6411"; }, 5000));
            QVERIFY(app.press(in(app, "siteSystem_found", "row0"), with));
            QVERIFY(app.waitForText("siteSystem_chosen", "EPSG:6411"));
            QCOMPARE(app.textOf("kitSealNotYet"), QString("Say the unit first"));
            // |(1204809, 481882)| * 2e-6 = 2.60 ft, by hand
            QVERIFY2(app.textOf("siteUnitNote").contains("2.60 ft apart"), qPrintable(app.textOf("siteUnitNote")));
            QVERIFY(app.press(in(app, "siteUnit", "choice_2"), with));  // metres: 3.28 times too far
            QVERIFY(app.waitForText("siteDoubt", "is the coordinate system or the unit another one?"));
            QVERIFY(app.press(in(app, "siteUnit", "choice_1"), with));
            QVERIFY(app.textOf("siteDoubt").isEmpty());
            QVERIFY(is(app, "row0", "choice_2", with));
            QVERIFY(app.press("kitSeal", with));
            QVERIFY(app.waitForText("siteDone", "walls.dxf is taken over"));
        }
        const auto all = obstacles(book);
        QVERIFY(all.back().obstacleKind == "wall" && all.back().path.find("481592.0734") != std::string::npos);
    }

    void tellsWhyAFileIsRefused()
    {
        RunningApp app;
        auto o = options(freshDay(), QSize(360, 640));
        o.open = QStringLiteral("site-file:/nowhere/at/all.gpkg");
        QVERIFY(app.start(o));
        QVERIFY(app.waitForText("siteRefusal", "cannot be opened"));
        m_bench.write("half.gpkg", QByteArray("SQLite format 3\0 and no more", 29));
        QVERIFY(typeInto(app, "sitePath_input", m_bench.path("half.gpkg"), Hand::Finger));
        QVERIFY(app.press("siteRead", Hand::Finger));
        QVERIFY(app.waitForText("siteRefusal", "half.gpkg"));
        QCOMPARE(app.textOf("kitSealNotYet"), QString("Choose a file first"));
    }
};

QTEST_MAIN(SiteFileTouchTest)
#include "site_file_touch_test.moc"
