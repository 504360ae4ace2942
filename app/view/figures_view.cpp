// Longer than 250 lines: one page: each figure beside its arithmetic and its plot.
#include "view/figures_view.h"

#include "book/store.h"
#include "method/decimal.h"
#include "method/explain/explain_lot.h"
#include "view/figure_text.h"

#include <algorithm>

namespace groundcount::view {
namespace {

std::vector<double> valuesOf(const book::LotStatistics& lot)
{
    std::vector<double> values;
    for (const auto& v : lot.values)
        values.push_back(v.compactionPct);
    return values;
}

/// As groundbook and the sheet write it.
QString reported(double value, int places)
{
    return shownDecimal(reportedText(value, places, TieRule::HalfEven));
}

QString told(const std::string& sentence)
{
    return QString::fromStdString(sentence);
}

template <class Named>
QString nameOf(const std::vector<Named>& list, const std::string& id)
{
    const auto at = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.id == id; });
    return at == list.end() ? FiguresView::tr("not known") : QString::fromStdString(at->name);
}

}  // namespace

void FiguresView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &FiguresView::refresh);
    refresh();
    emit sessionChanged();
}

void FiguresView::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    m_unfolded.clear();
    m_shownPlot = 0;
    refresh();
}

void FiguresView::unfold(const QString& id)
{
    m_unfolded = id == m_unfolded ? QString() : id;
    bool isNumber = false;
    const auto index = static_cast<std::size_t>(m_unfolded.toInt(&isNumber));
    m_arithmetic.setSteps(isNumber && index < m_steps.size() ? m_steps[index] : Steps());
    emit unfoldedChanged();
}

void FiguresView::showPlot(int index)
{
    if (index == m_shownPlot || index < 0 || index >= static_cast<int>(m_plots.size()))
        return;
    m_shownPlot = index;
    emit plotChanged();
}

LotPlot FiguresView::plot() const
{
    return m_plots.empty() ? LotPlot() : m_plots[static_cast<std::size_t>(m_shownPlot)];
}

void FiguresView::refresh()
{
    if (!m_session || !m_session->isOpen() || m_lot.isEmpty())
        return;
    m_rows.clear();
    m_steps.clear();
    m_plots.clear();
    m_plotNames.clear();
    m_trouble.clear();
    ++m_revision;
    const auto& lots = m_session->snapshot().lots;
    const auto lot = std::find_if(lots.begin(), lots.end(), [&](const auto& l) { return l.id == m_lot.toStdString(); });
    if (lot != lots.end()) {
        std::vector<book::TestRow> tests;
        for (const auto& test : m_session->snapshot().tests)
            if (test.lot == lot->id)
                tests.push_back(test);
        m_title = tr("Lot %1").arg(QString::fromStdString(lot->name));
        fill(*lot, tests);
    }
    m_figures.setRows(m_rows);
    m_shownPlot = std::min(m_shownPlot, std::max(0, static_cast<int>(m_plots.size()) - 1));
    const QString open = std::exchange(m_unfolded, QString());
    unfold(open);
    emit changed();
    emit plotChanged();
}

void FiguresView::fill(const book::LotRow& lot, const std::vector<book::TestRow>& tests)
{
    const auto rules = book::statisticsRules(m_session->ruleSet());
    const auto figures = rules ? book::lotStatistics(lot, m_session->snapshot().lifts, tests, m_session->metresPerGridUnit(), *rules)
                               : Result<book::LotStatistics>(tl::unexpected(rules.error()));
    if (!figures) {
        m_trouble = told(figures.error().what);
        return;
    }
    addStatistics(*figures, *rules);
    addOutlier(*figures, *rules);
    addCharts(tests, *figures, *rules);
    addMoisture(lot, tests, rules->movingMean);
    addComparisons(tests);
}

void FiguresView::addFigure(const QString& title, const QString& second, const QString& figure, const QString& unit, Steps steps)
{
    Row row;
    row.id = QString::number(m_rows.size());
    row.title = title;
    row.second = second;
    row.figure = figure;
    row.unit = unit;
    row.chevron = !steps.empty();
    m_rows.push_back(std::move(row));
    m_steps.push_back(std::move(steps));
}

void FiguresView::addPlot(const QString& name, book::LotChart chart)
{
    LotPlot plot;
    plot.title = name;
    plot.revision = m_revision;
    plot.spoken = tr("%1: %n result(s) in order", nullptr, static_cast<int>(chart.points.size())).arg(name);
    const auto flagged = std::count_if(chart.points.begin(), chart.points.end(), [](const auto& p) { return p.isFlagged; });
    if (flagged > 0)
        plot.spoken += ", " + tr("%n outside the control limits", nullptr, static_cast<int>(flagged));
    plot.chart = std::move(chart);
    m_plotNames << name;
    m_plots.push_back(std::move(plot));
}

void FiguresView::addStatistics(const book::LotStatistics& lot, const book::StatisticsRules& rules)
{
    const QString percent = QStringLiteral("%");
    const QString entered = tr("%n result(s) enter", nullptr, static_cast<int>(lot.values.size())) + (lot.leftOut.empty() ? QString() : ", " + tr("%n left out", nullptr, static_cast<int>(lot.leftOut.size())));
    const auto spread = book::explainSpread(lot);
    addFigure(tr("Mean compaction"), lot.mean.value ? entered : told(lot.mean.whyNot), lot.mean.value ? reported(*lot.mean.value, 2) : QString(), lot.mean.value ? percent : QString(), spread);
    addFigure(tr("Standard deviation"), lot.spread.value ? tr("with n − 1") : told(lot.spread.whyNot), lot.spread.value ? reported(lot.spread.value->sd, 2) : QString(), lot.spread.value ? percent : QString(), spread);
    addFigure(tr("Percent within limits"), lot.pwl.value ? tr("by the rule set's rounding chain") : told(lot.pwl.whyNot), lot.pwl.value ? reported(lot.pwl.value->pwl, 1) : QString(),
              lot.pwl.value ? percent : QString(), lot.pwl.value ? method::explainPwl(lot.limits, rules.chain, *lot.pwl.value) : Steps());
    addFigure(tr("Moving mean of %1").arg(rules.movingMean), lot.movingMeans.empty() ? tr("fewer than %1 results").arg(rules.movingMean) : tr("the last one"),
              lot.movingMeans.empty() ? QString() : reported(lot.movingMeans.back(), 2), lot.movingMeans.empty() ? QString() : percent, book::explainMovingMean(lot, rules.movingMean));
}

void FiguresView::addOutlier(const book::LotStatistics& lot, const book::StatisticsRules& rules)
{
    if (!lot.outlier.value) {
        addFigure(tr("Outlier"), told(lot.outlier.whyNot), {}, {}, {});
        return;
    }
    const auto& test = *lot.outlier.value;
    const QString number = QString::fromStdString(lot.values[test.index].test->number);
    addFigure(test.flagged ? tr("Outlier: test %1").arg(number) : tr("No outlier"), test.flagged ? tr("flagged, never dropped by itself") : tr("test %1 lies farthest out").arg(number),
              reported(lot.values[test.index].compactionPct, 1), QStringLiteral("%"), method::explainOutlier(valuesOf(lot), rules.outlierLevel, method::Sides::Two, test));
}

void FiguresView::addCharts(const std::vector<book::TestRow>& tests, const book::LotStatistics& lot, const book::StatisticsRules& rules)
{
    const auto charts = book::controlCharts(tests, lot.lot);
    if (!charts) {
        m_trouble = told(charts.error().what);
        return;
    }
    const Snapshot& all = m_session->snapshot();
    for (const auto& chart : *charts) {
        const QString name = nameOf(all.materials, chart.material) + ", " + nameOf(all.proctors, chart.proctor) + ", " + nameOf(all.gauges, chart.gauge);
        QStringList outside;
        for (const auto i : chart.outside)
            outside << QString::fromStdString(chart.tests[i]->number);
        Steps steps;
        if (chart.chart.value) {
            std::vector<double> values;
            for (const auto* t : chart.tests)
                values.push_back(QString::fromStdString(t->compactionPct).toDouble());
            steps = method::explainIndividuals(values, *chart.chart.value);
        }
        addFigure(tr("Control chart"), name + (!chart.chart.value ? ". " + told(chart.chart.whyNot) : outside.isEmpty() ? ", " + tr("none outside") : ", " + tr("outside: %1").arg(outside.join(", "))),
                  chart.chart.value ? QString::number(outside.size()) : QString(), chart.chart.value ? tr("of %1").arg(chart.tests.size()) : QString(), std::move(steps));
        addPlot(charts->size() == 1 ? tr("Compaction") : nameOf(all.gauges, chart.gauge) + ", " + nameOf(all.proctors, chart.proctor), book::compactionChart(chart, lot.limits, rules.movingMean));
    }
}

void FiguresView::addMoisture(const book::LotRow& lot, const std::vector<book::TestRow>& tests, int k)
{
    const auto trend = book::moistureTrend(tests, lot.id, k);
    if (!trend) {
        m_trouble = told(trend.error().what);
        return;
    }
    if (trend->points.empty())
        return;
    addFigure(tr("Moisture less optimum"), trend->movingMeans.empty() ? tr("fewer than %1 results").arg(k) : tr("moving mean, %1 at first").arg(signedText(trend->movingMeans.front(), 1)),
              signedText(trend->movingMeans.empty() ? trend->points.back() : trend->movingMeans.back(), 1), tr("points"),
              trend->chart.value ? method::explainIndividuals(trend->points, *trend->chart.value) : Steps());
    addPlot(tr("Moisture"), book::moistureChart(*trend, lot, k));
}

void FiguresView::addComparisons(const std::vector<book::TestRow>& tests)
{
    const auto rules = book::comparisonRules(m_session->ruleSet());
    const auto parties = book::partiesOf(m_session->store());
    if (!rules || !parties) {
        m_trouble = told(rules ? parties.error().what : rules.error().what);
        return;
    }
    const double unit = m_session->metresPerGridUnit();
    if (const auto all = book::compareParties(tests, {}, *parties, unit, *rules)) {
        for (const auto& c : *all)
            addComparison(tr("Contractor against agency"), c, *rules);
        if (all->empty())
            addFigure(tr("Contractor against agency"), tr("Only one side has random tests here."), {}, {}, {});
    }
    if (const auto all = book::compareGauges(tests, {}, unit, *rules)) {
        for (const auto& c : *all)
            addComparison(tr("%1 against %2").arg(QString::fromStdString(c.x.name), QString::fromStdString(c.y.name)), c, *rules);
        if (all->empty())
            addFigure(tr("Gauge against gauge"), tr("Only one gauge has random tests here."), {}, {}, {});
    }
}

void FiguresView::addComparison(const QString& title, const book::Comparison& c, const book::ComparisonRules& rules)
{
    QStringList words{tr("%1 and %2 results").arg(c.x.values.size()).arg(c.y.values.size())};
    words << (!c.variances.value ? told(c.variances.whyNot) : c.variances.value->different ? tr("spread differs") : tr("no difference in spread shown"));
    words << (!c.means.value ? told(c.means.whyNot) : c.means.value->different ? tr("means differ") : tr("no difference of means shown"));
    if (c.paired.value)
        words << (c.paired.value->different ? tr("%n pair(s) differ", nullptr, static_cast<int>(c.pairsX.values.size())) : tr("%n pair(s) show no difference", nullptr, static_cast<int>(c.pairsX.values.size())));
    addFigure(title, words.join(QStringLiteral(", ")), c.means.value ? signedText(c.means.value->difference, 2) : QString(), c.means.value ? QStringLiteral("%") : QString(), book::explainComparison(c, rules));
}

}  // namespace groundcount::view
