#include "book/job_rules.h"

#include "book/canonical.h"
#include "book/live.h"
#include "book/state_query.h"

namespace groundcount::book {

Result<method::RuleSet> jobRules(const Store& store)
{
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    if (job->ruleSet.empty())
        return refused("The job of this book names no rule set; one is needed.");
    RecordFilter filter;
    filter.subject = job->ruleSet;
    const auto records = store.records(filter);
    if (!records)
        return tl::unexpected(records.error());
    const LiveRecords live(*records);
    const Record* sealed = live.isVoid() ? nullptr : live.latest("rule-set");
    if (!sealed || !sealed->body.contains("rules"))
        return refused("The rule set that the job names is missing or void.");
    const auto text = canonicalText(sealed->body.at("rules"));
    return text ? method::ruleSetFromSealed(*text) : Result<method::RuleSet>(tl::unexpected(text.error()));
}

}  // namespace groundcount::book
