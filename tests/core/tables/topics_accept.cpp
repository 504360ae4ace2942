#include "topics.h"

#include "method/accept/compare.h"
#include "method/accept/control_chart.h"
#include "method/accept/frequency.h"
#include "method/accept/lot_forms.h"
#include "method/accept/outlier.h"
#include "method/accept/pay.h"
#include "method/accept/pwl.h"
#include "method/accept/retest.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

template <class T>
tl::unexpected<Error> errorOf(const Result<T>& result)
{
    return tl::unexpected(result.error());
}

// Nothing in the cell is 0, which core has to refuse.
int whole(const Row& row, const std::string& column)
{
    return static_cast<int>(row.numberOr(column, 0));
}

Sides sidesOf(double sides)
{
    if (sides != 1 && sides != 2)
        throw std::runtime_error("sides must be 1 or 2");
    return sides == 1 ? Sides::One : Sides::Two;
}

Outcome one(const std::string& column, double value)
{
    return {"ok", {{column, value}}, {}};
}

Result<Outcome> frequency(const Row& row)
{
    const auto unit = Decimal::parse(row.text("per"));
    const auto quantity = Decimal::parse(row.text("quantity"));
    if (!unit || !quantity)
        return errorOf(unit ? quantity : unit);
    return requiredTests({*unit, whole(row, "tests_per_unit"), whole(row, "minimum")}, *quantity).map([](int tests) {
        return one("want_tests", tests);
    });
}

Result<Outcome> acceptanceForms(const Row& row)
{
    const auto values = row.numbers("values");
    const std::string& form = row.text("form");
    const auto setting = [&row](const char* key) { return row.pairNumber("settings", key); };
    Result<LotResult> lot;
    if (form == "every")
        lot = judgeEvery(values, setting("min"));
    else if (form == "band")
        lot = judgeBand(values, setting("min"), setting("max"));
    else if (form == "mean_and_min")
        lot = judgeMeanAndMinimum(values, static_cast<int>(setting("n")), setting("mean"), setting("min"), {});
    else if (form == "moving_mean")
        lot = judgeMovingMean(values, static_cast<int>(setting("k")), setting("min"), {});
    else
        throw std::runtime_error("unknown form " + form);
    if (!lot)
        return errorOf(lot);
    Outcome outcome{lot->verdict == LotVerdict::Pass ? "pass" : "fail", {}, {}};
    if (lot->decidingMean)
        outcome.want["want_value"] = *lot->decidingMean;
    return outcome;
}

Result<Outcome> pwlFromQ(const Row& row)
{
    return percentWithin(row.number("q"), whole(row, "n")).map([](double pwl) { return one("want_pwl", pwl); });
}

std::optional<double> limit(const Row& row, const char* column)
{
    return row.has(column) ? std::optional(row.number(column)) : std::nullopt;
}

std::optional<int> places(const Row& row, const char* column)
{
    return row.has(column) ? std::optional(whole(row, column)) : std::nullopt;
}

Result<Outcome> pwlLots(const Row& row)
{
    PwlChain chain{places(row, "mean_places"), places(row, "sd_places"), places(row, "q_places"), TieRule::HalfEven, PwlTable::Exact};
    const std::string& policy = row.text("table_policy");
    if (policy == "next_higher")
        chain.table = PwlTable::NextHigherWhole;
    else if (policy == "nearest")
        chain.table = PwlTable::NearestWhole;
    else if (policy != "exact" && policy != "-")
        throw std::runtime_error("unknown table policy " + policy);
    const PwlLimits limits{limit(row, "lower"), limit(row, "upper")};
    const auto lot = row.has("x") ? lotPwl(row.numbers("x"), limits, chain)
                                  : lotPwlFromSummary(whole(row, "n"), row.number("mean"), row.number("sd"), limits, chain);
    if (!lot)
        return errorOf(lot);
    Outcome outcome{"ok", {{"want_mean", lot->mean}, {"want_sd", lot->sd}, {"want_pwl", lot->pwl}}, {}};
    const auto add = [&outcome](const char* column, std::optional<double> value) {
        if (value)
            outcome.want[column] = *value;
    };
    add("want_qL", lot->qLower);
    add("want_qU", lot->qUpper);
    add("want_pL", lot->pLower);
    add("want_pU", lot->pUpper);
    return outcome;
}

Result<Outcome> pwlQ(const Row& row)
{
    return qualityIndexFor(row.number("pwl"), whole(row, "n_min")).map([](double q) { return one("want_q", q); });
}

// The printed value stands for a range of n: it holds when the exact value of some n of the range meets it, so the exact
// value nearest to it is handed out.
Result<Outcome> pwlQRange(const Row& row)
{
    const bool endless = row.text("n_max") == "inf";
    const int first = whole(row, "n_min");
    const int last = endless ? std::max(first, 2000) : whole(row, "n_max");
    const double printed = row.numberOr("want_q", 0);
    double nearest = 1e99;
    for (int n = first; n <= last; ++n) {
        const auto q = qualityIndexFor(row.number("pwl"), n);
        if (!q)
            return errorOf(q);
        if (std::abs(*q - printed) < std::abs(nearest - printed))
            nearest = *q;
    }
    if (endless) {
        const auto q = qualityIndexForManyResults(row.number("pwl"));
        // 100 % has no limit for many results; the finite n above answer it.
        if (q && std::abs(*q - printed) < std::abs(nearest - printed))
            nearest = *q;
    }
    return one("want_q", nearest);
}

Result<Outcome> wrongPwlQ(const Row& row)
{
    return qualityIndexFor(row.pairNumber("inputs", "pwl"), static_cast<int>(row.pairNumber("inputs", "n"))).map([&row](double q) {
        return Outcome{meets(q, row.text("printed"), -1) ? "printed" : "wrong", {{"want_correct", q}}, {}};
    });
}

Result<Outcome> pwlQmax(const Row& row)
{
    const auto most = qualityIndexMax(whole(row, "n"));
    if (!most)
        return errorOf(most);
    Outcome outcome = one("want_qmax", *most);
    const auto full = percentWithin(*most, whole(row, "n"));
    if (!full || *full != 100)
        outcome.objections.push_back("PWL at Qmax is not exactly 100");
    return outcome;
}

Result<Outcome> payFactorTopic(const Row& row)
{
    const std::string& formula = row.text("formula");
    if (formula != "linear_55" && formula != "stepped")
        throw std::runtime_error("unknown formula " + formula);
    return payFactor(formula == "stepped" ? steppedPaySteps() : linearPaySteps(), row.number("pwl")).map([](double f) { return one("want_factor", f); });
}

Result<Outcome> retestIds(const Row& row)
{
    return retestNumber(row.text("parent"), whole(row, "retest_no")).map([](const std::string& id) { return Outcome{"ok", {{"want_id", id}}, {}}; });
}

Result<Outcome> outlierTests(const Row& row)
{
    const auto test = testLargestDeviation(row.numbers("x"), row.number("alpha"), sidesOf(row.number("sides")));
    if (!test)
        return errorOf(test);
    return Outcome{test->flagged ? "outlier" : "keep",
                   {{"want_mean", test->mean}, {"want_sd", test->sd}, {"want_g", test->g}, {"want_critical", test->critical}},
                   {}};
}

Result<Outcome> grubbsCritical(const Row& row)
{
    return outlierCritical(whole(row, "n"), row.number("alpha"), sidesOf(row.number("sides"))).map([](double g) { return one("want_g", g); });
}

Result<Outcome> wrongGrubbs(const Row& row)
{
    return outlierCritical(static_cast<int>(row.pairNumber("inputs", "n")), row.pairNumber("inputs", "alpha"), sidesOf(row.pairNumber("inputs", "sides")))
        .map([&row](double g) { return Outcome{meets(g, row.text("printed"), -1) ? "printed" : "wrong", {{"want_correct", g}}, {}}; });
}

Result<Outcome> dixonR11(const Row& row)
{
    const std::string& side = row.text("side");
    if (side != "high" && side != "low")
        throw std::runtime_error("unknown side " + side);
    return gapRatio11(row.numbers("x"), side == "high" ? End::High : End::Low).map([](double r) { return one("want_r11", r); });
}

Result<Outcome> fTest(const Row& row)
{
    const auto test = compareVariances(row.numbers("x"), row.numbers("y"), row.number("alpha"));
    if (!test)
        return errorOf(test);
    return Outcome{test->different ? "unequal" : "equal",
                   {{"want_var_x", test->varianceX},
                    {"want_var_y", test->varianceY},
                    {"want_f", test->f},
                    {"want_p", test->p},
                    {"want_ci_low", test->ratioLow},
                    {"want_ci_high", test->ratioHigh},
                    {"want_f_larger_over_smaller", test->fLargerOverSmaller},
                    {"want_f_critical", test->fCritical}},
                   {}};
}

Result<Outcome> tTest(const Row& row)
{
    const auto x = row.numbers("x");
    const auto y = row.numbers("y");
    const std::string& kind = row.text("kind");
    if (kind != "pooled" && kind != "welch" && kind != "paired")
        throw std::runtime_error("unknown kind " + kind);
    const auto test = kind == "pooled"  ? comparePooled(x, y, row.number("alpha"))
                      : kind == "welch" ? compareUnequal(x, y, row.number("alpha"))
                                        : comparePaired(x, y, row.number("alpha"), 2);
    if (!test)
        return errorOf(test);
    return Outcome{test->different ? "different" : "same",
                   {{"want_t", test->t},
                    {"want_df", test->degreesOfFreedom},
                    {"want_t_critical", test->tCritical},
                    {"want_p", test->p},
                    {"want_ci_low", test->low},
                    {"want_ci_high", test->high}},
                   {}};
}

Result<Outcome> chartConstants(const Row& row)
{
    return chartFactors(whole(row, "n")).map([](const ChartFactors& f) {
        return Outcome{"ok", {{"want_A2", f.a2}, {"want_d2", f.d2}, {"want_d3", f.d3}, {"want_D3", f.lowerRange}, {"want_D4", f.upperRange}}, {}};
    });
}

Result<Outcome> chartIndividuals(const Row& row)
{
    return individualsChart(row.numbers("x")).map([](const IndividualsChart& chart) {
        return Outcome{"ok",
                       {{"want_moving_range", chart.movingRanges},
                        {"want_mean", chart.values.centre},
                        {"want_mr_bar", chart.meanMovingRange},
                        {"want_ucl", chart.values.upper},
                        {"want_lcl", chart.values.lower},
                        {"want_mr_ucl", chart.movingRangeUpper}},
                       {}};
    });
}

Result<Outcome> chartSubgroups(const Row& row)
{
    std::vector<std::vector<double>> subgroups;
    for (const auto& part : split(row.text("subgroups"), ';')) {
        std::vector<double> subgroup;
        for (const auto& word : split(part, ' '))
            if (!word.empty())
                subgroup.push_back(readNumber(word));
        subgroups.push_back(std::move(subgroup));
    }
    return subgroupChart(subgroups).map([](const SubgroupChart& chart) {
        return Outcome{"ok",
                       {{"want_grand_mean", chart.grandMean},
                        {"want_mean_range", chart.meanRange},
                        {"want_ucl", chart.means.upper},
                        {"want_lcl", chart.means.lower},
                        {"want_r_ucl", chart.rangeUpper},
                        {"want_r_lcl", chart.rangeLower}},
                       {}};
    });
}

Result<Outcome> chartKnownSigma(const Row& row)
{
    return knownSigmaLimits(row.number("center"), row.number("sigma"), whole(row, "n"), row.number("k")).map([](const ControlLimits& limits) {
        return Outcome{"ok", {{"want_lcl", limits.lower}, {"want_ucl", limits.upper}}, {}};
    });
}

}  // namespace

std::vector<Topic> acceptTopics()
{
    return {{"frequency", frequency},
            {"acceptance_forms", acceptanceForms},
            {"pwl_from_q", pwlFromQ},
            {"pwl_lots", pwlLots},
            {"pwl_q_exact", pwlQ},
            {"pwl_q_memory", pwlQ},
            {"pwl_t5080", pwlQRange},
            {"pwl_qmax", pwlQmax},
            {"published_but_wrong/pwl_q", wrongPwlQ},
            {"pay_factor", payFactorTopic},
            {"retest_ids", retestIds},
            {"outlier_tests", outlierTests},
            {"grubbs_critical", grubbsCritical},
            {"published_but_wrong/grubbs", wrongGrubbs},
            {"dixon_r11", dixonR11},
            {"f_test", fTest},
            {"t_test", tTest},
            {"control_chart_constants", chartConstants},
            {"control_chart_individuals", chartIndividuals},
            {"control_chart_subgroups", chartSubgroups},
            {"control_chart_xbar", chartKnownSigma}};
}

}  // namespace groundcount::tables
