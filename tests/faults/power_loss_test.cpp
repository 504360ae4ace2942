#include "book/later_flush.h"
#include "faults/book_picture.h"

#include <QtTest>
#include <optional>
#include <sqlite3.h>

using namespace faults;
using sample::entry;
using sample::id;

namespace {

/// A run of the store: every step on the disk, and what the book said after each acknowledged act.
struct Run {
    std::vector<Step> steps;
    std::vector<std::string> pictures;
};

void done(const Result<void>& act)
{
    if (!act)
        qFatal("The run to be cut does not work: %s", act.error().what.c_str());
}

/// Opens, seals, keeps, merges, pulls, closes (which empties the log into the book) and opens again, three times over.
Run recordRun()
{
    Run run;
    Disk& disk = Disk::instance();
    disk.clear();
    disk.record();
    std::optional<Store> store;
    const auto acknowledged = [&] {
        disk.mark(static_cast<int>(run.pictures.size()));
        run.pictures.push_back(picture(*store).value());
    };
    const auto reopen = [&] {
        store.reset();
        store.emplace(openBook(OpenMode::ReadWrite).value());
    };
    store.emplace(openBook(OpenMode::Create).value());
    acknowledged();
    const auto setup = sample::setup();
    const auto base = store->sealAll(std::span(setup).subspan(8, 2)).value();
    acknowledged();
    done(store->saveDraft(id(100), "place", "121.4 typed"));
    acknowledged();
    std::ignore = store->putBlob(std::string(9000, 'p')).value();
    acknowledged();
    const Record site = store->seal(entry("test-site", 100, sample::siteBody("1"), 10)).value();
    acknowledged();
    reopen();
    std::ignore = store->seal(entry("reading", 100, sample::readoutBody(), 20)).value();
    acknowledged();
    done(store->dropDraft(id(100), "place"));
    acknowledged();
    std::ignore = store->seal(sample::amend(site, sample::siteBody("1a"), 30)).value();
    acknowledged();
    const Record other = sealEntry(entry("test-site", 101, sample::siteBody("2"), 40), sample::key(9), 1, "", store->bookId().value()).value();
    std::ignore = store->take({&other, 1}).value();
    acknowledged();
    {  // a pull: what the server holds too is flushed at its end
        LaterFlush later = LaterFlush::begin(*store).value();
        const Record pulled = sealEntry(entry("test-site", 102, sample::siteBody("3"), 45), sample::key(9), 2, other.hash, store->bookId().value()).value();
        std::ignore = store->take({&pulled, 1}).value();
        done(later.end());
    }
    acknowledged();
    reopen();
    Entry gone = entry("void", 101, Body::object(), 50);
    gone.reason = "wrong lift";
    std::ignore = store->seal(gone).value();
    acknowledged();
    done(store->rebuild());
    acknowledged();
    store.reset();
    run.steps = disk.stopRecording();
    return run;
}

enum class Fate { Kept, Lost, Broken };

/// Opens what the cut left and says what became of the acknowledged acts.
Fate look(const Run& run, int lastMark, std::string& what)
{
    const bool isThere = Disk::instance().medium().names.contains(kBook);
    auto store = openBook(OpenMode::ReadWrite);
    if (lastMark < 0) {  // the book itself was not acknowledged: there is none, or an empty one that can be written to
        what = store ? "not an empty book" : store.error().what;
        const bool kept = store ? isThere && picture(*store).value_or("") == run.pictures[0] : !isThere && !store.error().what.empty();
        return kept ? Fate::Kept : Fate::Broken;
    }
    if (!store) {
        what = store.error().what;
        return Fate::Broken;
    }
    if (!store->damage().empty()) {
        what = store->damage();
        return Fate::Broken;
    }
    const auto now = picture(*store);
    if (!now) {
        what = now.error().what;
        return Fate::Broken;
    }
    const auto mark = static_cast<std::size_t>(lastMark);
    if (*now == run.pictures[mark] || (mark + 1 < run.pictures.size() && *now == run.pictures[mark + 1]))
        return Fate::Kept;
    for (std::size_t i = 0; i < mark; ++i)
        if (*now == run.pictures[i]) {
            what = "the book fell back to an earlier state";
            return Fate::Lost;
        }
    what = "the book is in no state that it ever had";
    return Fate::Broken;
}

struct Tally {
    std::int64_t trials = 0, kept = 0, lost = 0, broken = 0;
    std::string first;
};

/// Cuts the power at every step, with as many outcomes at each as make up `trials`.
Tally cutEverywhere(const Run& run, Device device, std::int64_t trials)
{
    Tally tally;
    std::int64_t open = 0;
    for (PowerCut walk(run.steps, device); walk.advance();)
        open += walk.unsynced() > 0;
    const std::int64_t each = std::max<std::int64_t>(2, trials / std::max<std::int64_t>(1, open) + 1);
    PowerCut cut(run.steps, device);
    for (std::size_t at = 1; cut.advance(); ++at) {
        // with nothing unsynced there is one outcome only
        const std::int64_t outcomes = cut.unsynced() == 0 ? 1 : each;
        for (std::int64_t n = 0; n < outcomes; ++n) {
            Disk::instance().load(cut.outcome(static_cast<std::uint64_t>(n)));
            std::string what;
            const Fate fate = look(run, cut.lastMark(), what);
            ++tally.trials;
            tally.kept += fate == Fate::Kept;
            tally.lost += fate == Fate::Lost;
            tally.broken += fate == Fate::Broken;
            if (fate != Fate::Kept && tally.first.empty())
                tally.first = "cut after step " + std::to_string(at) + ", outcome " + std::to_string(n) + ", act " +
                              std::to_string(cut.lastMark()) + ": " + what;
        }
    }
    return tally;
}

std::int64_t wanted()
{
    const QByteArray asked = qgetenv("GROUNDCOUNT_TRIALS");
    return asked.isEmpty() ? 100'000 : asked.toLongLong();
}

void say(const char* name, const Tally& t)
{
    qInfo("%s: %lld trials, %lld kept, %lld lost, %lld broken. %s", name, static_cast<long long>(t.trials), static_cast<long long>(t.kept),
          static_cast<long long>(t.lost), static_cast<long long>(t.broken), t.first.c_str());
}

}  // namespace

class PowerLossTest : public QObject {
    Q_OBJECT

private slots:
    void losesNothingThatWasAcknowledged();
    void losesNothingWhereACutSpoilsWholeSectors();
    void aCutDuringRecoveryLosesNothingEither();
    void survivorsPassTheAuditAndSealOn();
    void controlSyncIgnoredIsCaught();
    void controlLogNotFlushedIsCaughtLosing();
    void controlJournalOffIsCaughtCorrupting();
    void cleanup() { Disk::instance().loadedAsSpoiling = false; }
};

void PowerLossTest::losesNothingThatWasAcknowledged()
{
    const Run run = recordRun();
    QVERIFY(run.steps.size() > 200);
    QVERIFY(run.pictures.size() == 12);
    const Tally tally = cutEverywhere(run, {}, wanted() * 9 / 10);
    say("power loss", tally);
    QVERIFY2(tally.kept == tally.trials, tally.first.c_str());
    QVERIFY(tally.trials >= wanted() * 9 / 10);
}

void PowerLossTest::losesNothingWhereACutSpoilsWholeSectors()
{
    Disk::instance().loadedAsSpoiling = true;
    const Run run = recordRun();
    const Tally tally = cutEverywhere(run, {Device::Flush::Honoured, true}, wanted() / 10);
    say("power loss that spoils sectors", tally);
    QVERIFY2(tally.kept == tally.trials, tally.first.c_str());
}

void PowerLossTest::aCutDuringRecoveryLosesNothingEither()
{
    const Run run = recordRun();
    PowerCut cut(run.steps, {});
    Tally tally;
    std::mt19937_64 random(4);
    while (cut.advance()) {
        if (cut.lastMark() < 0 || cut.unsynced() == 0 || random() % 8 != 0)
            continue;
        const Medium first = cut.outcome(2 + random() % 50);
        Disk& disk = Disk::instance();
        // what survived the first cut is durable; the second cut falls into the opening and closing after it
        disk.load(first);
        disk.record();
        std::vector<Step> steps;
        for (const auto& [name, file] : first.names) {
            steps.push_back({Step::What::Create, file, name, 0, {}, false});
            if (const auto content = first.contents.find(file); content != first.contents.end())
                steps.push_back({Step::What::Write, file, name, 0, content->second, false});
            steps.push_back({Step::What::Sync, file, name, 0, {}, true});
        }
        const std::size_t durable = steps.size();
        { QVERIFY(openBook(OpenMode::ReadWrite)); }
        for (Step& step : disk.stopRecording())
            steps.push_back(std::move(step));
        PowerCut second(steps, {});
        for (std::size_t i = 0; second.advance(); ++i)
            for (std::uint64_t n = 0; i >= durable && n < 4; ++n) {
                disk.load(second.outcome(n));
                std::string what;
                ++tally.trials;
                const Fate fate = look(run, cut.lastMark(), what);
                tally.kept += fate == Fate::Kept;
                if (fate != Fate::Kept && tally.first.empty())
                    tally.first = what;
            }
    }
    say("second cut during recovery", tally);
    QVERIFY2(tally.kept == tally.trials, tally.first.c_str());
    QVERIFY(tally.trials > 100);
}

void PowerLossTest::survivorsPassTheAuditAndSealOn()
{
    const Run run = recordRun();
    PowerCut cut(run.steps, {});
    int seen = 0;
    std::mt19937_64 random(3);
    while (cut.advance()) {
        if (cut.lastMark() < 1 || cut.unsynced() == 0 || random() % 4 != 0)
            continue;
        ++seen;
        Disk::instance().load(cut.outcome(2 + random() % 100));
        std::string hash;
        {
            Store store = openBook(OpenMode::ReadWrite).value();
            hash = store.seal(entry("note", 200, {{"text", "after the cut"}}, 900)).value().hash;
        }
        Store store = openBook(OpenMode::ReadWrite).value();
        QVERIFY(store.record(hash));
        const auto report = check(store).value();
        QVERIFY2(report.isClean(), report.lines.empty() ? "" : report.lines[0].what.c_str());
    }
    QVERIFY(seen > 30);
}

void PowerLossTest::controlSyncIgnoredIsCaught()
{
    const Run run = recordRun();
    const Tally tally = cutEverywhere(run, {Device::Flush::Ignored, false}, 4'000);
    say("control, device ignores every flush", tally);
    QVERIFY2(tally.lost + tally.broken > tally.trials / 2, "the harness sees no harm in a device that ignores flushes: it is broken");
    QVERIFY(tally.broken > tally.trials / 10);
}

void PowerLossTest::controlLogNotFlushedIsCaughtLosing()
{
    const Run run = recordRun();
    const Tally tally = cutEverywhere(run, {Device::Flush::IgnoredForLog, false}, 4'000);
    say("control, log not flushed", tally);
    QVERIFY2(tally.lost + tally.broken > tally.trials / 10, "the harness sees no harm in a log that is not flushed: it is broken");
}

/// Bare SQLite with the journal off on the same disk: pairs of rows that belong together.
void PowerLossTest::controlJournalOffIsCaughtCorrupting()
{
    Disk& disk = Disk::instance();
    disk.clear();
    disk.record();
    sqlite3* db = nullptr;
    const int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    QCOMPARE(sqlite3_open_v2("bare.db", &db, flags, Disk::kDisk), SQLITE_OK);
    QCOMPARE(sqlite3_exec(db, "PRAGMA journal_mode=OFF; PRAGMA synchronous=FULL;"
                              "CREATE TABLE a(n INTEGER PRIMARY KEY, t TEXT UNIQUE); CREATE TABLE b(n INTEGER PRIMARY KEY, t TEXT UNIQUE)",
                          nullptr, nullptr, nullptr), SQLITE_OK);
    for (int i = 0; i < 40; ++i) {
        const std::string text = std::to_string(i * 7919 % 1000) + std::string(700, 'x');
        const std::string sql = "BEGIN; INSERT INTO a VALUES(" + std::to_string(i) + ",'" + text + "'); INSERT INTO b VALUES(" +
                                std::to_string(i) + ",'" + text + "'); COMMIT";
        QCOMPARE(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
        disk.mark(i);
    }
    sqlite3_close(db);
    const std::vector<Step> steps = disk.stopRecording();
    Tally tally;
    PowerCut cut(steps, {});
    while (cut.advance()) {
        if (cut.lastMark() < 0 || cut.unsynced() == 0)
            continue;
        for (std::uint64_t n = 0; n < 6; ++n) {
            disk.load(cut.outcome(n));
            bool whole = sqlite3_open_v2("bare.db", &db, SQLITE_OPEN_READWRITE, Disk::kDisk) == SQLITE_OK;
            const auto ask = [&](const char* sql) {
                sqlite3_stmt* statement = nullptr;
                std::string answer;
                if (sqlite3_prepare_v2(db, sql, -1, &statement, nullptr) == SQLITE_OK && sqlite3_step(statement) == SQLITE_ROW)
                    answer = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
                sqlite3_finalize(statement);
                return answer;
            };
            whole = whole && ask("PRAGMA integrity_check") == "ok" && ask("SELECT count(*) FROM a") == ask("SELECT count(*) FROM b") &&
                    std::atoi(ask("SELECT count(*) FROM a").c_str()) > cut.lastMark();
            sqlite3_close(db);
            ++tally.trials;
            tally.kept += whole;
            tally.broken += !whole;
        }
    }
    say("control, journal off", tally);
    QVERIFY2(tally.broken > tally.trials / 4, "the harness sees no harm in a database without a journal: it is broken");
}

QTEST_GUILESS_MAIN(PowerLossTest)
#include "power_loss_test.moc"
