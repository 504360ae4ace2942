#include "command/columns.h"
#include "command/verb.h"

#include <memory>

namespace groundcount::command {
namespace {

std::string word(method::Mark mark)
{
    switch (mark) {
    case method::Mark::Seen: return "seen";
    case method::Mark::SecondHand: return "second-hand";
    case method::Mark::Memory: return "memory";
    case method::Mark::Own: return "own";
    }
    return {};
}

std::string phrase(const method::Limit& limit)
{
    const std::string value = limit.value.text() + " " + limit.unit;
    switch (limit.kind) {
    case method::LimitKind::Minimum: return (limit.inclusive ? "at least " : "more than ") + value;
    case method::LimitKind::Maximum: return (limit.inclusive ? "at most " : "less than ") + value;
    case method::LimitKind::Percent: return (limit.inclusive ? "within " : "less than ") + value;
    case method::LimitKind::ZScore: return "within " + value;
    case method::LimitKind::Value: return value;
    }
    return {};
}

std::string listed(const method::RuleSet& rules)
{
    Columns columns({Align::Left, Align::Left, Align::Left, Align::Left, Align::Left});
    columns.add({"RULE", "VALUE", "SOURCE", "MARK", "MEANING"});
    for (const auto& key : method::limitKeys()) {
        if (const auto it = rules.limits.find(key.key); it != rules.limits.end())
            columns.add({it->first, phrase(it->second), "[" + it->second.source + "]", word(it->second.mark),
                         std::string(key.meaning)});
    }
    for (const auto& key : method::choiceKeys()) {
        if (const auto it = rules.choices.find(key.key); it != rules.choices.end())
            columns.add({it->first, it->second.word, "[" + it->second.source + "]", word(it->second.mark),
                         std::string(key.meaning)});
    }
    std::string out = rules.name + ", revision " + rules.revision + ", densities in " + rules.densityUnit;
    if (!rules.note.empty())
        out += "\n" + rules.note;
    return out + "\n\n" + columns.text() +
           "\n\nMarks: seen = in the source; second-hand = quoted by another; memory = to be confirmed against the governing\n"
           "specification before it decides anything; own = a choice of this project. Sources: docs/sources.md.";
}

}  // namespace

void addRules(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("rules", "Print a rule set: every limit with its unit, source and mark");
    auto path = std::make_shared<std::string>();
    auto json = std::make_shared<bool>(false);
    verb->add_option("FILE", *path, "Rule set (JSON file) to check and print; without it the neutral set");
    verb->add_flag("--json", *json, "The rule set as JSON, the start of a job's own set");
    verb->footer("  groundbook rules --json > rules.json      # change values and sources, then:\n"
                 "  groundbook rules rules.json");
    verb->callback([path, json, &status] {
        const auto rules = rulesFrom(*path);
        status = rules ? kDone : refuse(rules.error());
        if (rules)
            print(*json ? method::toJson(*rules) : listed(*rules));
    });
}

}  // namespace groundcount::command
