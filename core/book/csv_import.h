#pragma once

#include "book/store.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

#include <string>
#include <string_view>
#include <vector>

/// Taking over a list of field tests: docs/csv-import.md.
namespace groundcount::book {

enum class ImportMode {
    AllOrNothing,  ///< one broken row refuses the file
    SkipBroken     ///< broken rows are named, the others are taken
};

struct ImportSettings {
    std::string by;  ///< person who takes the list over
    std::string at;  ///< UTC, the time of the seals
    int offsetMinutes = 0;
    ImportMode mode = ImportMode::AllOrNothing;
    method::RuleSet rules;  ///< judges the tests; sealed once if the book does not hold the same
};

struct ImportReport {
    std::vector<std::string> tests;          ///< subjects, in the order of the rows
    std::vector<std::string> skipped;        ///< "Line 5, column 5 (wet_density_lb_ft3): ... must be ..."
    std::vector<std::string> disagreements;  ///< where the list's own dry density or percent differs from the computed one
};

/// Imports tests from CSV text: seals material, proctor, lot and lift per distinct requirement, an "As reported" gauge,
/// and per row a directed test without position, its reading and its verdict. One transaction.
/// @error Refused with line and column for a broken file or, in mode AllOrNothing, the first broken row; nothing written.
Result<ImportReport> importTests(Store& store, std::string_view csv, const ImportSettings& settings);

}  // namespace groundcount::book
