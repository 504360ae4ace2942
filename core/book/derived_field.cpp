#include "book/canonical.h"
#include "book/derived.h"
#include "book/kinds.h"
#include "book/state.h"

namespace groundcount::book {

namespace {

std::int64_t wholeAt(const Body& body, const char* key)
{
    const auto it = body.find(key);
    return it != body.end() && it->is_number_integer() ? it->get<std::int64_t>() : 0;
}

/// Digits of a JSON whole number, "" when there is none.
std::string digitsAt(const Body& body, const char* key)
{
    return body.contains(key) && body.at(key).is_number_integer() ? std::to_string(wholeAt(body, key)) : std::string();
}

TestPurpose purposeOf(const std::string& text)
{
    if (text == "retest")
        return TestPurpose::Retest;
    return text == "directed" ? TestPurpose::Directed : TestPurpose::Random;
}

TestState stateOf(const LiveRecords& live, const Record* verdict)
{
    if (live.isVoid())
        return TestState::Void;
    const std::string result = verdict ? textAt(verdict->body, "result") : std::string();
    if (result == "pass")
        return TestState::Pass;
    if (result == "fail")
        return TestState::Fail;
    if (result == "information only")
        return TestState::InformationOnly;
    return result == "provisional" ? TestState::Waiting : TestState::Open;
}

std::string overridesOf(const Body& site, const Record* clearance)
{
    std::string all = textAt(site, "gauge_override_reason");
    if (!clearance || !clearance->body.contains("hazards"))
        return all;
    for (const Body& hazard : clearance->body.at("hazards"))
        if (const std::string reason = textAt(hazard, "override_reason"); !reason.empty())
            all += (all.empty() ? "" : "; ") + reason;
    return all;
}

const Record* firstReading(const LiveRecords& live)
{
    const Record* first = nullptr;
    for (const Record* reading : live.all("reading"))
        if (wholeAt(reading->body, "number") == 1)
            first = reading;  // a later record of the same number replaces the earlier one
    return first;
}

}  // namespace

std::vector<DerivedRows> testRows(const std::string& id, const LiveRecords& live)
{
    const Record* site = live.latest("test-site");
    if (!site)
        return {};
    const Record* clearance = live.latest("clearance");
    const Record* seating = live.latest("seating");
    const Record* reading = firstReading(live);
    const Record* sample = live.latest("sample");
    const Record* verdict = live.latest("verdict");
    const Record& begun = live.root(*site);
    const Record& named = verdict ? *verdict : *site;
    const Body none = Body::object();
    const Body& s = site->body;
    const Body& r = reading ? reading->body : none;
    const Body& v = verdict ? verdict->body : none;
    const Body& f = v.contains("figures") ? v.at("figures") : none;
    unsigned steps = PlaceStep;
    steps |= clearance ? ClearStep : 0U;
    steps |= seating ? SeatStep : 0U;
    steps |= reading ? CountStep : 0U;
    steps |= sample ? DigStep : 0U;
    steps |= verdict ? VerdictStep : 0U;
    const TestState state = stateOf(live, verdict);
    const bool open = state == TestState::Open || state == TestState::Waiting;
    const WithUnit north = withUnit(s, "grid_north", Unit::Length);
    const WithUnit east = withUnit(s, "grid_east", Unit::Length);
    const auto figure = [&](const char* stem) { return withUnit(f, stem, Unit::Density).text; };
    std::string depth = textAt(r, "depth_in");
    if (depth.empty() && seating)
        depth = textAt(seating->body, "depth_in");
    // a test taken over from a list is dated by its day, at noon UTC; it was sealed later
    const std::string testedOn = textAt(s, "tested_on");
    const std::string started = testedOn.empty() ? begun.at : testedOn + "T12:00:00.000Z";
    const std::int64_t offsetMinutes = testedOn.empty() ? begun.offsetMinutes : 0;
    std::vector<Cell> row{
        id, textAt(s, "number"), textAt(s, "lot"), textAt(s, "lift"), textAt(s, "gauge"), site->by, textAt(v, "material"),
        textAt(v, "proctor"), textAt(s, "retest_of"), textAt(s, "rework"),
        static_cast<std::int64_t>(purposeOf(textAt(s, "purpose"))), static_cast<std::int64_t>(state),
        static_cast<std::int64_t>(steps), open && sample ? textAt(sample->body, "waiting") : std::string(),
        v.contains("reasons") ? canonicalText(v.at("reasons")).value_or("[]") : std::string("[]"), started,
        verdict ? verdict->at : std::string(), offsetMinutes, realOf(north.text), realOf(east.text),
        north.unit, realOf(textAt(s, "latitude_deg")), realOf(textAt(s, "longitude_deg")),
        realOf(textAt(s, "ellipsoid_height_m")), realOf(textAt(s, "sigma_north_m")), realOf(textAt(s, "sigma_east_m")),
        wholeAt(s, "fixes"), textAt(s, "fix_kind"), realOf(textAt(s, "station")), realOf(textAt(s, "offset_ft")),
        textAt(r, "mode"), depth, figure("wet_density"), figure("water_density"), figure("dry_density"),
        textAt(f, "water_content_pct"), textAt(f, "percent_compaction"), figure("maximum"), textAt(f, "optimum_pct"),
        textAt(f, "coarse_pct"), textAt(f, "uncertainty_pct"), textAt(f, "minimum_pct"), textAt(f, "maximum_pct"),
        textAt(f, "window_low_pct"), textAt(f, "window_high_pct"), digitsAt(r, "density_count"),
        digitsAt(r, "moisture_count"), textAt(r, "standard_count"), overridesOf(s, clearance), textAt(v, "rule_set"),
        textAt(v, "core"), named.hash, named.device, std::int64_t{live.hasConflict()}, textAt(s, "draw"), wholeAt(s, "site")};
    return {{"test_row", {std::move(row)}}};
}

}  // namespace groundcount::book
