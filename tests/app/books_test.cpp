// Several field books on one device: a new one, another one, one that is none. The program starts anew on what was asked for.
#include "app/kit_bench.h"

#include <QFile>
#include <QStandardPaths>

using namespace groundcount;

class BooksTest : public QObject {
    Q_OBJECT

    Bench m_bench;

    static QString own() { return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation); }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        QCoreApplication::setApplicationName(QStringLiteral("books_test"));
        QDir(own()).removeRecursively();
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
    }
    void cleanupTestCase() { QDir(own()).removeRecursively(); }

    void aNewBookIsAskedForAndRemembered()
    {
        KitApp app(m_bench.path(QStringLiteral("day.fieldbook")));
        QVERIFY(app.start({360, 640}, "kit:books"));
        QVERIFY(app.waitFor("bookRows/row0"));
        QCOMPARE(app.find("bookRows/row0")->property("title").toString(), QString("Mallard Fork, north approach"));
        QCOMPARE(app.find("bookRows/row0")->property("word").toString(), QString("open now"));
        QVERIFY(app.write("bookName", "a/b"));
        QVERIFY(app.touch("bookBegin"));
        QVERIFY(app.textOf("booksTrouble").contains("\"a/b\""));
        QCOMPARE(ui::takeWantedBook(), QString());
        QVERIFY(app.write("bookName", "kettle road"));
        app.picture("books");
        QVERIFY(app.touch("bookBegin"));
        const QString wanted = ui::takeWantedBook();
        QCOMPARE(wanted, own() + "/kettle road.fieldbook");
        QCOMPARE(ui::takeWantedBook(), QString());
        app.kill();
        KitApp next(wanted);
        QVERIFY(next.start({360, 640}));
        QVERIFY(next.waitFor("kitAct"));
        QCOMPARE(next.textOf("kitAct"), QString("Begin a job"));
        next.kill();
        // Without a file on the command line the last book comes back.
        KitApp again((QString()));
        QVERIFY(again.start({360, 640}));
        QCOMPARE(again.session().bookName(), QString("kettle road.fieldbook"));
        QVERIFY(again.touch("otherBook"));
        QVERIFY(again.write("bookName", "kettle road"));
        QVERIFY(again.touch("bookBegin"));
        QCOMPARE(again.textOf("booksTrouble"), QString("There is a field book kettle road already."));
    }

    void anotherBookIsOpenedAndAFileThatIsNoneIsRefused()
    {
        QVERIFY(QFile::copy(m_bench.path(QStringLiteral("day.fieldbook")), own() + "/north.fieldbook"));
        QFile junk(own() + "/junk.fieldbook");
        QVERIFY(junk.open(QIODevice::WriteOnly));
        junk.write(QByteArray(5000, 'x'));
        junk.close();
        KitApp app(own() + "/kettle road.fieldbook");
        QVERIFY(app.start({412, 915}, "kit:books"));
        QVERIFY(app.waitFor("bookRows/row2"));
        QVERIFY(app.touchRow("bookRows", "junk"));
        QVERIFY(!app.textOf("booksTrouble").isEmpty());
        QCOMPARE(ui::takeWantedBook(), QString());
        QVERIFY(app.touchRow("bookRows", "north"));
        QCOMPARE(ui::takeWantedBook(), QFileInfo(own() + "/north.fieldbook").canonicalFilePath());
    }

    void aLastBookThatCannotBeOpenedDoesNotShutTheOthers()
    {
        QFile north(own() + "/north.fieldbook");
        QVERIFY(north.open(QIODevice::WriteOnly));
        north.write(QByteArray(5000, 'x'));
        north.close();
        KitApp app((QString()));
        QVERIFY(app.start({360, 640}));
        QCOMPARE(app.session().bookName(), QString("job.fieldbook"));
        QVERIFY(app.session().trouble().contains("north.fieldbook"));
    }
};

QTEST_MAIN(BooksTest)
#include "books_test.moc"
