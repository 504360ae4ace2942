// The engineer's review in the whole app: by finger on a phone, by mouse and keyboard on a desktop.
#include "app/command_bench.h"
#include "app/running_app.h"

#include <QStandardPaths>

class EngineerReviewTouchTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    using Hand = RunningApp::Hand;

    groundcount::ui::StartOptions options(const QString& book, QSize size, const QString& open) const
    {
        groundcount::ui::StartOptions o;
        o.book = book;
        o.size = size;
        o.open = open;
        o.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
        return o;
    }

    QString freshDay(const QString& name) const
    {
        QFile::copy(m_bench.path("day.fieldbook"), m_bench.path(name));
        return m_bench.path(name);
    }

    QJsonObject lotBy(const QString& book, const QString& lot = "N-4") const
    {
        const auto answer = m_bench.run({"review", book, "--lot", lot, "--json"});
        return QJsonDocument::fromJson(answer.out).array().first().toObject();
    }

    static void hands()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("hand");
        QTest::newRow("finger 412x915") << QSize(412, 915) << static_cast<int>(Hand::Finger);
        QTest::newRow("mouse 1280x800") << QSize(1280, 800) << static_cast<int>(Hand::Mouse);
        QTest::newRow("finger 360x640") << QSize(360, 640) << static_cast<int>(Hand::Finger);
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
    }

    void returnsALotWithItsReason_data() { hands(); }
    void returnsALotWithItsReason()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay(QString::fromLatin1(QTest::currentDataTag()).remove(' ') + ".fieldbook");
        {
            RunningApp app;
            QVERIFY(app.start(options(book, size, "lot:N-4")));
            QVERIFY(app.waitFor("reviewLink"));
            QVERIFY(!app.textOf("lotReason").isEmpty());
            QVERIFY(app.press("reviewLink", with));
            QVERIFY(app.waitFor("reviewPage"));
            // tests are owed: plain acceptance says what stands against it
            QVERIFY(app.find("reviewNotYet")->isVisible());
            QVERIFY2(app.textOf("reviewNotYet").contains("owed"), qPrintable(app.textOf("reviewNotYet")));
            QVERIFY(app.press("reviewReturn", with));
            QVERIFY(app.waitForText("reviewTrouble", "reason is missing"));
            QVERIFY(app.press("reviewNote_input", with));
            app.type("lift 7 is not finished");
            QVERIFY(app.press("reviewReturn", with));
            QVERIFY2(app.waitForText("reviewStanding", "returned"), qPrintable(app.textOf("reviewStanding") + app.textOf("reviewTrouble")));
            QVERIFY2(app.textOf("reviewReason").contains("M. Lindqvist"), qPrintable(app.textOf("reviewReason")));
        }
        const auto lot = lotBy(book);
        QCOMPARE(lot["standing"_k].toString(), QStringLiteral("returned"));
        QCOMPARE(lot["review"_k]["note"_k].toString(), QStringLiteral("lift 7 is not finished"));
        QCOMPARE(lot["review"_k]["by"_k].toString(), QStringLiteral("M. Lindqvist"));
        QVERIFY(m_bench.run({"check", book}).code == 0);
    }

    void acceptsOneLiftAndSeesItChangeWhenSomethingIsSealed_data() { hands(); }
    void acceptsOneLiftAndSeesItChangeWhenSomethingIsSealed()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay("lift" + QString::fromLatin1(QTest::currentDataTag()).remove(' ') + ".fieldbook");
        const auto lifts = lotBy(book, "N-3")["lifts"_k].toArray();
        int ready = -1;
        for (int i = 0; i < lifts.size(); ++i)
            if (lifts[i].toObject()["standing"_k].toString() == "ready for review")
                ready = i;
        QVERIFY2(ready >= 0, "the demo's lot N-3 has no lift that is ready for review");
        RunningApp app;
        QVERIFY(app.start(options(book, size, "lot:N-3/review")));
        QVERIFY(app.waitFor("reviewPage"));
        QQuickItem* parts = app.find("reviewParts");
        QVERIFY(parts);
        const QByteArray row = "row" + QByteArray::number(ready + 1);
        QQuickItem* lift = gallery::byName(parts, QString::fromLatin1(row));
        QVERIFY(lift);
        lift->setObjectName("chosenLift");
        QVERIFY(app.press("chosenLift", with));
        QVERIFY(app.waitForText("reviewStanding", "ready for review"));
        QVERIFY(app.press("reviewAccept", with));
        QVERIFY2(app.waitForText("reviewStanding", "accepted"), qPrintable(app.textOf("reviewStanding") + app.textOf("reviewTrouble")));
        // an accepted lift that nothing changed can be said again, and returned
        QVERIFY(app.find("change_0") == nullptr);
    }

    void everythingUnusualLeadsToTheRecordOfItsTest_data() { hands(); }
    void everythingUnusualLeadsToTheRecordOfItsTest()
    {
        QFETCH(QSize, size);
        QFETCH(int, hand);
        const auto with = static_cast<Hand>(hand);
        const QString book = freshDay("unusual" + QString::fromLatin1(QTest::currentDataTag()).remove(' ') + ".fieldbook");
        const auto unusual = lotBy(book, "N-3")["unusual"_k].toArray();
        RunningApp app;
        QVERIFY(!unusual.isEmpty());  // test 20 of the demo, sealed with an override
        QVERIFY(app.start(options(book, size, "lot:N-3/review")));
        QVERIFY(app.waitFor("unusual_0"));
        int shown = 0;
        while (app.find(("unusual_" + QByteArray::number(shown)).constData()))
            ++shown;
        QCOMPARE(shown, unusual.size());
        QVERIFY(app.press("unusual_0", with));
        QVERIFY(app.waitFor("recordPage"));
    }

    void escapeLeavesTheReview()
    {
        RunningApp app;
        QVERIFY(app.start(options(m_bench.path("day.fieldbook"), {1280, 800}, "lot:N-4/review")));
        QVERIFY(app.waitFor("reviewPage"));
        // list, lot and sheet stand side by side
        QVERIFY(app.find("lotList")->isVisible() && app.find("lotDetail")->isVisible());
        QVERIFY(app.find("lotDetail")->mapToScene(QPointF()).x() > app.find("lotList")->mapToScene(QPointF()).x());
        QVERIFY(app.find("reviewPage")->mapToScene(QPointF()).x() > app.find("lotDetail")->mapToScene(QPointF()).x());
        app.find("reviewPage")->forceActiveFocus();
        app.key(Qt::Key_Escape);
        QVERIFY(QTest::qWaitFor([&] { return !app.find("reviewPage"); }, 2000));
    }
};

QTEST_MAIN(EngineerReviewTouchTest)
#include "engineer_review_touch_test.moc"
