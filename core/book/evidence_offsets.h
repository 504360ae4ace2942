#pragma once

#include "book/record.h"
#include "method/accept/evaluate.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

#include <vector>

namespace groundcount::book {

/// A decimal text as a number; 0 for text that is none (the form of bodies was checked before).
double numberOf(const std::string& text);

/// Puts trench, moisture and density-bias offsets into the gauge's input.
/// @param offsets at most one live offset record of each kind
/// @error Refused for a moisture correction or density bias that rests on fewer places than the rule set asks, states
///   none, scatters more than it allows or states no scatter, or lacks the approval that the rule set asks for; for an
///   unknown variant. @source [AB-ATT48] for the number of places; limits are settings of the rule set [COMMON]
Result<void> readOffsets(const std::vector<const Record*>& offsets, const method::RuleSet& rules, method::GaugeInput& gauge);

/// Last day of an offset: its own `expires`; without one, a trench offset holds on its day only (it belongs to one place
/// and geometry), the others for `offset.days` of the rule set.
/// @return "YYYY-MM-DD" @error Refused for a rule set without that key. @source [DESIGN]
Result<std::string> lastDayOf(const Body& offset, const Body& ruleSet);

/// A limit's number straight from a sealed rule set; one that came after it was sealed is that of the neutral rules, as
/// method::ruleSetFromSealed has it. @error Refused when it is not there.
Result<double> limitOf(const Body& ruleSet, const char* key);

}  // namespace groundcount::book
