#pragma once

#include "method/accept/evaluate.h"
#include "method/explain/explain_steps.h"

#include <string>
#include <vector>

namespace groundcount::method {

/// Renders the arithmetic of one evaluation in the order in which it was done: formula, numbers put in, value, source.
/// @param evaluation what evaluate(input, rules) returned
/// @return one step per formula applied, then the rounding and the verdict
std::vector<ExplainStep> explain(const TestInput& input, const EvaluationRules& rules, const Evaluation& evaluation);

/// The verdict as one sentence: "Pass: 97.4 % compaction, 95 needed; water content 12.5 %, 10.8 to 14.8 allowed."
std::string verdictSentence(const TestInput& input, const Evaluation& evaluation);

}  // namespace groundcount::method
