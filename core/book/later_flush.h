#pragma once

#include "book/store.h"
#include "method/error.h"

#include <utility>

/// While it lives, commits of a store are not flushed to the disk one by one: for what another copy holds too. If the power fails, the
/// book is whole as of one of those commits, and later ones are gone, in their order. (SQLite: synchronous=NORMAL with a write-ahead log.)
namespace groundcount::book {

class LaterFlush {
public:
    /// @error Unavailable when the disk does not do its part.
    static Result<LaterFlush> begin(const Store& store);
    LaterFlush(LaterFlush&& other) noexcept : m_store(std::exchange(other.m_store, nullptr)) {}
    LaterFlush(const LaterFlush&) = delete;
    LaterFlush& operator=(const LaterFlush&) = delete;
    LaterFlush& operator=(LaterFlush&&) = delete;
    ~LaterFlush();

    /// Flushes all of it; every later commit is flushed by itself again. @error Unavailable when the disk does not do its part.
    Result<void> end();

private:
    explicit LaterFlush(const Store& store) : m_store(&store) {}
    const Store* m_store;
};

}  // namespace groundcount::book
