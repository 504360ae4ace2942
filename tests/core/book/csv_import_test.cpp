#include "core/book/sample_book.h"

#include "book/audit.h"
#include "book/csv_import.h"
#include "book/csv_text.h"
#include "book/state_query.h"
#include "method/rules/rule_set.h"

#include <QFile>
#include <QtTest>

using namespace sample;

namespace {

/// The rounding chain that the published day used: percent from the rounded dry density. [COPPELL]
groundcount::method::RuleSet publishedRules()
{
    auto rules = groundcount::method::neutralRules();
    rules.choices.at("percent.from").word = "rounded dry density";
    return rules;
}

ImportSettings settings(ImportMode mode = ImportMode::AllOrNothing)
{
    return {id(kPerson), at(0), -300, mode, publishedRules()};
}

std::string fieldDay()
{
    QFile file(GROUNDCOUNT_SOURCE_DIR "/tests/core/book/data/field_day.csv");
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

const std::string kHead =
    "test_no,test_date,material,proctor_reference,wet_density_lb_ft3,moisture_percent,max_dry_density_lb_ft3,optimum_moisture_percent,min_compaction_percent,moisture_window_low_points,moisture_window_high_points\n";
const std::string kGood = "1,2026-06-09,Lean clay,T 99,120.2,26.8,99.0,22.0,95,0,5\n";

}  // namespace

class CsvImportTest : public QObject {
    Q_OBJECT

private slots:
    void publishedDayGivesItsOwnFigures();
    void unroundedChainWouldNotGiveThem();
    void importedBookIsClean();
    void brokenRowsAreNamedByLineAndColumn_data();
    void brokenRowsAreNamedByLineAndColumn();
    void brokenRowsAreSkippedOnlyWhenAsked();
    void quotedFieldsLineEndsAndMarkAreRead();
    void brokenQuotesAreNamed();
    void secondImportTakesNothingTwice();
    void failingTestsFail();
};

void CsvImportTest::publishedDayGivesItsOwnFigures()
{
    // expected values: the columns reported_* of the published list [COPPELL]; all 14 pass in tests/tables/field_tests.tsv
    Bench bench;
    Store store = bench.make();
    const auto report = importTests(store, fieldDay(), settings());
    QVERIFY2(report, report ? "" : report.error().what.c_str());
    QCOMPARE(report->tests.size(), std::size_t(14));
    QVERIFY2(report->disagreements.empty(), report->disagreements.empty() ? "" : report->disagreements[0].c_str());
    const auto rows = readCsv(fieldDay()).value();
    for (std::size_t i = 0; i < report->tests.size(); ++i) {
        const TestRow test = StateQuery(store).test(report->tests[i]).value();
        QCOMPARE(test.number, rows[i + 1][0].text);
        QCOMPARE(test.dry, rows[i + 1][12].text);
        QCOMPARE(test.compactionPct, rows[i + 1][13].text);
        QCOMPARE(test.state, TestState::Pass);
        QCOMPARE(test.startedAt.substr(0, 10), rows[i + 1][1].text);
        QCOMPARE(test.gaugeName, std::string("As reported"));
    }
    QCOMPARE(StateQuery(store).lots()->size(), std::size_t(2));
    QCOMPARE(StateQuery(store).nextTestNumber().value(), std::string("45"));
}

void CsvImportTest::unroundedChainWouldNotGiveThem()
{
    Bench bench;
    Store store = bench.make();
    ImportSettings other = settings();
    other.rules = groundcount::method::neutralRules();
    const auto report = importTests(store, fieldDay(), other);
    QVERIFY(report);
    QVERIFY(!report->disagreements.empty());  // the comparison can fail
    QVERIFY2(report->disagreements[0].find("percent compaction reported") != std::string::npos, report->disagreements[0].c_str());
}

void CsvImportTest::importedBookIsClean()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(importTests(store, fieldDay(), settings()));
    const auto audit = check(store).value();
    QCOMPARE(audit.verdicts, std::size_t(14));
    QVERIFY2(audit.isClean(), audit.isClean() ? "" : audit.lines[0].what.c_str());
    const std::string before = store.derivedText().value();
    QVERIFY(store.rebuild());
    QCOMPARE(store.derivedText().value(), before);
}

void CsvImportTest::brokenRowsAreNamedByLineAndColumn_data()
{
    QTest::addColumn<QByteArray>("row");
    QTest::addColumn<QByteArray>("says");
    const auto row = [](const char* text, const char* says) { QTest::newRow(says) << QByteArray(text) << QByteArray(says); };
    row("2,2026-06-09,Lean clay,T 99,abc,26.8,99.0,22.0,95,0,5\n", "Line 3, column 5 (wet_density_lb_ft3): it must be a decimal number above 0; it is \"abc\".");
    row("2,2026-06-09,Lean clay,T 99,NaN,26.8,99.0,22.0,95,0,5\n", "column 5 (wet_density_lb_ft3): it must be a decimal number above 0; it is \"NaN\".");
    row("2,2026-06-09,Lean clay,T 99,-120,26.8,99.0,22.0,95,0,5\n", "column 5 (wet_density_lb_ft3): it must be a decimal number above 0; it is \"-120\".");
    row("2,2026-06-09,Lean clay,T 99,1e2,26.8,99.0,22.0,95,0,5\n", "it is \"1e2\".");
    row("2,2026-06-09,Lean clay,T 99,120.2,-1,99.0,22.0,95,0,5\n", "column 6 (moisture_percent): it must be a decimal number of 0 or more; it is \"-1\".");
    row("2,2026-06-31,Lean clay,T 99,120.2,26.8,99.0,22.0,95,0,5\n", "column 2 (test_date): it must be a date YYYY-MM-DD; it is \"2026-06-31\".");
    row("2,2026-06-09,,T 99,120.2,26.8,99.0,22.0,95,0,5\n", "column 3 (material): it must not be empty.");
    row("2,2026-06-09,Lean clay,T 99,120.2\n", "column 6: a row must have 11 fields; it has 5.");
    row("1,2026-06-09,Lean clay,T 99,120.2,26.8,99.0,22.0,95,0,5\n", "Line 3, column 1 (test_no): a number is used once; test 1 is there already.");
    row("2,2026-06-09,Lean clay,T 99,120.2,26.8,99.0,22.0,95,5,0\n", "Line 3, test 2:");
}

void CsvImportTest::brokenRowsAreNamedByLineAndColumn()
{
    QFETCH(QByteArray, row);
    QFETCH(QByteArray, says);
    Bench bench;
    Store store = bench.make();
    const auto report = importTests(store, kHead + kGood + row.toStdString(), settings());
    QVERIFY(!report);
    QVERIFY2(QByteArray::fromStdString(report.error().what).contains(says), report.error().what.c_str());
    QCOMPARE(store.lastRow().value(), std::int64_t(0));
}

void CsvImportTest::brokenRowsAreSkippedOnlyWhenAsked()
{
    Bench bench;
    Store store = bench.make();
    const std::string list = kHead + "7,2026-06-09,Lean clay,T 99,abc,26.8,99.0,22.0,95,0,5\n" + kGood + "8,2026-06-09,Lean clay,T 99,12\n";
    const auto report = importTests(store, list, settings(ImportMode::SkipBroken)).value();
    QCOMPARE(report.tests.size(), std::size_t(1));
    QCOMPARE(report.skipped.size(), std::size_t(2));
    QVERIFY(report.skipped[0].rfind("Line 2, column 5", 0) == 0);
    QVERIFY(report.skipped[1].rfind("Line 4, column 6", 0) == 0);
    QCOMPARE(StateQuery(store).tests({})->size(), std::size_t(1));
}

void CsvImportTest::quotedFieldsLineEndsAndMarkAreRead()
{
    const auto rows = readCsv("\xEF\xBB\xBF" "a,\"b,1\"\r\n\"say \"\"yes\"\"\",\"two\r\nlines\"\r\n\r\nlast,").value();
    QCOMPARE(rows.size(), std::size_t(3));
    QCOMPARE(rows[0][0].text, std::string("a"));
    QCOMPARE(rows[0][1].text, std::string("b,1"));
    QCOMPARE(rows[1][0].text, std::string("say \"yes\""));
    QCOMPARE(rows[1][1].text, std::string("two\r\nlines"));
    QCOMPARE(rows[2][0].line, 5);
    QCOMPARE(rows[2][1].text, std::string());
    Bench bench;
    Store store = bench.make();
    std::string list = "\xEF\xBB\xBF" + kHead + "\"1\",2026-06-09,\"Clay, \"\"lean\"\"\",T 99,120.2,26.8,99.0,22.0,95,0,5\n";
    for (std::size_t at = 0; (at = list.find('\n', at)) != std::string::npos; at += 2)
        list.replace(at, 1, "\r\n");
    QCOMPARE(importTests(store, list, settings())->tests.size(), std::size_t(1));
    QCOMPARE(StateQuery(store).materials()->front().name, std::string("Clay, \"lean\""));
}

void CsvImportTest::brokenQuotesAreNamed()
{
    for (const auto& [text, says] : std::vector<std::pair<std::string, std::string>>{
             {"a,b\nc,\"d", "Line 2, column 2: the quote that begins here is never closed."},
             {"a,b\nc,d\"e", "Line 2, column 2: a quote may stand only around a whole field."},
             {"a,\"b\"c", "Line 1, column 2: nothing may stand between"},
             {"a,\xFF", "must be UTF-8"}}) {
        const auto rows = readCsv(text);
        QVERIFY(!rows);
        QVERIFY2(rows.error().what.find(says) != std::string::npos, rows.error().what.c_str());
    }
}

void CsvImportTest::secondImportTakesNothingTwice()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(importTests(store, fieldDay(), settings()));
    const auto rows = store.lastRow().value();
    QVERIFY(!importTests(store, fieldDay(), settings()));
    const auto again = importTests(store, fieldDay(), settings(ImportMode::SkipBroken)).value();
    QCOMPARE(again.tests.size(), std::size_t(0));
    QCOMPARE(again.skipped.size(), std::size_t(14));
    QCOMPARE(store.lastRow().value(), rows);
}

void CsvImportTest::failingTestsFail()
{
    Bench bench;
    Store store = bench.make();
    const std::string list = kHead + "1,2026-06-09,Lean clay,T 99,115.0,26.8,99.0,22.0,95,0,5\n" + "2,2026-06-09,Lean clay,T 99,120.2,20.0,99.0,22.0,95,0,5\n";
    const auto report = importTests(store, list, settings()).value();
    const TestRow low = StateQuery(store).test(report.tests[0]).value();
    QCOMPARE(low.state, TestState::Fail);
    QCOMPARE(low.reasons, std::vector<std::string>{"density low"});
    const TestRow dry = StateQuery(store).test(report.tests[1]).value();
    QCOMPARE(dry.state, TestState::Fail);
    QVERIFY(std::find(dry.reasons.begin(), dry.reasons.end(), "too dry") != dry.reasons.end());
}

QTEST_GUILESS_MAIN(CsvImportTest)
#include "csv_import_test.moc"
