#include "book/evidence.h"
#include "book/kinds.h"
#include "book/live.h"

namespace groundcount::book {

Result<Evidence> sealedEvidence(const Store& store, const std::string& testId)
{
    RecordFilter filter;
    filter.subject = testId;
    const auto records = store.records(filter);
    if (!records)
        return tl::unexpected(records.error());
    const LiveRecords live(*records);
    const Record* verdict = live.latest("verdict");
    if (!verdict)
        return gatherEvidence(store, testId);
    auto hashes = verdict->body.at("from").get<std::vector<std::string>>();
    hashes.push_back(textAt(verdict->body, "rule_set"));
    std::vector<Record> named;
    for (const auto& hash : hashes) {
        auto record = store.record(hash);
        if (!record)
            return tl::unexpected(record.error());
        named.push_back(std::move(*record));
    }
    return evidenceFrom(named);
}

}  // namespace groundcount::book
