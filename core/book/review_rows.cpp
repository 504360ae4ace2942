#include "book/local_time.h"
#include "book/retest_chain.h"
#include "book/review_findings.h"
#include "book/row_reader.h"
#include "method/limit.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <unordered_map>

namespace groundcount::book {

namespace {

std::string feet(Length length) { return shownNumber(std::round(length.feet() * 10) / 10) + " ft"; }

void reviewPosition(std::uint32_t at, const CheckedTest& t, const ReviewRules& rules, Findings& into)
{
    if (t.isByTape)
        return;
    if (t.north == 0 && t.east == 0)
        return into.add(at, Unusual::PositionPoor, "No position is recorded.");
    if (t.fixes < rules.fixes)
        into.add(at, Unusual::PositionPoor, std::to_string(t.fixes) + " fixes were averaged; at least " + shownNumber(rules.fixes) + " are asked for.");
    if (t.sigmaNorthM && t.sigmaEastM) {
        const Length radius = Length::metres(2 * std::hypot(*t.sigmaNorthM, *t.sigmaEastM));
        if (!atMost(radius.metres(), rules.accuracy.metres()))
            into.add(at, Unusual::PositionPoor, "The place is known to " + feet(radius) + " (two sigma); at most " + feet(rules.accuracy) + " is asked for.");
    }
}

void reviewRetest(std::uint32_t at, const CheckedTests& tests, double metresPerGridUnit, const ReviewRules& rules, Findings& into)
{
    const CheckedTest& t = tests.rows[at];
    if (t.retestOf.empty())
        return;
    const std::uint32_t of = tests.find(t.retestOf);
    if (of == kNoTest || tests.rows[of].state == TestState::Void)
        return into.add(at, Unusual::RetestElsewhere, "The failing test that it names is void or not in the book.");
    const CheckedTest& parent = tests.rows[of];
    const auto lift = [&](const CheckedTest& one) {
        const auto found = tests.liftNumbers.find(tests.names[one.lift]);
        return std::to_string(found == tests.liftNumbers.end() ? 0 : found->second);
    };
    if (parent.lift != t.lift)
        into.add(at, Unusual::RetestElsewhere, "It lies in lift " + lift(t) + ", test " + parent.number + " in lift " + lift(parent) + ".");
    const auto away = distanceBetween(t, parent, metresPerGridUnit);
    if (away && !atMost(away->metres(), rules.retestDistance.metres()))
        into.add(at, Unusual::RetestElsewhere, "It lies " + feet(*away) + " from test " + parent.number + "; at most " + feet(rules.retestDistance) + " is allowed.");
}

/// The newest paper on or before a day.
struct Paper {
    std::string gauge, on, expires, result;
};

const Paper* inForce(const std::vector<Paper>& papers, const std::string& of, const std::string& day)
{
    const Paper* newest = nullptr;
    for (const Paper& p : papers)
        if (p.gauge == of && p.on <= day && (!newest || p.on >= newest->on))
            newest = &p;
    return newest;
}

/// The tests of a day mostly stand together: the answer for a gauge or person holds until the day changes.
class PapersOfDay {
public:
    PapersOfDay(const std::vector<Paper>& papers, std::size_t names) : m_papers(papers), m_known(names) {}
    /// @param place of the gauge or person among the names
    const Paper* inForce(std::uint32_t place, const std::string& of, const std::string& day)
    {
        auto& [knownDay, paper] = m_known[place];
        if (knownDay != day) {
            knownDay = day;
            paper = book::inForce(m_papers, of, day);
        }
        return paper;
    }

private:
    const std::vector<Paper>& m_papers;
    std::vector<std::pair<std::string, const Paper*>> m_known;
};

struct Standard {
    std::string at;
    std::optional<double> densityPct, moisturePct;
    bool accepted = false;
};

void reviewStandard(std::uint32_t at, const CheckedTest& t, const Standard& s, const ReviewRules& rules, Findings& into)
{
    if (!s.accepted)
        into.add(at, Unusual::StandardCountOut, "The standard count was not accepted.");
    for (const auto& [name, pct, limit] : {std::tuple{"density", s.densityPct, rules.standardDensityPct}, {"moisture", s.moisturePct, rules.standardMoisturePct}})
        if (pct && !atMost(std::fabs(*pct), limit))
            into.add(at, Unusual::StandardCountOut, std::string("The ") + name + " standard count is off by " + shownNumber(*pct) + " %; at most " + shownNumber(limit) + " % is allowed.");
    const double hours = static_cast<double>(millisecondsOf(t.startedAt) - millisecondsOf(s.at)) / 3.6e6;
    if (!(hours <= rules.standardAgeHours))
        into.add(at, Unusual::StandardCountOut, "The standard count is " + shownNumber(std::floor(hours)) + " hours old; at most " + shownNumber(rules.standardAgeHours) + " are allowed.");
}

/// Some hundred tests lean on one standard count: each is looked up once.
Result<void> reviewStandards(const Store& store, const CheckedTests& tests, const ReviewRules& rules, Findings& into)
{
    std::vector<std::optional<std::vector<Standard>>> known(tests.names.size());
    for (std::uint32_t at = 0; at < tests.rows.size(); ++at) {
        const CheckedTest& t = tests.rows[at];
        const std::string& hash = tests.names[t.standardCount];
        if (hash.empty())
            continue;
        auto& standards = known[t.standardCount];
        if (!standards) {
            auto found = readAll<Standard>(store.database(),
                "SELECT c.at, c.density_deviation_pct, c.moisture_deviation_pct, c.accepted FROM record r JOIN standard_count_row c ON c.id = r.subject WHERE r.hash = ?1",
                {hash}, [](RowReader row, Standard& s) { row >> s.at >> s.densityPct >> s.moisturePct >> s.accepted; });
            if (!found)
                return tl::unexpected(found.error());
            standards = std::move(*found);
        }
        for (const Standard& s : *standards)
            reviewStandard(at, t, s, rules, into);
    }
    return {};
}

}  // namespace

void reviewRows(const CheckedTests& tests, double metresPerGridUnit, const ReviewRules& rules, Findings& into)
{
    std::unordered_map<std::string, std::uint32_t> counts;
    counts.reserve(tests.rows.size());
    for (std::uint32_t at = 0; at < tests.rows.size(); ++at) {
        const CheckedTest& t = tests.rows[at];
        if (t.state == TestState::Void)
            continue;
        if (!t.overrides.empty())
            into.add(at, Unusual::Overridden, "Overridden: " + t.overrides + ".");
        reviewPosition(at, t, rules, into);
        reviewRetest(at, tests, metresPerGridUnit, rules, into);
        if (t.densityCount.empty() || t.moistureCount.empty())
            continue;
        const auto [first, isNew] = counts.emplace(tests.names[t.gauge] + t.day + "/" + t.densityCount + "/" + t.moistureCount, at);
        if (!isNew)
            into.add(at, Unusual::SameCountsTwice, "Counts " + t.densityCount + " and " + t.moistureCount + " are those of test " + tests.rows[first->second].number + " by the same gauge that day.");
    }
}

Result<void> reviewPapers(const Store& store, const CheckedTests& tests, const ReviewRules& rules, Findings& into)
{
    const auto papers = [&](const char* sql) {
        return readAll<Paper>(store.database(), sql, {}, [](RowReader row, Paper& p) { row >> p.gauge >> p.on >> p.expires >> p.result; });
    };
    const auto calibrations = papers("SELECT gauge, on_date, expires, '' FROM calibration_row");
    const auto leaks = papers("SELECT gauge, on_date, expires, result FROM leak_test_row");
    const auto people = papers("SELECT id, '', certificate_expires, name FROM person_row");
    if (!calibrations || !leaks || !people)
        return tl::unexpected(!calibrations ? calibrations.error() : !leaks ? leaks.error() : people.error());
    PapersOfDay gauges(*calibrations, tests.names.size()), leakTests(*leaks, tests.names.size()), certificates(*people, tests.names.size());
    for (std::uint32_t at = 0; at < tests.rows.size(); ++at) {
        const CheckedTest& t = tests.rows[at];
        const auto expired = [&](const Paper* p) { return p && !p->expires.empty() && p->expires < t.day; };
        if (const Paper* p = gauges.inForce(t.gauge, tests.names[t.gauge], t.day); expired(p))
            into.add(at, Unusual::PapersExpired, "The gauge's calibration expired on " + p->expires + ".");
        if (const Paper* p = leakTests.inForce(t.gauge, tests.names[t.gauge], t.day); expired(p))
            into.add(at, Unusual::PapersExpired, "The gauge's leak test expired on " + p->expires + ".");
        else if (p && p->result == "leak")
            into.add(at, Unusual::PapersExpired, "The gauge's leak test of " + p->on + " found a leak.");
        if (const Paper* p = certificates.inForce(t.person, tests.names[t.person], t.day); expired(p))
            into.add(at, Unusual::PapersExpired, "The certificate of " + p->result + " expired on " + p->expires + ".");
    }
    return reviewStandards(store, tests, rules, into);
}

}  // namespace groundcount::book
