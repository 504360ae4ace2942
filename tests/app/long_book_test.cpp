// A book whose tests are read beside the pages (decision 0012): what is shown until then, and that nothing sealed meanwhile is lost.
#include "app/running_app.h"
#include "book/state_query.h"
#include "book/store.h"
#include "programme/contract.h"
#include "view/map_view.h"
#include "view/session.h"

#include <QStandardPaths>
#include <QTemporaryDir>

using namespace groundcount;

namespace {

constexpr std::int64_t kAtOnce = 5;

/// What a seal can change of the tests, as one text.
QStringList shown(const std::vector<book::TestRow>& tests)
{
    QStringList lines;
    for (const auto& t : tests)
        lines << QString::fromStdString(t.id + ' ' + t.number + ' ' + t.lotName + ' ' + t.personName + ' ' + book::word(t.state) + ' ' + t.compactionPct + ' ' + t.recordHash);
    return lines;
}

QStringList points(const map::MapScene& scene)
{
    QStringList lines;
    for (std::size_t i = 0; i < scene.points.size(); ++i) {
        const auto& p = scene.points[i];
        lines << QStringLiteral("%1 %2 %3 %4 %5 %6").arg(p.east).arg(p.north).arg(static_cast<int>(p.state)).arg(p.lift).arg(scene.names.label(i), scene.names.id(i));
    }
    return lines;
}

}  // namespace

class LongBookTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_book, m_number;

    Result<void> open(view::Session& session, std::int64_t atOnce = kAtOnce) const
    {
        view::Session::setReadAtOnce(atOnce);
        return session.open(m_book, m_folder.filePath(QStringLiteral("device.key")));
    }
    static bool waitUntilRead(view::Session& session) { return QTest::qWaitFor([&] { return !session.isReading(); }, 20'000); }
    static QStringList fresh(view::Session& session) { return shown(book::StateQuery(session.store()).tests({}).value()); }
    static Result<book::Record> strike(view::Session& session, const std::string& test)
    {
        return session.seal("void", test, book::Body::object(), {}, "Taken at the wrong spot.");
    }
    static Result<book::Record> add(view::Session& session, const char* name)
    {
        return session.seal("person", view::Session::newId(), {{"name", name}, {"role", "technician"}});
    }

private slots:
    void init()
    {
        QStandardPaths::setTestModeEnabled(true);
        m_book = m_folder.filePath(QStringLiteral("contract.fieldbook"));
        QFile::remove(m_book);
        const auto truth = programme::writeContract(m_book.toStdString(), 1, {2, 2, 20, 0}, 20261127);
        m_number = QString::fromStdString(truth.tests.back().number);
    }

    void theMapIsTheSameBeforeAndAfter()
    {
        view::Session session(nullptr);
        QVERIFY(open(session));
        QVERIFY(session.isReading());
        QVERIFY(session.snapshot().tests.empty());
        view::MapView map;
        map.setSession(&session);
        const QStringList before = points(*map.source()->scene());
        const int lift = map.lift();
        QVERIFY(before.size() >= 80);
        QVERIFY(map.isReading());
        QCOMPARE(map.subtitle(), view::MapView::tr("Reading the tests…"));
        map.choose(before.front().section(' ', -1));
        QVERIFY(map.chosenIsTest());
        QVERIFY(waitUntilRead(session));
        QVERIFY(!map.isReading());
        QCOMPARE(map.lift(), lift);
        QCOMPARE(points(*map.source()->scene()), before);
        QVERIFY2(map.subtitle().startsWith(QStringLiteral("40 of 40")), qPrintable(map.subtitle()));
        QCOMPARE(shown(session.snapshot().tests), fresh(session));
    }

    void whatIsSealedMeanwhileIsThere()
    {
        view::Session session(nullptr);
        QVERIFY(open(session));
        const std::string test = book::StateQuery(session.store()).tests({}).value().front().id;
        QVERIFY(session.isReading());
        QVERIFY(strike(session, test));
        QVERIFY(add(session, "B. Sample"));
        QVERIFY(waitUntilRead(session));
        QCOMPARE(session.snapshot().people.back().name, book::StateQuery(session.store()).people().value().back().name);
        const auto person = std::count_if(session.snapshot().people.begin(), session.snapshot().people.end(), [](const auto& p) { return p.name == "B. Sample"; });
        QCOMPARE(person, 1);
        QCOMPARE(shown(session.snapshot().tests), fresh(session));
        QVERIFY(std::any_of(session.snapshot().tests.begin(), session.snapshot().tests.end(), [&](const auto& t) { return t.id == test && t.state == book::TestState::Void; }));
    }

    void anotherReadingLeavesTheRowsInPlace()
    {
        view::Session session(nullptr);
        QVERIFY(open(session));
        QVERIFY(waitUntilRead(session));
        const std::size_t size = session.snapshot().tests.size();
        const auto people = book::StateQuery(session.store()).people().value();
        const auto records = session.store().records({.subject = people.front().id, .kind = "person"}).value();
        book::Body renamed = records.back().body;
        renamed["name"] = "Renamed Sample";
        QVERIFY(session.seal("person", people.front().id, renamed, records.back().hash, "A new name."));
        QVERIFY(!session.isReading());
        QCOMPARE(session.snapshot().tests.size(), size);
        // a test that changes while the rows are being read again shows at once
        const std::string test = session.snapshot().tests.back().id;
        QVERIFY(strike(session, test));
        QVERIFY(session.snapshot().tests.back().state == book::TestState::Void);
        QVERIFY(QTest::qWaitFor([&] { return shown(session.snapshot().tests) == fresh(session); }, 20'000));
    }

    void aShortBookIsReadAtOnce()
    {
        view::Session session(nullptr);
        QVERIFY(open(session, 1000));
        QVERIFY(!session.isReading());
        QCOMPARE(shown(session.snapshot().tests), fresh(session));
    }

    void pagesThatNeedTheTestsSaySoUntilThen()
    {
        ui::StartOptions options;
        options.book = m_book;
        options.open = QStringLiteral("record:") + m_number;
        view::Session::setReadAtOnce(kAtOnce);
        QQmlApplicationEngine engine;
        QVERIFY(ui::start(engine, options));
        auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        const auto find = [&](const char* name) { return gallery::byName(window->contentItem(), QString::fromLatin1(name)); };
        QVERIFY(find("readingTests"));
        QVERIFY(!find("dayPage"));
        QVERIFY(QTest::qWaitFor([&] { return find("recordPage") != nullptr; }, 20'000));
        QVERIFY(!find("readingTests"));
    }

    void theMapOpensBeforeTheTestsAreRead()
    {
        ui::StartOptions options;
        options.book = m_book;
        options.place = QStringLiteral("map");
        view::Session::setReadAtOnce(kAtOnce);
        QQmlApplicationEngine engine;
        QVERIFY(ui::start(engine, options));
        auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        QVERIFY(gallery::byName(window->contentItem(), QStringLiteral("mapPage")));
        QVERIFY(!gallery::byName(window->contentItem(), QStringLiteral("readingTests")));
    }
};

QTEST_MAIN(LongBookTest)
#include "long_book_test.moc"
