#include "book/retired.h"

#include "book/kinds.h"
#include "book/live.h"
#include "book/store_inner.h"

namespace groundcount::book {

namespace {

constexpr const char* kKind = "retired-key";

std::int64_t lastOf(const Record& record)
{
    const auto last = record.body.find("last");
    return last != record.body.end() && last->is_number_integer() ? last->get<std::int64_t>() : 0;
}

Result<std::vector<Record>> retirementsAndVoids(Database& db)
{
    auto query = db.use(std::string("SELECT ") + kRecordColumns + " FROM record WHERE kind = 'retired-key'"
                        " OR (kind = 'void' AND subject IN (SELECT subject FROM record WHERE kind = 'retired-key'))");
    if (!query)
        return tl::unexpected(query.error());
    std::vector<Record> records;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return records;
        auto record = recordOf(*query, 0);
        if (record)  // an unreadable one is a finding of check, and speaks for nothing
            records.push_back(std::move(*record));
    }
}

/// The records of one subject without those by which the retired key speaks for itself.
std::vector<Record> heard(const std::vector<Record>& all)
{
    RetiredKeys first;
    for (const Record& r : all)
        if (r.kind == kKind && r.amends.empty()) {
            auto& own = first.try_emplace(textAt(r.body, "device"), Retirement{lastOf(r), {}, {}, {}, {}}).first->second;
            own.last = std::min(own.last, lastOf(r));
        }
    std::vector<Record> kept;
    for (const Record& r : all) {
        const auto own = first.find(r.device);
        if (own == first.end() || r.seq <= own->second.last || (r.kind == kKind && r.amends.empty()))
            kept.push_back(r);
    }
    return kept;
}

}  // namespace

bool stands(const Record& record, const Retirement& retirement)
{
    return record.seq <= retirement.last || (record.hash == retirement.hash && record.seq == retirement.last + 1);
}

std::string sentence(const Retirement& retirement)
{
    return "That key was retired on " + retirement.at.substr(0, 10) + " (" + retirement.why + "): its records stand up to number " +
           std::to_string(retirement.last) + ".";
}

Result<RetiredKeys> retiredKeys(Database& db)
{
    const auto records = retirementsAndVoids(db);
    if (!records)
        return tl::unexpected(records.error());
    std::map<std::string, std::vector<Record>> bySubject;
    for (const Record& r : *records)
        bySubject[r.subject].push_back(r);
    RetiredKeys keys;
    for (const auto& [subject, all] : bySubject) {
        const std::vector<Record> own = heard(all);
        const LiveRecords live(own);
        if (live.isVoid())
            continue;
        for (const Record* r : live.all(kKind)) {
            const Retirement said{lastOf(*r), r->by, r->at, textAt(r->body, "why"), r->hash};
            const auto [place, isNew] = keys.try_emplace(textAt(r->body, "device"), said);
            if (!isNew && said.last < place->second.last)
                place->second = said;
        }
    }
    return keys;
}

Result<RetiredKeys> retiredKeys(const Store& store)
{
    return retiredKeys(store.database());
}

Result<std::vector<KeyInUse>> keysInUse(const Store& store)
{
    const auto retired = retiredKeys(store.database());
    if (!retired)
        return tl::unexpected(retired.error());
    auto query = store.database().use("SELECT device, count(*), max(seq), min(at), max(at) FROM record GROUP BY device ORDER BY device");
    if (!query)
        return tl::unexpected(query.error());
    std::vector<KeyInUse> keys;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return keys;
        keys.push_back({query->text(0), query->whole(1), query->whole(2), query->text(3), query->text(4), std::nullopt});
        if (const auto own = retired->find(keys.back().device); own != retired->end())
            keys.back().retirement = own->second;
    }
}

}  // namespace groundcount::book
