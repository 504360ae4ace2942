#include "method/site/station.h"

#include "method/site/angle.h"
#include "method/site/station_equation.h"

#include <QtTest>
#include <cmath>
#include <limits>

using namespace groundcount;
using namespace groundcount::method;

class StationTest : public QObject {
    Q_OBJECT
private slots:
    void writesAndReadsBackEveryHundredth()
    {
        for (int i = -20000; i <= 20000; i += 7) {
            const double value = i / 100.0;
            const auto back = parseStation(stationText(value, 100, 2), 100);
            QVERIFY2(back, stationText(value, 100, 2).c_str());
            QCOMPARE(*back, value);
        }
    }
    void writesTheFormOfThePlans()
    {
        QCOMPARE(stationText(5338, 100, 0), std::string("53+38"));
        QCOMPARE(stationText(5338.3, 100, 1), std::string("53+38.3"));
        QCOMPARE(stationText(-50, 100, 0), std::string("-0+50"));
        QCOMPARE(stationText(-307.25, 100, 2), std::string("-3+07.25"));
        QCOMPARE(stationText(0, 100, 2), std::string("0+00.00"));
        QCOMPARE(stationText(-0.001, 100, 2), std::string("0+00.00"));
        QCOMPARE(stationText(1250.5, 1000, 1), std::string("1+250.5"));
    }
    void carriesARoundedUpPartIntoTheNextStation()
    {
        QCOMPARE(stationText(1299.996, 100, 2), std::string("13+00.00"));
    }
    void refusesAnotherForm_data()
    {
        QTest::addColumn<QString>("text");
        for (const char* text : {"", "+", "7", "12+3", "12+345", "12+34.", "12++34", "12 +34", "-+34", "12+34e2", "1.5+34", "--1+00", "12+34.5.6", "+12+34"})
            QTest::newRow(text) << QString::fromUtf8(text);
    }
    void refusesAnotherForm()
    {
        QFETCH(QString, text);
        const auto value = parseStation(text.toStdString(), 100);
        QVERIFY(!value);
        QVERIFY(value.error().what.ends_with('.'));
    }
    void refusesALengthOfStationThatIsNoPowerOfTen()
    {
        QVERIFY(!parseStation("1+00", 120));
        QVERIFY(!parseStation("1+00", std::numeric_limits<double>::quiet_NaN()));
        QVERIFY(parseStation("1+000", 1000));
    }
    void readsAnglesInTheirWrittenForms()
    {
        QCOMPARE(*parseAngleDeg("25-30"), 25.5);
        QCOMPARE(*parseAngleDeg("7.25"), 7.25);
        QVERIFY(std::abs(*parseAngleDeg("31-18-20") - (31 + 18 / 60.0 + 20 / 3600.0)) < 1e-12);
        QVERIFY(std::abs(*parseAngleDeg("-122d30'00.000") + 122.5) < 1e-12);
        QVERIFY(std::abs(*parseAngleDeg("76d56'37.26\"W") + (76 + 56 / 60.0 + 37.26 / 3600)) < 1e-12);
        for (const char* wrong : {"", "d", "12-60", "12-30-60", "1.5-30", "-5W", "12-30-20-1", "12--30"})
            QVERIFY2(!parseAngleDeg(wrong), wrong);
    }
    void walksAcrossAGapAndAnOverlap()
    {
        const auto line = StationLine::make(1000, 1000, {{1400, 1450}, {1700, 1650}});
        QVERIFY(line);
        QCOMPARE(*line->alongFt({1400, 0}), 400.0);
        QCOMPARE(*line->alongFt({1450, 1}), 400.0);
        QVERIFY(line->placesOf(1420).empty());
        QVERIFY(!line->only(1420));
        QCOMPARE(line->placesOf(1680).size(), std::size_t(2));
        QVERIFY(line->only(1680).error().what.find("exists 2 times") != std::string::npos);
        QCOMPARE(*line->alongFt({1680, 2}) - *line->alongFt({1680, 1}), 50.0);
        for (double along = 0; along <= 1000; along += 12.5)
            QCOMPARE(*line->alongFt(*line->stationAt(along)), along);
        QVERIFY(!line->stationAt(1000.1));
        QVERIFY(!StationLine::make(1000, 1000, {{900, 950}}));
        QVERIFY(!StationLine::make(1000, 1000, {{2100, 2200}}));
    }
    void distanceAcrossAnEquationRefusesTheWrongSide()
    {
        QVERIFY(!distanceAcrossFt({5025, 5000}, 5026, 5100));
        QVERIFY(!distanceAcrossFt({5025, 5000}, 4900, 4999));
        QCOMPARE(*distanceAcrossFt({5025, 5000}, 5000, 5100), 125.0);
    }
};

QTEST_GUILESS_MAIN(StationTest)
#include "station_test.moc"
