#include "core/book/random_history.h"

#include "book/live.h"
#include "book/state_query.h"
#include "book/test_columns.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <random>

using namespace sample;

class FoldTest : public QObject {
    Q_OBJECT

private slots:
    void columnsSayWhatTheListSays();
    void aTestGoesThroughItsSteps();
    void amendmentReplacesAndKeepsItsPlace();
    void anAmendmentDoesNotOvertakeAnotherDevice();
    void twoAmendmentsOfOneRecordAreAConflict();
    void voidedTestKeepsItsNumberTaken();
    void retestsGetLetters();
    void clockSetBackDoesNotReorderADevice();
    void aVerdictIsOwedAgainAfterAnAmendmentOnly();
    void drawnSiteIsOwedUntilTested();
    void coordinatesComeInTheJobsUnit();
    void incrementalEqualsRebuiltOnRandomHistories();
    void mergeIsCommutativeAssociativeIdempotent();
    void mergeListsRefusedRecordsAndTakesTheRest();
};

void FoldTest::aTestGoesThroughItsSteps()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    const StateQuery query(store);
    QVERIFY(!query.test(id(100)));
    const Record site = store.seal(entry("test-site", 100, siteBody("26"), 10)).value();
    TestRow row = query.test(id(100)).value();
    QCOMPARE(row.state, TestState::Open);
    QCOMPARE(row.sealedSteps, unsigned(PlaceStep));
    QCOMPARE(row.lotName, std::string("Lot 7"));
    QCOMPARE(row.liftNumber, 2);
    QCOMPARE(row.gaugeName, std::string("Gauge 1"));
    QCOMPARE(row.personName, std::string("A. Sample"));
    QCOMPARE(row.proctorName, std::string("P-1"));
    QCOMPARE(row.north, 7012345.25);
    QCOMPARE(row.recordHash, site.hash);
    QVERIFY(store.seal(entry("clearance", 100, {{"hazards", Body::array({{{"hazard", "people"}, {"known_by", "eye"}, {"required_ft", "15"},
                       {"answer", "too close"}, {"override_reason", "flagger stays"}}})}}, 20)));
    QVERIFY(store.seal(entry("seating", 100, {{"surface", "smooth"}, {"rocks", false}, {"depth_in", "8"}}, 30)));
    QVERIFY(store.seal(entry("reading", 100, {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
                       {"density_count", 1800}, {"moisture_count", 120}, {"standard_count", base[5].hash}}, 40)));
    QVERIFY(store.seal(entry("sample", 100, {{"waiting", "oven"}}, 50)));
    QVERIFY(store.seal(entry("verdict", 100, verdictBody("provisional", site.hash), 60)));
    row = query.test(id(100)).value();
    QCOMPARE(row.state, TestState::Waiting);
    QCOMPARE(row.waitingFor, std::string("oven"));
    QCOMPARE(row.sealedSteps, unsigned(PlaceStep | ClearStep | SeatStep | CountStep | DigStep | VerdictStep));
    QCOMPARE(row.overrides, std::string("flagger stays"));
    QCOMPARE(row.densityCount, std::string("1800"));
    QCOMPARE(row.densityStandard, std::string("2850"));
    QCOMPARE(row.compactionPct, std::string("97.2"));
    QVERIFY(store.seal(entry("sample", 100, {{"waiting", ""}, {"other_water_content_pct", "13.8"}, {"other_method", "oven"}}, 5000)));
    const Record last = store.seal(entry("verdict", 100, verdictBody("fail", site.hash), 5010)).value();
    row = query.test(id(100)).value();
    QCOMPARE(row.state, TestState::Fail);
    QCOMPARE(row.waitingFor, std::string());
    QCOMPARE(row.recordHash, last.hash);
    QCOMPARE(row.startedAt, at(10));
    QCOMPARE(row.verdictAt, at(5010));
}

void FoldTest::amendmentReplacesAndKeepsItsPlace()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    Body lot = base[8].body;
    lot["name"] = "Lot 7 north";
    QVERIFY(store.seal(amend(base[8], lot, 10)));
    QCOMPARE(StateQuery(store).lots()->front().name, std::string("Lot 7 north"));
    QVERIFY(store.seal(entry("test-site", 100, siteBody("1"), 20)));
    const Record early = store.seal(entry("sample", 100, {{"waiting", "oven"}, {"total_mass_g", "3000"}}, 30)).value();
    QVERIFY(store.seal(entry("sample", 100, {{"waiting", ""}}, 40)));
    QVERIFY(store.seal(amend(early, {{"waiting", "oven"}, {"total_mass_g", "3010"}}, 50)));
    QCOMPARE(StateQuery(store).test(id(100))->waitingFor, std::string());  // the late sample stays the last word
    QVERIFY(!StateQuery(store).test(id(100))->conflict);
}

void FoldTest::anAmendmentDoesNotOvertakeAnotherDevice()
{
    Bench bench;
    Record early;
    {
        Store first = bench.make(1);
        QVERIFY(first.sealAll(setup()));
        QVERIFY(first.seal(entry("test-site", 100, siteBody("1"), 10)));
        early = first.seal(entry("sample", 100, {{"waiting", "oven"}}, 20)).value();
    }
    { Store second = Store::open(bench.path, OpenMode::ReadWrite, key(2)).value(); QVERIFY(second.seal(entry("sample", 100, {{"waiting", ""}}, 30))); }
    Store first = Store::open(bench.path, OpenMode::ReadWrite, key(1)).value();
    QVERIFY(first.seal(amend(early, {{"waiting", "oven"}, {"total_mass_g", "3010"}}, 40)));
    QCOMPARE(StateQuery(first).test(id(100))->waitingFor, std::string());
}

void FoldTest::twoAmendmentsOfOneRecordAreAConflict()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    const Record site = store.seal(entry("test-site", 100, siteBody("1"), 10)).value();
    const Record one = store.seal(amend(site, siteBody("1x"), 20)).value();
    QVERIFY(!StateQuery(store).test(id(100))->conflict);
    const Record two = store.seal(amend(site, siteBody("1y"), 30)).value();
    QVERIFY(StateQuery(store).test(id(100))->conflict);
    QCOMPARE(StateQuery(store).test(id(100))->number, std::string("1y"));
    QCOMPARE(StateQuery(store).conflicts().value(), std::vector<std::string>{id(100)});
    QVERIFY(store.seal(amend(one, siteBody("1z"), 40)));
    QVERIFY(store.seal(amend(two, siteBody("1z"), 41)));
    QVERIFY(!StateQuery(store).test(id(100))->conflict);
    QVERIFY(StateQuery(store).conflicts()->empty());
    QCOMPARE(StateQuery(store).test(id(100))->number, std::string("1z"));
}

void FoldTest::voidedTestKeepsItsNumberTaken()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    QCOMPARE(StateQuery(store).nextTestNumber().value(), std::string("1"));
    QVERIFY(store.seal(entry("test-site", 100, siteBody("41"), 10)));
    Entry gone = entry("void", 100, Body::object(), 20);
    gone.reason = "wrong lot";
    QVERIFY(store.seal(gone));
    QCOMPARE(StateQuery(store).test(id(100))->state, TestState::Void);
    QCOMPARE(StateQuery(store).nextTestNumber().value(), std::string("42"));
    gone.subject = id(kLift);
    QVERIFY(store.seal(gone));
    QVERIFY(StateQuery(store).lifts("")->empty());
}

void FoldTest::retestsGetLetters()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    QVERIFY(store.seal(entry("test-site", 100, siteBody("26"), 10)));
    QCOMPARE(StateQuery(store).nextRetestNumber(id(100)).value(), std::string("26A"));
    Body body = siteBody("26A");
    body["purpose"] = "retest";
    body["retest_of"] = id(100);
    QVERIFY(store.seal(entry("test-site", 101, body, 20)));
    QCOMPARE(StateQuery(store).test(id(101))->retestOfNumber, std::string("26"));
    QCOMPARE(StateQuery(store).test(id(101))->purpose, TestPurpose::Retest);
    QCOMPARE(StateQuery(store).nextRetestNumber(id(101)).value(), std::string("26B"));
    QCOMPARE(StateQuery(store).nextTestNumber().value(), std::string("27"));
    QCOMPARE(retestNumber("021", 2), std::string("021B"));  // tests/tables/retest_ids.tsv
    QCOMPARE(retestNumber("7", 27), std::string("7AA"));
    QVERIFY(!StateQuery(store).nextRetestNumber(id(999)));
}

void FoldTest::clockSetBackDoesNotReorderADevice()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    QVERIFY(store.seal(entry("test-site", 100, siteBody("1"), 10)));
    QVERIFY(store.seal(entry("verdict", 100, verdictBody("fail", base[0].hash), 7000)));
    QVERIFY(store.seal(entry("verdict", 100, verdictBody("pass", base[0].hash), 60)));  // an hour back
    QCOMPARE(StateQuery(store).test(id(100))->state, TestState::Pass);
}

void FoldTest::aVerdictIsOwedAgainAfterAnAmendmentOnly()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    const auto judge = [&](std::initializer_list<std::string> from, int second) {
        Body body = verdictBody("pass", base[0].hash);
        body["from"] = std::vector<std::string>(from);
        return store.seal(entry("verdict", 100, body, second)).has_value();
    };
    const auto missing = [&] {
        const auto records = store.records({.subject = id(100), .kind = {}}).value();
        std::vector<std::string> hashes;
        for (const Record* record : notJudged(records))
            hashes.push_back(record->hash);
        return hashes;
    };
    const Record site = store.seal(entry("test-site", 100, siteBody("1"), 10)).value();
    const Record dropped = store.seal(entry("reading", 100, readoutBody(), 20)).value();
    QVERIFY(missing().empty());  // no verdict yet
    const Record again = store.seal(entry("reading", 100, readoutBody("123.0"), 30)).value();  // the same number, counted again
    QVERIFY(judge({site.hash, again.hash}, 40));
    QVERIFY(missing().empty());
    const Record amended = store.seal(amend(again, readoutBody("124.0"), 50)).value();
    QCOMPARE(missing(), std::vector<std::string>{amended.hash});
    QVERIFY(judge({site.hash, amended.hash}, 60));
    QVERIFY(missing().empty());
    const Record sample = store.seal(entry("sample", 100, {{"waiting", "sample"}}, 70)).value();
    QCOMPARE(missing(), std::vector<std::string>{sample.hash});
    Entry out = entry("void", 100, Body::object(), 80);
    out.reason = "wrong place";
    QVERIFY(store.seal(out));
    QVERIFY(missing().empty());
}

void FoldTest::drawnSiteIsOwedUntilTested()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    Body site{{"number", 1}, {"r_along", "0.5"}, {"r_across", "0.25"}, {"station", "1050"}, {"offset_ft", "-12"},
              {"grid_north_usft", "7000001"}, {"grid_east_usft", "2000002"}};
    const Record draw = store.seal(entry("draw", 50, {{"lot", id(kLot)}, {"lift", id(kLift)}, {"generator", "g"}, {"seed", "s"},
                                   {"policy", "p"}, {"sites", Body::array({site})}, {"rejected", Body::array()}}, 5)).value();
    QCOMPARE(StateQuery(store).sites(id(kLot), id(kLift))->front().testId, std::string());
    Body test = siteBody("1");
    test["draw"] = draw.hash;
    test["site"] = 1;
    QVERIFY(store.seal(entry("test-site", 100, test, 10)));
    QCOMPARE(StateQuery(store).sites(id(kLot), "")->front().testId, id(100));
    Entry gone = entry("void", 100, Body::object(), 20);
    gone.reason = "wrong spot";
    QVERIFY(store.seal(gone));
    QCOMPARE(StateQuery(store).sites("", "")->front().testId, std::string());
}

void FoldTest::coordinatesComeInTheJobsUnit()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    QVERIFY(store.seal(entry("obstacle", 60, {{"name", "Wall"}, {"obstacle_kind", "wall"}, {"grid_north_m", "1200"}, {"grid_east_m", "2400"}})));
    const ObstacleRow row = StateQuery(store).obstacles()->front();
    QVERIFY(std::abs(row.north - 3937.0) < 1e-9);  // 1200 m = 3937 US survey feet by definition [FR-85-62698]
    QCOMPARE(StateQuery(store).job()->epsg, 2277);
    QCOMPARE(StateQuery(store).proctors()->front().maximum, 112.4);
}

void FoldTest::incrementalEqualsRebuiltOnRandomHistories()
{
    int rows = 0;
    for (unsigned seed = 1; seed <= 12; ++seed) {
        Bench bench;
        const auto histories = randomHistory(bench, seed, 60);
        Store store = Store::open(bench.at(("h" + std::to_string(seed) + "-1.fieldbook").c_str()), OpenMode::ReadWrite).value();
        const std::string incremental = store.derivedText().value();
        QVERIFY(store.rebuild());
        QCOMPARE(store.derivedText().value(), incremental);
        rows += static_cast<int>(std::count(incremental.begin(), incremental.end(), '\n'));
    }
    QVERIFY(rows > 120);
}

void FoldTest::mergeIsCommutativeAssociativeIdempotent()
{
    for (unsigned seed = 21; seed <= 28; ++seed) {
        Bench bench;
        const auto histories = randomHistory(bench, seed, 50);
        std::vector<std::string> states;
        const std::vector<std::vector<int>> orders{{0, 1, 2}, {2, 1, 0}, {1, 0, 2, 1, 0}};
        for (std::size_t o = 0; o < orders.size(); ++o) {
            Store store = bench.make(("m" + std::to_string(o)).c_str(), 50);
            for (const int h : orders[o])
                QVERIFY(store.take(histories[static_cast<std::size_t>(h)])->refused.empty());
            states.push_back(store.derivedText().value());
        }
        // a book that received everything one by one in a shuffled order
        std::vector<Record> every;
        for (const auto& h : histories)
            every.insert(every.end(), h.begin(), h.end());
        std::shuffle(every.begin(), every.end(), std::mt19937(seed));
        Store shuffled = bench.make("shuffled", 50);
        for (const Record& record : every)
            QVERIFY(shuffled.take({&record, 1}));
        states.push_back(shuffled.derivedText().value());
        for (const std::string& state : states)
            QCOMPARE(state, states[0]);
        QVERIFY(!states[0].empty());
        const auto again = shuffled.take(every).value();
        QCOMPARE(again.taken, std::size_t(0));
        QCOMPARE(again.known, every.size());
    }
}

void FoldTest::mergeListsRefusedRecordsAndTakesTheRest()
{
    Bench bench;
    Store from = bench.make("from", 1);
    auto records = from.sealAll(setup()).value();
    records[3].body["serial"] = "0002";
    records[5].signature = records[6].signature;
    Record stranger = sealEntry(entry("reading", 100, {{"number", 0}}), key(9), 1, "").value();
    records.push_back(stranger);
    Store into = bench.make("into", 2);
    const auto report = into.take(records).value();
    QCOMPARE(report.taken, std::size_t(8));
    QCOMPARE(report.refused.size(), std::size_t(3));
    QVERIFY2(report.refused[0].find("gauge of 00000005") != std::string::npos, report.refused[0].c_str());
    QVERIFY(report.refused[1].find("signature") != std::string::npos);
    QVERIFY(report.refused[2].find("reading: number must be a whole number above 0; it is 0.") != std::string::npos);
}

void FoldTest::columnsSayWhatTheListSays()
{
    std::size_t seen = 0;
    for (unsigned seed = 41; seed <= 44; ++seed) {
        Bench bench;
        std::ignore = randomHistory(bench, seed, 60);
        const Store store = Store::open(bench.at(("h" + std::to_string(seed) + "-0.fieldbook").c_str()), OpenMode::ReadOnly).value();
        const auto rows = StateQuery(store).tests({}).value();
        const unsigned ranges = 1 + seed % 3;  // one pass, or ranges side by side
        const TestColumns columns = testColumns(store, ranges).value();
        QCOMPARE(columns.size(), rows.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            QCOMPARE(columns.idText(i), rows[i].id);
            QCOMPARE(columns.number[i], rows[i].number);
            QCOMPARE(columns.compactionPct[i], rows[i].compactionPct);
            QCOMPARE(columns.subjects[columns.lot[i]], rows[i].lot);
            QCOMPARE(columns.subjects[columns.lift[i]], rows[i].lift);
            QCOMPARE(columns.subjects[columns.person[i]], rows[i].person);
            QCOMPARE(columns.state[i], rows[i].state);
            QCOMPARE(columns.purpose[i], rows[i].purpose);
            QCOMPARE(columns.conflict[i] != 0, rows[i].conflict);
            QCOMPARE(std::isnan(columns.north[i]) ? 0 : columns.north[i], rows[i].north);
            QCOMPARE(std::isnan(columns.east[i]) ? 0 : columns.east[i], rows[i].east);
            // Qt's own calendar
            QCOMPARE(columns.startedMs[i], rows[i].startedAt.empty() ? 0 : QDateTime::fromString(QString::fromStdString(rows[i].startedAt), Qt::ISODateWithMs).toMSecsSinceEpoch());
        }
        seen += rows.size();
    }
    QVERIFY(seen > 15);
}

QTEST_GUILESS_MAIN(FoldTest)
#include "fold_test.moc"
