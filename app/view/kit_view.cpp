#include "view/kit_view.h"

#include "view/figure_text.h"

#include <algorithm>

namespace groundcount::view {
namespace {

/// "2026-06-09" -> "Jun 9, 2026"; empty stays empty.
QString dateText(const std::string& date)
{
    const QDate day = QDate::fromString(QString::fromStdString(date), Qt::ISODate);
    return day.isValid() ? QLocale(QLocale::English, QLocale::UnitedStates).toString(day, "MMM d, yyyy") : QString::fromStdString(date);
}

QString markWord(method::Mark mark)
{
    switch (mark) {
    case method::Mark::Seen: return KitView::tr("seen");
    case method::Mark::SecondHand: return KitView::tr("second-hand");
    case method::Mark::Own: return KitView::tr("own");
    case method::Mark::Memory: break;
    }
    return KitView::tr("from memory");
}

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
    std::vector<Row> references, people, job;
    for (const auto& p : all.proctors) {
        const auto material = std::find_if(all.materials.begin(), all.materials.end(), [&](const auto& m) { return m.id == p.material; });
        Row row;
        row.id = QString::fromStdString(p.id);
        row.title = QString::fromStdString(p.name + (material == all.materials.end() ? "" : ", " + material->name));
        row.second = tr("%1, peak %2").arg(QString::fromStdString(p.standard), QString::fromStdString(p.peakBy));
        row.figure = shownDecimal(p.maximumText);
        row.unit = QString::fromStdString(all.job.densityUnit);
        row.word = tr("at %1 %").arg(shownDecimal(p.optimumText));
        references.push_back(std::move(row));
    }
    for (const auto& p : all.people) {
        Row row;
        row.id = QString::fromStdString(p.id);
        row.title = QString::fromStdString(p.name);
        row.second = QString::fromStdString(p.role) + (p.certificate.empty() ? QString() : ", " + QString::fromStdString(p.certificate));
        row.word = p.certificateExpires.empty() ? QString() : tr("until %1").arg(dateText(p.certificateExpires));
        people.push_back(std::move(row));
    }
    if (!all.job.id.empty()) {
        job.push_back(Row::ofWords(tr("Job"), QString::fromStdString(all.job.name + (all.job.place.empty() ? "" : ", " + all.job.place)), {}));
        job.push_back(Row::ofWords(tr("Coordinate system"), QString::fromStdString(all.job.crsName),
                                   all.job.epsg ? QStringLiteral("EPSG:%1").arg(all.job.epsg) : QString()));
        job.push_back(Row::ofWords(tr("Densities in"), {}, QString::fromStdString(all.job.densityUnit)));
        job.push_back(Row::ofWords(tr("Field book"), m_session->bookName(), {}));
    }
    m_references.setRows(std::move(references));
    m_people.setRows(std::move(people));
    m_job.setRows(std::move(job));
    refreshRules();
    emit changed();
}

void KitView::refreshGauges()
{
    const Snapshot& all = m_session->snapshot();
    std::vector<Row> gauges, counts;
    const QDate today = m_session->now().toOffsetFromUtc(m_session->offsetMinutes() * 60).date();
    for (const auto& g : all.gauges) {
        const auto late = [&](const std::string& date) {
            const QDate day = QDate::fromString(QString::fromStdString(date), Qt::ISODate);
            return day.isValid() && day < today;
        };
        const bool papersLate = late(g.calibrationExpires) || late(g.leakTestExpires);
        Row gauge = Row::ofWords(QString::fromStdString(g.name), tr("serial %1").arg(QString::fromStdString(g.serial)),
                                 g.custodyEvent.empty() ? tr("no custody record") : QString::fromStdString(g.custodyEvent));
        gauge.id = QString::fromStdString(g.id);
        gauge.mark = papersLate ? Mark::Fail : Mark::Pass;
        gauges.push_back(std::move(gauge));
        const auto until = [](const std::string& date) { return date.empty() ? QString() : tr("until %1").arg(dateText(date)); };
        gauges.push_back(Row::ofWords(tr("Calibration"), g.calibratedOn.empty() ? tr("none sealed") : tr("of %1").arg(dateText(g.calibratedOn)),
                                      until(g.calibrationExpires)));
        gauges.push_back(Row::ofWords(tr("Leak test"),
                                      g.leakTestedOn.empty() ? tr("none sealed")
                                                             : tr("of %1, %2").arg(dateText(g.leakTestedOn), QString::fromStdString(g.leakTestResult)),
                                      until(g.leakTestExpires)));
    }
    for (auto at = all.standardCounts.rbegin(); at != all.standardCounts.rend(); ++at) {
        Row row;
        row.id = QString::fromStdString(at->hash);
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

void KitView::refreshRules()
{
    const auto& rules = m_session->ruleSet();
    m_rulesTitle = tr("%1, rev. %2").arg(QString::fromStdString(rules.name), QString::fromStdString(rules.revision));
    std::vector<Row> limits, choices;
    for (const auto& key : method::limitKeys()) {
        const auto& limit = rules.limits.find(key.key)->second;
        Row row;
        row.title = QString::fromUtf8(key.meaning.data(), static_cast<qsizetype>(key.meaning.size()));
        row.title[0] = row.title[0].toUpper();
        row.second = tr("%1, %2").arg(QString::fromStdString(limit.source), markWord(limit.mark));
        row.figure = shownDecimal(limit.value.text());
        row.unit = QString::fromStdString(limit.unit);
        limits.push_back(std::move(row));
    }
    for (const auto& key : method::choiceKeys()) {
        const auto& choice = rules.choices.find(key.key)->second;
        Row row;
        row.title = QString::fromUtf8(key.meaning.data(), static_cast<qsizetype>(key.meaning.size()));
        row.title[0] = row.title[0].toUpper();
        row.second = tr("%1 (%2, %3)").arg(QString::fromStdString(choice.word), QString::fromStdString(choice.source), markWord(choice.mark));
        choices.push_back(std::move(row));
    }
    m_limits.setRows(std::move(limits));
    m_choices.setRows(std::move(choices));
}

}  // namespace groundcount::view
