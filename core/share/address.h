#pragma once

#include "method/error.h"

#include <string>

/// Where a shared server is: libpq's connection string or URI.
namespace groundcount::share {

/// An address that can be read and, beyond this machine, verifies the server (sslmode=verify-full).
/// @error Refused, with what is wrong
Result<void> checkAddress(const std::string& address);

/// The same for one that is kept in a book's drafts: it holds no password.
/// @error Refused, with what is wrong
Result<void> checkKeptAddress(const std::string& address);

}  // namespace groundcount::share
