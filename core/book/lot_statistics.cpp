#include "book/lot_statistics.h"

#include "book/retest_chain.h"
#include "method/decimal.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace groundcount::book {

namespace {

const std::string& wordAt(const method::RuleSet& rules, const char* key)
{
    static const std::string kNone;
    const auto found = rules.choices.find(key);
    return found == rules.choices.end() ? kNone : found->second.word;
}

std::optional<double> valueAt(const method::RuleSet& rules, const char* key)
{
    const auto found = rules.limits.find(key);
    return found == rules.limits.end() ? std::nullopt : std::optional(found->second.value.value());
}

std::optional<int> placesAt(const method::RuleSet& rules, const char* key)
{
    const auto unit = Decimal::parse(wordAt(rules, key));
    return unit ? std::optional(unit->places()) : std::nullopt;  // "none" is no decimal
}

bool isDecided(TestState state) { return state == TestState::Pass || state == TestState::Fail; }

Result<std::optional<double>> percentOf(const std::string& text, const std::string& thing)
{
    if (text.empty())
        return std::optional<double>();
    const auto decimal = Decimal::parse(text);
    if (!decimal)
        return refused(thing + " is \"" + text + "\"; it must be a decimal number.");
    return std::optional(decimal->value());
}

bool inOrder(const TestRow* a, const TestRow* b)
{
    return std::tie(a->startedAt, a->number, a->id) < std::tie(b->startedAt, b->number, b->id);
}

/// Sorts the tests of a lot into counts and the values of its statistics.
class Sorting {
public:
    Sorting(LotStatistics& into, const RetestChains& chains, Retested retested) : m_into(into), m_chains(chains), m_retested(retested) {}

    Result<void> add(const TestRow& test)
    {
        if (test.state == TestState::Void)
            return {};
        m_into.random += test.purpose == TestPurpose::Random ? 1 : 0;
        m_into.directed += test.purpose == TestPurpose::Directed ? 1 : 0;
        m_into.retests += test.purpose == TestPurpose::Retest ? 1 : 0;
        m_into.waiting += test.state == TestState::Waiting ? 1 : 0;
        m_into.informationOnly += test.state == TestState::InformationOnly ? 1 : 0;
        if (m_chains.isOpen(test))
            m_into.openFailures.push_back(&test);
        if (test.purpose != TestPurpose::Random || test.state == TestState::Open)
            return {};
        ++m_into.made;
        if (!isDecided(test.state)) {
            m_into.leftOut.push_back(test.number + " (" + word(test.state) + ")");
            return {};
        }
        const TestRow* closing = m_chains.closedBy(test);
        if (closing && m_retested == Retested::Nothing) {
            m_into.leftOut.push_back(test.number + " (failed, closed by " + closing->number + ")");
            return {};
        }
        const bool replaced = closing && m_retested == Retested::PassingRetest;
        const TestRow& used = replaced ? *closing : test;
        const auto value = percentOf(used.compactionPct, "The percent compaction of test " + used.number);
        if (!value)
            return tl::unexpected(value.error());
        if (!*value)
            m_into.leftOut.push_back(test.number + " (no percent compaction)");
        else
            m_into.values.push_back({&used, **value, replaced ? test.number : std::string()});
        return {};
    }

private:
    LotStatistics& m_into;
    const RetestChains& m_chains;
    Retested m_retested;
};

}  // namespace

Result<StatisticsRules> statisticsRules(const method::RuleSet& rules)
{
    StatisticsRules s;
    for (const char* key : {"lot.retested", "pwl.table", "pwl.mean", "pwl.sd", "pwl.q", "pwl.tie"})
        if (wordAt(rules, key).empty())
            return refused("Rule set \"" + rules.name + "\": choice \"" + key + "\" is missing.");
    const std::string& retested = wordAt(rules, "lot.retested");
    s.retested = retested == "nothing" ? Retested::Nothing : retested == "the failed test" ? Retested::FailedTest : Retested::PassingRetest;
    const std::string& table = wordAt(rules, "pwl.table");
    s.chain.table = table == "exact" ? method::PwlTable::Exact : table == "nearest whole" ? method::PwlTable::NearestWhole : method::PwlTable::NextHigherWhole;
    s.chain.meanPlaces = placesAt(rules, "pwl.mean");
    s.chain.sdPlaces = placesAt(rules, "pwl.sd");
    s.chain.qPlaces = placesAt(rules, "pwl.q");
    s.chain.tie = wordAt(rules, "pwl.tie") == "half up" ? TieRule::HalfUp : TieRule::HalfEven;
    const auto moving = valueAt(rules, "lot.moving_mean");
    if (!moving || !(*moving >= 2 && *moving <= 1000))
        return refused("Rule set \"" + rules.name + "\": limit \"lot.moving_mean\" must be 2 to 1000 tests.");
    s.movingMean = static_cast<int>(*moving);
    const auto level = valueAt(rules, "lot.outlier_level");
    if (!level || !(*level > 0 && *level < 50))
        return refused("Rule set \"" + rules.name + "\": limit \"lot.outlier_level\" must be above 0 and below 50 %.");
    s.outlierLevel = *level / 100;
    const auto distance = valueAt(rules, "retest.distance");
    if (!distance)
        return refused("Rule set \"" + rules.name + "\": limit \"retest.distance\" is missing.");
    s.retestDistance = rules.limits.find("retest.distance")->second.unit == "m" ? Length::metres(*distance) : Length::feet(*distance);
    return s;
}

Result<LotStatistics> lotStatistics(const LotRow& lot, std::span<const LiftRow> lifts, std::span<const TestRow> tests,
                                    double metresPerGridUnit, const StatisticsRules& rules)
{
    LotStatistics s;
    s.lot = lot.id;
    s.name = lot.name;
    s.lifts = static_cast<int>(std::count_if(lifts.begin(), lifts.end(), [&](const LiftRow& l) { return l.lot == lot.id; }));
    s.required = s.lifts * lot.testsPerLift;
    std::vector<const TestRow*> mine;
    for (const TestRow& t : tests)
        if (t.lot == lot.id)
            mine.push_back(&t);
    std::sort(mine.begin(), mine.end(), inOrder);
    const RetestChains chains(mine, metresPerGridUnit, rules.retestDistance);
    Sorting sorting(s, chains, rules.retested);
    for (const TestRow* t : mine)
        if (auto added = sorting.add(*t); !added)
            return tl::unexpected(added.error());
    const auto low = percentOf(lot.minimumPctText, "The minimum percent compaction of lot " + lot.name);
    const auto high = percentOf(lot.maximumPctText, "The maximum percent compaction of lot " + lot.name);
    if (!low || !high)
        return tl::unexpected(low ? high.error() : low.error());
    s.limits = {*low, *high};
    std::vector<double> values;
    for (const LotValue& v : s.values)
        values.push_back(v.compactionPct);
    s.mean = figureFrom(method::meanOf(values));
    s.spread = figureFrom(method::spreadOf(values));
    s.pwl = figureFrom(method::lotPwl(values, s.limits, rules.chain));
    s.outlier = figureFrom(method::testLargestDeviation(values, rules.outlierLevel, method::Sides::Two));
    const auto k = static_cast<std::size_t>(rules.movingMean);
    for (std::size_t i = 0; i + k <= values.size(); ++i)
        if (const auto mean = method::meanOf(std::span(values).subspan(i, k)))
            s.movingMeans.push_back(*mean);
    return s;
}

Result<std::vector<ChartOfTests>> controlCharts(std::span<const TestRow> tests, const std::string& lot)
{
    std::map<std::tuple<std::string_view, std::string_view, std::string_view>, std::vector<const TestRow*>> groups;
    for (const TestRow& t : tests)
        if (isDecided(t.state) && t.purpose != TestPurpose::Directed && (lot.empty() || t.lot == lot))
            groups[{t.material, t.proctor, t.gauge}].push_back(&t);
    std::vector<ChartOfTests> charts;
    for (auto& [key, group] : groups) {
        ChartOfTests one;
        one.material = std::get<0>(key);
        one.proctor = std::get<1>(key);
        one.gauge = std::get<2>(key);
        std::sort(group.begin(), group.end(), inOrder);
        std::vector<double> values;
        for (const TestRow* t : group) {
            const auto value = percentOf(t->compactionPct, "The percent compaction of test " + t->number);
            if (!value)
                return tl::unexpected(value.error());
            if (*value) {
                values.push_back(**value);
                one.tests.push_back(t);
            }
        }
        one.chart = figureFrom(method::individualsChart(values));
        if (one.chart.value) {
            const auto& chart = *one.chart.value;
            for (std::size_t i = 0; i < values.size(); ++i)
                if (values[i] < chart.values.lower || values[i] > chart.values.upper || (i > 0 && chart.movingRanges[i - 1] > chart.movingRangeUpper))
                    one.outside.push_back(i);
        }
        charts.push_back(std::move(one));
    }
    return charts;
}

}  // namespace groundcount::book
