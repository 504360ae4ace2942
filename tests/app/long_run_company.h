#pragma once

#include "app/command_bench.h"
#include "app/nmea_sample.h"
#include "book/evidence.h"
#include "book/keys.h"
#include "book/state_query.h"
#include "book/store.h"

#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

#include <memory>
#include <random>

/// A receiver on this machine's network that walks about the job, hangs up at random and comes back.
class FarReceiver {
public:
    explicit FarReceiver(unsigned seed) : m_chance(seed)
    {
        m_clock.setInterval(200);
        QObject::connect(&m_clock, &QTimer::timeout, [this] { tick(); });
    }
    bool listen()
    {
        m_clock.start();
        return m_server.listen(QHostAddress::LocalHost);
    }
    QString where() const { return QStringLiteral("127.0.0.1:%1").arg(m_server.serverPort()); }
    int lost() const { return m_lost; }

private:
    static constexpr int kTicksSilent = 25;  // 5 s

    void tick()
    {
        while (m_server.hasPendingConnections()) {
            m_line.reset(m_server.nextPendingConnection());
            m_silent = 0;
        }
        if (m_silent > 0) {
            --m_silent;
            return;
        }
        if (!m_line)
            return;
        m_line->write(epoch());
        const int fate = std::uniform_int_distribution(0, 299)(m_chance);
        if (fate == 0) {  // once a minute: it hangs up
            m_line.reset();
            ++m_lost;
        } else if (fate == 1) {  // or falls silent
            m_silent = kTicksSilent;
            ++m_lost;
        }
    }
    QByteArray epoch()
    {
        m_utc = m_utc.addMSecs(200);
        std::normal_distribution<double> step(0, 1e-5);
        m_minutes += step(m_chance);
        const QByteArray utc = m_utc.toString(QStringLiteral("hhmmss.zzz")).toLatin1().chopped(1), north = "35" + QByteArray::number(39.45297 + m_minutes, 'f', 7);
        return sentence("GNGGA," + utc + ',' + north + ",N,09221.7228900,W,4,12,0.9,129.2,M,-28.2,M,,") + sentence("GNGST," + utc + ",1.0,1.0,1.0,0.0,0.010,0.010,0.02")
               + sentence("GNRMC," + utc + ",A," + north + ",N,09221.7228900,W,0.0,0.0,100626,,,A");
    }

    std::mt19937 m_chance;
    QTcpServer m_server;
    std::unique_ptr<QTcpSocket> m_line;
    QTimer m_clock;
    QTime m_utc{12, 0};
    double m_minutes = 0;
    int m_silent = 0, m_lost = 0;
};

/// A colleague on the same job: his copy of the book, his own key, and one test more every time his copy is brought back.
class Colleague {
public:
    Colleague(const Bench& bench, QString book) : m_bench(bench), m_book(std::move(book)) {}

    int tests() const { return m_tests; }
    /// Takes the other's records, does a test as test 24 was done, and merges it into the book that the app holds open.
    bool bringATest(const QDateTime& at)
    {
        return merge(mine(), m_book) && doATest(at) && merge(m_book, mine());
    }
    static std::string numberOf(int test) { return "C-" + std::to_string(test); }

private:
    QString mine() const { return m_bench.path(QStringLiteral("colleague.fieldbook")); }
    bool merge(const QString& into, const QString& from) const
    {
        const auto done = m_bench.run({"merge", into, from});
        if (done.code != 0)
            qWarning("merge: %s%s", done.out.constData(), done.err.constData());
        return done.code == 0;
    }
    bool doATest(const QDateTime& at)
    {
        using namespace groundcount::book;
        const auto key = DeviceKey::loadOrMake(m_bench.path(QStringLiteral("colleague.key")).toStdString());
        auto store = Store::open(mine().toStdString(), OpenMode::ReadWrite, *key);
        const auto tests = store ? StateQuery(*store).tests({}) : tl::unexpected(store.error());
        if (!tests)
            return said(tests.error());
        const auto like = std::find_if(tests->begin(), tests->end(), [](const TestRow& test) { return test.number == "24"; });
        const auto records = store->records({.subject = like->id, .kind = {}});
        const std::string counts = store->records({.subject = {}, .kind = "standard-count"})->back().hash;  // of this morning
        const std::string subject = newSubject();
        QDateTime time = at;
        for (const Record& record : *records) {
            Entry entry = record;
            entry.subject = subject;
            entry.at = time.toUTC().toString(Qt::ISODateWithMs).toStdString();
            if (entry.kind == "test-site")
                entry.body["number"] = numberOf(m_tests + 1);
            if (entry.kind == "reading")
                entry.body["standard_count"] = counts;
            if (entry.kind == "verdict") {
                const auto evidence = gatherEvidence(*store, subject);
                const auto verdict = evidence ? verdictEntry(*evidence, entry.by, entry.at, entry.offsetMinutes) : tl::unexpected(evidence.error());
                if (!verdict)
                    return said(verdict.error());
                entry = *verdict;
            }
            if (const auto sealed = store->seal(entry); !sealed)
                return said(sealed.error());
            time = time.addSecs(30);
        }
        ++m_tests;
        return true;
    }
    static bool said(const groundcount::Error& error)
    {
        qWarning("the colleague's test: %s", error.what.c_str());
        return false;
    }

    const Bench& m_bench;
    QString m_book;
    int m_tests = 0;
};
