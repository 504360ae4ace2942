#pragma once

#include "method/accept/draw.h"
#include "method/accept/lot_forms.h"
#include "method/explain/explain_steps.h"

#include <optional>
#include <span>
#include <string>

/// The arithmetic of a draw, and of unequal sublots, as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// drawInStrip(): generator and seed, the sublots, every pair of numbers in order of drawing with its place; the rejected ones after
/// them with their reason. Lengths in feet. @source [D3665-SCOPE], [LA-S605], [DESIGN]
std::vector<ExplainStep> explainStripDraw(const StripPlan& plan, const StripDraw& draw);

/// drawInArea(): the extent of the area, then as above. Lengths in the plane's unit. @source [D3665-SCOPE], [LA-S605], [COMPUTED]
std::vector<ExplainStep> explainAreaDraw(const PlanArea& area, double edge, const AreaDraw& draw);

/// weightedMean(): results that stand for unequal sublots. @source [D3665-SCOPE]
std::vector<ExplainStep> explainWeightedMean(std::span<const double> results, std::span<const double> weights, double mean);

/// retestNumber(). @source [SJC-CQA], [DESIGN]
std::vector<ExplainStep> explainRetestNumber(const std::string& parent, int retestNo, const std::string& number);

}  // namespace groundcount::method
