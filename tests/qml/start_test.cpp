// What the command line asks for, and the window that comes of it.
#include "view/hand_over_view.h"
#include "view/lots_view.h"
#include "view/ui_start.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QFile>
#include <QTest>
#include <QTranslator>

using groundcount::ui::readArguments;
using groundcount::ui::StartOptions;

class StartTest : public QObject {
    Q_OBJECT

private slots:
    void everyTextHasItsSpanish()
    {
        QTranslator translator;
        QVERIFY(translator.load(QStringLiteral(":/i18n/groundcount_es.qm")));
        QCOMPARE(translator.translate("KitPage", "Kit"), QStringLiteral("Equipo"));
        QFile texts(QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/qml/language/groundcount_es.ts"));
        QVERIFY(texts.open(QIODevice::ReadOnly));
        const QByteArray all = texts.readAll();
        QVERIFY(all.count("<message") > 1000);
        QCOMPARE(all.count("type=\"unfinished\""), 0);
    }

    void englishTellsOneFromMany()
    {
        QTranslator translator;
        QVERIFY(translator.load(QStringLiteral(":/i18n/groundcount_en.qm")));
        QCoreApplication::installTranslator(&translator);
        QCOMPARE(groundcount::view::LotsView::tr("%n failure(s) open", nullptr, 1), QStringLiteral("1 failure open"));
        QCOMPARE(groundcount::view::LotsView::tr("%n failure(s) open", nullptr, 2), QStringLiteral("2 failures open"));
        QCOMPARE(groundcount::view::LotsView::tr("all made"), QStringLiteral("all made"));
        QCoreApplication::removeTranslator(&translator);
        QFile texts(QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/qml/language/groundcount_en.ts"));
        QVERIFY(texts.open(QIODevice::ReadOnly));
        const QByteArray all = texts.readAll();
        QVERIFY(all.contains("<message") && !all.contains("type=\"unfinished\""));
    }

    void viewModelsSpeakSpanishToo()
    {
        QTranslator translator;
        QVERIFY(translator.load(QStringLiteral(":/i18n/groundcount_es.qm")));
        QCoreApplication::installTranslator(&translator);
        QCOMPARE(groundcount::view::LotsView::tr("all made"), QStringLiteral("todos hechos"));
        QCOMPARE(groundcount::view::HandOverView::tr("Stopping"), QStringLiteral("Deteniendo"));
        QCOMPARE(groundcount::view::LotsView::tr("no such text"), QStringLiteral("no such text"));
        QCoreApplication::removeTranslator(&translator);
    }

    /// The user's own book and key stay untouched.
    void initTestCase() { QStandardPaths::setTestModeEnabled(true); }

    void takesEveryOption()
    {
        const auto options = readArguments({QStringLiteral("groundcount"), QStringLiteral("--book"), QStringLiteral("a.fieldbook"), QStringLiteral("--size"),
                                            QStringLiteral("1280x800"), QStringLiteral("--theme"), QStringLiteral("sun"), QStringLiteral("--place"),
                                            QStringLiteral("lots"), QStringLiteral("--at"), QStringLiteral("2026-06-09T10:12:00Z"),
                                            QStringLiteral("--screenshot"), QStringLiteral("a.png")});
        QVERIFY2(options.has_value(), options ? "" : options.error().what.c_str());
        QCOMPARE(options->book, QStringLiteral("a.fieldbook"));
        QCOMPARE(options->size, QSize(1280, 800));
        QCOMPARE(options->theme, QStringLiteral("sun"));
        QCOMPARE(options->place, QStringLiteral("lots"));
        QCOMPARE(options->screenshot, QStringLiteral("a.png"));
        QCOMPARE(options->at->toUTC().time(), QTime(10, 12));
    }

    void refusesWhatItCannotRead_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("size too small") << QStringList{QStringLiteral("--size"), QStringLiteral("300x600")};
        QTest::newRow("size not a size") << QStringList{QStringLiteral("--size"), QStringLiteral("wide")};
        QTest::newRow("theme unknown") << QStringList{QStringLiteral("--theme"), QStringLiteral("night")};
        QTest::newRow("place unknown") << QStringList{QStringLiteral("--place"), QStringLiteral("home")};
        QTest::newRow("time unreadable") << QStringList{QStringLiteral("--at"), QStringLiteral("noon")};
        QTest::newRow("replay missing") << QStringList{QStringLiteral("--replay"), QStringLiteral("/nowhere/log.nmea")};
        QTest::newRow("two books") << QStringList{QStringLiteral("a.fieldbook"), QStringLiteral("b.fieldbook")};
        QTest::newRow("option unknown") << QStringList{QStringLiteral("--colour")};
    }

    void refusesWhatItCannotRead()
    {
        QFETCH(QStringList, arguments);
        const auto options = readArguments(QStringList{QStringLiteral("groundcount")} + arguments);
        QVERIFY(!options.has_value());
        QCOMPARE(options.error().fault, groundcount::Fault::Refused);
        QVERIFY(options.error().what.size() > 10);
    }

    void opensTheBarOnAPhoneAndTheRailWhenWide()
    {
        for (const auto& [size, wide] : {std::pair(QSize(412, 915), false), std::pair(QSize(839, 800), false), std::pair(QSize(840, 800), true)}) {
            QQmlApplicationEngine engine;
            StartOptions options;
            options.size = size;
            const auto started = groundcount::ui::start(engine, options);
            QVERIFY2(started.has_value(), started ? "" : started.error().what.c_str());
            auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
            QVERIFY(window != nullptr);
            QCOMPARE(window->size(), size);
            const auto* bar = window->findChild<QQuickItem*>(QStringLiteral("bottomBar"));
            const auto* rail = window->findChild<QQuickItem*>(QStringLiteral("sideRail"));
            QVERIFY(bar != nullptr);
            QCOMPARE(rail != nullptr && rail->isVisible(), wide);
            QCOMPARE(bar->isVisible(), !wide);
        }
    }

    void loadsAPlaceOnlyWhenItIsShown()
    {
        QQmlApplicationEngine engine;
        QVERIFY(groundcount::ui::start(engine, StartOptions{}).has_value());
        QObject* window = engine.rootObjects().constFirst();
        const auto* kit = window->findChild<QQuickItem*>(QStringLiteral("kitPlace"));
        QVERIFY(kit != nullptr);
        QVERIFY(kit->property("item").value<QObject*>() == nullptr);
        window->setProperty("place", "kit");
        QTRY_VERIFY(kit->property("item").value<QObject*>() != nullptr);
        QVERIFY(kit->isVisible());
    }
};

QTEST_MAIN(StartTest)
#include "start_test.moc"
