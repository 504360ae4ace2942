#include "book/live.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace groundcount::book {

LiveRecords::LiveRecords(std::span<const Record> records)
{
    std::unordered_map<std::string_view, const Record*> byHash;
    for (const Record& r : records)
        byHash.emplace(r.hash, &r);
    std::unordered_set<std::string_view> amended;
    const auto target = [&](const Record& r) -> const Record* {
        if (r.amends.empty())
            return nullptr;
        const auto found = byHash.find(r.amends);
        return found != byHash.end() && found->second->kind == r.kind ? found->second : nullptr;
    };
    for (const Record& r : records)
        if (const Record* t = target(r))
            amended.insert(t->hash);
    std::set<std::pair<std::string_view, std::string_view>> parents;
    for (const Record& r : records) {
        if (amended.contains(r.hash))
            continue;
        const Record* first = &r;
        while (const Record* earlier = target(*first))
            first = earlier;
        m_live.push_back({&r, first});
        m_void = m_void || r.kind == "void";
        if (!r.amends.empty() && !parents.emplace(r.kind, r.amends).second)
            m_conflict = true;
    }
    // hash order first, so that what follows does not depend on the order of arrival
    std::sort(m_live.begin(), m_live.end(), [](const Place& a, const Place& b) { return a.record->hash < b.record->hash; });
}

bool LiveRecords::later(const Place& a, const Place& b)
{
    const auto key = [](const Place& p) {
        return std::tie(p.root->at, p.root->hash, p.record->at, p.record->hash);
    };
    return key(a) > key(b);
}

std::vector<const Record*> LiveRecords::all(std::string_view kind) const
{
    std::vector<Place> places;
    for (const Place& p : m_live)
        if (p.record->kind == kind)
            places.push_back(p);
    std::sort(places.begin(), places.end(), [](const Place& a, const Place& b) { return later(b, a); });
    // a device's own records keep the order of its running numbers, in the slots that time gave the device
    std::unordered_map<std::string_view, std::vector<Place>> perDevice;
    for (const Place& p : places)
        perDevice[p.root->device].push_back(p);
    std::unordered_map<std::string_view, std::size_t> next;
    for (auto& [device, own] : perDevice)
        std::stable_sort(own.begin(), own.end(), [](const Place& a, const Place& b) { return a.root->seq < b.root->seq; });
    std::vector<const Record*> ordered;
    ordered.reserve(places.size());
    for (const Place& p : places)
        ordered.push_back(perDevice[p.root->device][next[p.root->device]++].record);
    return ordered;
}

const Record* LiveRecords::latest(std::string_view kind) const
{
    const auto ordered = all(kind);
    return ordered.empty() ? nullptr : ordered.back();
}

const Record& LiveRecords::root(const Record& record) const
{
    for (const Place& p : m_live)
        if (p.record == &record)
            return *p.root;
    return record;
}

std::vector<const Record*> notJudged(std::span<const Record> records)
{
    std::vector<const Record*> missing;
    const LiveRecords live(records);
    const Record* verdict = live.latest("verdict");
    if (!verdict || live.isVoid() || !verdict->body.contains("from"))
        return missing;
    const Body& from = verdict->body.at("from");
    const auto ask = [&](const Record* record) {
        if (record && std::find(from.begin(), from.end(), Body(record->hash)) == from.end())
            missing.push_back(record);
    };
    for (const char* kind : {"test-site", "clearance", "seating", "sample"})
        ask(live.latest(kind));
    const auto readings = live.all("reading");
    const auto numberOf = [](const Record* record) { return record->body.value("number", 0); };
    for (auto one = readings.begin(); one != readings.end(); ++one)
        if (std::none_of(one + 1, readings.end(), [&](const Record* later) { return numberOf(later) == numberOf(*one); }))
            ask(*one);
    return missing;
}

}  // namespace groundcount::book
