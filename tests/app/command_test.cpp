#include "app/command_bench.h"

namespace {

const QByteArray kReadout = R"({"density_unit": "lb/ft3", "readings": [{"wet_density": "129.9", "water_density": "14.4"}],
    "reference": {"maximum": "118.6", "optimum_pct": "12.8", "standard_uncertainty": "0.9", "coarse_gravity": "2.62"},
    "requirement": {"minimum_pct": "95", "window": {"kind": "points", "low": "-2", "high": "2"}}})";
const QByteArray kCounts = R"({"density_unit": "lb/ft3", "depth_in": "8", "readings": [{"density_count": 1958, "moisture_count": 302}],
    "gauge": {"density_standard": "2846", "moisture_standard": "648",
      "density_curves": [{"depth_in": "8", "a": "7.9", "b": "0.0182", "c": "0.05"}], "water_curve": {"e": "0.012", "slope": "0.0262"}},
    "reference": {"maximum": "118.6", "optimum_pct": "12.8"}, "requirement": {"minimum_pct": "95"}})";

QByteArray with(QByteArray json, const QByteArray& from, const QByteArray& to)
{
    if (!json.contains(from))
        qFatal("nothing to replace");
    return json.replace(from, to);
}

}  // namespace

class CommandTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        QVERIFY2(QFile::exists(Bench::program()), qPrintable("build the target groundbook: " + Bench::program()));
    }

    void helpTellsEveryVerb()
    {
        const Bench bench;
        const auto all = bench.run({"--help"});
        QCOMPARE(all.code, 0);
        for (const QString verb : {"make", "import", "evaluate", "show", "export", "coverage", "site", "crs", "sheet", "check", "rules", "history", "merge", "rebuild", "play", "keys", "retire", "server", "admit", "push", "pull", "publish"}) {
            QVERIFY2(all.out.contains("  " + verb.toUtf8()), qPrintable(verb));
            const auto one = bench.run({verb, "--help"});
            QCOMPARE(one.code, 0);
            QVERIFY2(one.out.contains("Usage: groundbook " + verb.toUtf8()), one.out.constData());
            QCOMPARE(bench.run({verb, "--no-such-option"}).code, 2);
        }
        QVERIFY(bench.run({"--version"}).out.startsWith("groundbook "));
    }

    void wrongUseEndsWithTwo_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("nothing") << QStringList{};
        QTest::newRow("unknown verb") << QStringList{"weigh"};
        for (const char* verb : {"make", "import", "show", "export", "coverage", "site", "crs", "sheet", "check", "history", "merge", "rebuild", "play", "keys", "retire", "server", "admit", "push", "pull", "publish"})
            QTest::newRow(verb) << QStringList{verb};
        QTest::newRow("make without a name") << QStringList{"make", "a.fieldbook", "--epsg", "6411", "--person", "A"};
        QTest::newRow("make with a word as code") << QStringList{"make", "a.fieldbook", "--name", "n", "--epsg", "ft", "--person", "A"};
        QTest::newRow("make with another role") << QStringList{"make", "a.fieldbook", "--name", "n", "--epsg", "6411", "--person", "A", "--role", "owner"};
        QTest::newRow("explain without a test") << QStringList{"show", "a.fieldbook", "--explain"};
        QTest::newRow("two forms of answer") << QStringList{"evaluate", "--json", "--explain"};
    }
    void wrongUseEndsWithTwo()
    {
        QFETCH(QStringList, arguments);
        const Bench bench;
        const auto answer = bench.run(arguments);
        QCOMPARE(answer.code, 2);
        QVERIFY(!answer.err.isEmpty());
        QCOMPARE(bench.files(), QStringList{});
    }

    void evaluatesAReadout()
    {
        const Bench bench;
        const auto text = bench.run({"evaluate"}, kReadout);
        QCOMPARE(text.code, 0);
        // By hand: 129.9 - 14.4 = 115.5; 100 x 115.5/118.6 = 97.386; 100 x 14.4/115.5 = 12.468; 12.8 -/+ 2.
        QCOMPARE(text.out.trimmed(), QByteArray("Pass: 97.4 % compaction, 95 needed; water content 12.5 %, 10.8 to 14.8 allowed."));
        const auto json = Bench::object(bench.run({"evaluate", "--json"}, kReadout).out);
        QCOMPARE(json["verdict"_k].toString(), QString("pass"));
        QCOMPARE(json["reported"_k]["dry_density"_k].toString(), QString("115.5"));
        QCOMPARE(json["unrounded"_k]["percent_compaction"_k].toString(), QString("97.386172"));
        const auto explained = bench.run({"evaluate", "--explain"}, kReadout);
        QVERIFY2(explained.out.contains("129.90 \xE2\x88\x92 14.40") && explained.out.contains("[D6938-SCOPE]"), explained.out.constData());
    }

    void aTestThatFailsIsAnAnswer()
    {
        const Bench bench;
        const auto answer = bench.run({"evaluate", "--json"}, with(kReadout, "\"95\"", "\"98\""));
        QCOMPARE(answer.code, 0);
        QCOMPARE(Bench::object(answer.out)["verdict"_k].toString(), QString("fail"));
    }

    void evaluatesCountsThroughTheCalibration()
    {
        const Bench bench;
        const auto json = Bench::object(bench.run({"evaluate", "--json"}, kCounts).out);
        // By hand: D = ln(7.9/(1958/2846 + 0.05))/0.0182, M = (302/648 - 0.012)/0.0262.
        const double wet = std::log(7.9 / (1958.0 / 2846 + 0.05)) / 0.0182;
        const double water = (302.0 / 648 - 0.012) / 0.0262;
        const double percent = 100 * (wet - water) / 118.6;
        QVERIFY(qAbs(json["unrounded"_k]["percent_compaction"_k].toString().toDouble() - percent) < 1e-6);
    }

    void theExamplesOfThePageRun()
    {
        const Bench bench;
        const auto page = Bench::read(Bench::source("docs/evaluate-json.md"));
        int ran = 0;
        QByteArray block;
        const auto lines = page.split('\n');  // the last is empty, so the last block ends
        for (const auto& line : lines) {
            if (line.startsWith("    ")) {
                block += line + '\n';
            } else if (!block.isEmpty()) {
                const auto answer = bench.run({"evaluate"}, block);
                QVERIFY2(answer.code == 0 && answer.out.startsWith("Pass"), answer.err.constData());
                block.clear();
                ++ran;
            }
        }
        QCOMPARE(ran, 2);
    }

    void refusesInOneSentence_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QByteArray>("says");
        const auto row = [](const char* name, const QByteArray& json, const char* says) { QTest::newRow(name) << json << QByteArray(says); };
        row("density count of zero", with(kCounts, "\"density_count\": 1958", "\"density_count\": 0"), "The density count is 0; it must be above 0");
        row("moisture count of zero", with(kCounts, "\"moisture_count\": 302", "\"moisture_count\": 0"), "The moisture count is 0; it must be above 0");
        row("standard count of zero", with(kCounts, "\"2846\"", "\"0\""), "The density standard count is 0; it must be above 0");
        row("ratio above the calibration", with(kCounts, "1958", "99999"), "must be at most A");
        row("ratio below the water calibration", with(kCounts, "\"moisture_count\": 302", "\"moisture_count\": 5"), "at least E");
        row("depth without calibration", with(kCounts, "\"depth_in\": \"8\", \"readings\"", "\"depth_in\": \"7\", \"readings\""), "no calibration at 7 in.");
        row("water at the wet density", with(kReadout, "\"14.4\"", "\"129.9\""), "below the wet density");
        row("water above the wet density", with(kReadout, "\"14.4\"", "\"130\""), "below the wet density");
        row("NaN as text", with(kReadout, "\"129.9\"", "\"NaN\""), "NaN");
        row("NaN as a number", with(kReadout, "\"129.9\"", "NaN"), "not a JSON object");
        row("infinity", with(kReadout, "\"129.9\"", "\"inf\""), "inf");
        row("text for a figure", with(kReadout, "\"129.9\"", "\"wet\""), "\"wet\" is not a decimal number");
        row("no JSON", "129.9 14.4", "not a JSON object");
        row("a misspelt key", with(kReadout, "wet_density", "wet_densty"), "wet_densty");
        row("three readings", with(kReadout, "[{", "[{\"wet_density\": 1, \"water_density\": 0}, {\"wet_density\": 1, \"water_density\": 0}, {"), "one or two");
        row("another unit", with(kReadout, "lb/ft3", "kg/m3"), "never converted");
        row("masses the wrong way round",
            with(kReadout, "\"requirement\"", R"("sample": {"total_mass": "400", "retained_mass": "3000", "sieve": "3/4 in."}, "requirement")"),
            "wrong way round");
        row("a negative mass",
            with(kReadout, "\"requirement\"", R"("sample": {"total_mass": "-3", "retained_mass": "0", "sieve": "3/4 in."}, "requirement")"), "-3");
        row("a window the wrong way round", with(with(kReadout, "\"-2\"", "\"3\""), "\"high\": \"2\"", "\"high\": \"1\""), "3");
        row("readings far apart",
            with(kReadout, R"([{"wet_density": "129.9", "water_density": "14.4"}])",
                 R"([{"wet_density": "129.9", "water_density": "14.4"}, {"wet_density": "139.9", "water_density": "14.4"}])"), "differs from the first by 7.7 %");
    }
    void refusesInOneSentence()
    {
        QFETCH(QByteArray, json);
        QFETCH(QByteArray, says);
        const Bench bench;
        const auto answer = bench.run({"evaluate"}, json);
        QVERIFY2(answer.isRefusal(), answer.out + answer.err);
        QVERIFY2(answer.err.contains(says), answer.err.constData());
    }

    void printsEveryRuleWithItsSource()
    {
        const Bench bench;
        const auto json = bench.run({"rules", "--json"});
        QCOMPARE(json.code, 0);
        const auto limits = Bench::object(json.out)["limits"_k].toObject();
        QVERIFY(limits.size() > 15);
        const auto text = bench.run({"rules"});
        for (auto it = limits.begin(); it != limits.end(); ++it)
            QVERIFY2(text.out.contains(it.key().toUtf8() + ' ') && text.out.contains('[' + (*it)["source"_k].toString().toUtf8() + ']'),
                     qPrintable(it.key()));
        QCOMPARE(bench.run({"rules", bench.write("r.json", json.out)}).out, text.out);
        QCOMPARE(bench.run({"rules", Bench::source("demo/rules.json")}).code, 0);
    }

    void refusesAMisspeltRule()
    {
        const Bench bench;
        const auto rules = bench.run({"rules", "--json"}).out;
        const auto answer = bench.run({"rules", bench.write("r.json", with(rules, "clearance.people", "clearance.poeple"))});
        QVERIFY2(answer.isRefusal() && answer.err.contains("clearance.p"), answer.err.constData());
        QVERIFY(bench.run({"rules", "no-such-file.json"}).isRefusal());
        QVERIFY(bench.run({"evaluate", "--rules", "no-such-file.json"}, kReadout).isRefusal());
    }

    void judgesByTheRuleSetThatIsNamed()
    {
        const Bench bench;
        const auto rules = bench.write("r.json", with(bench.run({"rules", "--json"}).out, "unrounded dry density", "rounded dry density"));
        const auto json = with(kReadout, "\"129.9\"", "\"130.04\"");
        // 130.04 - 14.4 = 115.64, rounded 115.6: 97.5042 against 97.4705 percent.
        QCOMPARE(Bench::object(bench.run({"evaluate", "--json", "--rules", rules}, json).out)["unrounded"_k]["percent_compaction"_k].toString(), QString("97.470489"));
        QCOMPARE(Bench::object(bench.run({"evaluate", "--json"}, json).out)["unrounded"_k]["percent_compaction"_k].toString(), QString("97.504216"));
    }

    void makesABook()
    {
        const Bench bench;
        QCOMPARE(bench.make("a.fieldbook").code, 0);
        QCOMPARE(bench.files(), QStringList{"a.fieldbook"});
        const auto shown = bench.run({"show", bench.path("a.fieldbook")});
        QVERIFY(shown.code == 0 && shown.out.contains("North approach") && shown.out.contains("EPSG:6411"));
        QCOMPARE(bench.run({"check", bench.path("a.fieldbook")}).code, 0);
        QCOMPARE(QFile::permissions(bench.path("data/groundcount/device.key")) & 0x0077, QFile::Permissions());
        const auto before = Bench::read(bench.path("a.fieldbook"));
        QVERIFY(bench.make("a.fieldbook").isRefusal());
        QCOMPARE(Bench::read(bench.path("a.fieldbook")), before);
    }

    void makesNothingOfAnUnfitCoordinateSystem_data()
    {
        QTest::addColumn<QString>("code");
        QTest::newRow("unknown") << "999999";
        QTest::newRow("geographic") << "4326";
    }
    void makesNothingOfAnUnfitCoordinateSystem()
    {
        QFETCH(QString, code);
        const Bench bench;
        const auto answer = bench.run({"make", bench.path("a.fieldbook"), "--name", "n", "--epsg", code, "--person", "A"});
        QVERIFY2(answer.isRefusal(), answer.err.constData());
        QCOMPARE(bench.files(), QStringList{});
    }

    void importsThePublishedTests()
    {
        // City of Coppell TX engineering records [COPPELL]; percent from the rounded dry density gives every printed percent.
        const Bench bench;
        const auto csv = Bench::source("tests/core/book/data/field_day.csv");
        const auto rules = bench.write("r.json", with(bench.run({"rules", "--json"}).out, "unrounded dry density", "rounded dry density"));
        QCOMPARE(bench.make("a.fieldbook").code, 0);
        const auto answer = bench.run({"import", bench.path("a.fieldbook"), csv, "--rules", rules});
        QVERIFY2(answer.code == 0 && answer.err.isEmpty(), answer.err.constData());
        QHash<QString, QString> published;
        auto lines = QString::fromUtf8(Bench::read(csv)).split('\n', Qt::SkipEmptyParts);
        const auto head = lines.takeFirst().split(',');
        for (const auto& line : lines)  // the quoted column is the last
            published[line.split(',')[0]] = line.split(',')[head.indexOf("reported_compaction_percent")];
        const auto tests = Bench::object(bench.run({"show", bench.path("a.fieldbook"), "--json"}).out)["tests"_k].toArray();
        QCOMPARE(tests.size(), published.size());
        QVERIFY(!tests.isEmpty());
        for (const auto& test : tests) {
            QCOMPARE(test["percent_compaction"_k].toString(), published[test["number"_k].toString()]);
            QCOMPARE(test["state"_k].toString(), QString("pass"));
        }
        QCOMPARE(bench.run({"check", bench.path("a.fieldbook")}).code, 0);
        QVERIFY(bench.run({"import", bench.path("a.fieldbook"), csv}).isRefusal());  // numbers are used once
    }

    void namesABrokenRowAndTakesTheOthersOnlyIfAsked()
    {
        const Bench bench;
        auto csv = Bench::read(Bench::source("tests/core/book/data/field_day.csv"));
        csv = with(csv, "123.0,25.9", "123.O,25.9");
        const auto file = bench.write("t.csv", csv);
        const auto book = bench.path("a.fieldbook");
        QCOMPARE(bench.make("a.fieldbook").code, 0);
        const auto refused = bench.run({"import", book, file});
        QVERIFY2(refused.isRefusal(), refused.err.constData());
        QVERIFY2(refused.err.contains("Line 4, column 5 (wet_density_lb_ft3)"), refused.err.constData());
        QCOMPARE(Bench::object(bench.run({"show", book, "--json"}).out)["tests"_k].toArray().size(), 0);
        const auto taken = bench.run({"import", book, file, "--skip-broken"});
        QCOMPARE(taken.code, 0);
        QVERIFY2(taken.err.contains("Skipped: Line 4, column 5"), taken.err.constData());
        QCOMPARE(Bench::object(bench.run({"show", book, "--json"}).out)["tests"_k].toArray().size(), 13);
        QVERIFY(bench.run({"import", book, "no-such.csv"}).isRefusal());
        QVERIFY(bench.run({"import", book, file, "--by", "Nobody"}).isRefusal());
        QVERIFY(bench.run({"import", bench.path("no-such.fieldbook"), file}).isRefusal());
        QVERIFY(!bench.files().contains("no-such.fieldbook"));
    }
};

QTEST_GUILESS_MAIN(CommandTest)
#include "command_test.moc"
