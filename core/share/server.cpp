#include "share/server.h"

#include "book/seal.h"
#include "share/connection.h"

namespace groundcount::share {

namespace {

constexpr const char* kDeviceRole = "groundcount_device";

// Plain enough to run unchanged on a distributed PostgreSQL: every key holds the job, no trigger, no serial, no column grants. No foreign key from a text to its job
// either: `admit` makes job and role together, the policies ask for the role, no device may remove a job, and the key would be looked up for each text (decision 0014).
// NOLINTBEGIN(bugprone-suspicious-missing-comma): statements over several lines
constexpr const char* kTables[] = {
    "CREATE SCHEMA IF NOT EXISTS groundcount",
    "CREATE TABLE IF NOT EXISTS groundcount.project(project_id uuid PRIMARY KEY, last_seq bigint NOT NULL DEFAULT 0,"
    " begun uuid NOT NULL DEFAULT gen_random_uuid())",
    "CREATE TABLE IF NOT EXISTS groundcount.sealed(project_id uuid NOT NULL, text_hash bytea NOT NULL,"
    " seq bigint NOT NULL, text bytea NOT NULL, received_at timestamptz NOT NULL DEFAULT clock_timestamp(),"
    " received_by name NOT NULL DEFAULT session_user, PRIMARY KEY(project_id, text_hash), UNIQUE(project_id, seq),"
    " CHECK(text_hash = sha256(text) AND octet_length(text) <= 67108864))",  // as long as a bundle's text may be
    "ALTER TABLE groundcount.sealed DROP CONSTRAINT IF EXISTS sealed_project_id_fkey",  // a server of an earlier version has one
    "REVOKE ALL ON groundcount.project, groundcount.sealed FROM PUBLIC",
    "GRANT USAGE ON SCHEMA groundcount TO groundcount_device",
    "GRANT SELECT, UPDATE ON groundcount.project TO groundcount_device",  // the update locks and moves the counter
    "GRANT SELECT, INSERT ON groundcount.sealed TO groundcount_device",
    "ALTER TABLE groundcount.project ENABLE ROW LEVEL SECURITY",
    "ALTER TABLE groundcount.sealed ENABLE ROW LEVEL SECURITY",
    "DROP POLICY IF EXISTS member ON groundcount.project",
    "CREATE POLICY member ON groundcount.project USING (pg_has_role('groundcount_' || project_id::text, 'member'))",
    "DROP POLICY IF EXISTS reads ON groundcount.sealed",
    "CREATE POLICY reads ON groundcount.sealed FOR SELECT USING (pg_has_role('groundcount_' || project_id::text, 'member'))",
    "DROP POLICY IF EXISTS adds ON groundcount.sealed",
    "CREATE POLICY adds ON groundcount.sealed FOR INSERT WITH CHECK (pg_has_role('groundcount_' || project_id::text, 'member')"
    " AND received_by = session_user)",
};
// NOLINTEND(bugprone-suspicious-missing-comma)

Result<bool> hasRole(Connection& server, const std::string& name)
{
    auto found = server.run("SELECT 1 FROM pg_catalog.pg_roles WHERE rolname = $1", {textOf(name)});
    return found.map([](const Answer& answer) { return answer.rows() > 0; });
}

Result<void> makeRole(Connection& server, const std::string& name)
{
    const auto there = hasRole(server, name);
    const auto quoted = server.quoted(name);
    if (!there || !quoted)
        return tl::unexpected(there ? quoted.error() : there.error());
    if (*there)
        return {};
    auto made = server.run("CREATE ROLE " + *quoted + " NOLOGIN");
    return made ? Result<void>{} : tl::unexpected(made.error());
}

}  // namespace

Result<void> prepareServer(const std::string& address)
{
    auto server = Connection::open(address);
    if (!server)
        return tl::unexpected(server.error());
    auto work = Work::begin(*server);
    if (!work)
        return tl::unexpected(work.error());
    if (auto role = makeRole(*server, kDeviceRole); !role)
        return role;
    for (const char* const sql : kTables)
        if (auto done = server->run(sql); !done)
            return tl::unexpected(done.error());
    return work->commit();
}

Result<void> admit(const std::string& address, const std::string& book, const std::string& login)
{
    if (!book::isSubject(book))
        return refused("A job is known to a server by its book's id, a UUID; \"" + book.substr(0, 80) + "\" is none. A book of format 1 has none.");
    auto server = Connection::open(address);
    if (!server)
        return tl::unexpected(server.error());
    const auto known = hasRole(*server, login);
    if (!known)
        return tl::unexpected(known.error());
    if (!*known)
        return refused("The server has no login \"" + login + "\"; its administrator makes one first.");
    auto work = Work::begin(*server);
    if (!work)
        return tl::unexpected(work.error());
    const std::string role = "groundcount_" + book;
    if (auto made = makeRole(*server, role); !made)
        return made;
    const auto job = server->quoted(role), name = server->quoted(login);
    if (!job || !name)
        return tl::unexpected(job ? name.error() : job.error());
    if (auto put = server->run("INSERT INTO groundcount.project(project_id) VALUES($1) ON CONFLICT DO NOTHING", {uuidOf(book)}); !put)
        return tl::unexpected(put.error());
    if (auto given = server->run("GRANT " + *job + ", groundcount_device TO " + *name); !given)
        return tl::unexpected(given.error());
    return work->commit();
}

}  // namespace groundcount::share
