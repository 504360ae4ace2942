#include "view/exchange_view.h"

#include "book/store.h"
#include "share/address.h"
#include "share/exchange.h"

#include <QLocale>

namespace groundcount::view {
namespace {

constexpr int kEveryMs = 10 * 60 * 1000;
constexpr const char* kSubject = "device";
constexpr const char* kAddress = "server";
constexpr const char* kEvery = "server-every";

QString counted(std::size_t count)
{
    return QLocale().toString(static_cast<qulonglong>(count));
}

}  // namespace

ExchangeView::ExchangeView(Session* session, QObject* parent) : QObject(parent), m_session(session)
{
    connect(&m_work, &BesideWork::going, this, &ExchangeView::changed);
    connect(&m_work, &BesideWork::ended, this, &ExchangeView::tell);
    m_clock.setInterval(kEveryMs);
    connect(&m_clock, &QTimer::timeout, this, &ExchangeView::exchange);
    connect(session, &Session::recordsChanged, this, &ExchangeView::readDrafts);
    readDrafts();
}

/// The address and the interval belong to the book on this device; read when a book is opened.
void ExchangeView::readDrafts()
{
    const QString book = m_session->isOpen() ? QString::fromStdString(m_session->store().path()) : QString();
    const QString id = m_session->isOpen() ? QString::fromStdString(m_session->store().bookId().value_or("")) : QString();
    if (book == m_book && id == m_jobId)
        return;
    if (book != m_book) {
        const auto draft = [&](const char* step) { return book.isEmpty() ? std::string() : m_session->store().draft(kSubject, step).value_or(""); };
        m_address = QString::fromStdString(draft(kAddress));
        m_every = draft(kEvery) == "10" ? 1 : 0;
    }
    m_book = book;
    m_jobId = id;
    if (m_every == 1)
        m_clock.start();
    else
        m_clock.stop();
    emit changed();
}

void ExchangeView::saveDraft(const char* step, const QString& text)
{
    if (!m_session->isOpen() || m_session->isReadOnly())
        return;
    if (auto saved = m_session->store().saveDraft(kSubject, step, text.toStdString()); !saved)
        m_session->setTrouble(QString::fromStdString(saved.error().what));
}

void ExchangeView::setAddress(const QString& address)
{
    const QString plain = address.trimmed();
    if (plain == m_address || isRunning())
        return;
    m_address = plain;
    m_done.clear();
    const auto sound = plain.isEmpty() ? Result<void>() : share::checkKeptAddress(plain.toStdString());
    m_trouble = sound ? QString() : QString::fromStdString(sound.error().what);
    if (sound)
        saveDraft(kAddress, plain);
    emit changed();
}

void ExchangeView::pickEvery(int index)
{
    if (index < 0 || index >= everyWords().size() || index == m_every)
        return;
    m_every = index;
    saveDraft(kEvery, index == 1 ? QStringLiteral("10") : QString());
    if (index == 1)
        m_clock.start();
    else
        m_clock.stop();
    emit changed();
}

QString ExchangeView::missing() const
{
    if (!m_session->isOpen())
        return tr("Exchange: no book is open");
    if (m_session->isReadOnly())
        return tr("Exchange: this book can only be read");
    if (m_jobId.isEmpty())
        return tr("Exchange: this book has no record yet");
    if (m_address.isEmpty())
        return tr("Exchange: type the server's address");
    if (!share::checkKeptAddress(m_address.toStdString()))
        return tr("Exchange: the address cannot be used");
    return {};
}

QString ExchangeView::progress() const
{
    if (m_work.isStopping())
        return tr("Stopping");
    switch (m_stage.load()) {
    case 1: return tr("Sending: %1 looked at").arg(counted(m_count));
    case 2: return tr("Taking: %1 read").arg(counted(m_count));
    default: return tr("Reaching the server");
    }
}

ExchangeView::Outcome ExchangeView::work(const std::string& book, const std::string& address, const std::atomic<bool>& stop)
{
    Outcome outcome;
    auto store = book::Store::open(book, book::OpenMode::ReadWrite);
    if (!store) {
        outcome.trouble = store.error().what;
        return outcome;
    }
    const auto counting = [&](int stage) {
        return [this, stage, &stop](std::size_t count) {
            m_stage = stage;
            m_count = count;
            return !stop;
        };
    };
    const auto patience = [&stop] { return !stop; };
    const auto pushed = share::push(*store, address, counting(1), patience);
    if (pushed)
        outcome.sent = pushed->sent;
    if (!pushed || pushed->stopped) {
        outcome.trouble = pushed ? std::string() : pushed.error().what;
        outcome.stopped = pushed.has_value();
        return outcome;
    }
    const auto pulled = share::pull(*store, address, {}, counting(2), patience);
    if (!pulled) {
        outcome.trouble = pulled.error().what;
        return outcome;
    }
    outcome.taken = pulled->taken;
    outcome.contents = pulled->blobs;
    outcome.refused = pulled->refused;
    outcome.stopped = pulled->stopped;
    return outcome;
}

void ExchangeView::exchange()
{
    if (isRunning() || !missing().isEmpty())
        return;
    m_stage = 0;
    m_count = 0;
    m_done.clear();
    m_trouble.clear();
    // A store of its own: the pages go on with theirs.
    m_work.start([this, book = m_session->store().path(), address = m_address.toStdString()](const std::atomic<bool>& stop) {
        m_outcome = work(book, address, stop);
    });
    emit changed();
}

void ExchangeView::stop()
{
    m_work.askToStop();
    emit changed();
}

void ExchangeView::tell()
{
    const Outcome& outcome = m_outcome;
    std::vector<Row> rows;
    for (const std::string& sentence : outcome.refused)
        rows.push_back(Row::ofWords(QString::fromStdString(sentence), {}, {}));
    m_refused.setRows(std::move(rows));
    m_trouble = QString::fromStdString(outcome.trouble);
    if (outcome.trouble.empty() || outcome.sent > 0) {
        const QString at = m_session->localTime(m_session->now().toUTC().toString(Qt::ISODateWithMs).toStdString(), m_session->offsetMinutes());
        const QString figures = tr("%1 sent, %2 records and %3 photos or notes taken").arg(counted(outcome.sent), counted(outcome.taken), counted(outcome.contents));
        m_done = outcome.stopped ? tr("Stopped at %1: %2. The next exchange goes on from there.").arg(at, figures) : tr("%1: %2.").arg(at, figures);
    }
    if (outcome.taken > 0)
        m_session->readAgain();
    emit changed();
}

}  // namespace groundcount::view
