#include "book/audit.h"
#include "command/verb.h"

#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

std::string asText(const book::AuditReport& report)
{
    std::string out;
    for (const auto& line : report.lines)
        out += std::string(book::word(line.finding)) + ": " + line.what + "\n";
    return out + std::to_string(report.records) + " records of " + std::to_string(report.devices) + " device(s) read, " +
           std::to_string(report.verdicts) + " verdicts computed again: " +
           (report.isClean() ? "nothing found." : std::to_string(report.lines.size()) + " finding(s).");
}

std::string asJson(const book::AuditReport& report)
{
    auto findings = nlohmann::ordered_json::array();
    for (const auto& line : report.lines)
        findings.push_back({{"finding", book::word(line.finding)}, {"what", line.what}});
    return nlohmann::ordered_json{{"records", report.records}, {"devices", report.devices}, {"verdicts", report.verdicts},
                                  {"findings", findings}}.dump(2);
}

}  // namespace

void addCheck(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("check", "Read a whole book against its seals and compute every verdict again");
    auto path = std::make_shared<std::string>();
    auto json = std::make_shared<bool>(false);
    verb->add_option("BOOK", *path, "Field book")->required();
    verb->add_flag("--json", *json, "As JSON");
    verb->footer("Hashes, signatures, each device's chain, forms, verdicts, contents and the derived tables. Exit status 1 when\n"
                 "something is found. Records cut off at the end of a chain cannot be missed by the book itself: keep a copy.");
    verb->callback([path, json, &status] {
        const auto store = book::Store::open(*path, book::OpenMode::ReadOnly);
        const auto report = store ? book::check(*store) : Result<book::AuditReport>(tl::unexpected(store.error()));
        if (!report) {
            status = refuse(report.error());
            return;
        }
        print(*json ? asJson(*report) : asText(*report));
        status = report->isClean() ? kDone : kRefused;
    });
}

}  // namespace groundcount::command
