#include "core/book/meaning.h"
#include "core/book/sample_book.h"

#include "book/audit.h"
#include "book/bundle.h"
#include "book/state_query.h"

#include <QtTest>
#include <algorithm>
#include <random>
#include <sstream>

using namespace sample;

namespace {

/// Three devices that seal, and now and then hear of each other. Lawful: a device amends only what it knows.
struct History {
    std::vector<Record> inOrder;                  ///< as an all-seeing book would have received them
    std::vector<std::vector<Record>> devices{3};  ///< what each device knows
    std::vector<std::string> contents;

    void seal(std::size_t d, const Entry& entry)
    {
        std::int64_t seq = 1;
        std::string prev;
        const DeviceKey own = key(static_cast<unsigned char>(d + 1));
        for (const Record& r : devices[d])
            if (r.device == own.device() && r.seq >= seq) {
                seq = r.seq + 1;
                prev = r.hash;
            }
        inOrder.push_back(sealEntry(entry, own, seq, prev).value());
        devices[d].push_back(inOrder.back());
    }
    void hear(std::size_t d, std::size_t from)
    {
        for (const Record& r : devices[from])
            if (std::none_of(devices[d].begin(), devices[d].end(), [&](const Record& own) { return own.hash == r.hash; }))
                devices[d].push_back(r);
    }
};

History randomHistory(unsigned seed)
{
    History h;
    std::mt19937 random(seed);
    const auto pick = [&](int below) { return static_cast<int>(random() % static_cast<unsigned>(below)); };
    for (const Entry& e : setup())
        h.seal(0, e);
    h.hear(1, 0);
    h.hear(2, 0);
    for (int step = 0; step < 45; ++step) {
        const auto d = static_cast<std::size_t>(pick(3));
        const int second = pick(3) ? pick(4000) : 1800;  // clocks wander, and some acts share one second on two devices
        const int subject = 100 + pick(5);
        switch (pick(8)) {
        case 0: h.seal(d, entry("test-site", subject, siteBody(std::to_string(subject)), second)); break;
        case 1: h.seal(d, entry("reading", subject, readoutBody(pick(2) ? "124.6" : "121.0"), second)); break;
        case 2: h.seal(d, entry("sample", subject, {{"waiting", pick(2) ? "oven" : ""}}, second)); break;
        case 3: h.seal(d, entry("verdict", subject, verdictBody(pick(2) ? "pass" : "fail", h.inOrder[0].hash), second)); break;
        case 4:
        case 5: {
            const Record target = h.devices[d][static_cast<std::size_t>(pick(static_cast<int>(h.devices[d].size())))];
            Body body = target.body;
            body["remark"] = second;
            if (target.kind != "void")
                h.seal(d, amend(target, body, second));
            break;
        }
        case 6: {
            Entry e = entry("void", subject, Body::object(), second);
            e.reason = "wrong lift";
            if (pick(4) == 0)
                h.seal(d, e);
            break;
        }
        case 7: h.hear(d, static_cast<std::size_t>(pick(3))); break;
        }
    }
    return h;
}

struct Books {
    Bench bench;
    int made = 0;
    Store fresh() { return bench.make(("book" + std::to_string(++made)).c_str(), 50); }
    Store of(const std::vector<Record>& records, const std::string& content)
    {
        Store store = fresh();
        if (!store.take(records)->refused.empty())
            qFatal("an unlawful history");
        std::ignore = store.putBlob(content).value();
        return store;
    }
    Store join(const Store& a, const Store& b)
    {
        Store store = fresh();
        if (!store.mergeFrom(a)->refused.empty() || !store.mergeFrom(b)->refused.empty())
            qFatal("a refused record");
        return store;
    }
};

}  // namespace

class MergeTest : public QObject {
    Q_OBJECT

private slots:
    void joinIsCommutativeAssociativeIdempotentAndOrderFree();
    void aMergeThatIsInterruptedGoesOn();
    void mergeByBundleEqualsMergeOfBooks();
    void aClockSetBackMergesTheSameEverywhere();
    void sameSecondOnTwoDevicesHasOneAnswer();
    void aChangeOfTimeZoneKeepsTheOrder();
    void leapDaysAreDays();
    void copiesThatWentTheirOwnWaysAreAForkThatCheckNames();
};

void MergeTest::joinIsCommutativeAssociativeIdempotentAndOrderFree()
{
    int records = 0, conflicts = 0;
    for (unsigned seed = 100; seed < 130; ++seed) {
        const History h = randomHistory(seed);
        Books books;
        const Store a = books.of(h.devices[0], "a"), b = books.of(h.devices[1], "b"), c = books.of(h.devices[2], "c");
        const Store ab = books.join(a, b);
        QCOMPARE(meaning(ab), meaning(books.join(b, a)));
        QCOMPARE(meaning(books.join(a, a)), meaning(a));
        QCOMPARE(meaning(books.join(ab, b)), meaning(ab));
        const Store left = books.join(ab, c);
        QCOMPARE(meaning(left), meaning(books.join(a, books.join(b, c))));
        Store ordered = books.of(h.inOrder, "a");
        QVERIFY(ordered.putBlob("b"));
        QVERIFY(ordered.putBlob("c"));
        QCOMPARE(meaning(left), meaning(ordered));
        Store oneByOne = books.fresh();
        for (const Record& r : h.inOrder)
            QVERIFY(oneByOne.take({&r, 1}));
        for (const char* content : {"c", "b", "a"})
            QVERIFY(oneByOne.putBlob(content));
        QCOMPARE(meaning(oneByOne), meaning(ordered));
        records += static_cast<int>(h.inOrder.size());
        conflicts += static_cast<int>(StateQuery(left).conflicts()->size());
    }
    qInfo("30 histories, %d records, %d conflicts", records, conflicts);
    QVERIFY(conflicts > 5);
}

void MergeTest::aMergeThatIsInterruptedGoesOn()
{
    const History h = randomHistory(7);
    Books books;
    const Store whole = books.of(h.inOrder, "a");
    const std::string expected = meaning(whole);
    for (std::size_t cut = 0; cut <= h.inOrder.size(); cut += 7) {
        Store part = books.fresh();
        QVERIFY(part.take(std::span(h.inOrder).first(cut)));
        QCOMPARE(part.mergeFrom(whole)->known, cut);
        QCOMPARE(meaning(part), expected);
    }
}

void MergeTest::mergeByBundleEqualsMergeOfBooks()
{
    const History h = randomHistory(8);
    Books books;
    const Store a = books.of(h.devices[0], "a"), b = books.of(h.devices[1], "b");
    Store byBundle = books.fresh();
    for (const Store* from : {&b, &a}) {
        std::stringstream carrier;
        QVERIFY(writeBundle(*from, carrier, [](std::size_t) { return true; }));
        const auto report = takeBundle(byBundle, carrier, [](std::size_t) { return true; });
        QVERIFY(report && report->refused.empty());
    }
    QCOMPARE(meaning(byBundle), meaning(books.join(a, b)));
}

void MergeTest::aClockSetBackMergesTheSameEverywhere()
{
    History h;
    for (const Entry& e : setup())
        h.seal(0, e);
    h.seal(0, entry("test-site", 100, siteBody("1"), 3600));
    h.seal(0, entry("verdict", 100, verdictBody("fail", h.inOrder[0].hash), 3700));
    h.seal(0, entry("verdict", 100, verdictBody("pass", h.inOrder[0].hash), 100));  // the clock went back an hour
    Books books;
    std::vector<Record> backwards(h.inOrder.rbegin(), h.inOrder.rend());
    const Store there = books.of(h.inOrder, "x"), back = books.of(backwards, "x");
    QCOMPARE(meaning(there), meaning(back));
    QCOMPARE(StateQuery(back).test(id(100))->state, TestState::Pass);  // the device's own order speaks
}

void MergeTest::sameSecondOnTwoDevicesHasOneAnswer()
{
    History h;
    for (const Entry& e : setup())
        h.seal(0, e);
    h.seal(0, entry("test-site", 100, siteBody("1"), 10));
    h.hear(1, 0);
    h.seal(0, entry("verdict", 100, verdictBody("pass", h.inOrder[0].hash), 60));
    h.seal(1, entry("verdict", 100, verdictBody("fail", h.inOrder[0].hash), 60));
    const Record &first = h.inOrder[h.inOrder.size() - 2], &second = h.inOrder.back();
    QCOMPARE(first.at, second.at);
    Books books;
    const Store a = books.of(h.devices[0], "x"), b = books.of(h.devices[1], "x");
    const Store ab = books.join(a, b), ba = books.join(b, a);
    QCOMPARE(meaning(ab), meaning(ba));
    const TestState expected = first.hash > second.hash ? TestState::Pass : TestState::Fail;  // docs/record-format.md, rule 2
    QCOMPARE(StateQuery(ab).test(id(100))->state, expected);
}

void MergeTest::aChangeOfTimeZoneKeepsTheOrder()
{
    // the phone travels: local clocks read 14:00 and then 13:30, UTC says which came first
    History h;
    for (const Entry& e : setup())
        h.seal(0, e);
    h.seal(0, entry("test-site", 100, siteBody("1"), 10));
    h.hear(1, 0);
    Entry east = entry("sample", 100, {{"waiting", "oven"}}, 3600);
    east.offsetMinutes = -240;
    Entry west = entry("sample", 100, {{"waiting", ""}}, 5400);
    west.offsetMinutes = -300;
    h.seal(1, west);
    h.seal(0, east);
    Books books;
    const Store store = books.of(h.inOrder, "x");
    QCOMPARE(StateQuery(store).test(id(100))->waitingFor, std::string());
    const auto lines = history(store, id(100)).value();
    QCOMPARE(lines[1].offsetMinutes, -240);
    QCOMPARE(lines[2].offsetMinutes, -300);
    for (const int minutes : {-840, 840, 345}) {
        Entry e = entry("note", 200, {{"text", "x"}}, 1);
        e.offsetMinutes = minutes;
        QVERIFY(checkEnvelope(e));
        e.offsetMinutes = minutes > 0 ? 841 : -841;
        QVERIFY(!checkEnvelope(e));
    }
}

void MergeTest::leapDaysAreDays()
{
    Books books;
    Store store = books.fresh();
    QVERIFY(store.sealAll(setup()));
    const auto atTime = [](const char* time) {
        Entry e = entry("test-site", 100, siteBody("1"));
        e.at = time;
        return e;
    };
    // every fourth year, not every hundredth, but every four hundredth: the Gregorian rule
    for (const char* time : {"2028-02-29T23:59:59.999Z", "2000-02-29T00:00:00.000Z", "2028-12-31T23:59:59.999Z"})
        QVERIFY2(store.seal(atTime(time)), time);
    for (const char* time : {"2027-02-29T12:00:00.000Z", "2100-02-29T12:00:00.000Z", "2028-02-30T12:00:00.000Z", "2028-06-31T12:00:00.000Z",
                             "2016-12-31T23:59:60.000Z", "2028-02-29T24:00:00.000Z", "2028-2-29T12:00:00.000Z"})
        QVERIFY2(!store.seal(atTime(time)), time);
    Body calibration = setup()[4].body;
    calibration.erase("expires");
    calibration["on"] = "2028-02-29";
    QVERIFY(store.seal(entry("calibration", 300, calibration)));
    calibration["on"] = "2027-02-29";
    const auto refusedDay = store.seal(entry("calibration", 301, calibration));
    QVERIFY(!refusedDay);
    QVERIFY2(refusedDay.error().what.find("2027-02-29") != std::string::npos, refusedDay.error().what.c_str());
}

void MergeTest::copiesThatWentTheirOwnWaysAreAForkThatCheckNames()
{
    History one, two;
    for (const Entry& e : setup()) {
        one.seal(0, e);
        two.seal(0, e);
    }
    one.seal(0, entry("note", 200, {{"text", "on the phone"}}, 10));
    two.seal(0, entry("note", 201, {{"text", "on its restored copy"}}, 20));
    Books books;
    const Store both = books.join(books.of(one.inOrder, "x"), books.of(two.inOrder, "x"));
    QCOMPARE(both.records({})->size(), setup().size() + 2);
    const auto report = check(both).value();
    QVERIFY(std::any_of(report.lines.begin(), report.lines.end(), [](const AuditLine& line) {
        return line.finding == Finding::Fork && line.what.find("number 11") != std::string::npos;
    }));
}

QTEST_GUILESS_MAIN(MergeTest)
#include "merge_test.moc"
