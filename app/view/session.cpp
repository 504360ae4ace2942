// Longer than 250 lines: what every page asks of the open book.
#include "view/session.h"

#include "book/keys.h"
#include "book/store.h"
#include "book/test_columns.h"
#include "gis/crs.h"
#include "position/position_source.h"
#include "view/figure_text.h"

#include <QFileInfo>
#include <QQmlEngine>
#include <cmath>
#include <limits>

namespace groundcount::view {
namespace {

Session* theInstance = nullptr;

constexpr double kNoPlace = std::numeric_limits<double>::quiet_NaN();
constexpr int kLookForOthersMs = 2000;  // another process' records are seen within this

}  // namespace

Session::Session(QObject* parent) : QObject(parent), m_ruleSet(method::neutralRules())
{
    m_rules = method::evaluationRules(m_ruleSet).value();
    m_lookTimer.setInterval(kLookForOthersMs);
    connect(&m_lookTimer, &QTimer::timeout, this, &Session::lookForOthers);
    connect(&m_system, &JobSystem::failed, this, [this] {
        if (m_trouble.isEmpty())
            setTrouble(QString::fromStdString(m_system.trouble()));
    });
    connect(&m_besideWork, &BesideWork::ended, this, &Session::takeTests);
}

Session::~Session()
{
    if (theInstance == this)
        theInstance = nullptr;
}

Session* Session::create(QQmlEngine*, QJSEngine*)
{
    // A page that is shown without a program around it (a lint run, a gallery) gets an empty session of its own.
    if (!theInstance)
        theInstance = new Session(nullptr);
    QQmlEngine::setObjectOwnership(theInstance, QQmlEngine::CppOwnership);
    return theInstance;
}

void Session::setInstance(Session* session)
{
    theInstance = session;
}

Result<void> Session::open(const QString& bookPath, const QString& keyPath)
{
    const auto key = book::DeviceKey::loadOrMake(keyPath.toStdString());
    if (!key)
        return tl::unexpected(key.error());
    const bool isNew = !QFileInfo::exists(bookPath);
    auto store = book::Store::open(bookPath.toStdString(), isNew ? book::OpenMode::Create : book::OpenMode::ReadWrite, *key);
    if (!store)
        return tl::unexpected(store.error());
    m_store = std::make_unique<book::Store>(std::move(*store));
    m_bookName = QFileInfo(bookPath).fileName();
    setTrouble(QString::fromStdString(m_store->damage()));
    refresh();
    // On the timer's own thread: a book may be opened on another one.
    QMetaObject::invokeMethod(&m_lookTimer, qOverload<>(&QTimer::start));
    return {};
}

Result<void> Session::replay(const QString& nmeaPath)
{
    return receive([&](position::PositionSource& source) { return source.openFile(nmeaPath, 1.0); });
}

Result<void> Session::receive(const std::function<Result<void>(position::PositionSource&)>& opening)
{
    stopReceiving();
    m_position = std::make_unique<position::PositionSource>();
    connect(m_position.get(), &position::PositionSource::fixed, this, &Session::takeFix);
    connect(m_position.get(), &position::PositionSource::stateChanged, this, &Session::placeChanged);
    connect(m_position.get(), &position::PositionSource::trouble, this, [this](const QString& what) {
        if (placeIsFresh())
            return;  // a refused sentence among good ones
        m_receiverTrouble = what;
        emit placeChanged();
    });
    const auto opened = opening(*m_position);
    if (!opened)
        stopReceiving();
    emit placeChanged();
    return opened;
}

void Session::stopReceiving()
{
    m_position.reset();
    m_own.reset();
    m_receiverTrouble.clear();
    emit placeChanged();
}

bool Session::placeIsFresh() const
{
    return m_position && m_position->state() == position::PositionSource::State::Live;
}

std::optional<OwnPlace> Session::ownPlace() const
{
    return placeIsFresh() ? m_own : std::nullopt;
}

bool Session::isReadOnly() const
{
    return m_store && m_store->isReadOnly();
}

void Session::setTrouble(const QString& sentence)
{
    if (sentence == m_trouble)
        return;
    m_trouble = sentence;
    emit troubleChanged();
}

QDateTime Session::now() const
{
    return m_clock ? m_clock->toUTC() : QDateTime::currentDateTimeUtc();
}

int Session::offsetMinutes() const
{
    return m_clock ? m_clock->offsetFromUtc() / 60 : QDateTime::currentDateTime().offsetFromUtc() / 60;
}

QString Session::localTime(const std::string& utc, int offsetMinutes) const
{
    return localText(utc, offsetMinutes, QStringLiteral("h:mm"));
}

bool Session::isToday(const std::string& utc, int offsetMinutes) const
{
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODateWithMs);
    return time.isValid() && time.toOffsetFromUtc(offsetMinutes * 60).date() == now().toOffsetFromUtc(this->offsetMinutes() * 60).date();
}

const book::StandardCountRow* Session::standardToday() const
{
    const book::StandardCountRow* newest = nullptr;
    for (const auto& set : m_snapshot.standardCounts) {
        if (m_gauge && set.gauge == m_gauge->id && isToday(set.at, set.offsetMinutes))
            newest = &set;
    }
    return newest;
}

Result<book::Record> Session::seal(const std::string& kind, const std::string& subject, const book::Body& body,
                                   const std::string& amends, const std::string& reason)
{
    book::Entry entry;
    entry.kind = kind;
    entry.subject = subject;
    entry.amends = amends;
    entry.reason = reason;
    entry.body = body;
    return seal(std::move(entry));
}

void Session::sign(book::Entry& entry) const
{
    // The first person of a book seals himself in; a review names its reviewer.
    if (entry.by.empty())
        entry.by = m_person.id.empty() && entry.kind == "person" ? entry.subject : m_person.id;
    entry.at = now().toString(Qt::ISODateWithMs).toStdString();
    entry.offsetMinutes = offsetMinutes();
}

Result<book::Record> Session::seal(book::Entry entry)
{
    auto records = sealAll({std::move(entry)});
    if (!records)
        return tl::unexpected(records.error());
    return std::move(records->front());
}

Result<std::vector<book::Record>> Session::sealAll(std::vector<book::Entry> entries)
{
    if (!m_store)
        return unavailable("No field book is open, so nothing can be sealed.");
    for (auto& entry : entries)
        sign(entry);
    auto records = m_store->sealAll(entries);
    if (!records) {
        setTrouble(QString::fromStdString(records.error().what));
        return records;
    }
    setTrouble({});
    refresh();
    return records;
}

void Session::takeFix()
{
    const auto fix = m_position->lastFix();
    m_own.reset();
    m_receiverTrouble = fix && fix->frozen   ? tr("The receiver repeats the same position: do not rely on it.")
                        : fix && fix->jumped ? tr("The position jumped farther than anyone moves: wait until it stands still.")
                                             : QString();
    if (fix && crs()) {
        const auto grid = crs()->fromGeographic({fix->latitude, fix->longitude});
        // 2DRMS of the receiver's own sigmas; without them the circle is not drawn smaller than is known.
        if (grid)
            m_own = OwnPlace{grid->north, grid->east, fix->drmsM() ? 2 * *fix->drmsM() : kNoPlace};
    }
    emit placeChanged();
}

double Session::ownEast() const
{
    return m_own ? m_own->east : kNoPlace;
}

double Session::ownNorth() const
{
    return m_own ? m_own->north : kNoPlace;
}

double Session::ownAccuracyMetres() const
{
    return m_own ? m_own->accuracyMetres : kNoPlace;
}

QString Session::ownLabel() const
{
    if (!m_own || std::isnan(m_own->accuracyMetres))
        return placeIsFresh() || !m_own ? tr("You") : tr("Last seen here");
    if (!placeIsFresh())
        return tr("Last seen here");
    return tr("You %1%2 ft").arg(QChar(0x00B1)).arg(figureText(Length::metres(m_own->accuracyMetres).feet(), 0));
}

std::string Session::newId()
{
    return book::newSubject();
}

}  // namespace groundcount::view
