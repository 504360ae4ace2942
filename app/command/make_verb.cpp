#include "command/open_book.h"
#include "command/verb.h"
#include "gis/crs.h"

#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

struct MakeOptions {
    std::string book, name, place, person, role = "technician", certificate, rules, key;
    int epsg = 0;
};

Result<std::string> gridUnit(const gis::Crs& crs)
{
    if (!crs.isProjected())
        return refused("\"" + crs.name() + "\" is not a projected coordinate system; a job's grid needs one in metres or feet.");
    const auto unit = crs.unitName();
    if (unit == "metre")
        return std::string("m");
    if (unit == "US survey foot")
        return std::string("ftUS");
    if (unit == "foot")
        return std::string("ft");
    return refused("\"" + crs.name() + "\" counts in " + unit + "; allowed: metre, foot, US survey foot.");
}

Result<std::vector<book::Entry>> entriesOf(const MakeOptions& options)
{
    const auto rules = rulesFrom(options.rules);
    if (!rules)
        return tl::unexpected(rules.error());
    const auto crs = gis::Crs::fromEpsg(options.epsg);
    if (!crs)
        return tl::unexpected(crs.error());
    const auto unit = gridUnit(*crs);
    if (!unit)
        return tl::unexpected(unit.error());
    const std::string person = book::newSubject();
    const std::string system = book::newSubject();
    const std::string ruleSet = book::newSubject();
    const auto [at, offset] = now();
    std::vector<book::Entry> entries;
    const auto add = [&, time = at, minutes = offset](const char* kind, const std::string& subject, nlohmann::json body) {
        book::Entry entry;
        entry.kind = kind;
        entry.subject = subject;
        entry.by = person;
        entry.at = time;
        entry.offsetMinutes = minutes;
        entry.body = std::move(body);
        entries.push_back(std::move(entry));
    };
    nlohmann::json who = {{"name", options.person}, {"role", options.role}};
    if (!options.certificate.empty())
        who["certificate"] = options.certificate;
    add("person", person, who);
    add("crs", system, {{"epsg", options.epsg}, {"name", crs->name()}, {"unit", *unit}});
    add("rule-set", ruleSet, {{"rules", nlohmann::json::parse(method::toJson(*rules))}});
    nlohmann::json job = {{"name", options.name}, {"density_unit", rules->densityUnit}, {"crs", system}, {"rule_set", ruleSet}};
    if (!options.place.empty())
        job["place"] = options.place;
    add("job", book::newSubject(), job);
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
