#pragma once

#include "book/lot_statistics.h"
#include "book/store.h"
#include "method/accept/compare.h"
#include "method/explain/explain_compare.h"

#include <map>
#include <string>
#include <vector>

/// Two sets of tests against each other: contractor against agency, gauge against gauge; and the trend of moisture.
namespace groundcount::book {

/// Random tests with a verdict of pass or fail, as they were found, in the order of testing.
struct TestSample {
    std::string name;
    std::vector<const TestRow*> tests;
    std::vector<double> values;  ///< percent compaction
};

/// First the variances by F, then the means: pooled t when F shows no difference, else t with variances of their own. Where the
/// two tested enough places side by side, the pairs too, which compare the method of measurement only.
struct Comparison {
    TestSample x, y;
    Figure<method::VarianceTest> variances;
    Figure<method::MeanTest> means;
    method::MeanComparison form = method::MeanComparison::Unequal;
    TestSample pairsX, pairsY;   ///< one to one
    Figure<method::MeanTest> paired;
};

/// What a rule set says of comparisons.
struct ComparisonRules {
    double alpha = 0;        ///< `compare.level`, above 0 and below 0.5
    int leastPairs = 0;      ///< `compare.pairs`, at least 2
    Length sideBySide;       ///< `compare.distance`: no farther apart is one place
};

/// @error Refused for a missing key or one outside its range.
Result<ComparisonRules> comparisonRules(const method::RuleSet& rules);

/// Each two gauges that tested the lot, by the order of their names.
/// @param tests of the lot @error Refused for a compaction that is no decimal. @source [R9-RD02095], [KS-526], [OK-PAIRED]
Result<std::vector<Comparison>> compareGauges(std::span<const TestRow> tests, const std::string& lot, double metresPerGridUnit, const ComparisonRules& rules);

/// Contractor's tests against the agency's. @param parties as `partiesOf` gives them; a person without one is left out
/// @return nothing when one side has no test @error Refused for a compaction that is no decimal. @source [R9-RD02095], [KS-526], [OK-PAIRED]
Result<std::vector<Comparison>> compareParties(std::span<const TestRow> tests, const std::string& lot, const std::map<std::string, std::string>& parties,
                                               double metresPerGridUnit, const ComparisonRules& rules);

/// For whom each person tests, as sealed: "contractor" or "agency", by the person's id. @error Unavailable for the file
Result<std::map<std::string, std::string>> partiesOf(const Store& store);

/// Water content less optimum, in percentage points, of every random test and retest with a verdict in the order of testing, with
/// its moving means and single-value chart.
struct MoistureTrend {
    std::vector<const TestRow*> tests;
    std::vector<double> points;
    std::vector<double> movingMeans;  ///< [i] is the mean of values i to i + k - 1
    Figure<method::IndividualsChart> chart;
};

/// @param k results in a moving mean, at least 2 @error Refused for a content or optimum that is no decimal. @source [PYZDEK]; moving mean [FDOT-120]
Result<MoistureTrend> moistureTrend(std::span<const TestRow> tests, const std::string& lot, int k);

}  // namespace groundcount::book
