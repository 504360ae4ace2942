#include "book/csv_import.h"
#include "book/job_rules.h"
#include "command/open_book.h"
#include "command/verb.h"

#include <iostream>
#include <memory>

namespace groundcount::command {
namespace {

struct ImportOptions {
    std::string book, csv, rules, by, key;
    bool skipBroken = false;
};

Result<book::ImportReport> take(const ImportOptions& options)
{
    const auto text = readText(options.csv);
    if (!text)
        return tl::unexpected(text.error());
    auto store = openToWrite(options.book, options.key);
    if (!store)
        return tl::unexpected(store.error());
    auto rules = options.rules.empty() ? book::jobRules(*store) : rulesFrom(options.rules);
    if (!rules)
        return tl::unexpected(rules.error());
    const auto person = personCalled(*store, options.by);
    if (!person)
        return tl::unexpected(person.error());
    const auto clock = now();
    book::ImportSettings settings;
    settings.by = *person;
    settings.at = clock.at;
    settings.offsetMinutes = clock.offsetMinutes;
    settings.mode = options.skipBroken ? book::ImportMode::SkipBroken : book::ImportMode::AllOrNothing;
    settings.rules = std::move(*rules);
    return book::importTests(*store, *text, settings);
}

void tell(const book::ImportReport& report)
{
    for (const auto& line : report.skipped)
        std::cerr << "Skipped: " << line << '\n';
    for (const auto& line : report.disagreements)
        std::cerr << "Differs: " << line << '\n';
    print(std::to_string(report.tests.size()) + " tests imported, " + std::to_string(report.skipped.size()) + " rows skipped, " +
          std::to_string(report.disagreements.size()) + " figures differ from the list's own.");
}

}  // namespace

void addImport(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("import", "Take over a list of tests from a CSV file, judge and seal them");
    auto options = std::make_shared<ImportOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("FILE", options->csv, "CSV file, or - for standard input; its columns are in docs/csv-import.md")->required();
    verb->add_flag("--skip-broken", options->skipBroken, "Take the other rows when one is broken; without it nothing is taken");
    verb->add_option("--rules", options->rules, "Rule set (JSON file) to judge by; without it the job's own")->type_name("FILE");
    verb->add_option("--by", options->by, "Person who takes the list over; needed when the book knows several")->type_name("NAME");
    verb->add_option("--key", options->key, "Device key file")->type_name("FILE");
    verb->footer("A broken row is named with its line and column. A list may bring its own dry density and percent; where core comes\n"
                 "to another figure, that is said and core's figure is sealed.");
    verb->callback([options, &status] {
        const auto report = take(*options);
        status = report ? kDone : refuse(report.error());
        if (report)
            tell(*report);
    });
}

}  // namespace groundcount::command
