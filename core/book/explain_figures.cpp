#include "book/explain_figures.h"

namespace groundcount::book {

namespace {

void append(std::vector<method::ExplainStep>& to, std::vector<method::ExplainStep> steps)
{
    to.insert(to.end(), std::make_move_iterator(steps.begin()), std::make_move_iterator(steps.end()));
}

std::vector<double> valuesOf(const LotStatistics& lot)
{
    std::vector<double> values;
    for (const LotValue& v : lot.values)
        values.push_back(v.compactionPct);
    return values;
}

}  // namespace

std::vector<method::ExplainStep> explainSpread(const LotStatistics& lot)
{
    method::ExplainSteps s(method::DensityUnit::KgPerM3);
    const auto values = valuesOf(lot);
    std::string entered, out;
    for (const LotValue& v : lot.values)
        if (!v.insteadOf.empty())
            entered += (entered.empty() ? "" : ", ") + v.test->number + " stands for " + v.insteadOf;
    for (const std::string& one : lot.leftOut)
        out += (out.empty() ? "" : ", ") + one;
    s.add("Results that enter", "random tests with a verdict, as the rule set says", entered.empty() ? "each random test itself" : entered, std::to_string(values.size()), "COMMON, CFR-637");
    if (!out.empty())
        s.add("Left out", "named, never silent", out, std::to_string(lot.leftOut.size()), "COMMON");
    if (lot.mean.value)
        s.add("Mean", "sum of results / n", "(" + method::figures(values) + ") / " + std::to_string(values.size()), method::shown(*lot.mean.value, 3) + " %", "D2922-TXT");
    if (lot.spread.value)
        s.add("Standard deviation", "root(sum of (result \xE2\x88\x92 mean)\xC2\xB2 / (n \xE2\x88\x92 1))", "n " + std::to_string(values.size()), method::shown(lot.spread.value->sd, 3) + " %", "D2922-TXT");
    return s.take();
}

std::vector<method::ExplainStep> explainMovingMean(const LotStatistics& lot, int k)
{
    method::ExplainSteps s(method::DensityUnit::KgPerM3);
    const auto values = valuesOf(lot);
    const auto n = static_cast<std::size_t>(k);
    if (lot.movingMeans.empty() || values.size() < n)
        return {};
    const auto last = std::span(values).last(n);
    s.add("Moving mean", "sum of the last " + std::to_string(k) + " results / " + std::to_string(k), "(" + method::figures(last) + ") / " + std::to_string(k), method::shown(lot.movingMeans.back(), 2) + " %", "FDOT-120");
    return s.take();
}

std::vector<method::ExplainStep> explainComparison(const Comparison& c, const ComparisonRules& rules)
{
    std::vector<method::ExplainStep> steps;
    if (c.variances.value)
        append(steps, method::explainVariances(c.x.values, c.y.values, rules.alpha, *c.variances.value));
    if (c.means.value)
        append(steps, method::explainMeans(c.form, c.x.values, c.y.values, rules.alpha, *c.means.value));
    if (c.paired.value)
        append(steps, method::explainMeans(method::MeanComparison::Paired, c.pairsX.values, c.pairsY.values, rules.alpha, *c.paired.value));
    return steps;
}

}  // namespace groundcount::book
