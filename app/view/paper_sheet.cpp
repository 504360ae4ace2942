#include "view/paper_sheet.h"

#include "book/store.h"
#include "paper/sheets.h"
#include "method/core_version.h"

#include <QDateTime>
#include <QDir>
#include <QStandardPaths>

namespace groundcount::view {
namespace {

constexpr qint64 kDaySeconds = 24 * 3600;

}  // namespace

void PaperSheet::setSession(Session* session)
{
    if (session == m_session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &PaperSheet::refresh);
    refresh();
}

void PaperSheet::setWhat(const QString& what)
{
    if (what == m_what)
        return;
    m_what = what;
    m_saved.clear();
    refresh();
}

void PaperSheet::pickFormat(int index)
{
    m_format = index == 1 ? paper::Format::A4 : paper::Format::Letter;
    m_formatPicked = true;
    refresh();
}

Result<paper::Document> PaperSheet::document() const
{
    const QDateTime now = m_session->now().toOffsetFromUtc(m_session->offsetMinutes() * 60);
    const paper::Source source{m_session->store(), m_session->bookName(), tr("Made %1 by Groundcount %2").arg(now.toString(QStringLiteral("yyyy-MM-dd hh:mm")), QLatin1String(kCoreVersion))};
    const QString kind = m_what.section(':', 0, 0);
    const QString subject = m_what.section(':', 1);
    const std::string id = subject.toStdString();
    if (kind == QStringLiteral("day"))
        return paper::daySheet(source, subject.isEmpty() ? now.date() : QDate::fromString(subject, Qt::ISODate), {});
    if (kind == QStringLiteral("test"))
        return paper::testSheet(source, id);
    if (kind == QStringLiteral("lot"))
        return paper::lotSheet(source, id);
    if (kind == QStringLiteral("review"))
        return paper::reviewSheet(source, id);
    if (kind == QStringLiteral("counts"))
        return paper::standardCountLog(source, id);
    if (kind == QStringLiteral("custody"))
        return paper::custodyLog(source, id);
    if (kind == QStringLiteral("reference"))
        return paper::proctorSheet(source, id);
    return refused("No sheet is called " + kind.toStdString() + ".");
}

void PaperSheet::refresh()
{
    m_pages.reset();
    m_trouble.clear();
    if (m_session && m_session->isOpen() && !m_what.isEmpty()) {
        // Jobs in metric densities are handed over on metric paper, until another is picked.
        if (!m_formatPicked)
            m_format = m_session->job().densityUnit == "kg/m3" ? paper::Format::A4 : paper::Format::Letter;
        auto made = document();
        if (made) {
            m_document = std::move(*made);
            m_pages = std::make_unique<paper::Pages>(m_document, m_format);
        } else {
            m_trouble = QString::fromStdString(made.error().what);
        }
    }
    emit changed();
}

double PaperSheet::heightOfWidth() const
{
    const QSizeF size = paper::sizeOf(m_format);
    return size.height() / size.width();
}

QString PaperSheet::fileName() const
{
    QString name = m_pages ? m_document.title.toLower() : m_what.section(':', 0, 0);
    for (QChar& c : name)
        if (!c.isLetterOrNumber())
            c = '-';
    return name + QStringLiteral(".pdf");
}

bool PaperSheet::save(const QUrl& file)
{
    m_saved.clear();
    if (!m_pages)
        return false;
    QString path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    if (!path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive))
        path += QStringLiteral(".pdf");
    const auto written = paper::writePdf(m_document, m_format, path);
    m_trouble = written ? QString() : QString::fromStdString(written.error().what);
    if (written)
        m_saved = tr("Saved: %1").arg(path);
    emit changed();
    return written.has_value();
}

QUrl PaperSheet::forViewer()
{
    m_saved.clear();
    QDir folder(QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/sheets"));
    if (!m_pages)
        return {};
    folder.mkpath(QStringLiteral("."));
    for (const auto& old : folder.entryInfoList({QStringLiteral("*.pdf")}, QDir::Files))
        if (old.lastModified().secsTo(QDateTime::currentDateTime()) > kDaySeconds)
            QFile::remove(old.filePath());
    const QString path = folder.filePath(fileName());
    const auto written = paper::writePdf(m_document, m_format, path);
    m_trouble = written ? QString() : QString::fromStdString(written.error().what);
    emit changed();
    return written ? QUrl::fromLocalFile(path) : QUrl();
}

void PaperSheet::viewerAnswered(bool opened)
{
    m_trouble = opened ? QString() : tr("No program of this device shows a PDF. Save it and print it elsewhere.");
    emit changed();
}

}  // namespace groundcount::view
