#pragma once

#include "method/error.h"

#include <string>

/// A PostgreSQL database that carries sealed texts between the devices of a job. docs/shared-server.md.
namespace groundcount::share {

/// Makes the schema, tables and rules; can be repeated. Needs the right to create roles and schemas.
/// @param address libpq's connection string or URI
/// @error Refused when the login may not; Unavailable with the server's words.
Result<void> prepareServer(const std::string& address);

/// Lets a login of the server take part in a job: read its texts and add to them, nothing else. Can be repeated.
/// @param book the book's id; @param login name of an existing role of the server
/// @error Refused when there is no such role or the id is no UUID; Unavailable with the server's words.
Result<void> admit(const std::string& address, const std::string& book, const std::string& login);

}  // namespace groundcount::share
