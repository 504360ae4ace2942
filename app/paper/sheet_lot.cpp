#include "book/job_rules.h"
#include "book/lot_statistics.h"
#include "book/state_query.h"
#include "gis/lot_ground.h"
#include "method/decimal.h"
#include "paper/lot_chart_paint.h"
#include "paper/lot_plan_paint.h"
#include "paper/paper_ink.h"
#include "paper/paper_text.h"

#include <QPainter>

#include <algorithm>
#include <memory>

namespace groundcount::paper {
namespace {

struct LotMap {
    book::LotRow lot;
    std::vector<book::TestRow> tests;
    std::vector<book::SiteRow> owed;
};

QString lotRange(const book::LotRow& lot)
{
    if (!lot.beginStationFt || !lot.endStationFt)
        return lot.area.empty() ? QString() : Words::tr("by its corners");
    return Words::tr("%1 to %2").arg(stationText(lot.beginStationFt), stationText(lot.endStationFt));
}

/// The lot straightened along its line: station to the right, left of the line upward.
void drawLot(QPainter& painter, const QRectF& box, const LotMap& map)
{
    const double begin = *map.lot.beginStationFt;
    const double end = *map.lot.endStationFt;
    const double leftFt = map.lot.leftFt.value_or(0);
    const double rightFt = map.lot.rightFt.value_or(0);
    const QRectF area = box.adjusted(10, 14, -10, -16);
    const auto at = [&](double station, double offset) {
        return QPointF(area.left() + area.width() * (station - begin) / (end - begin), area.top() + area.height() * (offset + leftFt) / (leftFt + rightFt));
    };
    painter.setPen(QPen(kInk, 1.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.setPen(QPen(kHair, 0.6, Qt::DashDotLine));
    painter.drawLine(at(begin, 0), at(end, 0));
    painter.setPen(QPen(kHair, 0.5));
    for (int i = 1; i < map.lot.sublots; ++i) {
        const double x = area.left() + area.width() * i / map.lot.sublots;
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    }
    painter.setFont(labelFont());
    painter.setPen(kInk2);
    painter.drawText(QRectF(area.left(), area.bottom() + 3, 80, 10), Qt::AlignLeft, stationText(begin));
    painter.drawText(QRectF(area.right() - 80, area.bottom() + 3, 80, 10), Qt::AlignRight, stationText(end));
    for (const auto& site : map.owed)
        if (site.stationFt && site.offsetFt)
            drawOwedMark(painter, at(*site.stationFt, *site.offsetFt));
    for (const auto& test : map.tests)
        if (test.stationFt && test.offsetFt && test.state != book::TestState::Void)
            drawTestMark(painter, at(*test.stationFt, *test.offsetFt), test);
}

/// The drawing of one lift: along its line, or by its corners; nothing for ground that is not sealed.
void addMap(Document& sheet, const LotMap& map, const book::JobRow& job)
{
    const book::LotRow& lot = map.lot;
    if (!lot.area.empty()) {
        const auto ground = gis::lotGround(lot, job, {});
        if (!ground)
            return sheet.blocks.push_back(Paragraph{text(ground.error().what)});
        const auto plan = std::make_shared<LotPlan>(LotPlan{*ground, map.tests, map.owed, job.gridUnit == "m" ? QStringLiteral("m") : QStringLiteral("ft")});
        return sheet.blocks.push_back(Drawing{190, [plan](QPainter& p, const QRectF& box) { drawLotPlan(p, box, *plan); }});
    }
    if (lot.beginStationFt && lot.endStationFt && *lot.endStationFt > *lot.beginStationFt && lot.leftFt.value_or(0) + lot.rightFt.value_or(0) > 0) {
        const auto drawn = std::make_shared<LotMap>(map);
        sheet.blocks.push_back(Drawing{96, [drawn](QPainter& p, const QRectF& box) { drawLot(p, box, *drawn); }});
    }
}

Table liftTable(const std::vector<book::TestRow>& tests, const QString& unit)
{
    Table table{{{Words::tr("No."), 0.7}, {Words::tr("When"), 1.9}, {Words::tr("Kind"), 1.1}, {Words::tr("Station, offset"), 1.8}, {Words::tr("Dry %1").arg(unit), 0.9, Align::Right}, {Words::tr("Max. %1").arg(unit), 0.9, Align::Right}, {Words::tr("Compaction %"), 1, Align::Right}, {Words::tr("Moisture %"), 0.9, Align::Right}, {Words::tr("Result"), 1.3}, {Words::tr("Record"), 1.1}}, {}, Words::tr("No test.")};
    for (const auto& test : tests)
        table.rows.push_back({text(test.number), localTime(test.startedAt, test.offsetMinutes), purposeWord(test.purpose) + (test.retestOfNumber.empty() ? QString() : ' ' + text(test.retestOfNumber)), stationText(test.stationFt) + ' ' + offsetText(test.offsetFt),
                              figure(test.dry), figure(test.maximum), figure(test.compactionPct), figure(test.contentPct), stateWord(test.state), text(test.recordHash).left(8)});
    return table;
}

template <class T, class Shown>
QString shownOr(const book::Figure<T>& figure, Shown shown)
{
    return figure.value ? shown(*figure.value) : text(figure.whyNot);
}

/// The lot's figures; where there is none, the sentence that says why.
Facts statisticsOf(const book::LotStatistics& figures)
{
    const auto number = [](double value, int places) { return figure(reportedText(value, places, TieRule::HalfEven)); };
    QStringList left;
    for (const auto& one : figures.leftOut)
        left.append(text(one));
    return {{{Words::tr("Random tests needed, made"), QString::number(figures.required) + ", " + QString::number(figures.made)}, {Words::tr("Mean compaction %"), shownOr(figures.mean, [&](double mean) { return number(mean, 2); })},
             {Words::tr("Standard deviation"), shownOr(figures.spread, [&](const method::Spread& spread) { return number(spread.sd, 2); })},
             {Words::tr("Percent within limits"), shownOr(figures.pwl, [&](const method::LotPwl& pwl) { return number(pwl.pwl, 1); })},
             {Words::tr("Do not enter"), left.isEmpty() ? QStringLiteral("–") : left.join(QStringLiteral("; "))}},
            2};
}

/// Each control chart of the lot, drawn as on the screen.
void addCharts(Document& sheet, const book::LotStatistics& figures, const std::vector<book::TestRow>& tests, const book::StatisticsRules& rules)
{
    const auto charts = book::controlCharts(tests, figures.lot);
    if (!charts)
        return;
    for (const auto& chart : *charts) {
        if (chart.tests.size() < 2)
            continue;
        const auto drawn = std::make_shared<book::LotChart>(book::compactionChart(chart, figures.limits, rules.movingMean));
        sheet.blocks.push_back(Heading{Words::tr("Compaction in order, %1, %2").arg(text(chart.tests.front()->proctorName), text(chart.tests.front()->gaugeName))});
        sheet.blocks.push_back(Drawing{150, [drawn](QPainter& p, const QRectF& box) { drawLotChart(p, *drawn, box, paperChartInk()); }});
    }
}

QString requirementOf(const book::LotRow& lot)
{
    const QString low = lot.minimumPctText.empty() ? QString() : Words::tr("at least %1 %").arg(figure(lot.minimumPctText));
    const QString high = lot.maximumPctText.empty() ? QString() : Words::tr("at most %1 %").arg(figure(lot.maximumPctText));
    return low + (low.isEmpty() || high.isEmpty() ? QString() : QStringLiteral(", ")) + high;
}

}  // namespace

Result<Document> lotSheet(const Source& source, const std::string& id)
{
    const book::StateQuery query(source.store);
    const auto lots = query.lots();
    const auto lifts = query.lifts(id);
    const auto tests = query.tests({.lot = id, .lift = {}, .person = {}});
    const auto sites = query.sites(id, {});
    const auto job = query.job();
    if (!lots || !lifts || !tests || !sites || !job)
        return tl::unexpected(!lots ? lots.error() : !lifts ? lifts.error() : !tests ? tests.error() : !sites ? sites.error() : job.error());
    const auto lot = std::find_if(lots->begin(), lots->end(), [&](const auto& one) { return one.id == id; });
    if (lot == lots->end())
        return refused("The book has no lot " + id + ".");
    Document sheet = headed(source, *job, Words::tr("Lot %1").arg(text(lot->name)), lotRange(*lot));
    const auto owed = std::count_if(sites->begin(), sites->end(), [](const auto& site) { return site.testId.empty(); });
    const auto rules = book::jobRules(source.store).and_then(book::statisticsRules);
    const auto figures = rules ? book::lotStatistics(*lot, *lifts, *tests, job->metresPerGridUnit, *rules) : Result<book::LotStatistics>(tl::unexpected(rules.error()));
    if (!figures)
        return tl::unexpected(figures.error());
    sheet.blocks.push_back(Facts{{{Words::tr("Stations"), lotRange(*lot)}, {Words::tr("Compaction"), requirementOf(*lot)}, {Words::tr("Moisture window"), text(lot->windowKind) + ' ' + figure(lot->windowLowText) + ' ' + figure(lot->windowHighText)},
                                  {Words::tr("Tests needed in a lift"), QString::number(lot->testsPerLift)}, {Words::tr("Lifts"), QString::number(lifts->size())}, {Words::tr("Tests made"), QString::number(tests->size())},
                                  {Words::tr("Drawn sites owed"), QString::number(owed)}, {Words::tr("Failures not yet passed again"), QString::number(figures->openFailures.size())}}});
    sheet.blocks.push_back(statisticsOf(*figures));
    addCharts(sheet, *figures, *tests, *rules);
    for (auto lift = lifts->rbegin(); lift != lifts->rend(); ++lift) {
        LotMap map{*lot, {}, {}};
        std::copy_if(tests->begin(), tests->end(), std::back_inserter(map.tests), [&](const auto& test) { return test.lift == lift->id; });
        std::copy_if(sites->begin(), sites->end(), std::back_inserter(map.owed), [&](const auto& site) { return site.lift == lift->id && site.testId.empty(); });
        sheet.blocks.push_back(Heading{Words::tr("Lift %1").arg(lift->number)});
        addMap(sheet, map, *job);
        sheet.blocks.push_back(liftTable(map.tests, densityUnit(*job)));
    }
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Technician"), Words::tr("Project engineer")}});
    sheet.code = tests->empty() ? text(lot->hash) : text(tests->back().recordHash);
    return sheet;
}

}  // namespace groundcount::paper
