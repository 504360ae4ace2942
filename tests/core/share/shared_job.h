#pragma once

#include "core/book/sample_book.h"
#include "core/share/postgres.h"

#include "book/hash.h"
#include "share/server.h"

#include <QByteArray>
#include <string>

/// A job on a shared server, as the tests of the exchange begin with it.
namespace sample {

/// Makes a server ready as if it were new. @return "" or why it is not
inline std::string begunAnew(const Postgres& server)
{
    std::ignore = server.ask("boss", "DROP SCHEMA IF EXISTS groundcount CASCADE");
    for (int time = 0; time < 2; ++time)  // can be repeated
        if (auto ready = groundcount::share::prepareServer(server.address("boss")); !ready)
            return ready.error().what;
    return {};
}

/// Admits a login to a job, and makes it if there is none. @return "" or why not
inline std::string admitted(const Postgres& server, const std::string& book, const std::string& login)
{
    std::ignore = server.ask("boss", "CREATE ROLE " + login + " LOGIN");
    const auto done = groundcount::share::admit(server.address("boss"), book, login);
    return done ? std::string() : done.error().what;
}

inline std::string loginOf(int device)
{
    return "phone" + std::to_string(device);
}

/// The office's book, which the server knows and does not hold yet, and one login (phone0, phone1 ...) for each of some devices.
struct SharedJob {
    Bench bench;
    Store office;
    std::string book;

    SharedJob(const Postgres& server, int devices) : office(bench.make("office", 1))
    {
        if (!office.sealAll(setup()))
            qFatal("no job");
        book = office.bookId().value();
        for (int i = 0; i < devices; ++i)
            if (const std::string why = admitted(server, book, loginOf(i)); !why.empty())
                qFatal("%s", why.c_str());
    }
};

inline std::string hex(const std::string& bytes)
{
    return QByteArray::fromStdString(bytes).toHex().toStdString();
}

/// Puts a text into the server's table under a number, past every program. @return "" or what the server says against it
inline std::string putAt(const Postgres& server, const char* login, const std::string& book, const std::string& seq, const std::string& text)
{
    return server.ask(login, "INSERT INTO groundcount.sealed(project_id, text_hash, seq, text) VALUES('" + book + "', '\\x" + hex(sha256Bytes(text)) +
                                 "', " + seq + ", '\\x" + hex(text) + "')");
}

}  // namespace sample
