// How long the engineer's pages take on a generated contract: engineer_bench FOLDER [TESTS_PER_LIFT, 83 gives 20 thousand tests] writes and
// measures one; engineer_bench read FILE measures it again.
#include "programme/contract.h"
#include "view/day_view.h"
#include "view/figures_view.h"
#include "view/lots_view.h"
#include "view/map_view.h"
#include "view/profile_view.h"
#include "view/review_view.h"
#include "view/tests_view.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <memory>
#include <type_traits>
#include <vector>

using namespace groundcount;

namespace {

/// Median of five runs, milliseconds. What a run gives back is taken down outside its time.
template <class Run>
void measure(const char* what, Run run)
{
    std::vector<double> times;
    for (int i = 0; i < 5; ++i) {
        QElapsedTimer timer;
        const auto stop = [&] { times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6); };
        timer.start();
        if constexpr (std::is_void_v<decltype(run())>) {
            run();
            stop();
        } else {
            const auto kept = run();
            stop();
        }
    }
    std::sort(times.begin(), times.end());
    std::printf("%-60s %8.1f ms\n", what, times[2]);
    std::fflush(stdout);
}

/// Writes the book unless one is to be read again.
QString bookOf(int argc, char** argv)
{
    if (argc > 2 && std::strcmp(argv[1], "read") == 0)
        return QString::fromLocal8Bit(argv[2]);
    const QString path = QDir(QString::fromLocal8Bit(argv[1])).filePath(QStringLiteral("bench.fieldbook"));
    QFile::remove(path);
    const programme::Size size{40, 6, argc > 2 ? std::atoi(argv[2]) : 83, 97};
    const auto truth = programme::writeContract(path.toStdString(), 9, size, 20260601);
    std::printf("%zu tests, %d lots of %d lifts\n", truth.tests.size(), size.lots, size.lifts);
    return path;
}

}  // namespace

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    if (argc < 2) {
        std::fprintf(stderr, "engineer_bench FOLDER [TESTS_PER_LIFT] | read FILE\n");
        return 2;
    }
    const QString path = bookOf(argc, argv);
    view::Session session(nullptr);
    QElapsedTimer timer;
    timer.start();
    if (const auto opened = session.open(path, path + QStringLiteral(".key")); !opened) {
        std::fprintf(stderr, "%s\n", opened.error().what.c_str());
        return 1;
    }
    const auto sinceStart = [&timer](const char* what) { std::printf("%-60s %8.1f ms\n", what, static_cast<double>(timer.nsecsElapsed()) / 1e6); std::fflush(stdout); };
    sinceStart("open the book, until the map can be made");
    if (session.isReading()) {
        view::MapView page;
        page.setSession(&session);
        sinceStart("- and the map made of its columns");
    }
    if (session.isReading()) {  // a loop that sleeps: one that asks again and again takes a core from the reader
        QEventLoop whole;
        QObject::connect(&session, &view::Session::readingChanged, &whole, &QEventLoop::quit);
        whole.exec();
    }
    sinceStart("- and every page can be used");
    const QString lot = QString::fromStdString(session.snapshot().lots.front().id);
    session.setClock(QDateTime::fromString(QString::fromStdString(session.snapshot().tests.back().startedAt), Qt::ISODateWithMs));
    measure("Day", [&] { view::DayView page; page.setWhole(true); page.setSession(&session); });
    measure("Lots", [&] { view::LotsView page; page.setSession(&session); });
    measure("Lots, inside a lot", [&] { view::LotsView page; page.setChosenLot(lot); page.setSession(&session); });
    measure("Map", [&] { view::MapView page; page.setSession(&session); });
    measure("Map with coverage, until it can be used", [&] {
        auto page = std::make_unique<view::MapView>();
        page->setSession(&session);
        page->showCoverage(true);
        return page;
    });
    measure("Map with coverage, until it is drawn (another thread)", [&] {
        view::MapView page;
        page.setSession(&session);
        page.showCoverage(true);
        while (page.isReading())
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
    });
    measure("Statistics of a lot", [&] { view::FiguresView page; page.setLot(lot); page.setSession(&session); });
    measure("Profile", [&] { view::ProfileView page; page.setLot(lot); page.setSession(&session); });
    measure("Tests of every lot", [&] { view::TestsView page; page.setSession(&session); });
    view::TestsView tests;
    tests.setSession(&session);
    int turn = 0;
    measure("filter by state", [&] { tests.pick(view::TestsView::State, 1 + turn++ % 2); });
    measure("filter by state and person", [&] { tests.pick(view::TestsView::Person, 1 + turn++ % 2); });
    measure("filter by state, person and day", [&] { tests.pick(view::TestsView::Day, 1 + turn++ % 2); });
    const std::string subject = session.snapshot().tests[session.snapshot().tests.size() / 2].id;
    measure("Seal a note of one test, and read what it changed", [&] {
        if (const auto sealed = session.seal("note", subject, {{"text", "bench"}}); !sealed)
            std::fprintf(stderr, "%s\n", sealed.error().what.c_str());
    });
    measure("Read everything again, as a seal did before", [&] { session.readAgain(); });
    view::ReviewView review;
    review.setSession(&session);
    measure("Review of a lot, until it can be used", [&] { review.setLot(QString()); review.setLot(lot); });
    timer.start();
    while (review.property("unusualText").toString() == view::ReviewView::tr("Looking through the book…"))
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 1000);
    std::printf("%-60s %8.1f ms, %d listed in this lot\n", "Review, until everything unusual is listed (another thread)", static_cast<double>(timer.nsecsElapsed()) / 1e6, review.unusual()->count());
    return 0;
}
