#include "view/kit_view.h"

#include "book/kinds.h"
#include "book/store.h"
#include "method/site/station.h"
#include "view/figure_text.h"
#include "view/kit_form.h"
#include "view/sealed_words.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr std::size_t kNewestCounts = 5;  // the chart of the counts' sheet shows more

}  // namespace

KitView::KitView(QObject* parent) : QObject(parent) {}

void KitView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &KitView::refresh);
    refresh();
    emit sessionChanged();
}

void KitView::refresh()
{
    refreshGauges();
    const Snapshot& all = m_session->snapshot();
    std::vector<Row> references, people, job, rules;
    for (const auto& p : all.proctors) {
        const auto material = std::find_if(all.materials.begin(), all.materials.end(), [&](const auto& m) { return m.id == p.material; });
        Row row;
        row.id = "material:" + QString::fromStdString(p.id);
        row.title = QString::fromStdString(p.name + (material == all.materials.end() ? "" : ", " + material->name));
        row.second = tr("%1, peak %2").arg(QString::fromStdString(p.standard), QString::fromStdString(p.peakBy));
        row.figure = shownDecimal(p.maximumText);
        row.unit = QString::fromStdString(all.job.densityUnit);
        row.word = tr("at %1 %").arg(shownDecimal(p.optimumText));
        references.push_back(std::move(row));
    }
    for (const auto& p : all.people) {
        Row row;
        row.id = "person:" + QString::fromStdString(p.id);
        row.mark = isPast(p.certificateExpires, *m_session) ? Mark::Fail : Mark::Pass;
        row.title = QString::fromStdString(p.name);
        row.second = sealedWord(p.role) + (p.certificate.empty() ? QString() : ", " + QString::fromStdString(p.certificate));
        if (p.id == m_session->person().id)
            row.second += ", " + tr("at work here");
        row.word = p.certificateExpires.empty() ? QString()
                   : isPast(p.certificateExpires, *m_session) ? tr("ended %1").arg(dateText(p.certificateExpires)) : tr("until %1").arg(dateText(p.certificateExpires));
        row.wordMark = row.mark == Mark::Fail ? Mark::Fail : Mark::Nothing;
        people.push_back(std::move(row));
    }
    if (!all.job.id.empty()) {
        job.push_back(Row::ofWords(tr("Job"), QString::fromStdString(all.job.name + (all.job.place.empty() ? "" : ", " + all.job.place)), {}));
        job.back().id = QStringLiteral("job");
        job.back().chevron = true;
        job.push_back(Row::ofWords(tr("Coordinate system"), QString::fromStdString(all.job.crsName),
                                   all.job.epsg ? QStringLiteral("EPSG:%1").arg(all.job.epsg) : QString()));
        job.push_back(Row::ofWords(tr("Densities in"), {}, QString::fromStdString(all.job.densityUnit)));
        for (const auto& line : m_session->lines().all())
            job.push_back(Row::ofWords(tr("Line %1").arg(line.name), tr("from station %1, %2 %3 long").arg(QString::fromStdString(method::stationText(line.line.stations().beginFt(), 100, 0)), figureText(line.line.lengthFt(), 1), all.job.gridUnit == "m" ? QStringLiteral("m") : QStringLiteral("ft")), {}));
        job.push_back(Row::ofWords(tr("Field book"), m_session->bookName(), {}));
    }
    const auto& inForce = m_session->ruleSet();
    rules.push_back(Row::ofWords(tr("%1, rev. %2").arg(QString::fromStdString(inForce.name), QString::fromStdString(inForce.revision)),
                                 tr("%1 limits, %2 choices, each with its source").arg(inForce.limits.size()).arg(inForce.choices.size()), {}));
    rules.back().id = QStringLiteral("rules");
    rules.back().chevron = true;
    m_references.setRows(std::move(references));
    m_people.setRows(std::move(people));
    m_job.setRows(std::move(job));
    m_rules.setRows(std::move(rules));
    refreshOffsets();
}

void KitView::refreshGauges()
{
    const Snapshot& all = m_session->snapshot();
    std::vector<Row> gauges, counts;
    const auto paper = [&](const QString& name, const std::string& id, const std::string& on, const std::string& expires, const QString& what) {
        Row row = Row::ofWords(name, on.empty() ? tr("none sealed") : what,
                               expires.empty() ? QString() : isPast(expires, *m_session) ? tr("ended %1").arg(dateText(expires)) : tr("until %1").arg(dateText(expires)));
        row.id = "gauge:" + QString::fromStdString(id);
        row.wordMark = isPast(expires, *m_session) ? Mark::Fail : Mark::Nothing;
        return row;
    };
    for (const auto& g : all.gauges) {
        const bool papersLate = isPast(g.calibrationExpires, *m_session) || isPast(g.leakTestExpires, *m_session) || g.calibratedOn.empty() || g.leakTestResult == "leak";
        Row gauge = Row::ofWords(QString::fromStdString(g.name), tr("serial %1").arg(QString::fromStdString(g.serial)), {});
        gauge.id = "gauge:" + QString::fromStdString(g.id);
        gauge.mark = papersLate ? Mark::Fail : Mark::Pass;
        gauge.chevron = true;
        gauges.push_back(std::move(gauge));
        gauges.push_back(paper(tr("Calibration"), g.id, g.calibratedOn, g.calibrationExpires, tr("of %1").arg(dateText(g.calibratedOn))));
        gauges.push_back(paper(tr("Leak test"), g.id, g.leakTestedOn, g.leakTestExpires,
                               tr("of %1, %2").arg(dateText(g.leakTestedOn), sealedWord(g.leakTestResult))));
        Row custody = Row::ofWords(tr("Custody"), g.custodyEvent.empty() ? tr("no record") : sealedWord(g.custodyEvent),
                                   g.custodyAt.empty() ? QString() : localText(g.custodyAt, m_session->offsetMinutes(), "MMM d, h:mm"));
        custody.id = "custody:" + QString::fromStdString(g.id);
        custody.chevron = true;
        gauges.push_back(std::move(custody));
    }
    for (auto at = all.standardCounts.rbegin(); at != all.standardCounts.rend() && counts.size() < kNewestCounts; ++at) {
        Row row;
        row.id = "counts:" + QString::fromStdString(at->gauge);
        row.mark = at->accepted ? Mark::Pass : Mark::Fail;
        row.title = localText(at->at, at->offsetMinutes, "MMM d, h:mm");
        row.second = at->densityDeviationPct && at->moistureDeviationPct
                         ? tr("%1 %, %2 % off the mean").arg(signedText(*at->densityDeviationPct, 1), signedText(*at->moistureDeviationPct, 1)) : tr("no earlier counts");
        row.figure = figureText(at->density, 0);
        row.word = figureText(at->moisture, 0);
        counts.push_back(std::move(row));
    }
    m_gauges.setRows(std::move(gauges));
    m_standardCounts.setRows(std::move(counts));
}

void KitView::refreshOffsets()
{
    std::vector<Row> rows;
    if (m_session->isOpen()) {
        const auto records = m_session->store().records({.subject = {}, .kind = "offset"});
        for (std::size_t i = 0; records && i < records->size(); ++i) {
            const auto& record = (*records)[i];
            const bool replaced = std::any_of(records->begin(), records->end(), [&](const auto& other) { return other.amends == record.hash; });
            if (replaced)
                continue;
            const std::string expires = book::textAt(record.body, "expires");
            const auto gauge = std::find_if(m_session->snapshot().gauges.begin(), m_session->snapshot().gauges.end(),
                                            [&](const auto& g) { return g.id == book::textAt(record.body, "gauge"); });
            Row row = Row::ofWords(sealedTitle(book::textAt(record.body, "offset_kind")), dateText(book::textAt(record.body, "on")),
                                   expires.empty() ? QString() : isPast(expires, *m_session) ? tr("ended %1").arg(dateText(expires)) : tr("until %1").arg(dateText(expires)));
            if (gauge != m_session->snapshot().gauges.end())
                row.second = QString::fromStdString(gauge->name) + ", " + row.second;
            row.id = "offset:" + QString::fromStdString(record.subject);
            row.mark = isPast(expires, *m_session) ? Mark::Void : Mark::Pass;
            rows.insert(rows.begin(), std::move(row));
        }
    }
    m_offsets.setRows(std::move(rows));
}

}  // namespace groundcount::view
