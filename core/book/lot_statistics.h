#pragma once

#include "book/state.h"
#include "method/accept/control_chart.h"
#include "method/accept/outlier.h"
#include "method/accept/pwl.h"
#include "method/error.h"
#include "method/quantity.h"
#include "method/rules/rule_set.h"
#include "method/spread.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The engineer's figures of a lot, one computation for pages, groundbook and sheets.
namespace groundcount::book {

/// How a failed random test that a retest closed enters the statistics. @source [COMMON], a setting, never silent
enum class Retested { PassingRetest, FailedTest, Nothing };

/// What a rule set says about the statistics of a lot.
struct StatisticsRules {
    Retested retested = Retested::PassingRetest;
    method::PwlChain chain;
    int movingMean = 0;        ///< results in a moving mean, at least 2
    double outlierLevel = 0;   ///< two-sided, above 0 and below 0.5
    Length retestDistance;
};

/// @error Refused for a missing key, a moving mean below 2 or an outlier level outside 0 to 50 %.
Result<StatisticsRules> statisticsRules(const method::RuleSet& rules);

/// A result that enters the statistics: the figure reported and sealed, and the test that gave it.
struct LotValue {
    const TestRow* test = nullptr;
    double compactionPct = 0;
    std::string insteadOf;  ///< number of the failed random test whose place it takes, else empty
};

/// A figure, or one sentence that says why there is none.
template <class T>
struct Figure {
    std::optional<T> value;
    std::string whyNot;
};

template <class T>
Figure<T> figureFrom(Result<T> result)
{
    Figure<T> f;
    if (result)
        f.value = std::move(*result);
    else
        f.whyNot = result.error().what;
    return f;
}

/// A lot in figures. Only random tests (or the retests that stand for them) enter the statistics; each figure is the
/// method's own function on `values`, in the order of testing.
struct LotStatistics {
    std::string lot, name;
    int lifts = 0;
    int required = 0;   ///< tests per lift x lifts
    int made = 0;       ///< random tests with a verdict or waiting for one
    int random = 0, directed = 0, retests = 0, waiting = 0, informationOnly = 0;
    std::vector<const TestRow*> openFailures;
    std::vector<LotValue> values;
    std::vector<std::string> leftOut;  ///< numbers of random tests that do not enter, each with the reason in brackets
    method::PwlLimits limits;          ///< the lot's minimum and maximum percent compaction
    Figure<double> mean;
    Figure<method::Spread> spread;
    Figure<method::LotPwl> pwl;
    std::vector<double> movingMeans;   ///< [i] is the mean of values i to i + k - 1
    Figure<method::OutlierTest> outlier;  ///< index into `values`; flagged, never dropped
};

/// Required number: tests per lift x lifts of the lot. Mean and s: method::spreadOf. PWL: method::lotPwl on the lot's
/// limits with the rule set's chain. Moving mean of k results, from the k-th on. Outlier: method::testLargestDeviation.
/// @param lifts, tests of the whole book or at least of the lot
/// @return figures; a figure that cannot be is empty with the method's sentence
/// @error Refused for a compaction or limit that is no decimal (a damaged book).
/// @source [AQLSCHEMES], [D2922-TXT], [E178-TXT], [GRUBBS-T1], [FDOT-120]; what enters [COMMON], [CFR-637]
Result<LotStatistics> lotStatistics(const LotRow& lot, std::span<const LiftRow> lifts, std::span<const TestRow> tests,
                                    double metresPerGridUnit, const StatisticsRules& rules);

/// One control chart: single values of percent compaction of one material, reference test and gauge in the order of testing.
struct ChartOfTests {
    std::string material, proctor, gauge;  ///< ids
    std::vector<const TestRow*> tests;
    Figure<method::IndividualsChart> chart;
    std::vector<std::size_t> outside;      ///< indexes of values beyond the limits, or whose moving range is above its limit
};

/// A new chart begins when the reference test, the material or the gauge changes. Random tests and retests with a verdict
/// of pass or fail. @param lot "" = the whole book @error Refused for a compaction that is no decimal. @source [PYZDEK], [CC-A22]
Result<std::vector<ChartOfTests>> controlCharts(std::span<const TestRow> tests, const std::string& lot);

}  // namespace groundcount::book
