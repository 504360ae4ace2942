#include "view/hand_over_view.h"

#include "book/store.h"
#include "gis/bundle_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>

namespace groundcount::view {
namespace {

constexpr qint64 kLongestNames = 1 << 20;  // bytes of a file with an owner's names: far beyond a few hundred columns

QString counted(std::size_t count)
{
    return QLocale().toString(static_cast<qulonglong>(count));
}

}  // namespace

HandOverView::HandOverView(QObject* parent) : QObject(parent)
{
    connect(&m_work, &BesideWork::going, this, &HandOverView::progressChanged);
    connect(&m_work, &BesideWork::ended, this, &HandOverView::tell);
}

void HandOverView::setSession(Session* session)
{
    if (session == m_session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &HandOverView::refresh);
    refresh();
}

void HandOverView::refresh()
{
    const auto records = m_session->isOpen() ? m_session->store().lastRow().value_or(-1) : -1;
    m_contents.setRows(handOverContents(m_form, m_layer, m_session->snapshot(), records));
    emit changed();
}

QUrl HandOverView::suggested() const
{
    QString name = m_session ? QString::fromStdString(m_session->job().name) : QString();
    name.replace(QRegularExpression(QStringLiteral("[^\\w-]+"), QRegularExpression::UseUnicodePropertiesOption), QStringLiteral("-"));
    if (name.isEmpty())
        name = QStringLiteral("job");
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QUrl::fromLocalFile(QDir(folder).filePath(name + (ending().isEmpty() ? QStringLiteral("-shapefile") : '.' + ending())));
}

QString HandOverView::missing() const
{
    if (!m_session || !m_session->isOpen())
        return tr("Hand over: no book is open");
    if (m_form != HandOverForm::Bundle && !m_session->crs())
        return tr("Hand over: the job needs a coordinate system");
    if (m_form == HandOverForm::Bundle && m_session->store().bookId().value_or("").empty())
        return tr("Hand over: this book has no record yet");
    return {};
}

/// What was said of the file before belongs to another one now.
void HandOverView::forget()
{
    m_done.clear();
    m_trouble.clear();
    refresh();
    emit progressChanged();
}

void HandOverView::pickFormat(int index)
{
    if (index < 0 || index >= formatWords().size() || index == formatIndex() || isRunning())
        return;
    m_form = static_cast<HandOverForm>(index);
    forget();
}

void HandOverView::pickLayer(int index)
{
    if (index < 0 || index >= layerWords().size() || index == m_layer || isRunning())
        return;
    m_layer = index;
    forget();
}

void HandOverView::takeColumns(const QUrl& file)
{
    if (isRunning())
        return;
    const QString path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    QFile names(path);
    m_names = {};
    m_columns.clear();
    forget();
    if (!names.open(QIODevice::ReadOnly)) {
        m_trouble = tr("The file %1 cannot be read.").arg(path);
    } else if (names.size() > kLongestNames) {
        m_trouble = tr("A file with the owner's names has at most %1 bytes; %2 has %3.").arg(counted(kLongestNames), path, counted(static_cast<std::size_t>(names.size())));
    } else if (auto map = gis::readFieldMap(names.readAll().toStdString()); !map) {
        m_trouble = QString::fromStdString(map.error().what);
    } else {
        m_names = std::move(*map);
        m_columns = QFileInfo(path).fileName();
    }
    emit changed();
    emit progressChanged();
}

void HandOverView::dropColumns()
{
    if (isRunning())
        return;
    m_names = {};
    m_columns.clear();
    forget();
}

HandOverView::Outcome HandOverView::layersInto(const std::string& book, gis::HandOverAsk ask, const std::atomic<bool>& stop)
{
    Outcome outcome;
    ask.options.keepOn = [this, &stop](std::size_t rows) {
        m_rows = rows;
        return !stop;
    };
    const auto store = book::Store::open(book, book::OpenMode::ReadOnly);
    const auto result = store ? gis::handOver(*store, ask) : tl::unexpected(store.error());
    if (!result) {
        outcome.trouble = result.error().what;
        return outcome;
    }
    for (const auto& layer : result->layers)
        outcome.rows += static_cast<std::size_t>(layer.rows);
    outcome.layers = result->layers.size();
    outcome.photos = result->photos;
    outcome.cutTexts = result->cutTexts;
    return outcome;
}

HandOverView::Outcome HandOverView::bundleInto(const std::string& book, const std::string& path, const std::atomic<bool>& stop)
{
    Outcome outcome;
    const auto store = book::Store::open(book, book::OpenMode::ReadOnly);
    const auto written = store ? gis::handOverBundle(*store, path,
                                                     [this, &stop](std::size_t texts) {
                                                         m_rows = texts;
                                                         return !stop;
                                                     })
                               : tl::unexpected(store.error());
    if (!written) {
        outcome.trouble = written.error().what;
        return outcome;
    }
    outcome.records = written->records;
    outcome.contents = written->blobs;
    return outcome;
}

void HandOverView::write(const QUrl& target)
{
    if (isRunning() || !missing().isEmpty())
        return;
    m_target = target.toLocalFile();
    if (!m_target.isEmpty() && QFileInfo(m_target).suffix().isEmpty() && !ending().isEmpty())
        m_target += '.' + ending();
    gis::HandOverAsk ask;
    ask.path = m_target.toStdString();
    if (asksLayer())
        ask.layers = {handOverLayer(m_layer)};
    ask.map = m_names;
    const auto format = handOverFormat(m_form);
    if (format)
        ask.format = *format;
    m_rows = 0;
    m_done.clear();
    m_trouble.clear();
    // A store of its own: the pages go on with theirs.
    m_work.start([this, ask, isBundle = !format, book = m_session->store().path()](const std::atomic<bool>& stop) {
        m_outcome = isBundle ? bundleInto(book, ask.path, stop) : layersInto(book, ask, stop);
    });
    emit progressChanged();
}

void HandOverView::stop()
{
    m_work.askToStop();
    emit progressChanged();
}

QString HandOverView::progress() const
{
    if (m_work.isStopping())
        return tr("Stopping");
    return m_rows == 0 ? tr("Reading the book") : tr("Writing: %1 rows").arg(counted(m_rows));
}

QString HandOverView::sentence() const
{
    const Outcome& outcome = m_outcome;
    if (m_form == HandOverForm::Bundle)
        return tr("%1 is written: %2 records, %3 photos or notes.").arg(m_target, counted(outcome.records), counted(outcome.contents));
    QString words = tr("%1 is written and was read again: %2 rows.").arg(m_target, counted(outcome.rows));
    if (outcome.layers > 1)
        words += ' ' + tr("%1 layers.").arg(counted(outcome.layers));
    if (outcome.photos > 0)
        words += ' ' + tr("%1 photos.").arg(counted(outcome.photos));
    if (outcome.cutTexts > 0)
        words += ' ' + tr("%1 texts were cut at the 254 bytes of the format; a GeoPackage has them whole.").arg(counted(outcome.cutTexts));
    return words;
}

void HandOverView::tell()
{
    m_trouble = QString::fromStdString(m_outcome.trouble);
    m_done = m_outcome.trouble.empty() ? sentence() : QString();
    emit progressChanged();
}

}  // namespace groundcount::view
