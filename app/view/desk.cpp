#include "view/desk.h"

#include <QQmlEngine>

namespace groundcount::view {

Desk::Desk(Session* session, QObject* parent) : QObject(parent)
{
    m_sheet.setSession(session);
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
    emit placeChanged();
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

void Desk::closeTest()
{
    setTestOpen(false);
}

}  // namespace groundcount::view
