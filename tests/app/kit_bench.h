#pragma once

#include "app/command_bench.h"
#include "qml/gallery_walk.h"
#include "book/state_query.h"
#include "book/store.h"
#include "view/session.h"
#include "view/ui_start.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTest>

#include <memory>

/// The running app on a copy of the demo book, touched by finger, on the morning after the demo day: no counts yet.
class KitApp {
public:
    explicit KitApp(QString book) : m_book(std::move(book)) {}

    bool start(QSize size, const QString& open = {}, const char* at = "2026-06-10T06:40:00-05:00")
    {
        m_engine = std::make_unique<QQmlApplicationEngine>();
        groundcount::ui::StartOptions options;
        options.book = m_book;
        options.size = size;
        options.open = open;
        options.at = QDateTime::fromString(QLatin1String(at), Qt::ISODate);
        const auto started = groundcount::ui::start(*m_engine, options);
        if (!started) {
            qCritical("%s", started.error().what.c_str());
            return false;
        }
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
        m_size = QStringLiteral("%1x%2").arg(size.width()).arg(size.height());
        return QTest::qWaitForWindowExposed(m_window);
    }
    /// As if the program were killed: nothing is closed in order, what is on disk is all that is left.
    void kill()
    {
        m_window = nullptr;
        m_engine.reset();
    }

    QQmlApplicationEngine& engine() const { return *m_engine; }
    QQuickWindow* window() const { return m_window; }

    /// What is visible under the name, or "group/name" for one of several alike.
    QQuickItem* find(const QString& path) const
    {
        QQuickItem* item = m_window->contentItem();
        for (const QString& name : path.split('/'))
            item = item ? gallery::byName(item, name) : nullptr;
        return item;
    }
    QString textOf(const QString& path) const
    {
        const auto* item = find(path);
        return item ? item->property("text").toString() : QStringLiteral("(not shown)");
    }
    bool waitFor(const QString& path) const
    {
        return QTest::qWaitFor([&] { return find(path) != nullptr; }, 5000);
    }

    /// Until what bears the name no longer moves: rows above it fold and unfold.
    bool waitStill(const QString& path) const
    {
        QPoint last;
        int looks = 0;
        return QTest::qWaitFor([&] {
            const auto* item = find(path);
            const QPoint at = item ? centreOf(item) : QPoint();
            looks = item && at == last ? looks + 1 : 0;
            last = at;
            return looks >= 5;  // 50 ms
        }, 5000);
    }

    /// Touches what bears the name; scrolls the sheet by finger until it lies in the clear.
    bool touch(const QString& path) const
    {
        if (!waitFor(path)) {
            qWarning("%s is not shown", qPrintable(path));
            return false;
        }
        QQuickItem* item = find(path);
        for (const char* name : {"stepScroll", "recordScroll", "dayScroll", "kitList", "lotList", "lotDetail"}) {
            QQuickItem* scroll = gallery::byName(m_window->contentItem(), QLatin1String(name));
            for (int tries = 0; scroll && scroll->isAncestorOf(item) && tries < 40; ++tries) {
                const QRectF seen = scroll->mapRectToScene(QRectF(0, 0, scroll->width(), scroll->height()));
                const QPoint at = centreOf(item);
                if (at.y() > seen.top() + 20 && at.y() < seen.bottom() - 20)
                    break;
                const int way = at.y() > seen.center().y() ? -1 : 1;
                const int left = static_cast<int>(seen.left()) + 8, middle = static_cast<int>(seen.center().y()), reach = static_cast<int>(seen.height() / 3);
                drag(QPoint(left, middle - way * reach / 2), QPoint(left, middle + way * reach / 2));
                for (int waited = 0; scroll->property("moving").toBool() && waited < 40; ++waited)
                    QTest::qWait(25);
            }
        }
        tapAt(centreOf(item));
        ++m_taps;
        return true;
    }
    /// Touches the row of a list whose number or text begins with `text`.
    bool touchRow(const QString& list, const QString& text) const
    {
        if (!waitFor(list))
            return false;
        for (int row = 0; const QQuickItem* item = find(QStringLiteral("%1/row%2").arg(list).arg(row)); ++row)
            if (item->property("lead").toString().startsWith(text) || item->property("title").toString().startsWith(text))
                return touch(QStringLiteral("%1/row%2").arg(list).arg(row));
        qWarning("no row of %s begins with %s", qPrintable(list), qPrintable(text));
        return false;
    }
    bool keys(const QString& digits) const
    {
        for (const QChar key : digits)
            if (!touch(key == '.' ? QStringLiteral("key_point") : QStringLiteral("key_") + key))
                return false;
        m_taps -= static_cast<int>(digits.size());
        m_characters += static_cast<int>(digits.size());
        return true;
    }
    /// What was touched and typed since the start: a key of our keypad counts as a character.
    int taps() const { return m_taps; }
    int characters() const { return m_characters; }
    /// Types the numbers one after the other, each closed by the button under the keypad.
    bool type(const QStringList& numbers) const
    {
        for (const QString& digits : numbers)
            if (!keys(digits) || !touch(QStringLiteral("keypadNext")))
                return false;
        return true;
    }
    /// Touches a field and writes on the hardware keyboard.
    bool write(const QString& field, const QString& text) const
    {
        if (!touch(field + '/' + field.section('/', -1) + "_input"))
            return false;
        QTest::qWait(20);
        QTest::keyClick(m_window, Qt::Key_End);
        for (int i = 0; i < 60; ++i)
            QTest::keyClick(m_window, Qt::Key_Backspace);
        m_characters += static_cast<int>(text.size());
        for (const QChar c : text)
            QTest::sendKeyEvent(QTest::Click, m_window, Qt::Key(QChar(c).toUpper().unicode()), c, Qt::NoModifier);
        return true;
    }

    groundcount::view::Session& session() const
    {
        return *m_engine->singletonInstance<groundcount::view::Session*>(qmlTypeId("Groundcount", 1, 0, "Session"));
    }
    /// The newest record of a kind.
    groundcount::book::Body newest(const char* kind) const
    {
        const auto records = session().store().records({.subject = {}, .kind = kind});
        return records && !records->empty() ? records->back().body : groundcount::book::Body();
    }

    /// A picture into the folder that GROUNDCOUNT_SHOTS names, if it names one.
    void picture(const char* name) const
    {
        const QString folder = qEnvironmentVariable("GROUNDCOUNT_SHOTS");
        if (folder.isEmpty())
            return;
        QTest::qWait(200);
        m_window->grabWindow().save(QStringLiteral("%1/kit-%2-%3.png").arg(folder, QLatin1String(name), m_size));
    }

private:
    QPoint centreOf(const QQuickItem* item) const { return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint(); }
    static QPointingDevice* finger()
    {
        static QPointingDevice* device = QTest::createTouchDevice();
        return device;
    }
    void tapAt(const QPoint& at) const
    {
        QTest::touchEvent(m_window, finger()).press(0, at, m_window);
        QTest::touchEvent(m_window, finger()).release(0, at, m_window);
        QTest::qWait(15);
    }
    void drag(const QPoint& from, const QPoint& to) const
    {
        QTest::touchEvent(m_window, finger()).press(0, from, m_window);
        for (int i = 1; i <= 6; ++i) {
            QTest::qWait(12);
            QTest::touchEvent(m_window, finger()).move(0, from + (to - from) * i / 6, m_window);
        }
        QTest::qWait(100);
        QTest::touchEvent(m_window, finger()).release(0, to, m_window);
        QTest::qWait(30);
    }

    QString m_book, m_size;
    mutable int m_taps = 0, m_characters = 0;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;
};
