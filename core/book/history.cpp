#include "book/audit.h"
#include "book/kinds.h"
#include "book/live.h"
#include "book/seal.h"
#include "book/state_query.h"

#include <algorithm>
#include <map>

namespace groundcount::book {

namespace {

std::vector<std::string> changesBetween(const Body& before, const Body& after)
{
    std::vector<std::string> changes;
    for (auto it = before.begin(); it != before.end(); ++it)
        if (!after.contains(it.key()))
            changes.push_back(it.key() + ": " + shown(*it) + " -> nothing");
        else if (after.at(it.key()) != *it)
            changes.push_back(it.key() + ": " + shown(*it) + " -> " + shown(after.at(it.key())));
    for (auto it = after.begin(); it != after.end(); ++it)
        if (!before.contains(it.key()))
            changes.push_back(it.key() + ": nothing -> " + shown(*it));
    return changes;
}

}  // namespace

Result<std::vector<HistoryLine>> history(const Store& store, const std::string& subject)
{
    RecordFilter filter;
    filter.subject = subject;
    auto records = store.records(filter);
    const auto people = StateQuery(store).people();
    if (!records || !people)
        return tl::unexpected(!records ? records.error() : people.error());
    if (records->empty())
        return refused("No record of this book speaks of " + subject.substr(0, 36) + ".");
    // by time; one device's records in the order of its numbers when its clock stood still
    std::sort(records->begin(), records->end(), [](const Record& a, const Record& b) {
        return std::tie(a.at, a.device, a.seq, a.hash) < std::tie(b.at, b.device, b.seq, b.hash);
    });
    const LiveRecords live(*records);
    std::map<std::string, const Record*> byHash;
    for (const Record& r : *records)
        byHash.emplace(r.hash, &r);
    std::vector<HistoryLine> lines;
    for (const Record& r : *records) {
        HistoryLine line{r.hash, r.kind, r.by, "", r.at, r.offsetMinutes, r.device, r.seq, r.amends, r.reason, {}, false};
        for (const PersonRow& person : *people)
            if (person.id == r.by)
                line.byName = person.name;
        if (const auto target = byHash.find(r.amends); target != byHash.end())
            line.changes = changesBetween(target->second->body, r.body);
        const auto alive = live.all(r.kind);
        line.isLive = std::find(alive.begin(), alive.end(), &r) != alive.end();
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace groundcount::book
