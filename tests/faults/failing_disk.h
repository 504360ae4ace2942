#pragma once

#include <atomic>
#include <cstdint>

namespace faults {

/// The machine's own disk below every field book (*.fieldbook and its log) that this process opens from now on, able to fail any one call. Other
/// files, such as proj.db, are left alone. Each call fails only with what it can say: a full disk when it writes, a lock when it locks.
class FailingDisk {
public:
    static FailingDisk& instance();  ///< becomes SQLite's default at its first use

    /// @param nth from 1, counting the calls that can fail with `code` (SQLITE_IOERR, SQLITE_FULL, SQLITE_READONLY, SQLITE_BUSY)
    void failOnce(std::int64_t nth, int code);
    void failFrom(std::int64_t nth, int code);
    void calm() { m_failAt = 0; }
    bool hasFailed() const { return m_failed; }

    /// For the VFS. @param can bits of Can @return the code to fail with, 0 = go on
    enum Can : unsigned { Nothing = 0, BeFull = 1, BeReadOnly = 2, BeLocked = 4 };
    int fails(unsigned can);

private:
    std::atomic<std::int64_t> m_failAt{0}, m_calls{0};
    std::atomic<int> m_code{0};
    std::atomic<bool> m_stays{false}, m_failed{false};
};

}  // namespace faults
