// finger_day BOOK WIDTHxHEIGHT [ACT]: drives the app through the day of finger_day.h. With ACT it does that one and is then killed by
// SIGKILL, as by a dead battery. Prints each act with the touches and characters so far; the first act that cannot be done ends it.
#include "app/finger_day.h"

#include <QGuiApplication>
#include <QStandardPaths>

#include <csignal>
#include <cstdio>

namespace {

bool done(KitApp& app, FingerDay& day, int act)
{
    if (day.act(act)) {
        std::printf("%s\t%d\t%d\n", qPrintable(day.name(act)), app.taps(), app.characters());
        std::fflush(stdout);
        return true;
    }
    std::fprintf(stderr, "act %d, %s, cannot be done: %s\n", act, qPrintable(day.name(act)), qPrintable(app.textOf("sheetTrouble")));
    app.picture("stuck");
    return false;
}

}  // namespace

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    const QStringList given = application.arguments();
    const QStringList sides = given.value(2).split('x');
    if (given.size() < 3 || sides.size() != 2) {
        std::fputs("finger_day BOOK WIDTHxHEIGHT [ACT]\n", stderr);
        return 2;
    }
    KitApp app(given[1]);
    FingerDay day(app);
    const bool killed = given.size() > 3;
    const int first = killed ? given[3].toInt() : 0;
    if (!app.start({sides[0].toInt(), sides[1].toInt()}, {}, FingerDay::clock(first).toString(Qt::ISODate).toUtf8().constData()))
        return 1;
    if (killed && first >= day.size())
        return 3;
    for (int act = first; act < (killed ? first + 1 : day.size()); ++act)
        if (!done(app, day, act))
            return 1;
    if (killed)
        std::raise(SIGKILL);
    return 0;
}
