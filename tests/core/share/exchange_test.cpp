#include "core/book/meaning.h"
#include "core/share/distributed.h"
#include "core/share/shared_job.h"

#include "book/audit.h"
#include "book/bundle.h"
#include "book/canonical.h"
#include "book/hash.h"
#include "share/exchange.h"
#include "share/job_list.h"
#include "share/server.h"

#include <QtTest>
#include <algorithm>
#include <atomic>
#include <random>
#include <thread>

using namespace sample;
using groundcount::share::admit;
using groundcount::share::prepareServer;
using groundcount::share::pull;
using groundcount::share::push;

namespace {

const auto on = [](std::size_t) { return true; };

std::vector<Entry> notes(int count)
{
    std::vector<Entry> all;
    for (int i = 0; i < count; ++i)
        all.push_back(entry("note", 1000 + i, {{"text", std::to_string(i)}}, i));
    return all;
}

}  // namespace

class ExchangeTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void pushesAndPullsWhole();
    void repeatingChangesNothing();
    void stoppedExchangesGoOn();
    void aServerOfAnEarlierVersionIsTaken();
    void aTextThatSomebodyPutMeanwhileIsKnown();
    void manyDevicesWithDisconnectsEndEqual();
    void aServerKilledInMidTransactionLosesNothing();
    void aLiarsTextsAreRefusedAndNamed();
    void theServersRulesHoldAgainstAMember();
    void aTextPutBehindTheMarkIsFound();
    void aLiarAtTheEndsOfTheNumbersStopsNobody();
    void theServerComesBackFromTheDevices();
    void refusesStrangersAndUnverifiedServers();
    void usesNothingThatADistributedServerLacks();

private:
    std::unique_ptr<Postgres> m_server;
};

void ExchangeTest::init()
{
    if (!m_server)
        m_server = std::make_unique<Postgres>();
    QCOMPARE(begunAnew(*m_server), std::string());
}

void ExchangeTest::pushesAndPullsWhole()
{
    SharedJob job(*m_server, 2);
    std::string photo(20'000, '\0');
    for (std::size_t i = 0; i < photo.size(); ++i)
        photo[i] = static_cast<char>(i * 7);
    const std::string blob = job.office.putBlob(photo).value();
    QVERIFY(job.office.seal(entry("photo", 100, {{"blob", blob}, {"media_type", "image/png"}}, 5)));
    const auto pushed = push(job.office, m_server->address("phone0"), on);
    QVERIFY2(pushed, pushed ? "" : pushed.error().what.c_str());
    QCOMPARE(pushed->sent, setup().size() + 2);
    Store phone = job.bench.make("phone", 2);
    const auto pulled = pull(phone, m_server->address("phone1"), job.book, on);
    QVERIFY2(pulled, pulled ? "" : pulled.error().what.c_str());
    QCOMPARE(pulled->taken, setup().size() + 1);
    QCOMPARE(pulled->blobs, std::size_t(1));
    QVERIFY(pulled->refused.empty() && pulled->whole);
    QCOMPARE(meaning(phone), meaning(job.office));
    QCOMPARE(phone.blob(blob).value(), photo);
    QVERIFY(check(phone)->isClean());
}

void ExchangeTest::repeatingChangesNothing()
{
    SharedJob job(*m_server, 2);
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    QCOMPARE(push(job.office, m_server->address("phone0"), on)->sent, std::size_t(0));
    Store phone = job.bench.make("phone", 2);
    QVERIFY(pull(phone, m_server->address("phone1"), job.book, on));
    const auto again = pull(phone, m_server->address("phone1"), "", on).value();
    QCOMPARE(again.taken + again.known, std::size_t(0));
    QCOMPARE(push(phone, m_server->address("phone1"), on)->sent, std::size_t(0));
    QVERIFY(job.office.handOver(job.bench.at("copy")));  // a copy without marks sends nothing twice either
    Store copy = Store::open(job.bench.at("copy"), OpenMode::ReadWrite, key(1)).value();
    const auto replayed = push(copy, m_server->address("phone1"), on).value();
    QCOMPARE(replayed.sent, std::size_t(0));
    QCOMPARE(replayed.known, setup().size());
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(setup().size()));
}

void ExchangeTest::stoppedExchangesGoOn()
{
    SharedJob job(*m_server, 2);
    QVERIFY(job.office.sealAll(notes(1300)));
    const auto first = push(job.office, m_server->address("phone0"), [](std::size_t) { return false; }).value();
    QVERIFY(first.stopped);
    QCOMPARE(first.sent, std::size_t(250));
    QCOMPARE(push(job.office, m_server->address("phone0"), on)->sent, setup().size() + 1050);
    Store phone = job.bench.make("phone", 2);
    std::size_t taken = 0;
    bool isWhole = false;
    for (int asked = 0; !isWhole; ++asked) {  // stopped at the first question, at the second, ...
        QVERIFY(asked < 100);
        int left = asked;
        const auto part = pull(phone, m_server->address("phone1"), taken == 0 ? job.book : "", [&left](std::size_t) { return left-- > 0; }).value();
        QVERIFY(part.stopped != part.whole && part.known == 0 && part.refused.empty());
        taken += part.taken;
        isWhole = part.whole;
        QVERIFY(check(phone)->isClean());
    }
    QCOMPARE(taken, setup().size() + 1300);
    QCOMPARE(meaning(phone), meaning(job.office));
}

void ExchangeTest::aServerOfAnEarlierVersionIsTaken()
{
    SharedJob job(*m_server, 2);
    QCOMPARE(m_server->ask("boss", "ALTER TABLE groundcount.sealed ADD FOREIGN KEY (project_id) REFERENCES groundcount.project"), std::string());
    const auto keys = [this] { return m_server->ask("boss", "SELECT count(*) FROM pg_constraint WHERE connamespace = 'groundcount'::regnamespace AND contype = 'f'"); };
    QCOMPARE(keys(), std::string("1"));
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    QVERIFY(prepareServer(m_server->address("boss")));
    QCOMPARE(keys(), std::string("0"));  // decision 0014
    Store phone = job.bench.make("phone", 2);
    QCOMPARE(pull(phone, m_server->address("phone1"), job.book, on)->taken, setup().size());
    QVERIFY(phone.seal(entry("note", 400, {{"text", "after"}}, 5)));
    QCOMPARE(push(phone, m_server->address("phone1"), on)->sent, std::size_t(1));
    // without the key, too, nobody adds to a job that is not there
    const std::string put = "INSERT INTO groundcount.sealed(project_id, text_hash, seq, text) VALUES('" + id(88) + "', sha256('x'), 1, 'x')";
    QCOMPARE(m_server->ask("phone1", put), std::string("error 42704"));  // there is no role of its members
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed WHERE project_id = '" + id(88) + "'"), std::string("0"));
}

void ExchangeTest::aTextThatSomebodyPutMeanwhileIsKnown()
{
    SharedJob job(*m_server, 2);
    QVERIFY(job.office.sealAll(notes(600)));
    // a copy of the whole book is sent by another device between two parts of this push, which by then no longer asks what is there
    QVERIFY(job.office.handOver(job.bench.at("copy")));
    Store copy = Store::open(job.bench.at("copy"), OpenMode::ReadWrite, key(1)).value();
    bool isSent = false;
    const auto pushed = push(job.office, m_server->address("phone0"), [&](std::size_t) {
        if (!std::exchange(isSent, true) && !push(copy, m_server->address("phone1"), on))
            isSent = false;
        return true;
    });
    QVERIFY2(pushed, pushed ? "" : pushed.error().what.c_str());
    QVERIFY(isSent);
    QCOMPARE(pushed->sent, std::size_t(250));
    QCOMPARE(pushed->known, setup().size() + 350);
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(setup().size() + 600));
}

void ExchangeTest::manyDevicesWithDisconnectsEndEqual()
{
    constexpr int kDevices = 8, kRounds = 12;
    SharedJob job(*m_server, kDevices);
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    std::atomic<int> cut{0}, sealed{0};
    std::atomic<bool> busy{true};
    // connections are cut at random while the devices work
    std::thread storm([&] {
        std::mt19937 random(5);
        while (busy) {
            std::this_thread::sleep_for(std::chrono::milliseconds(3 + random() % 25));
            const std::string cuts = m_server->ask("boss", "SELECT count(pg_terminate_backend(pid)) FROM (SELECT pid FROM pg_stat_activity"
                                                           " WHERE usename LIKE 'phone%' ORDER BY random() LIMIT 2) AS chosen");
            if (cuts.starts_with("error"))
                qFatal("%s", cuts.c_str());
            cut += std::atoi(cuts.c_str());
        }
    });
    const auto device = [&](int n) {
        std::mt19937 random(static_cast<unsigned>(100 + n));
        const std::string address = m_server->address(loginOf(n).c_str());
        Store book = Store::open(job.bench.at(("phone" + std::to_string(n)).c_str()), OpenMode::Create, key(static_cast<unsigned char>(20 + n))).value();
        while (!pull(book, address, job.book, on) || book.lastRow().value() == 0)
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        for (int round = 0; round < kRounds; ++round) {
            // each clock is off by some hours of its own
            for (unsigned i = 0; i <= random() % 4; ++i) {
                if (!book.seal(entry("note", 2000 + n * 1000 + round * 10 + static_cast<int>(i), {{"text", "a"}}, n * 3600 + round)))
                    qFatal("not sealed");
                ++sealed;
            }
            std::ignore = random() % 2 ? push(book, address, on).has_value() : pull(book, address, "", on).has_value();
        }
        while (!push(book, address, on)) {}
    };
    std::vector<std::thread> devices;
    for (int n = 0; n < kDevices; ++n)
        devices.emplace_back(device, n);
    for (std::thread& one : devices)
        one.join();
    busy = false;
    storm.join();
    std::string expected;
    for (int n = 0; n < kDevices; ++n) {
        Store book = Store::open(job.bench.at(("phone" + std::to_string(n)).c_str()), OpenMode::ReadWrite, key(static_cast<unsigned char>(20 + n))).value();
        const auto last = pull(book, m_server->address(loginOf(n).c_str()), "", on);
        QVERIFY2(last && last->refused.empty(), last ? "" : last.error().what.c_str());
        QCOMPARE(book.records({})->size(), setup().size() + static_cast<std::size_t>(sealed.load()));
        if (n == 0)
            expected = meaning(book);
        QVERIFY(meaning(book) == expected);
        if (n == 0)
            QVERIFY(check(book)->isClean());
    }
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(static_cast<int>(setup().size()) + sealed.load()));
    qInfo("%d devices, %d records, %d connections cut", kDevices, sealed.load(), cut.load());
    QVERIFY(cut > 5);
}

void ExchangeTest::aServerKilledInMidTransactionLosesNothing()
{
    SharedJob job(*m_server, 2);
    std::vector<Entry> notes;
    for (int i = 0; i < 3000; ++i)
        notes.push_back(entry("note", 1000 + i, {{"text", std::to_string(i)}}, i));
    QVERIFY(job.office.sealAll(notes));
    int failed = 0;
    for (int kill = 0; kill < 3; ++kill) {
        std::thread killer([&] {
            std::this_thread::sleep_for(std::chrono::milliseconds(15 + 40 * kill));
            m_server->stop("immediate");  // as a crash: no checkpoint, open transactions are gone
        });
        failed += !push(job.office, m_server->address("phone0"), on);
        killer.join();
        const auto down = push(job.office, m_server->address("phone0"), on);
        QVERIFY(!down);
        QCOMPARE(down.error().fault, groundcount::Fault::Unavailable);
        QVERIFY2(down.error().what.find("cannot be reached") != std::string::npos, down.error().what.c_str());
        m_server->start();
    }
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    Store phone = job.bench.make("phone", 2);
    QVERIFY(pull(phone, m_server->address("phone1"), job.book, on)->refused.empty());
    QCOMPARE(meaning(phone), meaning(job.office));
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(phone.lastRow().value()));
    qInfo("%d of 3 pushes were in flight when the server died", failed);
}

void ExchangeTest::aLiarsTextsAreRefusedAndNamed()
{
    SharedJob job(*m_server, 3);
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    const auto put = [&](const std::string& text, const std::string& project) {
        return putAt(*m_server, "phone1", project, "(SELECT 1 + max(seq) FROM groundcount.sealed)", text);
    };
    Record forged = job.office.records({}).value()[3];
    forged.body["serial"] = "9999";  // the content no longer gives its hash
    Record resigned = sealEntry(entry("note", 300, {{"text", "x"}}, 5), key(1), 50, forged.prev.empty() ? std::string(64, 'a') : forged.prev, job.book).value();
    resigned.signature = key(66).sign(resigned.hash).value();
    const Record foreign = sealEntry(entry("note", 301, {{"text", "x"}}, 5), key(66), 1, "", id(77)).value();
    const std::string replayed = textOfRecord(job.office.records({}).value()[2]).value();
    QCOMPARE(put(textOfRecord(forged).value(), job.book), std::string());
    QCOMPARE(put(textOfRecord(resigned).value(), job.book), std::string());
    QCOMPARE(put(textOfRecord(foreign).value(), job.book), std::string());
    QCOMPARE(put("{\"record\":", job.book), std::string());
    QCOMPARE(put(replayed, job.book), std::string("error 23505"));  // unique violation
    QCOMPARE(put("{\"blob\":\"" + std::string(64, 'a') + "\",\"content\":\"AAAA\"}", job.book), std::string());
    QCOMPARE(put("{\"end\":{\"blobs\":0,\"records\":0}}", job.book), std::string());
    QVERIFY(job.office.seal(entry("note", 302, {{"text", "behind it"}}, 6)));
    QVERIFY(job.office.putBlob("a photo behind it"));
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    Store phone = job.bench.make("phone", 2);
    const auto pulled = pull(phone, m_server->address("phone2"), job.book, on).value();
    QCOMPARE(pulled.taken, setup().size() + 1);
    QCOMPARE(pulled.blobs, std::size_t(1));
    QCOMPARE(pulled.refused.size(), std::size_t(6));
    std::string all;
    for (const std::string& line : pulled.refused)
        all += line + "\n";
    for (const char* says : {"no longer gives its hash", "signature is not that device's", "of another field book", "is not JSON", "content does not give its hash", "a closing line"})
        QVERIFY2(all.find(says) != std::string::npos, (says + (": " + all)).c_str());
    QCOMPARE(meaning(phone), meaning(job.office));
    QVERIFY(check(phone)->isClean());
    QVERIFY(pull(phone, m_server->address("phone2"), "", on)->refused.empty());  // told once
}

void ExchangeTest::theServersRulesHoldAgainstAMember()
{
    SharedJob job(*m_server, 2);
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    std::ignore = m_server->ask("boss", "CREATE ROLE stranger LOGIN");
    std::ignore = m_server->ask("boss", "GRANT groundcount_device TO stranger");
    const std::string other = id(77);
    QVERIFY(admit(m_server->address("boss"), other, "stranger"));
    const std::string insert = "INSERT INTO groundcount.sealed(project_id, text_hash, seq, text) VALUES('";
    const std::string good = "', sha256('x'), 99, 'x')";
    // a member of another job sees nothing of this one and puts nothing into it
    QCOMPARE(m_server->ask("stranger", "SELECT count(*) FROM groundcount.sealed"), std::string("0"));
    QCOMPARE(m_server->ask("stranger", "SELECT count(*) FROM groundcount.project"), std::string("1"));
    QCOMPARE(m_server->ask("stranger", insert + job.book + good), std::string("error 42501"));
    QCOMPARE(m_server->ask("stranger", insert + other + good), std::string());
    // a member adds; it changes and removes nothing, names no other sender, and a text must give its name
    QCOMPARE(m_server->ask("phone0", "UPDATE groundcount.sealed SET text = 'y'"), std::string("error 42501"));
    QCOMPARE(m_server->ask("phone0", "DELETE FROM groundcount.sealed"), std::string("error 42501"));
    QCOMPARE(m_server->ask("phone0", "TRUNCATE groundcount.sealed"), std::string("error 42501"));
    QCOMPARE(m_server->ask("phone0", "DROP TABLE groundcount.sealed"), std::string("error 42501"));
    QCOMPARE(m_server->ask("phone0", insert + job.book + "', sha256('y'), 98, 'x')"), std::string("error 23514"));
    QCOMPARE(m_server->ask("phone0", "INSERT INTO groundcount.sealed(project_id, text_hash, seq, text, received_by) VALUES('" + job.book +
                                         "', sha256('x'), 99, 'x', 'phone1')"), std::string("error 42501"));
    // a counter that a member set back does no harm
    QCOMPARE(m_server->ask("phone0", "UPDATE groundcount.project SET last_seq = 0"), std::string());
    QVERIFY(job.office.seal(entry("note", 400, {{"text", "after"}}, 7)));
    QCOMPARE(push(job.office, m_server->address("phone0"), on)->sent, std::size_t(1));
    Store phone = job.bench.make("phone", 2);
    QCOMPARE(pull(phone, m_server->address("phone1"), job.book, on)->taken, setup().size() + 1);
}

void ExchangeTest::aTextPutBehindTheMarkIsFound()
{
    SharedJob job(*m_server, 2);
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    Store phone = job.bench.make("phone", 2);
    QVERIFY(pull(phone, m_server->address("phone1"), job.book, on));
    const Record late = job.office.seal(entry("note", 400, {{"text", "late"}}, 7)).value();
    QCOMPARE(putAt(*m_server, "phone0", job.book, "-5", textOfRecord(late).value()), std::string());
    QCOMPARE(pull(phone, m_server->address("phone1"), "", on)->taken, std::size_t(1));
    QCOMPARE(meaning(phone), meaning(job.office));
    const std::string last = textOfRecord(job.office.seal(entry("note", 401, {{"text", "the last number there is"}}, 8)).value()).value();
    QCOMPARE(putAt(*m_server, "phone0", job.book, "9223372036854775807", last), std::string());
    QCOMPARE(pull(phone, m_server->address("phone1"), "", on)->taken, std::size_t(1));
    QCOMPARE(meaning(phone), meaning(job.office));
}

void ExchangeTest::aLiarAtTheEndsOfTheNumbersStopsNobody()
{
    SharedJob job(*m_server, 3);
    const std::string office = m_server->address("phone0"), reader = m_server->address("phone1");
    Store phone = job.bench.make("phone", 2);
    QVERIFY(push(job.office, office, on));
    int number = 500;
    // after each lie a record goes from the office to the phone, by itself
    const auto goesOn = [&] {
        if (!job.office.seal(entry("note", number, {{"text", "after a lie"}}, number)))
            return false;
        ++number;
        const auto pushed = push(job.office, office, on);
        if (!pushed || pushed->sent != 1) {
            qWarning("push: %s", pushed ? "not one" : pushed.error().what.c_str());
            return false;
        }
        const auto pulled = pull(phone, reader, job.book, on), again = pull(phone, reader, job.book, on);
        if (!pulled || !again || again->taken + again->known + again->refused.size() != 0) {
            qWarning("pull: %s", pulled ? "the same twice" : pulled.error().what.c_str());
            return false;
        }
        return meaning(phone) == meaning(job.office);
    };
    QVERIFY(goesOn());
    for (const char* seq : {"9223372036854775807", "-9223372036854775808", "9223372036854775806", "4611686018427387905", "4611686018427387904", "0", "-1"}) {
        QCOMPARE(putAt(*m_server, "phone2", job.book, seq, std::string("a lie at ") + seq), std::string());
        QVERIFY2(goesOn(), seq);
        QVERIFY2(goesOn(), seq);
    }
    for (const char* counter : {"9223372036854775807", "-9223372036854775808", "4611686018427387904"}) {
        QCOMPARE(m_server->ask("phone2", std::string("UPDATE groundcount.project SET last_seq = ") + counter), std::string());
        QVERIFY2(goesOn(), counter);
        QVERIFY2(goesOn(), counter);
    }
    Store fresh = job.bench.make("fresh", 3);
    QCOMPARE(pull(fresh, reader, job.book, on)->refused.size(), std::size_t(7));
    QCOMPARE(meaning(fresh), meaning(job.office));
    QVERIFY(check(fresh)->isClean());
}

void ExchangeTest::theServerComesBackFromTheDevices()
{
    SharedJob job(*m_server, 2);
    QVERIFY(job.office.putBlob("a photo"));
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    Store phone = job.bench.make("phone", 2);
    QVERIFY(pull(phone, m_server->address("phone1"), job.book, on));
    QVERIFY(phone.seal(entry("note", 400, {{"text", "only here"}}, 7)));
    QVERIFY(job.office.seal(entry("note", 401, {{"text", "only there"}}, 8)));
    QCOMPARE(m_server->ask("boss", "DROP SCHEMA groundcount CASCADE"), std::string());
    QVERIFY(!push(phone, m_server->address("phone1"), on));
    QVERIFY(prepareServer(m_server->address("boss")));
    for (const char* login : {"phone0", "phone1"})
        QVERIFY(admit(m_server->address("boss"), job.book, login));
    QVERIFY(push(phone, m_server->address("phone1"), on));
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    QVERIFY(pull(phone, m_server->address("phone1"), "", on));
    QVERIFY(pull(job.office, m_server->address("phone0"), "", on));
    QCOMPARE(meaning(phone), meaning(job.office));
    Store fresh = job.bench.make("fresh", 3);
    QCOMPARE(pull(fresh, m_server->address("phone0"), job.book, on)->taken, setup().size() + 2);
    QCOMPARE(meaning(fresh), meaning(phone));
}

void ExchangeTest::refusesStrangersAndUnverifiedServers()
{
    SharedJob job(*m_server, 1);
    std::ignore = m_server->ask("boss", "CREATE ROLE nobody_here LOGIN");
    const auto stranger = push(job.office, m_server->address("nobody_here"), on);
    QVERIFY(!stranger);
    QCOMPARE(stranger.error().fault, groundcount::Fault::Refused);
    const auto unknown = admit(m_server->address("boss"), job.book, "no_such_login");
    QVERIFY(!unknown && unknown.error().what.find("no_such_login") != std::string::npos);
    QVERIFY(!admit(m_server->address("boss"), "x'; DROP SCHEMA groundcount", "phone0"));
    Store empty = job.bench.make("empty", 2);
    QVERIFY(!push(empty, m_server->address("phone0"), on));
    QVERIFY(!pull(empty, m_server->address("phone0"), "", on));
    QVERIFY(!pull(job.office, m_server->address("phone0"), id(77), on));
    for (const char* address : {"host=job.example user=a", "host=job.example user=a sslmode=require", "postgresql://a@198.51.100.7/x", "hostaddr=198.51.100.7 sslmode=verify-ca"}) {
        const auto open = push(job.office, address, on);
        QVERIFY(!open);
        QVERIFY2(open.error().what.find("sslmode=verify-full") != std::string::npos, open.error().what.c_str());
    }
    QVERIFY(!push(job.office, "no such = = thing", on));
}

void ExchangeTest::usesNothingThatADistributedServerLacks()
{
    for (const char* sql : {"ALTER SYSTEM SET log_statement = 'all'", "ALTER SYSTEM SET log_parameter_max_length = 0", "SELECT pg_reload_conf()"})
        QVERIFY(!m_server->ask("boss", sql).starts_with("error"));
    QTRY_COMPARE(m_server->ask("boss", "SHOW log_statement"), std::string("all"));
    SharedJob job(*m_server, 2);
    QVERIFY(job.office.putBlob("a photo"));
    QVERIFY(push(job.office, m_server->address("phone0"), on));
    Store phone = job.bench.make("phone", 2);
    QVERIFY(pull(phone, m_server->address("phone1"), job.book, on));
    QCOMPARE(putAt(*m_server, "phone1", job.book, "9223372036854775807", "a lie"), std::string());
    QVERIFY(job.office.seal(entry("note", 400, {{"text", "after it"}}, 7)) && push(job.office, m_server->address("phone0"), on));
    QCOMPARE(groundcount::share::jobsOn(m_server->address("phone1"))->size(), std::size_t(1));
    const QStringList statements = distributed::statementsIn(m_server->logFile());
    qInfo("%lld different statements on the job's tables", static_cast<long long>(statements.size()));
    QVERIFY(statements.size() >= 10);
    for (const char* part : {"INSERT INTO groundcount.sealed", "UPDATE groundcount.project", "FOR UPDATE", "max(seq)", "ANY($2)", "least(min(seq)", "lead(seq", "LEFT JOIN groundcount.sealed"})
        QVERIFY2(!statements.filter(part).isEmpty(), part);
    for (const QString& sql : statements)
        QVERIFY2(distributed::faultOf(sql).isEmpty(), qPrintable(distributed::faultOf(sql) + ": " + sql));
    for (const auto& [what, sql] : distributed::kRules)
        QVERIFY2(m_server->ask("boss", sql) == "0", what);
    // what breaks a rule is seen
    QVERIFY(!distributed::faultOf("SELECT (SELECT max(seq) FROM groundcount.sealed) FROM groundcount.project WHERE project_id = $1").isEmpty());
    QVERIFY(!distributed::faultOf("SELECT count(*) FROM groundcount.sealed").isEmpty());
    for (const char* sql : {"DROP POLICY reads ON groundcount.sealed",
                            "CREATE POLICY reads ON groundcount.sealed USING (project_id IN (SELECT project_id FROM groundcount.project))",
                            "CREATE FUNCTION groundcount.f() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN RETURN NEW; END'",
                            "CREATE TRIGGER t BEFORE INSERT ON groundcount.sealed FOR EACH ROW EXECUTE FUNCTION groundcount.f()",
                            "GRANT SELECT(seq) ON groundcount.sealed TO phone0", "CREATE SEQUENCE groundcount.s",
                            "ALTER TABLE groundcount.sealed ADD COLUMN n bigint GENERATED ALWAYS AS IDENTITY UNIQUE"})
        QCOMPARE(m_server->ask("boss", sql), std::string());
    for (const auto& [what, sql] : distributed::kRules)
        QVERIFY2(m_server->ask("boss", sql) != "0", what);
}

QTEST_GUILESS_MAIN(ExchangeTest)
#include "exchange_test.moc"
