#include "faults/crash_vfs.h"

#include <algorithm>
#include <cstring>
#include <new>
#include <sqlite3.h>

namespace faults {

namespace {

struct File {
    sqlite3_file base;
    int number;
    bool isLog;
    bool entryUnsynced;  // SQLite's own VFS for this system flushes the folder at the first sync of a new log or journal
    std::string* name;
    bool forget;
};

File& of(sqlite3_file* file)
{
    return *reinterpret_cast<File*>(file);
}

std::string baseName(const char* path)
{
    const char* slash = std::strrchr(path, '/');
    return slash ? slash + 1 : path;
}

int closeFile(sqlite3_file* file)
{
    File& f = of(file);
    if (f.forget)
        Disk::instance().remove(*f.name, false);
    delete f.name;
    f.name = nullptr;
    return SQLITE_OK;
}

int readFile(sqlite3_file* file, void* into, int size, sqlite3_int64 at)
{
    if (const int code = Disk::instance().fails(Call::Read))
        return code == SQLITE_IOERR ? SQLITE_IOERR_READ : code;
    const std::string& content = Disk::instance().content(of(file).number);
    const auto begin = std::min(content.size(), static_cast<std::size_t>(at));
    const auto got = std::min(content.size() - begin, static_cast<std::size_t>(size));
    std::memcpy(into, content.data() + begin, got);
    std::memset(static_cast<char*>(into) + got, 0, static_cast<std::size_t>(size) - got);
    return got == static_cast<std::size_t>(size) ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}

int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 at)
{
    Disk& disk = Disk::instance();
    const auto whole = static_cast<std::size_t>(size);
    const int code = disk.fails(Call::Write);
    // a disk that fails in the middle of a write leaves half of it
    const std::size_t done = code ? whole / 2 : whole;
    std::string& content = disk.content(of(file).number);
    const auto begin = static_cast<std::size_t>(at);
    if (content.size() < begin + done)
        content.resize(begin + done, '\0');
    std::memcpy(content.data() + begin, from, done);
    Step step{Step::What::Write, of(file).number, *of(file).name, at, std::string(static_cast<const char*>(from), done), false};
    disk.note(std::move(step));
    return code == SQLITE_IOERR ? SQLITE_IOERR_WRITE : code;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    if (const int code = Disk::instance().fails(Call::Truncate))
        return code == SQLITE_IOERR ? SQLITE_IOERR_TRUNCATE : code;
    Disk::instance().content(of(file).number).resize(static_cast<std::size_t>(size), '\0');
    Disk::instance().note({Step::What::Truncate, of(file).number, *of(file).name, size, {}, false});
    return SQLITE_OK;
}

int syncFile(sqlite3_file* file, int)
{
    if (const int code = Disk::instance().fails(Call::Sync))
        return code == SQLITE_IOERR ? SQLITE_IOERR_FSYNC : code;
    File& f = of(file);
    Disk::instance().note({Step::What::Sync, f.number, *f.name, 0, {}, f.isLog && f.entryUnsynced});
    f.entryUnsynced = false;
    return SQLITE_OK;
}

int sizeOf(sqlite3_file* file, sqlite3_int64* size)
{
    if (const int code = Disk::instance().fails(Call::FileSize))
        return code == SQLITE_IOERR ? SQLITE_IOERR_FSTAT : code;
    *size = static_cast<sqlite3_int64>(Disk::instance().content(of(file).number).size());
    return SQLITE_OK;
}

int lockFile(sqlite3_file*, int)
{
    const int code = Disk::instance().fails(Call::Lock);
    return code == SQLITE_IOERR ? SQLITE_IOERR_LOCK : code;
}

int unlockFile(sqlite3_file*, int)
{
    return SQLITE_OK;
}

int checkLock(sqlite3_file*, int* held)
{
    *held = 0;
    return SQLITE_OK;
}

int control(sqlite3_file*, int, void*)
{
    return SQLITE_NOTFOUND;
}

int sectorSize(sqlite3_file*)
{
    return static_cast<int>(kSector);
}

int characteristics(sqlite3_file*)
{
    return Disk::instance().loadedAsSpoiling ? 0 : SQLITE_IOCAP_POWERSAFE_OVERWRITE;
}

const sqlite3_io_methods* methods()
{
    static const sqlite3_io_methods all = [] {
        sqlite3_io_methods m{};
        m.iVersion = 1;
        m.xClose = closeFile;
        m.xRead = readFile;
        m.xWrite = writeFile;
        m.xTruncate = truncateFile;
        m.xSync = syncFile;
        m.xFileSize = sizeOf;
        m.xLock = lockFile;
        m.xUnlock = unlockFile;
        m.xCheckReservedLock = checkLock;
        m.xFileControl = control;
        m.xSectorSize = sectorSize;
        m.xDeviceCharacteristics = characteristics;
        return m;
    }();
    return &all;
}

int openOn(sqlite3_vfs*, sqlite3_filename path, sqlite3_file* file, int flags, int* outFlags)
{
    File& f = *new (file) File{};
    Disk& disk = Disk::instance();
    if (const int code = disk.fails(Call::Open))
        return code == SQLITE_IOERR || code == SQLITE_FULL ? SQLITE_CANTOPEN : code;
    static int unnamed = 0;
    const std::string name = path ? baseName(path) : "temporary-" + std::to_string(++unnamed);
    bool created = false;
    const int number = disk.openFile(name, (flags & SQLITE_OPEN_CREATE) != 0 || !path, created);
    if (number == 0)
        return SQLITE_CANTOPEN;
    f.base.pMethods = methods();
    f.number = number;
    f.isLog = (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL)) != 0;
    f.entryUnsynced = created;
    f.name = new std::string(name);
    f.forget = (flags & SQLITE_OPEN_DELETEONCLOSE) != 0;
    if (outFlags)
        *outFlags = flags;
    return SQLITE_OK;
}

int deleteOn(sqlite3_vfs*, const char* path, int andFolder)
{
    Disk& disk = Disk::instance();
    if (const int code = disk.fails(Call::Delete))
        return code == SQLITE_IOERR ? SQLITE_IOERR_DELETE : code;
    if (!disk.exists(baseName(path)))
        return SQLITE_IOERR_DELETE_NOENT;
    disk.remove(baseName(path), andFolder != 0);
    return SQLITE_OK;
}

int accessOn(sqlite3_vfs*, const char* path, int, int* answer)
{
    if (const int code = Disk::instance().fails(Call::Access))
        return code == SQLITE_IOERR ? SQLITE_IOERR_ACCESS : code;
    *answer = Disk::instance().exists(baseName(path)) ? 1 : 0;
    return SQLITE_OK;
}

int fullName(sqlite3_vfs*, const char* path, int size, char* into)
{
    sqlite3_snprintf(size, into, "%s", path);
    return SQLITE_OK;
}

int noSleep(sqlite3_vfs*, int microseconds)
{
    return microseconds;  // nobody else can let go of a lock here
}

}  // namespace

const char* word(Call call)
{
    constexpr const char* kWords[] = {"open", "access", "delete", "read", "write", "truncate", "sync", "file size", "lock"};
    return kWords[static_cast<int>(call)];
}

Disk& Disk::instance()
{
    static Disk disk;
    static const int registered = [] {
        static sqlite3_vfs vfs = *sqlite3_vfs_find(nullptr);  // time and randomness stay those of the system
        vfs.iVersion = 2;
        vfs.szOsFile = sizeof(File);
        vfs.pNext = nullptr;
        vfs.zName = kDisk;
        vfs.xOpen = openOn;
        vfs.xDelete = deleteOn;
        vfs.xAccess = accessOn;
        vfs.xFullPathname = fullName;
        vfs.xSleep = noSleep;
        return sqlite3_vfs_register(&vfs, 0);
    }();
    std::ignore = registered;
    return disk;
}

void Disk::clear()
{
    load({});
}

void Disk::load(const Medium& medium)
{
    m_live.names = medium.names;
    m_live.contents.clear();
    for (const auto& [name, file] : medium.names)
        if (const auto content = medium.contents.find(file); content != medium.contents.end())
            m_live.contents.emplace(file, content->second);
    m_nextFile = 1;
    for (const auto& [file, content] : medium.contents)
        m_nextFile = std::max(m_nextFile, file + 1);
    for (const auto& [name, file] : medium.names)
        m_nextFile = std::max(m_nextFile, file + 1);
    m_recording = false;
    calm();
}

void Disk::mark(int number)
{
    note({Step::What::Mark, 0, {}, number, {}, false});
}

void Disk::failOnce(std::int64_t nth, int code)
{
    m_calls = 0;
    m_failAt = nth;
    m_failCode = code;
    m_failOn = false;
    m_failKind = -1;
    m_failed = false;
}

void Disk::failFrom(std::int64_t nth, int code)
{
    failOnce(nth, code);
    m_failOn = true;
}

int Disk::fails(Call call)
{
    ++m_calls;
    if (m_failKind == static_cast<int>(call))
        return m_failCode;
    if (m_failAt == 0 || m_calls != m_failAt)
        return SQLITE_OK;
    m_failed = true;
    m_failedCall = call;
    m_failAt = 0;
    if (m_failOn)
        m_failKind = static_cast<int>(call);
    return m_failCode;
}

int Disk::openFile(const std::string& name, bool create, bool& created)
{
    if (const auto found = m_live.names.find(name); found != m_live.names.end())
        return found->second;
    if (!create)
        return 0;
    created = true;
    const int number = m_nextFile++;
    m_live.names[name] = number;
    m_live.contents[number];
    note({Step::What::Create, number, name, 0, {}, false});
    return number;
}

void Disk::remove(const std::string& name, bool andFolder)
{
    m_live.names.erase(name);
    note({Step::What::Remove, 0, name, 0, {}, andFolder});
}

void Disk::note(Step step)
{
    if (m_recording)
        m_steps.push_back(std::move(step));
}

}  // namespace faults
