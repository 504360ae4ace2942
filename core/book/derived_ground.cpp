#include "book/canonical.h"
#include "book/derived.h"
#include "book/kinds.h"

namespace groundcount::book {

namespace {

std::int64_t wholeAt(const Body& body, const char* key)
{
    const auto it = body.find(key);
    return it != body.end() && it->is_number_integer() ? it->get<std::int64_t>() : 0;
}

bool isTrue(const Body& body, const char* key)
{
    const auto flag = body.find(key);
    return flag != body.end() && flag->is_boolean() && flag->get<bool>();
}

/// The list as canonical text, "" without one.
std::string listAt(const Body& body, const char* key)
{
    const auto list = body.find(key);
    return list == body.end() ? std::string() : canonicalText(*list).value_or("");
}

std::vector<std::vector<Cell>> siteRows(const std::string& id, const Record& draw)
{
    std::vector<std::vector<Cell>> rows;
    const auto sites = draw.body.find("sites");
    if (sites == draw.body.end() || !sites->is_array())
        return rows;
    for (const Body& site : *sites) {
        const WithUnit north = withUnit(site, "grid_north", Unit::Length);
        const WithUnit east = withUnit(site, "grid_east", Unit::Length);
        rows.push_back({id, draw.hash, textAt(draw.body, "lot"), textAt(draw.body, "lift"), wholeAt(site, "number"),
                        realOf(textAt(site, "station")), realOf(textAt(site, "offset_ft")), realOr(north.text, 0),
                        realOr(east.text, 0), north.unit});
    }
    return rows;
}

}  // namespace

std::vector<DerivedRows> groundRows(const std::string& id, const LiveRecords& live)
{
    std::vector<DerivedRows> out;
    if (live.isVoid())
        return out;
    const auto add = [&](const char* table, std::vector<Cell> cells) {
        out.push_back({table, {std::move(cells)}});
    };
    if (const Record* r = live.latest("material"))
        add("material_row", {id, r->hash, textAt(r->body, "name"), textAt(r->body, "description"), textAt(r->body, "soil_class")});
    if (const Record* r = live.latest("proctor")) {
        const WithUnit maximum = withUnit(r->body, "max_dry_density", Unit::Density);
        add("proctor_row", {id, r->hash, textAt(r->body, "name"), textAt(r->body, "material"), textAt(r->body, "standard"),
                            textAt(r->body, "peak_by"), maximum.text, maximum.unit, textAt(r->body, "optimum_pct")});
    }
    if (const Record* r = live.latest("offset"))
        add("offset_row", {id, r->hash, textAt(r->body, "gauge"), textAt(r->body, "offset_kind"), textAt(r->body, "on"),
                           textAt(r->body, "expires"), textAt(r->body, "material"), textAt(r->body, "depth_in")});
    if (const Record* r = live.latest("lot")) {
        const Body& b = r->body;
        const Body window = b.contains("window") && b.at("window").is_object() ? b.at("window") : Body::object();
        const std::string kind = textAt(window, "kind");
        add("lot_row", {id, r->hash, textAt(b, "name"), textAt(b, "material"), textAt(b, "proctor"), textAt(b, "zone"),
                        realOf(textAt(b, "begin_station")), realOf(textAt(b, "end_station")), realOf(textAt(b, "left_ft")),
                        realOf(textAt(b, "right_ft")), textAt(b, "minimum_pct"), textAt(b, "maximum_pct"),
                        kind.empty() ? std::string("none") : kind, textAt(window, "low"), textAt(window, "high"),
                        wholeAt(b, "tests_per_lift"), wholeAt(b, "sublots"), textAt(b, "alignment"), listAt(b, "area")});
    }
    if (const Record* r = live.latest("lift"))
        add("lift_row", {id, r->hash, textAt(r->body, "lot"), wholeAt(r->body, "number"), textAt(r->body, "thickness_in")});
    if (const Record* r = live.latest("draw"))
        out.push_back({"site_row", siteRows(id, *r)});
    if (const Record* r = live.latest("obstacle")) {
        const WithUnit north = withUnit(r->body, "grid_north", Unit::Length);
        const WithUnit east = withUnit(r->body, "grid_east", Unit::Length);
        add("obstacle_row", {id, r->hash, textAt(r->body, "name"), textAt(r->body, "obstacle_kind"), realOr(north.text, 0),
                             realOr(east.text, 0), north.unit, realOr(textAt(r->body, "radius_ft"), 0),
                             realOr(textAt(r->body, "uncertainty_ft"), 0), listAt(r->body, "path"),
                             std::int64_t{isTrue(r->body, "closed") ? 1 : 0}});
    }
    if (const Record* r = live.latest("alignment"))
        add("alignment_row", {id, r->hash, textAt(r->body, "name"), canonicalText(r->body).value_or("")});
    return out;
}

}  // namespace groundcount::book
