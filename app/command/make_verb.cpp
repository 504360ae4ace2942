#include "command/open_book.h"
#include "command/verb.h"
#include "gis/new_job.h"

#include <memory>

namespace groundcount::command {
namespace {

struct MakeOptions {
    std::string book, name, place, person, role = "technician", certificate, rules, key;
    int epsg = 0;
};

Result<std::vector<book::Entry>> entriesOf(const MakeOptions& options)
{
    const auto rules = rulesFrom(options.rules);
    if (!rules)
        return tl::unexpected(rules.error());
    auto entries = gis::newJobEntries({.name = options.name, .place = options.place, .epsg = options.epsg, .rules = *rules, .by = {},
                                       .person = options.person, .role = options.role, .certificate = options.certificate});
    if (!entries)
        return entries;
    const auto [at, offset] = now();
    for (auto& entry : *entries) {
        entry.at = at;
        entry.offsetMinutes = offset;
    }
    return entries;
}

Result<void> make(const MakeOptions& options)
{
    const auto entries = entriesOf(options);
    if (!entries)
        return tl::unexpected(entries.error());
    auto fresh = NewBook::begin(options.book, options.key);
    if (!fresh)
        return tl::unexpected(fresh.error());
    if (const auto sealed = fresh->store().sealAll(*entries); !sealed)
        return tl::unexpected(sealed.error());
    return fresh->finish();
}

}  // namespace

void addMake(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("make", "Make a new field book: job, coordinate system, rule set, one person");
    auto options = std::make_shared<MakeOptions>();
    verb->add_option("BOOK", options->book, "File to be made; refused when it exists")->required();
    verb->add_option("--name", options->name, "Name of the job")->required();
    verb->add_option("--epsg", options->epsg, "EPSG code of the job's projected coordinate system; its unit is the unit of coordinates")
        ->required()->check(CLI::PositiveNumber);
    verb->add_option("--person", options->person, "Name of the first person, who seals")->required();
    verb->add_option("--role", options->role, "technician or engineer")->check(CLI::IsMember({"technician", "engineer"}))
        ->capture_default_str();
    verb->add_option("--certificate", options->certificate, "The person's certificate");
    verb->add_option("--place", options->place, "Where the job is");
    verb->add_option("--rules", options->rules, "Rule set (JSON file); without it the neutral one. Its density unit is the job's")
        ->type_name("FILE");
    verb->add_option("--key", options->key, "Device key file, made when missing")->type_name("FILE");
    verb->footer("  groundbook make north.fieldbook --name \"North approach\" --epsg 6411 --person \"A. Sample\"");
    verb->callback([options, &status] {
        const auto made = make(*options);
        status = made ? kDone : refuse(made.error());
        if (made)
            print(options->book);
    });
}

}  // namespace groundcount::command
