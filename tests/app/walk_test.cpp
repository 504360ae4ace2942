// The whole app on real books: every place loads, empty and with the demo day, and the ways between them work by touch.
#include "app/command_bench.h"
#include "qml/gallery_walk.h"
#include "view/ui_start.h"

#include <QAccessible>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTest>

#include <algorithm>
#include <vector>

namespace {

QStringList complaints;

void listen(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    if (type == QtWarningMsg || type == QtCriticalMsg)
        complaints << text;
}

/// Name of the page that an --open word leads to.
QString pageOf(const QString& open)
{
    static const QMap<QString, QString> sheets{{"counts", "standardCountsPage"}, {"stability", "stabilityPage"}, {"custody", "custodyPage"}, {"gauge", "gaugePapersPage"},
                                               {"material", "materialPage"}, {"person", "personPage"}, {"rules", "rulesPage"}, {"offset", "offsetPage"}};
    return open.startsWith(QStringLiteral("kit:")) ? sheets.value(open.mid(4)) : QStringLiteral("testPage");
}

/// A running app: engine and window.
struct App {
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;

    bool start(const groundcount::ui::StartOptions& options)
    {
        const auto started = groundcount::ui::start(engine, options);
        if (!started) {
            qCritical("%s", started.error().what.c_str());
            return false;
        }
        window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        return QTest::qWaitForWindowExposed(window);
    }
    QQuickItem* find(const char* name) const { return gallery::byName(window->contentItem(), QString::fromLatin1(name)); }
    bool waitFor(const char* name) const
    {
        return QTest::qWaitFor([&] { return find(name) != nullptr; }, 5000);
    }
    void tap(QQuickItem* item) const
    {
        static QPointingDevice* finger = QTest::createTouchDevice();
        const QPoint at = item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
        QTest::touchEvent(window, finger).press(0, at, window);
        QTest::touchEvent(window, finger).release(0, at, window);
        QTest::qWait(30);
    }
};

}  // namespace

class WalkTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    QString m_day;

    groundcount::ui::StartOptions options(const QString& book, QSize size) const
    {
        groundcount::ui::StartOptions o;
        o.book = book;
        o.size = size;
        o.at = QDateTime::fromString(QStringLiteral("2026-06-09T10:12:00-05:00"), Qt::ISODate);
        return o;
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        m_day = m_bench.path(QStringLiteral("day.fieldbook"));
    }

    void everyPlaceLoadsAndIsFitForAGlove_data()
    {
        QTest::addColumn<QString>("book");
        QTest::addColumn<QString>("place");
        QTest::addColumn<QSize>("size");
        for (const auto& book : {QStringLiteral("empty"), QStringLiteral("day")}) {
            for (const auto& place : {QStringLiteral("day"), QStringLiteral("map"), QStringLiteral("lots"), QStringLiteral("kit")}) {
                for (const QSize size : {QSize(360, 640), QSize(412, 915), QSize(1280, 800)})
                    QTest::addRow("%s %s %dx%d", qPrintable(book), qPrintable(place), size.width(), size.height()) << book << place << size;
            }
        }
        for (const auto& kit : {"counts", "stability", "custody", "gauge", "material", "person", "rules", "offset"}) {
            for (const auto& book : {QStringLiteral("empty"), QStringLiteral("day")})
                QTest::addRow("%s kit %s", qPrintable(book), kit) << book << QStringLiteral("kit:") + kit << QSize(360, 640);
        }
        for (int step = 1; step <= 6; ++step)
            QTest::addRow("step %d", step) << QStringLiteral("day") << QStringLiteral("test:24/%1").arg(step) << QSize(360, 640);
    }
    void everyPlaceLoadsAndIsFitForAGlove()
    {
        QFETCH(QString, book);
        QFETCH(QString, place);
        QFETCH(QSize, size);
        complaints.clear();
        const auto before = qInstallMessageHandler(listen);
        App app;
        auto o = options(book == QStringLiteral("day") ? m_day : m_bench.path(QStringLiteral("empty.fieldbook")), size);
        const bool sheet = place.contains(':');
        (sheet ? o.open : o.place) = place;
        const bool started = app.start(o);
        const bool found = started && app.waitFor(qPrintable(sheet ? pageOf(place) : place + QStringLiteral("Page")));
        QTest::qWait(60);
        qInstallMessageHandler(before);
        QVERIFY(started);
        QVERIFY2(found, qPrintable(place));
        QVERIFY2(complaints.isEmpty(), qPrintable(complaints.join('\n')));
        int controls = 0;
        for (QQuickItem* item : gallery::items(app.window->contentItem())) {
            if (!gallery::isControl(item))
                continue;
            ++controls;
            const auto* attached = QAccessible::queryAccessibleInterface(item);
            QVERIFY2(attached && !attached->text(QAccessible::Name).isEmpty(), qPrintable(item->objectName()));
            QVERIFY2(item->width() >= 48 && item->height() >= 48,
                     qPrintable(QStringLiteral("%1 is %2 x %3").arg(item->objectName()).arg(item->width()).arg(item->height())));
        }
        QVERIFY(controls >= 4);
    }

    void whatTheDayHasBroughtComesWithTheSecondFrame()
    {
        QQmlApplicationEngine engine;
        QVERIFY(groundcount::ui::start(engine, options(m_day, {412, 915})));
        auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        const auto rowsOf = [&](const char* list) {
            const QQuickItem* rows = gallery::byName(window->contentItem(), QString::fromLatin1(list));
            return rows ? std::ranges::count_if(rows->childItems(), [](const QQuickItem* one) { return one->objectName().startsWith(QStringLiteral("row")); }) : -1;
        };
        std::vector<std::pair<std::ptrdiff_t, std::ptrdiff_t>> frames;  // rows owed, rows of results
        connect(window, &QQuickWindow::frameSwapped, window, [&] { frames.emplace_back(rowsOf("owedRows"), rowsOf("resultsRows")); });
        QTRY_VERIFY_WITH_TIMEOUT(!frames.empty() && frames.back().second > 0, 5000);
        QVERIFY(frames.size() >= 2);
        QVERIFY(frames.front().first > 0);
        QCOMPARE(frames.front().second, std::ptrdiff_t(0));
        QVERIFY(gallery::byName(window->contentItem(), QStringLiteral("daySheet")));
    }

    void theDayLeadsToATestAndBack()
    {
        App app;
        QVERIFY(app.start(options(m_day, {412, 915})));
        QVERIFY(app.waitFor("startTest"));
        app.tap(app.find("startTest"));
        QVERIFY(app.waitFor("testPage"));
        QVERIFY(!app.find("dayPage"));
        app.tap(app.find("back"));
        QVERIFY(app.waitFor("dayPage"));
        QVERIFY(!app.find("testPage"));
    }

    void theLotShowsItsGridAndOpensItsTests()
    {
        App app;
        auto o = options(m_day, {412, 915});
        o.open = QStringLiteral("lot:N-4");
        QVERIFY(app.start(o));
        QVERIFY(app.waitFor("liftGrid"));
        QVERIFY(app.find("lift7"));
        QQuickItem* grid = app.find("lift7");
        int symbols = 0;
        for (QQuickItem* item : gallery::items(grid))
            symbols += item->objectName() == QStringLiteral("stateSymbol");
        // 24, 25, 26A (26 gave way to its retest) and two owed sites.
        QCOMPARE(symbols, 5);
        QQuickItem* detail = app.find("lotDetail");
        QVERIFY(QMetaObject::invokeMethod(detail, "positionViewAtIndex", Q_ARG(int, 0), Q_ARG(int, 1)));  // 1: in the middle
        QQuickItem* row = nullptr;
        QVERIFY(QMetaObject::invokeMethod(detail, "itemAtIndex", Q_RETURN_ARG(QQuickItem*, row), Q_ARG(int, 0)));
        QVERIFY(row);
        app.tap(row);
        QVERIFY(app.waitFor("testPage"));
    }

    void theMapShowsWhatIsTouched()
    {
        App app;
        auto o = options(m_day, {412, 915});
        o.place = QStringLiteral("map");
        QVERIFY(app.start(o));
        QVERIFY(app.waitFor("groundMap"));
        QQuickItem* ground = app.find("groundMap");
        QVERIFY(QTest::qWaitFor([&] { return ground->property("settled").toBool(); }, 5000));
        QVERIFY(!app.find("mapCard"));
        const double before = ground->property("pixelsPerMetre").toDouble();
        const QPointF at = ground->mapToScene({200, 300});
        QWheelEvent wheel(at, app.window->mapToGlobal(at), {}, {0, 240}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(app.window, &wheel);
        QTest::qWait(50);
        QVERIFY(ground->property("pixelsPerMetre").toDouble() > before);
        app.tap(app.find("liftUp"));
        QVERIFY(QTest::qWaitFor([&] { return ground->property("lift").toInt() == 8; }, 2000));
    }

    void aDamagedBookOpensReadOnlyAndSaysSo()
    {
        QVERIFY(QFile::copy(m_day, m_bench.path(QStringLiteral("broken.fieldbook"))));
        {
            QFile file(m_bench.path(QStringLiteral("broken.fieldbook")));
            QVERIFY(file.open(QIODevice::ReadWrite));
            QByteArray bytes = file.readAll();
            const auto at = bytes.lastIndexOf("\"wet_density\"") > 0 ? bytes.lastIndexOf("\"wet_density\"") : bytes.lastIndexOf("hazards");
            QVERIFY(at > 0);
            bytes[at + 2] = bytes[at + 2] == 'x' ? 'y' : 'x';
            file.seek(0);
            QVERIFY(file.write(bytes) == bytes.size());
        }
        App app;
        QVERIFY(app.start(options(m_bench.path(QStringLiteral("broken.fieldbook")), {412, 915})));
        QVERIFY(app.waitFor("trouble"));
        QVERIFY(app.find("startTestNotYet"));
        QVERIFY(!app.find("startTest"));
    }
};

QTEST_MAIN(WalkTest)
#include "walk_test.moc"
