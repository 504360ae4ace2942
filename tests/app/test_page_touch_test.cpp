#include "app/sample_book.h"

#include "view/fonts.h"

#include <QDir>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QtTest>

using namespace groundcount;
using namespace groundcount::tests;

namespace {

QQuickItem* shownItem(QQuickItem* parent, const QString& name)
{
    for (auto* child : parent->childItems()) {
        if (!child->isVisible())
            continue;
        if (child->objectName() == name)
            return child;
        if (auto* found = shownItem(child, name))
            return found;
    }
    return nullptr;
}

}  // namespace

/// The sheet by real touch events, from Place to the sealed verdict. GROUNDCOUNT_SHOTS names a folder for pictures of each step.
class TestPageTouchTest : public QObject {
    Q_OBJECT

private:
    static inline QPointingDevice* m_finger = nullptr;  // never taken down, and not lost
    std::unique_ptr<QQuickView> m_view;
    QString m_size;
    int m_picture = 0;

    void show(view::TestSheet& sheet, const QSize& size)
    {
        m_size = QStringLiteral("%1x%2").arg(size.width()).arg(size.height());
        m_picture = 0;
        m_view = std::make_unique<QQuickView>();
        m_view->setResizeMode(QQuickView::SizeRootObjectToView);
        m_view->setInitialProperties({{QStringLiteral("sheet"), QVariant::fromValue(&sheet)}});
        m_view->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_view->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Groundcount/pages/TestPage.qml")));
        m_view->resize(size);
        m_view->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_view.get()));
    }

    void picture(const char* name)
    {
        const QString folder = qEnvironmentVariable("GROUNDCOUNT_SHOTS");
        if (folder.isEmpty())
            return;
        QTest::qWait(250);
        const auto path = QStringLiteral("%1/%2-%3-%4.png").arg(folder, m_size).arg(++m_picture, 2, 10, QLatin1Char('0')).arg(QLatin1String(name));
        QVERIFY2(m_view->grabWindow().save(path), qPrintable(path));
    }

    QPoint centreOf(QQuickItem* item) const { return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint(); }

    void drag(const QPoint& from, const QPoint& to)
    {
        QTest::touchEvent(m_view.get(), m_finger).press(0, from);
        for (int i = 1; i <= 8; ++i) {
            QTest::qWait(16);
            QTest::touchEvent(m_view.get(), m_finger).move(0, from + (to - from) * i / 8);
        }
        QTest::qWait(120);
        QTest::touchEvent(m_view.get(), m_finger).release(0, to);
        QTest::qWait(50);
    }

    /// What bears the name, or "group/name" for one of several alike.
    QQuickItem* find(const QString& path) const
    {
        QQuickItem* item = m_view->rootObject();
        for (const QString& name : path.split('/'))
            item = item ? shownItem(item, name) : nullptr;
        return item;
    }

    /// Touches what bears the name; scrolls the sheet by finger until it lies in the clear.
    bool touch(const QString& name)
    {
        auto* item = find(name);
        for (int waited = 0; !item && waited < 20; ++waited) {
            QTest::qWait(50);
            item = find(name);
        }
        if (!item) {
            qWarning("%s is not shown", qPrintable(name));
            return false;
        }
        auto* scroll = shownItem(m_view->rootObject(), QStringLiteral("stepScroll"));
        for (int tries = 0; scroll && tries < 12 && scroll->isAncestorOf(item); ++tries) {
            const QRectF seen = scroll->mapRectToScene(QRectF(0, 0, scroll->width(), scroll->height()));
            const QPoint at = centreOf(item);
            if (at.y() > seen.top() + 20 && at.y() < seen.bottom() - 20)
                break;
            const int middle = static_cast<int>(seen.center().y());
            const int way = at.y() > seen.center().y() ? -1 : 1;
            const int reach = static_cast<int>(seen.height() / 3);
            // In the left margin: the right one has the scroll bar.
            drag(QPoint(8, middle - way * reach / 2), QPoint(8, middle + way * reach / 2));
            for (int waited = 0; scroll->property("moving").toBool() && waited < 40; ++waited)
                QTest::qWait(25);
        }
        QTest::touchEvent(m_view.get(), m_finger).press(0, centreOf(item));
        QTest::touchEvent(m_view.get(), m_finger).release(0, centreOf(item));
        QTest::qWait(30);
        return true;
    }

    bool typeKeys(const QString& digits)
    {
        for (const QChar key : digits)
            if (!touch(key == '.' ? QStringLiteral("key_point") : QStringLiteral("key_") + key))
                return false;
        return touch(QStringLiteral("keypadNext"));
    }

private slots:
    void initTestCase()
    {
        m_finger = QTest::createTouchDevice();
        const auto loaded = view::loadFonts();
        QVERIFY(loaded);
        if (!qEnvironmentVariable("GROUNDCOUNT_SHOTS").isEmpty())
            QDir().mkpath(qEnvironmentVariable("GROUNDCOUNT_SHOTS"));
    }

    void theTapesLineIsChosenByFinger_data()
    {
        goesFromPlaceToTheSealedVerdictByFinger_data();
    }

    void theTapesLineIsChosenByFinger()
    {
        QFETCH(QSize, size);
        SampleBook book;
        addRamp(book.session());
        view::TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        const auto closed = qScopeGuard([this] { m_view.reset(); });
        show(sheet, size);
        QVERIFY(touch("typePlace"));
        QVERIFY(typeKeys("5210"));
        QVERIFY(typeKeys("14.2"));
        picture("line-first");
        QCOMPARE(sheet.place()->lineIndex(), 0);
        QVERIFY(touch("lineChoice/choice_1"));
        picture("line-second");
        QCOMPARE(sheet.place()->lineIndex(), 1);
        QVERIFY(touch("purpose/choice_1"));
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 1, qPrintable(sheet.trouble()));
    }

    void goesFromPlaceToTheSealedVerdictByFinger_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("360x640") << QSize(360, 640);
        QTest::newRow("412x915") << QSize(412, 915);
        QTest::newRow("420x800") << QSize(420, 800);
    }

    void goesFromPlaceToTheSealedVerdictByFinger()
    {
        QFETCH(QSize, size);
        SampleBook book;
        view::TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        const auto closed = qScopeGuard([this] { m_view.reset(); });
        show(sheet, size);
        picture("place-empty");
        QVERIFY(touch("typePlace"));
        QVERIFY(typeKeys("5338.3"));
        picture("tape");
        QVERIFY(typeKeys("14.2"));
        QVERIFY(touch("purpose/choice_0"));
        QCOMPARE(sheet.place()->purposeIndex(), 0);
        picture("place");
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 1, qPrintable(sheet.trouble()));

        picture("clear");
        QVERIFY(touch("act_face_1"));
        QVERIFY(typeKeys("17"));
        picture("clear-too-close");
        QVERIFY(touch("act_face_0"));
        QVERIFY(shownItem(m_view->rootObject(), "remark_face") != nullptr);
        QVERIFY(touch("override_face_input"));
        for (const char key : {'l', 'o', 'o', 'k'})
            QTest::keyClick(m_view.get(), key);
        for (const char* act : {"act_people_0", "act_vehicles_0", "act_gauges_0"})
            QVERIFY(touch(act));
        picture("clear-settled");
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 2, qPrintable(sheet.trouble()));

        for (const char* choice : {"surface/choice_0", "rocks/choice_0", "depth/choice_1"})
            QVERIFY(touch(choice));
        QVERIFY(touch("typeHole"));
        QVERIFY(typeKeys("9"));
        picture("seat-shallow");
        QVERIFY(shownItem(m_view->rootObject(), "sealNotYet") != nullptr);
        QVERIFY(touch("typeHole"));
        QVERIFY(touch("key_backspace"));
        QVERIFY(typeKeys("10"));
        picture("seat");
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 3, qPrintable(sheet.trouble()));

        picture("count-ready");
        QVERIFY(touch("startCount"));
        book.wait(37);
        sheet.countStep()->tick();
        picture("count-running");
        QVERIFY(touch("headLink"));
        picture("struck");
        QVERIFY(touch("back"));
        book.wait(24);
        sheet.countStep()->tick();
        sheet.countStep()->pickForm(1);
        QVERIFY(touch("enterReading"));
        QVERIFY(typeKeys("129.9"));
        QVERIFY(typeKeys("14.4"));
        picture("count-typed");
        QVERIFY(touch("second_0"));
        QVERIFY(touch("startCount"));
        book.wait(61);
        sheet.countStep()->tick();
        QVERIFY(touch("enterReading"));
        QVERIFY(typeKeys("129.6"));
        QVERIFY(touch("key_1") && touch("key_4") && touch("key_point") && touch("key_3"));
        picture("count-second");
        QVERIFY(touch("keypadNext"));
        picture("count-both");
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 4, qPrintable(sheet.trouble()));

        picture("dig-empty");
        QVERIFY(touch("sample/choice_0"));
        picture("dig");
        QVERIFY(touch("seal"));
        QVERIFY2(sheet.step() == 5, qPrintable(sheet.trouble()));

        QVERIFY(shownItem(m_view->rootObject(), "verdictWord") != nullptr);
        QCOMPARE(shownItem(m_view->rootObject(), "verdictWord")->property("text").toString(), QString("Information only"));
        picture("verdict");
        QVERIFY(touch("showArithmetic"));
        picture("arithmetic");
        QVERIFY(touch("seal"));
        QVERIFY2(book.session().snapshot().tests.front().state == book::TestState::InformationOnly, qPrintable(sheet.trouble()));
        QSignalSpy back(m_view->rootObject(), SIGNAL(back()));
        QVERIFY(touch("sealedNext"));
        QCOMPARE(back.count(), 1);
    }

    void showsPassAndFailInTheThreeThemes_data()
    {
        QTest::addColumn<QString>("wet");
        QTest::addColumn<QString>("water");
        QTest::addColumn<QString>("word");
        QTest::newRow("pass") << "129.9" << "14.4" << "Pass";
        QTest::newRow("fail") << "126.5" << "17.35" << "Fail";
    }

    void showsPassAndFailInTheThreeThemes()
    {
        QFETCH(QString, wet);
        QFETCH(QString, water);
        QFETCH(QString, word);
        SampleBook book;
        view::TestSheet sheet;
        sheet.setSession(&book.session());
        sheet.begin();
        QVERIFY(placeByTape(sheet, "5338.3", "14.2", 0) && clearByEye(sheet) && seatAtEightInches(sheet));
        QVERIFY(countReadout(sheet, book, wet, water) && digNothingCoarse(sheet));
        const auto closed = qScopeGuard([this] { m_view.reset(); });
        show(sheet, QSize(390, 844));
        m_size += '-' + QLatin1String(QTest::currentDataTag());
        QQmlComponent holder(m_view->engine());
        holder.setData("import QtQuick\nimport Groundcount\nQtObject { property QtObject theme: Theme }", QUrl());
        const std::unique_ptr<QObject> held(holder.create());
        QVERIFY2(held != nullptr, qPrintable(holder.errorString()));
        auto* theme = held->property("theme").value<QObject*>();
        QVERIFY(theme != nullptr);
        for (const char* name : {"day", "sun", "dusk"}) {
            theme->setProperty("name", QLatin1String(name));
            QCOMPARE(shownItem(m_view->rootObject(), "verdictWord")->property("text").toString(), word);
            picture(name);
        }
        QVERIFY(touch("seal"));
    }
};

int main(int argc, char** argv)
{
    // The software renderer draws without a graphics card and the same on every machine.
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    TestPageTouchTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "test_page_touch_test.moc"
