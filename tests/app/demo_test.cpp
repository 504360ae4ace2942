#include "app/command_bench.h"

#include <QDir>

class DemoTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    QString m_book;
    QJsonArray m_entries;

    QString copy(const QString& name)
    {
        return m_bench.write(name, Bench::read(m_book));
    }

private slots:
    void initTestCase()
    {
        QVERIFY2(QFile::exists(Bench::program()), qPrintable("build the target groundbook: " + Bench::program()));
        const auto played = m_bench.play("day.fieldbook");
        QVERIFY2(played.code == 0, played.err.constData());
        m_book = m_bench.path("day.fieldbook");
        m_entries = Bench::object(Bench::read(Bench::source("demo/scenario.json")))["entries"_k].toArray();
        QVERIFY(m_entries.size() > 100);
    }

    void theDayComesToItsExpectedVerdicts()
    {
        const auto expected = Bench::object(Bench::read(Bench::source("demo/expected.json")))["tests"_k].toObject();
        const auto tests = Bench::object(m_bench.run({"show", m_book, "--json"}).out)["tests"_k].toArray();
        QCOMPARE(tests.size(), expected.size());
        QCOMPARE(tests.size(), 14);
        for (const auto& test : tests) {
            const auto number = test["number"_k].toString();
            const auto wanted = expected[number];
            const auto result = wanted["result"_k].toString();
            QCOMPARE(test["state"_k].toString(), result == "provisional" ? QString("waiting") : result);
            QCOMPARE(test["percent_compaction"_k].toString(), wanted["percent_compaction"_k].toString());
            QCOMPARE(test["water_content_pct"_k].toString(), wanted["water_content_pct"_k].toString());
        }
    }

    void noVerdictIsTyped()
    {
        int verdicts = 0;
        for (const auto& entry : m_entries) {
            if (entry["kind"_k].toString() != "verdict")
                continue;
            QVERIFY(!entry.toObject().contains("body"));
            ++verdicts;
        }
        QCOMPARE(verdicts, 14);
    }

    void theDayHoldsWhatItPromises()
    {
        const auto tests = Bench::object(m_bench.run({"show", m_book, "--json"}).out)["tests"_k].toArray();
        QHash<QString, QJsonValue> by;
        for (const auto& test : tests)
            by[test["number"_k].toString()] = test;
        QCOMPARE(by["16A"_k]["retest_of"_k].toString(), QString("16"));
        QCOMPARE(by["26A"_k]["retest_of"_k].toString(), QString("26"));
        QCOMPARE(by["22"_k]["maximum"_k].toString(), QString("123.3"));  // corrected for coarse particles, 118.6 before
        QVERIFY(by["20"_k]["overrides"_k].toString().contains("water truck"));
        QCOMPARE(by["25"_k]["waiting_for"_k].toString(), QString("oven"));
        const auto trench = m_bench.run({"show", m_book, "--test", "17", "--explain"});
        QVERIFY2(trench.code == 0 && trench.out.contains("671"), trench.out.constData());
        QVERIFY(!m_bench.run({"show", m_book, "--test", "18", "--explain"}).out.contains("671"));
        QVERIFY(m_bench.run({"show", m_book, "--test", "99"}).isRefusal());
    }

    void refusedStandardCountsAreKeptAndNotUsed()
    {
        // 2898 against the mean of 2858, 2849, 2861, 2864 on the days before: (2864 + 2861 + 2849 + 2858)/4.
        const auto first = m_bench.run({"history", m_book, "no-such"});
        QVERIFY(first.isRefusal());
        QProcess reader;
        reader.start("sqlite3", {m_book, "select count(*) from standard_count_row where accepted = 0"});
        QVERIFY(reader.waitForFinished());
        QCOMPARE(reader.readAllStandardOutput().trimmed(), QByteArray("1"));
    }

    void drawnSitesFollowFromTheirNumbers()
    {
        QHash<QString, double> begin{{"@N-3", 4400}, {"@N-4", 5000}};
        int sites = 0;
        for (const auto& entry : m_entries) {
            if (entry["kind"_k].toString() != "draw")
                continue;
            const auto body = entry["body"_k];
            for (const auto& list : {body["sites"_k].toArray(), body["rejected"_k].toArray()}) {
                for (const auto& site : list) {
                    const double along = begin[body["lot"_k].toString()] + 150 * (site["number"_k].toInt() - 1 + site["r_along"_k].toString().toDouble());
                    const double across = -37 + 74 * site["r_across"_k].toString().toDouble();
                    QVERIFY(qAbs(site["at"_k]["station"_k].toString().toDouble() - along) < 0.006);
                    QVERIFY(qAbs(site["at"_k]["offset_ft"_k].toString().toDouble() - across) < 0.006);
                    QCOMPARE(qAbs(across) > 35, site.toObject().contains("why"));
                    ++sites;
                }
            }
        }
        QCOMPARE(sites, 14);
    }

    void checkFindsNothing()
    {
        const auto json = m_bench.run({"check", m_book, "--json"});
        QCOMPARE(json.code, 0);
        const auto report = Bench::object(json.out);
        QCOMPARE(report["records"_k].toInt(), m_entries.size());
        QCOMPARE(report["verdicts"_k].toInt(), 14);
        QVERIFY(report["findings"_k].toArray().isEmpty());
    }

    void exportsWhatGdalReads()
    {
        const auto layers = m_bench.path("out.gpkg");
        QCOMPARE(m_bench.run({"export", m_book, layers}).code, 0);
        QProcess ogr;
        ogr.start("ogrinfo", {"-so", layers, "density_test"});
        QVERIFY(ogr.waitForFinished() && ogr.exitCode() == 0);
        const auto said = ogr.readAllStandardOutput();
        QVERIFY2(said.contains("Feature Count: 14") && said.contains("6411"), said.constData());
        const auto geo = m_bench.path("out.geojson");
        QCOMPARE(m_bench.run({"export", m_book, geo}).code, 0);
        QCOMPARE(Bench::object(Bench::read(geo))["features"_k].toArray().size(), 14);
        QVERIFY(m_bench.run({"export", m_book, m_bench.path("out.dwx")}).isRefusal());
        QVERIFY(m_bench.run({"export", m_bench.path("none.fieldbook"), layers}).isRefusal());
        QVERIFY(m_bench.run({"export", m_book, m_bench.path("no/such/folder/out.gpkg")}).isRefusal());
    }

    void playsTheSameDayAgain()
    {
        QCOMPARE(m_bench.play("again.fieldbook").code, 0);
        QCOMPARE(m_bench.run({"show", m_bench.path("again.fieldbook"), "--json"}).out, m_bench.run({"show", m_book, "--json"}).out);
        QVERIFY(m_bench.play("again.fieldbook").isRefusal());
    }

    void aRefusedEntryLeavesNoBook_data()
    {
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<QByteArray>("says");
        QTest::newRow("count of zero") << QByteArray("\"density_count\": 1905") << QByteArray("\"density_count\": 0") << QByteArray("reading of @test22");
        QTest::newRow("label unknown") << QByteArray("\"standard_count\": \"#std-0609\"") << QByteArray("\"standard_count\": \"#std-0610\"") << QByteArray("#std-0610");
        QTest::newRow("off the line") << QByteArray("\"station\": \"5267.0\"") << QByteArray("\"station\": \"9267.0\"") << QByteArray("@test26");
        QTest::newRow("no such day") << QByteArray("2026-06-09 09:42") << QByteArray("2026-06-31 09:42") << QByteArray("2026-06-31");
        QTest::newRow("no such picture") << QByteArray("photo-26.jpg") << QByteArray("photo-62.jpg") << QByteArray("photo of @test26");
        QTest::newRow("doubled key") << QByteArray("\"format\": 1,") << QByteArray("\"format\": 1, \"format\": 1,") << QByteArray("format");
    }
    void aRefusedEntryLeavesNoBook()
    {
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(QByteArray, says);
        const Bench bench;
        auto scenario = Bench::read(Bench::source("demo/scenario.json"));
        QVERIFY(scenario.contains(from));
        const auto file = bench.write("scenario.json", scenario.replace(from, to));
        bench.write("rules.json", Bench::read(Bench::source("demo/rules.json")));
        const auto answer = bench.run({"play", bench.path("a.fieldbook"), file});
        QVERIFY2(answer.isRefusal() && answer.err.contains(says), answer.err.constData());
        QCOMPARE(bench.files(), (QStringList{"rules.json", "scenario.json"}));
    }

    void aDamagedBookIsReadAndNeverWritten()
    {
        const auto broken = m_bench.damaged("day.fieldbook", "broken.fieldbook");
        const auto before = Bench::read(broken);
        const auto check = m_bench.run({"check", broken});
        QCOMPARE(check.code, 1);
        QVERIFY2(check.out.contains("reading of") && check.out.contains("no longer gives its hash"), check.out.constData());
        const auto show = m_bench.run({"show", broken});
        QCOMPARE(show.code, 1);
        QVERIFY(show.out.contains("26A") && show.err.contains("reading of"));
        QVERIFY(m_bench.run({"import", broken, Bench::source("tests/core/book/data/field_day.csv"), "--by", "R. Okafor"}).isRefusal());
        QVERIFY(m_bench.run({"rebuild", broken}).isRefusal());
        QVERIFY(m_bench.run({"export", broken, m_bench.path("broken.gpkg")}).isRefusal());
        QVERIFY(!m_bench.files().contains("broken.gpkg"));
        QCOMPARE(Bench::read(broken), before);
        QVERIFY(m_bench.run({"check", m_bench.write("text.fieldbook", "not a book")}).isRefusal());
    }

    void carriesTheBookAsABundle()
    {
        const auto bundle = m_bench.path("day.fieldbundle"), copy = m_bench.path("carried.fieldbook"), key = m_bench.path("other.key");
        const auto written = m_bench.run({"export", m_book, bundle});
        QVERIFY2(written.code == 0 && written.out.contains("129 records"), written.out + written.err);
        const auto taken = m_bench.run({"merge", copy, bundle, "--key", key});  // a new copy, made by the merge
        QVERIFY2(taken.code == 0 && taken.out.startsWith("129 records taken, 0 known"), taken.out + taken.err);
        QVERIFY(m_bench.run({"merge", copy, bundle, "--key", key}).out.startsWith("0 records taken, 129 known"));
        QCOMPARE(m_bench.run({"check", copy}).code, 0);
        const auto layered = m_bench.run({"export", m_book, bundle, "--layer", "lot"});
        QVERIFY2(layered.isRefusal() && layered.err.contains("holds records, not layers"), layered.err.constData());
        const auto none = m_bench.path("none.fieldbook");
        QVERIFY(m_bench.run({"merge", none, m_bench.path("nowhere.fieldbundle"), "--key", key}).isRefusal());
        QVERIFY(!QFile::exists(none));
    }
    void mergesARecordOnceAndNamesARefusedOne()
    {
        const auto broken = m_bench.damaged("day.fieldbook", "worn.fieldbook");
        const auto other = m_bench.path("other.fieldbook");  // a new copy, made by the merge
        const auto apart = m_bench.path("apart.fieldbook");  // another job is another book
        QCOMPARE(m_bench.run({"make", apart, "--name", "Other", "--epsg", "6411", "--person", "A. Sample", "--key", m_bench.path("other.key")}).code, 0);
        const auto refusal = m_bench.run({"merge", apart, m_book, "--key", m_bench.path("other.key")});
        QVERIFY2(refusal.isRefusal() && refusal.err.contains("Each job is one book"), refusal.err.constData());
        const auto partly = m_bench.run({"merge", other, broken, "--key", m_bench.path("other.key")});
        QCOMPARE(partly.code, 1);
        QVERIFY2(partly.err.contains("reading of") && partly.out.contains("128 records taken"), partly.out + partly.err);
        const auto whole = m_bench.run({"merge", other, m_book, "--key", m_bench.path("other.key")});
        QVERIFY2(whole.code == 0 && whole.out.startsWith("1 records taken, 128 known"), whole.out + whole.err);
        QVERIFY(m_bench.run({"merge", other, m_book, "--key", m_bench.path("other.key")}).out.startsWith("0 records taken, 129 known"));
        QCOMPARE(m_bench.run({"rebuild", other, "--key", m_bench.path("other.key")}).code, 0);
        QCOMPARE(m_bench.run({"check", other}).code, 0);
    }

    void historyTellsWhoAndWhen()
    {
        const auto history = m_bench.run({"history", m_book, "26"});
        QCOMPARE(history.code, 0);
        QCOMPARE(history.out.count('\n'), 7);
        QVERIFY(history.out.startsWith("2026-06-09T14:42:00.000Z  test-site  R. Okafor"));  // 9:42 at UTC - 5 h
    }

    void theWalkIsWholeAndCanBeMadeAgain()
    {
        const auto lines = Bench::read(Bench::source("demo/walk.nmea")).split('\n');
        int epochs = 0;
        for (const auto& line : lines) {
            if (line.isEmpty())
                continue;
            QVERIFY(line.endsWith('\r') && line.at(0) == '$');
            const auto star = line.indexOf('*');
            int sum = 0;
            for (const char c : line.mid(1, star - 1))
                sum ^= c;
            QCOMPARE(line.mid(star + 1, 2).toInt(nullptr, 16), sum);
            epochs += line.startsWith("$GPGGA") ? 1 : 0;
        }
        QCOMPARE(epochs, 120);
        for (const char* script : {"demo/make_walk.py", "demo/make_photo.py"})  // they print what is wrong
            QCOMPARE(QProcess::execute("/usr/bin/python3", {Bench::source(script), "--check"}), 0);
    }
};

QTEST_GUILESS_MAIN(DemoTest)
#include "demo_test.moc"
