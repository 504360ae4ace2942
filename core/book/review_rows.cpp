#include "book/local_time.h"
#include "book/retest_chain.h"
#include "book/review_findings.h"
#include "book/row_reader.h"
#include "method/limit.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace groundcount::book {

namespace {

std::string feet(Length length) { return shownNumber(std::round(length.feet() * 10) / 10) + " ft"; }

void reviewPosition(const TestRow& t, const ReviewRules& rules, Findings& into)
{
    if (t.fixKind == "by tape")
        return;
    if (t.north == 0 && t.east == 0)
        return into.add(t.id, Unusual::PositionPoor, "No position is recorded.");
    if (t.fixes < rules.fixes)
        into.add(t.id, Unusual::PositionPoor, std::to_string(t.fixes) + " fixes were averaged; at least " + shownNumber(rules.fixes) + " are asked for.");
    if (t.sigmaNorthM && t.sigmaEastM) {
        const Length radius = Length::metres(2 * std::hypot(*t.sigmaNorthM, *t.sigmaEastM));
        if (!atMost(radius.metres(), rules.accuracy.metres()))
            into.add(t.id, Unusual::PositionPoor, "The place is known to " + feet(radius) + " (two sigma); at most " + feet(rules.accuracy) + " is asked for.");
    }
}

void reviewRetest(const TestRow& t, const RetestChains& chains, const ReviewRules& rules, Findings& into)
{
    if (t.retestOf.empty())
        return;
    const TestRow* parent = into.test(t.retestOf);
    if (!parent)
        return into.add(t.id, Unusual::RetestElsewhere, "The failing test that it names is void or not in the book.");
    if (parent->lift != t.lift)
        into.add(t.id, Unusual::RetestElsewhere, "It lies in lift " + std::to_string(t.liftNumber) + ", test " + parent->number + " in lift " + std::to_string(parent->liftNumber) + ".");
    const auto away = chains.distanceToParent(t);
    if (away && !atMost(away->metres(), rules.retestDistance.metres()))
        into.add(t.id, Unusual::RetestElsewhere, "It lies " + feet(*away) + " from test " + parent->number + "; at most " + feet(rules.retestDistance) + " is allowed.");
}

/// The newest paper on or before a day.
struct Paper {
    std::string gauge, on, expires, result;
};

const Paper* inForce(const std::vector<Paper>& papers, const std::string& gauge, const std::string& day)
{
    const Paper* newest = nullptr;
    for (const Paper& p : papers)
        if (p.gauge == gauge && p.on <= day && (!newest || p.on >= newest->on))
            newest = &p;
    return newest;
}

}  // namespace

void reviewRows(std::span<const TestRow> tests, double metresPerGridUnit, const ReviewRules& rules, Findings& into)
{
    const RetestChains chains(tests, metresPerGridUnit, rules.retestDistance);
    std::map<std::string, const TestRow*> counts;
    for (const TestRow& t : tests) {
        if (t.state == TestState::Void)
            continue;
        if (!t.overrides.empty())
            into.add(t.id, Unusual::Overridden, "Overridden: " + t.overrides + ".");
        reviewPosition(t, rules, into);
        reviewRetest(t, chains, rules, into);
        if (t.densityCount.empty() || t.moistureCount.empty())
            continue;
        const auto [first, isNew] = counts.emplace(t.gauge + localDay(t.startedAt, t.offsetMinutes) + "/" + t.densityCount + "/" + t.moistureCount, &t);
        if (!isNew)
            into.add(t.id, Unusual::SameCountsTwice, "Counts " + t.densityCount + " and " + t.moistureCount + " are those of test " + first->second->number + " by the same gauge that day.");
    }
}

Result<void> reviewPapers(const Store& store, std::span<const TestRow> tests, const ReviewRules& rules, Findings& into)
{
    const auto papers = [&](const char* sql) {
        return readAll<Paper>(store.database(), sql, {}, [](RowReader row, Paper& p) { row >> p.gauge >> p.on >> p.expires >> p.result; });
    };
    const auto calibrations = papers("SELECT gauge, on_date, expires, '' FROM calibration_row");
    const auto leaks = papers("SELECT gauge, on_date, expires, result FROM leak_test_row");
    const auto people = papers("SELECT id, '', certificate_expires, name FROM person_row");
    if (!calibrations || !leaks || !people)
        return tl::unexpected(!calibrations ? calibrations.error() : !leaks ? leaks.error() : people.error());
    for (const TestRow& t : tests) {
        const std::string day = localDay(t.startedAt, t.offsetMinutes);
        const auto expired = [&](const Paper* p) { return p && !p->expires.empty() && p->expires < day; };
        if (const Paper* p = inForce(*calibrations, t.gauge, day); expired(p))
            into.add(t.id, Unusual::PapersExpired, "The gauge's calibration expired on " + p->expires + ".");
        if (const Paper* p = inForce(*leaks, t.gauge, day); expired(p))
            into.add(t.id, Unusual::PapersExpired, "The gauge's leak test expired on " + p->expires + ".");
        else if (p && p->result == "leak")
            into.add(t.id, Unusual::PapersExpired, "The gauge's leak test of " + p->on + " found a leak.");
        if (const Paper* p = inForce(*people, t.person, day); expired(p))
            into.add(t.id, Unusual::PapersExpired, "The certificate of " + p->result + " expired on " + p->expires + ".");
    }
    struct Standard {
        std::string test, at;
        std::optional<double> densityPct, moisturePct;
        bool accepted = false;
    };
    const auto standards = readAll<Standard>(store.database(),
        "SELECT t.id, c.at, c.density_deviation_pct, c.moisture_deviation_pct, c.accepted FROM test_row t"
        " JOIN record r ON r.hash = t.standard_count JOIN standard_count_row c ON c.id = r.subject WHERE t.standard_count <> ''",
        {}, [](RowReader row, Standard& s) { row >> s.test >> s.at >> s.densityPct >> s.moisturePct >> s.accepted; });
    if (!standards)
        return tl::unexpected(standards.error());
    for (const Standard& s : *standards) {
        const TestRow* t = into.test(s.test);
        if (!t)
            continue;
        if (!s.accepted)
            into.add(s.test, Unusual::StandardCountOut, "The standard count was not accepted.");
        for (const auto& [name, pct, limit] : {std::tuple{"density", s.densityPct, rules.standardDensityPct}, {"moisture", s.moisturePct, rules.standardMoisturePct}})
            if (pct && !atMost(std::fabs(*pct), limit))
                into.add(s.test, Unusual::StandardCountOut, std::string("The ") + name + " standard count is off by " + shownNumber(*pct) + " %; at most " + shownNumber(limit) + " % is allowed.");
        const double hours = static_cast<double>(millisecondsOf(t->startedAt) - millisecondsOf(s.at)) / 3.6e6;
        if (!(hours <= rules.standardAgeHours))
            into.add(s.test, Unusual::StandardCountOut, "The standard count is " + shownNumber(std::floor(hours)) + " hours old; at most " + shownNumber(rules.standardAgeHours) + " are allowed.");
    }
    return {};
}

}  // namespace groundcount::book
