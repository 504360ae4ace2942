#include "command/open_book.h"
#include "command/verb.h"
#include "share/publish.h"

#include <memory>

namespace groundcount::command {
namespace {

struct PublishOptions {
    std::string book, address;
    share::PublishAsk ask;
};

Result<std::vector<gis::LayerCount>> publish(const PublishOptions& options)
{
    const auto store = openToRead(options.book);
    return store ? share::publish(*store, options.address, options.ask) : tl::unexpected(store.error());
}

}  // namespace

void addPublish(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("publish", "Publish the layers as tables of a PostGIS database");
    auto options = std::make_shared<PublishOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("ADDRESS", options->address, "PostgreSQL's connection string or URI; beyond this machine with sslmode=verify-full")->required();
    verb->add_option("--schema", options->ask.schema, "Schema of the job's tables, made when it is not there")->required()->type_name("NAME");
    verb->add_option("--readers", options->ask.readers, "Existing role that may read them")->type_name("ROLE");
    verb->footer("The tables are derived: each call makes their rows again from the records, in one transaction. A schema belongs to one\n"
                 "job. The login needs the right to create schemas. Columns are in docs/geopackage-layers.md.");
    verb->callback([options, &status] {
        const auto done = publish(*options);
        status = done ? kDone : refuse(done.error());
        if (!done)
            return;
        std::string lines = "Schema " + options->ask.schema + ":";
        for (const auto& layer : *done)
            lines += "\n  table " + layer.layer + ", " + std::to_string(layer.rows) + " rows";
        print(lines);
    });
}

}  // namespace groundcount::command
