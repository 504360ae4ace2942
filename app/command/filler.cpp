#include "command/filler.h"

#include "book/kinds.h"
#include "command/verb.h"
#include "gis/alignment_reader.h"

#include <filesystem>

namespace groundcount::command {
namespace {

using nlohmann::json;

std::string fixed(double value, int places)
{
    return reportedText(value, places, TieRule::HalfEven);
}

Result<double> numberOf(const json& object, const char* key)
{
    const auto text = book::textAt(object, key);
    const auto number = Decimal::parse(text);
    if (!number)
        return refused(std::string("\"") + key + "\" must be a decimal number as text; it is \"" + text + "\".");
    return number->value();
}

}  // namespace

Result<void> Filler::resolve(json& value)
{
    if (value.is_structured()) {
        for (auto& inner : value) {
            if (auto ok = resolve(inner); !ok)
                return ok;
        }
        return {};
    }
    if (!value.is_string())
        return {};
    const auto& text = value.get_ref<const std::string&>();
    if (text.size() > 1 && text.front() == '@') {
        value = subjectOf(text);
    } else if (text.size() > 1 && text.front() == '#') {
        const auto known = m_hashes.find(text);
        if (known == m_hashes.end())
            return refused("the label \"" + text + "\" names no earlier entry.");
        value = known->second;
    }
    return {};
}

Result<void> Filler::readRules(json& body) const
{
    if (!body.contains("rules") || !body["rules"].is_object() || !body["rules"].contains("file"))
        return {};
    const auto path = std::filesystem::path(m_scenario.folder) / book::textAt(body["rules"], "file");
    const auto rules = rulesFrom(path.string());
    if (!rules)
        return tl::unexpected(rules.error());
    body["rules"] = json::parse(method::toJson(*rules));
    return {};
}

Result<void> Filler::place(json& object, bool geographic) const
{
    if (!object.contains("at"))
        return {};
    if (!m_line || !m_crs)
        return refused("a place by station needs the scenario's alignment and coordinate system sealed before it.");
    const json at = object["at"];
    if (!at.is_object())
        return refused("\"at\" must be an object with station and offset_ft.");
    const auto station = numberOf(at, "station");
    const auto offset = numberOf(at, "offset_ft");
    if (!station || !offset)
        return tl::unexpected(station ? offset.error() : station.error());
    const auto point = m_line->at(*station, *offset);
    if (!point)
        return tl::unexpected(point.error());
    object.erase("at");
    object["grid_north_" + m_gridUnit] = fixed(point->northFt, 3);
    object["grid_east_" + m_gridUnit] = fixed(point->eastFt, 3);
    if (!geographic)
        return {};
    const auto position = m_crs->toGeographic({point->northFt, point->eastFt});
    if (!position)
        return tl::unexpected(position.error());
    object["latitude_deg"] = fixed(position->latitudeDeg, 8);  // 1e-8 degree is a millimetre
    object["longitude_deg"] = fixed(position->longitudeDeg, 8);
    return {};
}

Result<void> Filler::places(const std::string& kind, json& body) const
{
    const auto keepTyped = [](json& object) {
        if (object.contains("at") && object["at"].is_object()) {
            object["station"] = object["at"].value("station", json());
            object["offset_ft"] = object["at"].value("offset_ft", json());
        }
    };
    if (kind == "draw") {
        for (const char* list : {"sites", "rejected"}) {
            if (!body.contains(list))
                continue;
            for (auto& site : body[list]) {
                keepTyped(site);
                if (auto ok = place(site, false); !ok)
                    return ok;
            }
        }
        return {};
    }
    if (kind == "test-site")
        keepTyped(body);
    return place(body, kind == "test-site");
}

Result<void> Filler::fill(const std::string& kind, json& body)
{
    if (auto ok = resolve(body); !ok)
        return ok;
    if (kind == "rule-set")
        return readRules(body);
    if (kind == "standard-count")
        return judgeStandard(body);
    if (kind == "clearance")
        return judgeHazards(body);
    return places(kind, body);
}

Result<book::Entry> Filler::entryAt(std::size_t index)
{
    const json& typed = m_scenario.entries.at(index);
    const auto named = [&](const Error& error) {
        return tl::unexpected(Error{error.fault, "Scenario, " + nameOf(typed, index) + ": " + error.what});
    };
    json ids = {{"subject", typed["subject"]}, {"by", typed["by"]}, {"amends", typed.value("amends", "")}};
    if (auto ok = resolve(ids); !ok)
        return named(ok.error());
    const auto at = utcOf(typed["at"].get<std::string>(), m_scenario.offsetMinutes);
    if (!at)
        return named(at.error());
    book::Entry entry;
    entry.kind = typed["kind"].get<std::string>();
    entry.subject = ids["subject"].get<std::string>();
    entry.by = ids["by"].get<std::string>();
    entry.amends = ids["amends"].get<std::string>();
    entry.reason = typed.value("reason", "");
    entry.at = *at;
    entry.offsetMinutes = m_scenario.offsetMinutes;
    entry.body = typed.value("body", json::object());
    if (auto ok = fill(entry.kind, entry.body); !ok)
        return named(ok.error());
    return entry;
}

Result<void> Filler::sealed(std::size_t index, const book::Record& record)
{
    const json& typed = m_scenario.entries.at(index);
    if (typed.contains("label"))
        m_hashes[typed["label"].get<std::string>()] = record.hash;
    if (record.kind == "rule-set") {
        auto rules = method::ruleSetFromJson(record.body.at("rules").dump());
        if (!rules)
            return tl::unexpected(rules.error());
        m_rules = std::move(*rules);
        m_rulesHash = record.hash;
    } else if (record.kind == "crs" && typed["subject"] == m_scenario.crs) {
        auto crs = record.body.contains("epsg") ? gis::Crs::fromEpsg(record.body["epsg"].get<int>())
                                                : gis::Crs::fromWkt(book::textAt(record.body, "wkt"));
        if (!crs)
            return tl::unexpected(crs.error());
        m_crs = std::move(*crs);
        const auto unit = book::textAt(record.body, "unit");
        m_gridUnit = unit == "ftUS" ? "usft" : unit;
    } else if (record.kind == "alignment" && typed["subject"] == m_scenario.alignment) {
        auto line = gis::alignmentFrom(record.body.dump());
        if (!line)
            return tl::unexpected(line.error());
        m_line = std::move(*line);
    } else if (record.kind == "standard-count" && record.body.value("accepted", false)) {
        m_accepted[book::textAt(record.body, "gauge")].push_back(
            {book::textAt(record.body, "density_count"), book::textAt(record.body, "moisture_count")});
    }
    return {};
}

}  // namespace groundcount::command
