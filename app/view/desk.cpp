#include "view/desk.h"

#include <QQmlEngine>
#include <utility>

namespace groundcount::view {
Desk::Desk(Session* session, QObject* parent) : QObject(parent), m_session(session), m_obstacle(session, this), m_exchange(session), m_receiver(session), m_shelf(session)
{
    m_sheet.setSession(session);
    connect(m_sheet.clear(), &ClearStep::hazardWanted, &m_obstacle, &ObstacleSheet::openFrom);
    connect(&m_obstacle, &ObstacleSheet::sealed, m_sheet.clear(), &ClearStep::derive);
    connect(session, &Session::readingChanged, this, [this] {
        if (!m_session->isReading() && m_whenRead)
            std::exchange(m_whenRead, nullptr)();
    });
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

bool Desk::leadsOff(const QString& word)
{
    static const QStringList panes{QStringLiteral("hand-over"), QStringLiteral("server"), QStringLiteral("publish")};
    return panes.contains(word);
}

void Desk::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    if (id.isEmpty() || leadsOff(id))
        m_lotSheet.clear();
    emit lotChanged();
}

void Desk::setLotSheet(const QString& sheet)
{
    static const QStringList sheets{QString(), QStringLiteral("review"), QStringLiteral("figures"), QStringLiteral("draw"), QStringLiteral("profile"), QStringLiteral("tests")};
    // the tests of every lot need none that is chosen
    if (sheet == m_lotSheet || !sheets.contains(sheet) || (m_lot.isEmpty() && !sheet.isEmpty() && sheet != sheets.last()))
        return;
    if (leadsOff(m_lot))
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
        static const QStringList lacking{QStringLiteral("line"), QStringLiteral("material"), QStringLiteral("site-file")};
        if (!lacking.contains(sheet))
            m_kitUnder.clear();
        else if (kitSheet() == QStringLiteral("lot"))
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

void Desk::whenRead(std::function<void()> act)
{
    if (m_session->isReading())
        m_whenRead = std::move(act);
    else
        act();
}

void Desk::start()
{
    whenRead([this] { m_sheet.begin(); });
    setTestOpen(true);
}

void Desk::startAt(const QString& siteId)
{
    whenRead([this, siteId] { m_sheet.beginAt(siteId); });
    setTestOpen(true);
}

void Desk::startAtPoint(double north, double east)
{
    whenRead([=, this] { m_sheet.beginAtPoint(north, east); });
    setTestOpen(true);
}

void Desk::retest(const QString& testId)
{
    whenRead([this, testId] { m_sheet.beginRetest(testId); });
    setTestOpen(true);
}

void Desk::openTest(const QString& testId)
{
    whenRead([this, testId] { m_sheet.open(testId); });
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
    m_whenRead = nullptr;
    m_sheet.setProperty("recordShown", false);  // the next test opens at its steps
    setTestOpen(false);
}

}  // namespace groundcount::view
