#include "book/review.h"

#include "book/review_findings.h"
#include "book/state_query.h"

#include <algorithm>
#include <numeric>
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

Findings::Findings(std::span<const TestRow> tests)
{
    for (const TestRow& t : tests)
        if (t.state != TestState::Void && m_at.emplace(t.id, m_all.size()).second)
            m_all.push_back({&t, {}});
}

void Findings::add(const std::string& test, Unusual kind, const std::string& sentence)
{
    const auto found = m_at.find(test);
    if (found == m_at.end())
        return;
    std::string& what = m_all[found->second].what[static_cast<std::size_t>(kind)];
    if (what.find(sentence) == std::string::npos)
        what += (what.empty() ? "" : " ") + sentence;
}

const TestRow* Findings::test(const std::string& id) const
{
    const auto found = m_at.find(id);
    return found == m_at.end() ? nullptr : m_all[found->second].test;
}

std::vector<UnusualLine> Findings::lines() const
{
    std::vector<std::size_t> order(m_all.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const TestRow& x = *m_all[a].test;
        const TestRow& y = *m_all[b].test;
        return std::tie(x.startedAt, x.number, x.id) < std::tie(y.startedAt, y.number, y.id);
    });
    std::vector<UnusualLine> lines;
    for (const std::size_t i : order)
        for (std::size_t kind = 0; kind < kKinds; ++kind)
            if (const Of& of = m_all[i]; !of.what[kind].empty())
                lines.push_back({static_cast<Unusual>(kind), of.test->id, of.test->number, of.test->lot, of.test->startedAt, of.what[kind]});
    return lines;
}

Result<std::vector<UnusualLine>> unusual(const Store& store, const method::RuleSet& rules)
{
    const auto settings = reviewRules(rules);
    if (!settings)
        return tl::unexpected(settings.error());
    const StateQuery query(store);
    const auto job = query.job();
    const auto tests = query.tests({});
    if (!job || !tests)
        return tl::unexpected(job ? tests.error() : job.error());
    Findings findings(*tests);
    reviewRows(*tests, job->metresPerGridUnit, *settings, findings);
    if (auto done = reviewPapers(store, *tests, *settings, findings); !done)
        return tl::unexpected(done.error());
    if (auto done = reviewSealing(store, findings); !done)
        return tl::unexpected(done.error());
    if (auto done = reviewBodies(store, findings); !done)
        return tl::unexpected(done.error());
    return findings.lines();
}

}  // namespace groundcount::book
