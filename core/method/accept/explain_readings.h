#pragma once

#include "method/accept/evaluate.h"
#include "method/explain/explain_steps.h"

namespace groundcount::method {

/// The steps of explain() from what was read to one wet and one water density.
void explainReadings(ExplainSteps& steps, const TestInput& input, const Evaluation& evaluation);

}  // namespace groundcount::method
