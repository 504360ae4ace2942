#include "book/provenance.h"

#include "book/canonical.h"
#include "book/database.h"
#include "book/kinds.h"
#include "book/live.h"
#include "book/row_reader.h"
#include "book/state_query.h"
#include "method/core_version.h"

#include <algorithm>
#include <set>
#include <sodium.h>
#include <tuple>

namespace groundcount::book {
namespace {

struct Digest {
    std::string hex;
    std::int64_t records = 0;
};

Result<Digest> digestOf(const Store& store)
{
    auto query = store.database().use("SELECT hash FROM record ORDER BY hash");
    if (!query)
        return tl::unexpected(query.error());
    crypto_generichash_state state;
    crypto_generichash_init(&state, nullptr, 0, crypto_generichash_BYTES);
    Digest digest;
    for (;;) {
        const auto more = query->step();
        if (!more)
            return tl::unexpected(more.error());
        if (!*more)
            break;
        const std::string hash = query->text(0);
        crypto_generichash_update(&state, reinterpret_cast<const unsigned char*>(hash.data()), hash.size());
        ++digest.records;
    }
    unsigned char bytes[crypto_generichash_BYTES];
    crypto_generichash_final(&state, bytes, sizeof bytes);
    for (const unsigned char byte : bytes)
        for (const int half : {byte >> 4, byte & 0x0F})
            digest.hex += "0123456789abcdef"[half];
    return digest;
}

Result<nlohmann::json> chainHeads(const Store& store)
{
    struct Head {
        std::string device, seq, hash;
    };
    const auto heads = readAll<Head>(store.database(),
        "SELECT r.device, r.seq, r.hash FROM record r JOIN (SELECT device, max(seq) AS last FROM record GROUP BY device) h"
        " ON h.device = r.device AND h.last = r.seq ORDER BY r.device, r.hash", {},
        [](RowReader row, Head& head) { row >> head.device >> head.seq >> head.hash; });
    if (!heads)
        return tl::unexpected(heads.error());
    auto list = nlohmann::json::array();
    for (const auto& head : *heads)
        list.push_back({{"device", head.device}, {"last_seq", std::stoll(head.seq)}, {"last_hash", head.hash}});
    return list;
}

/// Hashes of the rule sets that judged a test, and of the one that the job names today.
Result<std::set<std::string>> ruleSetHashes(const Store& store, const JobRow& job)
{
    const auto used = readAll<std::string>(store.database(), "SELECT DISTINCT rule_set FROM test_row WHERE rule_set <> '' ORDER BY rule_set", {},
                                           [](RowReader row, std::string& hash) { row >> hash; });
    if (!used)
        return tl::unexpected(used.error());
    std::set<std::string> hashes(used->begin(), used->end());
    RecordFilter filter;
    filter.subject = job.ruleSet;
    if (!job.ruleSet.empty()) {
        const auto records = store.records(filter);
        if (!records)
            return tl::unexpected(records.error());
        if (const Record* today = LiveRecords(*records).latest("rule-set"))
            hashes.insert(today->hash);
    }
    return hashes;
}

Result<nlohmann::json> ruleSets(const Store& store, const JobRow& job)
{
    const auto hashes = ruleSetHashes(store, job);
    if (!hashes)
        return tl::unexpected(hashes.error());
    auto list = nlohmann::json::array();
    for (const auto& hash : *hashes) {
        nlohmann::json one{{"record_hash", hash}};
        if (const auto record = store.record(hash); record && record->body.contains("rules"))
            one["rules"] = record->body.at("rules");
        else
            one["missing"] = "The record is not in this book.";
        list.push_back(std::move(one));
    }
    return list;
}

}  // namespace

Result<Provenance> provenanceOf(const Store& store)
{
    const auto job = StateQuery(store).job();
    const auto id = store.bookId();
    const auto digest = digestOf(store);
    const auto heads = chainHeads(store);
    const auto latest = store.database().ask("SELECT max(at) FROM record");
    for (const auto* error : {job ? nullptr : &job.error(), id ? nullptr : &id.error(), digest ? nullptr : &digest.error(),
                              heads ? nullptr : &heads.error(), latest ? nullptr : &latest.error()})
        if (error)
            return tl::unexpected(*error);
    const auto rules = ruleSets(store, *job);
    if (!rules)
        return tl::unexpected(rules.error());
    Provenance provenance;
    provenance.latestAt = latest->empty() ? "1970-01-01T00:00:00.000Z" : *latest;
    const nlohmann::json text{
        {"book", *id},
        {"core", kCoreVersion},
        {"devices", *heads},
        {"job", {{"id", job->id}, {"name", job->name}, {"density_unit", job->densityUnit}, {"grid_unit", job->gridUnit}, {"epsg", job->epsg}, {"crs", job->crsName}}},
        {"latest_record_at", provenance.latestAt},
        {"records", digest->records},
        {"records_digest", digest->hex},
        {"rule_sets", *rules},
    };
    auto canonical = canonicalText(text);
    if (!canonical)
        return tl::unexpected(canonical.error());
    provenance.text = std::move(*canonical);
    return provenance;
}

Result<std::vector<PhotoRow>> photosOf(const Store& store)
{
    RecordFilter photos;
    photos.kind = "photo";
    const auto all = store.records(photos);
    if (!all)
        return tl::unexpected(all.error());
    std::set<std::string> subjects;
    for (const auto& record : *all)
        subjects.insert(record.subject);
    std::vector<PhotoRow> rows;
    for (const auto& subject : subjects) {
        RecordFilter filter;
        filter.subject = subject;
        const auto records = store.records(filter);
        if (!records)
            return tl::unexpected(records.error());
        const LiveRecords live(*records);
        if (live.isVoid())
            continue;
        for (const Record* photo : live.all("photo"))
            rows.push_back({subject, textAt(photo->body, "blob"), textAt(photo->body, "media_type"), textAt(photo->body, "name"), photo->hash, photo->at});
    }
    std::sort(rows.begin(), rows.end(), [](const PhotoRow& a, const PhotoRow& b) { return std::tie(a.at, a.hash) < std::tie(b.at, b.hash); });
    return rows;
}

}  // namespace groundcount::book
