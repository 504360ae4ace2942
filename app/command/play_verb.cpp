#include "book/evidence.h"
#include "book/kinds.h"
#include "command/filler.h"
#include "command/open_book.h"
#include "command/verb.h"

#include <filesystem>
#include <map>
#include <memory>

namespace groundcount::command {
namespace {

struct PlayOptions {
    std::string book, scenario, key;
};

Result<book::Entry> computed(const book::Store& store, const book::Entry& asked)
{
    const auto evidence = book::gatherEvidence(store, asked.subject);
    if (!evidence)
        return tl::unexpected(evidence.error());
    return book::verdictEntry(*evidence, asked.by, asked.at, asked.offsetMinutes);
}

/// Puts the picture that a photo names, a file beside the scenario, into the book; its hash and name stand in the body instead.
Result<void> attach(book::Store& store, const std::string& folder, nlohmann::json& body)
{
    const std::string file = book::textAt(body, "file");
    if (file.empty())
        return {};
    const std::filesystem::path path = std::filesystem::path(folder) / file;
    const auto content = readText(path.string());
    if (!content)
        return tl::unexpected(content.error());
    const auto blob = store.putBlob(*content);
    if (!blob)
        return tl::unexpected(blob.error());
    body.erase("file");
    body["blob"] = *blob;
    body["name"] = path.filename().string();
    return {};
}

Result<std::string> play(const PlayOptions& options)
{
    auto scenario = scenarioFrom(options.scenario);
    if (!scenario)
        return tl::unexpected(scenario.error());
    Filler filler(std::move(*scenario));
    auto fresh = NewBook::begin(options.book, options.key);
    if (!fresh)
        return tl::unexpected(fresh.error());
    auto& store = fresh->store();
    std::map<std::string, int> sealed;
    const auto& entries = filler.scenario().entries;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto named = [&](const Error& error) {
            return tl::unexpected(Error{error.fault, "Scenario, " + nameOf(entries[i], i) + ": " + error.what});
        };
        auto entry = filler.entryAt(i);
        if (!entry)
            return tl::unexpected(entry.error());
        if (entry->kind == "verdict" && !entries[i].contains("body")) {
            entry = computed(store, *entry);
            if (!entry)
                return named(entry.error());
        }
        if (entry->kind == "photo")
            if (auto ok = attach(store, filler.scenario().folder, entry->body); !ok)
                return named(ok.error());
        const auto record = store.seal(*entry);
        if (!record)
            return named(record.error());
        if (auto ok = filler.sealed(i, *record); !ok)
            return named(ok.error());
        ++sealed[entry->kind];
    }
    if (auto ok = fresh->finish(); !ok)
        return tl::unexpected(ok.error());
    std::string counts;
    for (const auto& [kind, count] : sealed)
        counts += (counts.empty() ? "" : ", ") + std::to_string(count) + " " + kind;
    return options.book + ": " + std::to_string(entries.size()) + " records sealed (" + counts + ")";
}

}  // namespace

void addPlay(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("play", "Seal a scenario, entry by entry at its own times, into a new book");
    auto options = std::make_shared<PlayOptions>();
    verb->add_option("BOOK", options->book, "File to be made; refused when it exists")->required();
    verb->add_option("SCENARIO", options->scenario, "Scenario (JSON file); its form is in demo/README.md")->required();
    verb->add_option("--key", options->key, "Device key file, made when missing")->type_name("FILE");
    verb->footer("When an entry is refused, no book is made.\n\n  groundbook play day.fieldbook demo/scenario.json");
    verb->callback([options, &status] {
        const auto out = play(*options);
        status = out ? kDone : refuse(out.error());
        if (out)
            print(*out);
    });
}

}  // namespace groundcount::command
