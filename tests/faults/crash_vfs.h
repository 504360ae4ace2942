#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

/// A disk in memory below SQLite that can lose its power, and that can fail any one call.
/// The idea (an ordered list of unsynced writes, each written, lost or garbled at the cut) is told in SQLite's own account
/// of its tests, testing.html section 3.3 of Debian's sqlite3-doc. The code is ours.
namespace faults {

/// What was asked of the disk, in order. A power cut falls between two of them.
struct Step {
    enum class What { Write, Truncate, Sync, Create, Remove, Mark } what = What::Mark;
    int file = 0;             ///< number of the file's content; a name made anew gets a new number
    std::string name;         ///< Create, Remove
    std::int64_t at = 0;      ///< Write: first byte; Truncate: new size; Mark: its number
    std::string bytes;        ///< Write
    bool andFolder = false;   ///< Sync, Remove: the folder's entries are flushed too
};

/// What lies on the medium: names and contents.
struct Medium {
    std::map<std::string, int> names;
    std::map<int, std::string> contents;
};

/// What a device makes of its promises.
struct Device {
    enum class Flush { Honoured, Ignored, IgnoredForLog } flush = Flush::Honoured;
    /// A write that is cut may spoil the rest of its sectors (SQLite's "powersafe overwrite" does not hold).
    bool spoilsSectors = false;
};

inline constexpr std::int64_t kSector = 512;

/// Walks a recorded run and gives the media that a power cut after `steps` of them can leave behind.
class PowerCut {
public:
    PowerCut(const std::vector<Step>& run, Device device) : m_run(run), m_device(device) {}
    /// Takes one more step. @return false at the end of the run
    bool advance();
    int lastMark() const { return m_mark; }
    std::size_t unsynced() const { return m_pending.size(); }
    /// Outcome 0 loses everything unsynced, 1 keeps everything, others lose, tear and garble each write by chance.
    Medium outcome(std::uint64_t number) const;

private:
    void settle(const Step& sync);
    const std::vector<Step>& m_run;
    Device m_device;
    std::size_t m_next = 0;
    int m_mark = -1;
    Medium m_durable;
    std::vector<const Step*> m_pending;
};

enum class Call { Open, Access, Delete, Read, Write, Truncate, Sync, FileSize, Lock };
const char* word(Call call);

/// The disk below the sqlite3_vfs called `kDisk`. One at a time, single-threaded.
class Disk {
public:
    static constexpr const char* kDisk = "groundcount-memory-disk";
    static Disk& instance();  ///< registers the VFS at its first use

    void clear();
    void load(const Medium& medium);
    Medium medium() const { return m_live; }
    void record() { m_steps.clear(); m_recording = true; }
    std::vector<Step> stopRecording() { m_recording = false; return std::move(m_steps); }
    void mark(int number);

    /// Fails the `nth` call from now (from 1) with `code`; `untilCalm` fails every call of that kind from then on.
    void failOnce(std::int64_t nth, int code);
    void failFrom(std::int64_t nth, int code);
    void calm() { m_failAt = 0; m_failKind = -1; }
    bool hasFailed() const { return m_failed; }
    Call failedCall() const { return m_failedCall; }
    std::int64_t calls() const { return m_calls; }

    // for the VFS
    int fails(Call call);
    int openFile(const std::string& name, bool create, bool& created);
    bool exists(const std::string& name) const { return m_live.names.contains(name); }
    void remove(const std::string& name, bool andFolder);
    std::string& content(int file) { return m_live.contents[file]; }
    void note(Step step);
    bool loadedAsSpoiling = false;  ///< device characteristics without "powersafe overwrite"

private:
    Medium m_live;
    int m_nextFile = 1;
    bool m_recording = false;
    std::vector<Step> m_steps;
    std::int64_t m_calls = 0;
    std::int64_t m_failAt = 0;
    int m_failCode = 0;
    bool m_failOn = false;
    int m_failKind = -1;
    bool m_failed = false;
    Call m_failedCall = Call::Open;
};

}  // namespace faults
