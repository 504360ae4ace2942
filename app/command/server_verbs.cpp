#include "command/open_book.h"
#include "command/verb.h"
#include "share/exchange.h"
#include "share/server.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace groundcount::command {
namespace {

struct ServerOptions {
    std::string book, address, login, key, id;
};

constexpr const char* kAddress = "PostgreSQL's connection string or URI; beyond this machine with sslmode=verify-full";

bool goOn(std::size_t)
{
    return true;
}

Result<book::BundleReport> pull(const ServerOptions& options)
{
    std::error_code ignored;
    if (std::filesystem::exists(options.book, ignored)) {
        auto store = openToWrite(options.book, options.key);
        return store ? share::pull(*store, options.address, options.id, goOn) : tl::unexpected(store.error());
    }
    if (options.id.empty())
        return refused("The field book " + options.book + " does not exist; a new copy of a job needs --id, the id of its book.");
    auto fresh = NewBook::begin(options.book, options.key);
    if (!fresh)
        return tl::unexpected(fresh.error());
    auto report = share::pull(fresh->store(), options.address, options.id, goOn);
    if (report && report->taken == 0)
        return refused("The server has no record of the job " + options.id + " yet; nothing was made.");
    if (report)
        if (auto finished = fresh->finish(); !finished)
            return tl::unexpected(finished.error());
    return report;
}

Result<void> admit(const ServerOptions& options)
{
    const auto store = openToRead(options.book);
    const auto id = store ? store->bookId() : Result<std::string>(tl::unexpected(store.error()));
    return id ? share::admit(options.address, *id, options.login) : tl::unexpected(id.error());
}

}  // namespace

void addServer(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("server", "Make a PostgreSQL database ready to carry field books; for its administrator");
    auto address = std::make_shared<std::string>();
    verb->add_option("ADDRESS", *address, kAddress)->required();
    verb->callback([address, &status] {
        const auto done = share::prepareServer(*address);
        status = done ? kDone : refuse(done.error());
        if (done)
            print("The database is ready. Next: groundbook admit BOOK ADDRESS --login NAME");
    });
}

void addAdmit(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("admit", "Let a login of the server take part in a job; for its administrator");
    auto options = std::make_shared<ServerOptions>();
    verb->add_option("BOOK", options->book, "Field book of the job")->required();
    verb->add_option("ADDRESS", options->address, kAddress)->required();
    verb->add_option("--login", options->login, "Existing login that a device uses")->required();
    verb->callback([options, &status] {
        const auto done = admit(*options);
        status = done ? kDone : refuse(done.error());
        if (done)
            print("\"" + options->login + "\" may read the job's records and add to them.");
    });
}

void addPush(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("push", "Send what the shared server lacks of this book");
    auto options = std::make_shared<ServerOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("ADDRESS", options->address, kAddress)->required();
    verb->add_option("--key", options->key, "Device key file")->type_name("FILE");
    verb->footer("Can be stopped and repeated at any time.");
    verb->callback([options, &status] {
        auto store = openToWrite(options->book, options->key);
        const auto report = store ? share::push(*store, options->address, goOn) : Result<share::Pushed>(tl::unexpected(store.error()));
        status = report ? kDone : refuse(report.error());
        if (report)
            print(std::to_string(report->sent) + " texts sent, " + std::to_string(report->known) + " were there already");
    });
}

void addPull(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("pull", "Take what came to the shared server since the last pull");
    auto options = std::make_shared<ServerOptions>();
    verb->add_option("BOOK", options->book, "Field book; made when it does not exist and --id is given")->required();
    verb->add_option("ADDRESS", options->address, kAddress)->required();
    verb->add_option("--id", options->id, "Id of the book to be copied, as the verb \"keys\" prints it");
    verb->add_option("--key", options->key, "Device key file")->type_name("FILE");
    verb->footer("Everything is verified as if it came from a stranger. Each refused text is named and holds back nothing else; the exit\n"
                 "status is then 1.");
    verb->callback([options, &status] {
        const auto report = pull(*options);
        if (!report) {
            status = refuse(report.error());
            return;
        }
        for (const auto& line : report->refused)
            refuse({Fault::Refused, line});
        print(std::to_string(report->taken) + " records and " + std::to_string(report->blobs) + " contents taken, " + std::to_string(report->known) +
              " known already, " + std::to_string(report->refused.size()) + " refused");
        status = report->refused.empty() ? kDone : kRefused;
    });
}

}  // namespace groundcount::command
