#include "view/receiver.h"

#include "book/store.h"
#include "position/position_source.h"
#include "view/sealed_words.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr const char* kSubject = "device";
constexpr const char* kStep = "receiver";

}  // namespace

Receiver::Receiver(Session* session, QObject* parent) : QObject(parent), m_session(session)
{
    connect(session, &Session::recordsChanged, this, &Receiver::readDraft);
    connect(session, &Session::placeChanged, this, &Receiver::changed);
    readDraft();
}

/// The choice belongs to the book on this device. A replay that was asked for at the start is left alone.
void Receiver::readDraft()
{
    const QString book = m_session->isOpen() ? QString::fromStdString(m_session->store().path()) : QString();
    if (book.isEmpty() || book == m_book)
        return;
    m_book = book;
    const QStringList parts = QString::fromStdString(m_session->store().draft(kSubject, kStep).value_or("")).split('\n');
    if (parts.size() == 3) {
        m_kind = std::clamp(parts[0].toInt(), int(None), int(Serial));
        m_where = parts[1];
        m_speed = parts[2];
    }
    if (m_kind != None && !m_session->positionSource())
        if (auto opened = open(); !opened)
            m_refusal = QString::fromStdString(opened.error().what);
    emit changed();
}

QString Receiver::whereLabel() const
{
    switch (m_kind) {
    case Network: return tr("Host and port, for example 192.168.4.1:5017");
    case Serial: return tr("Serial line, for example /dev/ttyUSB0");
    default: return {};
    }
}

void Receiver::setWhere(const QString& where)
{
    if (where.trimmed() == m_where)
        return;
    m_where = where.trimmed();
    emit changed();
}

void Receiver::setSpeed(const QString& speed)
{
    if (speed.trimmed() == m_speed)
        return;
    m_speed = speed.trimmed();
    emit changed();
}

QString Receiver::missing() const
{
    if (!m_session->isOpen())
        return tr("Receiver: no book is open");
    if (m_kind == Network && m_where.isEmpty())
        return tr("Receiver: type its host and port");
    if (m_kind == Serial && m_where.isEmpty())
        return tr("Receiver: type its serial line");
    return {};
}

QString Receiver::state() const
{
    const auto* source = m_session->positionSource();
    if (!source)
        return tr("No receiver in use.");
    const auto fix = source->lastFix();
    switch (source->state()) {
    case position::PositionSource::State::Live: return fix ? tr("Positions come: %1.").arg(sealedWord(fix->qualityWord.toStdString())) : QString();
    case position::PositionSource::State::Lost: return tr("The receiver is lost.");
    case position::PositionSource::State::Frozen: return tr("The receiver repeats itself.");
    default: return tr("Waiting for the first position.");
    }
}

QString Receiver::trouble() const
{
    return m_refusal.isEmpty() ? m_session->receiverTrouble() : m_refusal;
}

void Receiver::pickKind(int index)
{
    if (index < None || index > Serial || index == m_kind)
        return;
    m_kind = index;
    m_where.clear();
    m_refusal.clear();
    emit changed();
}

Result<void> Receiver::open()
{
    const auto number = [](const QString& text) {
        bool isNumber = false;
        const int value = text.toInt(&isNumber);
        return isNumber ? value : 0;
    };
    switch (m_kind) {
    case Own: return m_session->receive([](position::PositionSource& source) { return source.openReceiver(); });
    case Network: {
        const int colon = static_cast<int>(m_where.lastIndexOf(':'));
        const int port = number(m_where.mid(colon + 1));
        if (colon < 1 || port < 1 || port > 65535)
            return refused("A receiver on the network is given as HOST:PORT with a port from 1 to 65535; it is \"" + m_where.toStdString() + "\".");
        return m_session->receive([&](position::PositionSource& source) { return source.openTcp(m_where.left(colon), static_cast<quint16>(port)); });
    }
    case Serial: return m_session->receive([&](position::PositionSource& source) { return source.openSerial(m_where, number(m_speed)); });
    default: m_session->stopReceiving(); return {};
    }
}

void Receiver::use()
{
    if (!missing().isEmpty())
        return;
    const auto opened = open();
    m_refusal = opened ? QString() : QString::fromStdString(opened.error().what);
    if (opened && !m_session->isReadOnly())
        if (auto saved = m_session->store().saveDraft(kSubject, kStep, QStringList{QString::number(m_kind), m_where, m_speed}.join('\n').toStdString()); !saved)
            m_refusal = QString::fromStdString(saved.error().what);
    emit changed();
}

}  // namespace groundcount::view
