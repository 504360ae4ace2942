#include "faults/book_picture.h"

#include <QtTest>
#include <optional>
#include <set>
#include <sqlite3.h>

using namespace faults;
using sample::entry;
using sample::id;

namespace {

struct Trouble {
    int code;
    const char* name;
};

constexpr Trouble kTroubles[] = {{SQLITE_IOERR, "I/O error"}, {SQLITE_FULL, "disk full"}, {SQLITE_READONLY, "read-only"}, {SQLITE_BUSY, "locked"}};

/// A closed book with a lot, a lift, a draft and one test.
Medium closedBook()
{
    Disk::instance().clear();
    {
        Store store = openBook(OpenMode::Create).value();
        const auto setup = sample::setup();
        std::ignore = store.sealAll(std::span(setup).subspan(8, 2)).value();
        std::ignore = store.seal(entry("test-site", 100, sample::siteBody("1"), 10)).value();
        if (!store.saveDraft(id(100), "place", "121.4 typed"))
            qFatal("no draft");
    }
    return Disk::instance().medium();
}

bool speaks(const groundcount::Error& error)
{
    return error.fault == Fault::Unavailable && error.what.size() > 20 && error.what.ends_with('.') &&
           error.what.find("field book") != std::string::npos;
}

struct Count {
    std::int64_t tried = 0, told = 0, absorbed = 0;
    std::set<Call> calls;
};

}  // namespace

class DiskFaultTest : public QObject {
    Q_OBJECT

private slots:
    void everyCallOfASealFailsOnce_data() { troubles(); }
    void everyCallOfASealFailsOnce();
    void everyCallOfOpeningFailsOnce_data() { troubles(); }
    void everyCallOfOpeningFailsOnce();
    void everyCallOfClosingFailsOnce_data() { troubles(); }
    void everyCallOfClosingFailsOnce();
    void aDiskThatStaysFullKeepsBookAndDraft();
    void aLockThatStaysIsTold();
    void everyCallOfAMergeFailsOnce_data() { troubles(); }
    void everyCallOfAMergeFailsOnce();

private:
    static void troubles()
    {
        QTest::addColumn<int>("code");
        for (const Trouble& trouble : kTroubles)
            QTest::newRow(trouble.name) << trouble.code;
    }
};

/// Fails each call of `act` once; the book must say so and be as before, or have done it; then the same act works.
template <class Act>
void failEach(const Act& act, Count& count)
{
    QFETCH(int, code);
    Disk& disk = Disk::instance();
    const Medium book = closedBook();
    for (std::int64_t nth = 1;; ++nth) {
        disk.load(book);
        std::string after;
        {
            Store store = openBook(OpenMode::ReadWrite).value();
            QVERIFY(store.damage().empty());
            const std::string before = picture(store).value();
            disk.failOnce(nth, code);
            const auto answer = act(store);
            const bool failed = disk.hasFailed();
            disk.calm();
            if (!failed) {
                QVERIFY(answer);
                break;
            }
            ++count.tried;
            count.calls.insert(disk.failedCall());
            if (answer) {
                ++count.absorbed;  // e.g. a lock that was free at the second try
                QVERIFY(picture(store).value() != before);
            } else {
                ++count.told;
                QVERIFY2(speaks(answer.error()), answer.error().what.c_str());
                const auto now = picture(store);
                QVERIFY2(now, now ? "" : now.error().what.c_str());
                QCOMPARE(*now, before);  // nothing half written, and the draft is there
                const auto again = act(store);
                QVERIFY2(again, again ? "" : again.error().what.c_str());
            }
            after = picture(store).value();
        }
        Store store = openBook(OpenMode::ReadWrite).value();
        QVERIFY2(store.damage().empty(), store.damage().c_str());
        QCOMPARE(picture(store).value(), after);
        if (nth % 3 == 0) {
            const auto report = check(store).value();
            QVERIFY2(report.isClean(), report.lines.empty() ? "" : report.lines[0].what.c_str());
        }
    }
    qInfo("%lld calls failed once: %lld told, %lld absorbed, %zu sorts of call", static_cast<long long>(count.tried),
          static_cast<long long>(count.told), static_cast<long long>(count.absorbed), count.calls.size());
}

void DiskFaultTest::everyCallOfASealFailsOnce()
{
    Count count;
    failEach([](Store& store) { return store.seal(entry("reading", 100, sample::readoutBody(), 20)); }, count);
    QVERIFY(count.tried > 10);
    QVERIFY(count.told > 3);
}

void DiskFaultTest::everyCallOfAMergeFailsOnce()
{
    std::vector<Record> others;
    std::string prev;
    Disk::instance().load(closedBook());
    const std::string book = openBook(OpenMode::ReadOnly)->bookId().value();
    for (int i = 0; i < 6; ++i) {
        others.push_back(sealEntry(entry("test-site", 300 + i, sample::siteBody(std::to_string(i)), i), sample::key(9), i + 1, prev, book).value());
        prev = others.back().hash;
    }
    Count count;
    failEach([&](Store& store) -> Result<MergeReport> {
        auto report = store.take(others);
        if (report && report->taken != 6)
            qFatal("merged a part");
        return report;
    }, count);
    QVERIFY(count.told > 3);
}

void DiskFaultTest::everyCallOfOpeningFailsOnce()
{
    QFETCH(int, code);
    Disk& disk = Disk::instance();
    const Medium book = closedBook();
    disk.load(book);
    const std::string before = picture(openBook(OpenMode::ReadWrite).value()).value();
    int told = 0;
    for (std::int64_t nth = 1;; ++nth) {
        disk.load(book);
        disk.failOnce(nth, code);
        {
            auto store = openBook(OpenMode::ReadWrite);
            const bool failed = disk.hasFailed();
            disk.calm();
            if (!failed) {
                QVERIFY(store);
                break;
            }
            if (!store) {
                ++told;
                QVERIFY2(speaks(store.error()), store.error().what.c_str());
            } else if (!store->damage().empty()) {
                ++told;
                QVERIFY2(store->isReadOnly(), store->damage().c_str());
            } else {
                QCOMPARE(picture(*store).value(), before);
            }
        }
        Store store = openBook(OpenMode::ReadWrite).value();
        QVERIFY2(store.damage().empty(), store.damage().c_str());
        QCOMPARE(picture(store).value(), before);
        QVERIFY(store.seal(entry("reading", 100, sample::readoutBody(), 20)));
    }
    QVERIFY(code == SQLITE_BUSY || told > 3);
}

void DiskFaultTest::everyCallOfClosingFailsOnce()
{
    QFETCH(int, code);
    Disk& disk = Disk::instance();
    const Medium book = closedBook();
    for (std::int64_t nth = 1;; ++nth) {
        disk.load(book);
        std::string sealed;
        {
            Store store = openBook(OpenMode::ReadWrite).value();
            std::ignore = store.seal(entry("reading", 100, sample::readoutBody(), 20)).value();
            sealed = picture(store).value();
            disk.failOnce(nth, code);
        }
        const bool failed = disk.hasFailed();
        disk.calm();
        Store store = openBook(OpenMode::ReadWrite).value();
        QVERIFY2(store.damage().empty(), store.damage().c_str());
        QCOMPARE(picture(store).value(), sealed);
        if (!failed) {
            QVERIFY(nth > 5);
            break;
        }
    }
}

void DiskFaultTest::aDiskThatStaysFullKeepsBookAndDraft()
{
    Disk& disk = Disk::instance();
    const Medium book = closedBook();
    int told = 0;
    for (std::int64_t nth = 1; nth < 40; ++nth) {
        disk.load(book);
        Store store = openBook(OpenMode::ReadWrite).value();
        const std::string before = picture(store).value();
        disk.failFrom(nth, SQLITE_FULL);
        if (const auto answer = store.seal(entry("reading", 100, sample::readoutBody(), 20)); !answer) {
            ++told;
            QVERIFY2(speaks(answer.error()), answer.error().what.c_str());
            if (disk.failedCall() == Call::Write) {
                QVERIFY2(answer.error().what.find("the disk is full") != std::string::npos, answer.error().what.c_str());
                QCOMPARE(picture(store).value(), before);
            }
        }
        disk.calm();
        QVERIFY(store.seal(entry("reading", 100, sample::readoutBody(), 30)));
    }
    QVERIFY(told > 3);
}

void DiskFaultTest::aLockThatStaysIsTold()
{
    Disk& disk = Disk::instance();
    const Medium book = closedBook();
    disk.load(book);
    disk.failFrom(1, SQLITE_BUSY);
    // until the first call of the lock kind: failFrom() binds to the kind of the call that it hits
    for (std::int64_t nth = 1; disk.failedCall() != Call::Lock || !disk.hasFailed(); ++nth) {
        disk.load(book);
        disk.failFrom(nth, SQLITE_BUSY);
        QVERIFY(nth < 20);
        const auto store = openBook(OpenMode::ReadWrite);
        if (disk.hasFailed() && disk.failedCall() == Call::Lock) {
            QVERIFY(!store);
            QVERIFY2(store.error().what.find("another program holds it") != std::string::npos, store.error().what.c_str());
            QCOMPARE(store.error().fault, Fault::Unavailable);
        }
    }
    disk.calm();
    QVERIFY(openBook(OpenMode::ReadWrite));
}

QTEST_GUILESS_MAIN(DiskFaultTest)
#include "disk_fault_test.moc"
