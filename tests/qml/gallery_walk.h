#pragma once

#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QTest>

#include "view/fonts.h"

#include <memory>

/// The pages under tests/qml/gallery and ways to look through what they hold.
namespace gallery {

inline QStringList pages()
{
    return {QStringLiteral("DayReady"), QStringLiteral("DayNoCounts"), QStringLiteral("Place"), QStringLiteral("Clear"), QStringLiteral("Count"),
            QStringLiteral("KeypadPage"), QStringLiteral("VerdictPass"), QStringLiteral("VerdictFail"), QStringLiteral("Symbols")};
}

/// The module's Theme, as `engine` sees it.
inline QObject* theme(QQmlEngine* engine)
{
    QQmlComponent component(engine);
    component.setData("import QtQml\nimport Groundcount\nQtObject { readonly property QtObject theme: Theme }", QUrl());
    const std::unique_ptr<QObject> holder(component.create());
    return holder ? qvariant_cast<QObject*>(holder->property("theme")) : nullptr;
}

/// Shows `page` in a window of `size`, after the first frame; nullptr, with the reason in the log, if it does not load.
inline std::unique_ptr<QQuickView> show(const QString& page, QSize size, const QString& themeName)
{
    auto view = std::make_unique<QQuickView>();
    view->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    view->setResizeMode(QQuickView::SizeRootObjectToView);
    view->resize(size);
    view->setSource(QUrl::fromLocalFile(QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/tests/qml/gallery/") + page + QStringLiteral(".qml")));
    if (view->status() != QQuickView::Ready) {
        qWarning() << view->errors();
        return nullptr;
    }
    QObject* tokens = theme(view->engine());
    if (tokens == nullptr || !tokens->setProperty("name", themeName)) {
        qWarning() << "Theme cannot be reached";
        return nullptr;
    }
    view->show();
    if (!QTest::qWaitForWindowExposed(view.get())) {
        return nullptr;
    }
    view->requestActivate();
    QTest::qWait(20);
    return view;
}

/// Every visible item below `root`, parents first.
inline QList<QQuickItem*> items(QQuickItem* root)
{
    QList<QQuickItem*> found{root};
    for (qsizetype i = 0; i < found.size(); ++i) {
        for (QQuickItem* child : found[i]->childItems()) {
            if (child->isVisible()) {
                found << child;
            }
        }
    }
    return found;
}

inline bool isControl(const QQuickItem* item)
{
    return item->inherits("groundcount::keys::PressItem") || item->inherits("QQuickTextInput");
}

inline QQuickItem* byName(QQuickItem* root, const QString& name)
{
    for (QQuickItem* item : items(root)) {
        if (item->objectName() == name) {
            return item;
        }
    }
    return nullptr;
}

} // namespace gallery
