#include "book/job_rules.h"
#include "book/lot_statistics.h"
#include "book/state_query.h"
#include "book/store.h"
#include "gis/alignment_reader.h"
#include "gis/crs.h"
#include "view/session.h"

#include <algorithm>

namespace groundcount::view {
namespace {

/// Takes a list out of a query's answer; the first failure is kept.
template <class List>
void take(Result<List> answer, List& into, std::string& trouble)
{
    if (answer)
        into = std::move(*answer);
    else if (trouble.empty())
        trouble = answer.error().what;
}

}  // namespace

void Session::readAgain()
{
    m_readAllAgain = true;
    if (m_store)
        refresh();
}

void Session::lookForOthers()
{
    const auto version = m_store->dataVersion();
    if (version && *version != m_dataVersion)
        refresh();
}

void Session::refresh()
{
    std::string trouble;
    m_dataVersion = m_store->dataVersion().value_or(0);
    if (!takeArrivals())
        readAll(trouble);
    refreshPeople();
    refreshGauge();
    if (!trouble.empty())
        setTrouble(QString::fromStdString(trouble));
    emit recordsChanged();
}

void Session::readAll(std::string& trouble)
{
    m_readAllAgain = false;
    readLists(trouble);
    readTests(trouble);
}

void Session::readLists(std::string& trouble)
{
    const book::StateQuery query(*m_store);
    m_listsSeen = m_store->lastRow().value_or(0);
    take(query.job(), m_snapshot.job, trouble);
    take(query.sites({}, {}), m_snapshot.sites, trouble);
    take(query.gauges(), m_snapshot.gauges, trouble);
    take(query.standardCounts({}), m_snapshot.standardCounts, trouble);
    std::reverse(m_snapshot.standardCounts.begin(), m_snapshot.standardCounts.end());
    take(query.lots(), m_snapshot.lots, trouble);
    take(query.lifts({}), m_snapshot.lifts, trouble);
    take(query.materials(), m_snapshot.materials, trouble);
    take(query.proctors(), m_snapshot.proctors, trouble);
    take(query.people(), m_snapshot.people, trouble);
    take(query.obstacles(), m_snapshot.obstacles, trouble);
    refreshGround(trouble);
}

void Session::refreshGround(std::string& trouble)
{
    const auto& job = m_snapshot.job;
    const auto keep = [&](const Error& error) {
        if (trouble.empty())
            trouble = error.what;
    };
    m_system.set(job.epsg, job.crsWkt);
    if (trouble.empty())
        trouble = m_system.trouble();
    m_lines.clear();
    if (const auto rows = book::StateQuery(*m_store).alignments())
        for (const auto& row : *rows) {
            auto line = gis::alignmentFrom(row.body);
            if (line)
                m_lines.add({row.id, QString::fromStdString(row.name), std::move(*line)});
            else
                keep(line.error());
        }
    m_ruleSet = method::neutralRules();
    if (!job.ruleSet.empty()) {
        auto rules = book::jobRules(*m_store);
        if (rules)
            m_ruleSet = std::move(*rules);
        else
            keep(rules.error());
    }
    if (auto rules = book::statisticsRules(m_ruleSet))
        m_snapshot.retestDistance = rules->retestDistance;
    else
        keep(rules.error());
    if (auto rules = method::evaluationRules(m_ruleSet))
        m_rules = *rules;
    else
        keep(rules.error());
}

void Session::refreshPeople()
{
    m_person = {};
    // Who said so on this device; before anybody has, the first technician.
    const auto atWork = m_store->draft("device", "person");
    for (const auto& person : m_snapshot.people) {
        if (atWork && person.id == *atWork) {
            m_person = person;
            return;
        }
    }
    for (const auto& person : m_snapshot.people) {
        if (m_person.id.empty() || (m_person.role != "technician" && person.role == "technician"))
            m_person = person;
    }
}

void Session::refreshGauge()
{
    // The gauge that somebody has signed out last; without custody records, the first one.
    m_gauge.reset();
    for (const auto& gauge : m_snapshot.gauges) {
        const bool out = !gauge.custodyEvent.empty() && gauge.custodyEvent != "signed in";
        if (!m_gauge || (out && gauge.custodyAt > m_gauge->custodyAt))
            m_gauge = gauge;
    }
    const auto late = [&](const std::string& date) {
        const QDate day = QDate::fromString(QString::fromStdString(date), Qt::ISODate);
        return day.isValid() && day < now().toOffsetFromUtc(offsetMinutes() * 60).date();
    };
    const auto* today = standardToday();
    m_gaugeMissing = !m_gauge                                 ? tr("No gauge in this book")
                     : m_gauge->custodyEvent == "signed in"   ? tr("Gauge not signed out")
                     : m_gauge->calibrationHash.empty()       ? tr("Calibration missing")
                     : late(m_gauge->calibrationExpires)      ? tr("Calibration out of date")
                     : m_gauge->leakTestResult == "leak"      ? tr("Leak test found a leak")
                     : late(m_gauge->leakTestExpires)         ? tr("Leak test out of date")
                     : !today                                 ? tr("Standard counts missing")
                     : !today->accepted && today->overrideReason.empty() ? tr("Standard counts not accepted")
                                                              : QString();
}

}  // namespace groundcount::view
