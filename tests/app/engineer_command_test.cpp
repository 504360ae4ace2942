// groundbook review and draw: success, refusal, wrong use.
#include "app/command_bench.h"

class EngineerCommandTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    QString m_day;

    QString copy(const char* name) const
    {
        QFile::copy(m_day, m_bench.path(name));
        return m_bench.path(name);
    }
    QJsonObject lot(const QString& book, const QString& name) const
    {
        return QJsonDocument::fromJson(m_bench.run({"review", book, "--lot", name, "--json"}).out).array().first().toObject();
    }

private slots:
    void initTestCase()
    {
        QCOMPARE(m_bench.play("day.fieldbook").code, 0);
        m_day = m_bench.path("day.fieldbook");
    }

    void reviewShowsWhereEveryLotStands()
    {
        const auto answer = m_bench.run({"review", m_day});
        QCOMPARE(answer.code, 0);
        QVERIFY(answer.out.contains("Lot N-3: ready for review. All 8 tests made, no failure open."));
        QVERIFY(answer.out.contains("Lot N-4: under way. 2 tests are owed, 1 test is not finished."));
        QVERIFY(answer.out.contains("unusual: test 20, check overridden"));
    }

    void anEngineersWordIsSealedAndShown()
    {
        const QString book = copy("accept.fieldbook");
        const auto sealed = m_bench.run({"review", book, "--lot", "N-3", "--lift", "8", "--say", "accepted", "--by", "M. Lindqvist"});
        QVERIFY2(sealed.code == 0, sealed.err.constData());
        QVERIFY(sealed.out.startsWith("Sealed: accepted"));
        auto shown = lot(book, "N-3");
        QCOMPARE(shown["lifts"_k].toArray().first().toObject()["standing"_k].toString(), QStringLiteral("accepted"));
        QCOMPARE(shown["standing"_k].toString(), QStringLiteral("ready for review"));
        QCOMPARE(m_bench.run({"review", book, "--lot", "N-3", "--lift", "7", "--say", "exception", "--note", "test 20 is information only", "--by", "M. Lindqvist"}).code, 0);
        shown = lot(book, "N-3");
        QCOMPARE(shown["standing"_k].toString(), QStringLiteral("accepted with exception"));
        QCOMPARE(m_bench.run({"check", book}).code, 0);
    }

    void refusesInOneSentence_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("owed") << QStringList{"--lot", "N-4", "--say", "accepted", "--by", "M. Lindqvist"};
        QTest::newRow("no reason") << QStringList{"--lot", "N-4", "--say", "returned", "--by", "M. Lindqvist"};
        QTest::newRow("technician") << QStringList{"--lot", "N-3", "--say", "accepted", "--by", "R. Okafor"};
        QTest::newRow("nobody") << QStringList{"--lot", "N-3", "--say", "accepted", "--by", "N. Obody"};
        QTest::newRow("no lot") << QStringList{"--say", "accepted", "--by", "M. Lindqvist"};
        QTest::newRow("unknown lot") << QStringList{"--lot", "N-9"};
        QTest::newRow("unknown lift") << QStringList{"--lot", "N-3", "--lift", "99", "--say", "accepted", "--by", "M. Lindqvist"};
    }
    void refusesInOneSentence()
    {
        QFETCH(QStringList, arguments);
        const QByteArray before = Bench::read(m_day);
        const auto answer = m_bench.run(QStringList{"review", m_day} + arguments);
        QVERIFY2(answer.isRefusal(), (answer.out + answer.err).constData());
        QCOMPARE(Bench::read(m_day), before);
    }

    void aDrawIsShownRepeatedAndSealed()
    {
        const QStringList seeded{"draw", m_day, "--lot", "N-4", "--lift", "7", "--edge", "30", "--seed", "42", "--json"};
        const auto once = m_bench.run(seeded);
        QVERIFY2(once.code == 0, once.err.constData());
        QCOMPARE(m_bench.run(seeded).out, once.out);
        const auto body = Bench::object(once.out);
        QCOMPARE(body["sites"_k].toArray().size(), 4);
        QVERIFY(!body["rejected"_k].toArray().isEmpty());
        for (const auto& site : body["rejected"_k].toArray())
            QVERIFY(site.toObject()["why"_k].toString().size() > 10);
        const auto free = m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "7", "--json"});
        QVERIFY(Bench::object(free.out)["seed"_k] != Bench::object(m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "7", "--json"}).out)["seed"_k]);
        const QString book = copy("drawn.fieldbook");
        const auto sealed = m_bench.run({"draw", book, "--lot", "N-4", "--lift", "7", "--edge", "30", "--seed", "42", "--seal", "--by", "M. Lindqvist"});
        QVERIFY2(sealed.code == 0, sealed.err.constData());
        QVERIFY(sealed.out.contains("Sealed: record "));
        QCOMPARE(m_bench.run({"check", book}).code, 0);
    }

    void drawRefusesAndTellsWrongUse()
    {
        QVERIFY(m_bench.run({"draw", m_day, "--lot", "N-9", "--lift", "7"}).isRefusal());
        QVERIFY(m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "99"}).isRefusal());
        QVERIFY(m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "7", "--sites", "5"}).isRefusal());
        QVERIFY(m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "7", "--edge", "400"}).isRefusal());
        QCOMPARE(m_bench.run({"draw", m_day}).code, 2);
        QCOMPARE(m_bench.run({"draw", m_day, "--lot", "N-4", "--lift", "7", "--edge", "-1"}).code, 2);
        QCOMPARE(m_bench.run({"review", m_day, "--say", "perhaps"}).code, 2);
    }
};

QTEST_GUILESS_MAIN(EngineerCommandTest)
#include "engineer_command_test.moc"
