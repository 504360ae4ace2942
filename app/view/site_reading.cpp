#include "view/site_reading.h"

namespace groundcount::view {

SiteReading::SiteReading(QObject* parent) : QObject(parent)
{
    connect(&m_work, &BesideWork::ended, this, &SiteReading::take);
}

void SiteReading::start(const QString& path)
{
    m_work.stop();
    m_path = path;
    m_file.reset();
    m_trouble.clear();
    m_outcome.reset();
    if (path.isEmpty())
        return;
    m_work.start([this, file = path.toStdString()](const std::atomic<bool>& stop) {
        gis::SiteLimits limits;
        limits.stop = &stop;
        m_outcome = gis::readSiteFile({foreignReader(), "read-site"}, file, limits);
    });
}

void SiteReading::take()
{
    if (*m_outcome)
        m_file = std::move(**m_outcome);
    else
        m_trouble = QString::fromStdString(m_outcome->error().what);
    m_outcome.reset();
    emit ended();
}

}  // namespace groundcount::view
