#pragma once

#include "book/store.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

namespace groundcount::book {

/// The rule set that the job names, as it was last sealed.
/// @error Refused when there is no job, it names none, the record is missing or void, or it is no rule set of this program.
Result<method::RuleSet> jobRules(const Store& store);

}  // namespace groundcount::book
