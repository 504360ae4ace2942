#include "view/beside_work.h"

#include <filesystem>

namespace groundcount::view {
namespace {

constexpr int kLookMs = 60;

std::string& reader()
{
    static std::string program;
    return program;
}

}  // namespace

BesideWork::BesideWork(QObject* parent) : QObject(parent)
{
    m_watch.setInterval(kLookMs);
    connect(&m_watch, &QTimer::timeout, this, &BesideWork::look);
}

BesideWork::~BesideWork()
{
    stop();
}

void BesideWork::stop()
{
    m_stop = true;
    if (m_thread.joinable())
        m_thread.join();
    m_watch.stop();
}

void BesideWork::start(std::function<void(const std::atomic<bool>&)> work)
{
    stop();
    m_stop = m_isOver = false;
    m_thread = std::thread([this, work = std::move(work)] {
        work(m_stop);
        m_isOver = true;
    });
    m_watch.start();
}

void BesideWork::look()
{
    if (!m_isOver) {
        emit going();
        return;
    }
    m_watch.stop();
    m_thread.join();
    emit ended();
}

std::string foreignReader()
{
    std::error_code none;
    return reader().empty() ? std::filesystem::read_symlink("/proc/self/exe", none).string() : reader();
}

void setForeignReader(const std::string& program)
{
    reader() = program;
}

}  // namespace groundcount::view
