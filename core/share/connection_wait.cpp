#include "share/connection.h"
#include "share/server_words.h"

#include <array>
#include <chrono>
#include <poll.h>

namespace groundcount::share {

namespace {

constexpr int kAskPatienceMs = 50;
constexpr std::chrono::seconds kConnectFor(15);

}  // namespace

Error Connection::gaveUp()
{
    m_raw.reset();  // the server ends what was begun
    return {Fault::Unavailable, "The exchange with the server was stopped."};
}

/// Waits until the socket can be read or written; false when patience ended first.
bool Connection::waitFor(bool toWrite)
{
    for (;;) {
        pollfd socket{PQsocket(m_raw.get()), static_cast<short>(toWrite ? POLLOUT | POLLIN : POLLIN), 0};
        if (poll(&socket, 1, m_patience ? kAskPatienceMs : -1) > 0)
            return true;
        if (m_patience && !m_patience())
            return false;
    }
}

Result<void> Connection::connect(const std::string& address)
{
    // a phone that leaves the network must not hang: give up on a silent server within half a minute
    constexpr std::array<const char*, 7> kWords{"dbname", "tcp_user_timeout", "keepalives_idle", "keepalives_interval", "client_encoding",
                                                "application_name", nullptr};
    const std::array<const char*, 7> values{address.c_str(), "30000", "10", "5", "UTF8", "groundcount", nullptr};
    m_raw.reset(PQconnectStartParams(kWords.data(), values.data(), 1));
    const auto failed = [this] { return unavailable("The server cannot be reached: " + firstLine(PQerrorMessage(m_raw.get())) + "."); };
    if (!m_raw || PQstatus(m_raw.get()) == CONNECTION_BAD)
        return failed();
    const auto until = std::chrono::steady_clock::now() + kConnectFor;
    for (PostgresPollingStatusType wanted = PGRES_POLLING_WRITING; wanted != PGRES_POLLING_OK;) {
        pollfd socket{PQsocket(m_raw.get()), static_cast<short>(wanted == PGRES_POLLING_WRITING ? POLLOUT : POLLIN), 0};
        if (poll(&socket, 1, kAskPatienceMs) > 0)
            wanted = PQconnectPoll(m_raw.get());
        if (wanted == PGRES_POLLING_FAILED)
            return failed();
        if (m_patience && !m_patience())
            return tl::unexpected(gaveUp());
        if (std::chrono::steady_clock::now() > until)
            return unavailable("The server cannot be reached: it did not answer for 15 seconds.");
    }
    return {};
}

/// The answer of the statement that was sent.
Result<PGresult*> Connection::answerOf()
{
    for (int unsent = 1; unsent != 0;) {
        unsent = PQflush(m_raw.get());
        if (unsent == 1 && !waitFor(true))
            return tl::unexpected(gaveUp());
        if (unsent < 0 || (unsent == 1 && PQconsumeInput(m_raw.get()) == 0))
            break;  // the connection broke; libpq says so in the answer
    }
    PGresult* last = nullptr;
    for (;;) {
        while (PQisBusy(m_raw.get()) != 0) {
            if (!waitFor(false)) {
                PQclear(last);
                return tl::unexpected(gaveUp());
            }
            if (PQconsumeInput(m_raw.get()) == 0)
                break;
        }
        PGresult* next = PQgetResult(m_raw.get());
        if (!next)
            return last;
        PQclear(last);
        last = next;
    }
}

Result<Answer> Connection::run(const std::string& sql, const std::vector<Parameter>& parameters)
{
    if (!m_raw)
        return tl::unexpected(gaveUp());
    std::vector<Oid> types;
    std::vector<const char*> values;
    std::vector<int> lengths, formats;
    for (const Parameter& parameter : parameters) {
        types.push_back(parameter.type);
        values.push_back(parameter.bytes.data());
        lengths.push_back(static_cast<int>(parameter.bytes.size()));
        formats.push_back(1);
    }
    PQsetnonblocking(m_raw.get(), 1);
    const bool sent = PQsendQueryParams(m_raw.get(), sql.c_str(), static_cast<int>(parameters.size()), types.data(), values.data(), lengths.data(),
                                        formats.data(), 1) == 1;
    const auto raw = sent ? answerOf() : Result<PGresult*>(nullptr);
    if (!raw)
        return tl::unexpected(raw.error());
    PQsetnonblocking(m_raw.get(), 0);
    Answer answer(*raw);
    const ExecStatusType status = PQresultStatus(*raw);
    if (status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK)
        return answer;
    return tl::unexpected(said(m_raw.get(), *raw));
}

}  // namespace groundcount::share
