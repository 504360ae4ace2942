#include "book/lot_comparison.h"

#include "book/canonical.h"
#include "book/kinds.h"
#include "book/row_reader.h"
#include "method/decimal.h"
#include "method/limit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <string_view>
#include <tuple>
#include <utility>

namespace groundcount::book {

namespace {

bool isDecided(const TestRow& t) { return t.state == TestState::Pass || t.state == TestState::Fail; }

bool inOrder(const TestRow* a, const TestRow* b)
{
    return std::tie(a->startedAt, a->number, a->id) < std::tie(b->startedAt, b->number, b->id);
}

Result<double> numberOf(const std::string& text, const std::string& thing)
{
    const auto decimal = Decimal::parse(text);
    return decimal ? Result<double>(decimal->value()) : refused(thing + " is \"" + text + "\"; it must be a decimal number.");
}

/// Random decided tests of a lot, by what tells them apart; a test for which that is "" is left out.
template <class Name>
Result<std::map<std::string, TestSample>> samplesBy(std::span<const TestRow> tests, const std::string& lot, Name name)
{
    std::map<std::string, TestSample> samples;
    std::vector<const TestRow*> mine;
    for (const TestRow& t : tests)
        if (isDecided(t) && t.purpose == TestPurpose::Random && (lot.empty() || t.lot == lot) && !t.compactionPct.empty())
            mine.push_back(&t);
    std::sort(mine.begin(), mine.end(), inOrder);
    for (const TestRow* t : mine) {
        const std::string called = name(*t);
        if (called.empty())
            continue;
        const auto value = numberOf(t->compactionPct, "The percent compaction of test " + t->number);
        if (!value)
            return tl::unexpected(value.error());
        TestSample& sample = samples[called];
        sample.name = called;
        sample.tests.push_back(t);
        sample.values.push_back(*value);
    }
    return samples;
}

bool isPlaced(const TestRow& t) { return t.north != 0 || t.east != 0; }

/// Tests of one lift in squares as wide as a pair may lie apart, so that only the nine squares around a test are looked through.
class Squares {
public:
    Squares(const std::vector<const TestRow*>& tests, double side) : m_side(side)
    {
        for (std::size_t i = 0; i < tests.size(); ++i)
            if (isPlaced(*tests[i]))
                m_tests[key(*tests[i], 0, 0)].push_back(i);
    }

    template <class Use>
    void around(const TestRow& test, Use use) const
    {
        for (const double north : {-1.0, 0.0, 1.0})
            for (const double east : {-1.0, 0.0, 1.0})
                if (const auto square = m_tests.find(key(test, north, east)); square != m_tests.end())
                    std::for_each(square->second.begin(), square->second.end(), use);
    }

private:
    using Key = std::tuple<std::string_view, double, double>;  // lift, then the square's numbers from south and west
    Key key(const TestRow& t, double north, double east) const
    {
        return {t.lift, std::floor(t.north / m_side) + north, std::floor(t.east / m_side) + east};
    }

    double m_side;
    std::map<Key, std::vector<std::size_t>> m_tests;
};

void pairUp(Comparison& c, double metresPerGridUnit, Length sideBySide)
{
    c.pairsX.name = c.x.name;
    c.pairsY.name = c.y.name;
    const Squares squares(c.y.tests, sideBySide.metres() / metresPerGridUnit + 1);  // wider by one unit than the farthest pair: room for rounding
    std::vector<bool> used(c.y.tests.size());
    for (std::size_t i = 0; i < c.x.tests.size(); ++i) {
        const TestRow& x = *c.x.tests[i];
        if (!isPlaced(x))
            continue;
        constexpr auto kNone = std::numeric_limits<double>::infinity();
        std::pair<double, std::size_t> nearest{kNone, 0};
        squares.around(x, [&](std::size_t j) {
            const TestRow& y = *c.y.tests[j];
            const double metres = std::hypot(x.north - y.north, x.east - y.east) * metresPerGridUnit;
            if (!used[j] && atMost(metres, sideBySide.metres()))
                nearest = std::min(nearest, {metres, j});
        });
        if (nearest.first == kNone)
            continue;
        const std::size_t j = nearest.second;
        used[j] = true;
        c.pairsX.tests.push_back(&x);
        c.pairsX.values.push_back(c.x.values[i]);
        c.pairsY.tests.push_back(c.y.tests[j]);
        c.pairsY.values.push_back(c.y.values[j]);
    }
}

Comparison compared(const TestSample& x, const TestSample& y, double metresPerGridUnit, const ComparisonRules& rules)
{
    Comparison c;
    c.x = x;
    c.y = y;
    c.variances = figureFrom(method::compareVariances(x.values, y.values, rules.alpha));
    const bool pooled = c.variances.value && !c.variances.value->different;
    c.form = pooled ? method::MeanComparison::Pooled : method::MeanComparison::Unequal;
    c.means = figureFrom(pooled ? method::comparePooled(x.values, y.values, rules.alpha) : method::compareUnequal(x.values, y.values, rules.alpha));
    pairUp(c, metresPerGridUnit, rules.sideBySide);
    c.paired = figureFrom(method::comparePaired(c.pairsX.values, c.pairsY.values, rules.alpha, rules.leastPairs));
    return c;
}

}  // namespace

Result<ComparisonRules> comparisonRules(const method::RuleSet& rules)
{
    ComparisonRules r;
    double pairs = 0, distance = 0;
    for (const auto& [key, into] : {std::pair{"compare.level", &r.alpha}, {"compare.pairs", &pairs}, {"compare.distance", &distance}}) {
        const auto found = rules.limits.find(key);
        if (found == rules.limits.end())
            return refused("Rule set \"" + rules.name + "\": limit \"" + key + "\" is missing.");
        *into = found->second.value.value();
    }
    if (!(r.alpha > 0 && r.alpha < 50))
        return refused("Rule set \"" + rules.name + "\": limit \"compare.level\" must be above 0 and below 50 %.");
    if (!(pairs >= 2 && pairs <= 1000))
        return refused("Rule set \"" + rules.name + "\": limit \"compare.pairs\" must be 2 to 1000 pairs.");
    r.alpha /= 100;
    r.leastPairs = static_cast<int>(pairs);
    r.sideBySide = rules.limits.find("compare.distance")->second.unit == "m" ? Length::metres(distance) : Length::feet(distance);
    return r;
}

Result<std::vector<Comparison>> compareGauges(std::span<const TestRow> tests, const std::string& lot, double metresPerGridUnit, const ComparisonRules& rules)
{
    const auto samples = samplesBy(tests, lot, [](const TestRow& t) { return t.gaugeName.empty() ? t.gauge : t.gaugeName; });
    if (!samples)
        return tl::unexpected(samples.error());
    std::vector<Comparison> all;
    for (auto x = samples->begin(); x != samples->end(); ++x)
        for (auto y = std::next(x); y != samples->end(); ++y)
            all.push_back(compared(x->second, y->second, metresPerGridUnit, rules));
    return all;
}

Result<std::vector<Comparison>> compareParties(std::span<const TestRow> tests, const std::string& lot, const std::map<std::string, std::string>& parties,
                                               double metresPerGridUnit, const ComparisonRules& rules)
{
    const auto samples = samplesBy(tests, lot, [&](const TestRow& t) {
        const auto party = parties.find(t.person);
        return party == parties.end() ? std::string() : party->second;
    });
    if (!samples)
        return tl::unexpected(samples.error());
    const auto contractor = samples->find("contractor"), agency = samples->find("agency");
    if (contractor == samples->end() || agency == samples->end())
        return std::vector<Comparison>();
    return std::vector{compared(contractor->second, agency->second, metresPerGridUnit, rules)};
}

Result<std::map<std::string, std::string>> partiesOf(const Store& store)
{
    struct Row {
        std::string id, body;
    };
    const auto rows = readAll<Row>(store.database(), "SELECT p.id, r.body FROM person_row p JOIN record r ON r.hash = p.hash", {}, [](RowReader row, Row& r) { row >> r.id >> r.body; });
    if (!rows)
        return tl::unexpected(rows.error());
    std::map<std::string, std::string> parties;
    for (const Row& row : *rows)
        if (const auto body = readJson(row.body); body && !textAt(*body, "party").empty())
            parties.emplace(row.id, textAt(*body, "party"));
    return parties;
}

Result<MoistureTrend> moistureTrend(std::span<const TestRow> tests, const std::string& lot, int k)
{
    MoistureTrend trend;
    for (const TestRow& t : tests)
        if (isDecided(t) && t.purpose != TestPurpose::Directed && (lot.empty() || t.lot == lot) && !t.contentPct.empty() && !t.optimumPct.empty())
            trend.tests.push_back(&t);
    std::sort(trend.tests.begin(), trend.tests.end(), inOrder);
    for (const TestRow* t : trend.tests) {
        const auto content = numberOf(t->contentPct, "The water content of test " + t->number);
        const auto optimum = numberOf(t->optimumPct, "The optimum of test " + t->number);
        if (!content || !optimum)
            return tl::unexpected(content ? optimum.error() : content.error());
        trend.points.push_back(*content - *optimum);
    }
    const auto window = static_cast<std::size_t>(k);
    for (std::size_t i = 0; i + window <= trend.points.size(); ++i)
        if (const auto mean = method::meanOf(std::span(trend.points).subspan(i, window)))
            trend.movingMeans.push_back(*mean);
    trend.chart = figureFrom(method::individualsChart(trend.points));
    return trend;
}

}  // namespace groundcount::book
