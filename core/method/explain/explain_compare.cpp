#include "method/explain/explain_compare.h"

#include <cmath>

namespace groundcount::method {
namespace {

ExplainSteps plainSteps() { return ExplainSteps(DensityUnit::KgPerM3); }

std::string limitsText(const ControlLimits& limits) { return figure(limits.lower) + " to " + figure(limits.upper); }

const char* differ(bool different) { return different ? "different" : "no difference shown"; }

struct MeanFormula {
    const char* t;
    const char* source;
};

MeanFormula formulaOf(MeanComparison form)
{
    switch (form) {
    case MeanComparison::Pooled: return {"difference / (pooled s root(1 / n1 + 1 / n2)), n1 + n2 \xE2\x88\x92 2 degrees of freedom", "R9-RD02095"};
    case MeanComparison::Unequal: return {"difference / root(s1\xC2\xB2 / n1 + s2\xC2\xB2 / n2), own degrees of freedom", "R9-RD02095"};
    case MeanComparison::Paired: break;
    }
    return {"mean of differences / (s of differences / root(n)), n \xE2\x88\x92 1 degrees of freedom", "OK-PAIRED"};
}

}  // namespace

std::vector<ExplainStep> explainOutlier(std::span<const double> values, double alpha, Sides sides, const OutlierTest& test)
{
    auto s = plainSteps();
    s.add("Mean and standard deviation", "deviation with n \xE2\x88\x92 1", figures(values), figure(test.mean) + ", " + figure(test.sd), "E178-TXT");
    const std::string suspect = test.index < values.size() ? figure(values[test.index]) : std::string();
    s.add("Largest deviation", "|value \xE2\x88\x92 mean| / deviation", "|" + suspect + kMinus + figure(test.mean) + "| / " + figure(test.sd), shown(test.g, 4), "E178-TXT");
    s.add("Critical value", sides == Sides::One ? "one side, level " + figure(alpha) : "two sides, level " + figure(alpha),
          "n " + std::to_string(values.size()), shown(test.critical, 4), "GRUBBS-T1, E178-TXT");
    s.add("Outlier", "deviation above the critical value; dropped only for an assignable cause", shown(test.g, 4) + " against " + shown(test.critical, 4),
          test.flagged ? "flagged" : "not flagged", "E178-TXT");
    return s.take();
}

std::vector<ExplainStep> explainVariances(std::span<const double> x, std::span<const double> y, double alpha, const VarianceTest& test)
{
    auto s = plainSteps();
    s.add("Variances", "s\xC2\xB2 with n \xE2\x88\x92 1", std::to_string(x.size()) + " and " + std::to_string(y.size()) + " results",
          figure(test.varianceX) + ", " + figure(test.varianceY), "R9-RD02095");
    s.add("Variance ratio F", "larger s\xC2\xB2 / smaller s\xC2\xB2", figure(std::fmax(test.varianceX, test.varianceY)) + " / " + figure(std::fmin(test.varianceX, test.varianceY)),
          shown(test.fLargerOverSmaller, 4), "R9-RD02095");
    s.add("Critical value", "F(1 \xE2\x88\x92 \xCE\xB1/2), level " + figure(alpha), "p " + shown(test.p, 4), shown(test.fCritical, 4), "KS-526");
    s.add("Variances", "different when F is above the critical value", shown(test.fLargerOverSmaller, 4) + " against " + shown(test.fCritical, 4),
          differ(test.different), "R9-RD02095");
    return s.take();
}

std::vector<ExplainStep> explainMeans(MeanComparison form, std::span<const double> x, std::span<const double> y, double alpha, const MeanTest& test)
{
    auto s = plainSteps();
    const MeanFormula f = formulaOf(form);
    s.add("Difference of the means", "first \xE2\x88\x92 second", std::to_string(x.size()) + " and " + std::to_string(y.size()) + " results", figure(test.difference), f.source);
    s.add("t", f.t, "degrees of freedom " + figure(test.degreesOfFreedom), shown(test.t, 4), f.source);
    s.add("Critical value", "Student's t, two-sided, level " + figure(alpha), "p " + shown(test.p, 4), shown(test.tCritical, 4), f.source);
    s.add("Interval of the difference", "difference \xC2\xB1 critical value" + std::string(kTimes) + "standard error", "", figure(test.low) + " to " + figure(test.high), f.source);
    s.add("Means", "different when |t| is above the critical value", shown(std::fabs(test.t), 4) + " against " + shown(test.tCritical, 4), differ(test.different), f.source);
    return s.take();
}

std::vector<ExplainStep> explainIndividuals(std::span<const double> values, const IndividualsChart& chart)
{
    auto s = plainSteps();
    s.add("Centre", "mean of the values", figures(values), figure(chart.values.centre), "PYZDEK");
    s.add("Mean moving range", "mean of |value \xE2\x88\x92 the one before|", figures(chart.movingRanges), figure(chart.meanMovingRange), "PYZDEK");
    s.add("Upper limit of the moving range", "3.267" + std::string(kTimes) + "mean moving range", "3.267" + std::string(kTimes) + figure(chart.meanMovingRange),
          figure(chart.movingRangeUpper), "PYZDEK");
    s.add("Limits of the values", "centre \xC2\xB1 2.66" + std::string(kTimes) + "mean moving range",
          figure(chart.values.centre) + " \xC2\xB1 2.66" + kTimes + figure(chart.meanMovingRange), limitsText(chart.values), "PYZDEK");
    return s.take();
}

std::vector<ExplainStep> explainSubgroups(int subgroups, int size, const ChartFactors& factors, const SubgroupChart& chart)
{
    auto s = plainSteps();
    s.add("Centre", "mean of the subgroups' means", std::to_string(subgroups) + " subgroups of " + std::to_string(size), figure(chart.grandMean), "CC-A22");
    s.add("Mean range", "mean of (largest \xE2\x88\x92 smallest)", std::to_string(subgroups) + " subgroups", figure(chart.meanRange), "CC-A22");
    s.add("Limits of the ranges", "D3 and D4" + std::string(kTimes) + "mean range",
          shown(factors.lowerRange, 3) + " and " + shown(factors.upperRange, 3) + kTimes + figure(chart.meanRange),
          figure(chart.rangeLower) + " to " + figure(chart.rangeUpper), "CC-A22");
    s.add("Limits of the means", "centre \xC2\xB1 A2" + std::string(kTimes) + "mean range",
          figure(chart.grandMean) + " \xC2\xB1 " + shown(factors.a2, 3) + kTimes + figure(chart.meanRange), limitsText(chart.means), "CC-A22");
    return s.take();
}

std::vector<ExplainStep> explainKnownSigma(double centre, double sigma, int n, double k, const ControlLimits& limits)
{
    auto s = plainSteps();
    s.add("Limits", "centre \xC2\xB1 k sigma / root(n)", figure(centre) + " \xC2\xB1 " + figure(k) + kTimes + figure(sigma) + " / root(" + std::to_string(n) + ")",
          limitsText(limits), "QCC-VIG");
    return s.take();
}

}  // namespace groundcount::method
