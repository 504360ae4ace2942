#pragma once

#include "app/kit_bench.h"
#include "view/desk.h"

#include <random>

/// Opens pages at random, as one who looks something up between two acts, and goes back to Day.
class Visits {
public:
    Visits(KitApp& app, std::mt19937& chance) : m_app(app), m_chance(chance) {}

    groundcount::view::Desk& desk() const
    {
        return *m_app.engine().singletonInstance<groundcount::view::Desk*>(qmlTypeId("Groundcount", 1, 0, "Desk"));
    }
    int made() const { return m_made; }
    /// The last pages, for one who looks for what led to a fault.
    QString trail() const { return m_trail.mid(qMax<qsizetype>(0, m_trail.size() - 8)).join(QStringLiteral(", ")); }

    void some()
    {
        const int visits = std::discrete_distribution<int>{4, 3, 2, 1}(m_chance);
        for (int i = 0; i < visits; ++i)
            one();
        if (visits > 0) {
            m_app.window()->resize(412, 915);
            settle(QStringLiteral("day"));
            QTest::qWait(200);
        }
    }
    void one()
    {
        static const QStringList pages{"day", "map", "lots", "kit", "lot:N-4", "screen", "new", "record:%1", "test:%1/1", "test:%1/2", "test:%1/3", "test:%1/4", "test:%1/5", "test:%1/6",
                                       "lot:N-4/review", "lot:N-4/figures", "lot:N-4/draw", "lot:N-4/profile", "lot:N-4/tests", "coverage", "hand-over", "server", "publish", "paper:day", "paper:%1", "paper:lot:N-4",
                                       "paper:review:N-4", "kit:counts", "kit:stability", "kit:custody", "kit:gauge", "kit:material", "kit:person", "kit:rules", "kit:offset", "kit:receiver", "kit:site-file", "kit:background"};
        static const QList<QSize> sizes{{360, 640}, {412, 915}, {1280, 800}};
        const QSize size = sizes[any(sizes.size())];
        m_app.window()->resize(size);
        QString page = pages[any(pages.size())];
        if (page.contains('%'))
            page = page.arg(numberOfAny());
        m_trail << QStringLiteral("%1 %2x%3").arg(page).arg(size.width()).arg(size.height());
        if (any(8) == 0)
            desk().screen()->showTheme(QStringList{"day", "sun", "dusk"}[any(3)]);
        if (pages.mid(0, 4).contains(page))
            desk().setPlace(page);
        else if (const auto opened = desk().openNamed(page); !opened)
            qWarning("%s: %s", qPrintable(page), opened.error().what.c_str());
        settle(page);
        if (any(2) == 0)
            turnWheel();
        home();
        ++m_made;
    }

private:
    qsizetype any(qsizetype count) { return std::uniform_int_distribution<qsizetype>(0, count - 1)(m_chance); }
    QString numberOfAny()
    {
        const auto& tests = m_app.session().snapshot().tests;
        return QString::fromStdString(tests[static_cast<std::size_t>(any(static_cast<qsizetype>(tests.size())))].number);
    }
    /// Until nothing that is shown waits for work beside the pages.
    void settle(const QString& page) const
    {
        const auto isWaiting = [this] {
            if (!m_app.find(QStringLiteral("shell"))->property("settled").toBool())
                return true;
            const auto items = gallery::items(m_app.window()->contentItem());
            return std::any_of(items.begin(), items.end(), [](const QQuickItem* item) {
                const bool isMap = item->inherits("groundcount::map::MapItem") && item->width() > 0 && item->height() > 0;
                return item->property("reading").toBool() || (isMap && !item->property("settled").toBool());
            });
        };
        QTest::qWait(60);
        if (!QTest::qWaitFor([&] { return !isWaiting(); }, 20000))
            qWarning("%s still waits after 20 s", qPrintable(page));
    }
    void turnWheel()
    {
        const QPointF at(m_app.window()->width() / 2.0, m_app.window()->height() / 2.0);
        for (int i = 0; i < 3; ++i) {
            QWheelEvent wheel(at, m_app.window()->mapToGlobal(at), {}, {0, any(2) == 0 ? 240 : -240}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
            QCoreApplication::sendEvent(m_app.window(), &wheel);
            QTest::qWait(30);
        }
    }
    void home() const
    {
        auto& at = desk();
        at.closeTest();
        at.setPaper({});
        at.setScreenOpen(false);
        at.setKit({});
        at.setLotSheet({});
        at.setLot({});
        at.closeTest();
        at.setPlace(QStringLiteral("day"));
        QTest::qWait(30);
    }

    KitApp& m_app;
    std::mt19937& m_chance;
    int m_made = 0;
    QStringList m_trail;
};
