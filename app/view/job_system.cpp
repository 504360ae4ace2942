#include "view/job_system.h"

#include "gis/crs.h"

#include <utility>

namespace groundcount::view {

struct JobSystem::Made {
    std::unique_ptr<gis::Crs> crs;
    std::string trouble;
};

JobSystem::JobSystem(QObject* parent) : QObject(parent)
{
    // told when the GUI thread comes to it; by then the system may have been asked for, or be another one
    connect(this, &JobSystem::madeBeside, this, [this] {
        crs();
        if (!m_trouble.empty())
            emit failed();
    }, Qt::QueuedConnection);
}
JobSystem::~JobSystem() = default;

void JobSystem::set(int epsg, const std::string& wkt)
{
    if (epsg == m_epsg && wkt == m_wkt)
        return;
    m_epsg = epsg;
    m_wkt = wkt;
    m_crs.reset();
    m_trouble.clear();
    m_isMade = false;
    m_making = {};
}

std::shared_ptr<JobSystem::Made> JobSystem::make(int epsg, const std::string& wkt)
{
    auto made = std::make_shared<Made>();
    if (epsg <= 0 && wkt.empty())
        return made;
    auto crs = epsg > 0 ? gis::Crs::fromEpsg(epsg) : gis::Crs::fromWkt(wkt);
    if (crs)
        made->crs = std::make_unique<gis::Crs>(std::move(*crs));
    else
        made->trouble = crs.error().what;
    return made;
}

void JobSystem::take()
{
    const auto made = m_making.valid() ? m_making.get() : make(m_epsg, m_wkt);
    m_crs = std::move(made->crs);
    m_trouble = std::move(made->trouble);
    m_isMade = true;
}

const gis::Crs* JobSystem::crs()
{
    if (!m_isMade)
        take();
    return m_crs.get();
}

void JobSystem::makeBeside()
{
    if (m_isMade || m_making.valid())
        return;
    m_making = std::async(std::launch::async, [this, epsg = m_epsg, wkt = m_wkt] {
        const auto answers = gis::Crs::selfTest();
        auto made = answers ? make(epsg, wkt) : std::make_shared<Made>();
        if (!answers)
            made->trouble = answers.error().what;
        emit madeBeside();
        return made;
    });
}

}  // namespace groundcount::view
