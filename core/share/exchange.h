#pragma once

#include "book/bundle.h"
#include "book/store.h"
#include "method/error.h"
#include "share/patience.h"

#include <string>

/// Push and pull of sealed records and contents between a book and a shared server. Either may stop anywhere and be
/// repeated: nothing is lost, nothing is doubled. The server is one more copy; everything that comes from it is verified
/// as if it came from a stranger.
namespace groundcount::share {

struct Pushed {
    std::size_t sent = 0;   ///< texts that are on the server now and were not before
    std::size_t known = 0;  ///< were there already
    bool stopped = false;   ///< keepOn or patience said no
};

/// Sends every record and content of the book that the server lacks, in transactions of at most 250 texts or 8 MiB.
/// @param address libpq's connection string or URI; one beyond this machine needs sslmode=verify-full
/// @param keepOn asked after each transaction, and while one takes long; the book is in use meanwhile; @param patience when it ends, the exchange stops where it is
/// @error Refused when this login is not admitted to the job, or the book is of format 1 or empty; Unavailable when the
///        server or the disk does not do its part. What went through before stays.
Result<Pushed> push(book::Store& store, const std::string& address, const book::KeepOn& keepOn, const Patience& patience = {});

/// Takes what came to the server since the last pull, in transactions of at most 2250 texts. Each refused text is listed and passed over; a stop gives up what is not committed.
/// @param join id of the book to be copied when `store` is empty; for another book "" or its own id
/// @error as push
Result<book::BundleReport> pull(book::Store& store, const std::string& address, const std::string& join, const book::KeepOn& keepOn, const Patience& patience = {});

}  // namespace groundcount::share
