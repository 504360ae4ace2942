#include "position/averager.h"
#include "position/position_source.h"

#include <QFile>
#include <QGeoPositionInfo>
#include <QSignalSpy>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QtTest>

#include <cmath>
#include <numbers>

using namespace groundcount::position;

namespace {

QByteArray sentence(const QByteArray& body)
{
    char sum = 0;
    for (const char c : body)
        sum = static_cast<char>(sum ^ c);
    return '$' + body + '*' + QByteArray::number(static_cast<unsigned char>(sum), 16).rightJustified(2, '0').toUpper() + "\r\n";
}
QByteArray gga(const QByteArray& utc, int quality, const QByteArray& latitude = "4807.038000", const QByteArray& longitude = "01131.000000")
{
    return sentence("GNGGA," + utc + ',' + latitude + ",N," + longitude + ",E," + QByteArray::number(quality) + ",12,0.9,545.4,M,46.9,M,,");
}
QByteArray gst(const QByteArray& utc, double north, double east)
{
    return sentence("GNGST," + utc + ",1.0,1.0,1.0,0.0," + QByteArray::number(north) + ',' + QByteArray::number(east) + ",0.05");
}
QByteArray rmc(const QByteArray& utc, char status)
{
    return sentence("GNRMC," + utc + ',' + status + ",4807.038000,N,01131.000000,E,1.2,84.4,090626,,,A");
}

/// A feed with a started source and everything it says.
struct Bench {
    SentenceFeed feed;
    NmeaSource source{&feed};
    QList<Fix> fixes;
    QStringList noFix;
    QStringList refusals;
    QList<QGeoPositionInfo> positions;

    Bench()
    {
        source.setEpochSilence(40);
        QObject::connect(&source, &NmeaSource::fixed, [this](const Fix& fix) { fixes.append(fix); });
        QObject::connect(&source, &NmeaSource::noFix, [this](const QString& why) { noFix.append(why); });
        QObject::connect(&source, &NmeaSource::sentenceRefused, [this](const QString& why) { refusals.append(why); });
        QObject::connect(&source, &NmeaSource::positionUpdated, [this](const QGeoPositionInfo& info) { positions.append(info); });
        source.startUpdates();
    }
    void epoch(const QByteArray& bytes)
    {
        feed.push(bytes);
        QTest::qWait(90);
    }
};

Fix still(double north, double east, int quality, std::optional<double> sigma)
{
    constexpr double kMetresPerDegree = 6378137.0 * std::numbers::pi / 180; // at the equator, along it
    Fix fix;
    fix.latitude = north / (kMetresPerDegree * (1 - 0.00669437999014)); // meridian radius at the equator: a (1 - e2)
    fix.longitude = east / kMetresPerDegree;
    fix.quality = quality;
    fix.qualityWord = "kind";
    fix.sigmaNorthM = fix.sigmaEastM = sigma;
    fix.raw = {"$x"};
    return fix;
}

bool close(double a, double b, double tolerance)
{
    return std::abs(a - b) <= tolerance;
}

}  // namespace

class PositionSourceTest : public QObject {
    Q_OBJECT
private slots:
    void readsThePublishedSentence();
    void takesQualityAndSigmaOfItsOwnEpochOnly();
    void givesQtAnAccuracyOfItsOwnEpochOnly();
    void refusesABadChecksum();
    void refusesAVoidFixWhateverElseIsSent();
    void readsAStreamWithoutADate();
    void takesSentencesInAnyOrder();
    void doesNotLetAnEndlessLineBlockTheNext();
    void keepsTheSentencesOfEachFix();
    void replaysAFileEndToEnd();
    void refusesAFileWithoutPositions();
    void saysLostWhenTheLineIsPulled();
    void comesBackWhenTheReceiverDoes();
    void saysLostAfterASilence();
    void flagsAFrozenReceiver();
    void flagsAJump();
    void measuresOffsetsLikeQt();
    void refusesSimulatedTypedAndEstimatedPlaces();
    void averagesWhileHeldStill();
    void beginsAnewWhenMovedOrWhenQualityChanges();
    void namesItsCircle();
};

// The sentence is published [NMEA-SAMPLES]; latitude 48 + 7.038/60, longitude 11 + 31/60, height 545.4 + 46.9.
void PositionSourceTest::readsThePublishedSentence()
{
    Bench bench;
    bench.epoch("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n");
    QCOMPARE(bench.fixes.size(), 1);
    const Fix fix = bench.fixes[0];
    QVERIFY(close(fix.latitude, 48.1173, 1e-9));
    QVERIFY(close(fix.longitude, 11.516666667, 1e-9));
    QVERIFY(close(*fix.heightEllipsoid, 592.3, 1e-9));
    QCOMPARE(fix.quality, 1);
    QCOMPARE(fix.qualityWord, QStringLiteral("single"));
    QCOMPARE(fix.utc, QTime(12, 35, 19));
    QVERIFY(!fix.sigmaNorthM && !fix.drmsM());
}

void PositionSourceTest::takesQualityAndSigmaOfItsOwnEpochOnly()
{
    Bench bench;
    bench.epoch(rmc("160000.00", 'A') + gga("160000.00", 4) + gst("160000.00", 0.011, 0.009));
    bench.epoch(rmc("160001.00", 'A') + gga("160001.00", 5) + gst("160001.00", 0.31, 0.22));
    bench.epoch(rmc("160002.00", 'A') + gga("160002.00", 1));
    bench.epoch(rmc("160003.00", 'V') + sentence("GNGGA,160003.00,,,,,0,00,,,M,,M,,"));
    bench.epoch(rmc("160004.00", 'A') + gga("160004.00", 4) + gst("160004.00", 0.012, 0.010));
    QCOMPARE(bench.fixes.size(), 4);
    QCOMPARE(bench.noFix.size(), 1);
    const int quality[] = {4, 5, 1, 4};
    for (int i = 0; i < 4; ++i)
        QCOMPARE(bench.fixes[i].quality, quality[i]);
    QCOMPARE(*bench.fixes[0].sigmaNorthM, 0.011);
    QCOMPARE(*bench.fixes[1].sigmaEastM, 0.22);
    QVERIFY(!bench.fixes[2].sigmaNorthM && !bench.fixes[2].sigmaEastM); // never the float's
    QCOMPARE(*bench.fixes[3].sigmaNorthM, 0.012);
    QVERIFY(close(*bench.fixes[0].drmsM(), std::sqrt(0.011 * 0.011 + 0.009 * 0.009), 1e-12));
    QCOMPARE(*bench.fixes[0].utcDate, QDate(2026, 6, 9));
    QVERIFY(close(*bench.fixes[0].courseDegrees, 84.4, 1e-6));
}

void PositionSourceTest::givesQtAnAccuracyOfItsOwnEpochOnly()
{
    Bench bench;
    bench.epoch(rmc("160000.00", 'A') + gga("160000.00", 4) + gst("160000.00", 0.03, 0.04));
    bench.epoch(rmc("160001.00", 'A') + gga("160001.00", 1));
    QCOMPARE(bench.positions.size(), 2);
    QVERIFY(close(bench.positions[0].attribute(QGeoPositionInfo::HorizontalAccuracy), 0.05, 1e-6));
    QVERIFY(std::isnan(bench.positions[1].attribute(QGeoPositionInfo::HorizontalAccuracy)));
    QVERIFY(close(bench.positions[0].coordinate().latitude(), 48.1173, 1e-9));
}

void PositionSourceTest::refusesABadChecksum()
{
    Bench bench;
    QByteArray bad = gga("160000.00", 4);
    bad.replace("4807.038000", "4907.038000"); // 111 km off, sum unchanged
    bench.epoch(bad);
    QVERIFY(bench.fixes.isEmpty());
    QCOMPARE(bench.refusals.size(), 1);
    QCOMPARE(bench.source.refusedSentences(), 1);
    bench.epoch(gga("160001.00", 4));
    QCOMPARE(bench.fixes.size(), 1);
}

void PositionSourceTest::refusesAVoidFixWhateverElseIsSent()
{
    Bench bench;
    bench.epoch(rmc("160000.00", 'V') + sentence("GNGSA,A,1,,,,,,,,,,,,,,,") + gga("160000.00", 1));
    QVERIFY(bench.fixes.isEmpty());
    QVERIFY(bench.positions.isEmpty());
    QCOMPARE(bench.noFix.size(), 1);
}

void PositionSourceTest::readsAStreamWithoutADate()
{
    Bench bench;
    bench.epoch(gga("235959.00", 2));
    bench.epoch(gga("000000.00", 2));
    QCOMPARE(bench.fixes.size(), 2);
    QVERIFY(!bench.fixes[0].utcDate);
    QCOMPARE(bench.fixes[1].utc, QTime(0, 0));
    QVERIFY(bench.fixes[1].heightEllipsoid); // Qt's own altitude is lost at midnight
}

void PositionSourceTest::takesSentencesInAnyOrder()
{
    Bench bench;
    bench.epoch(gst("160000.00", 0.5, 0.6) + gga("160000.000", 4) + rmc("160000.0", 'A'));
    QCOMPARE(bench.fixes.size(), 1);
    QCOMPARE(*bench.fixes[0].sigmaEastM, 0.6);
    // Late sentences of a closed epoch are no second fix and give their sigma to nobody.
    bench.epoch(gst("160000.00", 0.1, 0.1));
    bench.epoch(gga("160001.00", 4));
    QCOMPARE(bench.fixes.size(), 2);
    QVERIFY(!bench.fixes[1].sigmaNorthM);
}

void PositionSourceTest::doesNotLetAnEndlessLineBlockTheNext()
{
    Bench bench;
    bench.feed.push(QByteArray(200000, 'A'));
    bench.epoch("\n" + gga("160000.00", 4));
    QCOMPARE(bench.fixes.size(), 1);
    QCOMPARE(bench.feed.droppedLines(), 1);
}

void PositionSourceTest::keepsTheSentencesOfEachFix()
{
    Bench bench;
    const QByteArray a = gga("160000.00", 4);
    const QByteArray b = gst("160000.00", 0.011, 0.009);
    bench.epoch(a + b);
    bench.epoch(gga("160001.00", 4));
    QCOMPARE(bench.fixes[0].raw, QByteArrayList({a.trimmed(), b.trimmed()}));
    QCOMPARE(bench.fixes[1].raw.size(), 1);
}

void PositionSourceTest::replaysAFileEndToEnd()
{
    QTemporaryDir folder;
    QFile file(folder.filePath("walk.nmea"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    for (int i = 0; i < 20; ++i) {
        const QByteArray utc = "1600" + QByteArray::number(i).rightJustified(2, '0') + ".00";
        file.write(rmc(utc, 'A') + gga(utc, i < 10 ? 4 : 5, "4807.0380" + QByteArray::number(i).rightJustified(2, '0')) + gst(utc, 0.01 + i * 0.001, 0.02));
    }
    file.close();
    PositionSource source;
    QList<Fix> fixes;
    connect(&source, &PositionSource::fixed, this, [&](const Fix& fix) { fixes.append(fix); });
    QSignalSpy finished(&source, &PositionSource::finished);
    QElapsedTimer clock;
    clock.start();
    QVERIFY(source.openFile(file.fileName(), 20).has_value());
    QVERIFY(finished.wait(5000));
    const qint64 took = clock.elapsed();
    QVERIFY2(took > 800 && took < 3000, qPrintable(QString::number(took))); // 19 s at twenty times the speed: 0.95 s
    QTRY_COMPARE(fixes.size(), 20);
    QCOMPARE(source.state(), PositionSource::State::Live);
    for (int i = 0; i < 20; ++i) {
        QCOMPARE(fixes[i].quality, i < 10 ? 4 : 5);
        QVERIFY(close(*fixes[i].sigmaNorthM, 0.01 + i * 0.001, 1e-9));
        QCOMPARE(fixes[i].utc.second(), i);
        QVERIFY(!fixes[i].jumped && !fixes[i].frozen);
    }
    QCOMPARE(source.rawSpan().size(), 60);
}

void PositionSourceTest::refusesAFileWithoutPositions()
{
    QTemporaryDir folder;
    QFile file(folder.filePath("other.txt"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("not a sentence\n$GNGSV,1,1,00*65\n");
    file.close();
    PositionSource source;
    QCOMPARE(source.openFile(file.fileName(), 1).error().fault, groundcount::Fault::Refused);
    QCOMPARE(source.openFile(folder.filePath("none"), 1).error().fault, groundcount::Fault::Unavailable);
    QCOMPARE(source.openFile(file.fileName(), std::nan("")).error().fault, groundcount::Fault::Refused);
    QCOMPARE(source.openTcp("", 0).error().fault, groundcount::Fault::Refused);
}

void PositionSourceTest::saysLostWhenTheLineIsPulled()
{
    QTcpServer server;
    QVERIFY(server.listen(QHostAddress::LocalHost));
    PositionSource source;
    QStringList troubles;
    connect(&source, &PositionSource::trouble, this, [&](const QString& what) { troubles.append(what); });
    QSignalSpy fixed(&source, &PositionSource::fixed);
    QVERIFY(source.openTcp("127.0.0.1", server.serverPort()).has_value());
    QVERIFY(server.waitForNewConnection(2000));
    std::unique_ptr<QTcpSocket> receiver(server.nextPendingConnection());
    const QByteArray epoch = gga("160000.00", 4) + gst("160000.00", 0.01, 0.01);
    receiver->write(epoch.left(30)); // in two pieces, cut within a sentence
    QTest::qWait(30);
    receiver->write(epoch.mid(30));
    QVERIFY(fixed.wait(2000));
    QCOMPARE(source.state(), PositionSource::State::Live);
    QVERIFY(source.lastFix()->sigmaNorthM.has_value());
    receiver->write(gga("160001.00", 4).left(25)); // unplugged midway
    receiver->flush();
    receiver.reset();
    QTRY_COMPARE(source.state(), PositionSource::State::Lost);
    QTest::qWait(250);
    QCOMPARE(fixed.count(), 1);
    QVERIFY(troubles.join(' ').contains("hung up"));
}

void PositionSourceTest::comesBackWhenTheReceiverDoes()
{
    QTcpServer server;
    QVERIFY(server.listen(QHostAddress::LocalHost));
    PositionSource source;
    QSignalSpy fixed(&source, &PositionSource::fixed);
    QVERIFY(source.openTcp("127.0.0.1", server.serverPort()).has_value());
    for (int round = 0; round < 2; ++round) {
        QTRY_VERIFY_WITH_TIMEOUT(server.hasPendingConnections(), 6000);
        std::unique_ptr<QTcpSocket> receiver(server.nextPendingConnection());
        receiver->write(gga(round == 0 ? "160000.00" : "160009.00", 4));
        QTRY_COMPARE(fixed.count(), round + 1);
        QCOMPARE(source.state(), PositionSource::State::Live);
    }
    QTRY_COMPARE(source.state(), PositionSource::State::Lost);
}

void PositionSourceTest::saysLostAfterASilence()
{
    QBuffer line;
    line.open(QIODevice::ReadOnly);
    PositionSource source;
    source.setLostAfter(200);
    QVERIFY(source.openDevice(&line).has_value());
    QCOMPARE(source.state(), PositionSource::State::None);
    line.close();
    line.setData(gga("160000.00", 4));
    line.open(QIODevice::ReadOnly);
    QVERIFY(source.openDevice(&line).has_value());
    QTRY_COMPARE(source.state(), PositionSource::State::Live);
    QTRY_COMPARE(source.state(), PositionSource::State::Lost);
    QVERIFY(!source.openDevice(nullptr).has_value());
}

void PositionSourceTest::flagsAFrozenReceiver()
{
    FixWatch watch;
    for (int i = 0; i < 4; ++i) {
        Fix fix = still(0, i * 0.01, 4, 0.01);
        fix.utc = QTime(16, 0, 0);
        watch.judge(fix);
        QCOMPARE(fix.frozen, i >= 2);
    }
    Fix live = still(0, 0.01, 4, 0.01);
    live.utc = QTime(16, 0, 1);
    watch.judge(live);
    QVERIFY(!live.frozen);
    for (int i = 0; i < 31; ++i) {
        Fix same = still(0, 0.5, 4, 0.01);
        same.utc = QTime(16, 1, 0).addSecs(i);
        watch.judge(same);
        QCOMPARE(same.frozen, i >= 29);
    }
}

void PositionSourceTest::flagsAJump()
{
    FixWatch watch;
    const auto judge = [&](double east, int second) {
        Fix fix = still(0, east, 4, 0.02);
        fix.utc = QTime(16, 0, second);
        watch.judge(fix);
        return fix.jumped;
    };
    QVERIFY(!judge(0, 0));
    QVERIFY(!judge(25, 1));  // 25 m/s, a vehicle
    QVERIFY(judge(125, 2));  // 100 m in a second
    QVERIFY(!judge(125.1, 3));
}

// An independent measure: Qt's great circle on a sphere agrees within the ellipsoid's flattening.
void PositionSourceTest::measuresOffsetsLikeQt()
{
    const QGeoCoordinate a(40.1, -89.2);
    for (double bearing = 0; bearing < 360; bearing += 30) {
        const QGeoCoordinate b = a.atDistanceAndAzimuth(100, bearing);
        const Offset away = offsetBetween(a.latitude(), a.longitude(), b.latitude(), b.longitude());
        QVERIFY(close(std::hypot(away.northM, away.eastM), 100, 0.4));
        QVERIFY(close(std::remainder(std::atan2(away.eastM, away.northM) * 180 / std::numbers::pi - bearing, 360), 0, 0.3));
    }
    QVERIFY(close(offsetBetween(0, 179.9999, 0, -179.9999).eastM, 22.26, 0.01)); // across the date line
}

void PositionSourceTest::refusesSimulatedTypedAndEstimatedPlaces()
{
    Averager averager(1.0);
    for (const int quality : {0, 6, 7, 8, 9, -1})
        QVERIFY(!averager.add(still(0, 0, quality, 0.01)).has_value());
    QCOMPARE(averager.count(), 0);
    for (const int quality : {1, 2, 3, 4, 5}) {
        averager.restart();
        QVERIFY(averager.add(still(0, 0, quality, 0.01)).has_value());
    }
    Fix frozen = still(0, 0, 4, 0.01);
    frozen.frozen = true;
    QVERIFY(!averager.add(frozen).has_value());
    Fix jumped = still(0, 0, 4, 0.01);
    jumped.jumped = true;
    QVERIFY(!averager.add(jumped).has_value());
    QCOMPARE(averager.count(), 1);
}

void PositionSourceTest::averagesWhileHeldStill()
{
    Averager averager(2.0);
    for (const double d : {-0.3, -0.1, 0.1, 0.3})
        QVERIFY(averager.add(still(d, 2 * d, 1, std::nullopt)).has_value());
    const Average mean = *averager.average();
    QCOMPARE(mean.count, 4);
    QVERIFY(close(mean.latitude, 0, 1e-12) && close(mean.longitude, 0, 1e-12));
    // By hand: sum of squares 0.09 + 0.01 + 0.01 + 0.09 = 0.2, over 3, root 0.2582; east twice that; 2DRMS = 2 x 0.5774.
    QVERIFY(close(mean.spreadNorthM, 0.25820, 2e-5));
    QVERIFY(close(mean.spreadEastM, 0.51640, 2e-5));
    QVERIFY(close(*mean.radiusM, 1.15470, 4e-5));
    QCOMPARE(mean.formula, CircleFormula::FromSpread);
    QCOMPARE(mean.raw.size(), 4);
    QVERIFY(close(mean.scatter[3].eastM, 0.6, 1e-4));
}

void PositionSourceTest::beginsAnewWhenMovedOrWhenQualityChanges()
{
    Averager averager(1.0);
    QVERIFY(averager.add(still(0, 0, 4, 0.01)).has_value());
    QVERIFY(averager.add(still(0.01, 0, 4, 0.01)).has_value());
    QCOMPARE(averager.count(), 2);
    QVERIFY(averager.add(still(3, 0, 4, 0.01)).has_value());
    QCOMPARE(averager.count(), 1);
    QVERIFY(averager.add(still(3, 0, 5, 0.2)).has_value());
    QCOMPARE(averager.count(), 1);
    QCOMPARE(averager.average()->quality, 5);
}

void PositionSourceTest::namesItsCircle()
{
    Averager averager(1.0);
    QVERIFY(averager.add(still(0, 0, 1, std::nullopt)).has_value());
    QVERIFY(!averager.average()->radiusM); // one fix that says nothing about itself
    averager.restart();
    // 2DRMS = 2 sqrt(0.3^2 + 0.3^2), the spread of 1 cm being smaller.
    QVERIFY(averager.add(still(0, 0, 5, 0.3)).has_value());
    QVERIFY(averager.add(still(0.01, 0, 5, 0.3)).has_value());
    QVERIFY(close(*averager.average()->radiusM, 0.848528, 1e-6));
    QCOMPARE(averager.average()->formula, CircleFormula::FromReceiver);
    // A receiver that thinks too well of itself is overruled by what was seen.
    averager.restart();
    for (const double d : {-0.4, 0.4, -0.4, 0.4})
        QVERIFY(averager.add(still(d, 0, 4, 0.005)).has_value());
    QCOMPARE(averager.average()->formula, CircleFormula::FromSpread);
    QVERIFY(*averager.average()->radiusM > 0.9);
    QVERIFY(circleFormulaWord(CircleFormula::FromSpread) != circleFormulaWord(CircleFormula::FromReceiver));
}

QTEST_GUILESS_MAIN(PositionSourceTest)
#include "position_source_test.moc"
