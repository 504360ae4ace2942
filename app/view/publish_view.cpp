#include "view/publish_view.h"

#include "book/store.h"
#include "share/address.h"
#include "share/publish.h"

#include <QLocale>

namespace groundcount::view {
namespace {

constexpr const char* kSubject = "device";
constexpr const char* kAddress = "publish-server";
constexpr const char* kSchema = "publish-schema";
constexpr const char* kReaders = "publish-readers";

QString counted(std::size_t count)
{
    return QLocale().toString(static_cast<qulonglong>(count));
}

}  // namespace

PublishView::PublishView(QObject* parent) : QObject(parent)
{
    connect(&m_work, &BesideWork::going, this, &PublishView::changed);
    connect(&m_work, &BesideWork::ended, this, &PublishView::tell);
}

void PublishView::setSession(Session* session)
{
    if (session == m_session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &PublishView::readDrafts);
    readDrafts();
}

/// Address, schema and readers belong to the book on this device; read when a book is opened.
void PublishView::readDrafts()
{
    const QString book = m_session->isOpen() ? QString::fromStdString(m_session->store().path()) : QString();
    if (book != m_book) {
        const auto draft = [&](const char* step) { return book.isEmpty() ? QString() : QString::fromStdString(m_session->store().draft(kSubject, step).value_or("")); };
        m_address = draft(kAddress);
        m_schema = draft(kSchema);
        m_readers = draft(kReaders);
        m_book = book;
    }
    emit changed();
}

void PublishView::take(QString& into, const char* step, const QString& text)
{
    const QString plain = text.trimmed();
    if (plain == into || isRunning())
        return;
    into = plain;
    m_done.clear();
    const auto sound = m_address.isEmpty() ? Result<void>() : share::checkKeptAddress(m_address.toStdString());
    m_trouble = sound ? QString() : QString::fromStdString(sound.error().what);
    if (sound && m_session->isOpen() && !m_session->isReadOnly())
        if (auto saved = m_session->store().saveDraft(kSubject, step, plain.toStdString()); !saved)
            m_trouble = QString::fromStdString(saved.error().what);
    emit changed();
}

void PublishView::setAddress(const QString& address)
{
    take(m_address, kAddress, address);
}

void PublishView::setSchema(const QString& schema)
{
    take(m_schema, kSchema, schema);
}

void PublishView::setReaders(const QString& readers)
{
    take(m_readers, kReaders, readers);
}

QString PublishView::missing() const
{
    if (!m_session || !m_session->isOpen())
        return tr("Publish: no book is open");
    if (!m_session->crs())
        return tr("Publish: the job needs a coordinate system");
    if (m_address.isEmpty())
        return tr("Publish: type the database's address");
    if (!share::checkKeptAddress(m_address.toStdString()))
        return tr("Publish: the address cannot be used");
    if (m_schema.isEmpty())
        return tr("Publish: type a name for the job's tables");
    return {};
}

QString PublishView::progress() const
{
    if (m_work.isStopping())
        return tr("Stopping");
    return m_rows == 0 ? tr("Reading the book and reaching the server") : tr("Sending: %1 rows").arg(counted(m_rows));
}

void PublishView::publish()
{
    if (isRunning() || !missing().isEmpty())
        return;
    share::PublishAsk ask;
    ask.schema = m_schema.toStdString();
    ask.readers = m_readers.toStdString();
    m_rows = 0;
    m_done.clear();
    m_trouble.clear();
    // A store of its own: the pages go on with theirs.
    m_work.start([this, ask, book = m_session->store().path(), address = m_address.toStdString()](const std::atomic<bool>& stop) mutable {
        ask.options.keepOn = [this, &stop](std::size_t) {
            ++m_rows;
            return !stop;
        };
        const auto store = book::Store::open(book, book::OpenMode::ReadOnly);
        auto done = store ? share::publish(*store, address, ask, [&stop] { return !stop; }) : tl::unexpected(store.error());
        m_outcome = done ? Outcome{std::move(*done), {}} : Outcome{{}, done.error().what};
    });
    emit changed();
}

void PublishView::stop()
{
    m_work.askToStop();
    emit changed();
}

void PublishView::tell()
{
    std::vector<Row> rows;
    std::size_t all = 0;
    for (const auto& table : m_outcome.tables) {
        Row row = Row::ofWords(m_schema + '.' + QString::fromStdString(table.layer), {}, {});
        row.figure = counted(static_cast<std::size_t>(table.rows));
        rows.push_back(std::move(row));
        all += static_cast<std::size_t>(table.rows);
    }
    m_tables.setRows(std::move(rows));
    m_trouble = QString::fromStdString(m_outcome.trouble);
    if (m_work.isStopping() && !m_trouble.isEmpty()) {
        m_trouble.clear();
        m_done = tr("Stopped: the tables are as they were.");
    } else if (m_trouble.isEmpty()) {
        m_done = tr("Published: %1 rows.").arg(counted(all));
    }
    emit changed();
}

}  // namespace groundcount::view
