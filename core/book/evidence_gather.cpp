#include "book/evidence.h"
#include "book/evidence_offsets.h"
#include "book/kinds.h"
#include "book/live.h"
#include "book/local_time.h"
#include "book/row_reader.h"
#include "book/seal.h"
#include "book/state_query.h"
#include "method/decimal.h"

#include <map>

namespace groundcount::book {

namespace {

/// Reads whole subjects once and gives their live records.
class Subjects {
public:
    explicit Subjects(const Store& store) : m_store(store) {}

    Result<const LiveRecords*> live(const std::string& subject)
    {
        auto found = m_kept.find(subject);
        if (found == m_kept.end()) {
            RecordFilter filter;
            filter.subject = subject;
            auto records = m_store.records(filter);
            if (!records)
                return tl::unexpected(records.error());
            for (const Record& r : *records)  // a damaged book may hold bodies that were never sealed like that
                if (auto body = checkBody(r.kind, r.body); !body)
                    return refused(body.error().what + " Record: " + nameOf(r) + ".");
            Kept kept;
            kept.records = std::make_unique<std::vector<Record>>(std::move(*records));
            kept.live = std::make_unique<LiveRecords>(*kept.records);
            found = m_kept.emplace(subject, std::move(kept)).first;
        }
        return found->second.live.get();
    }

    /// The live record of a kind. @error Refused: "The lot of the test is missing or void."
    Result<const Record*> needed(const std::string& subject, const char* kind)
    {
        const auto all = live(subject);
        if (!all)
            return tl::unexpected(all.error());
        const Record* record = (*all)->isVoid() ? nullptr : (*all)->latest(kind);
        if (!record)
            return refused(std::string("The ") + kind + " that the test refers to (" + subject.substr(0, 36) + ") is missing or void.");
        return record;
    }

private:
    struct Kept {
        std::unique_ptr<std::vector<Record>> records;
        std::unique_ptr<LiveRecords> live;
    };
    const Store& m_store;
    std::map<std::string, Kept> m_kept;
};

class Gathering {
public:
    Gathering(const Store& store, const std::string& testId) : m_store(store), m_subjects(store), m_testId(testId) {}

    Result<std::vector<Record>> all()
    {
        for (const auto part : {&Gathering::ownRecords, &Gathering::ground, &Gathering::ruleSet, &Gathering::papers, &Gathering::offsets})
            if (auto done = (this->*part)(); !done)
                return tl::unexpected(done.error());
        return m_records;
    }

private:
    Result<void> ownRecords()
    {
        const auto live = m_subjects.live(m_testId);
        if (!live)
            return tl::unexpected(live.error());
        const Record* site = (*live)->latest("test-site");
        if (!site)
            return refused("No test of this book has the subject " + m_testId.substr(0, 36) + ".");
        if ((*live)->isVoid())
            return refused("The test " + textAt(site->body, "number") + " is void and gets no verdict.");
        m_site = *site;
        m_day = localDay((*live)->root(*site).at, (*live)->root(*site).offsetMinutes);
        m_testedAt = (*live)->root(*site).at;  // an amendment of the site does not make the test later
        m_records.push_back(*site);
        for (const char* kind : {"clearance", "seating", "sample"})
            if (const Record* r = (*live)->latest(kind))
                m_records.push_back(*r);
        std::map<std::int64_t, const Record*> readings;
        for (const Record* r : (*live)->all("reading"))
            readings[r->body.at("number").get<std::int64_t>()] = r;
        for (const auto& [number, r] : readings)
            m_records.push_back(*r);
        if (!readings.empty())
            m_reading = readings.begin()->second->body;
        if (const Record* clearance = (*live)->latest("clearance"))
            for (const Body& hazard : clearance->body.at("hazards"))
                m_trench = m_trench || textAt(hazard, "remedy") == "trench correction";
        return {};
    }

    Result<void> ground()
    {
        const auto lot = m_subjects.needed(textAt(m_site.body, "lot"), "lot");
        if (!lot)
            return tl::unexpected(lot.error());
        m_lot = **lot;
        const auto lift = m_subjects.needed(textAt(m_site.body, "lift"), "lift");
        const auto proctor = m_subjects.needed(textAt(m_lot.body, "proctor"), "proctor");
        if (!lift || !proctor)
            return tl::unexpected(!lift ? lift.error() : proctor.error());
        m_records.push_back(m_lot);
        m_records.push_back(**lift);
        m_records.push_back(**proctor);
        return {};
    }

    Result<void> papers()
    {
        const std::string gauge = textAt(m_site.body, "gauge");
        if (!m_reading.contains("density_count"))
            return {};
        const auto named = m_store.record(textAt(m_reading, "standard_count"));
        if (!named)
            return refused("Counts need a sealed standard count; the one that the reading names is not in this book.");
        const auto standard = m_subjects.needed(named->subject, "standard-count");
        if (!standard)
            return tl::unexpected(standard.error());
        if (textAt((*standard)->body, "gauge") != gauge)
            return refused("The standard count must be of the test's gauge; it is of another one.");
        const std::int64_t age = millisecondsOf(m_testedAt) - millisecondsOf((*standard)->at);
        const auto most = limitOf(m_rules.body, "standard.age");
        if (!most)
            return tl::unexpected(most.error());
        if (static_cast<double>(age) > *most * 3600000 && !isOverridden())
            return refused("The standard count must be of the day of the test; it is " + std::to_string(age / 3600000) + " hours older, at most " +
                           reportedText(*most, 0, TieRule::HalfEven) + " are allowed.");
        m_records.push_back(**standard);
        const auto ids = readAll<std::string>(m_store.database(),
            "SELECT id FROM calibration_row WHERE gauge = ?1 AND on_date <= ?2 ORDER BY on_date DESC, hash DESC LIMIT 1",
            {gauge, m_day}, [](RowReader row, std::string& id) { row >> id; });
        if (!ids)
            return tl::unexpected(ids.error());
        if (ids->empty())
            return refused("Counts need a calibration of the gauge in force on " + m_day + "; there is none.");
        const auto calibration = m_subjects.needed(ids->front(), "calibration");
        if (!calibration)
            return tl::unexpected(calibration.error());
        const std::string expires = textAt((*calibration)->body, "expires");
        if (!expires.empty() && expires < m_day && !isOverridden())
            return refused("The gauge's calibration must be in force on " + m_day + "; it expired on " + expires + ".");
        m_records.push_back(**calibration);
        return {};
    }

    Result<void> offsets()
    {
        struct Row {
            std::string id, kind;
        };
        const auto rows = readAll<Row>(m_store.database(),
            "SELECT id, offset_kind FROM offset_row WHERE gauge = ?1 AND on_date <= ?2"
            " AND (material = '' OR material = ?3) AND (depth_in = '' OR CAST(depth_in AS REAL) = CAST(?4 AS REAL))"
            " ORDER BY on_date DESC, hash DESC",
            {textAt(m_site.body, "gauge"), m_day, textAt(m_lot.body, "material"), textAt(m_reading, "depth_in")},
            [](RowReader row, Row& r) { row >> r.id >> r.kind; });
        if (!rows)
            return tl::unexpected(rows.error());
        std::map<std::string, std::string> newest;
        for (const Row& row : *rows)
            newest.emplace(row.kind, row.id);
        const std::string noTrench = "A trench correction needs the gauge's trench offset in force on " + m_day + "; there is none.";
        if (m_trench && !newest.contains("trench"))
            return refused(noTrench);
        for (const auto& [kind, subject] : newest) {
            if (kind == "trench" && !m_trench)
                continue;
            const auto offset = m_subjects.needed(subject, "offset");
            if (!offset)
                return tl::unexpected(offset.error());
            const auto last = lastDayOf((*offset)->body, m_rules.body);
            if (!last)
                return tl::unexpected(last.error());
            if (*last < m_day && kind == "trench")
                return refused(noTrench);
            if (*last < m_day && !isOverridden())  // leaving it out in silence would report an uncorrected figure
                return refused("The " + kind + " offset of " + textAt((*offset)->body, "on") + " must be in force on " + m_day + "; it expired on " + *last +
                               ". Seal a new one, or void it if none is needed any more.");
            m_records.push_back(**offset);
        }
        return {};
    }

    Result<void> ruleSet()
    {
        const auto job = StateQuery(m_store).job();
        if (!job)
            return tl::unexpected(job.error());
        if (job->ruleSet.empty())
            return refused("A verdict needs the job's rule set; the job names none.");
        const auto rules = m_subjects.needed(job->ruleSet, "rule-set");
        if (!rules)
            return tl::unexpected(rules.error());
        m_rules = **rules;
        m_records.push_back(m_rules);
        return {};
    }

    /// The technician goes on with a gauge whose papers do not hold, and says why: the test is information only.
    bool isOverridden() const { return !textAt(m_site.body, "gauge_override_reason").empty(); }

    const Store& m_store;
    Subjects m_subjects;
    std::string m_testId;
    Record m_site;
    Record m_lot;
    Record m_rules;
    std::string m_testedAt;
    Body m_reading = Body::object();
    std::string m_day;
    bool m_trench = false;
    std::vector<Record> m_records;
};

}  // namespace

Result<Evidence> gatherEvidence(const Store& store, const std::string& testId)
{
    const auto records = Gathering(store, testId).all();
    if (!records)
        return tl::unexpected(records.error());
    return evidenceFrom(*records);
}

}  // namespace groundcount::book
