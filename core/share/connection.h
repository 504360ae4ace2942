#pragma once

#include "method/error.h"
#include "share/connect.h"
#include "share/patience.h"

#include <cstdint>
#include <functional>
#include <libpq-fe.h>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A thin layer over libpq: errors as values, everything in binary. Private to core/share.
namespace groundcount::share {

/// A parameter of a statement, already in PostgreSQL's binary form, with its type.
struct Parameter {
    Oid type;
    std::string bytes;
};

Parameter uuidOf(const std::string& text);  ///< @param text 8-4-4-4-12 hexadecimal digits
Parameter wholeOf(std::int64_t number);     ///< bigint
Parameter textOf(std::string text);
Parameter bytesListOf(const std::vector<std::string>& values);  ///< bytea[]

/// The rows of an answer.
class Answer {
public:
    explicit Answer(PGresult* raw) : m_raw(raw) {}
    int rows() const { return PQntuples(m_raw.get()); }
    ExecStatusType status() const { return PQresultStatus(m_raw.get()); }
    PGresult* raw() const { return m_raw.get(); }
    std::string bytes(int row, int column) const;
    std::string_view view(int row, int column) const;  ///< the same, valid as long as the answer
    std::int64_t whole(int row, int column) const;  ///< of a bigint
    std::int64_t changed() const;                   ///< rows that an INSERT, UPDATE or DELETE changed

private:
    struct Clear {
        void operator()(PGresult* raw) const { PQclear(raw); }
    };
    std::unique_ptr<PGresult, Clear> m_raw;
};

struct Statement {
    std::string sql;
    std::vector<Parameter> parameters;
};

class Connection {
public:
    /// @param address libpq's connection string or URI. A server beyond this machine needs sslmode=verify-full.
    /// @param patience asked at least every 50 ms while the server is silent, also while its name is looked up; once it says no the
    ///        connection is closed and every later statement refused
    /// @error Refused for an address that cannot be read or does not verify the server; Unavailable with libpq's words.
    static Result<Connection> open(const std::string& address, Patience patience = {});

    /// One statement. @error Unavailable with the server's words; Refused when the server's rules refuse it (SQLSTATE class 42 or 23).
    Result<Answer> run(const std::string& sql, const std::vector<Parameter>& parameters = {});

    /// Several statements on one way to the server and back; those behind one that fails are not run.
    /// @return the answers in their order; @error of the first that failed, as `run`
    Result<std::vector<Answer>> runAll(const std::vector<Statement>& statements);

    /// Sends lines of a COPY ... FROM STDIN in text form. `lines` gives each to its sink; its error ends the copy and nothing of it stays.
    /// @error that of `lines`; as `run`
    using LineSink = std::function<Result<void>(const std::string& line)>;
    Result<void> copy(const std::string& sql, const std::function<Result<void>(const LineSink&)>& lines);

    /// `name` as an identifier of SQL. @error Unavailable when libpq cannot quote it.
    Result<std::string> quoted(const std::string& name) const;
    /// `text` as a literal of SQL, where a parameter is not allowed. @error Unavailable when libpq cannot quote it.
    Result<std::string> literal(const std::string& text) const;

private:
    bool waitFor(bool toWrite);
    Result<void> connect(const std::string& address);
    Result<void> flush();
    bool send(const Statement& statement);
    Result<void> untilFree();
    Result<PGresult*> answerOf();
    Result<std::vector<Answer>> answersOf(std::size_t count);
    Result<void> putPart(std::string& part);
    Result<void> endCopy(const char* refusal);
    Error gaveUp();

    RawConnection m_raw;
    Patience m_patience;
};

/// BEGIN ... COMMIT; rolls back when it ends without a commit.
class Work {
public:
    static Result<Work> begin(Connection& connection);
    static Statement opening() { return {"BEGIN", {}}; }
    /// Of a transaction that `opening` began on this connection, or is not begun because that failed.
    static Work begun(Connection& connection) { return Work(connection); }
    /// After a COMMIT that was sent with other statements.
    void committed() { m_connection = nullptr; }
    Work(Work&& other) noexcept : m_connection(std::exchange(other.m_connection, nullptr)) {}
    Work(const Work&) = delete;
    Work& operator=(const Work&) = delete;
    Work& operator=(Work&&) = delete;
    ~Work();
    Result<void> commit();

private:
    explicit Work(Connection& connection) : m_connection(&connection) {}
    Connection* m_connection;
};

}  // namespace groundcount::share
