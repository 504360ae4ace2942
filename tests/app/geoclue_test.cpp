// The device's own receiver on Linux: Qt's GeoClue source against a service on a bus of its own, played by this program started once more. The service's interface is
// written from memory of GeoClue 2's introspection; docs/packages.md says what was seen with a real one.
#include "position/position_source.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusContext>
#include <QDBusMetaType>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDataStream>
#include <QDateTime>
#include <QFile>
#include <QGeoPositionInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <cmath>
#include <memory>

using groundcount::position::Fix;
using groundcount::position::PositionSource;

namespace {

void say(const QString& text)
{
    QTextStream(stdout) << text << Qt::endl;
}

}  // namespace

/// Seconds and microseconds since 1970.
struct Moment {
    qulonglong seconds = 0, micros = 0;
};
Q_DECLARE_METATYPE(Moment)

QDBusArgument& operator<<(QDBusArgument& to, const Moment& moment)
{
    to.beginStructure();
    to << moment.seconds << moment.micros;
    to.endStructure();
    return to;
}

const QDBusArgument& operator>>(const QDBusArgument& from, Moment& moment)
{
    from.beginStructure();
    from >> moment.seconds >> moment.micros;
    from.endStructure();
    return from;
}

class FakeLocation : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.GeoClue2.Location")
    Q_PROPERTY(double Latitude MEMBER m_latitude CONSTANT)
    Q_PROPERTY(double Longitude MEMBER m_longitude CONSTANT)
    Q_PROPERTY(double Accuracy MEMBER m_accuracy CONSTANT)
    Q_PROPERTY(double Altitude MEMBER m_altitude CONSTANT)
    Q_PROPERTY(double Speed MEMBER m_unknown CONSTANT)
    Q_PROPERTY(double Heading MEMBER m_heading CONSTANT)
    Q_PROPERTY(QString Description MEMBER m_description CONSTANT)
    Q_PROPERTY(Moment Timestamp MEMBER m_moment CONSTANT)

public:
    /// @param age of the position, seconds
    FakeLocation(int number, qint64 age, QObject* parent) : QObject(parent), m_latitude(32.5 + number * 1e-5)
    {
        const auto ms = static_cast<qulonglong>(QDateTime::currentMSecsSinceEpoch() - age * 1000);
        m_moment = {ms / 1000, ms % 1000 * 1000};
    }

private:
    double m_latitude, m_longitude = -95.25, m_accuracy = 3.0, m_altitude = 101.5, m_unknown = -1, m_heading = 42;
    QString m_description;
    Moment m_moment;
};

/// What an application asks of the service; says each thing on its standard output.
class FakeClient : public QObject, protected QDBusContext {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.GeoClue2.Client")
    Q_PROPERTY(QDBusObjectPath Location READ location)
    Q_PROPERTY(uint DistanceThreshold MEMBER m_distance)
    Q_PROPERTY(uint TimeThreshold MEMBER m_time)
    Q_PROPERTY(QString DesktopId READ desktopId WRITE setDesktopId)
    Q_PROPERTY(uint RequestedAccuracyLevel READ level WRITE setLevel)
    Q_PROPERTY(bool Active MEMBER m_active)

public:
    explicit FakeClient(const QString& manner) : m_oldOnes(manner == QStringLiteral("remembers") ? 3 : 0), m_denies(manner == QStringLiteral("denies"))
    {
        m_timer.setInterval(200);
        connect(&m_timer, &QTimer::timeout, this, &FakeClient::move);
    }
    QDBusObjectPath location() const { return QDBusObjectPath(m_number == 0 ? QStringLiteral("/") : path(m_number)); }
    QString desktopId() const { return m_desktop; }
    void setDesktopId(const QString& id) { say("desktop " + (m_desktop = id)); }
    uint level() const { return m_level; }
    void setLevel(uint level) { say(QStringLiteral("level %1").arg(m_level = level)); }

public slots:
    void Start()
    {
        say(QStringLiteral("start"));
        if (m_denies)
            sendErrorReply(QDBusError::AccessDenied, QStringLiteral("Agent rejected the application"));
        else
            m_timer.start();
    }
    void Stop()
    {
        say(QStringLiteral("stop"));
        m_timer.stop();
    }

signals:
    void LocationUpdated(const QDBusObjectPath& before, const QDBusObjectPath& now);

private:
    static QString path(int number) { return QStringLiteral("/org/freedesktop/GeoClue2/Client/1/Location/%1").arg(number); }
    void move()
    {
        const QDBusObjectPath before = location();
        ++m_number;
        QDBusConnection::sessionBus().registerObject(path(m_number), new FakeLocation(m_number, m_number <= m_oldOnes ? 3600 : 0, this), QDBusConnection::ExportAllProperties);
        emit LocationUpdated(before, location());
    }

    QTimer m_timer;
    QString m_desktop;
    uint m_distance = 0, m_time = 0, m_level = 0;
    int m_number = 0, m_oldOnes;
    bool m_active = false, m_denies;
};

class FakeManager : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.GeoClue2.Manager")
    Q_PROPERTY(bool InUse MEMBER m_inUse)
    Q_PROPERTY(uint AvailableAccuracyLevel MEMBER m_level)

public slots:
    QDBusObjectPath GetClient() const { return QDBusObjectPath(QStringLiteral("/org/freedesktop/GeoClue2/Client/1")); }
    QDBusObjectPath CreateClient() const { return GetClient(); }
    void DeleteClient(const QDBusObjectPath&) { say(QStringLiteral("deleted")); }
    void AddAgent(const QString&) {}

private:
    bool m_inUse = false;
    uint m_level = 8;
};

/// The app's side: its source, what it says is wrong, and the positions that it takes.
struct Listener {
    PositionSource source;
    QSignalSpy troubles{&source, &PositionSource::trouble};
    std::vector<Fix> fixes;

    Listener()
    {
        QObject::connect(&source, &PositionSource::fixed, &source, [this](const Fix& fix) { fixes.push_back(fix); });
    }
};

class GeoclueTest : public QObject {
    Q_OBJECT

    /// The service in a program of its own, until it is told to end.
    std::unique_ptr<QProcess> service(const QString& manner)
    {
        auto program = std::make_unique<QProcess>();
        program->setProcessChannelMode(QProcess::ForwardedErrorChannel);
        program->start(QCoreApplication::applicationFilePath(), {QStringLiteral("service"), manner});
        if (!program->waitForStarted() || !program->waitForReadyRead(20000) || program->readLine() != "ready\n")
            program.reset();
        return program;
    }
    static QString heard(QProcess& program)
    {
        program.waitForReadyRead(500);
        return QString::fromUtf8(program.readAllStandardOutput());
    }

private slots:
    /// Qt Positioning leaves out the sources that its own tests cannot use; this one is what is looked at here.
    void initTestCase() { qunsetenv("QT_QTESTLIB_RUNNING"); }

    void takesWhatTheServiceGives()
    {
        const auto program = service(QStringLiteral("gives"));
        QVERIFY(program);
        Listener app;
        QVERIFY(app.source.openReceiver());
        QTRY_VERIFY_WITH_TIMEOUT(app.fixes.size() >= 3, 20000);
        QVERIFY(app.troubles.isEmpty());
        QCOMPARE(app.source.state(), PositionSource::State::Live);
        const Fix& fix = app.fixes[1];
        QVERIFY(std::abs(fix.latitude - app.fixes[0].latitude - 1e-5) < 1e-9 && std::abs(fix.latitude - 32.5) < 0.01);
        QCOMPARE(fix.longitude, -95.25);
        QCOMPARE(fix.quality, 1);
        QCOMPARE(fix.qualityWord, QStringLiteral("phone"));
        // A radius of 3 m of 68 %, an axis each.
        QVERIFY(fix.sigmaNorthM && std::abs(*fix.sigmaNorthM - 3.0 / std::sqrt(2.0)) < 1e-9 && fix.sigmaEastM == fix.sigmaNorthM);
        QVERIFY(fix.courseDegrees && *fix.courseDegrees == 42);
        // The service lets an application in by the name of its desktop file, and was asked for the best there is.
        QString all = heard(*program);
        QVERIFY2(all.contains(QStringLiteral("desktop groundcount\n")) && all.contains(QStringLiteral("level 8\n")) && all.contains(QStringLiteral("start\n")), qPrintable(all));
        app.source.close();
        for (int i = 0; i < 20 && !all.contains(QStringLiteral("stop\n")); ++i)
            all += heard(*program);
        QVERIFY2(all.contains(QStringLiteral("stop\n")), qPrintable(all));
        program->kill();
        QVERIFY(program->waitForFinished());
    }

    void saysLostWhenTheServiceGoes()
    {
        const auto program = service(QStringLiteral("gives"));
        QVERIFY(program);
        PositionSource source;
        source.setLostAfter(1500);
        QVERIFY(source.openReceiver());
        QTRY_COMPARE_WITH_TIMEOUT(source.state(), PositionSource::State::Live, 20000);
        program->kill();
        QVERIFY(program->waitForFinished());
        QTRY_COMPARE_WITH_TIMEOUT(source.state(), PositionSource::State::Lost, 20000);
    }

    /// Qt's source hands out the place that it kept in a file when it was last let go, before it asks the service.
    void takesNoPlaceOfAnEarlierRun()
    {
        // a position of just now, as after the app was opened again; the service is not there to give another
        const QString kept = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/qtposition-geoclue2");
        QFile file(kept);
        QVERIFY2(file.open(QIODevice::WriteOnly), qPrintable(kept));
        QDataStream to(&file);
        to << QGeoPositionInfo(QGeoCoordinate(32.75, -95.5), QDateTime::currentDateTime());
        file.close();
        PositionSource source;
        QSignalSpy troubles(&source, &PositionSource::trouble);
        QSignalSpy fixes(&source, &PositionSource::fixed);
        QVERIFY(source.openReceiver());
        QTRY_VERIFY_WITH_TIMEOUT(!troubles.isEmpty(), 20000);
        QTest::qWait(100);
        QVERIFY(fixes.isEmpty());
        QCOMPARE(source.state(), PositionSource::State::None);
    }

    /// A service, too, may begin with what it remembers: three positions of an hour ago, then fresh ones.
    void takesNoPlaceOfAnHourAgo()
    {
        const auto program = service(QStringLiteral("remembers"));
        QVERIFY(program);
        Listener app;
        QVERIFY(app.source.openReceiver());
        QTRY_VERIFY_WITH_TIMEOUT(!app.troubles.isEmpty(), 20000);
        QVERIFY(app.fixes.empty());
        QTRY_VERIFY_WITH_TIMEOUT(!app.fixes.empty(), 20000);
        QCOMPARE(app.fixes.front().latitude, 32.5 + 4 * 1e-5);
        QCOMPARE(app.troubles.size(), 1);
        static const QRegularExpression sentence(QStringLiteral("^This device gives a position of [-0-9]{10} [:0-9]{8} and its clock says [-0-9]{10} [:0-9]{8}: a position that old is not used\\.$"));
        const QString said = app.troubles.constFirst().constFirst().toString();
        QVERIFY2(sentence.match(said).hasMatch(), qPrintable(said));
        program->kill();
        QVERIFY(program->waitForFinished());
    }

    void saysWhoMustAllowIt()
    {
        const auto program = service(QStringLiteral("denies"));
        QVERIFY(program);
        PositionSource source;
        QSignalSpy troubles(&source, &PositionSource::trouble);
        QVERIFY(source.openReceiver());
        QTRY_VERIFY_WITH_TIMEOUT(!troubles.isEmpty(), 20000);
        const QString said = troubles.constFirst().constFirst().toString();
        QVERIFY2(said.startsWith(QStringLiteral("This device gives the app no position: it is not allowed")), qPrintable(said));
        program->kill();
        QVERIFY(program->waitForFinished());
    }

    void saysSoWithoutAService()
    {
        PositionSource source;
        QSignalSpy troubles(&source, &PositionSource::trouble);
        const auto opened = source.openReceiver();
        if (opened) {
            QTRY_VERIFY_WITH_TIMEOUT(!troubles.isEmpty(), 30000);
            QVERIFY(troubles.constFirst().constFirst().toString().startsWith(QStringLiteral("This device gives the app no position")));
        } else {
            QVERIFY(opened.error().what == "This device has no position receiver that the app can use.");
        }
        QCOMPARE(source.state(), PositionSource::State::None);
    }
};

namespace {

int serve(const QString& manner)
{
    qDBusRegisterMetaType<Moment>();
    auto bus = QDBusConnection::sessionBus();
    FakeManager manager;
    FakeClient client(manner);
    const auto all = QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllProperties | QDBusConnection::ExportAllSignals;
    if (!bus.registerObject(QStringLiteral("/org/freedesktop/GeoClue2/Manager"), &manager, all)
        || !bus.registerObject(QStringLiteral("/org/freedesktop/GeoClue2/Client/1"), &client, all) || !bus.registerService(QStringLiteral("org.freedesktop.GeoClue2")))
        return 1;
    say(QStringLiteral("ready"));
    return QCoreApplication::exec();
}

}  // namespace

int main(int argc, char** argv)
{
    // The service lives on the system's bus; here that is the session's, which dbus-run-session made for this test alone.
    qputenv("DBUS_SYSTEM_BUS_ADDRESS", qgetenv("DBUS_SESSION_BUS_ADDRESS"));
    QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Groundcount"));
    if (argc == 3 && qstrcmp(argv[1], "service") == 0)
        return serve(QString::fromUtf8(argv[2]));
    // Qt keeps the last place in the user's folder; not in that of who runs the tests.
    const QTemporaryDir folder;
    qputenv("XDG_DATA_HOME", folder.path().toUtf8());
    GeoclueTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "geoclue_test.moc"
