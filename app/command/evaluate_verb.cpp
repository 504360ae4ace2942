#include "command/test_text.h"
#include "command/verb.h"
#include "method/accept/explain.h"
#include "method/rules/test_input_json.h"

#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

struct EvaluateOptions {
    std::string rules;
    bool json = false;
    bool explain = false;
};

Result<std::string> withRules(const std::string& text, const std::string& path)
{
    if (path.empty())
        return text;
    const auto rules = rulesFrom(path);
    if (!rules)
        return tl::unexpected(rules.error());
    auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object())
        return refused("The test is not a JSON object.");
    if (json.contains("rules"))
        return refused("The test brings \"rules\" of its own; leave them out or leave out --rules.");
    json["rules"] = nlohmann::json::parse(method::toJson(*rules));
    return json.dump();
}

Result<std::string> answer(const EvaluateOptions& options)
{
    const auto typed = readText("-");
    if (!typed)
        return tl::unexpected(typed.error());
    const auto text = withRules(*typed, options.rules);
    if (!text)
        return tl::unexpected(text.error());
    const auto request = method::evaluationFromJson(*text);
    if (!request)
        return tl::unexpected(request.error());
    const auto rules = method::evaluationRules(request->rules);
    if (!rules)
        return tl::unexpected(rules.error());
    const auto result = method::evaluate(request->input, *rules);
    if (!result)
        return tl::unexpected(result.error());
    if (options.json)
        return method::evaluationToJson(*request, *rules, *result);
    std::string out = method::verdictSentence(request->input, *result);
    if (options.explain)
        out += "\n\n" + arithmeticText(method::explain(request->input, *rules, *result));
    return out;
}

}  // namespace

void addEvaluate(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("evaluate", "Judge one test that is given as JSON on standard input");
    auto options = std::make_shared<EvaluateOptions>();
    verb->add_option("--rules", options->rules, "Rule set (JSON file); without it the test's own \"rules\" or the neutral set")
        ->type_name("FILE");
    auto* json = verb->add_flag("--json", options->json, "Verdict, figures and arithmetic as JSON");
    verb->add_flag("--explain", options->explain, "Every formula with its numbers and its source")->excludes(json);
    verb->footer("The form of the test is in docs/evaluate-json.md. A test that fails is an answer: the exit status is 0.\n"
                 "Input that breaks the method is refused in one sentence, exit status 1.\n\n"
                 "  groundbook evaluate --explain < test.json");
    verb->callback([options, &status] {
        const auto out = answer(*options);
        status = out ? kDone : refuse(out.error());
        if (out)
            print(*out);
    });
}

}  // namespace groundcount::command
