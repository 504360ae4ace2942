#include "core/book/random_history.h"

#include "book/arrivals.h"
#include "book/state_query.h"

#include <QtTest>
#include <algorithm>

using namespace sample;

namespace {

/// Everything of a test that this fold can change, as one text.
std::string shown(const TestRow& t)
{
    std::string text;
    for (const std::string* part : {&t.id, &t.number, &t.lot, &t.lotName, &t.lift, &t.gauge, &t.gaugeName, &t.personName, &t.certificate, &t.materialName,
                                    &t.proctorName, &t.retestOf, &t.retestOfNumber, &t.rework, &t.waitingFor, &t.startedAt, &t.verdictAt, &t.wet, &t.dry,
                                    &t.compactionPct, &t.densityStandard, &t.densityCount, &t.overrides, &t.recordHash, &t.device})
        text += *part + "|";
    return text + std::to_string(static_cast<int>(t.state)) + "|" + std::to_string(t.sealedSteps) + "|" + std::to_string(t.conflict);
}

std::string shown(const SiteRow& s)
{
    return s.draw + "|" + s.lot + "|" + s.lift + "|" + std::to_string(s.number) + "|" + s.testId;
}

template <class Row>
std::vector<std::string> shownAll(const std::vector<Row>& rows)
{
    std::vector<std::string> texts;
    for (const Row& row : rows)
        texts.push_back(shown(row));
    return texts;
}

/// A reader that reads everything once and then only what came.
struct Reader {
    std::int64_t seen = 0;
    std::vector<TestRow> tests;
    std::vector<SiteRow> sites;
    int whole = 0, parts = 0;

    void look(const Store& store)
    {
        auto arrived = arrivedSince(store, seen, sites).value();
        seen = arrived.upTo;
        if (arrived.onlyTests) {
            ++parts;
            takeOver(tests, std::move(arrived.tests));
            takeOver(sites, arrived.sites);
            return;
        }
        ++whole;
        tests = StateQuery(store).tests({}).value();
        sites = StateQuery(store).sites({}, {}).value();
    }
};

}  // namespace

class ArrivalsTest : public QObject {
    Q_OBJECT

private slots:
    void partsGiveWhatTheWholeReadingGives();
    void aRetestSeesTheNewNumberOfTheFirst();
    void anAmendedStartMovesTheTest();
    void sitesGetAndLoseTheirTest();
    void otherThingsAskForAWholeReading();
};

void ArrivalsTest::partsGiveWhatTheWholeReadingGives()
{
    int parts = 0;
    for (unsigned seed = 41; seed <= 48; ++seed) {
        Bench bench;
        const auto histories = randomHistory(bench, seed, 60);
        Store store = bench.make("reader", 50);
        Reader reader;
        std::mt19937 random(seed);
        for (const auto& history : histories) {
            for (std::size_t from = 0; from < history.size();) {
                const std::size_t many = std::min<std::size_t>(1 + random() % 4, history.size() - from);
                QVERIFY(store.take({history.data() + from, many}));
                from += many;
                reader.look(store);
                QCOMPARE(shownAll(reader.tests), shownAll(StateQuery(store).tests({}).value()));
            }
        }
        parts += reader.parts;
    }
    QVERIFY2(parts > 200, qPrintable(QString::number(parts)));
}

void ArrivalsTest::aRetestSeesTheNewNumberOfTheFirst()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    const Record first = store.seal(entry("test-site", 100, siteBody("26"), 10)).value();
    Body retest = siteBody("26A");
    retest["retest_of"] = id(100);
    QVERIFY(store.seal(entry("test-site", 101, retest, 20)));
    Reader reader;
    reader.look(store);
    QCOMPARE(reader.tests.at(1).retestOfNumber, std::string("26"));
    QVERIFY(store.seal(amend(first, siteBody("27"), 30)));
    reader.look(store);
    QCOMPARE(reader.parts, 1);
    QCOMPARE(reader.tests.at(0).number, std::string("27"));
    QCOMPARE(reader.tests.at(1).retestOfNumber, std::string("27"));
}

void ArrivalsTest::anAmendedStartMovesTheTest()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    Reader reader;
    for (int i = 0; i < 5; ++i)
        QVERIFY(store.seal(entry("test-site", 100 + i, siteBody(std::to_string(i + 1)), 100 * (i + 1))));
    reader.look(store);
    // another device's test, started between the second and the third
    QVERIFY(store.seal(entry("test-site", 90, siteBody("9"), 250)));
    reader.look(store);
    QCOMPARE(reader.parts, 1);
    QCOMPARE(reader.tests.at(2).number, std::string("9"));
    QCOMPARE(shownAll(reader.tests), shownAll(StateQuery(store).tests({}).value()));
}

void ArrivalsTest::sitesGetAndLoseTheirTest()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    Body draw{{"lot", id(kLot)}, {"lift", id(kLift)}, {"generator", "g"}, {"seed", "s"}, {"policy", "p"}, {"sites", Body::array()}, {"rejected", Body::array()}};
    for (int n = 1; n <= 3; ++n)
        draw["sites"].push_back({{"number", n}, {"r_along", "0.5"}, {"r_across", "0.25"}, {"station", "1050"}, {"offset_ft", "4"}, {"grid_north_usft", "7012345"}, {"grid_east_usft", "2512345"}});
    const auto drawn = store.seal(entry("draw", 70, draw, 5));
    QVERIFY2(drawn, drawn ? "" : drawn.error().what.c_str());
    Reader reader;
    reader.look(store);
    QCOMPARE(reader.sites.size(), std::size_t(3));
    Body at = siteBody("1");
    at["draw"] = drawn->hash;
    at["site"] = 2;
    const Record test = store.seal(entry("test-site", 100, at, 10)).value();
    reader.look(store);
    QCOMPARE(reader.sites.at(1).testId, id(100));
    at["site"] = 3;
    QVERIFY(store.seal(amend(test, at, 20)));
    reader.look(store);
    QCOMPARE(reader.sites.at(1).testId, std::string());
    QCOMPARE(reader.sites.at(2).testId, id(100));
    Entry gone = entry("void", 100, Body::object(), 30);
    gone.reason = "wrong spot";
    QVERIFY(store.seal(gone));
    reader.look(store);
    QCOMPARE(reader.parts, 3);
    QCOMPARE(shownAll(reader.sites), shownAll(StateQuery(store).sites({}, {}).value()));
    QCOMPARE(reader.sites.at(2).testId, std::string());
}

void ArrivalsTest::otherThingsAskForAWholeReading()
{
    Bench bench;
    Store store = bench.make();
    const auto base = store.sealAll(setup()).value();
    QVERIFY(store.seal(entry("test-site", 100, siteBody("1"), 10)));
    Reader reader;
    reader.look(store);
    QCOMPARE(reader.whole, 1);
    Body person = base[2].body;
    person["name"] = "B. Sample";
    QVERIFY(store.seal(amend(base[2], person, 20)));
    reader.look(store);
    QCOMPARE(reader.whole, 2);
    QCOMPARE(reader.tests.at(0).personName, std::string("B. Sample"));
    const auto nothing = arrivedSince(store, reader.seen, reader.sites).value();
    QVERIFY(nothing.onlyTests && nothing.tests.empty());
}

QTEST_GUILESS_MAIN(ArrivalsTest)
#include "arrivals_test.moc"
