#include "view/day_view.h"

#include "book/live.h"
#include "book/store.h"
#include "method/site/heading.h"
#include "view/figure_text.h"
#include "view/kit_form.h"
#include "view/limit_scale.h"
#include "view/sealed_words.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>
#include <ranges>
#include <cmath>

namespace groundcount::view {
namespace {

std::optional<method::Heading> towards(const std::optional<OwnPlace>& own, const book::SiteRow& site, double metresPerUnit)
{
    if (!own)
        return std::nullopt;
    const auto way = method::headingOf({Length::metres((site.north - own->north) * metresPerUnit), Length::metres((site.east - own->east) * metresPerUnit)});
    return way ? std::optional(*way) : std::nullopt;
}

CountLine countLine(const QString& label, double count, const std::optional<double>& deviationPct, double limitPct, const std::optional<double>& mean)
{
    CountLine line;
    line.label = label;
    line.figure = figureText(count, 0);
    line.mark = !deviationPct ? Mark::Waiting : std::fabs(*deviationPct) <= limitPct ? Mark::Pass : Mark::Fail;
    LimitReading reading;
    reading.low = -limitPct;
    reading.high = limitPct;
    reading.value = deviationPct;
    const LimitScale scale(-1.6 * limitPct, 1.6 * limitPct);
    const LimitFigure figure = scale.place(reading, line.mark);
    line.lowLimit = figure.lowLimit;
    line.highLimit = figure.highLimit;
    line.value = figure.value;
    const QString limit = QChar(0x00B1) + figureText(limitPct, limitPct == std::floor(limitPct) ? 0 : 1) + " %";
    line.deviation = deviationPct ? DayView::tr("%1 of %2").arg(signedText(*deviationPct, 1), limit)
                                  : mean ? DayView::tr("mean %1 %2").arg(figureText(*mean, 0), limit) : limit;
    return line;
}

}  // namespace

DayView::DayView(QObject* parent) : QObject(parent) {}

void DayView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &DayView::refresh);
    connect(session, &Session::placeChanged, this, [this] { refreshOwed(); emit changed(); });
    refresh();
    emit sessionChanged();
}

void DayView::setWhole(bool whole)
{
    if (m_whole == whole)
        return;
    m_whole = whole;
    if (m_session)
        refreshTests();
    emit changed();
}

void DayView::refresh()
{
    const auto& job = m_session->job();
    m_hasJob = !job.id.empty();
    m_emptyText = m_hasJob ? QString() : tr("This field book holds no job yet. Begin one here, or join the job of a crew.");
    m_title = localText(m_session->now().toUTC().toString(Qt::ISODateWithMs).toStdString(), m_session->offsetMinutes(), tr("dddd, MMMM d"));
    m_place = QString::fromStdString(job.name);
    refreshGauge();
    refreshKitAct();
    refreshOwed();
    refreshTests();
    emit changed();
}

void DayView::refreshGauge()
{
    const auto& gauge = m_session->gauge();
    m_gaugeMissing = m_session->gaugeMissing();
    m_gaugeName = gauge ? QString::fromStdString(gauge->name) : tr("No gauge");
    const bool ready = gauge && m_gaugeMissing.isEmpty();
    m_gaugeMark = ready ? Mark::Pass : Mark::Nothing;
    m_gaugeStanding = ready ? tr("Ready") : tr("Not ready");
    m_canStart = m_hasJob && ready && !m_session->isReadOnly();
    m_canStartWithReason = m_hasJob && gauge && !ready && !m_session->isReadOnly();
    m_startText = m_canStart ? tr("Start a test here")
                  : m_session->isReadOnly() ? tr("Start a test: this book is read-only")
                  : !m_hasJob ? tr("Start a test: needs a job") : tr("Start a test: %1").arg(m_gaugeMissing.toLower());
    const auto* today = m_session->standardToday();
    const auto limit = [&](const char* key) { return m_session->ruleSet().limits.find(key)->second.value.value(); };
    std::vector<CountLine> lines;
    if (today) {
        lines.push_back(countLine(tr("Density"), today->density, today->densityDeviationPct, limit("standard.density"), today->densityMean));
        lines.push_back(countLine(tr("Moisture"), today->moisture, today->moistureDeviationPct, limit("standard.moisture"), today->moistureMean));
    }
    m_counts.setLines(std::move(lines));
    m_gaugePapers.clear();
    if (!gauge)
        return;
    if (today)
        m_gaugePapers = (today->accepted ? tr("Standard counts accepted %1.") : tr("Standard counts not accepted, %1."))
                            .arg(localText(today->at, today->offsetMinutes, "h:mm"));
    if (ready)
        m_gaugePapers += ' ' + tr("Papers in date.");
    if (!gauge->custodyEvent.empty()) {
        const QString event = sealedWord(gauge->custodyEvent), place = QString::fromStdString(gauge->custodyPlace);
        m_gaugePapers += ' ' + tr("Custody: %1, %2.").arg(event, place.isEmpty() ? localText(gauge->custodyAt, m_session->offsetMinutes(), "MMM d, h:mm") : place);
    }
    m_gaugePapers = m_gaugePapers.trimmed();
}

void DayView::refreshKitAct()
{
    m_kitAct.clear();
    m_kitActText.clear();
    const auto& gauge = m_session->gauge();
    if (m_session->isReadOnly() || m_gaugeMissing.isEmpty())
        return;
    if (!m_hasJob) {
        m_kitAct = QStringLiteral("job");
        m_kitActText = tr("Begin a job");
        return;
    }
    const auto* today = m_session->standardToday();
    const auto name = [&](const char* sheet) { return QString::fromLatin1(sheet) + ':' + QString::fromStdString(gauge->id); };
    if (!gauge) {
        m_kitAct = QStringLiteral("gauge");
        m_kitActText = tr("Add a gauge");
    } else if (gauge->custodyEvent == "signed in") {
        m_kitAct = name("custody");
        m_kitActText = tr("Sign the gauge out");
    } else if (gauge->calibratedOn.empty() || isPast(gauge->calibrationExpires, *m_session) || gauge->leakTestResult == "leak" || isPast(gauge->leakTestExpires, *m_session)) {
        m_kitAct = name("gauge");
        m_kitActText = tr("Open the gauge's papers");
    } else if (!today || !today->accepted) {
        m_kitAct = name("counts");
        m_kitActText = tr("Take standard counts");
    }
}

void DayView::refreshOwed()
{
    const auto& all = m_session->snapshot();
    struct Owed {
        const book::SiteRow* site;
        std::optional<method::Heading> way;
    };
    std::vector<Owed> owed;
    std::size_t drawn = 0;
    // A lot is worked lift by lift: what is owed here today is what the newest lift with a draw still lacks.
    for (const auto& lift : all.lifts) {
        const bool newer = std::any_of(all.lifts.begin(), all.lifts.end(), [&](const book::LiftRow& other) {
            return other.lot == lift.lot && other.number > lift.number &&
                   std::any_of(all.sites.begin(), all.sites.end(), [&](const auto& s) { return s.lift == other.id; });
        });
        if (newer)
            continue;
        std::vector<Owed> open;
        std::size_t ofLift = 0;
        for (const auto& site : all.sites) {
            if (site.lift != lift.id)
                continue;
            ++ofLift;
            if (site.testId.empty())
                open.push_back({&site, towards(m_session->ownPlace(), site, m_session->metresPerGridUnit())});
        }
        if (open.empty())
            continue;
        drawn += ofLift;
        owed.insert(owed.end(), open.begin(), open.end());
    }
    std::stable_sort(owed.begin(), owed.end(), [](const Owed& a, const Owed& b) {
        return a.way && b.way ? a.way->distance < b.way->distance : a.site->stationFt < b.site->stationFt;
    });
    std::vector<Row> rows;
    for (const auto& [site, way] : owed) {
        const auto lot = std::find_if(all.lots.begin(), all.lots.end(), [&](const auto& l) { return l.id == site->lot; });
        const auto lift = std::find_if(all.lifts.begin(), all.lifts.end(), [&](const auto& l) { return l.id == site->lift; });
        Row row;
        row.id = QString::fromStdString(site->draw + "/" + std::to_string(site->number));
        row.mark = Mark::Owed;
        const QStringList words = siteWords(*site).split(QStringLiteral(", "));
        row.lead = words.value(0);
        row.title = words.size() > 1 ? QStringLiteral(", ") + words.value(1) : QString();
        row.second = tr("Site %1, lot %2, lift %3").arg(site->number).arg(QString::fromStdString(lot == all.lots.end() ? "" : lot->name))
                         .arg(lift == all.lifts.end() ? 0 : lift->number);
        if (way) {
            row.figure = figureText(way->distance.feet(), 0);
            row.unit = QStringLiteral("ft");
            row.word = compassWord(way->bearingDeg);
            row.hasBearing = true;
            row.bearing = way->bearingDeg;
        }
        rows.push_back(std::move(row));
    }
    m_owedText = drawn ? tr("%1 of %2").arg(rows.size()).arg(drawn) : QString();
    m_owed.setRows(std::move(rows));
}

void DayView::refreshTests()
{
    std::vector<Row> waiting, results;
    // Tests stand by their start, so that only those a day around now are looked at: whatever offset they were sealed with, today's are among them.
    const auto& tests = m_session->snapshot().tests;
    const auto from = [&](int days) {
        const std::string at = m_session->now().addDays(days).toString(Qt::ISODateWithMs).toStdString();
        return std::lower_bound(tests.begin(), tests.end(), at, [](const book::TestRow& test, const std::string& time) { return test.startedAt < time; });
    };
    for (const book::TestRow& test : std::ranges::subrange(from(-2), from(2))) {
        if (test.state == book::TestState::Void || !m_session->isToday(test.startedAt, test.offsetMinutes))
            continue;
        // An amended test is decided again by its next verdict only.
        bool isStale = false;
        if (m_whole)
            if (const auto records = m_session->store().records({.subject = test.id, .kind = {}}))
                isStale = !book::notJudged(*records).empty();
        const bool open = isStale || test.state == book::TestState::Open || test.state == book::TestState::Waiting;
        Row row = testRow(test);
        if (open)
            row.second = isStale ? tr("amended: seal its verdict again")
                         : test.state == book::TestState::Open
                             ? tr("open since %1").arg(localText(test.startedAt, test.offsetMinutes, "h:mm"))
                             : tr("for the %1 since %2").arg(sealedWord(test.waitingFor),
                                                            localText(test.verdictAt.empty() ? test.startedAt : test.verdictAt, test.offsetMinutes, "h:mm"));
        (open ? waiting : results).push_back(std::move(row));
    }
    m_waiting.setRows(std::move(waiting));
    m_results.setRows(std::move(results));
}

}  // namespace groundcount::view
