#pragma once

#include "method/error.h"

#include <libpq-fe.h>
#include <string>

/// What the server and libpq say, in sentences. Private to core/share.
namespace groundcount::share {

/// The first line without its full stop; "no reason given" for nothing.
std::string firstLine(const char* words);

/// The error of an answer: Refused when the server's rules refuse it (SQLSTATE class 42 or 23), else Unavailable.
Error said(PGconn* connection, PGresult* raw);

}  // namespace groundcount::share
