// The parts under the finger, the mouse, the keyboard and an assistive press.
#include "qml/gallery_walk.h"

#include "paint/limit_line.h"
#include "paint/marks.h"

#include <QAccessible>
#include <QImage>
#include <QPainter>
#include <QPointingDevice>
#include <QSignalSpy>

class PartsTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        QVERIFY(groundcount::view::loadFonts().has_value());
        m_finger = QTest::createTouchDevice();
    }

    void typesByTouchOnTheKeypad()
    {
        const auto view = gallery::show(QStringLiteral("KeypadPage"), QSize(360, 640), QStringLiteral("day"));
        QVERIFY(view);
        QQuickItem* field = gallery::byName(view->rootObject(), QStringLiteral("wet_input"));
        QVERIFY(field != nullptr);
        QSignalSpy edited(gallery::byName(view->rootObject(), QStringLiteral("wet")), SIGNAL(edited(QString)));
        for (int i = 0; i < 5; ++i) {
            tap(view.get(), "key_backspace");
        }
        QCOMPARE(field->property("text").toString(), QString());
        for (const char* key : {"key_1", "key_3", "key_0", "key_point", "key_2"}) {
            tap(view.get(), key);
        }
        QCOMPARE(field->property("text").toString(), QStringLiteral("130.2"));
        QCOMPARE(edited.count(), 10);
    }

    void typesByHardwareKeyboard()
    {
        const auto view = gallery::show(QStringLiteral("KeypadPage"), QSize(412, 915), QStringLiteral("day"));
        QVERIFY(view);
        QQuickItem* field = gallery::byName(view->rootObject(), QStringLiteral("moisture_input"));
        QVERIFY(field != nullptr);
        QTest::mouseClick(view.get(), Qt::LeftButton, Qt::NoModifier, centre(field));
        QTRY_VERIFY(field->hasActiveFocus());
        for (const char key : {'1', '4', 'x', '-', '.', '5', '.', 'e'}) {
            QTest::keyClick(view.get(), key);
        }
        QCOMPARE(field->property("text").toString(), QStringLiteral("14.5"));
        QTest::keyClick(view.get(), Qt::Key_Backspace);
        QCOMPARE(field->property("text").toString(), QStringLiteral("14."));
    }

    void keepsTheFieldFocusedWhileItsKeysArePressed()
    {
        const auto view = gallery::show(QStringLiteral("KeypadPage"), QSize(412, 915), QStringLiteral("day"));
        QVERIFY(view);
        QQuickItem* field = gallery::byName(view->rootObject(), QStringLiteral("wet_input"));
        field->forceActiveFocus();
        tap(view.get(), "key_7");
        QVERIFY(field->hasActiveFocus());
    }

    void keysAreAsLargeAsTheSheetSays_data()
    {
        QTest::addColumn<QSize>("window");
        QTest::addColumn<qreal>("width");
        QTest::newRow("smallest phone") << QSize(360, 640) << 120.0;
        QTest::newRow("390 wide") << QSize(390, 844) << 130.0;
    }

    void keysAreAsLargeAsTheSheetSays()
    {
        QFETCH(QSize, window);
        QFETCH(qreal, width);
        const auto view = gallery::show(QStringLiteral("KeypadPage"), window, QStringLiteral("day"));
        QVERIFY(view);
        const QQuickItem* key = gallery::byName(view->rootObject(), QStringLiteral("key_5"));
        QCOMPARE(key->width(), width);
        QCOMPARE(key->height(), 64.0);
        QVERIFY(gallery::byName(view->rootObject(), QStringLiteral("key_2"))->mapToScene({}).y()
                < gallery::byName(view->rootObject(), QStringLiteral("key_8"))->mapToScene({}).y());
    }

    void picksAStepByTap()
    {
        const auto view = gallery::show(QStringLiteral("Clear"), QSize(390, 844), QStringLiteral("day"));
        QVERIFY(view);
        QSignalSpy picked(gallery::byName(view->rootObject(), QStringLiteral("stepHead")), SIGNAL(picked(int)));
        tap(view.get(), "step_3");
        QCOMPARE(picked.count(), 1);
        QCOMPARE(picked.constFirst().constFirst().toInt(), 3);
        const QQuickItem* cell = gallery::byName(view->rootObject(), QStringLiteral("step_3"));
        QVERIFY(cell->width() >= 55.5);
        QCOMPARE(cell->height(), 58.0);
    }

    void picksAPlaceInTheBottomBar()
    {
        const auto view = gallery::show(QStringLiteral("DayReady"), QSize(412, 915), QStringLiteral("day"));
        QVERIFY(view);
        QSignalSpy chosen(gallery::byName(view->rootObject(), QStringLiteral("bottomBar")), SIGNAL(chosen(QString)));
        tap(view.get(), "place_lots");
        QCOMPARE(chosen.count(), 1);
        QCOMPARE(chosen.constFirst().constFirst().toString(), QStringLiteral("lots"));
    }

    void answersEnterSpaceAndAnAssistivePress()
    {
        const auto view = gallery::show(QStringLiteral("VerdictPass"), QSize(412, 915), QStringLiteral("day"));
        QVERIFY(view);
        QQuickItem* button = gallery::byName(view->rootObject(), QStringLiteral("primaryButton"));
        QSignalSpy clicked(button, SIGNAL(clicked()));
        button->forceActiveFocus();
        QTest::keyClick(view.get(), Qt::Key_Return);
        QTest::keyClick(view.get(), Qt::Key_Space);
        QCOMPARE(clicked.count(), 2);
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(button);
        QVERIFY(face != nullptr && face->actionInterface() != nullptr);
        face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        QCOMPARE(clicked.count(), 3);
        button->setEnabled(false);
        face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        QCOMPARE(clicked.count(), 3);
    }

    void keepsTheThumbHeights()
    {
        const auto view = gallery::show(QStringLiteral("DayNoCounts"), QSize(390, 844), QStringLiteral("day"));
        QVERIFY(view);
        QCOMPARE(gallery::byName(view->rootObject(), QStringLiteral("primaryButton"))->height(), 68.0);
        QCOMPARE(gallery::byName(view->rootObject(), QStringLiteral("notYetButton"))->height(), 56.0);
        QCOMPARE(gallery::byName(view->rootObject(), QStringLiteral("bottomBar"))->height(), 78.0);
    }

    void drawsOneMarigoldThingAtMost_data()
    {
        QTest::addColumn<QString>("page");
        QTest::addColumn<bool>("some");
        QTest::newRow("hazards unsettled") << "Clear" << false;
        QTest::newRow("still counting") << "Count" << false;
        QTest::newRow("ready") << "DayReady" << true;
    }

    void drawsOneMarigoldThingAtMost()
    {
        QFETCH(QString, page);
        QFETCH(bool, some);
        const auto view = gallery::show(page, QSize(390, 844), QStringLiteral("day"));
        QVERIFY(view);
        const QImage picture = view->grabWindow();
        int marigold = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x) {
                marigold += picture.pixelColor(x, y) == QColor(0xF4, 0xB9, 0x2B) ? 1 : 0;
            }
        }
        QCOMPARE(marigold > 10000, some);
        QVERIFY(some || marigold == 0);
    }

    void partsLabelsThatMeet()
    {
        const QList<qreal> lefts = groundcount::paint::placeLabels({100, 110, 120}, {60, 60, 60}, 10, 300);
        QVERIFY(lefts[1] - lefts[0] >= 70 && lefts[2] - lefts[1] >= 70);
        QVERIFY(lefts[0] >= 0 && lefts[2] + 60 <= 300);
        const QList<qreal> edge = groundcount::paint::placeLabels({0, 300}, {60, 60}, 10, 300);
        QCOMPARE(edge, (QList<qreal>{0, 240}));
        QCOMPARE(groundcount::paint::placeLabels({150}, {60}, 10, 300), (QList<qreal>{120}));
    }

    void hatchesOnlyWhatIsNotAllowed()
    {
        groundcount::paint::LimitLine line;
        line.lowLimit = 0.5;
        const QImage picture = drawn(line);
        QVERIFY2(inked(picture, QRect(10, 9, 130, 3)) > 40, "no hatch below the low limit");
        QCOMPARE(inked(picture, QRect(185, 2, 150, 8)), 0);
        QVERIFY2(inked(picture, QRect(173, 3, 4, 22)) >= 3 * 18, "no tick at the limit");
    }

    void clearsTheHatchBehindTheSpread()
    {
        groundcount::paint::LimitLine line;
        line.lowLimit = 0.8;
        line.value = 0.3;
        line.spreadLow = 0.2;
        line.spreadHigh = 0.4;
        line.mark = groundcount::view::Mark::Fail;
        const QImage picture = drawn(line);
        // Between cap and mark, above the value line: bare paper inside the hatched half.
        QCOMPARE(inked(picture, QRect(80, 8, 12, 3)), 0);
        QVERIFY(inked(picture, QRect(180, 8, 60, 3)) > 10);
    }

    void drawsEachStateInItsOwnShape()
    {
        using groundcount::view::Mark;
        const QList<Mark> marks{Mark::Pass, Mark::Fail, Mark::Waiting, Mark::InformationOnly, Mark::Void, Mark::Owed, Mark::Clear, Mark::TooClose, Mark::CannotTell};
        // In grey, so that colour cannot tell them apart.
        QList<QImage> shapes;
        for (const Mark mark : marks) {
            QImage image(48, 48, QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            groundcount::paint::InkSet inks;
            inks.pass = inks.fail = inks.ink = Qt::black;
            inks.paper = Qt::white;
            groundcount::paint::drawMark(painter, mark, QRectF(0, 0, 48, 48), inks, groundcount::paint::Ground::Plain);
            painter.end();
            for (const QImage& other : std::as_const(shapes)) {
                QVERIFY2(differing(image, other) > 150, qPrintable(QStringLiteral("mark %1 looks like an earlier one").arg(int(mark))));
            }
            shapes << image;
        }
    }

private:
    static QPoint centre(const QQuickItem* item) { return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint(); }

    void tap(QQuickView* view, const char* name)
    {
        const QQuickItem* item = gallery::byName(view->rootObject(), QString::fromLatin1(name));
        QVERIFY2(item != nullptr, name);
        QTest::touchEvent(view, m_finger).press(0, centre(item), view);
        QTest::touchEvent(view, m_finger).release(0, centre(item), view);
    }

    static QImage drawn(const groundcount::paint::LimitLine& line)
    {
        QImage image(350, 28, QImage::Format_RGB32);
        const groundcount::paint::InkSet inks;
        image.fill(inks.paper);
        QPainter painter(&image);
        groundcount::paint::drawLimitLine(painter, line, 350, inks, {});
        return image;
    }

    static int inked(const QImage& image, const QRect& area)
    {
        const groundcount::paint::InkSet inks;
        int count = 0;
        for (int y = area.top(); y <= area.bottom(); ++y) {
            for (int x = area.left(); x <= area.right(); ++x) {
                count += image.pixelColor(x, y) == inks.paper ? 0 : 1;
            }
        }
        return count;
    }

    static int differing(const QImage& a, const QImage& b)
    {
        int count = 0;
        for (int y = 0; y < a.height(); ++y) {
            for (int x = 0; x < a.width(); ++x) {
                count += qAbs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 100 ? 1 : 0;
            }
        }
        return count;
    }

    static inline QPointingDevice* m_finger = nullptr;  // never taken down, and not lost
};

QTEST_MAIN(PartsTest)
#include "parts_test.moc"
