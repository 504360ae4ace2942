// map_frames POINTS [GROUND.tif]: the map with generated tests in a window of 390 x 844, panned, zoomed and picked at; prints one line of figures.
// With GROUND.tif (made by `groundbook background`) also lots, alignments and that ground. The renderer and the device's pixels are of the
// environment: QT_QPA_PLATFORM, QT_SCALE_FACTOR; map_frames.py runs every combination. 0 points: the empty map, for its memory.
#include "map/background_paint.h"
#include "map/map_item.h"

#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QSGRendererInterface>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <random>
#include <unistd.h>

using namespace groundcount;

namespace {

constexpr int kRoads = 20, kSteps = 240;
constexpr double kSideM = 20'000;

double residentMegabytes()
{
    QFile file(QStringLiteral("/proc/self/statm"));
    if (!file.open(QIODevice::ReadOnly))
        return 0;
    return file.readAll().split(' ').at(1).toDouble() * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6;
}

double since(const QElapsedTimer& timer)
{
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

double part(std::vector<double> times, double fraction)
{
    if (times.empty())
        return 0;
    std::sort(times.begin(), times.end());
    return times[std::min(times.size() - 1, static_cast<std::size_t>(fraction * static_cast<double>(times.size())))];
}

map::MapVertex onRoad(int road, double along)
{
    const double across = kSideM * (road + 0.5) / kRoads;
    return {along * kSideM, across + 300 * std::sin(along * 9 + road) + 90 * std::sin(along * 47 + 2 * road)};
}

/// Tests along winding roads, one in eight failed, in 12 lifts; with `whole` also the lots and the alignments.
std::shared_ptr<map::MapScene> scene(int points, bool whole)
{
    auto scene = std::make_shared<map::MapScene>();
    std::mt19937 random(7);
    std::uniform_real_distribution<double> one(0, 1);
    for (int i = 0; i < points; ++i) {
        const int road = static_cast<int>(random() % kRoads);
        const map::MapVertex at = onRoad(road, one(random));
        scene->add({at.east + 12 * (one(random) - 0.5), at.north + 12 * (one(random) - 0.5),
                    random() % 8 == 0 ? map::PointState::Fail : map::PointState::Pass, i % 12},
                   std::to_string(i + 1), QStringLiteral("%1-0000-4000-8000-000000000000").arg(i, 8, 16, QLatin1Char('0')).toStdString());
    }
    for (int road = 0; whole && road < kRoads; ++road) {
        map::MapRun line;
        for (int step = 0; step <= kSteps; ++step)
            line.push_back(onRoad(road, static_cast<double>(step) / kSteps));
        for (int lot = 0; lot + 20 <= kSteps; lot += 20) {
            map::MapArea area;
            area.rings.emplace_back();
            for (int step = lot; step <= lot + 20; ++step)
                area.rings.front().push_back({line[static_cast<std::size_t>(step)].east, line[static_cast<std::size_t>(step)].north - 14});
            for (int step = lot + 20; step >= lot; --step)
                area.rings.front().push_back({line[static_cast<std::size_t>(step)].east, line[static_cast<std::size_t>(step)].north + 14});
            area.label = QStringLiteral("Lot %1").arg(lot / 20 + 1);
            scene->areas.push_back(std::move(area));
            scene->stations.push_back({line[static_cast<std::size_t>(lot)], 0, QStringLiteral("%1+00").arg(lot), 20});
        }
        scene->lines.push_back({map::LineStyle::Alignment, std::move(line)});
    }
    return scene;
}

/// The map with its polish timed: symbols are looked up there.
class TimedMap : public map::MapItem {
public:
    double polishMs = 0;
    /// As a finger's tap would look for a symbol.
    bool tapAt(QPointF at)
    {
        QMouseEvent press(QEvent::MouseButtonPress, at, at, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
        QMouseEvent release(QEvent::MouseButtonRelease, at, at, Qt::LeftButton, Qt::NoButton, Qt::NoModifier);
        mousePressEvent(&press);
        mouseReleaseEvent(&release);
        return true;
    }

protected:
    void updatePolish() override
    {
        QElapsedTimer timer;
        timer.start();
        MapItem::updatePolish();
        polishMs = since(timer);
    }
};

/// Runs frames one after the other and keeps how long each took.
class Drive {
public:
    Drive(QQuickWindow& window, TimedMap& item) : m_window(window), m_item(item)
    {
        QObject::connect(&window, &QQuickWindow::beforeSynchronizing, &window, [this] { m_timer.start(); }, Qt::DirectConnection);
        QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [this] {
            m_last = since(m_timer);
            ++m_frames;
        }, Qt::DirectConnection);
    }

    void frame()
    {
        const int before = m_frames;
        m_item.polishMs = 0;
        m_window.update();  // not requestUpdate: that draws without a swap when nothing has changed
        while (m_frames == before)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }

    void settle()
    {
        QElapsedTimer timer;
        for (timer.start(); !m_item.isSettled() && timer.elapsed() < 5000;)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
        frame();
    }

    template <class Step>
    std::vector<double> run(int frames, Step step)
    {
        std::vector<double> times;
        for (int i = 0; i < frames; ++i) {
            step(i);
            frame();
            times.push_back(m_last + m_item.polishMs);
        }
        return times;
    }

private:
    QQuickWindow& m_window;
    TimedMap& m_item;
    QElapsedTimer m_timer;
    double m_last = 0;
    int m_frames = 0;
};

void say(const char* what, const std::vector<double>& times)
{
    std::printf(", %s %.2f / %.2f / %.1f", what, part(times, 0.5), part(times, 0.95), part(times, 1));
}

}  // namespace

int main(int argc, char** argv)
{
    qputenv("QSG_RENDER_LOOP", "basic");
    QGuiApplication application(argc, argv);
    const int points = argc > 1 ? std::atoi(argv[1]) : 10'000;
    QQuickWindow window;
    window.resize(390, 844);
    TimedMap item;
    item.setParentItem(window.contentItem());
    item.setSize({390, 844});
    Drive drive(window, item);
    window.show();
    drive.frame();

    const double before = residentMegabytes();
    auto made = scene(points, argc > 2);
    if (argc > 2) {
        auto picture = map::BackgroundPicture::open(argv[2]);
        if (!picture) {
            std::fprintf(stderr, "%s\n", picture.error().what.c_str());
            return 1;
        }
        made->ground = map::BackgroundPicture::painter(*picture, {std::atof(argv[3]), std::atof(argv[4])}, map::BackgroundTone::Day);
    }
    QElapsedTimer timer;
    timer.start();
    item.setScene(made);
    const double taken = since(timer);
    drive.frame();
    const double first = since(timer);
    drive.settle();
    const double whole = item.pixelsPerMetre();

    const auto panAt = [&](double scale, int frames) {
        const map::MapVertex middle = onRoad(10, 0.5);
        item.setPixelsPerMetre(scale);
        item.setCentreEast(middle.east);
        item.setCentreNorth(middle.north);
        drive.settle();
        return drive.run(frames, [&](int i) {
            item.setCentreEast(item.view().centreEast + (i / 150 % 2 == 0 ? 6 : -6) / scale);
            item.setCentreNorth(item.view().centreNorth + 1.5 / scale);
        });
    };
    const auto fit = panAt(whole, 300);
    const auto near = panAt(whole * 30, 300);
    item.setPixelsPerMetre(whole);
    drive.settle();
    const auto zoom = drive.run(240, [&](int i) { item.zoomBy(i < 120 ? 1.05 : 1 / 1.05); });
    std::vector<double> picks;
    std::mt19937 random(3);
    for (int i = 0; i < 200 && points > 0; ++i) {
        const map::MapPoint& p = made->points[random() % made->points.size()];
        item.setPixelsPerMetre(whole * (1 + i % 60));
        item.setCentreEast(p.east);
        item.setCentreNorth(p.north);
        QElapsedTimer pick;
        pick.start();
        item.tapAt({195 + static_cast<double>(i % 20), 422});
        picks.push_back(since(pick));
    }
    const auto api = window.rendererInterface()->graphicsApi();
    std::printf("%s, ratio %.0f, %d tests%s: scene taken %.0f ms, first frame %.0f ms; frame median / p95 / longest, ms: all in view", api == QSGRendererInterface::Software ? "software" : "OpenGL",
                window.effectiveDevicePixelRatio(), points, argc > 2 ? " with ground, lots, alignments" : "", taken, first);
    std::printf(" %.2f / %.2f / %.1f", part(fit, 0.5), part(fit, 0.95), part(fit, 1));
    say("30 times nearer", near);
    say("zoom", zoom);
    std::printf("; pick p95 %.2f longest %.2f ms; %.0f MB more than before\n", part(picks, 0.95), part(picks, 1), residentMegabytes() - before);
    return 0;
}
