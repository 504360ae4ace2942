// first_frame BOOK: the app on a field book, up to its first frame; its time is taken from outside, beside empty_window (first_frame.py).
#include "view/ui_start.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QQmlApplicationEngine engine;
    groundcount::ui::StartOptions options;
    options.book = QString::fromLocal8Bit(argc > 1 ? argv[1] : "");
    options.size = {412, 915};
    options.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
    if (const auto started = groundcount::ui::start(engine, options); !started) {
        std::fprintf(stderr, "%s\n", started.error().what.c_str());
        return 1;
    }
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    // ended here and not taken down: the time is that of the frame
    QObject::connect(window, &QQuickWindow::frameSwapped, &application, [] { std::_Exit(0); });
    return QGuiApplication::exec();
}
