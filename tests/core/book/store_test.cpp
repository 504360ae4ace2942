#include "core/book/sample_book.h"

#include "book/database.h"
#include "book/state_query.h"

#include <QFile>
#include <QProcess>
#include <QtTest>
#include <sqlite3.h>

using namespace sample;

namespace {

/// Changes the file behind the store's back.
bool tamper(const std::string& path, const std::string& sql)
{
    sqlite3* db = nullptr;
    const bool done = sqlite3_open(path.c_str(), &db) == SQLITE_OK &&
                      sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK && sqlite3_total_changes(db) > 0;
    sqlite3_close(db);
    return done;
}

std::string askFile(const std::string& path, const char* sql)
{
    sqlite3* db = nullptr;
    std::string answer;
    sqlite3_open_v2(path.c_str(), &db, SQLITE_OPEN_READONLY, nullptr);
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(db, sql, -1, &statement, nullptr);
    if (sqlite3_step(statement) == SQLITE_ROW)
        answer = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    sqlite3_close(db);
    return answer;
}

}  // namespace

class StoreTest : public QObject {
    Q_OBJECT

private slots:
    void fileHasItsMarksAndSafeMode();
    void sealedRecordsComeBackVerified();
    void chainsPerDeviceFromOne();
    void refusedEntryLeavesNothing();
    void amendmentMustFitWhatItAmends();
    void secondProcessSeesNewRecordsAtOnce();
    void damagedBookOpensReadOnlyAndNamesTheRecord();
    void aReaderBesideChecksWhatCameSince();
    void damagedPagesAreToldNotCrashedOn();
    void foreignFilesAreRefused();
    void aBookWhoseMakingWasCutShortIsMadeAgain();
    void tablesOfAnotherVersionAreToldAndMadeAnew();
    void fullDiskLeavesTheBookWhole();
    void readOnlyRefusesToSeal();
    void draftsStayLocal();
    void blobsAreStoredOnceAndChecked();
    void existingNamesAreNotOverwritten();
};

void StoreTest::fileHasItsMarksAndSafeMode()
{
    Bench bench;
    {
        Store store = bench.make();
        QVERIFY(store.seal(entry("note", 100, {{"text", "x"}})));
        QCOMPARE(askFile(bench.path, "PRAGMA journal_mode"), std::string("wal"));
    }
    QVERIFY(!QFile::exists(QString::fromStdString(bench.path + "-wal")));
    QCOMPARE(askFile(bench.path, "PRAGMA application_id"), std::to_string(0x47434642));
    QCOMPARE(askFile(bench.path, "PRAGMA user_version"), std::string("2"));
}

void StoreTest::sealedRecordsComeBackVerified()
{
    Bench bench;
    std::vector<Record> sealed;
    {
        Store store = bench.make();
        sealed = store.sealAll(setup()).value();
    }
    const Store store = Store::open(bench.path, OpenMode::ReadOnly).value();
    const auto records = store.records({}).value();
    QCOMPARE(records.size(), sealed.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        QVERIFY(verifyRecord(records[i]));
        QCOMPARE(recordJson(records[i]), recordJson(sealed[i]));
        QCOMPARE(store.record(sealed[i].hash)->subject, sealed[i].subject);
    }
    RecordFilter filter;
    filter.kind = "lot";
    QCOMPARE(store.records(filter)->size(), std::size_t(1));
    filter = {};
    filter.subject = id(kLift);
    QCOMPARE(store.records(filter)->front().kind, std::string("lift"));
    filter = {};
    filter.afterRow = 8;
    QCOMPARE(store.records(filter)->size(), sealed.size() - 8);
    QVERIFY(!store.record(std::string(64, '0')));
}

void StoreTest::chainsPerDeviceFromOne()
{
    Bench bench;
    { Store store = bench.make(1); QVERIFY(store.sealAll(setup())); }
    Store other = Store::open(bench.path, OpenMode::ReadWrite, key(2)).value();
    const Record first = other.seal(entry("note", 100, {{"text", "x"}})).value();
    QCOMPARE(first.seq, std::int64_t(1));
    QVERIFY(first.prev.empty());
    const Record second = other.seal(entry("note", 100, {{"text", "y"}})).value();
    QCOMPARE(second.seq, std::int64_t(2));
    QCOMPARE(second.prev, first.hash);
}

void StoreTest::refusedEntryLeavesNothing()
{
    Bench bench;
    Store store = bench.make();
    auto entries = setup();
    entries.push_back(entry("reading", 100, {{"number", 1}}));
    const auto sealed = store.sealAll(entries);
    QVERIFY(!sealed);
    QVERIFY2(sealed.error().what.rfind("reading: mode must be one of", 0) == 0, sealed.error().what.c_str());
    QCOMPARE(store.lastRow().value(), std::int64_t(0));
    QVERIFY(store.derivedText()->empty());
    QVERIFY(store.sealAll(setup()));
}

void StoreTest::amendmentMustFitWhatItAmends()
{
    Bench bench;
    Store store = bench.make();
    const auto records = store.sealAll(setup()).value();
    Entry wrongKind = amend(records[0], records[1].body, 10);
    wrongKind.kind = "crs";
    QVERIFY(!store.seal(wrongKind));
    Entry wrongSubject = amend(records[0], records[0].body, 10);
    wrongSubject.subject = id(99);
    QVERIFY(!store.seal(wrongSubject));
    Entry nowhere = amend(records[0], records[0].body, 10);
    nowhere.amends = std::string(64, '0');
    QVERIFY(!store.seal(nowhere));
    QVERIFY(store.seal(amend(records[0], records[0].body, 10)));
}

void StoreTest::secondProcessSeesNewRecordsAtOnce()
{
    Bench bench;
    Store writer = bench.make(1);
    Store reader = Store::open(bench.path, OpenMode::ReadWrite, key(2)).value();
    const auto before = reader.dataVersion().value();
    QVERIFY(writer.sealAll(setup()));
    QVERIFY(reader.dataVersion().value() != before);
    QCOMPARE(reader.lastRow().value(), std::int64_t(10));
    QCOMPARE(StateQuery(reader).lots()->size(), std::size_t(1));
    QVERIFY(reader.seal(entry("note", 100, {{"text", "from the second"}})));
    QCOMPARE(writer.lastRow().value(), std::int64_t(11));
    QCOMPARE(askFile(bench.path, "SELECT count(*) FROM record"), std::string("11"));
}

void StoreTest::damagedBookOpensReadOnlyAndNamesTheRecord()
{
    Bench bench;
    std::string hash;
    { Store store = bench.make(); hash = store.sealAll(setup()).value()[8].hash; }
    QVERIFY(tamper(bench.path, "UPDATE record SET body = replace(body, '\"95\"', '\"90\"') WHERE kind = 'lot'"));
    Store store = Store::open(bench.path, OpenMode::ReadWrite, key()).value();
    QVERIFY(store.isReadOnly());
    QVERIFY2(store.damage().find("lot of 0000000a") != std::string::npos, store.damage().c_str());
    QVERIFY(store.damage().find(hash.substr(0, 12)) != std::string::npos);
    const auto sealed = store.seal(entry("note", 100, {{"text", "x"}}));
    QVERIFY(!sealed);
    QVERIFY(sealed.error().what.find("damaged and can only be read") != std::string::npos);
    QCOMPARE(StateQuery(store).people()->size(), std::size_t(1));  // the rest is still there to be read
}

void StoreTest::aReaderBesideChecksWhatCameSince()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    const Store opened = Store::open(bench.path, OpenMode::ReadOnly).value();
    QVERIFY(opened.readBeside()->damage().empty());
    QCOMPARE(StateQuery(opened.readBeside().value()).people()->size(), std::size_t(1));
    QVERIFY(store.seal(entry("note", 100, {{"text", "after it was opened"}}, 500)));
    QVERIFY(tamper(bench.path, "UPDATE record SET body = replace(body, 'after', 'before') WHERE kind = 'note'"));
    const auto beside = opened.readBeside();
    QVERIFY(beside->isReadOnly());
    QVERIFY2(beside->damage().find("note of") != std::string::npos, beside->damage().c_str());
    // what is known to be damaged stays so
    const Store damaged = Store::open(bench.path, OpenMode::ReadWrite, key()).value();
    QCOMPARE(damaged.readBeside()->damage(), damaged.damage());
    QVERIFY(!damaged.damage().empty());
}
void StoreTest::damagedPagesAreToldNotCrashedOn()
{
    Bench bench;
    { Store store = bench.make(); QVERIFY(store.sealAll(setup())); }
    QFile file(QString::fromStdString(bench.path));
    QVERIFY(file.open(QIODevice::ReadWrite));
    const QByteArray whole = file.readAll();
    file.close();
    int told = 0;
    for (qsizetype at = 4096; at < whole.size(); at += 1024) {
        QByteArray torn = whole;
        torn.replace(at, qMin<qsizetype>(512, torn.size() - at), QByteArray(qMin<qsizetype>(512, torn.size() - at), '\x5A'));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(torn);
        file.close();
        const auto store = Store::open(bench.path, OpenMode::ReadOnly);
        if (!store || !store->damage().empty())
            ++told;
        else
            std::ignore = store->records({});
    }
    QVERIFY(told > 0);
}

void StoreTest::foreignFilesAreRefused()
{
    Bench bench;
    const std::string text = bench.at("text.fieldbook");
    { QFile file(QString::fromStdString(text)); QVERIFY(file.open(QIODevice::WriteOnly)); file.write(QByteArray(5000, 'x')); }
    QVERIFY(!Store::open(text, OpenMode::ReadWrite));
    const std::string other = bench.at("other.fieldbook");
    tamper(other, "CREATE TABLE t(x)");
    const auto foreign = Store::open(other, OpenMode::ReadOnly);
    QVERIFY(!foreign);
    QVERIFY2(foreign.error().what.find("application id") != std::string::npos, foreign.error().what.c_str());
    { Store store = bench.make(); }
    tamper(bench.path, "PRAGMA user_version = 3");
    const auto newer = Store::open(bench.path, OpenMode::ReadOnly);
    QVERIFY(!newer);
    QVERIFY(newer.error().what.find("format 3") != std::string::npos);
    QVERIFY(!Store::open(bench.at("none.fieldbook"), OpenMode::ReadWrite));
}

void StoreTest::aBookWhoseMakingWasCutShortIsMadeAgain()
{
    Bench bench;
    // what a power cut leaves: no byte at all, or the first page of an empty database
    for (const char* sql : {"", "PRAGMA journal_mode=WAL; CREATE TABLE t(a); DROP TABLE t"}) {
        QFile file(QString::fromStdString(bench.path));
        QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.close();
        sqlite3* db = nullptr;
        QCOMPARE(sqlite3_open(bench.path.c_str(), &db), SQLITE_OK);
        QCOMPARE(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK);
        sqlite3_close(db);
        const auto reader = Store::open(bench.path, OpenMode::ReadOnly);
        QVERIFY(!reader);
        QVERIFY2(reader.error().what.find("its making was cut short") != std::string::npos, reader.error().what.c_str());
        Store store = Store::open(bench.path, OpenMode::ReadWrite, key()).value();
        QCOMPARE(store.lastRow().value(), std::int64_t(0));
        QVERIFY(store.sealAll(setup()));
        QVERIFY(!Store::open(bench.path, OpenMode::Create, key()));
    }
}

void StoreTest::tablesOfAnotherVersionAreToldAndMadeAnew()
{
    Bench bench;
    {
        Store store = bench.make();
        QVERIFY(store.sealAll(setup()));
        QVERIFY(store.database().exec("UPDATE fold SET version = 1; DROP TABLE lot_row; CREATE TABLE lot_row(id TEXT) STRICT"));
    }
    QVERIFY(!Store::open(bench.path, OpenMode::ReadOnly)->hasCurrentFold());
    const Store again = Store::open(bench.path, OpenMode::ReadWrite, key()).value();
    QVERIFY(again.hasCurrentFold());
    QCOMPARE(again.staleDerived().value(), std::string());
}

void StoreTest::fullDiskLeavesTheBookWhole()
{
    Bench bench;
    Store store = bench.make();
    QVERIFY(store.sealAll(setup()));
    QVERIFY(store.limitPages(1));  // no page beyond those in use: what a full disk does to SQLite
    groundcount::Result<Record> last = groundcount::refused("");
    int sealed = 0;
    do {
        last = store.seal(entry("note", 100, {{"text", std::string(3000, 'x')}}));
        sealed += last ? 1 : 0;
    } while (last && sealed < 200);
    QVERIFY(!last);
    QVERIFY(last.error().fault == groundcount::Fault::Unavailable);
    QVERIFY2(last.error().what.find("disk is full") != std::string::npos, last.error().what.c_str());
    QCOMPARE(store.lastRow().value(), std::int64_t(10 + sealed));
    QVERIFY(store.limitPages(100000));
    QVERIFY(store.seal(entry("note", 100, {{"text", std::string(3000, 'x')}})));
}

void StoreTest::readOnlyRefusesToSeal()
{
    Bench bench;
    { Store store = bench.make(); }
    Store store = Store::open(bench.path, OpenMode::ReadOnly, key()).value();
    const auto sealed = store.seal(entry("note", 100, {{"text", "x"}}));
    QVERIFY(!sealed);
    QVERIFY(sealed.error().what.find("reading only") != std::string::npos);
    Store keyless = Store::open(bench.path, OpenMode::ReadWrite).value();
    QVERIFY(!keyless.seal(entry("note", 100, {{"text", "x"}})));
}

void StoreTest::draftsStayLocal()
{
    Bench bench;
    Store store = bench.make(1);
    QVERIFY(store.sealAll(setup()));
    QVERIFY(store.saveDraft(id(100), "count", "half typed 18"));
    QVERIFY(store.saveDraft(id(100), "count", "half typed 1800"));
    QCOMPARE(store.draft(id(100), "count").value(), std::string("half typed 1800"));
    QCOMPARE(store.draft(id(100), "dig").value(), std::string());
    const std::string copy = bench.at("copy.fieldbook");
    QVERIFY(store.handOver(copy));
    QVERIFY(!store.handOver(copy));
    const Store handed = Store::open(copy, OpenMode::ReadOnly).value();
    QCOMPARE(handed.lastRow().value(), std::int64_t(10));
    QCOMPARE(handed.draft(id(100), "count").value(), std::string());
    QFile file(QString::fromStdString(copy));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY(!file.readAll().contains("half typed"));
    QVERIFY(store.dropDraft(id(100), "count"));
    QCOMPARE(store.draft(id(100), "count").value(), std::string());
}

void StoreTest::blobsAreStoredOnceAndChecked()
{
    Bench bench;
    Store store = bench.make();
    const std::string picture(20000, '\0');
    const std::string hash = store.putBlob(picture).value();
    QCOMPARE(store.putBlob(picture).value(), hash);
    QCOMPARE(store.blobHashes()->size(), std::size_t(1));
    QCOMPARE(store.blob(hash).value(), picture);
    QVERIFY(!store.blob(std::string(64, 'f')));
    QVERIFY(tamper(bench.path, "UPDATE blob SET content = x'00'"));
    const auto changed = store.blob(hash);
    QVERIFY(!changed);
    QVERIFY(changed.error().what.find("no longer gives its hash") != std::string::npos);
}

void StoreTest::existingNamesAreNotOverwritten()
{
    Bench bench;
    { Store store = bench.make(); QVERIFY(store.sealAll(setup())); }
    QVERIFY(!Store::open(bench.path, OpenMode::Create, key()));
    QCOMPARE(Store::open(bench.path, OpenMode::ReadOnly)->lastRow().value(), std::int64_t(10));
}

QTEST_GUILESS_MAIN(StoreTest)
#include "store_test.moc"
