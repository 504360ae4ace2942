#include "app/nmea_sample.h"
#include "app/sample_book.h"
#include "position/position_source.h"
#include "view/receiver.h"

#include "book/store.h"

#include <QSignalSpy>
#include <QTcpServer>
#include <QTcpSocket>
#include <QtTest>

#include <fcntl.h>
#include <stdlib.h>
#include <termios.h>
#include <unistd.h>

using namespace groundcount;
using position::PositionSource;
using view::Receiver;

namespace {

constexpr int kPatience = 20'000;  // milliseconds; a busy machine is no fault

/// One epoch: second of the minute, fix quality (0 none, 1 single, 4 fixed, 5 float), one-sigma in metres.
QByteArray epoch(int second, int quality, double sigma, int place)
{
    const QByteArray utc = "1415" + QByteArray::number(second).rightJustified(2, '0') + ".00";
    const QByteArray seconds = QByteArray::number(3247.0 + place * 1e-5, 'f', 7);
    return sentence("GNGGA," + utc + ',' + seconds + ",N,09648.0000000,W," + QByteArray::number(quality) + ",12,0.9,165.4,M,-26.9,M,,") +
           sentence("GNGST," + utc + ",1.0,1.0,1.0,0.0," + QByteArray::number(sigma) + ',' + QByteArray::number(sigma) + ",0.05") +
           sentence("GNRMC," + utc + ',' + (quality == 0 ? "V" : "A") + ',' + seconds + ",N,09648.0000000,W,0.0,0.0,090626,,,A");
}

/// A live receiver: no two places are alike.
QByteArray epoch(int second, int quality, double sigma)
{
    return epoch(second, quality, sigma, second);
}

/// Points a receiver at a server on this machine.
void useNetwork(Receiver& receiver, const QTcpServer& server)
{
    receiver.pickKind(Receiver::Network);
    receiver.setWhere(QString("127.0.0.1:%1").arg(server.serverPort()));
    receiver.use();
}

/// The far end of a serial line: what is written here comes out of `name()`.
class FarEnd {
public:
    FarEnd() : m_handle(posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK))
    {
        if (m_handle < 0 || grantpt(m_handle) != 0 || unlockpt(m_handle) != 0)
            qFatal("no pseudo-terminal");
        m_name = QString::fromLocal8Bit(ptsname(m_handle));
    }
    ~FarEnd() { unplug(); }
    QString name() const { return m_name; }
    void say(const QByteArray& bytes) { QCOMPARE(::write(m_handle, bytes.constData(), static_cast<std::size_t>(bytes.size())), bytes.size()); }
    void unplug()
    {
        if (m_handle >= 0)
            ::close(m_handle);
        m_handle = -1;
    }

private:
    int m_handle;
    QString m_name;
};

}  // namespace

/// The receiver of the app: chosen, kept, and what a person is told when it is lost, repeats itself or jumps.
class ReceiverTest : public QObject {
    Q_OBJECT

private slots:
    void aSerialLineIsUnpluggedInTheMiddle();
    void anRtkSessionNamesEachFix();
    void aNetworkReceiverHangsUp();
    void aChoiceIsOpenedAgainWithTheBook();
    void aJumpIsSaidAndForgottenWhenItStandsStill();
    void saysWhatCannotBeOpened();
};

void ReceiverTest::aSerialLineIsUnpluggedInTheMiddle()
{
    tests::SampleBook book;
    FarEnd line;
    Receiver receiver(&book.session());
    QCOMPARE(receiver.state(), QString("No receiver in use."));
    receiver.pickKind(Receiver::Serial);
    QVERIFY(receiver.missing().contains("serial line") && receiver.asksSpeed());
    receiver.setWhere(line.name());
    receiver.setSpeed("57600");
    receiver.use();
    QVERIFY2(receiver.trouble().isEmpty(), qPrintable(receiver.trouble()));
    QCOMPARE(receiver.state(), QString("Waiting for the first position."));
    for (int second = 0; second < 3; ++second) {
        line.say(epoch(second, 4, 0.01));
        QTest::qWait(120);
    }
    QTRY_COMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    QVERIFY(book.session().ownPlace());
    QSignalSpy told(&receiver, &Receiver::changed);
    line.unplug();
    QTRY_COMPARE_WITH_TIMEOUT(receiver.state(), QString("The receiver is lost."), kPatience);
    QVERIFY2(receiver.trouble().contains("was unplugged"), qPrintable(receiver.trouble()));
    QVERIFY(!book.session().ownPlace());
    QCOMPARE(book.session().ownLabel(), QString("Last seen here"));
    QVERIFY(told.count() >= 1);
}

void ReceiverTest::anRtkSessionNamesEachFix()
{
    tests::SampleBook book;
    FarEnd line;
    Receiver receiver(&book.session());
    receiver.pickKind(Receiver::Serial);
    receiver.setWhere(line.name());
    receiver.use();
    int second = 0;
    for (const auto& [quality, word, sigma] : {std::tuple(1, "single", 2.5), std::tuple(5, "RTK float", 0.4), std::tuple(4, "RTK fixed", 0.012)}) {
        for (int i = 0; i < 2; ++i) {
            line.say(epoch(second++, quality, sigma));
            QTest::qWait(120);
        }
        QTRY_COMPARE(receiver.state(), QString("Positions come: %1.").arg(word));
        const auto fix = book.session().positionSource()->lastFix();
        QVERIFY(fix && fix->drmsM() && std::fabs(*fix->drmsM() - sigma * std::sqrt(2.0)) < 1e-9);
    }
    // No fix: nothing of it becomes a place; when it lasts, the receiver is lost and says so.
    auto* source = book.session().positionSource();
    source->setLostAfter(400);
    line.say(epoch(second++, 4, 0.012));  // starts the clock anew
    QTRY_COMPARE(source->lastFix()->utc.second(), second - 1);
    const auto last = source->lastFix()->utc;
    for (int i = 0; i < 6; ++i) {
        line.say(epoch(second++, 0, 0.0));
        QTest::qWait(120);
    }
    QCOMPARE(source->lastFix()->utc, last);
    QTRY_COMPARE(receiver.state(), QString("The receiver is lost."));
    QVERIFY(!receiver.trouble().isEmpty());
    line.say(epoch(second++, 4, 0.012));
    QTRY_COMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    QVERIFY2(receiver.trouble().isEmpty(), qPrintable(receiver.trouble()));
}

void ReceiverTest::aNetworkReceiverHangsUp()
{
    tests::SampleBook book;
    QTcpServer server;
    QVERIFY(server.listen(QHostAddress::LocalHost));
    Receiver receiver(&book.session());
    useNetwork(receiver, server);
    QTRY_VERIFY(server.hasPendingConnections());
    {
        const std::unique_ptr<QTcpSocket> there(server.nextPendingConnection());
        there->write(epoch(0, 4, 0.01));
        there->write(epoch(1, 4, 0.01));
        QTRY_COMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    }
    QTRY_VERIFY_WITH_TIMEOUT(receiver.trouble().contains("hung up"), kPatience);
    QVERIFY(!book.session().ownPlace());
    QTRY_VERIFY_WITH_TIMEOUT(server.hasPendingConnections(), kPatience);  // it is called again
    const std::unique_ptr<QTcpSocket> back(server.nextPendingConnection());
    back->write(epoch(2, 4, 0.01));
    back->write(epoch(3, 4, 0.01));
    QTRY_COMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    QVERIFY(receiver.trouble().isEmpty() && book.session().ownPlace());
    // A receiver that repeats itself is not believed.
    for (int i = 0; i < 40 && receiver.state() != "The receiver repeats itself."; ++i) {
        back->write(epoch(4 + i, 4, 0.01, 3));
        back->flush();
        QTest::qWait(100);
    }
    QCOMPARE(receiver.state(), QString("The receiver repeats itself."));
    QVERIFY(receiver.trouble().contains("do not rely on it") && !book.session().ownPlace());
}

void ReceiverTest::aChoiceIsOpenedAgainWithTheBook()
{
    tests::SampleBook book;
    QTcpServer server;
    QVERIFY(server.listen(QHostAddress::LocalHost));
    {
        Receiver receiver(&book.session());
        useNetwork(receiver, server);
    }
    book.session().stopReceiving();
    QVERIFY(!book.session().positionSource());
    Receiver again(&book.session());
    QCOMPARE(again.kindIndex(), int(Receiver::Network));
    QVERIFY(again.where().endsWith(QString::number(server.serverPort())));
    QVERIFY(book.session().positionSource());
    again.pickKind(Receiver::None);
    again.use();
    QVERIFY(!book.session().positionSource());
    QCOMPARE(again.state(), QString("No receiver in use."));
}

void ReceiverTest::aJumpIsSaidAndForgottenWhenItStandsStill()
{
    tests::SampleBook book;
    FarEnd line;
    Receiver receiver(&book.session());
    receiver.pickKind(Receiver::Serial);
    receiver.setWhere(line.name());
    receiver.use();
    int second = 0;
    const auto stand = [&](int place, int times) {
        for (int i = 0; i < times; ++i) {
            line.say(epoch(second, 4, 0.01, place + second));
            ++second;
            QTest::qWait(120);
        }
    };
    stand(0, 3);
    QTRY_COMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    QVERIFY2(receiver.trouble().isEmpty(), qPrintable(receiver.trouble()));
    QSignalSpy told(&book.session(), &view::Session::placeChanged);
    stand(60000, 1);  // 0.6' of latitude: 1.1 km in a second
    // An epoch counts when the next begins, or after a moment.
    QTRY_VERIFY2_WITH_TIMEOUT(receiver.trouble().contains("jumped farther than anyone moves"), qPrintable(receiver.trouble()), kPatience);
    QCOMPARE(receiver.trouble(), book.session().receiverTrouble());
    QVERIFY(book.session().positionSource()->lastFix()->jumped && !told.isEmpty());
    QCOMPARE(receiver.state(), QString("Positions come: RTK fixed."));
    stand(60000, 2);
    QTRY_VERIFY2_WITH_TIMEOUT(receiver.trouble().isEmpty(), qPrintable(receiver.trouble()), kPatience);
    // A vehicle is no jump: 18 m in a second.
    stand(60000 + 1000, 1);
    QTest::qWait(300);
    QVERIFY2(receiver.trouble().isEmpty(), qPrintable(receiver.trouble()));
}

void ReceiverTest::saysWhatCannotBeOpened()
{
    tests::SampleBook book;
    Receiver receiver(&book.session());
    receiver.pickKind(Receiver::Network);
    for (const char* where : {"192.168.4.1", ":5017", "192.168.4.1:70000", "192.168.4.1:none"}) {
        receiver.setWhere(where);
        receiver.use();
        QVERIFY2(receiver.trouble().contains("HOST:PORT with a port from 1 to 65535"), qPrintable(receiver.trouble()));
        QVERIFY(!book.session().positionSource());
    }
    receiver.pickKind(Receiver::Serial);
    receiver.setWhere("/dev/there-is-none");
    receiver.use();
    QVERIFY2(receiver.trouble().contains("cannot be opened"), qPrintable(receiver.trouble()));
    receiver.setSpeed("fast");
    receiver.use();
    QVERIFY2(receiver.trouble().contains("1200 to 921600"), qPrintable(receiver.trouble()));
    receiver.pickKind(9);
    QCOMPARE(receiver.kindIndex(), int(Receiver::Serial));
}

QTEST_MAIN(ReceiverTest)
#include "receiver_test.moc"
