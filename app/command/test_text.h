#pragma once

#include "book/state.h"
#include "method/accept/explain.h"

#include <nlohmann/json.hpp>
#include <span>
#include <string>

/// Tests as text and JSON: nothing is computed, figures stand as they were sealed.
namespace groundcount::command {

/// "53+38.3, 14.2 Rt"; "" when the place on the line is not known.
std::string placeText(const book::TestRow& test);
/// One line per test in columns, with a head.
std::string listed(std::span<const book::TestRow> tests);
/// Every fact of one test, a line each.
std::string detailed(const book::TestRow& test, const book::JobRow& job);
/// The arithmetic of a verdict in columns: name, formula, numbers, value, sources.
std::string arithmeticText(std::span<const method::ExplainStep> steps);
/// One test with all its facts; unknown ones are null.
nlohmann::ordered_json toJson(const book::TestRow& test);

}  // namespace groundcount::command
