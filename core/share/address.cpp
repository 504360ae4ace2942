#include "share/address.h"

#include "share/server_words.h"

namespace groundcount::share {

namespace {

/// Whether the address stays on this machine: a socket's folder, nothing at all, or the loopback.
bool isHere(const std::string& host)
{
    return host.empty() || host[0] == '/' || host == "localhost" || host == "127.0.0.1" || host == "::1";
}

/// What an address says of the way to the server. @error Refused for one that cannot be read
struct Way {
    std::string host, mode;  ///< host: one beyond this machine, else empty
    bool hasPassword = false;
};

Result<Way> wayOf(const std::string& address)
{
    char* words = nullptr;
    PQconninfoOption* options = PQconninfoParse(address.c_str(), &words);
    if (!options) {
        const std::string why = firstLine(words);
        PQfreemem(words);
        return refused("The server's address cannot be read: " + why + ".");
    }
    Way way;
    for (const PQconninfoOption* option = options; option->keyword; ++option) {
        const std::string keyword = option->keyword;
        if (option->val && (keyword == "host" || keyword == "hostaddr") && !isHere(option->val))
            way.host = option->val;
        if (option->val && keyword == "sslmode")
            way.mode = option->val;
        way.hasPassword |= option->val && (keyword == "password" || keyword == "sslpassword");
    }
    PQconninfoFree(options);
    return way;
}

}  // namespace

Result<void> checkAddress(const std::string& address)
{
    const auto way = wayOf(address);
    if (!way)
        return tl::unexpected(way.error());
    if (!way->host.empty() && way->mode != "verify-full")
        return refused("A server on another machine (" + way->host + ") needs sslmode=verify-full, so that it is the right one; it is \"" + way->mode + "\".");
    return {};
}

Result<void> checkKeptAddress(const std::string& address)
{
    const auto way = wayOf(address);
    if (way && way->hasPassword)
        return refused("The address is kept on this device in plain text: a password belongs in libpq's password file, not in it.");
    return checkAddress(address);
}

}  // namespace groundcount::share
