// A device without a camera, and one without Qt's multimedia module: a sentence, and a file goes in all the same.
#include "app/kit_bench.h"

#include <QImage>
#include <QStandardPaths>

class CameraNoneTest : public QObject {
    Q_OBJECT

    Bench m_bench;

    void saysSoAndTakesAFile(bool withModule)
    {
        KitApp app(m_bench.path(QStringLiteral("day.fieldbook")));
        QVERIFY(app.start({360, 640}, QStringLiteral("record:26"), "2026-06-09T14:12:00-05:00"));
        if (!withModule) {
            app.engine().setImportPathList({QStringLiteral("qrc:/qt/qml")});
            QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("\"QtMultimedia\" is not installed")));
        }
        QVERIFY(app.touch("takePhoto"));
        QVERIFY(app.waitFor("cameraTrouble"));
        QCOMPARE(app.find("cameraTrouble")->property("text").toString(), QStringLiteral("No camera on this device. Attach a photo from a file."));
        QVERIFY(!app.find("cameraPage"));
        app.picture(withModule ? "no-camera" : "no-module");

        QImage picture(64, 48, QImage::Format_RGB32);
        picture.fill(withModule ? Qt::darkGray : Qt::lightGray);
        const QString file = m_bench.path(QStringLiteral("wall.png"));
        QVERIFY(picture.save(file));
        const auto before = app.session().store().records({.subject = {}, .kind = "photo"})->size();
        QObject* pick = app.window()->findChild<QObject*>(QStringLiteral("photoPick"));
        QVERIFY(pick);
        QVERIFY(QMetaObject::invokeMethod(pick, "picked", Q_ARG(QUrl, QUrl::fromLocalFile(file))));
        QCOMPARE(app.session().store().records({.subject = {}, .kind = "photo"})->size(), before + 1);
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
    }
    // First: a module that was loaded once stays.
    void withoutTheModule() { saysSoAndTakesAFile(false); }
    void withoutACamera() { saysSoAndTakesAFile(true); }
};

QTEST_MAIN(CameraNoneTest)
#include "camera_none_test.moc"
