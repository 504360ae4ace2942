#include "view/desk.h"

#include "book/store.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QQmlEngine>
#include <algorithm>
#include <utility>

namespace groundcount::view {
namespace {

/// Stand for a lot on Lots while the owner's file is made and while the shared server is looked at; no lot has such an id.
const QString kHandOver = QStringLiteral("hand-over");
const QString kServer = QStringLiteral("server");
const QString kPublish = QStringLiteral("publish");

bool isNoLot(const QString& id)
{
    return id.isEmpty() || id == kHandOver || id == kServer || id == kPublish;
}

/// Id of the gauge, reference test or person of this name; empty for no name. @error Refused for a name that the book does not have
Result<QString> kitSubjectNamed(const Session& session, const QString& name)
{
    if (name.isEmpty())
        return QString();
    const auto& all = session.snapshot();
    const std::string wanted = name.toStdString();
    const auto found = [&](const auto& rows) {
        const auto at = std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.name == wanted; });
        return at == rows.end() ? QString() : QString::fromStdString(at->id);
    };
    for (const QString& id : {found(all.gauges), found(all.proctors), found(all.people), found(all.lots)})
        if (!id.isEmpty())
            return id;
    return refused("The book has no gauge, reference test, person or lot called " + wanted + ".");
}

}  // namespace

Desk::Desk(Session* session, QObject* parent) : QObject(parent), m_session(session), m_obstacle(session, this), m_exchange(session), m_receiver(session), m_shelf(session)
{
    m_sheet.setSession(session);
    connect(m_sheet.clear(), &ClearStep::hazardWanted, &m_obstacle, &ObstacleSheet::openFrom);
    connect(&m_obstacle, &ObstacleSheet::sealed, m_sheet.clear(), &ClearStep::derive);
    connect(&m_screen, &ScreenSettings::languageChanged, this, [this] {
        if (auto* engine = qmlEngine(this))
            engine->retranslate();
        m_session->readAgain();
    });
}

Desk* Desk::create(QQmlEngine* engine, QJSEngine* scriptEngine)
{
    return new Desk(Session::create(engine, scriptEngine), engine);
}

void Desk::setPlace(const QString& place)
{
    static const QStringList places{QStringLiteral("day"), QStringLiteral("map"), QStringLiteral("lots"), QStringLiteral("kit")};
    if (place == m_place || !places.contains(place))
        return;
    m_place = place;
    m_placeOfTest.clear();
    m_fromLots = false;
    emit placeChanged();
}

void Desk::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    if (isNoLot(id))
        m_lotSheet.clear();
    emit lotChanged();
}

void Desk::setLotSheet(const QString& sheet)
{
    static const QStringList sheets{QString(), QStringLiteral("review"), QStringLiteral("figures"), QStringLiteral("draw"), QStringLiteral("profile"), QStringLiteral("tests")};
    // the tests of every lot need none that is chosen
    if (sheet == m_lotSheet || !sheets.contains(sheet) || (m_lot.isEmpty() && !sheet.isEmpty() && sheet != sheets.last()))
        return;
    if (isNoLot(m_lot))
        m_lot.clear();
    m_lotSheet = sheet;
    emit lotChanged();
}

void Desk::setKit(const QString& sheet)
{
    if (!sheet.isEmpty()) {
        if (m_testOpen)
            m_placeOfTest = m_place;
        closeTest();
        const bool fromLots = m_place == QStringLiteral("lots") || m_fromLots;
        if (kitSheet() == QStringLiteral("lot") && sheet != m_kit)
            m_kitUnder = m_kit;
        const QString back = m_placeOfTest;
        setPlace(QStringLiteral("kit"));
        m_placeOfTest = back;
        m_fromLots = fromLots;
    }
    // What a lot lacks is added over its sheet, which comes back.
    const QString next = sheet.isEmpty() ? std::exchange(m_kitUnder, QString()) : sheet;
    if (next == m_kit)
        return;
    m_kit = next;
    emit kitChanged();
    if (next.isEmpty() && std::exchange(m_fromLots, false))
        setPlace(QStringLiteral("lots"));
    if (!next.isEmpty() || m_placeOfTest.isEmpty())
        return;
    // A test sent the person here: its sheet comes back, with what is in the book now.
    setPlace(std::exchange(m_placeOfTest, QString()));
    m_sheet.clear()->derive();
    setTestOpen(true);
}

Result<void> Desk::openNamed(const QString& what)
{
    const QString name = what.section(':', 1);
    if (what == QStringLiteral("new")) {
        start();
        return {};
    }
    if (what == QStringLiteral("screen")) {
        setScreenOpen(true);
        return {};
    }
    if (what == kHandOver || what == kServer || what == kPublish) {
        setPlace(QStringLiteral("lots"));
        setLot(what);
        return {};
    }
    if (what.startsWith(QStringLiteral("site-file:"))) {
        const QJsonObject draft{{QStringLiteral("path"), what.mid(what.indexOf(':') + 1)}};
        const auto saved = m_session->store().saveDraft(m_session->person().id, "site-file", QJsonDocument(draft).toJson(QJsonDocument::Compact).toStdString());
        setKit(QStringLiteral("site-file"));
        return saved;
    }
    if (what == QStringLiteral("coverage")) {
        setPlace(QStringLiteral("map"));
        m_coverageShown = true;
        emit coverageShownChanged();
        return {};
    }
    if (what.startsWith(QStringLiteral("record:"))) {
        const auto opened = openNamed(QStringLiteral("test:") + name);
        m_sheet.setProperty("recordShown", opened.has_value());
        return opened;
    }
    if (what.startsWith(QStringLiteral("test:"))) {
        const QString number = name.section('/', 0, 0);
        const QString step = name.section('/', 1);
        const auto& tests = m_session->snapshot().tests;
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const auto& t) { return QString::fromStdString(t.number) == number; });
        if (test == tests.end())
            return refused("The book has no test " + number.toStdString() + ".");
        openTest(QString::fromStdString(test->id));
        bool isNumber = false;
        const int index = step.toInt(&isNumber) - 1;
        if (!step.isEmpty() && (!isNumber || index < 0 || index >= TestSheet::kSteps))
            return refused("The step of a test is 1 to 6; it is " + step.toStdString() + ".");
        if (isNumber)
            m_sheet.pickStep(index);
        return {};
    }
    if (what.startsWith(QStringLiteral("paper:lot:")) || what.startsWith(QStringLiteral("paper:review:"))) {
        const auto& lots = m_session->snapshot().lots;
        const auto lot = std::find_if(lots.begin(), lots.end(), [&](const auto& l) { return QString::fromStdString(l.name) == name.section(':', 1); });
        if (lot == lots.end())
            return refused("The book has no lot " + name.section(':', 1).toStdString() + ".");
        setPlace(QStringLiteral("lots"));
        setLot(QString::fromStdString(lot->id));
        setPaper(name.section(':', 0, 0) + ':' + m_lot);
        return {};
    }
    if (what.startsWith(QStringLiteral("paper:"))) {
        const auto& tests = m_session->snapshot().tests;
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const auto& t) { return QString::fromStdString(t.number) == name; });
        if (test == tests.end() && name != QStringLiteral("day"))
            return refused("The book has no test " + name.toStdString() + ".");
        setPaper(test == tests.end() ? name : QStringLiteral("test:") + QString::fromStdString(test->id));
        return {};
    }
    if (what.startsWith(QStringLiteral("lot:"))) {
        for (const auto& lot : m_session->snapshot().lots) {
            const QString lotName = QString::fromStdString(lot.name);
            if (name == lotName || name.startsWith(lotName + '/')) {
                setPlace(QStringLiteral("lots"));
                setLot(QString::fromStdString(lot.id));
                const QString sheet = name.mid(lotName.size() + 1);
                setLotSheet(sheet);
                return m_lotSheet == sheet ? Result<void>() : refused("A lot has the sheets review, figures, draw, profile and tests; none is called " + sheet.toStdString() + ".");
            }
        }
        return refused("The book has no lot " + name.toStdString() + ".");
    }
    if (what.startsWith(QStringLiteral("kit:"))) {
        static const QStringList sheets{QStringLiteral("counts"),   QStringLiteral("stability"), QStringLiteral("custody"), QStringLiteral("gauge"),
                                        QStringLiteral("material"), QStringLiteral("person"),    QStringLiteral("rules"),   QStringLiteral("offset"),   QStringLiteral("site-file"), QStringLiteral("background"), QStringLiteral("receiver"),
                                        QStringLiteral("job"),      QStringLiteral("line"),      QStringLiteral("lot"),     QStringLiteral("lift"),      QStringLiteral("books")};
        if (!sheets.contains(name.section(':', 0, 0)))
            return refused("Kit has the sheets " + sheets.join(QStringLiteral(", ")).toStdString() + "; none is called " + name.toStdString() + ".");
        const auto id = kitSubjectNamed(*m_session, name.section(':', 1));
        if (!id)
            return tl::unexpected(id.error());
        setKit(id->isEmpty() ? name.section(':', 0, 0) : name.section(':', 0, 0) + ':' + *id);
        return {};
    }
    return refused("--open must be new, screen, coverage, hand-over, server, test:NUMBER, record:NUMBER, paper:day, paper:NUMBER, paper:lot:NAME, paper:review:NAME, site-file:PATH, lot:NAME or kit:SHEET; it is " + what.toStdString() + ".");
}

void Desk::setPaper(const QString& sheet)
{
    if (sheet == m_paper)
        return;
    m_paper = sheet;
    emit paperChanged();
}

void Desk::setScreenOpen(bool open)
{
    if (open == m_screenOpen)
        return;
    m_screenOpen = open;
    emit screenOpenChanged();
}

void Desk::setTestOpen(bool open)
{
    if (open == m_testOpen)
        return;
    m_testOpen = open;
    emit testOpenChanged();
}

void Desk::start()
{
    m_sheet.begin();
    setTestOpen(true);
}

void Desk::startAt(const QString& siteId)
{
    m_sheet.beginAt(siteId);
    setTestOpen(true);
}

void Desk::startAtPoint(double north, double east)
{
    m_sheet.beginAtPoint(north, east);
    setTestOpen(true);
}

void Desk::retest(const QString& testId)
{
    m_sheet.beginRetest(testId);
    setTestOpen(true);
}

void Desk::openTest(const QString& testId)
{
    m_sheet.open(testId);
    setTestOpen(true);
}

void Desk::openRecord(const QString& testId)
{
    if (testId.isEmpty())
        return;
    openTest(testId);
    m_sheet.setProperty("recordShown", true);
}

void Desk::closeTest()
{
    m_sheet.setProperty("recordShown", false);  // the next test opens at its steps
    setTestOpen(false);
}

}  // namespace groundcount::view
