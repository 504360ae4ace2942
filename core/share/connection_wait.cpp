#include "share/connection.h"
#include "share/connect.h"
#include "share/server_words.h"

#include <optional>
#include <poll.h>

namespace groundcount::share {

namespace {

constexpr int kAskPatienceMs = 50;
constexpr std::size_t kCopyPart = 1U << 16U;  // bytes: few calls to the system, little to send before a stop is seen

}  // namespace

Error Connection::gaveUp()
{
    m_raw.reset();  // the server ends what was begun
    return stoppedWaiting();
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
    auto raw = connectTo(address, m_patience);
    if (!raw)
        return tl::unexpected(raw.error());
    m_raw = std::move(*raw);
    return {};
}

/// Sends what libpq still holds back. A connection that broke is no error here: libpq says so in the answer.
Result<void> Connection::flush()
{
    for (;;) {
        const int unsent = PQflush(m_raw.get());
        if (unsent != 1)
            return {};
        if (!waitFor(true))
            return tl::unexpected(gaveUp());
        if (PQconsumeInput(m_raw.get()) == 0)
            return {};
    }
}

/// Waits until an answer, or the end of one, lies here. A connection that broke is no error here either.
Result<void> Connection::untilFree()
{
    while (PQisBusy(m_raw.get()) != 0) {
        if (!waitFor(false))
            return tl::unexpected(gaveUp());
        if (PQconsumeInput(m_raw.get()) == 0)
            return {};
    }
    return {};
}

/// The answer of the statement that was sent: the last, or the first of a COPY that begins.
Result<PGresult*> Connection::answerOf()
{
    if (const auto flushed = flush(); !flushed)
        return tl::unexpected(flushed.error());
    PGresult* last = nullptr;
    for (;;) {
        if (const auto ready = untilFree(); !ready) {
            PQclear(last);
            return tl::unexpected(ready.error());
        }
        PGresult* next = PQgetResult(m_raw.get());
        if (!next)
            return last;
        PQclear(last);
        last = next;
        if (PQresultStatus(last) == PGRES_COPY_IN)
            return last;
    }
}

bool Connection::send(const Statement& statement)
{
    std::vector<Oid> types;
    std::vector<const char*> values;
    std::vector<int> lengths, formats;
    for (const Parameter& parameter : statement.parameters) {
        types.push_back(parameter.type);
        values.push_back(parameter.bytes.data());
        lengths.push_back(static_cast<int>(parameter.bytes.size()));
        formats.push_back(1);
    }
    return PQsendQueryParams(m_raw.get(), statement.sql.c_str(), static_cast<int>(types.size()), types.data(), values.data(), lengths.data(), formats.data(), 1) == 1;
}

Result<Answer> Connection::run(const std::string& sql, const std::vector<Parameter>& parameters)
{
    if (!m_raw)
        return tl::unexpected(gaveUp());
    PQsetnonblocking(m_raw.get(), 1);
    const auto raw = send({sql, parameters}) ? answerOf() : Result<PGresult*>(nullptr);
    if (!raw)
        return tl::unexpected(raw.error());
    PQsetnonblocking(m_raw.get(), 0);
    Answer answer(*raw);
    const ExecStatusType status = PQresultStatus(*raw);
    if (status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK)
        return answer;
    return tl::unexpected(said(m_raw.get(), *raw));
}

/// Each statement's answer is followed by an end of its own, all of them by the mark of the whole.
Result<std::vector<Answer>> Connection::answersOf(std::size_t count)
{
    std::vector<Answer> answers;
    std::optional<Error> first;
    for (bool whole = false; !whole;) {
        if (const auto ready = untilFree(); !ready)
            return tl::unexpected(ready.error());
        PGresult* const raw = PQgetResult(m_raw.get());
        if (!raw && PQstatus(m_raw.get()) == CONNECTION_BAD)
            return tl::unexpected(first ? *first : said(m_raw.get(), nullptr));
        if (!raw)
            continue;
        Answer answer(raw);
        whole = answer.status() == PGRES_PIPELINE_SYNC;
        if (answer.status() == PGRES_TUPLES_OK || answer.status() == PGRES_COMMAND_OK)
            answers.push_back(std::move(answer));
        else if (!whole && !first)
            first = said(m_raw.get(), raw);
    }
    if (first || answers.size() != count)
        return tl::unexpected(first ? *first : said(m_raw.get(), nullptr));
    return answers;
}

Result<std::vector<Answer>> Connection::runAll(const std::vector<Statement>& statements)
{
    if (!m_raw)
        return tl::unexpected(gaveUp());
    PQsetnonblocking(m_raw.get(), 1);
    bool sent = PQenterPipelineMode(m_raw.get()) == 1;
    for (const Statement& statement : statements)
        sent = sent && send(statement);
    sent = sent && PQpipelineSync(m_raw.get()) == 1;
    if (!sent)
        return tl::unexpected(said(m_raw.get(), nullptr));
    if (const auto flushed = flush(); !flushed)
        return tl::unexpected(flushed.error());
    auto answers = answersOf(statements.size());
    if (m_raw) {
        PQexitPipelineMode(m_raw.get());
        PQsetnonblocking(m_raw.get(), 0);
    }
    return answers;
}

/// Part of a COPY's lines. libpq would keep any number of them in memory while the server is slow: so each part is sent before the next.
Result<void> Connection::putPart(std::string& part)
{
    const int put = part.empty() ? 1 : PQputCopyData(m_raw.get(), part.data(), static_cast<int>(part.size()));
    part.clear();
    if (put == 1)
        return flush();
    return unavailable("The server does not take more: " + firstLine(PQerrorMessage(m_raw.get())) + ".");
}

/// @param refusal why nothing of the copy shall stay; nullptr to keep it
Result<void> Connection::endCopy(const char* refusal)
{
    for (int put = 0; put == 0;) {
        put = PQputCopyEnd(m_raw.get(), refusal);
        if (put == 0 && !waitFor(true))
            return tl::unexpected(gaveUp());
    }
    const auto raw = answerOf();  // to the end, or the connection stays in the copy
    if (!raw)
        return tl::unexpected(raw.error());
    const Answer answer(*raw);
    return answer.status() == PGRES_COMMAND_OK ? Result<void>{} : tl::unexpected(said(m_raw.get(), *raw));
}

Result<void> Connection::copy(const std::string& sql, const std::function<Result<void>(const LineSink&)>& lines)
{
    if (!m_raw)
        return tl::unexpected(gaveUp());
    PQsetnonblocking(m_raw.get(), 1);
    const bool sent = PQsendQuery(m_raw.get(), sql.c_str()) == 1;
    const auto begun = sent ? answerOf() : Result<PGresult*>(nullptr);
    if (!begun)
        return tl::unexpected(begun.error());
    const Answer opening(*begun);
    if (opening.status() != PGRES_COPY_IN)
        return tl::unexpected(said(m_raw.get(), opening.raw()));
    std::string part;
    auto given = lines([&](const std::string& line) {
        part += line;
        return part.size() < kCopyPart ? Result<void>{} : putPart(part);
    });
    if (given)
        given = putPart(part);
    if (!m_raw)
        return given;
    const auto ended = endCopy(given ? nullptr : "stopped by the sender");
    if (m_raw)
        PQsetnonblocking(m_raw.get(), 0);
    return given ? ended : given;
}

}  // namespace groundcount::share
