#pragma once

#include "method/error.h"
#include "share/patience.h"

#include <cstdint>
#include <string>
#include <vector>

namespace groundcount::share {

/// A job that a server carries, as it tells it.
struct ServerJob {
    std::string id;    ///< of the job's book
    std::string name;  ///< out of the newest sealed name of the job among its first texts, verified; "" when there is none
    std::int64_t texts = 0;
    std::string latest;  ///< when the newest text came, by the server's clock, UTC as in records; "" without one
};

/// The jobs that the login of `address` is admitted to, the one with the newest text first.
/// @param patience as Connection::open
/// @error Refused or Unavailable as Connection::open; Refused when the database carries no field books.
Result<std::vector<ServerJob>> jobsOn(const std::string& address, const Patience& patience = {});

}  // namespace groundcount::share
