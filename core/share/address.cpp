#include "share/address.h"

#include "share/server_words.h"

#include <algorithm>
#include <map>
#include <memory>

namespace groundcount::share {

namespace {

/// Whether a host stays on this machine: a socket's folder, nothing at all, or the loopback.
bool isHere(const std::string& host)
{
    return host.empty() || host[0] == '/' || host == "localhost" || host == "127.0.0.1" || host == "::1";
}

/// The first host of a list, parted by commas as libpq takes it, that lies beyond this machine.
std::string beyond(const std::string& hosts)
{
    for (std::size_t begin = 0; begin <= hosts.size();) {
        const std::size_t end = std::min(hosts.find(',', begin), hosts.size());
        if (const std::string host = hosts.substr(begin, end - begin); !isHere(host))
            return host;
        begin = end + 1;
    }
    return {};
}

/// What an address says of the way to the server.
struct Way {
    std::string host, mode;  ///< host: one beyond this machine, else empty
    bool hasPassword = false;
};

using Options = std::unique_ptr<PQconninfoOption, void (*)(PQconninfoOption*)>;
using Values = std::map<std::string, std::string>;

void put(const Options& options, Values& into)
{
    for (const PQconninfoOption* option = options.get(); option && option->keyword; ++option)
        if (option->val)
            into[option->keyword] = option->val;
}

/// Reads an address; what it leaves out comes from libpq's environment, as it will when the connection is made.
/// @error Refused for one that cannot be read, or that names a service, whose file may say anything
Result<Way> wayOf(const std::string& address)
{
    char* words = nullptr;
    const Options parsed(PQconninfoParse(address.c_str(), &words), PQconninfoFree);
    if (!parsed) {
        const std::string why = firstLine(words);
        PQfreemem(words);
        return refused("The server's address cannot be read: " + why + ".");
    }
    Values own;
    put(parsed, own);
    Values all;
    put(Options(PQconndefaults(), PQconninfoFree), all);
    const bool hasPassword = own.contains("password") || own.contains("sslpassword");
    if (own.contains("service") || all.contains("service"))
        return refused("The server's address names the service \"" + (own.contains("service") ? own : all)["service"] + "\"; a service file is not read here, write the host and sslmode out.");
    for (const auto& [keyword, value] : own)
        all[keyword] = value;
    const std::string host = beyond(all["host"]);
    return Way{host.empty() ? beyond(all["hostaddr"]) : host, all["sslmode"], hasPassword};
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
