#pragma once

#include "method/error.h"
#include "method/rules/rule_set.h"

#include <CLI/CLI.hpp>
#include <string>
#include <string_view>

/// The verbs of groundbook: each reads its arguments, calls core and prints. No arithmetic of the method stands here.
namespace groundcount::command {

inline constexpr int kDone = 0;
inline constexpr int kRefused = 1;  ///< core refused, or a check has findings
inline constexpr int kUsage = 2;    ///< the command line itself is wrong

/// How a verb prints its answer.
enum class Form { Text, Explain, Json };

/// Adds one verb; its callback writes the exit status to `status`.
void addMake(CLI::App& app, int& status);
void addImport(CLI::App& app, int& status);
void addEvaluate(CLI::App& app, int& status);
void addShow(CLI::App& app, int& status);
void addExport(CLI::App& app, int& status);
void addCoverage(CLI::App& app, int& status);
void addSite(CLI::App& app, int& status);
void addBackground(CLI::App& app, int& status);
void addCrs(CLI::App& app, int& status);
void addCheck(CLI::App& app, int& status);
void addLots(CLI::App& app, int& status);
void addUnusual(CLI::App& app, int& status);
void addReview(CLI::App& app, int& status);
void addDraw(CLI::App& app, int& status);
void addRules(CLI::App& app, int& status);
void addPlay(CLI::App& app, int& status);
void addHistory(CLI::App& app, int& status);
void addMerge(CLI::App& app, int& status);
void addRebuild(CLI::App& app, int& status);
void addSheet(CLI::App& app, int& status);  ///< only where Qt Gui was built in
void addKeys(CLI::App& app, int& status);
void addRetire(CLI::App& app, int& status);
void addServer(CLI::App& app, int& status);
void addAdmit(CLI::App& app, int& status);
void addPush(CLI::App& app, int& status);
void addPull(CLI::App& app, int& status);
void addPublish(CLI::App& app, int& status);

/// Prints the error's sentence on standard error. @return kRefused
int refuse(const Error& error);

/// Prints text and a line end on standard output.
void print(std::string_view text);

/// The whole of a file; "-" is standard input.
/// @error Unavailable, naming the file.
Result<std::string> readText(const std::string& path);

/// The rule set of a JSON file, or the neutral one for an empty path.
/// @error Unavailable for the file; Refused as ruleSetFromJson.
Result<method::RuleSet> rulesFrom(const std::string& path);

}  // namespace groundcount::command
