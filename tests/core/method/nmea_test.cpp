#include "method/site/nmea.h"

#include <QtTest>
#include <cstdio>

using namespace groundcount;
using namespace groundcount::method;

namespace {

// Adds the checksum that the body needs, so that a row fails for its content only.
std::string sentence(const std::string& body)
{
    int sum = 0;
    for (const char c : body)
        sum ^= c;
    char end[8];
    std::snprintf(end, sizeof end, "*%02X\r\n", static_cast<unsigned>(sum));
    return "$" + body + end;
}

}  // namespace

class NmeaTest : public QObject {
    Q_OBJECT
private slots:
    void readsAPositionSouthAndWest()
    {
        const auto fix = parseGga(sentence("GNGGA,101530.20,3352.5000,S,07030.7500,W,4,17,0.6,520.25,M,-12.50,M,1.0,0001"));
        QVERIFY2(fix, fix ? "" : fix.error().what.c_str());
        QCOMPARE(fix->latitudeDeg, -(33 + 52.5 / 60));
        QCOMPARE(fix->longitudeDeg, -(70 + 30.75 / 60));
        QCOMPARE(fix->quality, 4);
        QCOMPARE(fix->satellites, 17);
        QCOMPARE(*fix->ellipsoidHeightM, 507.75);
        QCOMPARE(fix->utc, std::string("101530.20"));
    }
    void refusesBrokenPositions_data()
    {
        QTest::addColumn<QString>("body");
        QTest::newRow("minutes of 60") << "GPGGA,1,4860.000,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("latitude above 90") << "GPGGA,1,9000.001,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("longitude above 180") << "GPGGA,1,4807.038,N,18100.000,E,1,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("hemisphere") << "GPGGA,1,4807.038,E,01131.000,E,1,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("quality 9") << "GPGGA,1,4807.038,N,01131.000,E,9,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("no quality") << "GPGGA,1,4807.038,N,01131.000,E,,08,0.9,545.4,M,46.9,M,,";
        QTest::newRow("feet") << "GPGGA,1,4807.038,N,01131.000,E,1,08,0.9,545.4,F,46.9,M,,";
        QTest::newRow("cut short") << "GPGGA,1,4807.038,N,01131.000,E,1";
        QTest::newRow("another sentence") << "GPGLL,4807.038,N,01131.000,E,1,A,A,1,1,1,1,1,1,1";
        QTest::newRow("text for a number") << "GPGGA,1,4807.038,N,01131.000,E,1,08,x,545.4,M,46.9,M,,";
        QTest::newRow("no position") << "GPGGA,1,,,,,0,00,,,M,,M,,";
        QTest::newRow("sign in minutes") << "GPGGA,1,48-7.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,";
    }
    void refusesBrokenPositions()
    {
        QFETCH(QString, body);
        QVERIFY(!parseGga(sentence(body.toStdString())));
    }
    void refusesEverySingleFlippedBit()
    {
        const std::string good = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47";  // [NMEA-SAMPLES]
        QVERIFY(parseGga(good));
        for (std::size_t i = 1; i + 3 < good.size(); ++i)
            for (int bit = 0; bit < 7; ++bit) {
                std::string bad = good;
                bad[i] = static_cast<char>(bad[i] ^ (1 << bit));
                QVERIFY2(!checkedSentence(bad), bad.c_str());
            }
    }
    void takesOnlyMeasuredFixesAsATestPlace()
    {
        for (const int quality : {1, 2, 3, 4, 5})
            QVERIFY(acceptableAsTestPlace(quality));
        for (const int quality : {-1, 0, 6, 7, 8, 9})
            QVERIFY(!acceptableAsTestPlace(quality));
        QVERIFY(acceptableAsTestPlace(8).error().what.find("simulated") != std::string::npos);
    }
    void refusesErrorsThatAreMissingOrNegative()
    {
        QVERIFY(parseGst(sentence("GNGST,1,0.1,,,,3.0,4.0,5.0")));
        QCOMPARE(parseGst(sentence("GNGST,1,0.1,,,,3.0,4.0,"))->drmsM, 5.0);
        QVERIFY(!parseGst(sentence("GNGST,1,0.1,,,,,,5.0")));
        QVERIFY(!parseGst(sentence("GNGST,1,0.1,,,,-3.0,4.0,5.0")));
        QVERIFY(!parseGst("$GPGST,172814.0,0.006,0.023,0.020,273.6,0.023,0.020,0.031*6B"));
    }
};

QTEST_GUILESS_MAIN(NmeaTest)
#include "nmea_test.moc"
