#pragma once

#include "method/accept/evaluate.h"
#include "method/rules/rule_set.h"

#include <string>
#include <string_view>

namespace groundcount::method {

/// What `groundbook evaluate` reads: one test and the rule set to judge it by.
struct EvaluationRequest {
    TestInput input;
    RuleSet rules;
};

/// Reads one test from JSON text (docs/evaluate-json.md). Figures are decimal text or JSON numbers, densities in the
/// rule set's unit; without "rules" the neutral rule set is used. Unknown keys are refused, since a misspelt figure
/// would silently be missing.
/// @error Refused, naming the key, its value and what is allowed
Result<EvaluationRequest> evaluationFromJson(std::string_view text);

/// The evaluation as JSON text: verdict, reasons, reported and unrounded figures, arithmetic.
std::string evaluationToJson(const EvaluationRequest& request, const EvaluationRules& rules, const Evaluation& evaluation);

/// "dry basis", "wet basis", "mass offset", "percent offset", "ratio". @error Refused for another word.
Result<MoistureVariant> moistureVariantFrom(std::string_view word);
/// "No. 4" or "3/4 in.". @error Refused for another word.
Result<SplitSieve> splitSieveFrom(std::string_view word);

}  // namespace groundcount::method
