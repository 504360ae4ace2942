#include "core/book/meaning.h"
#include "core/share/network.h"
#include "core/share/shared_job.h"

#include "book/audit.h"
#include "share/exchange.h"

#include <QtTest>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <random>
#include <thread>

using namespace sample;
using groundcount::Fault;
using groundcount::Result;
using groundcount::share::pull;
using groundcount::share::push;

namespace {

constexpr const char* kName = "db.example";
constexpr double kEnough = 60;  // seconds: twice what a silent connection may live

std::string g_noNetwork;  ///< why there is none

double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

bool did(const QString& program, const QStringList& words)
{
    QProcess process;
    process.start(program, words);
    return process.waitForFinished() && process.exitCode() == 0;
}

/// An authority of the test's own, and what a server needs to prove its name with it.
struct Proof {
    QTemporaryDir folder;
    QString file(const char* name) const { return folder.filePath(name); }

    bool make() const
    {
        QFile names(file("names"));
        return names.open(QIODevice::WriteOnly) && names.write("subjectAltName=DNS:db.example\n") > 0 && names.flush() && authority("root") && authority("stranger")
               && did("openssl", {"req", "-new", "-newkey", "rsa:2048", "-nodes", "-subj", "/CN=db.example", "-keyout", file("server.key"), "-out", file("server.csr")})
               && did("openssl", {"x509", "-req", "-in", file("server.csr"), "-CA", file("root.crt"), "-CAkey", file("root.key"), "-CAcreateserial", "-days", "2",
                                  "-extfile", file("names"), "-out", file("server.crt")});
    }
    bool authority(const QString& name) const
    {
        return did("openssl", {"req", "-x509", "-newkey", "rsa:2048", "-nodes", "-subj", "/CN=" + name, "-days", "2", "-keyout", folder.filePath(name + ".key"),
                               "-out", folder.filePath(name + ".crt")});
    }

    /// As docs/shared-server.md says: encrypted and with a password, or not at all.
    bool furnish(const QString& data, const QString& owner) const
    {
        QFile rules(data + "/pg_hba.conf");
        if (!rules.open(QIODevice::Append) || rules.write("hostssl all all 192.0.2.0/24 scram-sha-256\nhostnossl all all all reject\n") < 0)
            return false;
        for (const char* name : {"server.crt", "server.key"}) {
            const QString to = data + "/" + name;
            if (!QFile::copy(file(name), to) || !QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner))
                return false;
            if (!owner.isEmpty() && !did("chown", {owner, to}))
                return false;
        }
        return true;
    }
};

std::vector<Entry> notes(int from, int count)
{
    std::vector<Entry> all;
    for (int i = 0; i < count; ++i)
        all.push_back(entry("note", from + i, {{"text", std::string(200, 'x') + std::to_string(i)}}, i));
    return all;
}

}  // namespace

/// A network that is really cut, between two namespaces of the kernel.
class NetworkCutTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void cleanup();
    void believesOnlyAServerThatProvesItsName();
    void answersThatAreLostLoseAndDoubleNothing();
    void aCutCableEndsByItselfAndHoldsUpNobody();
    void cleanupTestCase();

private:
    std::string address(const char* login, const QString& root = "root.crt", const char* host = kName) const
    {
        return std::string("host=") + host + " hostaddr=" + Network::kFar + " dbname=postgres user=" + login + " sslmode=verify-full sslrootcert="
               + m_proof.folder.filePath(root).toStdString() + " passfile=" + m_proof.file("passwords").toStdString();
    }

    Network m_network;
    Proof m_proof;
    std::unique_ptr<Postgres> m_server;
    std::unique_ptr<SharedJob> m_job;
};

void NetworkCutTest::initTestCase()
{
    const std::string why = g_noNetwork.empty() ? m_network.lay() : g_noNetwork;
    if (!why.empty())
        QSKIP(("Nothing of a cut network is tested: " + why).c_str());
    QVERIFY(m_proof.make());
    QFile passwords(m_proof.file("passwords"));
    QVERIFY(passwords.open(QIODevice::WriteOnly) && passwords.write("*:*:*:*:a word\n") > 0 && passwords.flush());
    QVERIFY(passwords.setPermissions(QFile::ReadOwner | QFile::WriteOwner));
    m_server = std::make_unique<Postgres>(Postgres::Place{m_network.far(), {"listen_addresses=192.0.2.2", "ssl=on"}}, [this](const QString& data, const QString& owner) {
        if (!m_proof.furnish(data, owner))
            qFatal("The server's folder could not be furnished.");
    });
    for (const char* login : {"phone0", "phone1", "phone2"})
        QCOMPARE(m_server->ask("boss", std::string("CREATE ROLE ") + login + " LOGIN PASSWORD 'a word'"), std::string());
}

void NetworkCutTest::init()
{
    QCOMPARE(begunAnew(*m_server), std::string());
    m_job = std::make_unique<SharedJob>(*m_server, 3);
}

void NetworkCutTest::cleanup()
{
    m_job.reset();
}

void NetworkCutTest::cleanupTestCase()
{
    m_server.reset();  // before its network goes
}

void NetworkCutTest::believesOnlyAServerThatProvesItsName()
{
    const auto on = [](std::size_t) { return true; };
    const auto sound = push(m_job->office, address("phone0"), on);
    QVERIFY2(sound, sound ? "" : sound.error().what.c_str());
    QCOMPARE(sound->sent, setup().size());
    for (const std::string& wrong : {address("phone0", "stranger.crt"), address("phone0", "root.crt", "other.example")}) {
        const auto open = push(m_job->office, wrong, on);
        QVERIFY(!open && open.error().fault == Fault::Unavailable);
        QVERIFY2(open.error().what.find("certificate") != std::string::npos, open.error().what.c_str());
    }
}

/// Answers are lost at random moments, so that the server has done what the device does not know; the person stops it and tries again.
void NetworkCutTest::answersThatAreLostLoseAndDoubleNothing()
{
    QVERIFY(m_job->office.sealAll(notes(1000, 4000)));
    Store phone = m_job->bench.make("phone", 2);
    std::mt19937 random(11);
    double slowest = 0;
    int stopped = 0;
    auto whole = setup().size() + 4000;
    const auto disturbed = [&](const auto& exchange) {
        std::atomic<bool> isSilent{false}, goesOn{true};
        double asked = 0;
        std::thread storm([&] {
            std::this_thread::sleep_for(std::chrono::milliseconds(random() % 120));
            isSilent = m_network.silence();
            std::this_thread::sleep_for(std::chrono::milliseconds(150));
            asked = now();
            goesOn = false;
        });
        const bool ended = exchange([&] { return goesOn.load(); });
        const double returned = now();
        storm.join();
        if (returned > asked)
            slowest = std::max(slowest, returned - asked);
        stopped += ended;
        return isSilent && m_network.speak();
    };
    const auto on = [](std::size_t) { return true; };
    // A fast machine is through before its network falls silent: then there is more to exchange, until enough were stopped.
    constexpr int kRounds = 10, kMostRounds = 60, kMore = 2000;
    for (int round = 0; round < kRounds || (stopped <= 5 && round < kMostRounds); ++round) {
        if (round >= kRounds) {
            QVERIFY(m_job->office.sealAll(notes(1000 + static_cast<int>(whole), kMore)));
            whole += kMore;
        }
        QVERIFY(disturbed([&](const auto& patience) {
            const auto pushed = push(m_job->office, address("phone0"), on, patience);
            return pushed && pushed->stopped;
        }));
        QVERIFY(disturbed([&](const auto& patience) {
            const auto pulled = pull(phone, address("phone1"), m_job->book, on, patience);
            return pulled && pulled->stopped;
        }));
    }
    QVERIFY(push(m_job->office, address("phone0"), on));
    const auto last = pull(phone, address("phone1"), m_job->book, on);
    QVERIFY2(last, last ? "" : last.error().what.c_str());
    QVERIFY(last->refused.empty() && last->whole);
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(whole));
    QCOMPARE(phone.records({})->size(), whole);
    QCOMPARE(meaning(phone), meaning(m_job->office));
    QVERIFY(check(phone)->isClean());
    qInfo("%d exchanges were stopped in a silent network; from the stop to the return %.0f ms at most", stopped, slowest * 1e3);
    QVERIFY(stopped > 5);
    QVERIFY(slowest < 5);  // at once, and not when the network says so
}

/// Nobody stops it: the device gives up by itself, and so does the server, whose job would stay locked for everybody else.
void NetworkCutTest::aCutCableEndsByItselfAndHoldsUpNobody()
{
    const auto on = [](std::size_t) { return true; };
    QVERIFY(m_job->office.sealAll(notes(1000, 3000)));
    QVERIFY(push(m_job->office, address("phone0"), on));
    QVERIFY(m_job->office.sealAll(notes(5000, 3000)));
    Store phone = m_job->bench.make("phone", 2);
    std::atomic<int> sent{0}, taken{0};
    std::atomic<bool> isCut{false}, isHeld{false};
    double pushEnded = 0, pullEnded = 0;
    Result<groundcount::share::Pushed> pushed = groundcount::share::Pushed{};
    Result<BundleReport> pulled = BundleReport{};
    std::thread sender([&] {
        pushed = push(m_job->office, address("phone0"), [&](std::size_t) {
            for (++sent; sent > 1 && !isHeld;)
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            return true;
        });
        pushEnded = now();
    });
    std::thread taker([&] {
        pulled = pull(phone, address("phone1"), m_job->book, [&](std::size_t) {
            for (++taken; taken > 2 && !isCut;)
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            return true;
        });
        pullEnded = now();
    });
    while (sent < 2 || taken < 3)
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    // the push waits inside its transaction for the job's row, the cable is cut, then it gets the row: locked by a device out of reach
    PGconn* holder = PQconnectdb(m_server->address("boss").c_str());
    PQclear(PQexec(holder, "BEGIN"));
    PQclear(PQexec(holder, "SELECT last_seq FROM groundcount.project FOR UPDATE"));
    isHeld = true;
    QTRY_COMPARE(m_server->ask("boss", "SELECT count(*) FROM pg_stat_activity WHERE usename = 'phone0' AND wait_event_type = 'Lock'"), std::string("1"));
    isCut = m_network.cut();
    QVERIFY(isCut);
    const double cut = now();
    PQclear(PQexec(holder, "COMMIT"));
    PQfinish(holder);
    QTRY_COMPARE(m_server->ask("boss", "SELECT count(*) FROM pg_stat_activity WHERE usename = 'phone0' AND state = 'idle in transaction'"), std::string("1"));
    Store third = m_job->bench.make("third", 3);
    const auto other = pull(third, m_server->address("phone2"), m_job->book, on);  // another way to the server
    QVERIFY(other && third.sealAll(notes(9000, 1)));
    const auto through = push(third, m_server->address("phone2"), on);
    const double passed = now() - cut;
    sender.join();
    taker.join();
    qInfo("after the cut: push gave up after %.0f s, pull after %.0f s; another device was through after %.0f s", pushEnded - cut, pullEnded - cut, passed);
    QVERIFY(through && through->sent == 1);
    QVERIFY(passed < kEnough && pushEnded - cut < kEnough && pullEnded - cut < kEnough);
    QVERIFY(!pushed && pushed.error().fault == Fault::Unavailable);
    QVERIFY(!pulled && pulled.error().fault == Fault::Unavailable);
    const double begun = now();
    const auto refused = push(m_job->office, address("phone0"), on);
    QVERIFY(!refused && now() - begun < kEnough);
    QVERIFY2(refused.error().what.find("cannot be reached") != std::string::npos, refused.error().what.c_str());
    QVERIFY(m_network.join());
    const auto whole = setup().size() + 6001;
    QTRY_VERIFY_WITH_TIMEOUT(push(m_job->office, address("phone0"), on), 20'000);
    for (Store* const book : {&m_job->office, &phone, &third}) {
        const auto last = pull(*book, address("phone1"), m_job->book, on);
        QVERIFY2(last && last->refused.empty(), last ? "" : last.error().what.c_str());
        QCOMPARE(book->records({})->size(), whole);
        QCOMPARE(meaning(*book), meaning(m_job->office));
    }
    QCOMPARE(m_server->ask("boss", "SELECT count(*) FROM groundcount.sealed"), std::to_string(whole));
}

int main(int argc, char** argv)
{
    g_noNetwork = Network::leave();  // before there is a second thread
    QCoreApplication app(argc, argv);
    NetworkCutTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "network_cut_test.moc"
