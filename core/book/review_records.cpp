#include "book/local_time.h"
#include "book/review_findings.h"
#include "method/sentence.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace groundcount::book {

namespace {

/// The first verdict of each test and device: what the device sealed after it was added to a finished test.
void reviewAdded(const SealedFacts& facts, Findings& into)
{
    std::vector<SealedFacts::Verdict> verdicts = facts.verdicts;
    const auto order = [](const auto& v) { return std::tie(v.test, v.device, v.seq); };
    std::sort(verdicts.begin(), verdicts.end(), [&](const auto& a, const auto& b) { return order(a) < order(b); });
    std::vector<std::uint32_t> firstOf;  // place of a test's verdicts
    for (std::uint32_t i = 0; i < verdicts.size(); ++i)
        if (verdicts[i].test >= firstOf.size())
            firstOf.resize(verdicts[i].test + std::size_t{1}, i);
    for (const auto& one : facts.sealed) {
        if (!one.isPart || one.test >= firstOf.size())
            continue;
        std::size_t i = firstOf[one.test];
        while (i < verdicts.size() && verdicts[i].test == one.test && verdicts[i].device != one.device)
            ++i;
        if (i < verdicts.size() && verdicts[i].test == one.test && one.seq > verdicts[i].seq)
            into.add(one.test, Unusual::AmendedAfterVerdict, "A " + facts.words[one.kind] + " was added at " + utcText(one.atMs) + ", after the verdict.");
    }
}

void reviewTimes(const SealedFacts& facts, Findings& into)
{
    // phones correct their clock by seconds; a minute back is a clock that was set
    constexpr std::int64_t kCorrectionMs = 60'000;
    std::map<std::uint16_t, std::vector<const SealedFacts::Sealed*>> byDevice;
    for (const auto& one : facts.sealed)
        byDevice[one.device].push_back(&one);
    for (auto& [device, ofDevice] : byDevice) {
        const auto before = [](const auto* a, const auto* b) { return a->seq < b->seq; };
        if (!std::is_sorted(ofDevice.begin(), ofDevice.end(), before))
            std::stable_sort(ofDevice.begin(), ofDevice.end(), before);
        std::int64_t latest = ofDevice.front()->atMs;
        for (const auto* one : ofDevice) {
            latest = std::max(latest, one->atMs);
            if (latest - one->atMs > kCorrectionMs)
                into.add(one->test, Unusual::ImpossibleTime, "The " + facts.words[one->kind] + " is timed " + utcText(one->atMs) + ", before the record that the device sealed ahead of it at " + utcText(latest) + ".");
        }
    }
}

using Reading = SealedFacts::Reading;
using Readings = std::vector<const Reading*>;

/// The readings of every test by number; of two records of one number the later stands.
Readings standing(const SealedFacts& facts, const CheckedTests& tests)
{
    Readings all;
    all.reserve(facts.readings.size());
    for (const Reading& r : facts.readings)
        if (r.test != kNoTest && tests.rows[r.test].state != TestState::Void)
            all.push_back(&r);
    std::stable_sort(all.begin(), all.end(), [](const Reading* a, const Reading* b) { return std::tie(a->test, a->number, a->atMs, a->seq) < std::tie(b->test, b->number, b->atMs, b->seq); });
    Readings last;
    last.reserve(all.size());
    for (const Reading* r : all) {
        if (!last.empty() && last.back()->test == r->test && last.back()->number == r->number)
            last.pop_back();
        last.push_back(r);
    }
    return last;
}

void reviewRepeated(const Readings& readings, Findings& into)
{
    const Reading* first = nullptr;
    for (const Reading* r : readings) {
        if (r->number == 1)
            first = r;
        if (r->number == 2 && first && first->test == r->test && first->figures == r->figures)
            into.add(r->test, Unusual::DuplicateReading, "Reading 2 repeats the figures of reading 1.");
    }
}

void reviewReadouts(const SealedFacts& facts, const CheckedTests& tests, Findings& into)
{
    Readings inOrder;
    for (const Reading& r : facts.readings)
        if (!r.isCounted && r.number == 1 && r.test != kNoTest && tests.rows[r.test].state != TestState::Void)
            inOrder.push_back(&r);
    // tests stand by start
    std::stable_sort(inOrder.begin(), inOrder.end(), [](const Reading* a, const Reading* b) { return std::tie(a->test, a->atMs, a->seq) < std::tie(b->test, b->atMs, b->seq); });
    std::unordered_map<std::string, std::uint32_t> seen;
    for (const Reading* r : inOrder) {
        const CheckedTest& t = tests.rows[r->test];
        const auto [other, isNew] = seen.emplace(tests.names[t.gauge] + t.day + "/" + r->figures, r->test);
        if (!isNew && other->second != r->test)
            into.add(r->test, Unusual::DuplicateReading, "The readout is that of test " + tests.rows[other->second].number + " by the same gauge that day.");
    }
}

void reviewOverlaps(Readings readings, const CheckedTests& tests, Findings& into)
{
    std::erase_if(readings, [](const Reading* r) { return r->seconds <= 0; });  // a list of earlier tests taken over states none
    const auto gauge = [&](const Reading* r) { return tests.rows[r->test].gauge; };
    std::stable_sort(readings.begin(), readings.end(), [&](const Reading* a, const Reading* b) {
        if (gauge(a) != gauge(b) || a->atMs != b->atMs)
            return std::tuple(gauge(a), a->atMs) < std::tuple(gauge(b), b->atMs);
        return std::tie(tests.rows[a->test].id, a->number) < std::tie(tests.rows[b->test].id, b->number);
    });
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const Reading& r = *readings[i];
        const Reading& before = *readings[i - 1];
        const double apart = static_cast<double>(r.atMs - before.atMs) / 1000;
        if (gauge(&r) == gauge(&before) && apart < static_cast<double>(r.seconds))  // a count is sealed after it ended
            into.add(r.test, Unusual::ImpossibleTime, "A count of " + std::to_string(r.seconds) + " s was sealed " + shownNumber(apart) + " s after the gauge's count of test " + tests.rows[before.test].number + ".");
    }
}

}  // namespace

void reviewSealing(const SealedFacts& facts, Findings& into)
{
    for (const auto& one : facts.amended)
        into.add(one.test, Unusual::AmendedAfterVerdict, "The " + one.kind + " was amended at " + one.at + ", after the verdict.");
    reviewAdded(facts, into);
    reviewTimes(facts, into);
}

void reviewBodies(const SealedFacts& facts, const CheckedTests& tests, Findings& into)
{
    std::unordered_map<std::uint32_t, const SealedFacts::Clearance*> newest;
    newest.reserve(facts.clearances.size());
    for (const auto& c : facts.clearances)
        if (const auto [old, isNew] = newest.emplace(c.test, &c); !isNew && std::tie(c.atMs, c.seq) >= std::tie(old->second->atMs, old->second->seq))
            old->second = &c;
    for (const auto& [test, clearance] : newest)
        for (const std::string& sentence : clearance->sentences)
            into.add(test, Unusual::ClearanceNotMet, sentence);
    const Readings readings = standing(facts, tests);
    reviewRepeated(readings, into);
    reviewReadouts(facts, tests, into);
    reviewOverlaps(readings, tests, into);
}

}  // namespace groundcount::book
