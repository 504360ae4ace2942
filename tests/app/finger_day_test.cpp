// A whole day in the running app by touch alone, on the smallest phone and on a desk, and once more with the program killed after every act.
#include "app/eve_book.h"
#include "book/state_query.h"
#include "book/store.h"

#include <QtTest>

using namespace groundcount;

class FingerDayTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    QMap<QString, QStringList> m_outcomes;

    struct Ended {
        int code = -1;
        bool isKilled = false;
        QByteArray out, err;
    };
    Ended drive(const QStringList& arguments) const
    {
        QProcess process;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_DATA_HOME", m_bench.path("phone"));
        process.setProcessEnvironment(environment);
        process.start(QCoreApplication::applicationDirPath() + "/finger_day", arguments);
        if (!process.waitForFinished(280000))
            process.kill();
        return {process.exitCode(), process.exitStatus() == QProcess::CrashExit, process.readAllStandardOutput(), process.readAllStandardError()};
    }
    /// Number, state and percent of the tests of the day.
    QStringList outcomes(const QString& path)
    {
        QStringList lines;
        const auto key = book::DeviceKey::loadOrMake(m_bench.path("reader.key").toStdString());
        auto store = book::Store::open(path.toStdString(), book::OpenMode::ReadOnly, *key);
        if (!store)
            return {QString::fromStdString(store.error().what)};
        const auto tests = book::StateQuery(*store).tests({});
        for (const auto& test : *tests)
            if (QString::fromStdString(test.number).left(2).toInt() > 26)
                lines << QStringLiteral("%1 %2 %3").arg(QString::fromStdString(test.number)).arg(int(test.state)).arg(QString::fromStdString(test.compactionPct));
        return lines;
    }
    void judge(const QString& book)
    {
        const auto checked = m_bench.run({"check", book});
        QVERIFY2(checked.code == 0, checked.out + checked.err);
        const QStringList found = outcomes(book);
        QStringList states;
        for (const QString& line : found)
            states << line.section(' ', 0, 1);
        const auto is = [](const char* number, book::TestState state) { return QStringLiteral("%1 %2").arg(QLatin1String(number)).arg(int(state)); };
        using enum book::TestState;
        QCOMPARE(states, QStringList({is("27", Pass), is("28", Fail), is("28A", Pass), is("29", Pass), is("30", Void), is("31", Pass), is("32", Pass), is("33", Pass)}));
        m_outcomes.insert(book, found);
        QCOMPARE(found, m_outcomes.first());
    }

private slots:
    void initTestCase() { QVERIFY(playTheEveBefore(m_bench, "eve.fieldbook")); }

    void theDayIsDoneByTouchAlone_data()
    {
        QTest::addColumn<QString>("size");
        QTest::newRow("360x640") << "360x640";
        QTest::newRow("1280x800") << "1280x800";
    }
    void theDayIsDoneByTouchAlone()
    {
        QFETCH(QString, size);
        const QString book = m_bench.path(size + ".fieldbook");
        QVERIFY(QFile::copy(m_bench.path("eve.fieldbook"), book));
        const Ended day = drive({book, size});
        QVERIFY2(day.code == 0 && !day.isKilled, day.err);
        judge(book);
        if (size == "360x640")
            countThePlainTest(day.out);
    }

    void theSameDayOutlivesAKillAfterEveryAct()
    {
        const QString book = m_bench.path("killed.fieldbook");
        QVERIFY(QFile::copy(m_bench.path("eve.fieldbook"), book));
        int act = 0;
        for (;; ++act) {
            const Ended one = drive({book, "412x915", QString::number(act)});
            if (one.code == 3 && !one.isKilled)
                break;
            QVERIFY2(one.isKilled, one.err);
        }
        QVERIFY(act > 50);
        judge(book);
    }

private:
    /// Touches and characters from Day to the sealed verdict of test 27, and what the user guide says of them.
    void countThePlainTest(const QByteArray& out)
    {
        int taps = 0, characters = 0, before[2] = {0, 0};
        for (const QByteArray& line : out.split('\n')) {
            const auto parts = line.split('\t');
            if (parts.size() != 3)
                continue;
            if (parts[0].startsWith("27 ")) {
                taps = parts[1].toInt() - before[0];
                characters = parts[2].toInt() - before[1];
            } else if (taps == 0) {
                before[0] = parts[1].toInt();
                before[1] = parts[2].toInt();
            }
        }
        QVERIFY2(taps > 0 && taps <= 25 && characters > 0 && characters <= 60, qPrintable(QStringLiteral("%1 taps, %2 characters").arg(taps).arg(characters)));
        const QString said = QStringLiteral("%1 taps and %2 typed characters").arg(taps).arg(characters);
        QVERIFY2(Bench::read(Bench::source("docs/user-guide.md")).contains(said.toUtf8()), qPrintable("docs/user-guide.md does not say " + said));
    }
};

QTEST_GUILESS_MAIN(FingerDayTest)
#include "finger_day_test.moc"
