#include "book/lot_chart.h"

#include "method/decimal.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace groundcount::book {

namespace {

std::optional<double> valueOf(const std::string& text)
{
    const auto decimal = Decimal::parse(text);
    return decimal ? std::optional(decimal->value()) : std::nullopt;
}

void addMoving(LotChart& chart, std::span<const double> values, int k)
{
    const auto window = static_cast<std::size_t>(std::max(2, k));
    for (std::size_t i = 0; i + window <= values.size(); ++i)
        if (const auto mean = method::meanOf(values.subspan(i, window)))
            chart.moving.emplace_back(i + window - 1, *mean);
}

void addPoint(LotChart& chart, const TestRow& t, double value)
{
    chart.points.push_back({value, t.state, t.number, t.id, t.liftNumber, false});
}

void addLimits(LotChart& chart, const Figure<method::IndividualsChart>& limits)
{
    if (!limits.value)
        return;
    chart.lower = limits.value->values.lower;
    chart.centre = limits.value->values.centre;
    chart.upper = limits.value->values.upper;
}

}  // namespace

void fitAxis(LotChart& chart)
{
    double low = 0, high = 0;
    bool any = false;
    const auto take = [&](double v) {
        low = any ? std::min(low, v) : v;
        high = any ? std::max(high, v) : v;
        any = true;
    };
    for (const auto& p : chart.points)
        take(p.value);
    for (const auto& v : {chart.needLow, chart.needHigh, chart.lower, chart.upper})
        if (v)
            take(*v);
    if (!any || !std::isfinite(high - low))
        return;
    const double reach = std::max(high - low, 1.0);
    const double power = std::pow(10, std::floor(std::log10(reach / 4)));
    chart.step = power;
    for (const double factor : {2.0, 5.0, 10.0})
        if (reach / chart.step > 6)
            chart.step = power * factor;
    chart.bottom = std::floor((low - reach * 0.05) / chart.step) * chart.step;
    chart.top = std::ceil((high + reach * 0.05) / chart.step) * chart.step;
}

LineProfile lineProfile(std::span<const LotRow> lots, std::span<const LiftRow> lifts, std::span<const TestRow> tests, const std::string& lot)
{
    LineProfile profile;
    const auto chosen = std::find_if(lots.begin(), lots.end(), [&](const LotRow& l) { return l.id == lot; });
    if (chosen == lots.end() || !chosen->beginStationFt || !chosen->endStationFt)
        return profile;
    std::set<std::string_view> shown;
    for (const LotRow& l : lots)
        if (l.alignment == chosen->alignment && l.beginStationFt && l.endStationFt) {
            profile.lots.push_back({l.name, *l.beginStationFt, *l.endStationFt, l.id == lot});
            shown.insert(l.id);
        }
    std::sort(profile.lots.begin(), profile.lots.end(), [](const auto& a, const auto& b) { return a.beginFt < b.beginFt; });
    profile.beginFt = profile.lots.front().beginFt;
    for (const auto& range : profile.lots)
        profile.endFt = std::max(profile.endFt, range.endFt);
    bool any = false;
    for (const LiftRow& l : lifts)
        if (shown.contains(l.lot)) {
            profile.lowest = any ? std::min(profile.lowest, l.number) : l.number;
            profile.highest = any ? std::max(profile.highest, l.number) : l.number;
            any = true;
        }
    for (const TestRow& t : tests)
        if (shown.contains(t.lot) && t.stationFt && t.state != TestState::Void)
            profile.points.push_back({*t.stationFt, t.liftNumber, t.state, t.number});
    return profile;
}

LotChart compactionChart(const ChartOfTests& from, const method::PwlLimits& need, int k)
{
    LotChart chart;
    chart.unit = "%";
    chart.needLow = need.lower;
    chart.needHigh = need.upper;
    std::vector<double> values;
    for (const TestRow* t : from.tests) {
        values.push_back(valueOf(t->compactionPct).value_or(0));
        addPoint(chart, *t, values.back());
    }
    for (const std::size_t i : from.outside)
        chart.points[i].isFlagged = true;
    addLimits(chart, from.chart);
    addMoving(chart, values, k);
    fitAxis(chart);
    return chart;
}

LotChart moistureChart(const MoistureTrend& trend, const LotRow& lot, int k)
{
    LotChart chart;
    chart.unit = "points";
    if (lot.windowKind == "points") {
        chart.needLow = valueOf(lot.windowLowText);
        chart.needHigh = valueOf(lot.windowHighText);
    }
    for (std::size_t i = 0; i < trend.tests.size(); ++i)
        addPoint(chart, *trend.tests[i], trend.points[i]);
    addLimits(chart, trend.chart);
    if (trend.chart.value)
        for (auto& p : chart.points)
            p.isFlagged = p.value < *chart.lower || p.value > *chart.upper;
    addMoving(chart, trend.points, k);
    fitAxis(chart);
    return chart;
}

}  // namespace groundcount::book
