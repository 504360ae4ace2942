// Push and pull against a PostgreSQL of its own, each beside its peer in the same run: push beside batched inserts of the same bytes, pull
// beside a plain COPY of the same bytes and the verification of what came. And how long they leave a waiting person without a sign.
//   exchange_bench [FOLDER [RECORDS]]     FOLDER: where the books are made (default .), RECORDS: default 100000
#include "bench/exchange_peers.h"

#include "book/bundle.h"
#include "book/store.h"
#include "share/exchange.h"
#include "share/server.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>
#include <unistd.h>
#include <vector>

using namespace groundcount;
using namespace groundcount::book;
using peers::now;

namespace {

template <class Value>
auto must(Value&& result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().what.c_str());
        std::exit(1);
    }
    if constexpr (requires { *result; })
        return std::move(*result);
}

std::string id(int group, int number)
{
    char text[40];
    std::snprintf(text, sizeof text, "%08x-%04x-4000-8000-000000000000", static_cast<unsigned>(number), static_cast<unsigned>(group));
    return text;
}

DeviceKey key(unsigned char fill)
{
    std::array<unsigned char, 32> seed{};
    seed.fill(fill);
    return DeviceKey::fromSeed(seed);
}

Entry entry(const char* kind, const std::string& subject, Body body)
{
    Entry e;
    e.kind = kind;
    e.subject = subject;
    e.by = id(4, 1);
    e.at = "2026-06-09T15:41:07.250Z";
    e.offsetMinutes = -300;
    e.body = std::move(body);
    return e;
}

/// Three records make a test here: place, reading, verdict.
void addTest(std::vector<Entry>& into, int n)
{
    const std::string subject = id(1, n);
    into.push_back(entry("test-site", subject, {{"number", std::to_string(n)}, {"gauge", id(5, 1)}, {"lot", id(6, 1)}, {"lift", id(7, 1)},
        {"purpose", "random"}, {"latitude_deg", "32.9012345"}, {"longitude_deg", "-96.9012345"}, {"grid_north_usft", std::to_string(7012345 + n % 999) + ".25"},
        {"grid_east_usft", std::to_string(2512345 + n % 777) + ".50"}, {"station", "1050.5"}, {"offset_ft", "-12.0"}, {"fixes", 20}}));
    into.push_back(entry("reading", subject, {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
        {"wet_density_lb_ft3", "124." + std::to_string(n % 10)}, {"water_content_pct", "14.0"}}));
    into.push_back(entry("verdict", subject, {{"result", n % 9 ? "pass" : "fail"}, {"reasons", Body::array()},
        {"figures", {{"percent_compaction", "97.2"}, {"dry_density_lb_ft3", "109.3"}, {"wet_density_lb_ft3", "124.6"}, {"water_content_pct", "14.0"}}},
        {"rule_set", std::string(64, 'a')}, {"core", "0.1.0"}, {"from", Body::array({std::string(64, 'b')})}}));
}

Store bookOf(const std::string& path, int records)
{
    Store store = must(Store::open(path, OpenMode::Create, key(7)));
    for (int n = 0; n * 3 < records;) {
        std::vector<Entry> entries;
        for (int i = 0; i < 500 && n * 3 < records; ++i)
            addTest(entries, n++);
        must(store.sealAll(entries));
    }
    return store;
}

/// Processor time of this program so far, seconds: unlike time, it says the same on a machine that others load.
double worked()
{
    timespec spent{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) + static_cast<double>(spent.tv_nsec) * 1e-9;
}

/// Processor time of the server's connections that have ended, seconds: what its first process has waited for (proc(5), fields 16 and 17).
double serverWorked(const Postgres& server)
{
    std::this_thread::sleep_for(std::chrono::milliseconds(300));  // until it has seen that one ended
    std::ifstream first((QFileInfo(server.logFile()).path() + "/data/postmaster.pid").toStdString());
    std::string pid, skipped;
    std::getline(first, pid);
    std::ifstream about("/proc/" + pid + "/stat");
    for (int field = 1; field < 16; ++field)
        about >> skipped;
    double user = 0, system = 0;
    about >> user >> system;
    return (user + system) / static_cast<double>(sysconf(_SC_CLK_TCK));
}

/// The longest time between two reports, from the call to the return.
class Gaps {
public:
    KeepOn heard()
    {
        m_last = now();
        return [this](std::size_t) {
            hear();
            return true;
        };
    }
    double longest()
    {
        hear();
        return m_longest;
    }

private:
    void hear()
    {
        const double at = now();
        m_longest = std::max(m_longest, at - m_last);
        m_last = at;
    }
    double m_last = 0, m_longest = 0;
};

/// Longest time from a stop to the return, over stops at different moments. @param made gives the book of a round;
/// @param exchange runs on it until its parameter turns false
template <class Made, class Exchange>
double slowestStop(int times, Made made, Exchange exchange)
{
    double slowest = 0;
    for (int i = 0; i < times; ++i) {
        Store book = made(std::to_string(i));
        std::atomic<bool> goesOn{true};
        double stopped = 0;
        std::thread person([&] {
            std::this_thread::sleep_for(std::chrono::milliseconds(20 + 37 * i));
            stopped = now();
            goesOn = false;
        });
        exchange(book, goesOn);
        const double returned = now();
        person.join();
        if (stopped != 0 && stopped < returned)
            slowest = std::max(slowest, returned - stopped);
    }
    return slowest;
}

}  // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    const std::string folder = std::string(argc > 1 ? argv[1] : ".") + "/exchange-bench";
    const int wanted = argc > 2 ? std::atoi(argv[2]) : 100'000;
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    Store office = bookOf(folder + "/office.fieldbook", wanted);
    const std::string book = must(office.bookId());
    Postgres server;
    must(share::prepareServer(server.address("boss")));
    for (const char* login : {"phone0", "phone1"}) {
        std::ignore = server.ask("boss", std::string("CREATE ROLE ") + login + " LOGIN");
        must(share::admit(server.address("boss"), book, login));
    }
    const std::string up = server.address("phone0"), down = server.address("phone1");

    Gaps pushGaps, pullGaps;
    double serverFrom = serverWorked(server);
    double from = now(), workFrom = worked();
    const auto pushed = must(share::push(office, up, pushGaps.heard()));
    const double pushTime = now() - from, pushGap = pushGaps.longest(), pushWork = worked() - workFrom;
    const double pushServer = serverWorked(server) - serverFrom;
    peers::Plain reader(server, "phone1");
    reader.run("SELECT 1");
    from = now();
    workFrom = worked();
    const std::vector<std::string> texts = peers::copiedOut(reader, pushed.sent);
    const double copyTime = now() - from;
    const std::size_t sound = peers::verified(texts);
    const double peerTime = now() - from, peerWork = worked() - workFrom;
    if (texts.size() != pushed.sent || sound != pushed.sent)
        return std::fprintf(stderr, "of %zu texts COPY gave %zu, %zu sound\n", pushed.sent, texts.size(), sound), 1;
    serverFrom = serverWorked(server);
    const double insertTime = peers::batchedInserts(server, texts);
    const double insertServer = serverWorked(server) - serverFrom;
    serverFrom = serverWorked(server);
    Store phone = must(Store::open(folder + "/phone.fieldbook", OpenMode::Create, key(8)));
    from = now();
    workFrom = worked();
    const auto pulled = must(share::pull(phone, down, book, pullGaps.heard()));
    const double pullTime = now() - from, pullGap = pullGaps.longest(), pullWork = worked() - workFrom;
    const double pullServer = serverWorked(server) - serverFrom;
    if (pulled.taken != pushed.sent || !pulled.refused.empty())
        return std::fprintf(stderr, "pulled %zu of %zu\n", pulled.taken, pushed.sent), 1;

    const auto records = static_cast<double>(pushed.sent);
    std::size_t bytes = 0;
    for (const std::string& text : texts)
        bytes += text.size();
    std::printf("%zu records, %.1f MB of texts\n", pushed.sent, static_cast<double>(bytes) / 1e6);
    std::printf("push: %.0f records/s; batched inserts of the same bytes: %.0f records/s; %.2f times their time\n", records / pushTime, records / insertTime,
                pushTime / insertTime);
    std::printf("pull: %.0f records/s; plain COPY (%.2f s) and verification (%.2f s) of the same bytes: %.0f records/s; %.0f %% of that rate\n", records / pullTime,
                copyTime, peerTime - copyTime, records / peerTime, 100 * peerTime / pullTime);

    const auto each = [&](double seconds) { return seconds / records * 1e6; };
    std::printf("processor time a record, microseconds: push %.0f and the server %.0f, inserts the server %.0f; pull %.0f and the server %.0f, COPY and verification %.0f\n",
                each(pushWork), each(pushServer), each(insertServer), each(pullWork), each(pullServer), each(peerWork));

    const auto empty = [&](const std::string& name) { return must(Store::open(folder + "/fresh" + name + ".fieldbook", OpenMode::Create, key(9))); };
    const double pullStop = slowestStop(20, empty, [&](Store& fresh, std::atomic<bool>& goesOn) {
        const auto on = [&] { return goesOn.load(); };
        must(share::pull(fresh, down, book, [&](std::size_t) { return on(); }, on));
    });
    const auto copied = [&](const std::string& name) {
        const std::string copy = folder + "/copy" + name + ".fieldbook";
        must(office.handOver(copy));  // without notes of what was sent
        std::ignore = server.ask("boss", "TRUNCATE groundcount.sealed");
        ::sync();  // the copy's writing is not the push's
        return must(Store::open(copy, OpenMode::ReadWrite, key(9)));
    };
    const double pushStop = slowestStop(20, copied, [&](Store& fresh, std::atomic<bool>& goesOn) {
        const auto on = [&] { return goesOn.load(); };
        must(share::push(fresh, up, [&](std::size_t) { return on(); }, on));
    });
    std::printf("longest time between two reports of progress: push %.0f ms, pull %.0f ms; from a stop to the return, the slowest of 20: push %.0f ms, pull %.0f ms\n",
                pushGap * 1e3, pullGap * 1e3, pushStop * 1e3, pullStop * 1e3);
    std::filesystem::remove_all(folder);
}
