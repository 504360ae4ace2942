#pragma once

#include "method/accept/compare.h"
#include "method/accept/control_chart.h"
#include "method/accept/outlier.h"
#include "method/explain/explain_steps.h"

/// The arithmetic of comparisons, outliers and control charts as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// testLargestDeviation(). The value is flagged, never dropped. @source [E178-TXT], [GRUBBS-T1]
std::vector<ExplainStep> explainOutlier(std::span<const double> values, double alpha, Sides sides, const OutlierTest& test);
/// compareVariances(). @source [R9-RD02095], [KS-526]
std::vector<ExplainStep> explainVariances(std::span<const double> x, std::span<const double> y, double alpha, const VarianceTest& test);

/// By which test two means were compared.
enum class MeanComparison { Pooled, Unequal, Paired };
/// comparePooled(), compareUnequal() or comparePaired(). @source [R9-RD02095], [OK-PAIRED]
std::vector<ExplainStep> explainMeans(MeanComparison form, std::span<const double> x, std::span<const double> y, double alpha, const MeanTest& test);

/// individualsChart(). @source [PYZDEK]
std::vector<ExplainStep> explainIndividuals(std::span<const double> values, const IndividualsChart& chart);
/// subgroupChart(). @param factors of the subgroups' size. @source [CC-A22]
std::vector<ExplainStep> explainSubgroups(int subgroups, int size, const ChartFactors& factors, const SubgroupChart& chart);
/// knownSigmaLimits(). @source [QCC-VIG]
std::vector<ExplainStep> explainKnownSigma(double centre, double sigma, int n, double k, const ControlLimits& limits);

}  // namespace groundcount::method
