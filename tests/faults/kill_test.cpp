#include "core/book/sample_book.h"

#include "book/audit.h"

#include <QtTest>
#include <chrono>
#include <csignal>
#include <random>
#include <set>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace sample;

namespace {

/// The child: opens the book, seals without end and reports each hash once `seal` has returned.
[[noreturn]] void sealUntilKilled(const std::string& path, int report, int first)
{
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);  // no child outlives the test
    for (const int sign : {SIGPIPE, SIGABRT, SIGSEGV, SIGTERM})
        std::signal(sign, SIG_DFL);      // the handlers of QtTest are the parent's
    auto store = Store::open(path, OpenMode::ReadWrite, key(3));
    if (!store || !store->damage().empty())
        _exit(2);
    for (int i = first;; ++i) {
        const auto sealed = store->seal(entry("test-site", 1000 + i, siteBody(std::to_string(i)), i % 40000));
        if (!sealed)
            _exit(3);
        const std::string line = sealed->hash + "\n";
        if (::write(report, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
            _exit(4);
    }
}

}  // namespace

class KillTest : public QObject {
    Q_OBJECT

private slots:
    void everyReportedRecordSurvivesAKill();
};

void KillTest::everyReportedRecordSurvivesAKill()
{
    const QByteArray asked = qgetenv("GROUNDCOUNT_KILLS");
    const int kills = asked.isEmpty() ? 1000 : asked.toInt();
    constexpr int kPerBook = 25;  // a fresh book now and then, so that the audit stays quick
    std::mt19937 random(11);
    int reported = 0, beyond = 0, emptyHanded = 0;
    for (int round = 0; round * kPerBook < kills; ++round) {
        Bench bench;
        { Store store = bench.make(3); QVERIFY(store.sealAll(setup())); }
        std::set<std::string> acknowledged;
        for (int k = 0; k < kPerBook; ++k) {
            int ends[2];
            QCOMPARE(::pipe(ends), 0);
            const pid_t child = ::fork();
            QVERIFY(child >= 0);
            if (child == 0) {
                ::close(ends[0]);
                sealUntilKilled(bench.path, ends[1], k * 1000);
            }
            ::close(ends[1]);
            std::string text;
            char buffer[4096];
            // one in four may die while it opens the book; the others once they have reported for the first time
            if (k % 4 != 0) {
                const ssize_t got = ::read(ends[0], buffer, sizeof buffer);
                QVERIFY(got > 0);
                text.append(buffer, static_cast<std::size_t>(got));
            }
            std::this_thread::sleep_for(std::chrono::microseconds(random() % (k % 4 ? 6'000 : 30'000)));
            QCOMPARE(::kill(child, SIGKILL), 0);
            int status = 0;
            QCOMPARE(::waitpid(child, &status, 0), child);
            QVERIFY2(WIFSIGNALED(status), "the child ended by itself");
            for (ssize_t got; (got = ::read(ends[0], buffer, sizeof buffer)) > 0;)
                text.append(buffer, static_cast<std::size_t>(got));
            ::close(ends[0]);
            QCOMPARE(text.size() % 65, std::size_t(0));
            emptyHanded += text.empty();
            for (std::size_t at = 0; at < text.size(); at += 65)
                acknowledged.insert(text.substr(at, 64));
            Store store = Store::open(bench.path, OpenMode::ReadWrite).value();
            QVERIFY2(store.damage().empty(), store.damage().c_str());
            std::set<std::string> there;
            const auto records = store.records({}).value();
            for (const Record& record : records)
                there.insert(record.hash);
            for (const std::string& hash : acknowledged)
                QVERIFY2(there.contains(hash), hash.c_str());
        }
        Store store = Store::open(bench.path, OpenMode::ReadWrite).value();
        const auto report = groundcount::book::check(store).value();
        QVERIFY2(report.isClean(), report.lines.empty() ? "" : report.lines[0].what.c_str());
        QVERIFY(report.records >= acknowledged.size() + setup().size());
        reported += static_cast<int>(acknowledged.size());
        beyond += static_cast<int>(report.records - acknowledged.size() - setup().size());
    }
    qInfo("%d kills, %d records reported and all there, %d more sealed but not yet reported, %d children killed before their first seal",
          kills, reported, beyond, emptyHanded);
    QVERIFY(reported > kills);
}

QTEST_GUILESS_MAIN(KillTest)
#include "kill_test.moc"
