#include "core/book/sample_book.h"

#include "book/audit.h"
#include "book/canonical.h"
#include "book/evidence.h"
#include "book/state_query.h"
#include "method/rules/rule_set.h"

#include <QFile>
#include <QtTest>
#include <random>
#include <sqlite3.h>

using namespace sample;

namespace {

bool change(const std::string& path, const std::string& sql)
{
    sqlite3* db = nullptr;
    const bool done = sqlite3_open(path.c_str(), &db) == SQLITE_OK &&
                      sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK && sqlite3_total_changes(db) > 0;
    sqlite3_close(db);
    return done;
}

/// Setup with the neutral rule set, one test by counts from site to verdict. Returns the verdict.
Record playOneTest(Store& store)
{
    auto entries = setup();
    entries.push_back(entry("rule-set", kRules, {{"rules", readJson(groundcount::method::toJson(groundcount::method::neutralRules())).value()}}));
    entries[0].body["rule_set"] = id(kRules);
    const auto base = store.sealAll(entries).value();
    std::ignore = store.seal(entry("test-site", 100, siteBody("1"), 60));
    std::ignore = store.seal(entry("clearance", 100, {{"hazards", Body::array({{{"hazard", "people"}, {"known_by", "eye"}, {"required_ft", "15"}, {"answer", "clear"}}})}}, 61));
    std::ignore = store.seal(entry("seating", 100, {{"surface", "smooth"}, {"rocks", false}, {"depth_in", "8"}}, 62));
    std::ignore = store.seal(entry("reading", 100, {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
                            {"density_count", 2820}, {"moisture_count", 127}, {"standard_count", base[5].hash}}, 63));
    std::ignore = store.seal(entry("sample", 100, {{"waiting", ""}, {"total_mass_g", "3050"}, {"retained_mass_g", "410"}, {"sieve", "3/4 in."}}, 64));
    const auto evidence = gatherEvidence(store, id(100));
    if (!evidence)
        qFatal("%s", evidence.error().what.c_str());
    return store.seal(verdictEntry(*evidence, id(kPerson), at(65), -300).value()).value();
}

bool names(const AuditReport& report, Finding finding, const std::string& part)
{
    for (const AuditLine& line : report.lines)
        if (line.finding == finding && line.what.find(part) != std::string::npos)
            return true;
    return false;
}

}  // namespace

class AuditTest : public QObject {
    Q_OBJECT

private slots:
    void cleanBookHasNoFindings();
    void verdictFollowsTheCountsByHand();
    void offsetsInForceAreUsed();
    void weakOrExpiredOffsetsAreRefused();
    void trenchCorrectionNeedsCounts();
    void standardCountOlderThanTheRulesAllowIsRefused();
    void missingOrStaleEvidenceIsRefused();
    void alteredVerdictOfTheRightDeviceIsSeen();
    void droppedSwappedReplayedAndStrangersRowsAreNamed();
    void singleBitFlipsOfAnyRowAreNamed();
    void staleDerivedTablesAreSeen();
    void historySaysWhoWhenWhatWhy();
};

void AuditTest::cleanBookHasNoFindings()
{
    Bench bench;
    Store store = bench.make();
    playOneTest(store);
    const auto report = check(store).value();
    QVERIFY2(report.isClean(), report.isClean() ? "" : report.lines[0].what.c_str());
    QCOMPARE(report.verdicts, std::size_t(1));
    QCOMPARE(report.devices, std::size_t(1));
    QCOMPARE(report.records, std::size_t(17));
}

void AuditTest::verdictFollowsTheCountsByHand()
{
    // D = ln(A/(CR + C))/B and M = (CR - E)/m, docs/method.md; ratios 2820/2850 and 127/684 with the sample's curve
    Bench bench;
    Store store = bench.make();
    const Record verdict = playOneTest(store);
    const double wet = std::log(9.7 / (2820.0 / 2850.0 - 0.06)) / 0.0185;
    const double water = (127.0 / 684.0 - 0.02) / 0.011;
    const Body& u = verdict.body.at("figures").at("unrounded");
    QVERIFY(std::abs(std::stod(textAt(u, "wet_density_lb_ft3")) - wet) < 1e-8);
    QVERIFY(std::abs(std::stod(textAt(u, "water_density_lb_ft3")) - water) < 1e-8);
    QVERIFY(std::abs(std::stod(textAt(u, "dry_density_lb_ft3")) - (wet - water)) < 1e-8);
    QCOMPARE(verdict.body.at("from").size(), std::size_t(10));
    const TestRow row = StateQuery(store).test(id(100)).value();
    QCOMPARE(row.densityStandard, std::string("2850"));
    QVERIFY(!row.coarsePct.empty() && !row.uncertaintyPct.empty());
    QCOMPARE(row.ruleSetHash, textAt(verdict.body, "rule_set"));
    QVERIFY(row.state == TestState::Pass || row.state == TestState::Fail);
    QVERIFY(recompute(verdict, store)->agrees);
}

void AuditTest::offsetsInForceAreUsed()
{
    Bench bench;
    Store store = bench.make();
    const Record before = playOneTest(store);
    const auto bias = [&](int subject, const char* on, const char* expires, const char* value) {
        return store.seal(entry("offset", subject, {{"gauge", id(kGauge)}, {"offset_kind", "density bias"}, {"on", on}, {"expires", expires}, {"bias_lb_ft3", value}, {"samples", 6}, {"sd_lb_ft3", "1.2"}}, 70)).has_value();
    };
    QVERIFY(bias(70, "2026-05-01", "2026-06-08", "9"));   // expired the day before
    QVERIFY(bias(71, "2026-06-10", "2026-12-31", "7"));   // not yet
    QVERIFY(bias(72, "2026-06-01", "2026-06-09", "0.5")); // in force on its last day
    const auto gathered = gatherEvidence(store, id(100));
    QVERIFY2(gathered, gathered ? "" : gathered.error().what.c_str());
    const auto& evidence = *gathered;
    QVERIFY(std::abs(evidence.input.gauge.densityBiasKgPerM3 - 0.5 * 16.01846337396) < 1e-9);
    const Entry after = verdictEntry(evidence, id(kPerson), at(80), -300).value();
    const auto wet = [](const Body& body) { return std::stod(textAt(body.at("figures").at("unrounded"), "wet_density_lb_ft3")); };
    QVERIFY(std::abs(wet(after.body) - wet(before.body) - 0.5) < 1e-7);
    QVERIFY(recompute(before, store)->agrees);  // the sealed one still names its own records
}

void AuditTest::weakOrExpiredOffsetsAreRefused()
{
    Bench bench;
    Store store = bench.make();
    playOneTest(store);
    int subject = 70;
    const auto refusedFor = [&](Body changes, const char* part) {
        Body body{{"gauge", id(kGauge)}, {"offset_kind", "moisture"}, {"on", "2026-06-01"}, {"variant", "dry basis"},
                  {"factor", "-4"}, {"samples", 5}, {"sd_points", "0.6"}};
        for (const auto& [key, value] : changes.items())
            value.is_null() ? void(body.erase(key)) : void(body[key] = value);
        const int own = subject++;
        if (!store.seal(entry("offset", own, body, own)))
            return false;
        const auto evidence = gatherEvidence(store, id(100));
        Entry gone = entry("void", own, Body::object(), 60 + own);
        gone.reason = "next row";
        const bool removed = store.seal(gone).has_value();
        return removed && !evidence && evidence.error().what.find(part) != std::string::npos;
    };
    QVERIFY(refusedFor({{"samples", 4}}, "rests on 4 places; at least 5"));
    QVERIFY(refusedFor({{"samples", nullptr}}, "states no number of places"));
    QVERIFY(refusedFor({{"sd_points", "2.1"}}, "scatters by 2.1 points; at most 2 %"));
    QVERIFY(refusedFor({{"sd_points", nullptr}}, "states no standard deviation"));
    QVERIFY(refusedFor({{"expires", "2026-06-08"}}, "it expired on 2026-06-08"));
    QVERIFY(refusedFor({{"on", "2026-03-10"}}, "it expired on 2026-06-08"));  // 90 days of the rule set
    QVERIFY(!refusedFor({{"on", "2026-03-11"}}, ""));                         // its last day is the day of the test
    QVERIFY(!refusedFor(Body::object(), ""));
}

void AuditTest::trenchCorrectionNeedsCounts()
{
    Bench bench;
    Store store = bench.make();
    playOneTest(store);
    const Body offset{{"gauge", id(kGauge)}, {"offset_kind", "trench"}, {"on", "2026-06-09"},
                      {"moisture_standard_in_trench", "700"}, {"moisture_standard_outside", "684"}};
    QVERIFY(store.seal(entry("offset", 70, offset, 66)));
    QVERIFY(store.seal(entry("test-site", 101, siteBody("2"), 70)));
    const Body close{{"hazards", Body::array({{{"hazard", "vertical face"}, {"known_by", "tape"}, {"required_in", "24"}, {"answer", "too close"}, {"remedy", "trench correction"}}})}};
    QVERIFY(store.seal(entry("clearance", 101, close, 71)));
    QVERIFY(store.seal(entry("reading", 101, readoutBody(), 72)));
    const auto readout = gatherEvidence(store, id(101));
    QVERIFY(!readout);
    QVERIFY2(readout.error().what.find("works on counts") != std::string::npos, readout.error().what.c_str());
    QVERIFY(store.seal(entry("clearance", 100, close, 73)));
    const auto counts = gatherEvidence(store, id(100));
    QVERIFY2(counts, counts ? "" : counts.error().what.c_str());
    QCOMPARE(counts->input.gauge.trenchMoisture->inTrench, 700.0);
    // without an expiry it belongs to its day: one of the day before is none
    Entry gone = entry("void", 70, Body::object(), 74);
    gone.reason = "other day";
    QVERIFY(store.seal(gone));
    Body before = offset;
    before["on"] = "2026-06-08";
    QVERIFY(store.seal(entry("offset", 71, before, 75)));
    QVERIFY(!gatherEvidence(store, id(100)));
}

void AuditTest::standardCountOlderThanTheRulesAllowIsRefused()
{
    Bench bench;
    Store store = bench.make();
    playOneTest(store);
    auto rules = groundcount::method::neutralRules();
    rules.limits["standard.age"].value = groundcount::Decimal::parse("0").value();
    QVERIFY(store.seal(entry("rule-set", kRules, {{"rules", readJson(groundcount::method::toJson(rules)).value()}}, 80)));
    const auto stale = gatherEvidence(store, id(100));  // the standard count is 59 s older than the test
    QVERIFY(!stale);
    QVERIFY2(stale.error().what.find("of the day of the test") != std::string::npos, stale.error().what.c_str());
}

void AuditTest::missingOrStaleEvidenceIsRefused()
{
    Bench bench;
    Store store = bench.make();
    playOneTest(store);
    QVERIFY(!gatherEvidence(store, id(999)));
    QVERIFY(store.seal(entry("test-site", 101, siteBody("2"), 70)));
    const auto noReading = gatherEvidence(store, id(101));
    QVERIFY(!noReading);
    QVERIFY2(noReading.error().what.find("needs a reading") != std::string::npos, noReading.error().what.c_str());
    QVERIFY(store.seal(entry("clearance", 100, {{"hazards", Body::array({{{"hazard", "vertical face"}, {"known_by", "tape"}, {"required_in", "24"}, {"answer", "too close"}, {"remedy", "trench correction"}}})}}, 71)));
    const auto noTrench = gatherEvidence(store, id(100));
    QVERIFY(!noTrench);
    QVERIFY2(noTrench.error().what.find("trench offset in force") != std::string::npos, noTrench.error().what.c_str());
    QVERIFY(store.seal(entry("clearance", 100, {{"hazards", Body::array({{{"hazard", "people"}, {"known_by", "eye"}, {"required_ft", "15"}, {"answer", "too close"}}})}}, 72)));
    QVERIFY(!gatherEvidence(store, id(100)));
    QVERIFY(store.seal(entry("clearance", 100, {{"hazards", Body::array({{{"hazard", "people"}, {"known_by", "eye"}, {"required_ft", "15"}, {"answer", "too close"}, {"override_reason", "flagger"}}})}}, 73)));
    const auto overridden = gatherEvidence(store, id(100)).value();
    QCOMPARE(textAt(verdictEntry(overridden, id(kPerson), at(74), -300)->body, "result"), std::string("information only"));
    Entry gone = entry("void", kProctor, Body::object(), 75);
    gone.reason = "wrong curve";
    QVERIFY(store.seal(gone));
    QVERIFY(!gatherEvidence(store, id(100)));
}

void AuditTest::alteredVerdictOfTheRightDeviceIsSeen()
{
    // a person with the device's key seals a verdict that the arithmetic does not give
    Bench bench;
    Store store = bench.make();
    const Record verdict = playOneTest(store);
    Body body = verdict.body;
    body["figures"]["percent_compaction"] = "99.9";
    body["result"] = "pass";
    const Record forged = store.seal(amend(verdict, body, 90)).value();
    const auto report = check(store).value();
    QVERIFY(names(report, Finding::Verdict, forged.hash.substr(0, 12)));
    QVERIFY(names(report, Finding::Verdict, "percent_compaction: sealed \"99.9\""));
    QVERIFY(!names(report, Finding::Verdict, verdict.hash.substr(0, 12)));
}

void AuditTest::droppedSwappedReplayedAndStrangersRowsAreNamed()
{
    const auto after = [](const std::string& sql) {
        Bench bench;
        { Store store = bench.make(); playOneTest(store); }
        if (!change(bench.path, sql))
            qFatal("%s", sql.c_str());
        return check(Store::open(bench.path, OpenMode::ReadOnly).value()).value();
    };
    QVERIFY(names(after("DELETE FROM record WHERE seq = 5"), Finding::Gap, "lacks number 5"));
    const auto swapped = after("UPDATE record SET body = (SELECT body FROM record WHERE seq = 7) WHERE seq = 8");
    QVERIFY(names(swapped, Finding::Content, "number 8"));
    QVERIFY(names(after("UPDATE record SET seq = CASE seq WHEN 3 THEN 4 ELSE 3 END WHERE seq IN (3, 4)"), Finding::Content, "number 3"));
    const auto replayed = after("INSERT INTO record(hash, kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature)"
                                " SELECT '" + std::string(64, 'c') + "', kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature FROM record WHERE seq = 6");
    QVERIFY(names(replayed, Finding::Fork, "number 6"));
    QVERIFY(names(replayed, Finding::Content, "cccccccccccc"));
    QVERIFY(names(after("UPDATE record SET signature = (SELECT signature FROM record WHERE seq = 7) WHERE seq = 8"), Finding::Content, "number 8"));
    QVERIFY(names(after("UPDATE record SET at = '2026-06-09T12:00:00.001Z' WHERE seq = 2"), Finding::Content, "number 2"));
    Bench bench;
    Record stranger;
    { Store store = bench.make(); playOneTest(store); stranger = store.records({}).value()[3]; }
    // re-signed by a stranger's key: the hash changes with the device, so links and references break
    const Record resigned = sealEntry(stranger, key(66), stranger.seq, stranger.prev, stranger.book).value();
    QVERIFY(change(bench.path, "UPDATE record SET device = '" + resigned.device + "', hash = '" + resigned.hash + "', signature = '" + resigned.signature + "' WHERE seq = 4"));
    const auto report = check(Store::open(bench.path, OpenMode::ReadOnly).value()).value();
    QVERIFY(names(report, Finding::Gap, "lacks number 4"));
    QVERIFY(names(report, Finding::Gap, "lacks number 1 to 3"));
}

void AuditTest::singleBitFlipsOfAnyRowAreNamed()
{
    Bench bench;
    { Store store = bench.make(); playOneTest(store); }
    sqlite3* db = nullptr;
    QCOMPARE(sqlite3_open(bench.path.c_str(), &db), SQLITE_OK);
    std::mt19937 random(5);
    const char* const columns[] = {"hash", "kind", "subject", "reason", "by_person", "at", "device", "prev", "body", "signature"};
    int flips = 0;
    for (int trial = 0; trial < 300; ++trial) {
        const std::string column = columns[random() % 10];
        const int seq = 1 + static_cast<int>(random() % 17);
        sqlite3_stmt* read = nullptr;
        sqlite3_prepare_v2(db, ("SELECT " + column + " FROM record WHERE row = " + std::to_string(seq)).c_str(), -1, &read, nullptr);
        QCOMPARE(sqlite3_step(read), SQLITE_ROW);
        const std::string whole(reinterpret_cast<const char*>(sqlite3_column_text(read, 0)), static_cast<std::size_t>(sqlite3_column_bytes(read, 0)));
        sqlite3_finalize(read);
        if (whole.empty())
            continue;
        const auto put = [&](const std::string& text) {
            sqlite3_stmt* write = nullptr;
            sqlite3_prepare_v2(db, ("UPDATE record SET " + column + " = ? WHERE row = " + std::to_string(seq)).c_str(), -1, &write, nullptr);
            sqlite3_bind_text(write, 1, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
            const int code = sqlite3_step(write);
            sqlite3_finalize(write);
            return code == SQLITE_DONE;
        };
        std::string flipped = whole;
        const std::size_t bit = random() % (whole.size() * 8);
        flipped[bit / 8] = static_cast<char>(static_cast<unsigned char>(flipped[bit / 8]) ^ (1U << (bit % 8)));
        QVERIFY(put(flipped));
        const auto store = Store::open(bench.path, OpenMode::ReadOnly);
        QVERIFY(store);
        const auto report = check(*store);
        QVERIFY(report);
        bool named = false;
        for (const AuditLine& line : report->lines)
            named = named || ((line.finding == Finding::Content || line.finding == Finding::Unreadable) &&
                              line.what.find("number " + std::to_string(seq) + " ") != std::string::npos);
        QVERIFY2(named, (column + " of row " + std::to_string(seq) + ": " + flipped).c_str());
        QVERIFY(put(whole));
        ++flips;
    }
    sqlite3_close(db);
    QVERIFY(flips > 200);
    QVERIFY(check(Store::open(bench.path, OpenMode::ReadOnly).value())->isClean());
}

void AuditTest::staleDerivedTablesAreSeen()
{
    Bench bench;
    { Store store = bench.make(); playOneTest(store); }
    QVERIFY(change(bench.path, "UPDATE test_row SET compaction_pct = '100.0'"));
    {
        Store store = Store::open(bench.path, OpenMode::ReadWrite, key()).value();
        QVERIFY(names(check(store).value(), Finding::Derived, id(100)));
        QVERIFY(store.rebuild());
        QVERIFY(check(store)->isClean());
    }
}

void AuditTest::historySaysWhoWhenWhatWhy()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    Body lot = base[8].body;
    lot["minimum_pct"] = "90";
    QVERIFY(store.seal(amend(base[8], lot, 30, "plan sheet 12 says 90")));
    const auto lines = history(store, id(kLot)).value();
    QCOMPARE(lines.size(), std::size_t(2));
    QVERIFY(!lines[0].isLive && lines[1].isLive);
    QCOMPARE(lines[1].byName, std::string("A. Sample"));
    QCOMPARE(lines[1].reason, std::string("plan sheet 12 says 90"));
    QCOMPARE(lines[1].changes, std::vector<std::string>{"minimum_pct: \"95\" -> \"90\""});
    QCOMPARE(lines[1].amends, base[8].hash);
    QVERIFY(!history(store, id(999)));
}

QTEST_GUILESS_MAIN(AuditTest)
#include "audit_test.moc"
