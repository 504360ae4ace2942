// long_run MINUTES SEED: one running app on one book, worked for so long: field days by finger (long_run_day.h), pages opened at random between
// the acts, a receiver that is lost and found, a colleague's book merged while the book is open. Ends with 1 when an act cannot be done, when
// anything is said on the error stream, when memory grows beyond the bound, or when the state is not what the records give.
// tests/long_run starts it.
#include "app/eve_book.h"
#include "app/long_run_company.h"
#include "app/long_run_day.h"
#include "app/long_run_visits.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QStandardPaths>

#include <malloc.h>
#include <unistd.h>

namespace {

constexpr double kHeapBoundMb = 4;          // what pages open at the moment of reading differ by
constexpr double kHeapBoundMbATest = 0.03;  // rows, records and names of a test in memory
constexpr double kResidentBoundMb = 24;     // of pools and caches: what is free in pieces stays with the process
constexpr double kWarmUp = 0.25;            // of the time

QStringList complaints;

void listen(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    if (type == QtDebugMsg || type == QtInfoMsg)
        return;
    std::fprintf(stderr, "%s\n", qPrintable(text));
    complaints << text;
}

/// Resident memory in MB, after what is free went back to the system.
double trimmedResidentMb()
{
    malloc_trim(0);
    QFile file(QStringLiteral("/proc/self/statm"));
    const auto fields = file.open(QIODevice::ReadOnly) ? file.readAll().split(' ') : QList<QByteArray>();
    return fields.size() > 1 ? fields[1].toDouble() * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6 : 0;
}

/// Memory at one moment, and how many tests the book held then.
struct Use {
    double heapMb = 0, residentMb = 0;  ///< handed out by malloc and not given back; resident
    std::size_t tests = 0;

    static Use now(std::size_t tests)
    {
        const double resident = trimmedResidentMb();
        const auto heap = mallinfo2();
        return {static_cast<double>(heap.uordblks + heap.hblkhd) / 1e6, resident, tests};
    }
};

/// Use when it was warm, and use now.
struct Growth {
    Use warm, now;
    double heapBound() const { return kHeapBoundMb + added(kHeapBoundMbATest); }
    double residentBound() const { return kResidentBoundMb + added(kHeapBoundMbATest); }
    bool isWithin() const
    {
        return warm.heapMb > 0 && now.heapMb - warm.heapMb <= heapBound() && now.residentMb - warm.residentMb <= residentBound();
    }
    void print() const
    {
        std::printf("heap in use %.1f MB warm, %.1f MB at the end: %+.1f MB, allowed %.1f MB\n", warm.heapMb, now.heapMb, now.heapMb - warm.heapMb, heapBound());
        std::printf("resident memory %.1f MB warm, %.1f MB at the end: %+.1f MB, allowed %.1f MB\n", warm.residentMb, now.residentMb,
                    now.residentMb - warm.residentMb, residentBound());
    }

private:
    double added(double each) const { return each * static_cast<double>(now.tests - warm.tests); }
};

/// The day's colleague: his test is on every page within the time the app looks for others.
bool mergeWhileOpen(KitApp& app, Colleague& colleague)
{
    const QDateTime evening = app.session().now().addSecs(3600);
    if (!colleague.bringATest(evening))
        return false;
    const std::string number = Colleague::numberOf(colleague.tests());
    return QTest::qWaitFor([&] {
        const auto& tests = app.session().snapshot().tests;
        return std::any_of(tests.begin(), tests.end(), [&](const auto& test) { return test.number == number; });
    }, 5000);
}

/// What is wrong with the book that the run leaves; "" when it is what its records give.
QString faultOf(const Bench& bench, const QString& path, int days, int merged)
{
    using namespace groundcount::book;
    const auto checked = bench.run({"check", path});
    if (checked.code != 0)
        return checked.out + checked.err;
    auto store = Store::open(path.toStdString(), OpenMode::ReadWrite);
    if (!store)
        return QString::fromStdString(store.error().what);
    const auto stale = store->staleDerived();
    const auto before = store->derivedText();
    const auto rebuilt = store->rebuild();
    const auto after = store->derivedText();
    if (!stale || !stale->empty() || !before || !rebuilt || !after || *before != *after)
        return QStringLiteral("the state differs from the rebuilt one: ") + QString::fromStdString(stale.value_or("it cannot be read"));
    int pass = 0, fail = 0, voided = 0;
    const auto tests = StateQuery(*store).tests({}).value_or(std::vector<TestRow>());
    for (const auto& test : tests) {
        if (QString::fromStdString(test.number).remove('A').toInt() < 27)
            continue;
        pass += test.state == TestState::Pass;
        fail += test.state == TestState::Fail;
        voided += test.state == TestState::Void;
    }
    std::printf("book: %d passed, %d failed, %d void, %d merged; %zu bytes of derived rows are the rebuilt ones\n", pass, fail, voided, merged, after->size());
    const bool isAsWorked = pass == days * LongDay::kPass && fail == days * LongDay::kFail && voided == days * LongDay::kVoid;
    return isAsWorked ? QString() : QStringLiteral("%1 days should give other counts").arg(days);
}

struct Run {
    int days = 0, visits = 0, merged = 0, lost = 0, found = 0;
    Growth growth;
    QString stop;  ///< why it ended early
};

Run drive(const Bench& bench, const QString& book, double minutes, unsigned seed)
{
    Run run;
    std::mt19937 chance(seed);
    FarReceiver far(seed + 1);
    KitApp app(book);
    if (!far.listen() || !app.start({412, 915})) {
        run.stop = QStringLiteral("the app does not start");
        return run;
    }
    Visits visits(app, chance);
    auto* receiver = visits.desk().receiver();
    bool live = false;
    QObject::connect(&app.session(), &groundcount::view::Session::placeChanged, receiver, [&] {
        const bool isLive = app.session().ownPlace().has_value();
        run.found += isLive && !live;
        live = isLive;
    });
    receiver->pickKind(groundcount::view::Receiver::Network);
    receiver->setWhere(far.where());
    receiver->use();
    LongDay days(app, chance, [&] { visits.some(); });
    Colleague colleague(bench, book);
    QElapsedTimer clock;
    clock.start();
    const auto gone = [&] { return static_cast<double>(clock.elapsed()) / 60000; };
    std::printf("minutes\tdays\tvisits\ttests\theap MB\tresident MB\n");
    for (; gone() < minutes && run.days < LongDay::kMostDays && complaints.isEmpty(); ++run.days) {
        if (!days.work(run.days)) {
            run.stop = QStringLiteral("day %1, %2 cannot be done: %3; visited before: %4").arg(run.days + 1).arg(days.lastAct(), app.textOf(QStringLiteral("sheetTrouble")), visits.trail());
            app.picture("long-run-stuck");
            break;
        }
        if (!mergeWhileOpen(app, colleague)) {
            run.stop = QStringLiteral("day %1: the colleague's test is not in the open book").arg(run.days + 1);
            break;
        }
        auto& growth = run.growth;
        growth.now = Use::now(app.session().snapshot().tests.size());
        if (growth.warm.heapMb == 0 && gone() >= kWarmUp * minutes)
            growth.warm = growth.now;
        std::printf("%.1f\t%d\t%d\t%zu\t%.1f\t%.1f\n", gone(), run.days + 1, visits.made(), growth.now.tests, growth.now.heapMb, growth.now.residentMb);
        std::fflush(stdout);
    }
    run.visits = visits.made();
    run.merged = colleague.tests();
    run.lost = far.lost();
    return run;
}

}  // namespace

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    const QStringList given = application.arguments();
    bool isTime = false, isSeed = false;
    const double minutes = given.value(1).toDouble(&isTime);
    const unsigned seed = given.value(2).toUInt(&isSeed);
    if (given.size() != 3 || !isTime || minutes <= 0 || !isSeed) {
        std::fputs("long_run MINUTES SEED\n", stderr);
        return 2;
    }
    QStandardPaths::setTestModeEnabled(true);
    const Bench bench;
    const QString book = bench.path(QStringLiteral("long.fieldbook"));
    if (!playTheEveBefore(bench, QStringLiteral("long.fieldbook")))
        return 1;
    qInstallMessageHandler(listen);
    const Run run = drive(bench, book, minutes, seed);
    std::printf("%d days, %d visits, %d merges; the receiver was lost %d times and found %d times\n", run.days, run.visits, run.merged, run.lost, run.found);
    run.growth.print();
    const QString fault = run.stop.isEmpty() ? faultOf(bench, book, run.days, run.merged) : run.stop;
    if (!fault.isEmpty())
        std::fprintf(stderr, "%s\n", qPrintable(fault));
    if (!run.growth.isWithin())
        std::fputs("memory grew beyond what is allowed\n", stderr);
    return fault.isEmpty() && run.growth.isWithin() && complaints.isEmpty() ? 0 : 1;
}
