// The end of a count on a bus of its own: a feedback service is asked, without one the desktop's notices, without both nothing breaks.
#include "app/kit_bench.h"
#include "device/end_signal.h"
#include "view/count_step.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QSignalSpy>

using namespace groundcount;

/// Answers as the service of this name would, and remembers what it was asked.
class FakeService : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.sigxcpu.Feedback")

public:
    QStringList asked;

public slots:
    uint TriggerFeedback(const QString& application, const QString& event, const QVariantMap&, int timeout)
    {
        asked << QStringLiteral("%1 %2 %3").arg(application, event).arg(timeout);
        return 1;
    }
};

class FakeNotices : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    QStringList asked;

public slots:
    uint Notify(const QString&, uint, const QString&, const QString& summary, const QString&, const QStringList&, const QVariantMap& hints, int)
    {
        asked << summary + ' ' + hints.value(QStringLiteral("sound-name")).toString();
        return 1;
    }
};

class EndSignalTest : public QObject {
    Q_OBJECT

    QString give()
    {
        device::EndSignal signal;
        QSignalSpy given(&signal, &device::EndSignal::given);
        signal.give(QStringLiteral("The minimum is over"));
        if (given.isEmpty() && !given.wait(5000))
            return QStringLiteral("no answer");
        return given.first().first().toString();
    }

private slots:
    void initTestCase()
    {
        QVERIFY2(QDBusConnection::sessionBus().isConnected(), "run under dbus-run-session");
    }
    void staysSilentWithoutAnyService() { QCOMPARE(give(), QString()); }

    void asksTheDesktopWhereNoFeedbackServiceIs()
    {
        auto bus = QDBusConnection::sessionBus();
        FakeNotices notices;
        QVERIFY(bus.registerObject(QStringLiteral("/org/freedesktop/Notifications"), &notices, QDBusConnection::ExportAllSlots));
        QVERIFY(bus.registerService(QStringLiteral("org.freedesktop.Notifications")));
        QCOMPARE(give(), QString("notice"));
        QCOMPARE(notices.asked, QStringList{"The minimum is over complete"});
        bus.unregisterService(QStringLiteral("org.freedesktop.Notifications"));
        bus.unregisterObject(QStringLiteral("/org/freedesktop/Notifications"));
    }

    void theAppGivesItOnceAtTheEndOfACountUnlessSilenced()
    {
        auto bus = QDBusConnection::sessionBus();
        FakeService service;
        QVERIFY(bus.registerObject(QStringLiteral("/org/sigxcpu/Feedback"), &service, QDBusConnection::ExportAllSlots));
        QVERIFY(bus.registerService(QStringLiteral("org.sigxcpu.Feedback")));
        QStandardPaths::setTestModeEnabled(true);
        QFile::remove(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/screen.ini"));  // of an earlier run
        Bench bench;
        QCOMPARE(bench.play(QStringLiteral("day.fieldbook")).code, 0);
        const auto count = [&](bool silent) {
            KitApp app(bench.path(QStringLiteral("day.fieldbook")));
            if (!app.start({412, 915}, silent ? QStringLiteral("screen") : QStringLiteral("new"), "2026-06-09T14:12:00-05:00"))
                return false;
            if (silent && (!app.touch("endChoice/choice_1") || !app.touch("back") || !app.touch("startTest")))
                return false;
            bool good = app.touch("typePlace") && app.type({silent ? "5400" : "5450"}) && app.touch("entryChoice/choice_1") && app.type({"5"})
                        && app.touch("purpose/choice_1") && app.touch("seal");
            for (const char* hazard : {"face", "people", "vehicles", "gauges"}) {
                good = good && app.waitFor(QStringLiteral("hazardRow_%1").arg(hazard));
                if (good && !app.find(QStringLiteral("hazardRow_%1").arg(hazard))->property("settled").toBool())
                    good = app.touch(QStringLiteral("act_%1_0").arg(hazard));
            }
            for (const char* name : {"seal", "surface/choice_0", "rocks/choice_0", "depth/choice_0", "seal", "startCount"})
                good = good && app.touch(name);
            app.session().setClock(app.session().now().addSecs(61));
            return good && app.waitFor("enterReading");
        };
        QVERIFY(count(false));
        QTest::qWait(300);
        QCOMPARE(service.asked, QStringList{"groundcount timeout-completed -1"});
        QVERIFY(count(true));
        QTest::qWait(300);
        QCOMPARE(service.asked.size(), 1);
        bus.unregisterService(QStringLiteral("org.sigxcpu.Feedback"));
    }
};

QTEST_MAIN(EndSignalTest)
#include "end_signal_test.moc"
