#include "method/site/heading.h"

#include <QtTest>
#include <limits>

using namespace groundcount;
using namespace groundcount::method;

class HeadingTest : public QObject {
    Q_OBJECT

private slots:
    void turnsAShiftIntoDistanceAndBearing_data()
    {
        QTest::addColumn<double>("north");
        QTest::addColumn<double>("east");
        QTest::addColumn<double>("distance");
        QTest::addColumn<double>("bearing");
        // The 3-4-5 triangle; atan(3/4) = 36.86989764584402 degrees.
        QTest::newRow("north-east") << 4.0 << 3.0 << 5.0 << 36.86989764584402;
        QTest::newRow("south-east") << -4.0 << 3.0 << 5.0 << 143.13010235415598;
        QTest::newRow("south-west") << -4.0 << -3.0 << 5.0 << 216.86989764584402;
        QTest::newRow("north-west") << 4.0 << -3.0 << 5.0 << 323.13010235415598;
        QTest::newRow("here") << 0.0 << 0.0 << 0.0 << 0.0;
        QTest::newRow("a hair west of north") << 1.0 << -1e-17 << 1.0 << 0.0;
    }

    void turnsAShiftIntoDistanceAndBearing()
    {
        QFETCH(double, north);
        QFETCH(double, east);
        QFETCH(double, distance);
        QFETCH(double, bearing);
        const auto heading = headingOf({Length::metres(north), Length::metres(east)});
        QVERIFY(heading.has_value());
        QVERIFY(std::abs(heading->distance.metres() - distance) < 1e-12);
        QVERIFY(std::abs(heading->bearingDeg - bearing) < 1e-10);
        const auto back = shiftOf(heading->distance, heading->bearingDeg);
        QVERIFY(back.has_value());
        QVERIFY(std::abs(back->north.metres() - north) < 1e-12 && std::abs(back->east.metres() - east) < 1e-12);
    }

    void tellsHowFarADirectionByEyeMayBeOff()
    {
        // sin 30 degrees = 1/2
        QVERIFY(std::abs(acrossOf(Length::feet(8), 30)->feet() - 4) < 1e-12);
        QVERIFY(!acrossOf(Length::feet(8), 91).has_value());
        QVERIFY(!acrossOf(Length::feet(-8), 30).has_value());
    }

    void refusesWhatIsNoLengthOrNoDirection()
    {
        const double nan = std::numeric_limits<double>::quiet_NaN();
        QVERIFY(!headingOf({Length::metres(nan), Length::metres(0)}).has_value());
        QVERIFY(!shiftOf(Length::metres(-1), 0).has_value());
        QVERIFY(!shiftOf(Length::metres(1), nan).has_value());
        QCOMPARE(QString::fromStdString(shiftOf(Length::metres(-1), 0).error().what), QString("A distance must be at least 0 m and finite; it is -1.000000 m."));
    }
};

QTEST_GUILESS_MAIN(HeadingTest)
#include "heading_test.moc"
