#pragma once

#include "book/store.h"
#include "share/connection.h"
#include "share/exchange.h"

#include <atomic>
#include <string>

/// What a push and a pull share. Private to core/share.
namespace groundcount::share {

inline constexpr std::size_t kTexts = 250;            // some hundredths of a second: so long is the job's counter held, and nothing told to a waiting person
inline constexpr std::size_t kBytes = 8U << 20U;

/// A job on a server: `begun` tells one server from another that was set up again in its place.
struct Job {
    Connection server;
    std::string id, begun;
};

/// @error Refused for a book without an id, and a login that is not admitted; as Connection::open
Result<Job> jobOn(const std::string& address, const std::string& id, const Patience& patience);

/// A mark of this server in the book as a number, 0 when there is none.
Result<std::int64_t> numberMark(const book::Store& store, const Job& job, const char* name);

/// Remembers that patience ended, so that the error which follows from it is told as a stop.
class Impatience {
public:
    explicit Impatience(const Patience& patience) : m_patience(patience) {}
    Patience asked()
    {
        if (!m_patience)
            return {};
        return [this] {
            if (!m_ended && !m_patience())
                m_ended = true;
            return !m_ended;
        };
    }
    bool ended() const { return m_ended; }

private:
    const Patience& m_patience;
    std::atomic<bool> m_ended = false;
};

}  // namespace groundcount::share
