#include "book/review.h"

#include "book/review_findings.h"
#include "book/state_query.h"

#include <algorithm>
#include <tuple>

namespace groundcount::book {

namespace {

Result<ReviewRules> reviewRules(const method::RuleSet& rules)
{
    ReviewRules r;
    for (const auto& [key, into] : {std::pair{"standard.density", &r.standardDensityPct}, {"standard.moisture", &r.standardMoisturePct},
                                    {"standard.age", &r.standardAgeHours}, {"place.fixes", &r.fixes}}) {
        const auto found = rules.limits.find(key);
        if (found == rules.limits.end())
            return refused("Rule set \"" + rules.name + "\": limit \"" + key + "\" is missing.");
        *into = found->second.value.value();
    }
    for (const auto& [key, into] : {std::pair{"place.accuracy", &r.accuracy}, {"retest.distance", &r.retestDistance}}) {
        const auto found = rules.limits.find(key);
        if (found == rules.limits.end())
            return refused("Rule set \"" + rules.name + "\": limit \"" + key + "\" is missing.");
        *into = found->second.unit == "m" ? Length::metres(found->second.value.value()) : Length::feet(found->second.value.value());
    }
    return r;
}

}  // namespace

const char* word(Unusual kind)
{
    switch (kind) {
    case Unusual::Overridden: return "check overridden";
    case Unusual::AmendedAfterVerdict: return "amended after the verdict";
    case Unusual::PapersExpired: return "papers expired";
    case Unusual::StandardCountOut: return "standard count out";
    case Unusual::ClearanceNotMet: return "clearance not met";
    case Unusual::PositionPoor: return "position poor";
    case Unusual::DuplicateReading: return "duplicate reading";
    case Unusual::ImpossibleTime: return "impossible time";
    case Unusual::SameCountsTwice: return "same counts twice";
    case Unusual::RetestElsewhere: break;
    }
    return "retest elsewhere";
}

Findings::Findings(const CheckedTests& tests) : m_tests(tests) {}

void Findings::add(std::uint32_t test, Unusual kind, const std::string& sentence)
{
    if (test == kNoTest || m_tests.rows[test].state == TestState::Void)
        return;
    std::string& what = m_found[{test, kind}];
    if (what.find(sentence) == std::string::npos)
        what += (what.empty() ? "" : " ") + sentence;
}

std::vector<UnusualLine> Findings::lines() const
{
    std::vector<UnusualLine> lines;
    lines.reserve(m_found.size());
    for (const auto& [of, what] : m_found) {
        const CheckedTest& test = m_tests.rows[of.first];
        lines.push_back({of.second, test.id, test.number, m_tests.names[test.lot], test.startedAt, what});
    }
    std::sort(lines.begin(), lines.end(), [](const UnusualLine& a, const UnusualLine& b) { return std::tie(a.at, a.number, a.test, a.kind) < std::tie(b.at, b.number, b.test, b.kind); });
    return lines;
}

Result<std::vector<UnusualLine>> unusual(const Store& store, const method::RuleSet& rules)
{
    const auto settings = reviewRules(rules);
    if (!settings)
        return tl::unexpected(settings.error());
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    const auto tests = checkedTests(store, job->metresPerGridUnit);
    if (!tests)
        return tl::unexpected(tests.error());
    const auto facts = sealedFacts(store, *tests);
    if (!facts)
        return tl::unexpected(facts.error());
    Findings findings(*tests);
    reviewRows(*tests, job->metresPerGridUnit, *settings, findings);
    if (auto done = reviewPapers(store, *tests, *settings, findings); !done)
        return tl::unexpected(done.error());
    reviewSealing(*facts, findings);
    reviewBodies(*facts, *tests, findings);
    return findings.lines();
}

}  // namespace groundcount::book
