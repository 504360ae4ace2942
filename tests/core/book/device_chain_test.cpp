#include "core/book/sample_book.h"

#include "book/audit.h"
#include "book/bundle.h"
#include "book/device_keys.h"

#include <QtTest>
#include <algorithm>
#include <filesystem>
#include <sqlite3.h>
#include <sstream>

using namespace sample;

namespace {

bool finds(const AuditReport& report, Finding finding, const std::string& part)
{
    return std::any_of(report.lines.begin(), report.lines.end(),
                       [&](const AuditLine& line) { return line.finding == finding && line.what.find(part) != std::string::npos; });
}

Entry noteOf(int subject, const char* text, int second)
{
    return entry("note", subject, {{"text", text}}, second);
}

Entry retirement(const std::string& device, std::int64_t last, int subject = 900, int second = 5000)
{
    return entry("retired-key", subject, {{"device", device}, {"last", last}, {"why", "phone lost"}}, second);
}

/// The setup sealed by key 1 in a book, and a copy of it that key 2 writes to.
struct TwoPhones {
    Bench bench;
    Store office, phone;
    TwoPhones() : office(bench.make("office", 1)), phone(copied()) {}
    Store copied()
    {
        if (!office.sealAll(setup()) || !office.handOver(bench.at("phone")))
            qFatal("no copy");
        return Store::open(bench.at("phone"), OpenMode::ReadWrite, key(2)).value();
    }
};

}  // namespace

class DeviceChainTest : public QObject {
    Q_OBJECT

private slots:
    void everyRecordNamesItsBook();
    void oneKeyInTwoJobsIsNoForkAndTheJobsStayApart();
    void anEmptyBookBecomesACopy();
    void aCopyContinuesTheChain();
    void aRestoredBackupThatGoesItsOwnWayIsAFork();
    void aRecordOfAnotherBookIsRefusedWhateverCarriesIt();
    void aBookOfFormat1IsReadWrittenAndMerged();
    void aRetiredKeysLaterRecordsAreRefusedAndEarlierOnesStand();
    void lateRecordsThatWereHereBeforeAreAFinding();
    void aRetiredKeySealsNoMoreAndCannotTakeItBack();
    void aDeviceMayRetireItself();
    void anotherRecordOfAnOldNumberIsRefused();
    void theRetirementCanBeVoidedOrMoved();
    void bundlesCarryRetirementsFirst();
};

void DeviceChainTest::everyRecordNamesItsBook()
{
    Bench bench;
    Store store = bench.make();
    QCOMPARE(store.bookId().value(), std::string());
    Entry broken = noteOf(200, "x", 1);
    broken.by = "nobody";
    QVERIFY(!store.seal(broken));
    QCOMPARE(store.bookId().value(), std::string());  // a refused first record names nothing
    const auto records = store.sealAll(setup()).value();
    const std::string book = store.bookId().value();
    QCOMPARE(book, bookIdOf(setup()[0], key().device()));
    QVERIFY(isSubject(book));
    QCOMPARE(book[14], '8');
    for (const Record& r : records)
        QCOMPARE(r.book, book);
    Record moved = records[3];
    moved.book = id(77);
    QVERIFY(!verifyRecord(moved));
    moved.book.clear();
    QVERIFY(!verifyRecord(moved));
    QVERIFY(check(store)->isClean());
    // the id in the file belongs to the seals: another one there breaks them
    sqlite3* db = nullptr;
    QCOMPARE(sqlite3_open(bench.path.c_str(), &db), SQLITE_OK);
    QCOMPARE(sqlite3_exec(db, ("UPDATE book SET id = '" + id(77) + "'").c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    QVERIFY(finds(check(store).value(), Finding::Content, "number 1"));
}

void DeviceChainTest::oneKeyInTwoJobsIsNoForkAndTheJobsStayApart()
{
    Bench bench;
    Store north = bench.make("north", 1), south = bench.make("south", 1);
    QVERIFY(north.sealAll(setup()));
    auto other = setup();
    other[0] = entry("job", 500, {{"name", "South"}, {"density_unit", "lb/ft3"}}, 9);
    QVERIFY(south.sealAll(other));
    QVERIFY(north.bookId().value() != south.bookId().value());
    const auto merged = north.mergeFrom(south);
    QVERIFY(!merged);
    QVERIFY2(merged.error().what.find("Each job is one book") != std::string::npos, merged.error().what.c_str());
    QCOMPARE(north.lastRow().value(), std::int64_t(10));
    QVERIFY(check(north)->isClean() && check(south)->isClean());
}

void DeviceChainTest::anEmptyBookBecomesACopy()
{
    TwoPhones two;
    Store fresh = two.bench.make("fresh", 3);
    QCOMPARE(fresh.mergeFrom(two.office)->taken, std::size_t(10));
    QCOMPARE(fresh.bookId().value(), two.office.bookId().value());
    const Record own = fresh.seal(noteOf(200, "from the new phone", 60)).value();
    QCOMPARE(own.seq, std::int64_t(1));
    QCOMPARE(two.office.mergeFrom(fresh)->taken, std::size_t(1));
    Store empty = two.bench.make("empty", 4);
    QCOMPARE(two.office.mergeFrom(empty)->taken, std::size_t(0));
    QVERIFY(check(two.office)->isClean() && check(fresh)->isClean());
}

void DeviceChainTest::aCopyContinuesTheChain()
{
    TwoPhones two;
    { Store again = Store::open(two.bench.at("phone"), OpenMode::ReadWrite, key(1)).value();  // the office's own key on its copy
      QCOMPARE(again.seal(noteOf(200, "on the copy", 60))->seq, std::int64_t(11)); }
    QCOMPARE(two.office.mergeFrom(two.phone)->taken, std::size_t(1));
    QCOMPARE(two.office.seal(noteOf(201, "at home", 70))->seq, std::int64_t(12));
    QVERIFY(check(two.office)->isClean());
}

void DeviceChainTest::aRestoredBackupThatGoesItsOwnWayIsAFork()
{
    TwoPhones two;
    { Store backup = Store::open(two.bench.at("phone"), OpenMode::ReadWrite, key(1)).value();
      QVERIFY(backup.seal(noteOf(200, "on the restored backup", 60))); }
    QVERIFY(two.office.seal(noteOf(201, "on the phone that was thought dead", 70)));
    const auto report = two.office.mergeFrom(two.phone).value();
    QCOMPARE(report.taken, std::size_t(1));  // evidence is kept on both branches
    QVERIFY(finds(check(two.office).value(), Finding::Fork, "two records of number 11"));
}

void DeviceChainTest::aRecordOfAnotherBookIsRefusedWhateverCarriesIt()
{
    TwoPhones two;
    const std::int64_t before = two.office.lastRow().value();
    for (const std::string& book : {id(77), std::string()}) {
        const Record foreign = sealEntry(noteOf(200, "x", 1), key(9), 1, "", book).value();
        QVERIFY(verifyRecord(foreign));
        const auto report = two.office.take({&foreign, 1}).value();
        QCOMPARE(report.refused.size(), std::size_t(1));
        QVERIFY2(report.refused[0].find("sealed in another field book") != std::string::npos, report.refused[0].c_str());
    }
    Store other = two.bench.make("other", 9);
    QVERIFY(other.seal(noteOf(200, "x", 1)));
    std::stringstream carrier;
    const auto on = [](std::size_t) { return true; };
    QVERIFY(writeBundle(other, carrier, on));
    const auto bundle = takeBundle(two.office, carrier, on);
    QVERIFY(!bundle);
    QVERIFY2(bundle.error().what.find("Each job is one book") != std::string::npos, bundle.error().what.c_str());
    QCOMPARE(two.office.lastRow().value(), before);
}

void DeviceChainTest::aBookOfFormat1IsReadWrittenAndMerged()
{
    Bench bench;
    { Store made = bench.make(1); }
    sqlite3* db = nullptr;
    QCOMPARE(sqlite3_open(bench.path.c_str(), &db), SQLITE_OK);
    QCOMPARE(sqlite3_exec(db, "DROP TABLE book; PRAGMA user_version=1", nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    {
        Store old = Store::open(bench.path, OpenMode::ReadWrite, key(1)).value();
        const auto records = old.sealAll(setup()).value();
        QCOMPARE(records[0].book, std::string());
        QVERIFY(!recordJson(records[0]).contains("book"));
    }
    Store old = Store::open(bench.path, OpenMode::ReadOnly).value();
    QVERIFY(old.damage().empty());
    QCOMPARE(old.records({})->size(), setup().size());
    QVERIFY(check(old)->isClean());
    QVERIFY(old.handOver(bench.at("copy")));
    Store copy = Store::open(bench.at("copy"), OpenMode::ReadWrite, key(2)).value();
    QVERIFY(copy.seal(noteOf(200, "x", 60)));
    Store writer = Store::open(bench.path, OpenMode::ReadWrite, key(1)).value();
    QCOMPARE(writer.mergeFrom(copy)->taken, std::size_t(1));
    QVERIFY(check(writer)->isClean());
    Store fresh = bench.make("fresh", 3);  // of today's format, and yet a copy of the old one
    std::stringstream carrier;
    const auto on = [](std::size_t) { return true; };
    QVERIFY(writeBundle(writer, carrier, on));
    QVERIFY(carrier.str().find("\"format\":1") != std::string::npos);
    QCOMPARE(takeBundle(fresh, carrier, on)->taken, std::size_t(11));
    QCOMPARE(fresh.seal(noteOf(201, "y", 70))->book, std::string());
    QCOMPARE(writer.mergeFrom(fresh)->taken, std::size_t(1));
    QVERIFY(check(writer)->isClean() && check(fresh)->isClean());
}

void DeviceChainTest::aRetiredKeysLaterRecordsAreRefusedAndEarlierOnesStand()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "before it was lost", 60)).value();
    QVERIFY(two.office.mergeFrom(two.phone));
    QVERIFY(two.office.seal(retirement(good.device, good.seq)));
    const Record late = two.phone.seal(noteOf(201, "by the finder", 70)).value();
    const auto report = two.office.mergeFrom(two.phone).value();
    QCOMPARE(report.taken, std::size_t(0));
    QCOMPARE(report.refused.size(), std::size_t(1));
    QVERIFY2(report.refused[0].find("retired on 2026-06-09 (phone lost)") != std::string::npos &&
             report.refused[0].find(late.hash.substr(0, 12)) != std::string::npos, report.refused[0].c_str());
    QVERIFY(two.office.record(good.hash));
    QVERIFY(check(two.office)->isClean());
    const auto keys = keysInUse(two.office).value();
    const auto lost = std::find_if(keys.begin(), keys.end(), [&](const KeyInUse& k) { return k.device == good.device; });
    QVERIFY(lost != keys.end() && lost->retirement && lost->records == 1 && lost->last == 1);
    QCOMPARE(lost->retirement->by, id(kPerson));
    QVERIFY(sentence(*lost->retirement).find("up to number 1.") != std::string::npos);
}

void DeviceChainTest::lateRecordsThatWereHereBeforeAreAFinding()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    const Record late = two.phone.seal(noteOf(201, "by the finder", 70)).value();
    QVERIFY(two.office.mergeFrom(two.phone));
    QVERIFY(two.office.seal(retirement(good.device, good.seq)));
    const auto report = check(two.office).value();
    QVERIFY(finds(report, Finding::Retired, late.hash.substr(0, 12)));
    QVERIFY(!finds(report, Finding::Retired, good.hash.substr(0, 12)));
    QCOMPARE(report.lines.size(), std::size_t(1));
}

void DeviceChainTest::aRetiredKeySealsNoMoreAndCannotTakeItBack()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    QVERIFY(two.office.mergeFrom(two.phone));
    const Record retired = two.office.seal(retirement(good.device, good.seq)).value();
    QCOMPARE(two.phone.mergeFrom(two.office)->taken, std::size_t(1));
    const auto sealed = two.phone.seal(noteOf(201, "still here", 70));
    QVERIFY(!sealed);
    QVERIFY2(sealed.error().what.find("can no longer seal") != std::string::npos, sealed.error().what.c_str());
    // a forger who writes past the program
    Entry back = entry("void", 900, Body::object(), 6000);
    back.reason = "found again";
    const Record forged = sealEntry(back, key(2), 2, good.hash, two.office.bookId().value()).value();
    QCOMPARE(two.office.take({&forged, 1})->refused.size(), std::size_t(1));
    Entry amended = amend(retired, {{"device", good.device}, {"last", 100}, {"why", "found"}}, 6100);
    const Record moved = sealEntry(amended, key(2), 2, good.hash, two.office.bookId().value()).value();
    QCOMPARE(two.office.take({&moved, 1})->refused.size(), std::size_t(1));
    // and in a book that heard the forger first
    Store third = two.bench.make("third", 3);
    QVERIFY(third.mergeFrom(two.phone));  // knows the retirement already: the void does not pass
    Store fourth = two.bench.make("fourth", 4);
    std::vector<Record> all = two.phone.records({}).value();
    std::erase_if(all, [](const Record& r) { return r.kind == "retired-key"; });
    all.push_back(forged);
    QVERIFY(fourth.take(all)->refused.empty());
    QVERIFY(fourth.take({&retired, 1})->refused.empty());
    QVERIFY(finds(check(fourth).value(), Finding::Retired, forged.hash.substr(0, 12)));
}

void DeviceChainTest::aDeviceMayRetireItself()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    QVERIFY(two.phone.seal(retirement(good.device, good.seq)));
    QVERIFY(!two.phone.seal(noteOf(201, "after it", 80)));
    QCOMPARE(two.office.mergeFrom(two.phone)->taken, std::size_t(2));
    QVERIFY(check(two.office)->isClean());
    const Record late = sealEntry(noteOf(202, "by the buyer", 90), key(2), 3, two.phone.records({})->back().hash, two.office.bookId().value()).value();
    QCOMPARE(two.office.take({&late, 1})->refused.size(), std::size_t(1));
}

void DeviceChainTest::anotherRecordOfAnOldNumberIsRefused()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    QVERIFY(two.office.mergeFrom(two.phone));
    QVERIFY(two.office.seal(retirement(good.device, good.seq)));
    const Record twin = sealEntry(noteOf(201, "dated back", 50), key(2), 1, "", two.office.bookId().value()).value();
    const auto report = two.office.take({&twin, 1}).value();
    QCOMPARE(report.refused.size(), std::size_t(1));
    QVERIFY2(report.refused[0].find("Another record has this number") != std::string::npos, report.refused[0].c_str());
}

void DeviceChainTest::theRetirementCanBeVoidedOrMoved()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    QVERIFY(two.phone.seal(noteOf(201, "also mine", 70)));
    QVERIFY(two.office.mergeFrom(two.phone));
    const Record retired = two.office.seal(retirement(good.device, 1)).value();
    QVERIFY(!check(two.office)->isClean());
    QVERIFY(two.office.seal(amend(retired, {{"device", good.device}, {"last", 2}, {"why", "lost a day later"}}, 5100)));
    QVERIFY(check(two.office)->isClean());
    Entry back = entry("void", 900, Body::object(), 5200);
    back.reason = "found under the seat";
    QVERIFY(two.office.seal(back));
    QVERIFY(two.phone.seal(noteOf(202, "goes on", 5300)));
    QCOMPARE(two.office.mergeFrom(two.phone)->taken, std::size_t(1));
    QVERIFY(check(two.office)->isClean());
}

void DeviceChainTest::bundlesCarryRetirementsFirst()
{
    TwoPhones two;
    const Record good = two.phone.seal(noteOf(200, "good", 60)).value();
    const Record late = two.phone.seal(noteOf(201, "late", 70)).value();
    QVERIFY(two.office.mergeFrom(two.phone));
    QVERIFY(two.office.seal(retirement(good.device, 1)));
    Store fresh = two.bench.make("fresh", 5);
    std::stringstream carrier;
    const auto on = [](std::size_t) { return true; };
    QVERIFY(writeBundle(two.office, carrier, on));
    QVERIFY(carrier.str().find("\"kind\":\"retired-key\"") < carrier.str().find(late.hash));
    const auto report = takeBundle(fresh, carrier, on).value();
    QVERIFY(report.whole);
    QCOMPARE(report.refused.size(), std::size_t(1));
    QVERIFY(report.refused[0].find(late.hash.substr(0, 12)) != std::string::npos);
    QVERIFY(fresh.record(good.hash));
}

QTEST_GUILESS_MAIN(DeviceChainTest)
#include "device_chain_test.moc"
