#include "view/site_reading.h"

#include <filesystem>

namespace groundcount::view {
namespace {

constexpr int kLookMs = 60;

std::vector<std::string>& reader()
{
    static std::vector<std::string> command;
    return command;
}

}  // namespace

SiteReading::SiteReading(QObject* parent) : QObject(parent)
{
    m_watch.setInterval(kLookMs);
    connect(&m_watch, &QTimer::timeout, this, &SiteReading::look);
}

SiteReading::~SiteReading()
{
    stop();
}

void SiteReading::setReader(std::vector<std::string> command)
{
    reader() = std::move(command);
}

void SiteReading::stop()
{
    m_stop = true;
    if (m_work.joinable())
        m_work.join();
    m_watch.stop();
}

void SiteReading::start(const QString& path)
{
    stop();
    m_path = path;
    m_file.reset();
    m_trouble.clear();
    m_outcome.reset();
    if (path.isEmpty())
        return;
    std::error_code none;
    std::vector<std::string> command = reader();
    if (command.empty())
        command = {std::filesystem::read_symlink("/proc/self/exe", none).string(), "read-site"};
    m_stop = false;
    m_isOver = false;
    m_work = std::thread([this, command, file = path.toStdString()] {
        gis::SiteLimits limits;
        limits.stop = &m_stop;
        m_outcome = gis::readSiteFile(command, file, limits);
        m_isOver = true;
    });
    m_watch.start();
}

void SiteReading::look()
{
    if (!m_isOver)
        return;
    m_watch.stop();
    m_work.join();
    if (*m_outcome)
        m_file = std::move(**m_outcome);
    else
        m_trouble = QString::fromStdString(m_outcome->error().what);
    m_outcome.reset();
    emit ended();
}

}  // namespace groundcount::view
