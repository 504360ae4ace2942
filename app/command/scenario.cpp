#include "command/scenario.h"

#include "book/canonical.h"
#include "book/hash.h"
#include "command/verb.h"

#include <chrono>
#include <cstdio>
#include <filesystem>

namespace groundcount::command {
namespace {

Result<void> checkEntry(const nlohmann::json& entry, std::size_t index)
{
    const auto where = [&] { return "Scenario: " + nameOf(entry, index); };
    if (!entry.is_object())
        return refused(where() + " must be an object.");
    for (const char* key : {"kind", "subject", "by", "at"}) {
        if (!entry.contains(key) || !entry[key].is_string())
            return refused(where() + " needs the text \"" + key + "\".");
    }
    for (const auto& [key, value] : entry.items()) {
        if (key != "kind" && key != "subject" && key != "by" && key != "at" && key != "body" && key != "label" &&
            key != "amends" && key != "reason")
            return refused(where() + " has the unknown key \"" + key + "\".");
        if (key == "body" ? !value.is_object() : !value.is_string())
            return refused(where() + ": \"" + key + "\" must be " + (key == "body" ? "an object." : "text."));
    }
    return {};
}

bool twoDigits(const std::string& text, std::size_t at, int& value)
{
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
    if (!digit(at) || !digit(at + 1))
        return false;
    value = (text[at] - '0') * 10 + (text[at + 1] - '0');
    return true;
}

}  // namespace

Result<Scenario> scenarioFrom(const std::string& path)
{
    const auto text = readText(path);
    if (!text)
        return tl::unexpected(text.error());
    const auto json = book::readJson(*text);
    if (!json)
        return refused("Scenario \"" + path + "\": " + json.error().what);
    if (!json->is_object() || json->value("format", nlohmann::json()) != 1)
        return refused("Scenario \"" + path + "\" must be an object with \"format\": 1.");
    const auto entries = json->find("entries");
    const auto offset = json->find("offset_minutes");
    if (entries == json->end() || !entries->is_array() || entries->empty())
        return refused("Scenario \"" + path + "\" needs a list \"entries\" that is not empty.");
    if (offset == json->end() || !offset->is_number_integer())
        return refused("Scenario \"" + path + "\" needs the whole number \"offset_minutes\".");
    Scenario scenario;
    scenario.folder = std::filesystem::path(path).parent_path().string();
    scenario.offsetMinutes = offset->get<int>();
    for (auto [key, target] : {std::pair{"alignment", &scenario.alignment}, std::pair{"crs", &scenario.crs}}) {
        const auto it = json->find(key);
        if (it != json->end() && it->is_string())
            *target = it->get<std::string>();
    }
    for (std::size_t i = 0; i < entries->size(); ++i) {
        if (auto ok = checkEntry((*entries)[i], i); !ok)
            return tl::unexpected(ok.error());
        scenario.entries.push_back((*entries)[i]);
    }
    return scenario;
}

std::string subjectOf(std::string_view name)
{
    if (!name.empty() && name.front() == '@')
        name.remove_prefix(1);
    std::string hex = book::blake2b256Hex("groundcount-scenario:" + std::string(name)).substr(0, 32);
    hex[12] = '8';  // version
    hex[16] = '8';  // variant
    return hex.substr(0, 8) + "-" + hex.substr(8, 4) + "-" + hex.substr(12, 4) + "-" + hex.substr(16, 4) + "-" + hex.substr(20);
}

Result<std::string> utcOf(const std::string& local, int offsetMinutes)
{
    using namespace std::chrono;
    int century = 0, yearOf = 0, monthOf = 0, dayOf = 0, hour = 0, minute = 0;
    const bool shaped = local.size() == 16 && local[4] == '-' && local[7] == '-' && local[10] == ' ' && local[13] == ':' &&
                        twoDigits(local, 0, century) && twoDigits(local, 2, yearOf) && twoDigits(local, 5, monthOf) &&
                        twoDigits(local, 8, dayOf) && twoDigits(local, 11, hour) && twoDigits(local, 14, minute);
    const year_month_day date{year(century * 100 + yearOf), month(static_cast<unsigned>(monthOf)), day(static_cast<unsigned>(dayOf))};
    if (!shaped || !date.ok() || hour > 23 || minute > 59)
        return refused("The local time \"" + local + "\" must be written YYYY-MM-DD HH:MM.");
    const auto utc = sys_days(date) + hours(hour) + minutes(minute) - minutes(offsetMinutes);
    const auto dayStart = floor<days>(utc);
    const year_month_day d(dayStart);
    const auto inDay = duration_cast<minutes>(utc - dayStart).count();
    char text[40];
    std::snprintf(text, sizeof text, "%04d-%02u-%02uT%02d:%02d:00.000Z", static_cast<int>(d.year()), static_cast<unsigned>(d.month()),
                  static_cast<unsigned>(d.day()), static_cast<int>(inDay / 60), static_cast<int>(inDay % 60));
    return std::string(text);
}

std::string nameOf(const nlohmann::json& entry, std::size_t index)
{
    std::string name = "entry " + std::to_string(index + 1);
    if (entry.is_object() && entry.contains("kind") && entry["kind"].is_string() && entry.contains("subject") &&
        entry["subject"].is_string())
        name += " (" + entry["kind"].get<std::string>() + " of " + entry["subject"].get<std::string>() + ")";
    return name;
}

}  // namespace groundcount::command
