#include "app/map_sample.h"
#include "map/line_clip.h"
#include "map/map_item.h"

#include <QQuickWindow>
#include <QSignalSpy>
#include <QtTest>

#include <cmath>

using namespace groundcount::map;

/// Fingers, mouse, wheel and keys on a real window, and the arithmetic behind them.
class MapTouchTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void init();
    void cleanup();

    void keepsTheGroundUnderOneFinger();
    void staysStillUnderAWanderingTap();
    void zoomsAboutThePointBetweenTwoFingers();
    void goesOnPanningWhenOneOfTwoFingersLifts();
    void picksTheNearestSymbolWithinReach();
    void picksNothingBeyondReachAndReportsThePlace();
    void picksNothingOfAHiddenLift();
    void zoomsOnADoubleTapOnFreeGround();
    void opensAClusterInsteadOfPicking();
    void reportsALongPressOnceAndNoTap();
    void reportsNoLongPressAfterAPan();
    void pansWithTheMouse();
    void zoomsWithTheWheelAboutThePointer();
    void movesWithKeys();
    void keepsItsScaleWithinLimits();
    void ignoresViewsThatAreNotNumbers();
    void keepsHundredthsAtLargeCoordinates();
    void findsTheSamePointAsAPlainSearch();
    void queriesTheSamePointsAsAPlainSearch();
    void picksRoundScaleBars_data();
    void picksRoundScaleBars();
    void keepsDashesInPlaceWhenClipped();
    void clipsAPolygonToItsVisibleArea();

private:
    QPointF at(const MapPoint& p) const { return m_map->toScreen(p.east, p.north); }
    void tap(QPointF place)
    {
        QTest::touchEvent(m_window.get(), m_device).press(0, place.toPoint(), m_window.get());
        QTest::touchEvent(m_window.get(), m_device).release(0, place.toPoint(), m_window.get());
    }
    static inline QPointingDevice* m_device = nullptr;  // never taken down, and not lost
    std::unique_ptr<QQuickWindow> m_window;
    MapItem* m_map = nullptr;
    std::shared_ptr<MapScene> m_scene;
};

void MapTouchTest::initTestCase()
{
    m_device = QTest::createTouchDevice();
}

void MapTouchTest::init()
{
    m_window = std::make_unique<QQuickWindow>();
    m_window->resize(400, 600);
    m_map = new MapItem(m_window->contentItem());
    m_map->setSize(QSizeF(400, 600));
    m_map->setProperty("holdInterval", 150);
    m_scene = sample::scene();
    m_map->setScene(m_scene);
    m_window->show();
    QVERIFY(QTest::qWaitForWindowExposed(m_window.get()));
    m_window->grabWindow();
}

void MapTouchTest::cleanup()
{
    delete m_map;
    m_window.reset();
}

void MapTouchTest::keepsTheGroundUnderOneFinger()
{
    QSignalSpy moved(m_map, &MapItem::movedByHand);
    const QPointF start(100, 300);
    const double east = m_map->view().eastAt(start.x());
    const double north = m_map->view().northAt(start.y());
    QTest::touchEvent(m_window.get(), m_device).press(0, start.toPoint(), m_window.get());
    for (int i = 1; i <= 12; ++i)
        QTest::touchEvent(m_window.get(), m_device).move(0, start.toPoint() + QPoint(10 * i, -7 * i), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(220, 216), m_window.get());
    QCOMPARE(m_map->toScreen(east, north), QPointF(220, 216));
    QVERIFY(moved.count() > 0);
}

void MapTouchTest::staysStillUnderAWanderingTap()
{
    const MapWindow before = m_map->view();
    QSignalSpy tapped(m_map, &MapItem::tappedAt);
    QTest::touchEvent(m_window.get(), m_device).press(0, QPoint(30, 560), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).move(0, QPoint(36, 555), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(36, 555), m_window.get());
    QCOMPARE(m_map->view(), before);
    QCOMPARE(tapped.count(), 1);
}

void MapTouchTest::zoomsAboutThePointBetweenTwoFingers()
{
    const double scale = m_map->pixelsPerMetre();
    const double east = m_map->view().eastAt(150);
    const double north = m_map->view().northAt(200);
    QTest::touchEvent(m_window.get(), m_device).press(0, QPoint(130, 200), m_window.get()).press(1, QPoint(170, 200), m_window.get());
    for (int i = 1; i <= 10; ++i) {
        QTest::touchEvent(m_window.get(), m_device)
            .move(0, QPoint(130 - 4 * i, 200), m_window.get())
            .move(1, QPoint(170 + 4 * i, 200), m_window.get());
    }
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(90, 200), m_window.get()).release(1, QPoint(210, 200), m_window.get());
    QVERIFY2(std::abs(m_map->pixelsPerMetre() / scale - 3.0) < 1e-9, qPrintable(QString::number(m_map->pixelsPerMetre() / scale)));
    const QPointF now = m_map->toScreen(east, north);
    QVERIFY2(std::hypot(now.x() - 150, now.y() - 200) < 1e-6, "The ground between the fingers moved");
}

void MapTouchTest::goesOnPanningWhenOneOfTwoFingersLifts()
{
    QSignalSpy picked(m_map, &MapItem::picked);
    QSignalSpy tapped(m_map, &MapItem::tappedAt);
    QTest::touchEvent(m_window.get(), m_device).press(0, QPoint(100, 200), m_window.get()).press(1, QPoint(200, 200), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).move(0, QPoint(90, 200), m_window.get()).move(1, QPoint(210, 200), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(90, 200), m_window.get()).move(1, QPoint(210, 200), m_window.get());
    const double scale = m_map->pixelsPerMetre();
    const double east = m_map->view().eastAt(210);
    const double north = m_map->view().northAt(200);
    QTest::touchEvent(m_window.get(), m_device).move(1, QPoint(260, 240), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).release(1, QPoint(260, 240), m_window.get());
    const QPointF now = m_map->toScreen(east, north);
    QVERIFY(std::hypot(now.x() - 260, now.y() - 240) < 1e-6);
    QCOMPARE(m_map->pixelsPerMetre(), scale);
    QCOMPARE(picked.count() + tapped.count(), 0);
}

void MapTouchTest::picksTheNearestSymbolWithinReach()
{
    m_map->setPixelsPerMetre(4);
    QVERIFY(m_map->centreOn(QStringLiteral("id-26")));
    m_window->grabWindow();
    QSignalSpy picked(m_map, &MapItem::picked);
    tap(at(m_scene->points[2]) + QPointF(16, 16)); // 22.6 px away
    QCOMPARE(picked.count(), 1);
    QCOMPARE(picked[0][0].toString(), QStringLiteral("id-26"));
}

void MapTouchTest::picksNothingBeyondReachAndReportsThePlace()
{
    m_map->setPixelsPerMetre(4);
    QVERIFY(m_map->centreOn(QStringLiteral("Site 4")) == false);
    QVERIFY(m_map->centreOn(QStringLiteral("id-Site 4")));
    m_window->grabWindow();
    QSignalSpy picked(m_map, &MapItem::picked);
    QSignalSpy tapped(m_map, &MapItem::tappedAt);
    const QPointF place = (at(m_scene->points[3]) + QPointF(26, 0)).toPoint();
    tap(place);
    QCOMPARE(picked.count(), 0);
    QCOMPARE(tapped.count(), 1);
    const QPointF back = m_map->toScreen(tapped[0][0].toDouble(), tapped[0][1].toDouble());
    QVERIFY(std::hypot(back.x() - place.x(), back.y() - place.y()) < 1e-6);
}

void MapTouchTest::picksNothingOfAHiddenLift()
{
    m_map->setLift(3); // the sample's tests are of lift 7
    m_window->grabWindow();
    QSignalSpy picked(m_map, &MapItem::picked);
    tap(at(m_scene->points[0]));
    QCOMPARE(picked.count(), 0);
    m_map->setLift(7);
    m_window->grabWindow();
    QTest::qWait(350); // no double tap
    tap(at(m_scene->points[0]));
    QCOMPARE(picked.count(), 1);
}

void MapTouchTest::zoomsOnADoubleTapOnFreeGround()
{
    const double scale = m_map->pixelsPerMetre();
    const QPoint place(40, 540);
    const double east = m_map->view().eastAt(place.x());
    tap(place);
    tap(place);
    QCOMPARE(m_map->pixelsPerMetre(), 2 * scale);
    QVERIFY(std::abs(m_map->view().eastAt(place.x()) - east) < 1e-9);
}

void MapTouchTest::opensAClusterInsteadOfPicking()
{
    m_map->setScene(sample::crowd(4000));
    m_map->fitAll();
    m_window->grabWindow();
    QSignalSpy picked(m_map, &MapItem::picked);
    const double scale = m_map->pixelsPerMetre();
    const auto placed = PointIndex(sample::crowd(4000), kEveryLift).query(m_map->view(), 64, 600, 120);
    QVERIFY(!placed.empty() && placed[0].count > 1);
    tap(placed[0].at);
    QCOMPARE(picked.count(), 0);
    QCOMPARE(m_map->pixelsPerMetre(), 3 * scale);
}

void MapTouchTest::reportsALongPressOnceAndNoTap()
{
    QSignalSpy held(m_map, &MapItem::heldAt);
    QSignalSpy picked(m_map, &MapItem::picked);
    QSignalSpy tapped(m_map, &MapItem::tappedAt);
    const MapWindow before = m_map->view();
    QTest::touchEvent(m_window.get(), m_device).press(0, QPoint(210, 310), m_window.get());
    QTest::qWait(300);
    QTest::touchEvent(m_window.get(), m_device).move(0, QPoint(260, 310), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(260, 310), m_window.get());
    QCOMPARE(held.count(), 1);
    QCOMPARE(held[0][0].toDouble(), before.eastAt(210));
    QCOMPARE(held[0][1].toDouble(), before.northAt(310));
    QCOMPARE(picked.count() + tapped.count(), 0);
    QCOMPARE(m_map->view(), before);
}

void MapTouchTest::reportsNoLongPressAfterAPan()
{
    QSignalSpy held(m_map, &MapItem::heldAt);
    QTest::touchEvent(m_window.get(), m_device).press(0, QPoint(210, 310), m_window.get());
    QTest::touchEvent(m_window.get(), m_device).move(0, QPoint(240, 310), m_window.get());
    QTest::qWait(300);
    QTest::touchEvent(m_window.get(), m_device).release(0, QPoint(240, 310), m_window.get());
    QCOMPARE(held.count(), 0);
}

void MapTouchTest::pansWithTheMouse()
{
    const double east = m_map->view().eastAt(200);
    QTest::mousePress(m_window.get(), Qt::LeftButton, {}, QPoint(200, 300));
    QTest::mouseMove(m_window.get(), QPoint(230, 300));
    QTest::mouseMove(m_window.get(), QPoint(260, 330));
    QTest::mouseRelease(m_window.get(), Qt::LeftButton, {}, QPoint(260, 330));
    QVERIFY(std::abs(m_map->view().eastAt(260) - east) < 1e-9);
}

void MapTouchTest::zoomsWithTheWheelAboutThePointer()
{
    const double scale = m_map->pixelsPerMetre();
    const QPointF place(90, 410);
    const double east = m_map->view().eastAt(place.x());
    const double north = m_map->view().northAt(place.y());
    QWheelEvent wheel(place, place, {}, QPoint(0, 120), Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(m_window.get(), &wheel);
    QVERIFY(std::abs(m_map->pixelsPerMetre() / scale - 1.2) < 0.005);
    const QPointF now = m_map->toScreen(east, north);
    QVERIFY(std::hypot(now.x() - place.x(), now.y() - place.y()) < 1e-6);
}

void MapTouchTest::movesWithKeys()
{
    m_map->forceActiveFocus();
    const MapWindow before = m_map->view();
    QTest::keyClick(m_window.get(), Qt::Key_Right);
    QVERIFY(m_map->centreEast() > before.centreEast);
    QTest::keyClick(m_window.get(), Qt::Key_Up);
    QVERIFY(m_map->centreNorth() > before.centreNorth);
    QTest::keyClick(m_window.get(), Qt::Key_Plus);
    QVERIFY(m_map->view().pxPerUnit > before.pxPerUnit);
    QTest::keyClick(m_window.get(), Qt::Key_Home);
    QCOMPARE(m_map->view(), before);
}

void MapTouchTest::keepsItsScaleWithinLimits()
{
    for (int i = 0; i < 80; ++i)
        m_map->zoomBy(2);
    QVERIFY(m_map->pixelsPerMetre() <= 400.0001);
    for (int i = 0; i < 160; ++i)
        m_map->zoomBy(0.5);
    const MapExtent box = m_scene->extent();
    QVERIFY((box.north - box.south) * m_map->view().pxPerUnit > 90); // a quarter of the 400 px side
}

void MapTouchTest::ignoresViewsThatAreNotNumbers()
{
    const MapWindow before = m_map->view();
    m_map->setPixelsPerMetre(std::nan(""));
    m_map->setPixelsPerMetre(-1);
    m_map->setCentreEast(std::nan(""));
    m_map->zoomBy(0);
    m_map->zoomBy(std::nan(""));
    QCOMPARE(m_map->view(), before);
}

void MapTouchTest::keepsHundredthsAtLargeCoordinates()
{
    // State plane feet: single floats would step by half a foot here.
    MapWindow window{2'204'877.9, 13'482'316.2, 100, QSizeF(400, 600)};
    const QPointF a = window.toScreen(2'204'877.93, 13'482'316.24);
    QVERIFY(std::abs(a.x() - 203) < 1e-3);
    QVERIFY(std::abs(a.y() - 296) < 1e-3);
}

void MapTouchTest::findsTheSamePointAsAPlainSearch()
{
    const auto scene = sample::crowd(3000);
    const PointIndex index(scene, kEveryLift);
    MapWindow window{0, 0, 1, QSizeF(400, 600)};
    window.fit(scene->extent(), 20, 1e-6, 1e3);
    window.zoom(4, {200, 300}, 1e-6, 1e3);
    int found = 0;
    for (int x = 0; x < 400; x += 23) {
        for (int y = 0; y < 600; y += 31) {
            double best = 24 * 24;
            int want = -1;
            for (std::size_t i = 0; i < scene->points.size(); ++i) {
                const QPointF away = window.toScreen(scene->points[i].east, scene->points[i].north) - QPointF(x, y);
                const double square = QPointF::dotProduct(away, away);
                if (square < best) {
                    best = square;
                    want = static_cast<int>(i);
                }
            }
            QCOMPARE(index.nearest(window, QPointF(x, y), 24), want);
            found += want >= 0 ? 1 : 0;
        }
    }
    QVERIFY(found > 20);
}

void MapTouchTest::queriesTheSamePointsAsAPlainSearch()
{
    const auto scene = sample::crowd(2000);
    for (const int lift : {kEveryLift, 5}) {
        const PointIndex index(scene, lift);
        MapWindow window{0, 0, 1, QSizeF(400, 600)};
        window.fit(scene->extent(), 20, 1e-6, 1e3);
        window.zoom(7, {200, 300}, 1e-6, 1e3);
        std::vector<int> want;
        for (std::size_t i = 0; i < scene->points.size(); ++i) {
            const MapPoint& p = scene->points[i];
            if (onLift(p.lift, lift) && QRectF(0, 0, 400, 600).contains(window.toScreen(p.east, p.north)))
                want.push_back(static_cast<int>(i));
        }
        std::vector<int> got;
        for (const PlacedSymbol& s : index.query(window, 64, 600, 120))
            got.push_back(s.point);
        QVERIFY(want.size() > 10 && want.size() <= 600);
        QCOMPARE(got, want);
    }
}

void MapTouchTest::picksRoundScaleBars_data()
{
    QTest::addColumn<double>("pxPerUnit");
    QTest::addColumn<double>("units");
    QTest::newRow("one px a foot") << 1.0 << 100.0;
    QTest::newRow("half a px a foot") << 0.5 << 200.0;
    QTest::newRow("ten px a foot") << 10.0 << 10.0;
    QTest::newRow("hundred px a foot") << 100.0 << 1.0;
    QTest::newRow("300 px a foot") << 300.0 << 0.2;
    QTest::newRow("far out") << 0.0001 << 1'000'000.0;
}

void MapTouchTest::picksRoundScaleBars()
{
    QFETCH(double, pxPerUnit);
    QFETCH(double, units);
    const ScaleBar bar = scaleBarFor(pxPerUnit, 120);
    QVERIFY(std::abs(bar.units / units - 1) < 1e-9);
    QVERIFY(std::abs(bar.px - units * pxPerUnit) < 1e-6);
    QVERIFY(bar.px <= 120);
    QCOMPARE(scaleBarFor(std::nan(""), 120).units, 0.0);
}

void MapTouchTest::keepsDashesInPlaceWhenClipped()
{
    const QPolygonF line({{-1e7, 50}, {1e7, 50}, {1e7, -1e7}});
    const auto runs = clipLine(line, QRectF(0, 0, 100, 100));
    QCOMPARE(runs.size(), std::size_t(1));
    QVERIFY(std::abs(runs[0].startsAt - 1e7) < 1e-6);
    QVERIFY(std::abs(runs[0].points.first().x()) < 1e-6 && std::abs(runs[0].points.last().x() - 100) < 1e-6);
    QVERIFY(clipLine(QPolygonF({{-10, -10}, {-10, 200}}), QRectF(0, 0, 100, 100)).empty());
    // In, out and in again gives two pieces.
    QCOMPARE(clipLine(QPolygonF({{50, 50}, {50, 150}, {60, 150}, {60, 50}}), QRectF(0, 0, 100, 100)).size(), std::size_t(2));
}

void MapTouchTest::clipsAPolygonToItsVisibleArea()
{
    const auto area = [](const QPolygonF& p) {
        double twice = 0;
        for (qsizetype i = 0; i < p.size(); ++i) {
            const QPointF a = p[i];
            const QPointF b = p[(i + 1) % p.size()];
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return std::abs(twice) / 2;
    };
    const QRectF box(0, 0, 100, 100);
    QCOMPARE(area(clipPolygon(QPolygonF({{50, 50}, {150, 50}, {150, 150}, {50, 150}}), box)), 2500.0);
    QCOMPARE(area(clipPolygon(QPolygonF({{-1e6, -1e6}, {1e6, -1e6}, {1e6, 1e6}, {-1e6, 1e6}}), box)), 10000.0);
    QCOMPARE(area(clipPolygon(QPolygonF({{0, 0}, {100, 0}, {0, 100}}), box)), 5000.0);
    QVERIFY(clipPolygon(QPolygonF({{200, 0}, {300, 0}, {300, 50}}), box).isEmpty());
}

QTEST_MAIN(MapTouchTest)
#include "map_touch_test.moc"
