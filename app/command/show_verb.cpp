#include "book/evidence.h"
#include "book/kinds.h"
#include "book/state_query.h"
#include "command/open_book.h"
#include "command/test_text.h"
#include "command/verb.h"
#include "book/number_order.h"

#include <algorithm>
#include <memory>

namespace groundcount::command {
namespace {

struct ShowOptions {
    std::string book, test;
    bool json = false, explain = false;
};

std::string headOf(const book::JobRow& job)
{
    if (job.id.empty())
        return "No job is sealed in this book.";
    std::string head = job.name + (job.place.empty() ? "" : ", " + job.place);
    if (!job.crsName.empty())
        head += "\n" + job.crsName + (job.epsg ? " (EPSG:" + std::to_string(job.epsg) + ")" : "");
    return head;
}

Result<std::string> explained(const book::Store& store, const std::string& test)
{
    const auto evidence = book::sealedEvidence(store, test);
    if (!evidence)
        return tl::unexpected(evidence.error());
    const auto rules = method::evaluationRules(evidence->rules);
    if (!rules)
        return tl::unexpected(rules.error());
    const auto result = method::evaluate(evidence->input, *rules);
    if (!result)
        return tl::unexpected(result.error());
    return method::verdictSentence(evidence->input, *result) + "\n" +
           arithmeticText(method::explain(evidence->input, *rules, *result));
}

Result<std::string> shown(const book::Store& store, const ShowOptions& options)
{
    const book::StateQuery query(store);
    const auto job = query.job();
    auto tests = query.tests({});
    if (!job || !tests)
        return tl::unexpected(job ? tests.error() : job.error());
    std::stable_sort(tests->begin(), tests->end(), [](const auto& a, const auto& b) {
        return a.startedAt == b.startedAt ? book::numberBefore(a.number, b.number) : a.startedAt < b.startedAt;
    });
    if (!options.test.empty()) {
        std::erase_if(*tests, [&](const auto& t) { return t.number != options.test; });
        if (tests->empty())
            return refused("There is no test \"" + options.test + "\" in the book.");
    }
    if (options.json) {
        nlohmann::ordered_json all = nlohmann::ordered_json::array();
        for (const auto& test : *tests)
            all.push_back(toJson(test));
        return nlohmann::ordered_json{{"job", job->name}, {"density_unit", job->densityUnit}, {"epsg", job->epsg}, {"tests", all}}.dump(2);
    }
    std::string out = headOf(*job);
    if (options.test.empty())
        return out + "\n\n" + listed(*tests);
    for (const auto& test : *tests) {
        out += "\n\n" + detailed(test, *job);
        if (!options.explain)
            continue;
        const auto arithmetic = explained(store, test.id);
        if (!arithmetic)
            return arithmetic;
        out += "\n\n" + *arithmetic;
    }
    return out;
}

}  // namespace

void addShow(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("show", "List the tests of a book, or show one with its facts and its arithmetic");
    auto options = std::make_shared<ShowOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    auto* test = verb->add_option("--test", options->test, "Number of the test to show, for example 26A")->type_name("NUMBER");
    auto* json = verb->add_flag("--json", options->json, "As JSON");
    verb->add_flag("--explain", options->explain, "With --test: every formula with its numbers and its source")->needs(test)->excludes(json);
    verb->footer("Figures stand as they were sealed; \"groundbook check\" computes every verdict again. A damaged book is shown as far as\n"
                 "it can be read, with the broken record named on standard error and exit status 1.");
    verb->callback([options, &status] {
        const auto store = openToRead(options->book);
        if (!store) {
            status = refuse(store.error());
            return;
        }
        const auto out = shown(*store, *options);
        status = !out ? refuse(out.error()) : store->damage().empty() ? kDone : kRefused;
        if (out)
            print(*out);
    });
}

}  // namespace groundcount::command
