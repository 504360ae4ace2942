#include "core/book/sample_book.h"

#include "book/canonical.h"
#include "book/flat_body.h"
#include "book/job_rules.h"
#include "book/local_time.h"
#include "book/review.h"
#include "book/sealed_facts.h"
#include "method/rules/rule_set.h"

#include <QtTest>
#include <map>
#include <random>
#include <set>

using namespace sample;

namespace {

/// A generated programme with known truth: a book of tests that are all in order, but for the faults planted by name.
class Programme {
public:
    Programme() : m_store(m_bench.make())
    {
        auto entries = setup();
        entries.push_back(entry("rule-set", kRules, {{"rules", readJson(groundcount::method::toJson(groundcount::method::neutralRules())).value()}}));
        entries[0].body["rule_set"] = id(kRules);
        entries[2].body["certificate_expires"] = "2027-01-01";
        entries.push_back(entry("leak-test", 20, {{"gauge", id(kGauge)}, {"on", "2026-03-01"}, {"expires", "2026-09-01"}, {"result", "no leak"}}));
        const auto base = m_store.sealAll(entries).value();
        m_standard = base[5].hash;
    }

    /// What differs from a test in order.
    struct Plan {
        Body site = Body::object(), hazard = Body::object(), reading = Body::object(), second = Body::object();
        bool isReadout = false, hasSecond = false;
        std::string standard, result = "pass";
        int by = kPerson;
        int readingAt = 120;
    };

    /// Plays one test 5 minutes after the one before; returns its subject number.
    int play(const Plan& plan)
    {
        const int subject = 1000 + ++m_tests;
        m_second += 300;
        Body site = siteBody(std::to_string(m_tests));
        site["grid_north_usft"] = northing(m_tests);
        site["sigma_north_m"] = "0.4";
        site["sigma_east_m"] = "0.5";
        site.update(plan.site);
        Entry begun = entry("test-site", subject, site, m_second);
        begun.by = id(plan.by);
        seal(begun);
        Body hazard{{"hazard", "people"}, {"known_by", "tape"}, {"distance_ft", "40"}, {"required_ft", "15"}, {"answer", "clear"}};
        hazard.update(plan.hazard);
        seal("clearance", subject, {{"hazards", Body::array({hazard})}}, 20);
        seal("seating", subject, {{"surface", "smooth"}, {"rocks", false}, {"depth_in", "8"}}, 40);
        Body reading{{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60}};
        if (plan.isReadout) {  // no two alike
            reading["wet_density_lb_ft3"] = QByteArray::number(118 + 0.1 * m_tests, 'f', 1).toStdString();
            reading["water_content_pct"] = "13.5";
        } else {
            reading["density_count"] = 2500 + m_tests;
            reading["moisture_count"] = 120 + m_tests % 9;
            reading["standard_count"] = plan.standard.empty() ? m_standard : plan.standard;
        }
        reading.update(plan.reading);
        m_reading = seal("reading", subject, reading, plan.readingAt);
        if (plan.hasSecond) {
            Body second = reading;
            second["number"] = 2;
            second["orientation"] = "turned 90";
            if (!plan.isReadout)
                second["density_count"] = 2502 + m_tests;
            else
                second["wet_density_lb_ft3"] = QByteArray::number(118.4 + 0.1 * m_tests, 'f', 1).toStdString();
            second.update(plan.second);
            seal("reading", subject, second, 190);
        }
        seal("verdict", subject, verdictBody(plan.result.c_str(), m_reading.hash), 200);
        return subject;
    }

    Record seal(const char* kind, int subject, const Body& body, int offset)
    {
        auto sealed = m_store.seal(entry(kind, subject, body, m_second + offset));
        if (!sealed)
            qFatal("%s: %s", kind, sealed.error().what.c_str());
        return *sealed;
    }

    Record seal(Entry e)
    {
        auto sealed = m_store.seal(std::move(e));
        if (!sealed)
            qFatal("%s", sealed.error().what.c_str());
        return *sealed;
    }

    /// A gauge and a person whose papers are out of date, a standard count beyond its limit and one of the day before.
    void addWeakPapers()
    {
        seal("gauge", kWeakGauge, {{"name", "Gauge 2"}, {"serial", "0002"}, {"prescale", "16"}}, -90);
        seal("leak-test", 21, {{"gauge", id(kWeakGauge)}, {"on", "2025-11-01"}, {"expires", "2026-05-01"}, {"result", "no leak"}}, -90);
        seal("person", kLapsedPerson, {{"name", "B. Sample"}, {"role", "technician"}, {"certificate", "T-2"}, {"certificate_expires", "2026-06-08"}}, -90);
        seal("lift", 12, {{"lot", id(kLot)}, {"number", 3}}, -90);
        Body standard{{"gauge", id(kGauge)}, {"density_count", "2900"}, {"moisture_count", "684"}, {"density_before", Body::array({"2848"})},
                      {"moisture_before", Body::array({"685"})}, {"accepted", true}, {"density_deviation_pct", "1.8"}, {"moisture_deviation_pct", "0.1"}};
        m_poor = seal("standard-count", 30, standard, -90).hash;
        standard["density_deviation_pct"] = "-0.2";
        Entry old = entry("standard-count", 31, standard, 0);
        old.at = "2026-06-08T11:00:00.000Z";  // by another phone, the day before
        if (!m_store.handOver(m_bench.at("other.fieldbook")))
            qFatal("copy");
        Store other = Store::open(m_bench.at("other.fieldbook"), OpenMode::ReadWrite, key(9)).value();
        m_old = other.seal(old).value().hash;
        if (!m_store.mergeFrom(other))
            qFatal("merge");
    }

    static constexpr int kWeakGauge = 15, kLapsedPerson = 16;
    const std::string& poorStandard() const { return m_poor; }
    const std::string& oldStandard() const { return m_old; }
    static std::string northing(int test) { return std::to_string(7012345 + test * 20); }
    int second() const { return m_second; }
    int tests() const { return m_tests; }
    void leap(int seconds) { m_second += seconds; }
    const Record& reading() const { return m_reading; }
    const Store& store() const { return m_store; }
    std::vector<UnusualLine> unusual() const { return groundcount::book::unusual(m_store, jobRules(m_store).value()).value(); }

private:
    Bench m_bench;
    Store m_store;
    std::string m_standard, m_poor, m_old;
    Record m_reading;
    int m_tests = 0;
    int m_second = 100;
};

using Truth = std::set<std::pair<int, Unusual>>;

std::string namedOf(const std::pair<int, Unusual>& one)
{
    return std::to_string(one.first) + " " + word(one.second);
}

}  // namespace

class ReviewTest : public QObject {
    Q_OBJECT

private slots:
    void aBookInOrderHasNothingUnusual();
    void everyPlantedFaultIsListedAndNothingElse();
    void partsOfABookGiveTheFactsOfTheWhole();
    void aBodyIsReadAsItsTreeIs();
    void aRuleSetWithoutTheKeysIsRefused();
    void timesAndDaysAreThoseOfTheCalendar();
};

void ReviewTest::aBookInOrderHasNothingUnusual()
{
    Programme programme;
    for (int i = 0; i < 60; ++i) {
        Programme::Plan plan;
        plan.isReadout = i % 3 == 0;
        plan.hasSecond = i % 4 == 0;
        programme.play(plan);
    }
    const auto lines = programme.unusual();
    QVERIFY2(lines.empty(), lines.empty() ? "" : (lines[0].number + ": " + lines[0].what).c_str());
}

void ReviewTest::everyPlantedFaultIsListedAndNothingElse()
{
    Programme programme;
    programme.addWeakPapers();
    std::mt19937_64 random(2026);
    Truth truth;
    std::map<Unusual, int> planted;
    const auto plant = [&](const Programme::Plan& plan, Unusual kind) {
        const int subject = programme.play(plan);
        truth.insert({subject, kind});
        ++planted[kind];
        return subject;
    };
    for (int round = 0; round < 72; ++round) {
        Programme::Plan plain;
        plain.isReadout = random() % 3 == 0;
        plain.hasSecond = random() % 4 == 0;
        const int before = programme.play(plain);
        Programme::Plan plan, readout;
        readout.isReadout = true;
        switch (round % 24) {
        case 0: plan.site = {{"gauge_override_reason", "only gauge on the job"}}; plant(plan, Unusual::Overridden); break;
        case 1:
            plan.hazard = {{"answer", "too close"}, {"distance_ft", "9"}, {"override_reason", "flagger stays"}};
            truth.insert({plant(plan, Unusual::Overridden), Unusual::ClearanceNotMet});
            break;
        case 2: {
            plant(plan, Unusual::AmendedAfterVerdict);
            Body body = programme.reading().body;
            body["density_count"] = 9000 + programme.tests();
            programme.seal(amend(programme.reading(), body, programme.second() + 230));
            break;
        }
        case 3:
            programme.seal("seating", plant(plan, Unusual::AmendedAfterVerdict), {{"surface", "filled"}, {"rocks", false}, {"depth_in", "8"}}, 240);
            break;
        case 4: plan.standard = programme.poorStandard(); plant(plan, Unusual::StandardCountOut); break;
        case 5: plan.standard = programme.oldStandard(); plant(plan, Unusual::StandardCountOut); break;
        case 6: readout.site = {{"gauge", id(Programme::kWeakGauge)}}; plant(readout, Unusual::PapersExpired); break;
        case 7: readout.by = Programme::kLapsedPerson; plant(readout, Unusual::PapersExpired); break;
        case 8: plan.hazard = {{"answer", "cannot tell"}}; plant(plan, Unusual::ClearanceNotMet); break;
        case 9: plan.hazard = {{"distance_ft", "9"}}; plant(plan, Unusual::ClearanceNotMet); break;
        case 10: plan.site = {{"fixes", 5}}; plant(plan, Unusual::PositionPoor); break;
        case 11: plan.site = {{"sigma_north_m", "1.9"}, {"sigma_east_m", "1.9"}}; plant(plan, Unusual::PositionPoor); break;  // 2 x 2.69 m = 17.6 ft
        case 12:
            plan.hasSecond = true;
            plan.second = {{"density_count", 2500 + programme.tests() + 1}};
            plant(plan, Unusual::DuplicateReading);
            break;
        case 13:
            programme.play(readout);
            readout.reading = {{"wet_density_lb_ft3", programme.reading().body.at("wet_density_lb_ft3")}};
            plant(readout, Unusual::DuplicateReading);
            break;
        case 14:  // the clock an hour back, between two tests of the gauge
            programme.leap(-1050);
            plant(plan, Unusual::ImpossibleTime);
            programme.leap(1050);
            break;
        case 15:  // a count of 60 s that ended 26 s after the one before
            plan.readingAt = 199;
            programme.play(plan);
            programme.leap(-100);
            plan.readingAt = 25;
            plant(plan, Unusual::ImpossibleTime);
            break;
        case 16:
            programme.play(plan);
            plan.reading = {{"density_count", programme.reading().body.at("density_count")}, {"moisture_count", programme.reading().body.at("moisture_count")}};
            plant(plan, Unusual::SameCountsTwice);
            break;
        case 17:  // 20 ft from the failing test
            plan.site = {{"purpose", "retest"}, {"retest_of", id(before)}, {"rework", "rolled again"}};
            plant(plan, Unusual::RetestElsewhere);
            break;
        case 18:
            plan.site = {{"purpose", "retest"}, {"retest_of", id(before)}, {"rework", "rolled again"}, {"lift", id(12)}, {"grid_north_usft", programme.northing(programme.tests())}};
            plant(plan, Unusual::RetestElsewhere);
            break;
        // what looks like a fault and is none
        case 19: plan.site = {{"purpose", "retest"}, {"retest_of", id(before)}, {"rework", "rolled again"}, {"grid_north_usft", programme.northing(programme.tests())}}; programme.play(plan); break;
        case 20: plan.hazard = {{"answer", "too close"}, {"distance_ft", "9"}, {"remedy", "moved"}}; programme.play(plan); break;
        case 21: plan.site = {{"fixes", 0}, {"fix_kind", "by tape"}}; programme.play(plan); break;
        case 22: {
            plan.site = {{"gauge_override_reason", "only gauge on the job"}};
            Entry gone = entry("void", programme.play(plan), Body::object(), programme.second() + 260);
            gone.reason = "wrong lot";
            programme.seal(gone);
            break;
        }
        default:
            plan.result = "provisional";
            programme.seal("sample", programme.play(plan), {{"waiting", ""}, {"total_mass_g", "3050"}, {"retained_mass_g", "10"}, {"sieve", "3/4 in."}}, 280);
            break;
        }
    }
    Truth found;
    for (const auto& line : programme.unusual()) {
        const int subject = static_cast<int>(std::stoul(line.test.substr(0, 8), nullptr, 16));
        QVERIFY2(truth.contains({subject, line.kind}), (namedOf({subject, line.kind}) + " was not planted: " + line.what).c_str());
        QVERIFY2(found.insert({subject, line.kind}).second, "two lines of a kind for one test");
        QCOMPARE(line.number, std::to_string(subject - 1000));
        QVERIFY(line.what.size() > 20 && line.what.back() == '.');
    }
    for (const auto& one : truth)
        QVERIFY2(found.contains(one), (namedOf(one) + " was planted and is not listed").c_str());
    for (const auto& [kind, count] : planted)
        QVERIFY2(count >= 3, word(kind));
    QCOMPARE(found.size(), truth.size());
}

void ReviewTest::partsOfABookGiveTheFactsOfTheWhole()
{
    Programme programme;
    programme.addWeakPapers();  // a second device
    for (int i = 0; i < 23; ++i) {
        Programme::Plan plan;
        plan.isReadout = i % 3 == 0;
        plan.hasSecond = i % 4 == 0;
        plan.hazard = i % 5 == 0 ? Body{{"distance_ft", "9"}} : Body::object();
        programme.play(plan);
        if (i % 6 == 0) {
            Body body = programme.reading().body;
            body["seconds"] = 240;
            programme.seal(amend(programme.reading(), body, programme.second() + 230));
        }
    }
    const auto tests = checkedTests(programme.store(), 1).value();
    const auto textOf = [&](unsigned ranges) {
        const SealedFacts facts = sealedFacts(programme.store(), tests, ranges).value();
        QStringList lines;
        for (const auto& f : facts.sealed)
            lines << QString("%1 %2 %3 %4 %5").arg(f.seq).arg(f.atMs).arg(f.test).arg(f.isPart).arg(QString::fromStdString(facts.words[f.device] + facts.words[f.kind]));
        for (const auto& v : facts.verdicts)
            lines << QString("verdict %1 %2 %3").arg(v.seq).arg(v.test).arg(QString::fromStdString(facts.words[v.device]));
        for (const auto& a : facts.amended)
            lines << QString("amended %1 %2").arg(a.test).arg(QString::fromStdString(a.kind + a.at));
        for (const auto& r : facts.readings)
            lines << QString("reading %1 %2 %3 %4 %5").arg(r.test).arg(r.atMs).arg(r.number).arg(r.seconds).arg(QString::fromStdString(r.figures));
        for (const auto& c : facts.clearances)
            lines << QString("clearance %1 %2").arg(c.test).arg(QString::fromStdString(c.sentences.empty() ? "" : c.sentences[0]));
        return lines;
    };
    const QStringList whole = textOf(1);
    QCOMPARE(whole.filter("reading ").size(), 23 + 6);
    QCOMPARE(whole.filter("amended ").size(), 4);
    QCOMPARE(whole.filter("is \"clear\" at 9 ft").size(), 5);
    for (const unsigned ranges : {2U, 3U, 7U, 40U})
        QCOMPARE(textOf(ranges), whole);
}

void ReviewTest::aBodyIsReadAsItsTreeIs()
{
    const Body tree{{"a", "plain"}, {"b\":\"c", "quote \" and \\ and , }"}, {"d", -12}, {"e", 1.5}, {"f", Body::array({"x", Body::object(), Body::array({1, "]"})})}, {"g", {{"d", 3}}}, {"h", ""}};
    const std::string text = canonicalText(tree).value();
    FlatBody flat;
    QVERIFY(flat.read(text));
    for (const auto& [key, value] : tree.items()) {
        if (key == "b\":\"c")
            continue;  // a name with a quote is stepped over, and asked for by nobody
        QCOMPARE(std::string(flat.raw(key)), canonicalText(value).value());
        QCOMPARE(flat.text(key), value.is_string() ? value.get<std::string>() : std::string());
        QCOMPARE(flat.whole(key), value.is_number_integer() ? value.get<std::int64_t>() : std::int64_t(0));
    }
    QVERIFY(flat.text("b\\\":\\\"c") == "quote \" and \\ and , }");
    QVERIFY(!flat.contains("x") && flat.contains("h"));
    QStringList elements;
    QVERIFY(eachElement(flat.raw("f"), [&](std::string_view e) { elements << QString::fromUtf8(e.data(), static_cast<int>(e.size())); }));
    QCOMPARE(elements, QStringList({"\"x\"", "{}", "[1,\"]\"]"}));
    for (const char* damaged : {"", "{", "[]", "{\"a\"}", "{\"a\":\"b}", "{a:1}"})
        QVERIFY2(!flat.read(damaged), damaged);
}

void ReviewTest::aRuleSetWithoutTheKeysIsRefused()
{
    Programme programme;
    auto rules = groundcount::method::neutralRules();
    rules.limits.erase("place.accuracy");
    const auto refusedOne = groundcount::book::unusual(programme.store(), rules);
    QVERIFY(!refusedOne);
    QVERIFY(refusedOne.error().what.find("place.accuracy") != std::string::npos);
    Bench bench;
    const Store empty = bench.make();
    QVERIFY(!jobRules(empty));
}

void ReviewTest::timesAndDaysAreThoseOfTheCalendar()
{
    QCOMPARE(millisecondsOf("1970-01-01T00:00:00.000Z"), std::int64_t(0));
    QCOMPARE(millisecondsOf("2026-06-09T15:41:07.250Z"), QDateTime::fromString("2026-06-09T15:41:07.250Z", Qt::ISODateWithMs).toMSecsSinceEpoch());
    for (const char* at : {"1999-12-31T23:59:59.999Z", "2026-06-09T15:41:07.250Z", "2028-02-29T00:00:00.000Z"})
        QCOMPARE(utcText(millisecondsOf(at)), std::string(at));
    QCOMPARE(localDay("2026-03-01T03:00:00.000Z", -300), std::string("2026-02-28"));
    QCOMPARE(localDay("2026-12-31T20:00:00.000Z", 600), std::string("2027-01-01"));
    QCOMPARE(dayAfter("2028-02-28", 1), std::string("2028-02-29"));
    QCOMPARE(dayAfter("2026-03-11", 90), std::string("2026-06-09"));
}

QTEST_GUILESS_MAIN(ReviewTest)
#include "review_test.moc"
