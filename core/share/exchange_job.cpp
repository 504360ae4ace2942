#include "share/exchange_job.h"

#include "book/carrier_mark.h"
#include "book/seal.h"

#include <charconv>

namespace groundcount::share {

Result<Job> jobOn(const std::string& address, const std::string& id, const Patience& patience)
{
    if (!book::isSubject(id))
        return refused("A shared server carries books that have an id; this one has none: it is empty, or of format 1.");
    auto server = Connection::open(address, patience);
    if (!server)
        return tl::unexpected(server.error());
    auto project = server->run("SELECT begun::text FROM groundcount.project WHERE project_id = $1", {uuidOf(id)});
    if (!project)
        return tl::unexpected(project.error());
    if (project->rows() == 0)
        return refused("The server does not admit this login to the job " + id + ", or does not know it; its administrator admits logins.");
    return Job{std::move(*server), id, project->bytes(0, 0)};
}

Result<std::int64_t> numberMark(const book::Store& store, const Job& job, const char* name)
{
    return book::carrierMark(store, job.begun, name).map([](const std::string& text) {
        std::int64_t value = 0;
        std::from_chars(text.data(), text.data() + text.size(), value);
        return value;
    });
}

}  // namespace groundcount::share
