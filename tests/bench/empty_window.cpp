// The peers of the first frame: the least program that shows a window with a word; built a second time (OF_CONTROLS) with a window and a
// label of Qt Quick Controls, which other pages of the app use. Ends with its first frame.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#ifdef OF_CONTROLS
#include <QQuickStyle>
#endif

#include <cstdlib>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QQmlApplicationEngine engine;
#ifdef OF_CONTROLS
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    engine.loadData("import QtQuick.Controls.Basic\nApplicationWindow { width: 412; height: 915; visible: true; Label { text: \"Empty\" } }");
#else
    engine.loadData("import QtQuick\nWindow { width: 412; height: 915; visible: true; Text { text: \"Empty\" } }");
#endif
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (!window)
        return 1;
    // ended here and not taken down: the time is that of the frame
    QObject::connect(window, &QQuickWindow::frameSwapped, &application, [] { std::_Exit(0); });
    return QGuiApplication::exec();
}
