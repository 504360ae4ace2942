#include "view/exchange_view.h"

#include "view/figure_text.h"

#include "book/store.h"
#include "share/address.h"

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
    m_isEmpty = m_session->isOpen() && m_session->store().lastRow().value_or(1) == 0;
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
    switch (m_progress.stage.load()) {
    case ServerProgress::Sending: return tr("Sending: %1 looked at").arg(counted(m_progress.count));
    case ServerProgress::Taking: return tr("Taking: %1 read").arg(counted(m_progress.count));
    default: return tr("Reaching the server");
    }
}

/// Starts one piece of work; `tell` says what became of it.
void ExchangeView::begin(std::function<ServerOutcome(ServerProgress&, const std::atomic<bool>&)> work)
{
    m_isListing = false;
    m_progress.stage = ServerProgress::Reaching;
    m_progress.count = 0;
    m_done.clear();
    m_trouble.clear();
    m_work.start([this, work = std::move(work)](const std::atomic<bool>& stop) { m_outcome = work(m_progress, stop); });
    emit changed();
}

void ExchangeView::exchange()
{
    if (isRunning() || m_isEmpty || !missing().isEmpty())
        return;
    begin([book = m_session->store().path(), address = m_address.toStdString()](ServerProgress& progress, const std::atomic<bool>& stop) {
        return exchangeWith(book, address, progress, stop);
    });
}

void ExchangeView::join(const QString& job)
{
    if (isRunning() || !m_isEmpty || !missing().isEmpty())
        return;
    begin([book = m_session->store().path(), address = m_address.toStdString(), id = job.toStdString()](ServerProgress& progress, const std::atomic<bool>& stop) {
        return joinJob(book, address, id, progress, stop);
    });
}

void ExchangeView::takeFile(const QUrl& file)
{
    if (isRunning() || !m_session->isOpen() || m_session->isReadOnly())
        return;
    const QString path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    begin([book = m_session->store().path(), path = path.toStdString()](ServerProgress& progress, const std::atomic<bool>& stop) {
        return takeBundle(book, path, progress, stop);
    });
}

void ExchangeView::askJobs()
{
    if (isRunning() || !missing().isEmpty())
        return;
    begin([this, address = m_address.toStdString()](ServerProgress&, const std::atomic<bool>& stop) {
        ServerOutcome outcome;
        auto jobs = share::jobsOn(address, [&stop] { return !stop; });
        outcome.stopped = stop;
        if (!jobs && !stop)
            outcome.trouble = jobs.error().what;
        m_listed = jobs ? std::move(*jobs) : std::vector<share::ServerJob>();
        return outcome;
    });
    m_isListing = true;
}

void ExchangeView::stop()
{
    m_work.askToStop();
    emit changed();
}

void ExchangeView::tellJobs()
{
    std::vector<Row> rows;
    for (const share::ServerJob& job : m_listed) {
        const QString id = QString::fromStdString(job.id);
        Row row = Row::ofWords(job.name.empty() ? id : QString::fromStdString(job.name),
                               job.texts == 0 ? tr("nothing sent yet") : tr("%1 records and photos, the newest of %2").arg(counted(static_cast<std::size_t>(job.texts)), localText(job.latest, m_session->offsetMinutes(), QStringLiteral("MMM d, h:mm"))), {});
        row.id = id;
        row.chevron = true;
        rows.push_back(std::move(row));
    }
    m_jobs.setRows(std::move(rows));
    m_trouble = QString::fromStdString(m_outcome.trouble);
    if (m_trouble.isEmpty())
        m_done = m_outcome.stopped ? tr("Stopped.") : m_listed.empty() ? tr("The server shows this login no job; its administrator admits logins.") : QString();
    emit changed();
}

void ExchangeView::tell()
{
    if (m_isListing)
        return tellJobs();
    const ServerOutcome& outcome = m_outcome;
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
