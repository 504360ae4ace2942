#pragma once

#include "qml/gallery_walk.h"
#include "view/ui_start.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

/// The whole app on a book, worked by finger, mouse or keyboard as a person would.
class RunningApp {
public:
    enum class Hand { Finger, Mouse };

    bool start(const groundcount::ui::StartOptions& options)
    {
        const auto started = groundcount::ui::start(m_engine, options);
        if (!started) {
            qCritical("%s", started.error().what.c_str());
            return false;
        }
        m_window = qobject_cast<QQuickWindow*>(m_engine.rootObjects().constFirst());
        m_window->requestActivate();
        return QTest::qWaitForWindowActive(m_window);
    }

    QQuickItem* find(const char* name) const { return gallery::byName(m_window->contentItem(), QString::fromLatin1(name)); }
    bool waitFor(const char* name) const
    {
        return QTest::qWaitFor([&] { return find(name) != nullptr; }, 5000);
    }
    QString textOf(const char* name) const
    {
        const QQuickItem* item = find(name);
        return !item ? QString() : item->property("text").isValid() ? item->property("text").toString() : item->property("word").toString();
    }
    bool waitForText(const char* name, const QString& part) const
    {
        return QTest::qWaitFor([&] { return textOf(name).contains(part, Qt::CaseInsensitive); }, 5000);
    }

    /// Scrolls the item into view, then presses it. @return false when it is not there, hidden, or covered by the window's edge
    bool press(const char* name, Hand hand) const { return press(find(name), hand); }
    bool press(QQuickItem* item, Hand hand) const
    {
        if (!item || !item->isVisible())
            return false;
        bringIntoView(item);
        const QPoint at = item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
        if (!QRect(QPoint(), m_window->size()).contains(at))
            return false;
        if (hand == Hand::Mouse) {
            QTest::mouseClick(m_window, Qt::LeftButton, {}, at);
        } else {
            static QPointingDevice* finger = QTest::createTouchDevice();
            QTest::touchEvent(m_window, finger).press(0, at, m_window);
            QTest::touchEvent(m_window, finger).release(0, at, m_window);
        }
        QTest::qWait(30);
        return true;
    }
    void type(const QString& text) const
    {
        for (const QChar c : text)
            QTest::keyClick(m_window, c.toLatin1());
        QTest::qWait(10);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) const { QTest::keyClick(m_window, key, modifiers); }
    QQuickWindow* window() const { return m_window; }

private:
    static void bringIntoView(QQuickItem* item)
    {
        for (QQuickItem* above = item->parentItem(); above; above = above->parentItem()) {
            if (!above->inherits("QQuickFlickable"))
                continue;
            const double top = item->mapToItem(above, QPointF(0, 0)).y();
            const double low = above->property("contentY").toDouble() + top + item->height() / 2 - above->height() / 2;
            const double start = above->property("originY").toDouble();  // a list's head lies before 0
            const double most = start + above->property("contentHeight").toDouble() - above->height();
            above->setProperty("contentY", qBound(start, low, qMax(start, most)));
        }
        QTest::qWait(20);
    }

    QQmlApplicationEngine m_engine;
    QQuickWindow* m_window = nullptr;
};
