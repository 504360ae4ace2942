#pragma once

#include "method/error.h"
#include "share/patience.h"

#include <libpq-fe.h>
#include <memory>
#include <string>

/// The beginning of a connection. Private to core/share.
namespace groundcount::share {

struct Finish {
    void operator()(PGconn* raw) const { PQfinish(raw); }
};
using RawConnection = std::unique_ptr<PGconn, Finish>;

/// A connection that is ready for statements. The name of the server is looked up by the system, which cannot be interrupted: so all
/// of it runs on a thread of its own, which is left behind when patience ends and closes what it still opens.
/// @error Unavailable with libpq's words, when there is no answer for 15 seconds, and when patience ended.
Result<RawConnection> connectTo(const std::string& address, const Patience& patience);

/// What is said when patience ended.
Error stoppedWaiting();

}  // namespace groundcount::share
