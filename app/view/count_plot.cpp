#include "view/count_plot.h"

#include "view/figure_text.h"
#include "view/mark.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

// Four days along the foot stay apart at 360 px.
constexpr std::size_t kDays = 4;

/// The round step, 1, 2 or 5 times a power of ten, that parts `range` into three to six.
double roundStep(double range)
{
    const double raw = range / 5;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0, 10.0})
        if (factor * power >= raw)
            return factor * power;
    return 10 * power;
}

}  // namespace

bool CountPlot::operator==(const CountPlot& o) const
{
    const auto same = [](const QList<qreal>& a, const QList<qreal>& b) {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](qreal x, qreal y) { return x == y || (std::isnan(x) && std::isnan(y)); });
    };
    return same(value, o.value) && same(base, o.base) && same(lower, o.lower) && same(upper, o.upper) && marks == o.marks &&
           replacedBy == o.replacedBy && large == o.large && yLabels == o.yLabels && xLabels == o.xLabels && spoken == o.spoken;
}

CountPlot plotOf(const std::vector<PlottedCount>& sets)
{
    CountPlot plot;
    if (sets.empty())
        return plot;
    double low = sets.front().value, high = low;
    for (const auto& set : sets) {
        for (const double v : {set.value, set.lower, set.upper}) {
            if (!std::isnan(v)) {
                low = std::min(low, v);
                high = std::max(high, v);
            }
        }
    }
    const double room = std::max(1.0, 0.16 * (high - low));
    low -= room;
    high += room;
    const auto up = [&](double v) { return (v - low) / (high - low); };
    const auto along = [&](std::size_t i) { return sets.size() == 1 ? 0.5 : 0.04 + 0.92 * static_cast<double>(i) / static_cast<double>(sets.size() - 1); };
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const auto& set = sets[i];
        plot.value << up(set.value);
        plot.base << up(set.base);
        plot.lower << up(set.lower);
        plot.upper << up(set.upper);
        plot.marks << static_cast<int>(set.accepted ? Mark::Pass : Mark::Fail);
        plot.replacedBy << (!set.accepted && i + 1 < sets.size() && sets[i + 1].day == set.day ? static_cast<int>(i) + 1 : -1);
        if (set.isToday)
            plot.large = static_cast<int>(i);
    }
    const double step = roundStep(high - low);
    for (double v = std::ceil(low / step) * step; v <= high; v += step) {
        plot.yAt << up(v);
        plot.yLabels << figureText(v, 0);
    }
    QString last;
    const std::size_t shown = std::min(kDays, sets.size());
    for (std::size_t k = 0; k < shown; ++k) {
        const std::size_t i = shown == 1 ? 0 : k * (sets.size() - 1) / (shown - 1);
        if (sets[i].day == last)
            continue;
        last = sets[i].day;
        plot.xAt << along(i);
        plot.xLabels << last;
    }
    const auto refused = std::count_if(sets.begin(), sets.end(), [](const auto& set) { return !set.accepted; });
    plot.spoken = QCoreApplication::translate("CountPlot", "%1 sets, %2 not accepted, the newest %3").arg(sets.size()).arg(refused).arg(figureText(sets.back().value, 0));
    return plot;
}

}  // namespace groundcount::view
