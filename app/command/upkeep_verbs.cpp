#include "book/audit.h"
#include "book/bundle.h"
#include "book/seal.h"
#include "book/state_query.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/bundle_file.h"

#include <filesystem>
#include <memory>

namespace groundcount::command {
namespace {

/// A subject itself, or the test of that number.
Result<std::string> subjectFor(const book::Store& store, const std::string& what)
{
    if (book::isSubject(what))
        return what;
    const auto tests = book::StateQuery(store).tests({});
    if (!tests)
        return tl::unexpected(tests.error());
    for (const auto& test : *tests) {
        if (test.number == what)
            return test.id;
    }
    return refused("\"" + what + "\" is neither the number of a test in the book nor a subject (UUID).");
}

std::string lineText(const book::HistoryLine& line)
{
    std::string text = line.at + "  " + line.kind + "  " + (line.byName.empty() ? line.by : line.byName) + "  " + line.hash.substr(0, 12);
    if (!line.isLive)
        text += "  (amended)";
    if (!line.reason.empty())
        text += "\n    why: " + line.reason;
    for (const auto& change : line.changes)
        text += "\n    " + change;
    return text;
}

/// What another book or a bundle holds that this one lacks.
Result<book::MergeReport> takeFrom(book::Store& into, const std::string& other)
{
    if (other.ends_with(gis::kBundleEnding))
        return book::takeBundleFile(into, other, [](std::size_t) { return true; }).map([](const book::BundleReport& all) -> book::MergeReport { return all; });
    const auto from = openToRead(other);
    return from ? into.mergeFrom(*from) : tl::unexpected(from.error());
}

/// Merges into a book, or into a new one that becomes a copy of the other.
Result<book::MergeReport> mergeInto(const std::string& path, const std::string& other, const std::string& key)
{
    std::error_code ignored;
    if (std::filesystem::exists(path, ignored)) {
        auto store = openToWrite(path, key);
        return store ? takeFrom(*store, other) : tl::unexpected(store.error());
    }
    auto fresh = NewBook::begin(path, key);
    auto report = fresh ? takeFrom(fresh->store(), other) : Result<book::MergeReport>(tl::unexpected(fresh.error()));
    if (report)
        if (auto finished = fresh->finish(); !finished)
            return tl::unexpected(finished.error());
    return report;
}

}  // namespace

void addHistory(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("history", "Who sealed what about a test, when, and what an amendment changed");
    auto path = std::make_shared<std::string>();
    auto what = std::make_shared<std::string>();
    verb->add_option("BOOK", *path, "Field book")->required();
    verb->add_option("WHAT", *what, "Number of a test, or the UUID of anything else")->required();
    verb->callback([path, what, &status] {
        const auto store = openToRead(*path);
        const auto subject = store ? subjectFor(*store, *what) : Result<std::string>(tl::unexpected(store.error()));
        const auto lines = subject ? book::history(*store, *subject)
                                   : Result<std::vector<book::HistoryLine>>(tl::unexpected(subject.error()));
        status = !lines ? refuse(lines.error()) : store->damage().empty() ? kDone : kRefused;
        if (!lines)
            return;
        for (const auto& line : *lines)
            print(lineText(line));
    });
}

void addRebuild(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("rebuild", "Make the derived tables of a book again from its sealed records");
    auto path = std::make_shared<std::string>();
    auto key = std::make_shared<std::string>();
    verb->add_option("BOOK", *path, "Field book")->required();
    verb->add_option("--key", *key, "Device key file")->type_name("FILE");
    verb->callback([path, key, &status] {
        auto store = openToWrite(*path, *key);
        const auto done = store ? store->rebuild() : Result<void>(tl::unexpected(store.error()));
        status = done ? kDone : refuse(done.error());
        if (done)
            print(*path + ": derived tables made again");
    });
}

void addMerge(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("merge", "Take the records of another book or a bundle into this one");
    auto path = std::make_shared<std::string>();
    auto other = std::make_shared<std::string>();
    auto key = std::make_shared<std::string>();
    verb->add_option("BOOK", *path, "Field book that receives; when it does not exist it becomes a copy of the other")->required();
    verb->add_option("OTHER", *other, "Field book or .fieldbundle that is read")->required();
    verb->add_option("--key", *key, "Device key file")->type_name("FILE");
    verb->footer("A union: what is here already is left alone, so the verb can be repeated. Each refused record is named and holds back\n"
                 "nothing else; the exit status is then 1.");
    verb->callback([path, other, key, &status] {
        const auto report = mergeInto(*path, *other, *key);
        if (!report) {
            status = refuse(report.error());
            return;
        }
        for (const auto& line : report->refused)
            refuse({Fault::Refused, line});
        print(std::to_string(report->taken) + " records taken, " + std::to_string(report->known) + " known already, " +
              std::to_string(report->refused.size()) + " refused");
        status = report->refused.empty() ? kDone : kRefused;
    });
}

}  // namespace groundcount::command
