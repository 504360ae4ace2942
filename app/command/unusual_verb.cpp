#include "book/job_rules.h"
#include "book/review.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"

#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

std::string asText(const std::vector<book::UnusualLine>& lines)
{
    Columns table({Align::Left, Align::Left, Align::Left, Align::Left});
    for (const auto& line : lines)
        table.add({line.number, line.at, book::word(line.kind), line.what});
    return (lines.empty() ? std::string() : table.text() + "\n") + std::to_string(lines.size()) + (lines.size() == 1 ? " unusual thing." : " unusual things.");
}

std::string asJson(const std::vector<book::UnusualLine>& lines)
{
    auto all = nlohmann::ordered_json::array();
    for (const auto& line : lines)
        all.push_back({{"kind", book::word(line.kind)}, {"test", line.number}, {"id", line.test}, {"at", line.at}, {"what", line.what}});
    return nlohmann::ordered_json{{"unusual", all}}.dump(2);
}

}  // namespace

void addUnusual(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("unusual", "List everything in a book that a reviewer should look at");
    auto path = std::make_shared<std::string>();
    auto json = std::make_shared<bool>(false);
    verb->add_option("BOOK", *path, "Field book")->required();
    verb->add_flag("--json", *json, "As JSON");
    verb->footer("Overrides, amendments after a verdict, expired papers, standard counts out, clearances not met, poor positions, duplicate\n"
                 "readings, impossible times, the same counts twice, retests elsewhere. The list asks for a look; it decides nothing.");
    verb->callback([path, json, &status] {
        const auto store = openToRead(*path);
        const auto rules = store ? book::jobRules(*store) : Result<method::RuleSet>(tl::unexpected(store.error()));
        const auto lines = rules ? book::unusual(*store, *rules) : Result<std::vector<book::UnusualLine>>(tl::unexpected(rules.error()));
        if (!lines) {
            status = refuse(lines.error());
            return;
        }
        print(*json ? asJson(*lines) : asText(*lines));
        status = store->damage().empty() ? kDone : kRefused;
    });
}

}  // namespace groundcount::command
