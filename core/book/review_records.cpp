#include "book/canonical.h"
#include "book/kinds.h"
#include "book/local_time.h"
#include "book/review_findings.h"
#include "book/row_reader.h"
#include "method/decimal.h"
#include "method/sentence.h"
#include "method/site/clearance.h"

#include <algorithm>
#include <map>
#include <set>

namespace groundcount::book {

namespace {

struct Sealed {
    std::string subject, kind, at, device, body, hash;
};

/// Live records of a kind: those that nothing amends, earliest first.
Result<std::vector<Sealed>> liveOf(const Store& store, const char* kind)
{
    return readAll<Sealed>(store.database(),
        "SELECT subject, kind, at, device, body, hash FROM record WHERE kind = ?1 AND hash NOT IN (SELECT amends FROM record WHERE amends <> '')"
        " ORDER BY at, seq", {kind}, [](RowReader row, Sealed& s) { row >> s.subject >> s.kind >> s.at >> s.device >> s.body >> s.hash; });
}

Length lengthOf(const WithUnit& value)
{
    const auto number = Decimal::parse(value.text);
    const double v = number ? number->value() : 0;
    return value.unit == "in" ? Length::inches(v) : value.unit == "ft" ? Length::feet(v) : value.unit == "usft" ? Length::surveyFeet(v)
           : value.unit == "mm" ? Length::metres(v / 1000) : Length::metres(v);
}

void reviewHazard(const std::string& test, const Body& hazard, Findings& into)
{
    const std::string name = textAt(hazard, "hazard");
    const std::string answer = textAt(hazard, "answer");
    if ((answer == "too close" || answer == "cannot tell") && textAt(hazard, "remedy").empty())
        return into.add(test, Unusual::ClearanceNotMet, "The answer for " + name + " is \"" + answer + "\" and there is no remedy.");
    const WithUnit distance = withUnit(hazard, "distance", Unit::Length);
    const WithUnit required = withUnit(hazard, "required", Unit::Length);
    if (answer != "clear" || distance.text.empty() || required.text.empty())
        return;
    const auto judged = method::judgeClearance(lengthOf(distance), lengthOf(withUnit(hazard, "uncertainty", Unit::Length)), lengthOf(required), method::Inclusive::Yes);
    if (judged && *judged == method::ClearanceAnswer::TooClose)
        into.add(test, Unusual::ClearanceNotMet, "The answer for " + name + " is \"clear\" at " + distance.text + " " + distance.unit + "; " + required.text + " " + required.unit + " is required.");
}

struct Reading {
    std::string test, at, figures;
    std::int64_t number = 0, seconds = 0;
    bool isCounted = false;
};

Reading readingOf(const Sealed& sealed, const Body& body)
{
    Reading r;
    r.test = sealed.subject;
    r.at = sealed.at;
    r.number = body.contains("number") && body.at("number").is_number_integer() ? body.at("number").get<std::int64_t>() : 0;
    r.seconds = body.contains("seconds") && body.at("seconds").is_number_integer() ? body.at("seconds").get<std::int64_t>() : 0;
    r.isCounted = body.contains("density_count");
    for (const char* key : {"density_count", "moisture_count"})
        r.figures += body.contains(key) ? body.at(key).dump() + "/" : "";
    if (!r.isCounted)
        r.figures = withUnit(body, "wet_density", Unit::Density).text + "/" + withUnit(body, "water_density", Unit::Density).text + "/" + textAt(body, "water_content_pct");
    return r;
}

void reviewReadings(const std::vector<Reading>& readings, Findings& into)
{
    std::map<std::string, std::map<std::int64_t, const Reading*>> byTest;
    for (const Reading& r : readings)
        byTest[r.test][r.number] = &r;  // of two records of one number the later stands
    std::map<std::string, const Reading*> readouts;
    std::map<std::string, std::vector<const Reading*>> byGauge;
    for (const auto& [id, ofTest] : byTest) {
        const TestRow* t = into.test(id);
        if (!t)
            continue;
        const auto first = ofTest.find(1);
        const auto second = ofTest.find(2);
        if (first != ofTest.end() && second != ofTest.end() && first->second->figures == second->second->figures)
            into.add(id, Unusual::DuplicateReading, "Reading 2 repeats the figures of reading 1.");
        for (const auto& [number, r] : ofTest)
            if (r->seconds > 0)  // a list of earlier tests taken over states none
                byGauge[t->gauge].push_back(r);
    }
    std::vector<const Reading*> inOrder;
    for (const Reading& r : readings)
        if (!r.isCounted && r.number == 1 && into.test(r.test))
            inOrder.push_back(&r);
    std::sort(inOrder.begin(), inOrder.end(), [&](const Reading* a, const Reading* b) { return std::tie(into.test(a->test)->startedAt, a->at) < std::tie(into.test(b->test)->startedAt, b->at); });
    for (const Reading* r : inOrder) {
        const TestRow& t = *into.test(r->test);
        const auto [other, isNew] = readouts.emplace(t.gauge + localDay(t.startedAt, t.offsetMinutes) + "/" + r->figures, r);
        if (!isNew && other->second->test != r->test)
            into.add(r->test, Unusual::DuplicateReading, "The readout is that of test " + into.test(other->second->test)->number + " by the same gauge that day.");
    }
    for (auto& [gauge, ofGauge] : byGauge) {
        std::sort(ofGauge.begin(), ofGauge.end(), [](const Reading* a, const Reading* b) { return std::tie(a->at, a->test, a->number) < std::tie(b->at, b->test, b->number); });
        for (std::size_t i = 1; i < ofGauge.size(); ++i) {
            const double apart = static_cast<double>(millisecondsOf(ofGauge[i]->at) - millisecondsOf(ofGauge[i - 1]->at)) / 1000;
            if (apart < static_cast<double>(ofGauge[i]->seconds))  // a count is sealed after it ended
                into.add(ofGauge[i]->test, Unusual::ImpossibleTime, "A count of " + std::to_string(ofGauge[i]->seconds) + " s was sealed " + shownNumber(apart) +
                             " s after the gauge's count of test " + into.test(ofGauge[i - 1]->test)->number + ".");
        }
    }
}

}  // namespace

Result<void> reviewSealing(const Store& store, Findings& into)
{
    const auto amended = readAll<Sealed>(store.database(),
        // the few amendments in a table of their own, so that each of the many verdicts looks them up and does not walk the book
        "WITH later AS MATERIALIZED (SELECT amends, kind, at FROM record WHERE amends <> '')"
        " SELECT DISTINCT v.subject, a.kind, a.at FROM record v CROSS JOIN json_each(v.body, '$.from') j CROSS JOIN later a ON a.amends = j.value"
        " WHERE v.kind = 'verdict' AND json_extract(v.body, '$.result') <> 'provisional'",
        {}, [](RowReader row, Sealed& s) { row >> s.subject >> s.kind >> s.at; });
    const auto added = readAll<Sealed>(store.database(),
        // by subject: the index of a device's chain would be walked to its end for every verdict
        "SELECT r.subject, r.kind, r.at FROM (SELECT subject, device, min(seq) AS first FROM record WHERE kind = 'verdict'"
        " AND json_extract(body, '$.result') <> 'provisional' GROUP BY subject, device) v CROSS JOIN record r ON r.subject = v.subject AND +r.device = v.device AND +r.seq > v.first"
        " WHERE r.kind IN ('test-site', 'clearance', 'seating', 'reading', 'sample') AND r.amends = ''",
        {}, [](RowReader row, Sealed& s) { row >> s.subject >> s.kind >> s.at; });
    if (!amended || !added)
        return tl::unexpected(amended ? added.error() : amended.error());
    for (const Sealed& s : *amended)
        into.add(s.subject, Unusual::AmendedAfterVerdict, "The " + s.kind + " was amended at " + s.at + ", after the verdict.");
    for (const Sealed& s : *added)
        into.add(s.subject, Unusual::AmendedAfterVerdict, "A " + s.kind + " was added at " + s.at + ", after the verdict.");

    const auto times = readAll<Sealed>(store.database(), "SELECT subject, kind, at, device FROM record ORDER BY device, seq", {},
                                       [](RowReader row, Sealed& s) { row >> s.subject >> s.kind >> s.at >> s.device; });
    if (!times)
        return tl::unexpected(times.error());
    // phones correct their clock by seconds; a minute back is a clock that was set
    constexpr std::int64_t kCorrectionMs = 60'000;
    std::string device, latest;
    for (const Sealed& s : *times) {
        if (s.device != device || s.at >= latest) {
            latest = s.at;
            device = s.device;
        } else if (millisecondsOf(latest) - millisecondsOf(s.at) > kCorrectionMs) {
            into.add(s.subject, Unusual::ImpossibleTime, "The " + s.kind + " is timed " + s.at + ", before the record that the device sealed ahead of it at " + latest + ".");
        }
    }
    return {};
}

Result<void> reviewBodies(const Store& store, Findings& into)
{
    const auto clearances = liveOf(store, "clearance");
    const auto readings = liveOf(store, "reading");
    if (!clearances || !readings)
        return tl::unexpected(clearances ? readings.error() : clearances.error());
    std::map<std::string, const Sealed*> newest;
    for (const Sealed& s : *clearances)
        newest[s.subject] = &s;
    for (const auto& [test, sealed] : newest) {
        const auto body = readJson(sealed->body);
        if (body && checkBody("clearance", *body))
            for (const Body& hazard : body->at("hazards"))
                reviewHazard(test, hazard, into);
    }
    std::vector<Reading> all;
    for (const Sealed& s : *readings)
        if (const auto body = readJson(s.body); body && body->is_object())
            all.push_back(readingOf(s, *body));
    reviewReadings(all, into);
    return {};
}

}  // namespace groundcount::book
