#pragma once

#include "device/permission.h"
#include "position/fix.h"
#include "position/fix_watch.h"
#include "position/nmea_source.h"
#include "position/replay_feed.h"

#include "method/error.h"

#include <QGeoPositionInfo>
#include <QPointer>
#include <QTimer>

#include <memory>

class QGeoPositionInfoSource;
class QSerialPort;  // absent where a device has no serial lines
class QTcpSocket;

namespace groundcount::position {

/// Where the positions come from, and whether they still come. One source at a time; opening another closes the one before.
class PositionSource : public QObject {
    Q_OBJECT
public:
    enum class State {
        None,   ///< no fix yet since the source was opened
        Live,   ///< the last fix is fresh
        Lost,   ///< there were fixes, none for `lostAfter`, or the receiver hung up
        Frozen  ///< fixes come but repeat themselves
    };
    Q_ENUM(State)

    explicit PositionSource(QObject* parent = nullptr);
    ~PositionSource() override;

    /// A recorded stream. @param speed as in ReplayFeed @error as ReplayFeed::start
    Result<void> openFile(const QString& path, double speed);
    /// A receiver or its bridge that sends sentences over TCP; reconnects by itself every two seconds.
    /// @error Refused: empty host, port 0
    Result<void> openTcp(const QString& host, quint16 port);
    /// A receiver on a serial line, 8 data bits, no parity, 1 stop bit; tried again every two seconds when it is unplugged.
    /// @param line path or name of the port; @param bitsPerSecond 1200 to 921600
    /// @error Refused: empty line, speed outside the range; Unavailable: the line cannot be opened, or this device has none
    Result<void> openSerial(const QString& line, int bitsPerSecond);
    /// Any other line (Bluetooth) that somebody has opened; not owned.
    /// @error Refused: not open for reading
    Result<void> openDevice(QIODevice* device);
    /// The device's own receiver, after asking for permission. Quality 1, word "phone"; sigmas from its stated accuracy, taken as a radius of 68 %
    /// as Android defines it (from memory): sigma of each axis = radius / sqrt(2).
    /// A system hands out the place it knew last, of yesterday too, before the first fresh one. What it knew before it was asked is not taken, nor what is more
    /// than 30 s older than the device's clock (common practice, no source); the latter is said once in `trouble`, with both times.
    /// @error Unavailable: there is none
    Result<void> openReceiver();
    void close();

    State state() const { return m_state; }
    std::optional<Fix> lastFix() const { return m_last; }
    /// Sentences of the last minutes, oldest first, at most 4000.
    QByteArrayList rawSpan() const { return m_span; }
    void setLostAfter(int ms) { m_lostTimer.setInterval(ms); }
    int refusedSentences() const { return m_nmea ? m_nmea->refusedSentences() : 0; }

signals:
    void fixed(const groundcount::position::Fix& fix);
    void stateChanged(groundcount::position::PositionSource::State state);
    /// One sentence for a person: why there is no position, what was refused, that the line dropped.
    void trouble(const QString& what);
    /// A replay reached its end.
    void finished();

private:
    void openSentences();
    void connectTcp();
    Result<void> connectSerial();
    void reconnect();
    void closeSerial();
    void take(Fix fix);
    void startReceiver();
    void takeReceiver(const QGeoPositionInfo& info);
    void setState(State state);
    void drop(const QString& what);

    SentenceFeed m_feed;
    std::unique_ptr<NmeaSource> m_nmea;
    std::unique_ptr<ReplayFeed> m_replay;
    std::unique_ptr<QTcpSocket> m_socket;
    std::unique_ptr<QSerialPort> m_serial;
    std::unique_ptr<QGeoPositionInfoSource> m_receiver;
    QGeoPositionInfo m_known;  // to the receiver, before it was asked
    bool m_saidOld = false;
    QPointer<QIODevice> m_device;
    device::Permission m_permission;
    FixWatch m_watch;
    QTimer m_lostTimer;
    QTimer m_reconnectTimer;
    QString m_host;
    quint16 m_port = 0;
    State m_state = State::None;
    std::optional<Fix> m_last;
    QByteArrayList m_span;
};

}  // namespace groundcount::position
