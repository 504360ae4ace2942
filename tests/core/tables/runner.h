#pragma once

#include "method/error.h"
#include "table.h"

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace groundcount::tables {

/// An answer of a topic. A number is compared within the tolerance, a text as text, a list item by item.
using Answer = std::variant<double, std::string, std::vector<double>, std::vector<std::string>>;

/// What a topic got out of the core for one row.
struct Outcome {
    std::string result = "ok";               ///< compared with the cell `result`
    std::map<std::string, Answer> want;      ///< by full column name, for example "want_dry"
    std::vector<std::string> objections;     ///< anything the row asks beyond want_* that did not hold
};

/// Parses the cells into quantities and calls core. An Error is a refusal by the core, nothing else.
using TopicFn = Result<Outcome> (*)(const Row&);

/// Topics by file name without extension. A table with a column `recompute` is looked up as "topic/recompute", row by row.
struct Topic {
    std::string name;
    TopicFn function;
};

struct Tally {
    int passed = 0;
    int failed = 0;
    int notSupported = 0;
    std::map<std::string, std::pair<int, int>> byMark;  ///< mark -> passed, failed
};

/// Whether `got` meets the text `wanted` within half a unit of its last printed digit, or within `tolerance` (>= 0).
bool meets(double got, const std::string& wanted, double tolerance);

/// The outcome of a row of published_but_wrong: `correct` is wanted, and the cell `printed` must not come out, which
/// is an objection when it does within half a unit of its last digit.
Outcome wrongBeside(const Row& row, double correct);

/// Runs every *.tsv of `folder` and prints the report. @param notYet topics known to be missing, printed and counted
/// @return 0 when every row passed; 1 on a failed row, an empty or unreadable table, an unknown topic, an empty folder.
int runFolder(const std::filesystem::path& folder, const std::vector<Topic>& topics, const std::set<std::string>& notYet);

}  // namespace groundcount::tables
