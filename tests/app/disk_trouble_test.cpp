#include "app/finger_day.h"
#include "faults/failing_disk.h"

#include <QStandardPaths>
#include <QtTest>
#include <sqlite3.h>

using faults::FailingDisk;

/// The disk fails one call of a seal after the other while the app is worked by touch: the page says what happened, what was typed is still
/// there, and the same touch seals it when the disk is well again.
class DiskTroubleTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    int m_copies = 0;

    QString book()
    {
        const QString path = m_bench.path(QStringLiteral("trouble-%1.fieldbook").arg(++m_copies));
        return QFile::copy(m_bench.path(QStringLiteral("day.fieldbook")), path) ? path : QString();
    }
    static FailingDisk& disk() { return FailingDisk::instance(); }
    static void troubles()
    {
        QTest::addColumn<int>("code");
        QTest::newRow("I/O error") << SQLITE_IOERR;
        QTest::newRow("disk full") << SQLITE_FULL;
        QTest::newRow("read-only") << SQLITE_READONLY;
    }
    static std::size_t count(const KitApp& app, const char* kind) { return app.session().store().records({.subject = {}, .kind = kind}).value().size(); }
    static QString readingText(const KitApp& app) { return app.textOf("readingLine_0") + ' ' + app.textOf("readingLine_1"); }
    static bool isASentence(const QString& text) { return text.size() > 20 && text.endsWith('.') && text.contains("field book"); }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        disk();
    }
    void cleanup() { disk().calm(); }

    void aNoteStaysTyped_data()
    {
        troubles();
        QTest::newRow("locked") << SQLITE_BUSY;
    }
    void aNoteStaysTyped()
    {
        QFETCH(int, code);
        KitApp app(book());
        QVERIFY(app.start({412, 915}, "record:26"));
        const QString words = QStringLiteral("rain since nine");
        QVERIFY(app.write("note", words));
        int told = 0, absorbed = 0, inARow = 0;
        // Beyond the commit come the reads for the pages, which are the same for ever.
        for (int nth = 1; inARow < 12; ++nth) {
            const auto before = count(app, "note");
            disk().failOnce(nth, code);
            QVERIFY(app.touch("addNote"));
            const bool failed = disk().hasFailed();
            disk().calm();
            if (!failed) {
                QCOMPARE(count(app, "note"), before + 1);
                break;
            }
            if (count(app, "note") == before) {
                ++told;
                inARow = 0;
                QVERIFY2(isASentence(app.textOf("recordTrouble")), qPrintable(app.textOf("recordTrouble")));
                QCOMPARE(app.textOf("note/note_input"), words);
            } else {  // a lock that was free at the second try, a read after the commit
                ++absorbed;
                ++inARow;
                QCOMPARE(count(app, "note"), before + 1);
                QVERIFY(app.write("note", words));
            }
        }
        qInfo("%d failed calls told, %d absorbed", told, absorbed);
        QVERIFY(told + absorbed > 2);
        QVERIFY(code == SQLITE_BUSY || told > 2);
    }

    void aReadingStaysTyped_data() { troubles(); }
    void aReadingStaysTyped()
    {
        QFETCH(int, code);
        KitApp app(book());
        QVERIFY(app.start({412, 915}));
        FingerDay day(app);
        int act = 0;
        for (; day.name(act) != "27 reading"; ++act)
            QVERIFY2(day.act(act), qPrintable(day.name(act)));
        app.session().setClock(FingerDay::clock(act));
        FieldHand hand(app);
        QVERIFY(hand.read("27", "1986", "266"));
        const QString typed = readingText(app);
        QVERIFY2(typed.contains("1986"), qPrintable(typed));
        const auto before = count(app, "reading");
        int told = 0;
        for (int nth = 1; nth < 400 && count(app, "reading") == before; ++nth) {
            disk().failFrom(nth, code);
            QVERIFY(app.touch("seal"));
            const bool failed = disk().hasFailed();
            disk().calm();
            if (count(app, "reading") != before)
                break;
            QVERIFY(failed);
            ++told;
            QVERIFY2(isASentence(app.textOf("sheetTrouble")), qPrintable(app.textOf("sheetTrouble")));
            QCOMPARE(readingText(app), typed);
        }
        QVERIFY(told > 2);
        QCOMPARE(count(app, "reading"), before + 1);
    }
};

QTEST_MAIN(DiskTroubleTest)
#include "disk_trouble_test.moc"
