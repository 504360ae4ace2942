#pragma once

#include "book/lot_comparison.h"
#include "method/explain/explain_steps.h"

#include <string>
#include <vector>

/// The arithmetic of a lot's figures as text, each from what entered it.
namespace groundcount::book {

/// Mean and standard deviation, with the results that stand for failed ones and those left out. @source [D2922-TXT]
std::vector<method::ExplainStep> explainSpread(const LotStatistics& lot);
/// The last moving mean. @param k results in it. @source [FDOT-120]
std::vector<method::ExplainStep> explainMovingMean(const LotStatistics& lot, int k);
/// F, then t, and the pairs when there are enough. @source [R9-RD02095], [KS-526], [OK-PAIRED]
std::vector<method::ExplainStep> explainComparison(const Comparison& comparison, const ComparisonRules& rules);

}  // namespace groundcount::book
