#include "gis/staged_file.h"

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace groundcount::gis {
namespace {

namespace fs = std::filesystem;

constexpr char kMkdtempMark = 'X';  // mkdtemp replaces six of them

// EINVAL: some network file systems have no flush for folders, which is not a failed flush.
bool flush(const std::string& path)
{
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return false;
    const bool flushed = ::fsync(file) == 0 || errno == EINVAL;
    const int reason = errno;
    ::close(file);
    errno = reason;
    return flushed;
}

std::string because()
{
    return std::string(" (") + std::strerror(errno) + ").";
}

}  // namespace

StagedFile::StagedFile(std::string target, std::string folder, std::string path)
    : m_target(std::move(target)), m_folder(std::move(folder)), m_path(std::move(path))
{
}

StagedFile::StagedFile(StagedFile&& other) noexcept
    : m_target(std::move(other.m_target)), m_folder(std::exchange(other.m_folder, {})), m_path(std::move(other.m_path))
{
}

StagedFile::~StagedFile()
{
    std::error_code ignored;
    if (!m_folder.empty())
        fs::remove_all(m_folder, ignored);
}

Result<StagedFile> StagedFile::beside(const std::string& target)
{
    const fs::path path(target);
    const std::string name = path.filename().string();
    std::error_code unknown;
    if (name.empty() || fs::is_directory(path, unknown))
        return refused("The file to write must have a name; \"" + target + "\" is a folder.");
    for (const char* beside : {"-wal", "-journal"})
        if (fs::exists(target + beside, unknown))
            return refused("The file " + target + " is open in another program (" + name + beside + " lies beside it); close it there first.");
    std::string folder = target + ".part-" + std::string(6, kMkdtempMark);
    if (!::mkdtemp(folder.data()))
        return unavailable("Cannot write beside " + target + because());
    return StagedFile(target, folder, (fs::path(folder) / name).string());
}

Result<void> StagedFile::putInPlace()
{
    if (!flush(m_path))
        return unavailable("Cannot flush " + m_target + " to the disk" + because());
    if (std::rename(m_path.c_str(), m_target.c_str()) != 0)
        return unavailable("Cannot put " + m_target + " in place" + because());
    const std::string folder = fs::path(m_target).parent_path().string();
    if (!flush(folder.empty() ? "." : folder))
        return unavailable("The new " + m_target + " is in place, but its folder was not flushed to the disk" + because());
    return {};
}

}  // namespace groundcount::gis
