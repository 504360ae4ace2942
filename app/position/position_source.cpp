// Longer than 250 lines: the states of one receiver: lost, frozen, jumping, stale, void.
#include "position/position_source.h"

#include <QGeoPositionInfoSource>
#ifdef GROUNDCOUNT_SERIAL
#include <QSerialPort>
#else
class QSerialPort {};  // never made where a device has no serial lines
#endif
#include <QTcpSocket>

#include <cmath>
#include <utility>

namespace groundcount::position {
namespace {

constexpr int kLostAfterMs = 5000;   // common practice, no source: five missed epochs of a slow receiver
constexpr int kReconnectMs = 2000;
constexpr int kMostAgeS = 30;        // of a position that the device's own receiver gives; common practice, no source
constexpr qsizetype kMostSpanLines = 4000;

}  // namespace

PositionSource::PositionSource(QObject* parent) : QObject(parent)
{
    qRegisterMetaType<Fix>();
    m_lostTimer.setSingleShot(true);
    m_lostTimer.setInterval(kLostAfterMs);
    connect(&m_lostTimer, &QTimer::timeout, this, [this] {
        if (m_state == State::Live || m_state == State::Frozen)
            drop(tr("No position for %1 s.").arg(m_lostTimer.interval() / 1000));
    });
    m_reconnectTimer.setSingleShot(true);
    m_reconnectTimer.setInterval(kReconnectMs);
    connect(&m_reconnectTimer, &QTimer::timeout, this, &PositionSource::reconnect);
}

PositionSource::~PositionSource()
{
    close();
}

void PositionSource::close()
{
    m_reconnectTimer.stop();
    m_lostTimer.stop();
    if (m_device)
        m_device->disconnect(this);
    m_device.clear();
    if (m_socket)
        m_socket->disconnect(this);
    m_socket.reset();
    closeSerial();
    m_replay.reset();
    if (m_receiver)
        m_receiver->stopUpdates();  // or the device's service goes on for as long as the program runs, and takes its battery
    m_receiver.reset();
    m_nmea.reset();
    m_feed.discard();
    m_span.clear();
    m_last.reset();
    m_watch.restart();
    setState(State::None);
}

void PositionSource::openSentences()
{
    m_nmea = std::make_unique<NmeaSource>(&m_feed);
    connect(m_nmea.get(), &NmeaSource::fixed, this, &PositionSource::take);
    connect(m_nmea.get(), &NmeaSource::noFix, this, &PositionSource::trouble);
    connect(m_nmea.get(), &NmeaSource::sentenceRefused, this, &PositionSource::trouble);
    m_nmea->startUpdates();
}

Result<void> PositionSource::openFile(const QString& path, double speed)
{
    close();
    openSentences();
    m_replay = std::make_unique<ReplayFeed>(&m_feed);
    connect(m_replay.get(), &ReplayFeed::finished, this, &PositionSource::finished);
    const auto started = m_replay->start(path, speed);
    if (!started)
        close();
    return started;
}

Result<void> PositionSource::openTcp(const QString& host, quint16 port)
{
    close();
    if (host.isEmpty() || port == 0)
        return refused("A receiver needs a host and a port from 1 to 65535; given are \"" + host.toStdString() + "\" and "
                       + std::to_string(port) + ".");
    m_host = host;
    m_port = port;
    openSentences();
    m_socket = std::make_unique<QTcpSocket>();
    m_socket->setReadBufferSize(64 * 1024);
    connect(m_socket.get(), &QTcpSocket::readyRead, this, [this] { m_feed.push(m_socket->readAll()); });
    connect(m_socket.get(), &QTcpSocket::disconnected, this, [this] {
        drop(tr("The receiver at %1 hung up.").arg(m_host));
        m_reconnectTimer.start();
    });
    connect(m_socket.get(), &QTcpSocket::errorOccurred, this, [this](QAbstractSocket::SocketError error) {
        // A hang-up is told by `disconnected`.
        if (error == QAbstractSocket::RemoteHostClosedError)
            return;
        emit trouble(tr("The receiver at %1 cannot be reached: %2.").arg(m_host, m_socket->errorString()));
        m_reconnectTimer.start();
    });
    connectTcp();
    return {};
}

void PositionSource::connectTcp()
{
    if (!m_socket)
        return;
    m_socket->abort();
    m_socket->connectToHost(m_host, m_port, QIODevice::ReadOnly);
}

void PositionSource::reconnect()
{
    if (m_socket)
        connectTcp();
    else if (!connectSerial())
        m_reconnectTimer.start();
}

#ifdef GROUNDCOUNT_SERIAL
Result<void> PositionSource::openSerial(const QString& line, int bitsPerSecond)
{
    close();
    if (line.isEmpty() || bitsPerSecond < 1200 || bitsPerSecond > 921600)
        return refused("A receiver on a serial line needs the line's name and a speed from 1200 to 921600 bits a second; given are \"" + line.toStdString()
                       + "\" and " + std::to_string(bitsPerSecond) + ".");
    openSentences();
    m_serial = std::make_unique<QSerialPort>(line);
    m_serial->setBaudRate(bitsPerSecond);
    connect(m_serial.get(), &QSerialPort::readyRead, this, [this] { m_feed.push(m_serial->readAll()); });
    connect(m_serial.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        // what fails while the line is being opened is told by connectSerial
        if (error == QSerialPort::NoError || !m_serial->isOpen())
            return;
        m_serial->close();
        drop(tr("The receiver at %1 was unplugged.").arg(m_serial->portName()));
        m_reconnectTimer.start();
    });
    const auto opened = connectSerial();
    if (!opened)
        close();
    return opened;
}

Result<void> PositionSource::connectSerial()
{
    if (m_serial && (m_serial->isOpen() || m_serial->open(QIODevice::ReadOnly)))
        return {};
    return unavailable("The serial line " + (m_serial ? m_serial->portName() : QString()).toStdString() + " cannot be opened: "
                       + (m_serial ? m_serial->errorString() : QString()).toStdString() + ".");
}

void PositionSource::closeSerial()
{
    if (m_serial)
        m_serial->disconnect(this);
    m_serial.reset();
}
#else
Result<void> PositionSource::openSerial(const QString&, int)
{
    close();
    return unavailable("This device has no serial lines.");
}

Result<void> PositionSource::connectSerial()
{
    return unavailable("This device has no serial lines.");
}

void PositionSource::closeSerial() {}
#endif

Result<void> PositionSource::openDevice(QIODevice* device)
{
    close();
    if (!device || !device->isReadable())
        return refused("The line to the receiver must be open for reading; it is not.");
    m_device = device;
    openSentences();
    connect(device, &QIODevice::readyRead, this, [this] { m_feed.push(m_device->readAll()); });
    connect(device, &QIODevice::aboutToClose, this, [this] { drop(tr("The line to the receiver was closed.")); });
    connect(device, &QObject::destroyed, this, [this] { drop(tr("The line to the receiver is gone.")); });
    m_feed.push(device->readAll());
    return {};
}

Result<void> PositionSource::openReceiver()
{
    close();
    // Linux lets an application in by the name of its desktop file (app/package).
    m_receiver.reset(QGeoPositionInfoSource::createDefaultSource({{QStringLiteral("desktopId"), QStringLiteral("groundcount")}}, nullptr));
    if (!m_receiver)
        return unavailable("This device has no position receiver that the app can use.");
    // Asked for nothing, a source may give the least; a place by radio masts is hundreds of metres off and would only look like a jump.
    const auto methods = m_receiver->supportedPositioningMethods();
    m_receiver->setPreferredPositioningMethods(methods & QGeoPositionInfoSource::SatellitePositioningMethods ? QGeoPositionInfoSource::SatellitePositioningMethods
                                                                                                            : QGeoPositionInfoSource::AllPositioningMethods);
    connect(m_receiver.get(), &QGeoPositionInfoSource::positionUpdated, this, &PositionSource::takeReceiver);
    connect(m_receiver.get(), &QGeoPositionInfoSource::errorOccurred, this, [this](QGeoPositionInfoSource::Error error) {
        if (error == QGeoPositionInfoSource::AccessError)
            drop(tr("This device gives the app no position: it is not allowed, or there is no receiver. See the device's settings."));
        else if (error != QGeoPositionInfoSource::NoError)
            drop(tr("This device's receiver gives no position."));
    });
    m_permission.ask(device::Permission::What::Position, this, [this](device::Permission::Answer answer) {
        if (answer == device::Permission::Answer::Denied)
            emit trouble(tr("The app may not use this device's position. Allow it in the device's settings."));
        else if (m_receiver)
            startReceiver();
    });
    return {};
}

void PositionSource::startReceiver()
{
    m_known = m_receiver->lastKnownPosition();
    m_saidOld = false;
    m_receiver->startUpdates();
}

void PositionSource::takeReceiver(const QGeoPositionInfo& info)
{
    if (!info.isValid() || (info.timestamp() == m_known.timestamp() && info.coordinate() == m_known.coordinate()))
        return;
    const QDateTime now = QDateTime::currentDateTime();
    if (info.timestamp().secsTo(now) > kMostAgeS) {
        const auto written = [](const QDateTime& time) { return time.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")); };
        if (!std::exchange(m_saidOld, true))
            emit trouble(tr("This device gives a position of %1 and its clock says %2: a position that old is not used.").arg(written(info.timestamp()), written(now)));
        return;
    }
    Fix fix;
    fix.latitude = info.coordinate().latitude();
    fix.longitude = info.coordinate().longitude();
    fix.quality = 1;
    fix.qualityWord = QStringLiteral("phone");  // sealed as it stands, whatever the language
    fix.utc = info.timestamp().toUTC().time();
    fix.utcDate = info.timestamp().toUTC().date();
    const double accuracy = info.attribute(QGeoPositionInfo::HorizontalAccuracy);
    if (info.hasAttribute(QGeoPositionInfo::HorizontalAccuracy) && accuracy > 0)
        fix.sigmaNorthM = fix.sigmaEastM = accuracy / std::sqrt(2.0);
    if (info.hasAttribute(QGeoPositionInfo::Direction) && std::isfinite(info.attribute(QGeoPositionInfo::Direction)))
        fix.courseDegrees = info.attribute(QGeoPositionInfo::Direction);
    take(fix);
}

void PositionSource::take(Fix fix)
{
    m_watch.judge(fix);
    m_span += fix.raw;
    if (m_span.size() > kMostSpanLines)
        m_span.remove(0, m_span.size() - kMostSpanLines);
    m_last = fix;
    // A frozen receiver does not put the clock back: it counts as lost when it stays frozen.
    if (!fix.frozen)
        m_lostTimer.start();
    setState(fix.frozen ? State::Frozen : State::Live);
    emit fixed(fix);
}

void PositionSource::setState(State state)
{
    if (m_state == state)
        return;
    m_state = state;
    emit stateChanged(state);
}

void PositionSource::drop(const QString& what)
{
    m_lostTimer.stop();
    if (m_state != State::None)
        setState(State::Lost);
    emit trouble(what);
}

}  // namespace groundcount::position
