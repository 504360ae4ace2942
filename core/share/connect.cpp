#include "share/connect.h"

#include "share/server_words.h"

#include <array>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <poll.h>
#include <thread>

namespace groundcount::share {
namespace {

constexpr std::chrono::milliseconds kAskPatience(50);
constexpr std::chrono::seconds kConnectFor(15);

/// What the caller and the thread that connects have in common; the last of them to go frees it.
struct Attempt {
    std::mutex guard;
    std::condition_variable settled;
    bool isLeft = false;  ///< nobody waits any more
    std::optional<Result<RawConnection>> outcome;

    bool left()
    {
        const std::lock_guard lock(guard);
        return isLeft;
    }
};

tl::unexpected<Error> unreached(const std::string& why)
{
    return unavailable("The server cannot be reached: " + why + ".");
}

Result<RawConnection> connectNow(const std::string& address, Attempt& attempt)
{
    // a phone that leaves the network must not hang: give up on a silent server within half a minute
    constexpr std::array<const char*, 7> kWords{"dbname", "tcp_user_timeout", "keepalives_idle", "keepalives_interval", "client_encoding",
                                                "application_name", nullptr};
    const std::array<const char*, 7> values{address.c_str(), "30000", "10", "5", "UTF8", "groundcount", nullptr};
    RawConnection raw(PQconnectStartParams(kWords.data(), values.data(), 1));
    if (!raw || PQstatus(raw.get()) == CONNECTION_BAD)
        return unreached(firstLine(PQerrorMessage(raw.get())));
    for (PostgresPollingStatusType wanted = PGRES_POLLING_WRITING; wanted != PGRES_POLLING_OK;) {
        pollfd socket{PQsocket(raw.get()), static_cast<short>(wanted == PGRES_POLLING_WRITING ? POLLOUT : POLLIN), 0};
        if (poll(&socket, 1, static_cast<int>(kAskPatience.count())) > 0)
            wanted = PQconnectPoll(raw.get());
        if (wanted == PGRES_POLLING_FAILED)
            return unreached(firstLine(PQerrorMessage(raw.get())));
        if (attempt.left())
            return tl::unexpected(stoppedWaiting());
    }
    return raw;
}

}  // namespace

Error stoppedWaiting()
{
    return {Fault::Unavailable, "The exchange with the server was stopped."};
}

Result<RawConnection> connectTo(const std::string& address, const Patience& patience)
{
    const auto attempt = std::make_shared<Attempt>();
    std::thread([attempt, address] {
        auto outcome = connectNow(address, *attempt);
        const std::lock_guard lock(attempt->guard);
        attempt->outcome = std::move(outcome);
        attempt->settled.notify_all();
    }).detach();
    const auto until = std::chrono::steady_clock::now() + kConnectFor;
    std::unique_lock lock(attempt->guard);
    while (!attempt->settled.wait_for(lock, kAskPatience, [&] { return attempt->outcome.has_value(); })) {
        lock.unlock();
        const bool goesOn = !patience || patience();
        lock.lock();
        attempt->isLeft = !goesOn || std::chrono::steady_clock::now() > until;
        if (!goesOn)
            return tl::unexpected(stoppedWaiting());
        if (attempt->isLeft && !attempt->outcome)
            return unreached("it did not answer for 15 seconds");
    }
    return std::move(*attempt->outcome);
}

}  // namespace groundcount::share
