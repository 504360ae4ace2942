// The peer of the first frame: the least program that shows a window of the same controls. Ends with its first frame.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>

#include <cstdlib>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick.Controls.Basic\nApplicationWindow { width: 412; height: 915; visible: true; Label { text: \"Empty\" } }");
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (!window)
        return 1;
    // ended here and not taken down: the time is that of the frame
    QObject::connect(window, &QQuickWindow::frameSwapped, &application, [] { std::_Exit(0); });
    return QGuiApplication::exec();
}
