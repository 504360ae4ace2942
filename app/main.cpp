#include "device/end_watch.h"
#include "gis/background.h"
#include "gis/site_file.h"
#include "view/ui_start.h"

#include <QGuiApplication>
#include <QImage>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iterator>
#include <memory>

namespace {

// Pages load in the first frame and pictures in the next; by the fourth nothing moves.
constexpr int kFramesBeforePicture = 4;
constexpr int kMostWaits = 1000;  // a minute
constexpr std::chrono::seconds kEndPatience{10};

void report(const groundcount::Error& error)
{
    std::fprintf(stderr, "%s\n", error.what.c_str());
}

/// Whether a page still waits for a file that it reads beside the pages, or a map for the picture of its view.
bool isWaiting(const QQuickWindow& window)
{
    const auto all = window.findChildren<QObject*>();
    return std::any_of(all.begin(), all.end(), [](QObject* one) {
        const auto* item = qobject_cast<QQuickItem*>(one);
        const QVariant settled = item && item->isVisible() && item->width() > 0 && item->height() > 0 ? one->property("settled") : QVariant();
        return one->property("reading").toBool() || (settled.isValid() && !settled.toBool());
    });
}

/// Writes the window to `path` once its frames have settled, then ends the program: 0, or 1 if the file could not be written.
void takePicture(QQuickWindow* window, const QString& path)
{
    auto* pacer = new QTimer(window);
    pacer->setInterval(60);
    QObject::connect(pacer, &QTimer::timeout, window, [window, path, frames = 0, waited = 0]() mutable {
        window->update();
        if ((isWaiting(*window) && ++waited < kMostWaits) || ++frames < kFramesBeforePicture) {
            return;
        }
        const bool written = window->grabWindow().save(path);
        if (!written) {
            std::fprintf(stderr, "The picture could not be written to %s.\n", qPrintable(path));
        }
        QGuiApplication::exit(written ? 0 : 1);
    });
    pacer->start();
}

/// The child that reads one foreign file for the page "Site file" (gis/site_file.h): prints what it holds, or why not.
int readSite(const char* path)
{
    const groundcount::gis::SiteLimits limits;
    groundcount::gis::boundReader(limits);
    const auto file = groundcount::gis::parseSiteFile(path, limits);
    if (!file) {
        report(file.error());
        return 1;
    }
    std::puts(groundcount::gis::siteFileText(*file).c_str());
    return 0;
}

/// The child that makes one background for the page of that name (gis/background.h): copy, file with the target system, result.
int readBackground(const char* copy, const char* system, const char* made)
{
    groundcount::gis::boundReader(groundcount::gis::backgroundLimits());
    std::ifstream file(system);
    const auto facts = groundcount::gis::makeBackground(copy, std::string(std::istreambuf_iterator<char>(file), {}), made);
    if (!facts) {
        report(facts.error());
        return 1;
    }
    std::puts(groundcount::gis::backgroundText(*facts).c_str());
    return 0;
}

/// The app on one field book, until it is closed or another book is asked for.
int run(QQmlApplicationEngine& engine, const groundcount::ui::StartOptions& options)
{
    if (const auto started = groundcount::ui::start(engine, options); !started) {
        report(started.error());
        return 1;
    }
    if (!options.screenshot.isEmpty()) {
        takePicture(qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst()), options.screenshot);
    }
    return QGuiApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    if (argc == 3 && std::strcmp(argv[1], "read-site") == 0) {
        return readSite(argv[2]);
    }
    if (argc == 5 && std::strcmp(argv[1], "read-background") == 0) {
        return readBackground(argv[2], argv[3], argv[4]);
    }
    QGuiApplication::setApplicationName(QStringLiteral("Groundcount"));
    QGuiApplication application(argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QUICK_CONTROLS_STYLE")) {
        qputenv("QT_QUICK_CONTROLS_STYLE", "Basic");  // Qt's file dialogs, where a system has none
    }

    auto options = groundcount::ui::readArguments(QGuiApplication::arguments());
    if (!options) {
        report(options.error());
        return 2;
    }
    for (;;) {
        auto engine = std::make_unique<QQmlApplicationEngine>();
        const int status = run(*engine, *options);
        const QString other = groundcount::ui::takeWantedBook();
        if (other.isEmpty()) {
            new groundcount::device::EndWatch(kEndPatience, [status] { std::_Exit(status); });  // never taken down: it watches to the last library
            engine.reset();
            return status;
        }
        // What the command line named belongs to the first book.
        options->book = other;
        options->open.clear();
        options->screenshot.clear();
        options->place = QStringLiteral("day");
        const groundcount::device::EndWatch watch(kEndPatience, [program = QGuiApplication::applicationFilePath(), other] {
#if QT_CONFIG(process)  // elsewhere the person opens the other book by hand
            QProcess::startDetached(program, {other});
#endif
            std::_Exit(0);
        });
        engine.reset();
    }
}
