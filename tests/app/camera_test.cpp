// A photo by a camera, in the running app, with a made-up one (tests/devices/made_up_camera.cpp); camera_none_test has none. What no test here can show: a real lens, and what a phone's own camera service does.
#include "app/kit_bench.h"
#include "app/text_faults.h"
#include "device/end_watch.h"
#include "view/desk.h"

#include <QElapsedTimer>
#include <QImage>
#include <QProcess>
#include <QStandardPaths>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>

class CameraTest : public QObject {
    Q_OBJECT

    Bench m_bench;

    QString trouble(KitApp& app) const { return app.find("cameraTrouble") ? app.find("cameraTrouble")->property("text").toString() : QString(); }
    /// The app is left standing: taking the camera down may hang in GStreamer, and the program keeps it until it ends.
    KitApp& standing() const { return *new KitApp(m_bench.path(QStringLiteral("day.fieldbook"))); }
    bool opens(KitApp& app) const { return app.start({412, 915}, QStringLiteral("record:26"), "2026-06-09T14:12:00-05:00"); }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        QVERIFY2(QFile::exists(qEnvironmentVariable("GST_PLUGIN_PATH_1_0")), "the made-up camera is not built");
    }

    void takesAPhotoAndSealsItLikeAFile()
    {
        KitApp& app = standing();
        QVERIFY(opens(app));
        const auto before = app.session().store().records({.subject = {}, .kind = "photo"})->size();
        QVERIFY(app.touch("takePhoto"));
        QVERIFY(app.waitFor("shutter"));
        QTest::qWait(300);
        app.picture("camera");
        QVERIFY(app.touch("shutter"));
        QTRY_VERIFY_WITH_TIMEOUT(!app.find("cameraPage"), 20000);
        QCOMPARE(trouble(app), QString());
        const auto records = app.session().store().records({.subject = {}, .kind = "photo"});
        QCOMPARE(records->size(), before + 1);
        const auto body = app.newest("photo");
        QCOMPARE(body.at("name").get<std::string>(), std::string("photo-20260609-141200.jpg"));
        QCOMPARE(body.at("media_type").get<std::string>(), std::string("image/jpeg"));
        const auto content = app.session().store().blob(body.at("blob").get<std::string>());
        QVERIFY(content);
        const QImage image = QImage::fromData(QByteArray::fromStdString(*content));
        QCOMPARE(image.size(), QSize(640, 480));
        // The chart's bars from the left: white, yellow, cyan, green, magenta, red, blue.
        QVERIFY(image.pixelColor(45, 100).lightness() > 150 && image.pixelColor(595, 100).blue() > 150 && image.pixelColor(595, 100).red() < 80);
        QVERIFY(app.waitFor("photo_0"));
        // Nothing of it lies about.
        QVERIFY(QDir(QDir::tempPath()).entryList({QStringLiteral("photo-20260609*")}).isEmpty());
    }

    void goesBackWithoutAPhoto()
    {
        KitApp& app = standing();
        QVERIFY(opens(app));
        const auto before = app.session().store().records({.subject = {}, .kind = "photo"})->size();
        QVERIFY(app.touch("takePhoto"));
        QVERIFY(app.waitFor("shutter"));
        QTest::keyClick(app.window(), Qt::Key_Escape);
        QTRY_VERIFY(!app.find("cameraPage"));
        QVERIFY(app.find("recordPage"));
        QCOMPARE(app.session().store().records({.subject = {}, .kind = "photo"})->size(), before);
    }

    /// As large_text_test does for every other page.
    void noTextIsCutAtOneAndAHalf()
    {
        KitApp& app = standing();
        QVERIFY(opens(app));
        auto* screen = app.engine().singletonInstance<groundcount::view::Desk*>(qmlTypeId("Groundcount", 1, 0, "Desk"))->screen();
        screen->showText("150");
        QVERIFY(app.touch("takePhoto"));
        QVERIFY(app.waitFor("shutter"));
        for (const char* language : {"en", "es"})
            for (const QSize size : {QSize(360, 640), QSize(1280, 800)}) {
                screen->showLanguage(language);
                app.window()->resize(size);
                QTest::qWait(200);
                QVERIFY(app.find("cameraPage"));
                QCOMPARE(app.textOf("shutter"), QString(QLatin1String(language) == QLatin1String("es") ? "Tomar la foto" : "Take the photo"));
                const QStringList faults = text_faults::faultsOf(app.window(), app.find("cameraPage"));
                QVERIFY2(faults.isEmpty(), qPrintable(QStringLiteral("%1 %2\n").arg(language).arg(size.width()) + faults.join('\n')));
                app.picture(language);
            }
        screen->showLanguage("en");
        screen->showText("100");
    }

    /// As app/main.cpp ends the program, in one of its own.
    void endsThoughTheCameraHangs()
    {
        QProcess program;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("GROUNDCOUNT_CAMERA_HANGS"), QStringLiteral("1"));
        program.setProcessEnvironment(environment);
        program.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        program.start(QCoreApplication::applicationFilePath(), {QStringLiteral("end"), m_bench.path(QStringLiteral("day.fieldbook"))});
        const bool finished = program.waitForFinished(20000);
        program.kill();
        const QString said = QString::fromUtf8(program.readAllStandardOutput());
        QVERIFY2(said.startsWith(QStringLiteral("shown\n")), "GStreamer hung before the made-up camera was shown");
        QVERIFY2(finished, "the hung camera held the program");
        QCOMPARE(program.exitStatus(), QProcess::NormalExit);
        QCOMPARE(said, QStringLiteral("shown\nlate\n"));
        QCOMPARE(program.exitCode(), 7);
    }

    void aWatchTakenDownInTimeCallsNothing()
    {
        std::atomic<int> calls = 0;
        QElapsedTimer took;
        took.start();
        {
            const groundcount::device::EndWatch watch(std::chrono::hours(1), [&calls] { ++calls; });
        }
        QVERIFY(took.elapsed() < 60000);
        QCOMPARE(calls.load(), 0);
        const groundcount::device::EndWatch watch(std::chrono::milliseconds(1), [&calls] { ++calls; });
        QTRY_COMPARE(calls.load(), 1);
    }
};

namespace {

/// The program of endsThoughTheCameraHangs.
int end(const QString& book)
{
    QStandardPaths::setTestModeEnabled(true);
    KitApp app(book);
    if (!app.start({412, 915}, QStringLiteral("record:26"), "2026-06-09T14:12:00-05:00") || !app.touch("takePhoto") || !app.waitFor("shutter"))
        return 1;
    std::puts("shown");
    std::fflush(stdout);
    const groundcount::device::EndWatch watch(std::chrono::seconds(2), [] {
        std::puts("late");
        std::fflush(stdout);
        std::_Exit(7);
    });
    app.kill();
    std::puts("taken down");
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    if (argc == 3 && qstrcmp(argv[1], "end") == 0)
        return end(QString::fromLocal8Bit(argv[2]));
    CameraTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "camera_test.moc"
