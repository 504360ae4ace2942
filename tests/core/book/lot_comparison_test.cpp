#include "core/book/sample_book.h"

#include "book/lot_chart.h"
#include "book/lot_comparison.h"
#include "method/rules/rule_set.h"

#include <QDateTime>
#include <QTest>
#include <cmath>
#include <functional>

using namespace groundcount;
using namespace groundcount::book;

namespace {

/// Tests of a lot, one after another; `party` 'c' or 'a' by person, gauge 1 or 2.
class Lot {
public:
    void add(const std::vector<std::string>& values, const std::string& person, const std::string& gauge)
    {
        for (const std::string& value : values) {
            TestRow t;
            t.id = "t" + std::to_string(tests.size());
            t.number = std::to_string(tests.size() + 1);
            t.lot = "lot";
            t.lift = "lift";
            t.state = TestState::Pass;
            t.purpose = TestPurpose::Random;
            t.compactionPct = value;
            t.person = person;
            t.gauge = t.gaugeName = gauge;
            t.startedAt = QDateTime(QDate(2026, 6, 9), QTime(8, 0), Qt::UTC).addSecs(60 * static_cast<qint64>(tests.size())).toString(Qt::ISODateWithMs).toStdString();
            t.north = 1000 + 100 * static_cast<double>(tests.size());
            t.east = 500;
            tests.push_back(t);
        }
    }
    std::vector<TestRow> tests;
};

std::vector<std::string> words(const char* line)
{
    std::vector<std::string> all;
    for (const auto& word : QString::fromLatin1(line).split(' '))
        all.push_back(word.toStdString());
    return all;
}

ComparisonRules rulesAt(double alpha, int leastPairs = 10)
{
    return {alpha, leastPairs, Length::feet(3)};
}

const std::map<std::string, std::string> kParties{{"p1", "contractor"}, {"p2", "agency"}};

/// A row of tests/tables by its id; the columns by name.
std::map<QString, QString> row(const char* table, const char* id)
{
    QFile file(QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/tests/tables/") + table);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("%s", table);
    QStringList names;
    for (const QString& line : QString::fromUtf8(file.readAll()).split('\n')) {
        if (line.startsWith('#'))
            continue;
        const QStringList cells = line.split('\t');
        if (names.isEmpty())
            names = cells;
        else if (cells.first() == QLatin1String(id)) {
            std::map<QString, QString> named;
            for (qsizetype i = 0; i < cells.size(); ++i)
                named[names[i]] = cells[i];
            return named;
        }
    }
    qFatal("%s has no row %s", table, id);
}

bool isNear(double value, const QString& printed)
{
    const auto places = printed.contains('.') ? printed.size() - printed.indexOf('.') - 1 : 0;
    return std::fabs(value - printed.toDouble()) <= 0.5001 * std::pow(10, -static_cast<double>(places));
}

}  // namespace

class LotComparisonTest : public QObject {
    Q_OBJECT
private slots:
    void contractorAgainstAgencyGivesThePublishedFigures_data()
    {
        // Each row of the tables names its source: TTEST2-REF, STDLIB-T2 (published), IMQA (from memory), COMPUTED.
        QTest::addColumn<QByteArray>("id");
        for (const char* id : {"FT-02", "FT-04T", "TX-2", "TX-3"})
            QTest::newRow(id) << QByteArray(id);
    }
    void contractorAgainstAgencyGivesThePublishedFigures()
    {
        QFETCH(QByteArray, id);
        auto printed = row("t_test.tsv", id.constData());
        Lot lot;
        lot.add(words(printed["x"].toLatin1()), "p1", "g1");
        lot.add(words(printed["y"].toLatin1()), "p2", "g1");
        const auto all = compareParties(lot.tests, "lot", kParties, 0.3048, rulesAt(printed["alpha"].toDouble())).value();
        QCOMPARE(all.size(), std::size_t(1));
        const auto& c = all.front();
        QVERIFY2(c.means.value, c.means.whyNot.c_str());
        QCOMPARE(c.form == method::MeanComparison::Pooled, printed["kind"] == "pooled");
        QVERIFY2(isNear(c.means.value->t, printed["want_t"]), qPrintable(QString::number(c.means.value->t, 'g', 9)));
        QVERIFY(isNear(c.means.value->degreesOfFreedom, printed["want_df"]));
        QVERIFY(isNear(c.means.value->tCritical, printed["want_t_critical"]));
        QVERIFY(isNear(c.means.value->low, printed["want_ci_low"]));
        QCOMPARE(c.means.value->different, printed["result"] == "different");
    }

    void variancesComeFirstByThePublishedF_data()
    {
        QTest::addColumn<QByteArray>("id");
        for (const char* id : {"FT-04", "FX-2", "FX-3"})
            QTest::newRow(id) << QByteArray(id);
    }
    void variancesComeFirstByThePublishedF()
    {
        QFETCH(QByteArray, id);
        auto printed = row("f_test.tsv", id.constData());
        Lot lot;
        lot.add(words(printed["x"].toLatin1()), "p1", "Gauge A");
        lot.add(words(printed["y"].toLatin1()), "p1", "Gauge B");
        const auto all = compareGauges(lot.tests, "lot", 0.3048, rulesAt(printed["alpha"].toDouble())).value();
        QCOMPARE(all.size(), std::size_t(1));
        const auto& f = all.front().variances;
        QVERIFY2(f.value, f.whyNot.c_str());
        QVERIFY(isNear(f.value->fLargerOverSmaller, printed["want_f_larger_over_smaller"]));
        QVERIFY(isNear(f.value->fCritical, printed["want_f_critical"]));
        QCOMPARE(f.value->different, printed["result"] == "unequal");
        QCOMPARE(all.front().form == method::MeanComparison::Unequal, printed["result"] == "unequal");
        QCOMPARE(all.front().x.name, std::string("Gauge A"));
    }

    void onlyRandomDecidedTestsEnter()
    {
        Lot lot;
        lot.add({"96.0", "97.0", "95.5"}, "p1", "g1");
        lot.add({"96.5", "97.5", "95.0"}, "p2", "g1");
        lot.tests[1].purpose = TestPurpose::Directed;
        lot.tests[4].state = TestState::InformationOnly;
        lot.tests[5].state = TestState::Fail;  // as it was found
        const auto c = compareParties(lot.tests, "lot", kParties, 0.3048, rulesAt(0.01)).value().front();
        QCOMPARE(c.x.values, (std::vector<double>{96.0, 95.5}));
        QCOMPARE(c.y.values, (std::vector<double>{96.5, 95.0}));
        QVERIFY(compareParties(lot.tests, "another", kParties, 0.3048, rulesAt(0.01)).value().empty());
        QVERIFY(compareParties(lot.tests, "lot", {{"p1", "contractor"}}, 0.3048, rulesAt(0.01)).value().empty());
        lot.tests[0].compactionPct = "about 96";
        QVERIFY(!compareParties(lot.tests, "lot", kParties, 0.3048, rulesAt(0.01)));
    }

    void placesTestedSideBySideArePaired()
    {
        Lot lot;
        lot.add({"96.0", "97.2", "95.5", "98.1"}, "p1", "Gauge A");
        lot.add({"96.4", "97.3", "95.9", "98.4"}, "p1", "Gauge B");
        for (std::size_t i = 0; i < 3; ++i)
            lot.tests[4 + i].north = lot.tests[i].north + 2;
        lot.tests[7].north = lot.tests[3].north + 4;  // too far
        const auto few = compareGauges(lot.tests, "lot", 0.3048, rulesAt(0.05)).value().front();
        QCOMPARE(few.pairsX.values, (std::vector<double>{96.0, 97.2, 95.5}));
        QVERIFY(!few.paired.value && !few.paired.whyNot.empty());
        const auto c = compareGauges(lot.tests, "lot", 0.3048, rulesAt(0.05, 3)).value().front();
        QVERIFY(c.paired.value);
        // d = -0.4, -0.1, -0.4: mean -0.3, s 0.173205, t = -0.3/(0.173205/sqrt 3) = -3 by hand
        QVERIFY(std::fabs(c.paired.value->t + 3) < 1e-9);
        lot.tests[4].lift = "another lift";
        QCOMPARE(compareGauges(lot.tests, "lot", 0.3048, rulesAt(0.05, 2)).value().front().pairsX.values.size(), std::size_t(2));
    }

    void moistureIsFollowedAgainstOptimum()
    {
        Lot lot;
        lot.add({"96", "96", "96", "96", "96"}, "p1", "g1");
        const char* contents[] = {"12.0", "12.5", "13.1", "13.4", "14.0"};
        for (std::size_t i = 0; i < 5; ++i) {
            lot.tests[i].contentPct = contents[i];
            lot.tests[i].optimumPct = "13.0";
        }
        const auto trend = moistureTrend(lot.tests, "lot", 4).value();
        QCOMPARE(trend.points.size(), std::size_t(5));
        QVERIFY(std::fabs(trend.points.back() - 1.0) < 1e-9);
        QCOMPARE(trend.movingMeans.size(), std::size_t(2));
        QVERIFY(std::fabs(trend.movingMeans[0] + 0.25) < 1e-9);
        QVERIFY(trend.chart.value);
        LotRow row;
        row.windowKind = "points";
        row.windowLowText = "-2";
        row.windowHighText = "2";
        const auto chart = moistureChart(trend, row, 4);
        QCOMPARE(chart.points.size(), std::size_t(5));
        QCOMPARE(*chart.needLow, -2.0);
        QVERIFY(chart.bottom <= -2 && chart.top >= 2);
    }

    void theAxisHoldsEverythingInRoundSteps()
    {
        for (const double reach : {0.4, 3.0, 7.0, 25.0, 140.0}) {
            LotChart chart;
            chart.points.push_back({95, TestState::Pass, "1", "1", 1, false});
            chart.points.push_back({95 + reach, TestState::Pass, "2", "2", 1, false});
            fitAxis(chart);
            QVERIFY(chart.bottom <= 95 && chart.top >= 95 + reach);
            const double steps = (chart.top - chart.bottom) / chart.step;
            QVERIFY2(steps >= 2 && steps <= 10, qPrintable(QString::number(steps)));
            QVERIFY(std::fabs(steps - std::round(steps)) < 1e-9);
        }
    }

    void theProfileHoldsTheLotsOfOneLine()
    {
        std::vector<LotRow> lots(3);
        for (std::size_t i = 0; i < 3; ++i) {
            lots[i].id = lots[i].name = std::string(1, static_cast<char>('A' + i));
            lots[i].beginStationFt = 1000 + 500 * static_cast<double>(2 - i);
            lots[i].endStationFt = *lots[i].beginStationFt + 400;
        }
        lots[2].alignment = "another line";
        const std::vector<LiftRow> lifts{{"a3", "A", 3, ""}, {"b5", "B", 5, ""}, {"c9", "C", 9, ""}};
        std::vector<TestRow> tests(4);
        const char* of[] = {"A", "B", "C", "A"};
        for (std::size_t i = 0; i < 4; ++i) {
            tests[i].lot = of[i];
            tests[i].stationFt = 2100;
            tests[i].liftNumber = 3;
        }
        tests[3].state = TestState::Void;
        const auto profile = lineProfile(lots, lifts, tests, "A");
        QCOMPARE(profile.lots.size(), std::size_t(2));
        QCOMPARE(profile.lots.front().name, std::string("B"));
        QVERIFY(profile.lots.back().isChosen);
        QCOMPARE(profile.beginFt, 1500.0);
        QCOMPARE(profile.endFt, 2400.0);
        QCOMPARE(profile.lowest, 3);
        QCOMPARE(profile.highest, 5);
        QCOMPARE(profile.points.size(), std::size_t(2));
        lots[0].beginStationFt.reset();
        QVERIFY(lineProfile(lots, lifts, tests, "A").lots.empty());
    }

    void whoTestsForWhomIsSealedWithThePerson()
    {
        const sample::Bench bench;
        auto store = bench.make();
        auto entries = sample::setup();
        entries.push_back(sample::entry("person", 50, {{"name", "C. Sample"}, {"role", "technician"}, {"party", "contractor"}}));
        QVERIFY(store.sealAll(entries));
        const auto parties = partiesOf(store).value();
        QCOMPARE(parties.size(), std::size_t(1));
        QCOMPARE(parties.at(sample::id(50)), std::string("contractor"));
        QVERIFY(!store.seal(sample::entry("person", 51, {{"name", "D. Sample"}, {"role", "technician"}, {"party", "owner"}})));
    }

    void theRuleSetSaysTheLevel()
    {
        const auto rules = comparisonRules(method::neutralRules()).value();
        QCOMPARE(rules.alpha, 0.01);
        QCOMPARE(rules.leastPairs, 10);
        auto broken = method::neutralRules();
        broken.limits.erase("compare.level");
        QVERIFY(!comparisonRules(broken));
        broken = method::neutralRules();
        broken.limits["compare.level"].value = Decimal::parse("50").value();
        QVERIFY(!comparisonRules(broken));
    }
};

QTEST_GUILESS_MAIN(LotComparisonTest)
#include "lot_comparison_test.moc"
