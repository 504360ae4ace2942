#include "faults/failing_disk.h"

#include <sqlite3.h>
#include <string_view>

namespace faults {
namespace {

using Can = FailingDisk::Can;

/// Stands before the system's own file, which lies behind it in memory.
struct File {
    sqlite3_file base;
    sqlite3_file* real;
};

sqlite3_file* realOf(sqlite3_file* file)
{
    return reinterpret_cast<File*>(file)->real;
}

int failing(unsigned can)
{
    return FailingDisk::instance().fails(can);
}

sqlite3_vfs* system()
{
    static sqlite3_vfs* const vfs = sqlite3_vfs_find("unix");
    return vfs;
}

/// Makes a call of the system's file one that can fail.
template <auto Member, unsigned can, class... Args>
int passed(sqlite3_file* file, Args... args)
{
    if (const int code = failing(can))
        return code;
    return (realOf(file)->pMethods->*Member)(realOf(file), args...);
}

const sqlite3_io_methods& methods()
{
    using M = sqlite3_io_methods;
    constexpr unsigned kWrites = Can::BeFull | Can::BeReadOnly;
    static const M all{
        3,
        [](sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); },
        passed<&M::xRead, Can::Nothing, void*, int, sqlite3_int64>,
        passed<&M::xWrite, kWrites, const void*, int, sqlite3_int64>,
        passed<&M::xTruncate, kWrites, sqlite3_int64>,
        passed<&M::xSync, Can::Nothing, int>,
        passed<&M::xFileSize, Can::Nothing, sqlite3_int64*>,
        passed<&M::xLock, Can::BeLocked, int>,
        [](sqlite3_file* f, int level) { return realOf(f)->pMethods->xUnlock(realOf(f), level); },
        passed<&M::xCheckReservedLock, Can::Nothing, int*>,
        [](sqlite3_file* f, int op, void* arg) { return realOf(f)->pMethods->xFileControl(realOf(f), op, arg); },
        [](sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); },
        [](sqlite3_file* f) { return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f)); },
        passed<&M::xShmMap, Can::BeFull, int, int, int, void volatile**>,
        [](sqlite3_file* f, int offset, int n, int flags) {
            if (const int code = flags & SQLITE_SHM_UNLOCK ? 0 : failing(Can::BeLocked))
                return code;
            return realOf(f)->pMethods->xShmLock(realOf(f), offset, n, flags);
        },
        [](sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); },
        [](sqlite3_file* f, int remove) { return realOf(f)->pMethods->xShmUnmap(realOf(f), remove); },
        // Nothing is mapped, so that every read is a call.
        [](sqlite3_file*, sqlite3_int64, int, void** page) { *page = nullptr; return SQLITE_OK; },
        [](sqlite3_file*, sqlite3_int64, void*) { return SQLITE_OK; },
    };
    return all;
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* given)
{
    if (!name || std::string_view(name).find(".fieldbook") == std::string_view::npos)
        return system()->xOpen(system(), name, file, flags, given);
    auto* ours = reinterpret_cast<File*>(file);
    *ours = File{};
    ours->real = reinterpret_cast<sqlite3_file*>(ours + 1);
    ours->real->pMethods = nullptr;
    if (const int code = failing(Can::Nothing))
        return code;
    const int code = system()->xOpen(system(), name, ours->real, flags, given);
    if (ours->real->pMethods)
        ours->base.pMethods = &methods();
    return code;
}

}  // namespace

FailingDisk& FailingDisk::instance()
{
    static FailingDisk disk;
    static sqlite3_vfs vfs = [] {
        sqlite3_vfs made = *system();
        made.zName = "groundcount-failing-disk";
        made.szOsFile = static_cast<int>(sizeof(File)) + system()->szOsFile;
        made.xOpen = open;
        return made;
    }();
    static const int registered = sqlite3_vfs_register(&vfs, 1);
    static_cast<void>(registered);
    return disk;
}

void FailingDisk::failOnce(std::int64_t nth, int code)
{
    m_stays = false;
    m_failed = false;
    m_calls = 0;
    m_code = code;
    m_failAt = nth;
}

void FailingDisk::failFrom(std::int64_t nth, int code)
{
    failOnce(nth, code);
    m_stays = true;
}

int FailingDisk::fails(unsigned can)
{
    const int code = m_code;
    const bool possible = code == SQLITE_FULL       ? can & Can::BeFull
                          : code == SQLITE_READONLY ? can & Can::BeReadOnly
                          : code == SQLITE_BUSY     ? can & Can::BeLocked
                                                    : true;
    if (m_failAt == 0 || !possible)
        return 0;
    const std::int64_t call = ++m_calls;
    if (call != m_failAt && !(m_stays && call > m_failAt))
        return 0;
    m_failed = true;
    return code;
}

}  // namespace faults
