#pragma once

#include "core/share/postgres.h"

#include "book/canonical.h"
#include "book/parallel.h"
#include "book/seal.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <libpq-fe.h>
#include <string>
#include <vector>

/// What a push and a pull are measured against: batched inserts, and a plain COPY with the verification of what came.
namespace peers {

inline double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// A login of the server over libpq alone.
class Plain {
public:
    Plain(const Postgres& server, const char* login) : m_raw(PQconnectdb(server.address(login).c_str())) {}
    ~Plain() { PQfinish(m_raw); }
    Plain(const Plain&) = delete;
    Plain& operator=(const Plain&) = delete;

    void run(const std::string& sql) { taken(PQexec(m_raw, sql.c_str())); }
    void taken(PGresult* answer)
    {
        const auto status = PQresultStatus(answer);
        if (status != PGRES_COMMAND_OK && status != PGRES_TUPLES_OK && status != PGRES_COPY_OUT) {
            std::fprintf(stderr, "%s", PQerrorMessage(m_raw));
            std::exit(1);
        }
        PQclear(answer);
    }
    PGconn* raw() { return m_raw; }

private:
    PGconn* m_raw;
};

inline std::uint32_t bigEndian(const char* at, int bytes)
{
    std::uint32_t value = 0;
    for (int i = 0; i < bytes; ++i)
        value = value << 8U | static_cast<unsigned char>(at[i]);
    return value;
}

/// Every text by COPY in binary form: of each row the number of fields, its length and its bytes.
inline std::vector<std::string> copiedOut(Plain& plain, std::size_t expected)
{
    plain.taken(PQexec(plain.raw(), "COPY (SELECT text FROM groundcount.sealed ORDER BY seq) TO STDOUT (FORMAT binary)"));
    std::vector<std::string> texts;
    texts.reserve(expected);
    char* part = nullptr;
    for (int size = 0; (size = PQgetCopyData(plain.raw(), &part, 0)) > 0; PQfreemem(part)) {
        const int head = texts.empty() && size > 19 && part[0] == 'P' ? 19 : 0;  // the signature stands before the first row
        if (size < head + 6)
            continue;  // the end mark
        texts.emplace_back(part + head + 6, bigEndian(part + head + 2, 4));
    }
    plain.taken(PQgetResult(plain.raw()));
    return texts;
}

/// What whoever reads a text must do before it is believed, on every core.
inline std::size_t verified(const std::vector<std::string>& texts)
{
    std::atomic<std::size_t> sound{0};
    groundcount::book::inRanges(texts.size(), 32, [&](std::size_t from, std::size_t to) {
        std::size_t own = 0;
        for (std::size_t i = from; i < to; ++i) {
            const auto json = groundcount::book::readJson(texts[i]);
            const auto record = json ? groundcount::book::recordFromJson((*json)["record"]) : groundcount::Result<groundcount::book::Record>(tl::unexpected(json.error()));
            own += record && groundcount::book::verifyRecord(*record).has_value();
        }
        sound += own;
    });
    return sound;
}

/// A list of byte strings as PostgreSQL's arrays have it in binary form.
inline std::string bytesList(const std::string* from, std::size_t count)
{
    std::string list;
    const auto put = [&](std::size_t value) {
        for (int shift = 24; shift >= 0; shift -= 8)
            list += static_cast<char>(value >> static_cast<unsigned>(shift) & 0xFFU);
    };
    for (const std::size_t value : {std::size_t{1}, std::size_t{0}, std::size_t{17}, count, std::size_t{1}})
        put(value);
    for (std::size_t i = 0; i < count; ++i) {
        put(from[i].size());
        list += from[i];
    }
    return list;
}

/// The peer of a push: the same bytes into a table with the same keys, 500 rows a transaction, nothing asked and nothing read from a book.
inline double batchedInserts(const Postgres& server, const std::vector<std::string>& texts)
{
    Plain plain(server, "boss");
    plain.run("CREATE TABLE peer(project_id uuid NOT NULL, text_hash bytea NOT NULL, seq bigint NOT NULL, text bytea NOT NULL,"
              " received_at timestamptz NOT NULL DEFAULT clock_timestamp(), received_by name NOT NULL DEFAULT session_user,"
              " PRIMARY KEY(project_id, text_hash), UNIQUE(project_id, seq))");
    plain.taken(PQprepare(plain.raw(), "put", "INSERT INTO peer(project_id, text_hash, seq, text) SELECT '00000000-0000-4000-8000-000000000000',"
                                              " sha256(u.text), $1::text::bigint + u.place, u.text FROM unnest($2::bytea[]) WITH ORDINALITY AS u(text, place)", 0, nullptr));
    const double from = now();
    for (std::size_t at = 0; at < texts.size(); at += 500) {
        const std::string first = std::to_string(at), list = bytesList(&texts[at], std::min<std::size_t>(500, texts.size() - at));
        const char* values[] = {first.c_str(), list.data()};
        const int lengths[] = {0, static_cast<int>(list.size())}, formats[] = {0, 1};
        plain.run("BEGIN");
        plain.taken(PQexecPrepared(plain.raw(), "put", 2, values, lengths, formats, 0));
        plain.run("COMMIT");
    }
    return now() - from;
}

}  // namespace peers
