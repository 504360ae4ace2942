#include "app/map_sample.h"
#include "map/map_item.h"

#include <QFontDatabase>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QtTest>

#include <cmath>

using namespace groundcount::map;

namespace {

/// A window with a map in it, painted and settled.
struct Stage {
    QQuickWindow window;
    MapItem* map = nullptr;

    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;
    explicit Stage(QSize size)
    {
        window.setColor(Qt::magenta); // whatever shows through is not the map
        window.resize(size);
        map = new MapItem(window.contentItem());
        map->setSize(size);
        window.show();
        if (!QTest::qWaitForWindowExposed(&window))
            qFatal("The window was not shown");
    }
    ~Stage() { delete map; }

    QImage settled()
    {
        if (!QTest::qWaitFor([this] { return map->isSettled(); }, 10000))
            qFatal("The map did not settle");
        return window.grabWindow().convertToFormat(QImage::Format_RGB32);
    }
};

int near(const QImage& image, const QRect& box, const QColor& colour, int tolerance = 24)
{
    int n = 0;
    const QRect in = box.intersected(image.rect());
    for (int y = in.top(); y <= in.bottom(); ++y) {
        for (int x = in.left(); x <= in.right(); ++x) {
            const QColor c = image.pixelColor(x, y);
            if (std::abs(c.red() - colour.red()) < tolerance && std::abs(c.green() - colour.green()) < tolerance
                && std::abs(c.blue() - colour.blue()) < tolerance)
                ++n;
        }
    }
    return n;
}

QRect around(QPointF at, int half)
{
    return QRect(at.toPoint() - QPoint(half, half), QSize(2 * half + 1, 2 * half + 1));
}

void keepPicture(const QImage& image, const char* name)
{
    const QByteArray folder = qgetenv("GROUNDCOUNT_PICTURES");
    if (!folder.isEmpty())
        image.save(QString::fromLocal8Bit(folder) + QLatin1Char('/') + QLatin1String(name));
}

const QColor kInk = SymbolColours().ink;
const QColor kPaper = SymbolColours().paper;
const QColor kPass = SymbolColours().pass;
const QColor kFail = SymbolColours().fail;

}  // namespace

class MapPictureTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void coversTheWholeItem();
    void fitsAnewToItsSizeUntilItIsMoved();
    void fitsBesideWhatControlsCover();
    void drawsEachStateInItsShapeAndColour();
    void reproducesThePictureOfTheLot();
    void showsOwnPlaceWithItsCircleToScale();
    void drawsRingsToScale();
    void hatchesTheOpenFailureAndStipplesTheUntested();
    void shadesNothingOfAnotherLift();
    void bracketsTheChosenPoint();
    void clustersACrowdAndHidesNoFailure();
    void staysWithinTheNodeCap();
    void changesColoursWithTheTheme();
    void keepsSymbolsLegibleOnImagery();
    void survivesAnEmptySceneAndItsReturn();
};

void MapPictureTest::initTestCase()
{
    for (const char* face : {"Medium", "Bold", "Black"})
        QFontDatabase::addApplicationFont(QStringLiteral("/usr/share/fonts/truetype/lato/Lato-%1.ttf").arg(QLatin1String(face)));
    QGuiApplication::setFont(QFont(QStringLiteral("Lato")));
}

void MapPictureTest::coversTheWholeItem()
{
    Stage stage({412, 540});
    stage.map->setScene(sample::scene());
    const QImage image = stage.settled();
    QCOMPARE(image.size(), QSize(412, 540));
    QCOMPARE(near(image, image.rect(), Qt::magenta), 0);
}

/// One 1,000 units north of the other.
static std::shared_ptr<MapScene> twoPoints()
{
    auto scene = std::make_shared<MapScene>();
    scene->points.resize(2);
    scene->points.back().north = 1000;
    return scene;
}

/// A window comes to its size in steps, and a phone is turned.
void MapPictureTest::fitsAnewToItsSizeUntilItIsMoved()
{
    const auto scene = twoPoints();
    Stage stage(QSize(400, 400));
    stage.map->setScene(scene);
    const double first = stage.map->view().pxPerUnit;
    stage.map->setHeight(700);
    const double turned = stage.map->view().pxPerUnit;
    QVERIFY(turned > 1.5 * first);
    Stage whole(QSize(400, 700));
    whole.map->setScene(scene);
    QCOMPARE(turned, whole.map->view().pxPerUnit);
    stage.map->zoomBy(2);
    stage.map->setHeight(400);
    QCOMPARE(stage.map->view().pxPerUnit, 2 * turned);
}

void MapPictureTest::fitsBesideWhatControlsCover()
{
    const auto scene = twoPoints();
    Stage free(QSize(200, 200));
    free.map->setScene(scene);
    Stage stage(QSize(360, 260));
    stage.map->setScene(scene);
    stage.map->setFitInset({160, 60});
    QCOMPARE(stage.map->view().pxPerUnit, free.map->view().pxPerUnit);
    for (const MapPoint& point : scene->points)
        QCOMPARE(stage.map->toScreen(point.east, point.north), free.map->toScreen(point.east, point.north));
    stage.map->zoomBy(2);
    const MapWindow moved = stage.map->view();
    stage.map->setFitInset({0, 0});
    QCOMPARE(stage.map->view(), moved);
    // Never more than half is left to the controls.
    Stage covered(QSize(400, 400));
    covered.map->setScene(scene);
    covered.map->setFitInset({1000, 1000});
    QCOMPARE(covered.map->view().pxPerUnit, free.map->view().pxPerUnit);
}

void MapPictureTest::drawsEachStateInItsShapeAndColour()
{
    Stage stage({400, 400});
    auto scene = std::make_shared<MapScene>();
    scene->points = {{0, 0, PointState::Pass, 1},   {60, 0, PointState::Fail, 1},
                     {120, 0, PointState::Waiting, 1}, {0, 60, PointState::InformationOnly, 1},
                     {60, 60, PointState::Void, 1},  {120, 60, PointState::Owed, 1}};
    stage.map->setScene(scene);
    stage.map->setPixelsPerMetre(2);
    const QImage image = stage.settled();
    const auto at = [&](int i) { return stage.map->toScreen(scene->points[static_cast<std::size_t>(i)].east, scene->points[static_cast<std::size_t>(i)].north).toPoint(); };
    const double unit = 26.0 / 24.0;
    const auto pixel = [&](int i, double gx, double gy) { return image.pixelColor(at(i) + QPoint(int(std::lround((gx - 12) * unit)), int(std::lround((gy - 12) * unit)))); };
    const auto is = [](const QColor& c, const QColor& want) {
        return std::abs(c.red() - want.red()) < 40 && std::abs(c.green() - want.green()) < 40 && std::abs(c.blue() - want.blue()) < 40;
    };
    QVERIFY(is(pixel(0, 12, 4), kPass));             // disc above the check
    QVERIFY(is(pixel(0, 10.5, 16.0), kPaper));       // the check's corner
    QVERIFY(is(pixel(1, 12, 4), kFail));             // diamond
    QVERIFY(is(pixel(1, 12, 12), kPaper));           // its bar
    QVERIFY(is(pixel(1, 2, 2), kPaper));             // a diamond has no corner there
    QVERIFY(is(pixel(2, 12, 12), kPaper));           // empty ring
    QVERIFY(is(pixel(2, 12, 2.5), kInk));
    QVERIFY(is(pixel(3, 12, 12), kInk));             // small square
    QVERIFY(is(pixel(3, 3, 12), kPaper));
    QVERIFY(is(pixel(4, 12, 12), kInk));             // cross
    QVERIFY(is(pixel(4, 12, 4), kPaper));
    QVERIFY(is(pixel(5, 12, 3), kInk));              // tick
    QVERIFY(is(pixel(5, 12, 12), kPaper));           // round an empty centre
    QVERIFY(is(pixel(5, 5, 5), kPaper));
}

void MapPictureTest::reproducesThePictureOfTheLot()
{
    Stage stage({412, 540});
    stage.map->setScene(sample::scene());
    stage.map->setPixelsPerMetre(3.3);
    const MapVertex middle = sample::place(360, 40);
    stage.map->setCentreEast(middle.east);
    stage.map->setCentreNorth(middle.north);
    const MapVertex own = sample::place(302, -18);
    stage.map->setProperty("ownEast", own.east);
    stage.map->setProperty("ownNorth", own.north);
    stage.map->setProperty("ownAccuracyMetres", 3.0);
    stage.map->setProperty("ownHeadingDegrees", 50.0);
    stage.map->setProperty("ownLabel", QStringLiteral("You ±10 ft"));
    const QImage image = stage.settled();
    keepPicture(image, "map-lot.png");
    const MapPoint fail = sample::scene()->points[2];
    QVERIFY(near(image, around(stage.map->toScreen(fail.east, fail.north), 13), kFail) > 150);
    // The scale bar: the whole bar is a round length and its line lies there, dark, near the lower right corner.
    const ScaleBar bar = scaleBarFor(stage.map->view().pxPerUnit, 120);
    QCOMPARE(bar.units, 100.0);
    QVERIFY(near(image, QRect(412 - 200, 540 - 40, 190, 30), kInk, 60) > bar.px);
    QVERIFY(near(image, QRect(20, 14, 28, 56), kInk, 60) > 60); // north arrow
}

void MapPictureTest::showsOwnPlaceWithItsCircleToScale()
{
    Stage stage({300, 300});
    auto scene = std::make_shared<MapScene>(); // metres
    scene->points = {{500, 500, PointState::Pass, 1}};
    stage.map->setScene(scene);
    stage.map->setCentreEast(0);
    stage.map->setCentreNorth(0);
    stage.map->setPixelsPerMetre(10);
    stage.map->setProperty("ownEast", 0.0);
    stage.map->setProperty("ownNorth", 0.0);
    stage.map->setProperty("ownAccuracyMetres", 6.0);
    const QImage image = stage.settled();
    QVERIFY(near(image, around({150, 150}, 2), kInk) >= 20);                // the disc
    QVERIFY(near(image, around({150 + 60, 150}, 1), kInk, 90) > 0);         // 6 m at 10 px/m
    QVERIFY(near(image, around({150, 150 - 60}, 1), kInk, 90) > 0);
    QCOMPARE(near(image, around({150 + 50, 150}, 3), kInk, 90), 0);
    QCOMPARE(near(image, around({150 + 68, 150}, 3), kInk, 90), 0);
    stage.map->setProperty("ownEast", std::numeric_limits<double>::quiet_NaN());
    const QImage without = stage.settled();
    QCOMPARE(near(without, around({150, 150}, 70), kInk, 90), 0);
}

void MapPictureTest::drawsRingsToScale()
{
    Stage stage({300, 300});
    auto scene = std::make_shared<MapScene>();
    scene->metresPerUnit = 1200.0 / 3937.0;
    scene->unitName = "ft";
    scene->rings.push_back({{0, 0}, 4.572, "people 15 ft"});
    stage.map->setScene(scene);
    stage.map->setPixelsPerMetre(20);
    stage.map->setCentreEast(0);
    stage.map->setCentreNorth(0);
    const QImage image = stage.settled();
    const int r = static_cast<int>(std::lround(4.572 * 20));
    for (const QPoint p : {QPoint(150 - r, 150), QPoint(150, 150 - r), QPoint(150, 150 + r)})
        QVERIFY(near(image, around(p, 1), kInk, 60) > 0);
    QCOMPARE(near(image, around({150, 150 - r + 10}, 4), kInk, 90), 0);
}

void MapPictureTest::hatchesTheOpenFailureAndStipplesTheUntested()
{
    Stage stage({300, 300});
    auto scene = std::make_shared<MapScene>();
    scene->areas.push_back({AreaStyle::OpenFailure, {{{-100, -100}, {0, -100}, {0, 100}, {-100, 100}}}, {}, 3});
    scene->areas.push_back({AreaStyle::Untested, {{{0, -100}, {100, -100}, {100, 100}, {0, 100}}}, {}, 3});
    stage.map->setScene(scene);
    stage.map->setPixelsPerMetre(1.4);
    stage.map->setCentreEast(0);
    stage.map->setCentreNorth(0);
    QImage image = stage.settled();
    const QRect left(40, 60, 80, 80);
    const QRect right(180, 60, 80, 80);
    // A hatch of 1.4 px every 9 px covers about 16 %; wholly or hardly covered would both be wrong.
    const double hatched = near(image, left, kFail, 90) / 6400.0;
    QVERIFY2(hatched > 0.08 && hatched < 0.35, qPrintable(QString::number(hatched)));
    QCOMPARE(near(image, right, kFail, 60), 0);
    const double dotted = near(image, right, MapLook().ink2, 70) / 6400.0;
    QVERIFY2(dotted > 0.01 && dotted < 0.12, qPrintable(QString::number(dotted)));
    stage.map->setLift(4);
    image = stage.settled();
    QCOMPARE(near(image, left, kFail, 90), 0);
}

void MapPictureTest::shadesNothingOfAnotherLift()
{
    Stage stage({300, 300});
    auto scene = std::make_shared<MapScene>();
    scene->points = {{-40, 0, PointState::Fail, 3}, {40, 0, PointState::Fail, 4}, {0, 40, PointState::Pass, kEveryLift}};
    stage.map->setScene(scene);
    const auto seen = [&](const QImage& image, int i) {
        const MapPoint& p = scene->points[static_cast<std::size_t>(i)];
        return near(image, around(stage.map->toScreen(p.east, p.north), 12), i == 2 ? kPass : kFail) > 100;
    };
    QImage image = stage.settled();
    QVERIFY(seen(image, 0) && seen(image, 1) && seen(image, 2));
    stage.map->setLift(4);
    image = stage.settled();
    QVERIFY(!seen(image, 0));
    QVERIFY(seen(image, 1) && seen(image, 2));
}

void MapPictureTest::bracketsTheChosenPoint()
{
    Stage stage({412, 540});
    stage.map->setScene(sample::scene());
    const MapPoint fail = sample::scene()->points[2];
    const QPointF at = stage.map->toScreen(fail.east, fail.north);
    const QRect corner(at.toPoint() + QPoint(-19, -19), QSize(5, 5));
    const QImage before = stage.settled();
    stage.map->setChosenId(QStringLiteral("id-26"));
    const QImage after = stage.settled();
    QVERIFY(near(after, corner, kInk, 60) > near(before, corner, kInk, 60) + 5);
    stage.map->setChosenId(QStringLiteral("nobody"));
    QVERIFY(near(stage.settled(), corner, kInk, 60) <= near(before, corner, kInk, 60) + 2);
}

void MapPictureTest::clustersACrowdAndHidesNoFailure()
{
    const auto scene = sample::crowd(5000);
    const PointIndex index(scene, kEveryLift);
    MapWindow window{0, 0, 1, QSizeF(412, 540)};
    window.fit(scene->extent(), 40, 1e-6, 1e3);
    const auto placed = index.query(window, 64, 600, 120);
    std::uint32_t count = 0;
    std::uint32_t failures = 0;
    for (const PlacedSymbol& s : placed) {
        count += s.count;
        failures += s.failures;
    }
    QVERIFY(placed.size() <= 120);
    QCOMPARE(count, 5000U);
    QCOMPARE(failures, 625U);

    Stage stage({412, 540});
    stage.map->setScene(scene);
    const QImage image = stage.settled();
    keepPicture(image, "map-crowd.png");
    QVERIFY(near(image, image.rect(), kFail) > 60); // the diamonds on the clusters' shoulders
}

void MapPictureTest::staysWithinTheNodeCap()
{
    Stage stage({1280, 800});
    stage.map->setScene(sample::crowd(100000));
    for (int step = 0; step < 40; ++step) {
        stage.map->zoomBy(1.25);
        stage.window.grabWindow();
        QVERIFY2(stage.map->nodesInUse() <= 600, qPrintable(QString::number(stage.map->nodesInUse())));
    }
}

void MapPictureTest::changesColoursWithTheTheme()
{
    Stage stage({412, 540});
    stage.map->setScene(sample::scene());
    stage.map->setProperty("ink", QColor("#E6DFD0"));
    stage.map->setProperty("ink2", QColor("#BDB5A4"));
    stage.map->setProperty("paper", QColor("#15171A"));
    stage.map->setProperty("hair", QColor("#4A4D50"));
    stage.map->setProperty("pass", QColor("#8DBDF2"));
    stage.map->setProperty("fail", QColor("#FF9494"));
    const QImage image = stage.settled();
    keepPicture(image, "map-dusk.png");
    QVERIFY(near(image, image.rect(), QColor("#15171A")) > 412 * 540 / 2);
    QCOMPARE(near(image, image.rect(), kFail), 0);
    QVERIFY(near(image, image.rect(), QColor("#FF9494")) > 100);
}

void MapPictureTest::keepsSymbolsLegibleOnImagery()
{
    Stage stage({412, 540});
    auto scene = sample::scene();
    scene->ground = [](const MapWindow&, QSize px) {
        QImage image(px, QImage::Format_RGB32);
        for (int y = 0; y < px.height(); ++y) {
            for (int x = 0; x < px.width(); ++x)
                image.setPixel(x, y, qRgb(110 + (x * 7 + y * 3) % 40, 105 + (x + y * 5) % 30, 70 + (x * y) % 25));
        }
        return image;
    };
    stage.map->setScene(scene);
    stage.map->setPixelsPerMetre(2.2);
    const QImage image = stage.settled();
    keepPicture(image, "map-imagery.png");
    const MapPoint pass = scene->points[0];
    const QPointF at = stage.map->toScreen(pass.east, pass.north);
    QVERIFY(near(image, around(at + QPointF(0, -13), 1), Qt::white, 60) > 0); // ring
    QVERIFY(near(image, around(at, 12), kPass) > 100);
}

void MapPictureTest::survivesAnEmptySceneAndItsReturn()
{
    Stage stage({300, 300});
    stage.settled();
    stage.map->setScene(sample::scene());
    stage.settled();
    stage.map->setScene(nullptr);
    const QImage image = stage.settled();
    QCOMPARE(near(image, image.rect(), kFail), 0);
    QVERIFY(!stage.map->centreOnOwn());
    QVERIFY(!stage.map->centreOn(QStringLiteral("id-26")));
}

QTEST_MAIN(MapPictureTest)
#include "map_picture_test.moc"
