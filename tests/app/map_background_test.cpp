// The picture under the map: where its pixels are painted, how they give way, and its page in the whole app by finger and by mouse.
#include "app/running_app.h"
#include "app/site_sample.h"
#include "gis/background.h"
#include "map/background_paint.h"
#include "map/map_item.h"
#include "view/beside_work.h"
#include "view/map_view.h"

#include <QImage>
#include <QStandardPaths>
#include <QtMath>

using namespace groundcount;

class MapBackgroundTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    // 400 x 300 pixels of 2 ft from this corner; one red spot of 10 x 10 pixels, its middle at column 250, row 100.
    static constexpr double kWest = 1204400, kNorth = 482000, kPixel = 2;
    static constexpr double kSpotEast = kWest + 250 * kPixel, kSpotNorth = kNorth - 100 * kPixel;

    QString picture() const { return m_bench.path("ground.tif"); }
    static bool isRed(QColor c) { return c.red() > 180 && c.green() < 120 && c.blue() < 120; }
    QString freshDay() const
    {
        const QString name = QString::fromLatin1(QTest::currentTestFunction()) + QString::fromLatin1(QTest::currentDataTag()).remove(' ') + ".fieldbook";
        QFile::copy(m_bench.path("day.fieldbook"), m_bench.path(name));
        return m_bench.path(name);
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        view::setForeignReader(Bench::program().toStdString());
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        QByteArray ppm = "P6 400 300 255\n";
        for (int row = 0; row < 300; ++row)
            for (int column = 0; column < 400; ++column)
                ppm += std::abs(2 * column + 1 - 500) < 10 && std::abs(2 * row + 1 - 200) < 10 ? QByteArray("\xf0\x10\x10", 3) : QByteArray("\x20\xa0\x40", 3);
        m_bench.write("ground.ppm", ppm);
        const int made = QProcess::execute("gdal_translate", {"-q", "-a_srs", "EPSG:6411", "-a_ullr", QString::number(kWest, 'f', 1), QString::number(kNorth, 'f', 1),
                                                              QString::number(kWest + 800, 'f', 1), QString::number(kNorth - 600, 'f', 1), m_bench.path("ground.ppm"), picture()});
        QCOMPARE(made, 0);  // gdal-bin
    }

    void paintsEachPixelWhereItLies_data()
    {
        QTest::addColumn<double>("scale");
        QTest::addColumn<double>("ratio");
        for (const double scale : {0.2, 0.5, 1.0, 3.7})
            for (const double ratio : {1.0, 3.0})
                QTest::addRow("%.1f px/ft, x%.0f", scale, ratio) << scale << ratio;
    }
    void paintsEachPixelWhereItLies()
    {
        QFETCH(double, scale);
        QFETCH(double, ratio);
        const auto opened = map::BackgroundPicture::open(picture().toStdString());
        QVERIFY(opened);
        const map::MapVertex origin{1204631.819, 481411.320};
        map::MapWindow window;
        window.centreEast = kSpotEast - origin.east + 13 / scale;
        window.centreNorth = kSpotNorth - origin.north - 21 / scale;
        window.pxPerUnit = scale;
        window.size = QSizeF(300, 200);
        const QImage image = map::BackgroundPicture::painter(*opened, origin, map::BackgroundTone::Day)(window, (window.size * ratio).toSize());
        const auto at = [&](double de, double dn) {
            const QPointF p = window.toScreen(kSpotEast - origin.east + de, kSpotNorth - origin.north + dn) * ratio;
            return image.pixelColor(QPoint(qFloor(p.x()), qFloor(p.y())));
        };
        // The spot reaches 10 ft to every side; a pixel of the screen or of an overview may blur its edge.
        const double blur = 2.5 / scale + 2;
        QVERIFY2(isRed(at(0, 0)), qPrintable(at(0, 0).name()));
        for (const auto& [de, dn] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            if (blur < 9)
                QVERIFY2(isRed(at(de * (10 - blur), dn * (10 - blur))), "inside the spot");
            const double off = 10 + blur;
            const QPointF p = window.toScreen(kSpotEast - origin.east + de * off, kSpotNorth - origin.north + dn * off);
            if (QRectF(QPointF(0, 0), window.size).contains(p))
                QVERIFY2(!isRed(at(de * off, dn * off)), "outside the spot");
        }
    }

    void givesWayToMarks()
    {
        const auto opened = map::BackgroundPicture::open(picture().toStdString());
        QVERIFY(opened);
        map::MapWindow window{kWest + 100, kNorth - 400, 1, QSizeF(50, 50)};
        const auto lightness = [&](map::BackgroundTone tone) { return map::BackgroundPicture::painter(*opened, {}, tone)(window, QSize(50, 50)).pixelColor(25, 25).lightness(); };
        const int plain = QColor(0x20, 0xa0, 0x40).lightness();
        QVERIFY(lightness(map::BackgroundTone::Sun) > lightness(map::BackgroundTone::Day) && lightness(map::BackgroundTone::Day) > plain);
        QVERIFY(lightness(map::BackgroundTone::Dusk) < plain);
        window.centreEast -= 10000;
        QVERIFY(map::BackgroundPicture::painter(*opened, {}, map::BackgroundTone::Day)(window, QSize(50, 50)).isNull());
        QVERIFY(!map::BackgroundPicture::open(m_bench.path("ground.ppm").toStdString()));
        QVERIFY(!map::BackgroundPicture::open("/vsicurl/http://192.0.2.1/a.tif"));
    }

    void isChosenHiddenAndTakenAway_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("hand");
        QTest::newRow("finger 360x640") << QSize(360, 640) << static_cast<int>(RunningApp::Hand::Finger);
        QTest::newRow("mouse 1280x800") << QSize(1280, 800) << static_cast<int>(RunningApp::Hand::Mouse);
    }
    void isChosenHiddenAndTakenAway()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<RunningApp::Hand>(hand);
        ui::StartOptions o;
        o.book = freshDay();
        o.size = size;
        o.place = QStringLiteral("map");
        o.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
        RunningApp app;
        QVERIFY(app.start(o));
        const auto ground = [&] {
            auto* map = qobject_cast<map::MapItem*>(app.find("groundMap"));
            return map && map->source() && map->source()->scene()->ground;
        };
        QVERIFY(app.waitFor("legendButton") && !ground());
        QVERIFY(app.press("legendButton", with) && app.waitFor("legendBackground"));
        QVERIFY(app.press("legendBackground", with) && app.waitFor("backgroundPage"));
        const auto read = [&](const QString& path) {
            return app.press("backgroundPath_input", with) && (app.key(Qt::Key_A, Qt::ControlModifier), app.type(path), app.press("backgroundRead", with));
        };
        QVERIFY(read(m_bench.path("ground.ppm")));
        QVERIFY(QTest::qWaitFor([&] { return app.textOf("backgroundRefusal").contains("must end in .tif"); }, 20000));
        QVERIFY(read(picture()));
        QVERIFY(QTest::qWaitFor([&] { return app.textOf("backgroundDone").contains("400 x 300 pixels of 2.00 ft"); }, 20000));
        QVERIFY(QFile::exists(o.book + "-ground.tif"));
        QVERIFY(app.press("place_map", with));
        QVERIFY(app.waitFor("groundMap") && ground());
        // In the window itself, by whatever renderer this runs on.
        auto* map = qobject_cast<map::MapItem*>(app.find("groundMap"));
        const map::MapVertex origin{1204631.819, 481411.320};
        map->setCentreEast(kSpotEast - origin.east);
        map->setCentreNorth(kSpotNorth - origin.north);
        map->setPixelsPerMetre(8);
        QVERIFY(QTest::qWaitFor([&] { return map->isSettled(); }, 5000));
        QTest::qWait(60);
        const QPointF p = map->mapToScene(map->toScreen(kSpotEast - origin.east - 6, kSpotNorth - origin.north + 6));
        QVERIFY2(isRed(app.window()->grabWindow().pixelColor(p.toPoint())), qPrintable(app.window()->grabWindow().pixelColor(p.toPoint()).name()));
        QVERIFY(app.press("place_kit", with) && app.waitFor("backgroundPage"));
        QVERIFY(app.press("choice_1", with) && app.press("place_map", with));
        QVERIFY(app.waitFor("groundMap") && !ground());
        QVERIFY(app.press("place_kit", with) && app.press("backgroundTakeAway", with));
        QVERIFY(!QFile::exists(o.book + "-ground.tif"));
    }
};

QTEST_MAIN(MapBackgroundTest)
#include "map_background_test.moc"
