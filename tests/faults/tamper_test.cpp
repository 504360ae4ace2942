#include "faults/book_picture.h"

#include "book/canonical.h"

#include <QtTest>
#include <algorithm>
#include <random>
#include <set>
#include <sqlite3.h>

using namespace faults;
using sample::entry;
using sample::id;

namespace {

/// A book on the disk in memory that two devices wrote, opened behind the store's back.
class Forger {
public:
    Forger()
    {
        Disk::instance().clear();
        {
            Store store = openBook(OpenMode::Create).value();
            const auto base = store.sealAll(sample::setup()).value();
            std::ignore = store.seal(entry("test-site", 100, sample::siteBody("1"), 10)).value();
            std::ignore = store.seal(entry("reading", 100, sample::readoutBody(), 20)).value();
            std::ignore = store.seal(sample::amend(base[8], base[8].body, 30)).value();
            std::vector<Record> others;
            for (int i = 0; i < 5; ++i)
                others.push_back(sealEntry(entry("reading", 100, sample::readoutBody("123.0"), 40 + i), sample::key(9), i + 1,
                                           i ? others.back().hash : "", base[0].book).value());
            std::ignore = store.take(others).value();
            m_records = store.records({}).value();
            m_clean = check(store)->isClean();
            m_picture = picture(store).value();
        }
        m_book = Disk::instance().medium();
    }

    bool isClean() const { return m_clean; }
    const std::vector<Record>& records() const { return m_records; }
    const Medium& book() const { return m_book; }
    const std::string& truePicture() const { return m_picture; }
    const Record& at(std::size_t i) const { return m_records[i]; }
    bool isLastOfChain(const Record& r) const
    {
        for (const Record& other : m_records)
            if (other.device == r.device && other.seq > r.seq)
                return false;
        return true;
    }

    /// Starts from the true book and runs `sql` on it.
    void run(const std::string& sql, const std::vector<std::string>& values = {})
    {
        Disk::instance().load(m_book);
        sqlite3* db = nullptr;
        if (sqlite3_open_v2(kBook, &db, SQLITE_OPEN_READWRITE, Disk::kDisk) != SQLITE_OK)
            qFatal("%s", sqlite3_errmsg(db));
        sqlite3_exec(db, "PRAGMA locking_mode=EXCLUSIVE", nullptr, nullptr, nullptr);
        const char* rest = sql.c_str();
        while (*rest) {
            sqlite3_stmt* statement = nullptr;
            if (sqlite3_prepare_v2(db, rest, -1, &statement, &rest) != SQLITE_OK)
                qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
            for (int i = 0; i < sqlite3_bind_parameter_count(statement); ++i)
                sqlite3_bind_text(statement, i + 1, values[static_cast<std::size_t>(i)].data(), static_cast<int>(values[static_cast<std::size_t>(i)].size()), SQLITE_TRANSIENT);
            if (const int code = sqlite3_step(statement); code != SQLITE_DONE && code != SQLITE_ROW)
                qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
            sqlite3_finalize(statement);
        }
        if (sqlite3_total_changes(db) == 0)
            qFatal("no change by %s", sql.c_str());
        sqlite3_close(db);
    }

    static AuditReport audit()
    {
        const Store store = openBook(OpenMode::ReadOnly).value();
        return check(store).value();
    }

private:
    std::vector<Record> m_records;
    Medium m_book;
    std::string m_picture;
    bool m_clean = false;
};

std::string all(const AuditReport& report)
{
    std::string text;
    for (const AuditLine& line : report.lines)
        text += std::string(word(line.finding)) + ": " + line.what + "\n";
    return text;
}

/// Whether a finding of the seals (not of the derived tables) names the record by its hash or by its running number.
bool names(const AuditReport& report, const Record& r)
{
    const std::string number = "number " + std::to_string(r.seq);
    for (const AuditLine& line : report.lines) {
        if (line.finding == Finding::Derived)
            continue;
        if (line.what.find("hash " + r.hash.substr(0, 12)) != std::string::npos)
            return true;
        for (const char* end : {" (", ",", " to", ":"})
            if (line.what.find(number + end) != std::string::npos)
                return true;
    }
    return false;
}

std::string canonicalBody(const Record& r)
{
    return canonicalText(r.body).value();
}

std::string firstDifference(const std::string& now, const std::string& before, std::size_t bit)
{
    const auto at = static_cast<std::size_t>(std::mismatch(now.begin(), now.end(), before.begin(), before.end()).first - now.begin());
    const std::size_t from = at < 60 ? 0 : at - 60;
    return "bit " + std::to_string(bit) + ": \"" + now.substr(from, 120) + "\" was \"" + before.substr(from, 120) + "\"";
}

std::string rowOf(std::size_t i)
{
    return " WHERE row = " + std::to_string(i + 1);
}

int wanted(int whole)
{
    const QByteArray asked = qgetenv("GROUNDCOUNT_TAMPERS");
    return asked.isEmpty() ? whole : std::max(20, whole * asked.toInt() / 10'000);
}

}  // namespace

class TamperTest : public QObject {
    Q_OBJECT

private slots:
    void theTrueBookIsClean();
    void singleBitFlipsInAnyColumnAreNamed();
    void droppedRecordsAreNamed();
    void swappedRecordsAreNamed();
    void replayedRecordsAreNamed();
    void recordsResignedByAStrangerAreNamed();
    void bitFlipsAnywhereInTheFileAreNeverSilent();
    void aChainCutAtItsEndCannotBeSeenFromOneBook();
};

void TamperTest::theTrueBookIsClean()
{
    const Forger forger;
    QVERIFY(forger.isClean());
    QCOMPARE(forger.records().size(), std::size_t(18));
}

void TamperTest::singleBitFlipsInAnyColumnAreNamed()
{
    Forger forger;
    std::mt19937 random(41);
    constexpr const char* kTexts[] = {"hash", "kind", "subject", "amends", "reason", "by_person", "at", "device", "prev", "body", "signature"};
    std::set<std::string> seen;
    const int trials = wanted(6000);
    for (int done = 0; done < trials;) {
        const std::size_t i = random() % forger.records().size();
        const Record& r = forger.at(i);
        const std::size_t column = random() % 13;
        if (column >= 11) {  // whole numbers: a bit of the low sixteen
            const std::string name = column == 11 ? "seq" : "offset_minutes";
            const std::int64_t value = column == 11 ? r.seq : r.offsetMinutes;
            forger.run("UPDATE record SET " + name + " = " + std::to_string(value ^ (1LL << random() % 16)) + rowOf(i));
            seen.insert(name);
        } else {
            const std::string texts[] = {r.hash, r.kind, r.subject, r.amends, r.reason, r.by, r.at, r.device, r.prev, canonicalBody(r), r.signature};
            std::string text = texts[column];
            if (text.empty())
                continue;
            const std::size_t bit = random() % (text.size() * 8);
            text[bit / 8] = static_cast<char>(static_cast<unsigned char>(text[bit / 8]) ^ (1U << (bit % 8)));
            forger.run(std::string("UPDATE record SET ") + kTexts[column] + " = ?" + rowOf(i), {text});
            seen.insert(kTexts[column]);
        }
        const auto report = Forger::audit();
        QVERIFY2(names(report, r), (*seen.rbegin() + " of " + nameOf(r) + "\n" + all(report)).c_str());
        ++done;
    }
    QCOMPARE(seen.size(), std::size_t(13));
    qInfo("%d single bit flips, each record named", trials);
}

void TamperTest::droppedRecordsAreNamed()
{
    Forger forger;
    std::mt19937 random(42);
    const int trials = wanted(600);
    for (int done = 0; done < trials;) {
        // one to three records at once, none of them the newest of its chain
        std::set<std::size_t> out;
        for (unsigned n = 1 + random() % 3; n > 0; --n)
            out.insert(random() % forger.records().size());
        std::erase_if(out, [&](std::size_t i) { return forger.isLastOfChain(forger.at(i)); });
        if (out.empty())
            continue;
        std::string sql = "DELETE FROM record WHERE row IN (0";
        for (const std::size_t i : out)
            sql += "," + std::to_string(i + 1);
        forger.run(sql + ")");
        const auto report = Forger::audit();
        for (const std::size_t i : out) {
            const Record& r = forger.at(i);
            bool named = false;  // by its own number or inside "lacks number 3 to 5"
            for (const AuditLine& line : report.lines) {
                std::int64_t from = 0, to = 0;
                const auto lacks = line.what.find("lacks number ");
                if (line.finding != Finding::Gap || lacks == std::string::npos || line.what.find(r.device.substr(0, 8)) == std::string::npos)
                    continue;
                if (std::sscanf(line.what.c_str() + lacks, "lacks number %ld to %ld", &from, &to) == 1)
                    to = from;
                named = named || (from <= r.seq && r.seq <= to);
            }
            QVERIFY2(named, (nameOf(r) + "\n" + all(report)).c_str());
        }
        ++done;
    }
    qInfo("%d drops, each record named", trials);
}

void TamperTest::swappedRecordsAreNamed()
{
    Forger forger;
    std::mt19937 random(43);
    constexpr const char* kColumns[] = {"seq", "body", "signature", "prev", "at", "kind", "subject", "device"};
    const int trials = wanted(1400);
    for (int done = 0; done < trials;) {
        const std::size_t i = random() % forger.records().size(), j = random() % forger.records().size();
        const Record &a = forger.at(i), &b = forger.at(j);
        const std::size_t column = random() % 8;
        const auto value = [column](const Record& r) {
            const std::string values[] = {std::to_string(r.seq), canonicalBody(r), r.signature, r.prev, r.at, r.kind, r.subject, r.device};
            return values[column];
        };
        if (i == j || value(a) == value(b))
            continue;
        const std::string name = kColumns[column];
        forger.run("UPDATE record SET " + name + " = CASE row WHEN " + std::to_string(i + 1) + " THEN ?1 ELSE ?2 END WHERE row IN (" +
                       std::to_string(i + 1) + "," + std::to_string(j + 1) + ")", {value(b), value(a)});
        const auto report = Forger::audit();
        QVERIFY2(names(report, a) && names(report, b), (name + " of " + nameOf(a) + " and " + nameOf(b) + "\n" + all(report)).c_str());
        ++done;
    }
    qInfo("%d swaps, both records named", trials);
}

void TamperTest::replayedRecordsAreNamed()
{
    Forger forger;
    std::mt19937 random(44);
    const int trials = wanted(1000);
    for (int done = 0; done < trials; ++done) {
        const std::size_t i = random() % forger.records().size();
        Record r = forger.at(i);
        std::string hash(64, '0');
        for (char& c : hash)
            c = "0123456789abcdef"[random() % 16];
        // under its old number, at the end of its chain, or as another device's
        const auto place = random() % 3;
        const std::string seq = place == 1 ? std::to_string(100) : "seq";
        const std::string device = place == 2 ? "'" + sample::key(9).device() + "'" : "device";
        forger.run("INSERT INTO record(hash, kind, subject, amends, reason, by_person, at, offset_minutes, device, seq, prev, body, signature)"
                   " SELECT '" + hash + "', kind, subject, amends, reason, by_person, at, offset_minutes, " + device + ", " + seq +
                   ", prev, body, signature FROM record" + rowOf(i));
        r.hash = hash;
        const auto report = Forger::audit();
        bool named = false;
        for (const AuditLine& line : report.lines)
            named = named || (line.finding == Finding::Content && line.what.find("hash " + hash.substr(0, 12)) != std::string::npos);
        QVERIFY2(named, all(report).c_str());
    }
    qInfo("%d replays, each named", trials);
}

void TamperTest::recordsResignedByAStrangerAreNamed()
{
    Forger forger;
    std::mt19937 random(45);
    const int trials = wanted(1000);
    for (int done = 0; done < trials;) {
        const std::size_t i = random() % forger.records().size();
        const Record& r = forger.at(i);
        if (forger.isLastOfChain(r))
            continue;
        const unsigned char stranger = static_cast<unsigned char>(60 + random() % 100);
        Entry entryOf = r;
        if (random() % 2)
            entryOf.body["remark"] = "changed";
        const auto way = random() % 3;
        if (way == 0) {  // the signature alone: device and hash stay
            forger.run("UPDATE record SET signature = ?" + rowOf(i), {sample::key(stranger).sign(r.hash).value()});
        } else {         // a whole record of the stranger's in its place, at the same number or as the first of a chain of his own
            const Record other = way == 1 ? sealEntry(entryOf, sample::key(stranger), r.seq, r.prev, r.book).value()
                                          : sealEntry(entryOf, sample::key(stranger), 1, "", r.book).value();
            forger.run("UPDATE record SET device = ?, hash = ?, signature = ?, body = ?, seq = " + std::to_string(other.seq) + ", prev = '" + other.prev + "'" + rowOf(i),
                       {other.device, other.hash, other.signature, canonicalBody(other)});
        }
        const auto report = Forger::audit();
        QVERIFY2(names(report, r), (nameOf(r) + "\n" + all(report)).c_str());
        ++done;
    }
    qInfo("%d records signed again by strangers, each named", trials);
}

/// Any bit of the file: refused, told, or without effect on what the book says.
void TamperTest::bitFlipsAnywhereInTheFileAreNeverSilent()
{
    Forger forger;
    std::mt19937 random(46);
    const int trials = wanted(2000);
    int refusals = 0, told = 0, without = 0;
    for (int done = 0; done < trials; ++done) {
        Medium book = forger.book();
        std::string& bytes = book.contents[book.names.at(kBook)];
        const std::size_t bit = random() % (bytes.size() * 8);
        bytes[bit / 8] = static_cast<char>(static_cast<unsigned char>(bytes[bit / 8]) ^ (1U << (bit % 8)));
        Disk::instance().load(book);
        const auto store = openBook(OpenMode::ReadOnly);
        if (!store) {
            ++refusals;
            QVERIFY(!store.error().what.empty());
            continue;
        }
        const auto report = check(*store);
        if (!report || !report->isClean()) {
            ++told;
            continue;
        }
        const auto now = picture(*store);
        if (!now) {
            ++told;  // an error is no silence
            continue;
        }
        QVERIFY2(*now == forger.truePicture(), firstDifference(*now, forger.truePicture(), bit).c_str());
        ++without;
    }
    qInfo("%d flips anywhere: %d refused at opening, %d told by check, %d without effect", trials, refusals, told, without);
    QVERIFY(told > trials / 25);  // most of a small book is empty page
}

void TamperTest::aChainCutAtItsEndCannotBeSeenFromOneBook()
{
    // docs/record-format.md, "What the seals cannot show": the seals alone are silent, the derived tables tell while they are left alone
    Forger forger;
    const Record& last = forger.records().back();
    QVERIFY(forger.isLastOfChain(last));
    forger.run("DELETE FROM record WHERE row = 18");
    QVERIFY(Forger::audit().isClean());
    { Store store = openBook(OpenMode::ReadWrite).value(); QVERIFY(store.take({&last, 1})->taken == 1); }  // a second copy brings it back
    Disk::instance().load(forger.book());
    forger.run("DELETE FROM record WHERE subject = '" + last.subject + "'");
    const auto report = Forger::audit();
    bool orphan = false;
    for (const AuditLine& line : report.lines)
        orphan = orphan || (line.finding == Finding::Derived && line.what.find(last.subject) != std::string::npos);
    QVERIFY2(orphan, all(report).c_str());
}

QTEST_GUILESS_MAIN(TamperTest)
#include "tamper_test.moc"
