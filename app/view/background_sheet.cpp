#include "view/background_sheet.h"

#include "book/store.h"
#include "view/figure_text.h"
#include "view/map_background.h"

#include <QFile>
#include <QFileInfo>

namespace groundcount::view {

BackgroundSheet::BackgroundSheet(QObject* parent) : KitForm(parent)
{
    connect(&m_work, &BesideWork::ended, this, &BackgroundSheet::take);
}

void BackgroundSheet::chooseFile(const QUrl& file)
{
    readPath(file.isLocalFile() ? file.toLocalFile() : file.toString());
}

void BackgroundSheet::readPath(const QString& path)
{
    m_path = path.trimmed();
    m_refusal.clear();
    m_doneText.clear();
    if (!isReady() || !m_session->crs()) {
        m_refusal = tr("A background needs a book whose job has a coordinate system.");
        emit changed();
        return;
    }
    const std::string target = gis::backgroundPath(m_session->store().path());
    m_work.start([this, file = m_path.toStdString(), crs = *m_session->crs(), target](const std::atomic<bool>& stop) {
        gis::SiteLimits limits = gis::backgroundLimits();
        limits.stop = &stop;
        m_outcome = gis::takeBackground({foreignReader(), "read-background"}, file, crs, target, limits);
    });
    derive();
}

void BackgroundSheet::take()
{
    if (*m_outcome) {
        const auto& facts = **m_outcome;
        const bool metric = m_session->job().gridUnit == "m";
        const QString pixel = metric ? tr("%1 m").arg(figureText(facts.metresPerPixel, 2)) : tr("%1 ft").arg(figureText(Length::metres(facts.metresPerPixel).feet(), 2));
        m_doneText = tr("%1 lies under the map: %2 x %3 pixels of %4.").arg(QFileInfo(m_path).fileName()).arg(facts.width).arg(facts.height).arg(pixel);
        if (facts.isCoarser)
            m_doneText += ' ' + tr("The file is finer than a background can be; cut out the site for more.");
    } else {
        m_refusal = QString::fromStdString(m_outcome->error().what);
    }
    m_outcome.reset();
    m_session->readAgain();  // the map takes it up
    derive();
}

void BackgroundSheet::pickShown(int index)
{
    type(QStringLiteral("hidden"), index == 1 ? QStringLiteral("1") : QString());
    m_session->readAgain();
}

void BackgroundSheet::takeAway()
{
    const QString path = QString::fromStdString(gis::backgroundPath(m_session->store().path()));
    m_doneText.clear();
    m_refusal = QFile::remove(path) ? QString() : tr("The background at %1 cannot be taken away.").arg(path);
    m_session->readAgain();
    derive();
}

void BackgroundSheet::refresh()
{
    m_title = tr("Background of the map");
    m_shown = isBackgroundShown(*m_session) ? 0 : 1;
    const std::string path = gis::backgroundPath(m_session->store().path());
    m_isThere = QFileInfo::exists(QString::fromStdString(path));
    std::vector<Row> rows;
    if (m_isThere) {
        if (const auto background = gis::Background::open(path)) {
            rows.push_back(Row::ofWords(tr("Extent"), tr("north %1 to %2, east %3 to %4").arg(figureText(background->south(), 0), figureText(background->north(), 0), figureText(background->west(), 0), figureText(background->east(), 0)), {}));
            rows.push_back(Row::ofWords(tr("On this device"), QFileInfo(QString::fromStdString(path)).fileName(), tr("%1 MB").arg(figureText(static_cast<double>(QFileInfo(QString::fromStdString(path)).size()) / 1e6, 1))));
        } else {
            m_refusal = QString::fromStdString(background.error().what);
        }
    }
    m_facts.setRows(std::move(rows));
}

Result<std::vector<book::Entry>> BackgroundSheet::entries() const
{
    return refused(tr("A background belongs to this device and is never sealed.").toStdString());
}

}  // namespace groundcount::view
