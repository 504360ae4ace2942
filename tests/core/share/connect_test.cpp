#include "share/connect.h"
#include "share/job_list.h"

#include <QtTest>
#include <atomic>
#include <dlfcn.h>
#include <netdb.h>
#include <semaphore>

using namespace groundcount;

namespace {

std::atomic<bool> g_isLookingUp = false, g_isPlayed = false;
std::counting_semaphore<8> g_answer{0};

}  // namespace

/// The system's look-up of a name, in the test's hands: a name of the form slow.* has no answer until the test gives one.
extern "C" int getaddrinfo(const char* node, const char* service, const addrinfo* hints, addrinfo** found)
{
    using Lookup = int (*)(const char*, const char*, const addrinfo*, addrinfo**);
    if (g_isPlayed && node && QByteArray(node).startsWith("slow.")) {
        g_isLookingUp = true;
        g_answer.acquire();
        g_isLookingUp = false;
        return EAI_NONAME;
    }
    static const auto kReal = reinterpret_cast<Lookup>(dlsym(RTLD_NEXT, "getaddrinfo"));
    return kReal(node, service, hints, found);
}

/// The beginning of a connection: it can be stopped while the server's name is looked up.
class ConnectTest : public QObject {
    Q_OBJECT
    static constexpr const char* kSlow = "postgresql://phone@slow.example/job?sslmode=verify-full";

private slots:
    void init() { g_isPlayed = true; }
    void cleanup() { g_isPlayed = false; }

    void stopsWhileTheNameIsLookedUp()
    {
        const auto raw = share::connectTo(kSlow, [] { return !g_isLookingUp; });
        QVERIFY(!raw);
        QCOMPARE(QString::fromStdString(raw.error().what), QString("The exchange with the server was stopped."));
        QVERIFY(g_isLookingUp);  // the look-up still waits, nobody waits for it
        g_answer.release();
        QTRY_VERIFY(!g_isLookingUp);
    }
    void everyStatementOfAnExchangeStopsThere()
    {
        const auto jobs = share::jobsOn(kSlow, [] { return !g_isLookingUp; });
        QVERIFY(!jobs && jobs.error().what.find("stopped") != std::string::npos);
        QVERIFY(g_isLookingUp);
        g_answer.release();
        QTRY_VERIFY(!g_isLookingUp);
    }
    void saysWhatTheLookUpSaid()
    {
        g_answer.release();
        const auto raw = share::connectTo(kSlow, {});
        QVERIFY(!raw);
        QVERIFY2(raw.error().what.starts_with("The server cannot be reached: could not translate host name"), raw.error().what.c_str());
    }
    void triesTheNextNameOfAList()
    {
        g_answer.release();
        const auto raw = share::connectTo("host=slow.example,/nowhere/at/all dbname=job", {});
        QVERIFY(!raw);
        QVERIFY2(raw.error().what.starts_with("The server cannot be reached: "), raw.error().what.c_str());
    }
};

QTEST_GUILESS_MAIN(ConnectTest)
#include "connect_test.moc"
