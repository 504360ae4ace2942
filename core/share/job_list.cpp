#include "share/job_list.h"

#include "book/seal.h"
#include "share/connection.h"

#include <nlohmann/json.hpp>

namespace groundcount::share {
namespace {

// A job is named when it is set up, so among the first texts; photos are longer than any of them.
constexpr std::int64_t kFirstTexts = 60, kLongestText = 1 << 16;

/// The name that a text gives the job, "" when it is another text or does not verify.
std::string nameIn(const std::string& text, const std::string& job)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object() || !json.contains("record"))
        return {};
    const auto record = book::recordFromJson(json["record"]);
    if (!record || record->kind != "job" || record->book != job || !book::verifyRecord(*record))
        return {};
    const auto name = record->body.find("name");
    return name != record->body.end() && name->is_string() ? name->get<std::string>() : std::string();
}

Result<std::string> nameOf(Connection& server, const std::string& job)
{
    const auto texts = server.run("SELECT text FROM groundcount.sealed WHERE project_id = $1 AND octet_length(text) < $3 ORDER BY seq LIMIT $2",
                                  {uuidOf(job), wholeOf(kFirstTexts), wholeOf(kLongestText)});
    if (!texts)
        return tl::unexpected(texts.error());
    std::string name;
    for (int row = 0; row < texts->rows(); ++row)
        if (auto said = nameIn(texts->bytes(row, 0), job); !said.empty())
            name = std::move(said);
    return name;
}

}  // namespace

Result<std::vector<ServerJob>> jobsOn(const std::string& address, const Patience& patience)
{
    auto server = Connection::open(address, patience);
    if (!server)
        return tl::unexpected(server.error());
    const auto ready = server->run("SELECT 1 WHERE pg_catalog.to_regclass('groundcount.project') IS NOT NULL");
    if (!ready)
        return tl::unexpected(ready.error());
    if (ready->rows() == 0)
        return refused("This database carries no field books; its administrator makes it ready.");
    const auto rows = server->run("SELECT p.project_id::text, count(s.seq), coalesce(to_char(max(s.received_at) AT TIME ZONE 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS.MS\"Z\"'), '')"
                                  " FROM groundcount.project p LEFT JOIN groundcount.sealed s ON s.project_id = p.project_id"
                                  " GROUP BY p.project_id ORDER BY max(s.received_at) DESC NULLS LAST, p.project_id");
    if (!rows)
        return tl::unexpected(rows.error());
    std::vector<ServerJob> jobs;
    for (int row = 0; row < rows->rows(); ++row) {
        ServerJob job{rows->bytes(row, 0), {}, rows->whole(row, 1), rows->bytes(row, 2)};
        auto name = nameOf(*server, job.id);
        if (!name)
            return tl::unexpected(name.error());
        job.name = std::move(*name);
        jobs.push_back(std::move(job));
    }
    return jobs;
}

}  // namespace groundcount::share
