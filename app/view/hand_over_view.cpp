#include "view/hand_over_view.h"

#include "book/store.h"
#include "gis/hand_over.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>

namespace groundcount::view {
namespace {

constexpr int kLookMs = 100;

struct Format {
    const char* ending;
    gis::HandOverFormat format;
};
constexpr Format kFormats[] = {{"gpkg", gis::HandOverFormat::GeoPackage}, {"geojson", gis::HandOverFormat::GeoJson}, {"csv", gis::HandOverFormat::Csv}};

Row counted(const QString& title, const QString& second, std::size_t count)
{
    Row row = Row::ofWords(title, second, {});
    row.figure = QLocale().toString(static_cast<qulonglong>(count));
    return row;
}

}  // namespace

HandOverView::HandOverView(QObject* parent) : QObject(parent)
{
    m_watch.setInterval(kLookMs);
    connect(&m_watch, &QTimer::timeout, this, &HandOverView::look);
}

HandOverView::~HandOverView()
{
    m_stop = true;
    if (m_work.joinable())
        m_work.join();
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
    const Snapshot& all = m_session->snapshot();
    std::vector<Row> rows{counted(tr("Tests"), tr("place, figures, verdict and who made it"), all.tests.size())};
    if (m_format == 0) {
        rows.push_back(counted(tr("Drawn sites"), tr("tested and owed"), all.sites.size()));
        rows.push_back(counted(tr("Lifts"), tr("the ground that each test stands for"), all.lifts.size()));
        rows.push_back(counted(tr("Lots"), tr("requirement and how far they are"), all.lots.size()));
        rows.push_back(counted(tr("Obstacles"), tr("places and lines"), all.obstacles.size()));
        rows.push_back(Row::ofWords(tr("Photos, symbols, rule sets"), tr("and the hashes that tie the file to this book"), {}));
    }
    m_contents.setRows(std::move(rows));
    emit changed();
}

QStringList HandOverView::formatWords() const
{
    return {QStringLiteral("GeoPackage"), QStringLiteral("GeoJSON"), QStringLiteral("CSV")};
}

QString HandOverView::formatNote() const
{
    switch (m_format) {
    case 1: return tr("Tests only, as longitude and latitude on WGS 84. Between NAD 83 and WGS 84 lie one to two metres on the ground.");
    case 2: return tr("Tests only, as a table; places in the job's coordinate system.");
    default: return tr("Everything in one file, in the job's coordinate system. A desktop GIS opens it with the symbols of this map.");
    }
}

QString HandOverView::ending() const
{
    return QString::fromLatin1(kFormats[m_format].ending);
}

QUrl HandOverView::suggested() const
{
    QString name = m_session ? QString::fromStdString(m_session->job().name) : QString();
    name.replace(QRegularExpression(QStringLiteral("[^\\w-]+"), QRegularExpression::UseUnicodePropertiesOption), QStringLiteral("-"));
    if (name.isEmpty())
        name = QStringLiteral("job");
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QUrl::fromLocalFile(QDir(folder).filePath(name + '.' + ending()));
}

QString HandOverView::missing() const
{
    if (!m_session || !m_session->isOpen())
        return tr("Hand over: no book is open");
    if (!m_session->crs())
        return tr("Hand over: the job needs a coordinate system");
    return {};
}

void HandOverView::pickFormat(int index)
{
    if (index < 0 || index >= static_cast<int>(std::size(kFormats)) || index == m_format || isRunning())
        return;
    m_format = index;
    m_done.clear();
    m_trouble.clear();
    refresh();
    emit progressChanged();
}

void HandOverView::write(const QUrl& target)
{
    if (isRunning() || !missing().isEmpty())
        return;
    QString file = target.toLocalFile();
    if (!file.isEmpty() && QFileInfo(file).suffix().isEmpty())
        file += '.' + ending();
    gis::HandOverAsk ask;
    ask.path = file.toStdString();
    ask.format = kFormats[m_format].format;
    ask.options.keepOn = [this](std::size_t rows) {
        m_rows = rows;
        return !m_stop;
    };
    m_stop = false;
    m_ended = false;
    m_rows = 0;
    m_done.clear();
    m_trouble.clear();
    m_progress = tr("Reading the book");
    // A store of its own: the pages go on with theirs.
    m_work = std::thread([this, ask, book = m_session->store().path()] {
        const auto store = book::Store::open(book, book::OpenMode::ReadOnly);
        const auto result = store ? gis::handOver(*store, ask) : tl::unexpected(store.error());
        std::size_t rows = 0;
        if (result)
            for (const auto& layer : result->layers)
                rows += static_cast<std::size_t>(layer.rows);
        const std::lock_guard lock(m_guard);
        m_succeeded = result.has_value();
        m_outcome = result ? tr("%1 is written and was read again: %2 rows.").arg(QString::fromStdString(ask.path), QLocale().toString(static_cast<qulonglong>(rows)))
                           : QString::fromStdString(result.error().what);
        m_ended = true;
    });
    m_watch.start();
    emit progressChanged();
}

void HandOverView::look()
{
    if (!m_ended) {
        if (m_rows > 0)
            m_progress = m_stop ? tr("Stopping") : tr("Writing: %1 rows").arg(QLocale().toString(static_cast<qulonglong>(m_rows)));
        emit progressChanged();
        return;
    }
    m_watch.stop();
    m_work.join();
    const std::lock_guard lock(m_guard);
    (m_succeeded ? m_done : m_trouble) = m_outcome;
    m_progress.clear();
    emit progressChanged();
}

}  // namespace groundcount::view
