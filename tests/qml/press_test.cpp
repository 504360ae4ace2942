// What every control stands on (qml/parts/keys/press_item.h), under fingers, mouse and keyboard, in a list that can be drawn.
#include "keys/press_item.h"

#include <QPointingDevice>
#include <QQmlComponent>
#include <QQuickView>
#include <QSignalSpy>
#include <QTest>

#include <memory>

using groundcount::keys::PressItem;

namespace {

// Two buttons of 100 x 100 side by side at the top of a sheet that is longer than the window.
constexpr const char* kSheet = R"(
import QtQuick
import Groundcount
Flickable {
    width: 200; height: 200; contentHeight: 1000
    PressItem { objectName: "left"; width: 100; height: 100; text: "Left"; leftPadding: 10; rightPadding: 20; contentItem: Text { text: parent.text } }
    PressItem { objectName: "right"; x: 100; width: 100; height: 100; focusPolicy: Qt.NoFocus }
}
)";

const QPoint kLeft(50, 50), kRight(150, 50);

}  // namespace

class PressTest : public QObject {
    Q_OBJECT

    static inline QPointingDevice* m_screen = nullptr;  // never taken down, and not lost
    std::unique_ptr<QQuickView> m_view;
    PressItem* m_left = nullptr;
    PressItem* m_right = nullptr;

private slots:
    void initTestCase() { m_screen = QTest::createTouchDevice(); }

    void init()
    {
        m_view = std::make_unique<QQuickView>();
        QQmlComponent sheet(m_view->engine());
        sheet.setData(kSheet, {});
        auto* item = sheet.create();
        QVERIFY2(item, qPrintable(sheet.errorString()));
        m_view->setContent({}, nullptr, item);
        m_view->resize(200, 200);
        m_view->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_view.get()));
        m_left = item->findChild<PressItem*>(QStringLiteral("left"));
        m_right = item->findChild<PressItem*>(QStringLiteral("right"));
        QVERIFY(m_left && m_right);
    }

    void cleanup() { m_view.reset(); }

    void eachFingerPressesItsOwn()
    {
        QSignalSpy left(m_left, &PressItem::clicked), right(m_right, &PressItem::clicked);
        QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
        QVERIFY(m_left->isPressed() && !m_right->isPressed());
        QTest::touchEvent(m_view.get(), m_screen).stationary(0).press(1, kRight);
        QVERIFY(m_left->isPressed() && m_right->isPressed());
        QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft).stationary(1);
        QCOMPARE(left.count(), 1);
        QCOMPARE(right.count(), 0);
        QTest::touchEvent(m_view.get(), m_screen).release(1, kRight);
        QCOMPARE(left.count(), 1);
        QCOMPARE(right.count(), 1);
        QVERIFY(!m_left->isPressed() && !m_right->isPressed());
    }

    /// A second finger on a pressed one neither ends its press nor presses it again.
    void aSecondFingerOnItDoesNothing()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
        QTest::touchEvent(m_view.get(), m_screen).stationary(0).press(1, kLeft + QPoint(20, 0));
        QTest::touchEvent(m_view.get(), m_screen).stationary(0).release(1, kLeft + QPoint(20, 0));
        QVERIFY(m_left->isPressed());
        QCOMPARE(left.count(), 0);
        QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft);
        QCOMPARE(left.count(), 1);
    }

    void twoQuickPressesAreTwo()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        for (int i = 0; i < 2; ++i) {
            QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
            QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft);
        }
        QCOMPARE(left.count(), 2);
        QTest::mouseClick(m_view.get(), Qt::LeftButton, {}, kLeft);
        QTest::mouseDClick(m_view.get(), Qt::LeftButton, {}, kLeft);
        QCOMPARE(left.count(), 5);
        QVERIFY(!m_left->isPressed());
    }

    /// Thought better of: off it and let go.
    void whatEndsBesideItDoesNotCount()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        QTest::mousePress(m_view.get(), Qt::LeftButton, {}, QPoint(95, 50));
        QTest::mouseMove(m_view.get(), QPoint(103, 50));
        QVERIFY(!m_left->isPressed());
        QTest::mouseMove(m_view.get(), QPoint(96, 50));
        QVERIFY(m_left->isPressed());
        QTest::mouseMove(m_view.get(), QPoint(103, 50));
        QTest::mouseRelease(m_view.get(), Qt::LeftButton, {}, QPoint(103, 50));
        QCOMPARE(left.count(), 0);
        QTest::mouseClick(m_view.get(), Qt::RightButton, {}, kLeft);
        QCOMPARE(left.count(), 0);
    }

    void aListThatIsDrawnTakesThePress()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
        for (int step = 1; step <= 8; ++step) {
            QTest::touchEvent(m_view.get(), m_screen).move(0, kLeft - QPoint(0, 5 * step));
            QTest::qWait(10);
        }
        QVERIFY(m_view->rootObject()->property("contentY").toReal() > 0);
        QVERIFY(!m_left->isPressed());
        QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft - QPoint(0, 40));
        QCOMPARE(left.count(), 0);
    }

    void hiddenOrDisabledItLosesThePress()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        for (const bool hide : {true, false}) {
            QTest::mousePress(m_view.get(), Qt::LeftButton, {}, kLeft);
            QVERIFY(m_left->isPressed());
            hide ? m_left->setVisible(false) : m_left->setEnabled(false);
            QVERIFY(!m_left->isPressed());
            QTest::mouseRelease(m_view.get(), Qt::LeftButton, {}, kLeft);
            m_left->setVisible(true);
        }
        QTest::mouseClick(m_view.get(), Qt::LeftButton, {}, kLeft);
        QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
        QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft);
        QCOMPARE(left.count(), 0);
    }

    void spacePressesAndTheKeyboardsFocusIsShown()
    {
        QSignalSpy left(m_left, &PressItem::clicked);
        m_left->forceActiveFocus(Qt::TabFocusReason);
        QVERIFY(m_left->hasVisualFocus());
        QTest::keyPress(m_view.get(), Qt::Key_Space);
        QVERIFY(m_left->isPressed());
        QCOMPARE(left.count(), 0);
        QTest::keyRelease(m_view.get(), Qt::Key_Space);
        QCOMPARE(left.count(), 1);
        QTest::keyClick(m_view.get(), Qt::Key_A);
        QCOMPARE(left.count(), 1);
        QTest::mouseClick(m_view.get(), Qt::LeftButton, {}, kRight);  // without a focus of its own
        QVERIFY(m_left->hasActiveFocus() && !m_right->hasActiveFocus());
        m_view->rootObject()->forceActiveFocus();
        QVERIFY(!m_left->hasVisualFocus());
        QTest::mouseClick(m_view.get(), Qt::LeftButton, {}, kLeft);
        QVERIFY(m_left->hasActiveFocus() && !m_left->hasVisualFocus());
    }

    void heldItRepeats()
    {
        m_left->setProperty("autoRepeat", true);
        QSignalSpy left(m_left, &PressItem::clicked);
        QTest::touchEvent(m_view.get(), m_screen).press(0, kLeft);
        QTRY_VERIFY(left.count() >= 3);
        QTest::touchEvent(m_view.get(), m_screen).release(0, kLeft);
        const auto repeated = left.count();
        QTest::qWait(250);
        QCOMPARE(left.count(), repeated);  // neither the end of the press nor its timer counts again
        QTest::mouseClick(m_view.get(), Qt::LeftButton, {}, kLeft);
        QCOMPARE(left.count(), repeated + 1);
    }

    void itsContentLiesBetweenThePaddings()
    {
        const auto* content = m_left->contentItem();
        QCOMPARE(content->position(), QPointF(10, 0));
        QCOMPARE(content->size(), QSizeF(70, 100));
        QVERIFY(m_left->implicitContentWidth() > 5 && m_left->implicitContentWidth() == content->implicitWidth());
        m_left->setWidth(60);
        m_left->setProperty("leftPadding", 5);
        QCOMPARE(content->position(), QPointF(5, 0));
        QCOMPARE(content->size(), QSizeF(35, 100));
        QCOMPARE(m_right->contentItem(), nullptr);
        QCOMPARE(m_right->implicitContentHeight(), 0.0);
    }
};

QTEST_MAIN(PressTest)
#include "press_test.moc"
