#include "book/derived.h"
#include "book/kinds.h"

namespace groundcount::book {

namespace {

std::int64_t wholeAt(const Body& body, const char* key, std::int64_t otherwise)
{
    const auto it = body.find(key);
    return it != body.end() && it->is_number_integer() ? it->get<std::int64_t>() : otherwise;
}

bool flagAt(const Body& body, const char* key)
{
    const auto it = body.find(key);
    return it != body.end() && it->is_boolean() && *it->get_ptr<const bool*>();
}

}  // namespace

std::vector<DerivedRows> setupRows(const std::string& id, const LiveRecords& live)
{
    std::vector<DerivedRows> out;
    if (live.isVoid())
        return out;
    const auto add = [&](const char* table, std::vector<Cell> cells) {
        out.push_back({table, {std::move(cells)}});
    };
    if (const Record* r = live.latest("job")) {
        const Body& b = r->body;
        add("job_row", {id, r->hash, live.root(*r).at, textAt(b, "name"), textAt(b, "place"), textAt(b, "density_unit"),
                        textAt(b, "crs"), textAt(b, "rule_set")});
    }
    if (const Record* r = live.latest("crs"))
        add("crs_row", {id, r->hash, wholeAt(r->body, "epsg", 0), textAt(r->body, "wkt"), textAt(r->body, "name"),
                        textAt(r->body, "unit")});
    if (const Record* r = live.latest("rule-set")) {
        const auto rules = r->body.find("rules");
        add("rule_set_row", {id, r->hash, rules == r->body.end() ? std::string() : textAt(*rules, "name")});
    }
    if (const Record* r = live.latest("person"))
        add("person_row", {id, r->hash, textAt(r->body, "name"), textAt(r->body, "role"), textAt(r->body, "certificate"),
                           textAt(r->body, "certificate_expires")});
    if (const Record* r = live.latest("gauge")) {
        const Record* custody = live.latest("custody");
        add("gauge_row", {id, r->hash, textAt(r->body, "name"), textAt(r->body, "serial"), realOr(textAt(r->body, "prescale"), 1),
                          custody ? textAt(custody->body, "event") : "", custody ? custody->by : "",
                          custody ? custody->at : "", custody ? textAt(custody->body, "place") : ""});
    }
    if (const Record* r = live.latest("calibration"))
        add("calibration_row", {id, r->hash, textAt(r->body, "gauge"), textAt(r->body, "on"), textAt(r->body, "expires")});
    if (const Record* r = live.latest("leak-test"))
        add("leak_test_row", {id, r->hash, textAt(r->body, "gauge"), textAt(r->body, "on"), textAt(r->body, "expires"),
                              textAt(r->body, "result")});
    if (const Record* r = live.latest("standard-count")) {
        const Body& b = r->body;
        add("standard_count_row",
            {id, r->hash, textAt(b, "gauge"), r->by, live.root(*r).at, std::int64_t{live.root(*r).offsetMinutes},
             textAt(b, "density_count"), textAt(b, "moisture_count"), realOf(textAt(b, "density_mean")),
             realOf(textAt(b, "moisture_mean")), realOf(textAt(b, "density_deviation_pct")),
             realOf(textAt(b, "moisture_deviation_pct")), std::int64_t{flagAt(b, "accepted")}, textAt(b, "override_reason")});
    }
    return out;
}

}  // namespace groundcount::book
