// Longer than 250 lines: the checks of a whole book, which count into one report.
#include "book/audit.h"

#include "book/canonical.h"
#include "book/database.h"
#include "book/evidence.h"
#include "book/kinds.h"
#include "book/parallel.h"
#include "book/retired.h"
#include "book/seal.h"
#include "book/store_inner.h"

#include <map>
#include <unordered_map>

namespace groundcount::book {

namespace {

struct Known {
    std::string kind;
    std::string subject;
    std::string name;
};

class Auditor {
public:
    explicit Auditor(const Store& store) : m_store(store) {}

    Result<AuditReport> run()
    {
        file();
        auto retired = retiredKeys(m_store.database());
        if (!retired)
            add(Finding::Unreadable, retired.error().what);
        else
            m_retired = std::move(*retired);
        if (auto all = everyRecord(); !all)
            return tl::unexpected(all.error());
        chains();
        amendments();
        verdicts();
        if (auto contents = blobs(); !contents)
            return tl::unexpected(contents.error());
        m_report.devices = m_chains.size();
        return m_report;
    }

private:
    struct Link {
        std::string hash;
        std::string prev;
        std::string name;
    };

    void add(Finding finding, std::string what) { m_report.lines.push_back({finding, std::move(what)}); }

    /// An index that no longer agrees with its table would hide a row from one question and show it to another.
    void file()
    {
        const auto sound = m_store.database().ask("PRAGMA integrity_check(1)");
        if (!sound)
            add(Finding::Unreadable, sound.error().what);
        else if (*sound != "ok")
            add(Finding::Unreadable, "The pages of the file do not agree with each other (" + *sound + "); take a copy and compare it with another.");
    }

    /// Row by row, so that one broken row hides nothing else.
    Result<void> everyRecord()
    {
        auto query = m_store.database().use(std::string("SELECT row, ") + kRecordColumns + " FROM record ORDER BY row");
        if (!query)
            return tl::unexpected(query.error());
        std::vector<Read> batch;
        for (;;) {
            const auto row = query->step();
            if (!row)
                add(Finding::Unreadable, row.error().what);
            if (!row || !*row) {
                many(batch);
                return {};
            }
            ++m_report.records;
            auto record = recordOf(*query, 1);
            if (!record)
                add(Finding::Unreadable, record.error().what);
            else
                batch.push_back({std::move(*record), query->text(12), {}, {}});
            if (batch.size() == kAtOnce)
                many(batch);
        }
    }

    struct Read {
        Record record;
        std::string storedBody;
        std::string content, form;  ///< "" or what is wrong
    };
    static constexpr std::size_t kAtOnce = 4096;  // some megabytes of records

    void many(std::vector<Read>& batch)
    {
        inRanges(batch.size(), 32, [&](std::size_t from, std::size_t to) {
            for (std::size_t i = from; i < to; ++i) {
                Read& read = batch[i];
                if (auto sound = verifyRecord(read.record); !sound)
                    read.content = sound.error().what;
                else if (canonicalText(read.record.body).value_or("") != read.storedBody)
                    read.content = "The body is not stored in its canonical form: " + nameOf(read.record) + ".";
                if (auto body = checkBody(read.record.kind, read.record.body); !body)
                    read.form = body.error().what + " Record: " + nameOf(read.record) + ".";
            }
        });
        for (const Read& read : batch)
            one(read);
        batch.clear();
    }

    void one(const Read& read)
    {
        const Record& r = read.record;
        if (!read.content.empty())
            add(Finding::Content, read.content);
        if (!read.form.empty())
            add(Finding::Form, read.form);
        if (const auto retired = m_retired.find(r.device); retired != m_retired.end() && !stands(r, retired->second))
            add(Finding::Retired, sentence(retired->second) + " Beyond it: " + nameOf(r) + ".");
        m_chains[r.device].emplace(r.seq, Link{r.hash, r.prev, nameOf(r)});
        m_known.emplace(r.hash, Known{r.kind, r.subject, nameOf(r)});
        if (!r.amends.empty())
            m_amending.emplace_back(r.hash, r.amends);
        if (r.kind == "void")
            m_void.emplace(r.subject, 0);
        if (r.kind == "verdict")
            m_verdicts.push_back(r);
        if (r.kind == "photo" || r.body.contains("blob"))
            if (const std::string blob = textAt(r.body, "blob"); isHash(blob))
                m_blobs.emplace(blob, nameOf(r));
    }

    void chains()
    {
        for (const auto& [device, links] : m_chains) {
            std::int64_t expected = 1;
            const Link* before = nullptr;
            for (auto it = links.begin(); it != links.end(); ++it) {
                const auto& [seq, link] = *it;
                if (before && seq == expected - 1) {
                    add(Finding::Fork, "The device has two records of number " + std::to_string(seq) + ": " + before->name + " and " + link.name + ".");
                    continue;
                }
                if (seq > expected)
                    add(Finding::Gap, "Device " + device.substr(0, 8) + " lacks number " + std::to_string(expected) +
                                          (seq - expected > 1 ? " to " + std::to_string(seq - 1) : std::string()) + ", before " + link.name + ".");
                else if (before && link.prev != before->hash)
                    add(Finding::Link, "The link to the record before does not hold: " + link.name + ".");
                before = &link;
                expected = seq + 1;
            }
        }
    }

    void amendments()
    {
        for (const auto& [hash, amends] : m_amending) {
            const Known& from = m_known.at(hash);
            const auto target = m_known.find(amends);
            if (target == m_known.end())
                add(Finding::Amends, "It amends a record that is not here (hash " + amends.substr(0, 12) + "): " + from.name + ".");
            else if (target->second.kind != from.kind || target->second.subject != from.subject)
                add(Finding::Amends, "It amends a record of another kind or subject, " + target->second.name + ": " + from.name + ".");
        }
    }

    void verdicts()
    {
        for (const Record& verdict : m_verdicts) {
            if (m_void.contains(verdict.subject))
                continue;
            ++m_report.verdicts;
            const auto today = recompute(verdict, m_store);
            if (!today) {
                add(Finding::Verdict, "It cannot be recomputed (" + today.error().what + "): " + nameOf(verdict) + ".");
                continue;
            }
            if (today->agrees)
                continue;
            std::string all;
            for (const std::string& difference : today->differences)
                all += (all.empty() ? "" : "; ") + difference;
            add(Finding::Verdict, "Today's core differs (" + all + "): " + nameOf(verdict) + ".");
        }
    }

    Result<void> blobs()
    {
        for (const auto& [hash, name] : m_blobs)
            if (const auto content = m_store.blob(hash); !content)
                add(Finding::Blob, content.error().what + " Record: " + name + ".");
        const auto all = m_store.blobHashes();
        if (!all)
            return tl::unexpected(all.error());
        for (const std::string& hash : *all)
            if (!m_blobs.contains(hash))
                if (const auto content = m_store.blob(hash); !content)
                    add(Finding::Blob, content.error().what);
        return {};
    }

    const Store& m_store;
    AuditReport m_report;
    RetiredKeys m_retired;
    std::map<std::string, std::multimap<std::int64_t, Link>> m_chains;
    std::unordered_map<std::string, Known> m_known;
    std::vector<std::pair<std::string, std::string>> m_amending;
    std::map<std::string, int> m_void;
    std::vector<Record> m_verdicts;
    std::map<std::string, std::string> m_blobs;
};

}  // namespace

const char* word(Finding finding)
{
    switch (finding) {
    case Finding::Unreadable: return "unreadable";
    case Finding::Content: return "content";
    case Finding::Form: return "form";
    case Finding::Gap: return "gap";
    case Finding::Fork: return "fork";
    case Finding::Link: return "link";
    case Finding::Retired: return "retired key";
    case Finding::Amends: return "amends";
    case Finding::Verdict: return "verdict";
    case Finding::Blob: return "content of an attachment";
    case Finding::Derived: return "derived tables";
    }
    return "";
}

Result<AuditReport> check(const Store& store)
{
    auto report = Auditor(store).run();
    if (!report)
        return report;
    const auto stale = store.staleDerived();
    if (!stale)
        report->lines.push_back({Finding::Derived, stale.error().what});
    else if (!stale->empty())
        report->lines.push_back({Finding::Derived, "The derived tables are not what the records say (subject " + *stale + "); rebuild them."});
    return report;
}

}  // namespace groundcount::book
