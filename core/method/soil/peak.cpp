#include "method/soil/peak.h"

#include "method/limit.h"
#include "method/sentence.h"
#include "method/soil/in_place.h"
#include "method/soil/natural_spline.h"

#include <algorithm>

namespace groundcount::method {
namespace {

struct Sorted {
    std::vector<double> w, d;  // percent, kg/m3
};

Result<Sorted> sortedPoints(std::span<const CompactionPoint> points)
{
    if (points.size() < 3)
        return refusedValue("Number of compaction points", static_cast<double>(points.size()), "", "at least 3");
    std::vector<CompactionPoint> ordered(points.begin(), points.end());
    for (const auto& point : ordered) {
        if (!isNotNegative(point.content.percent()))
            return refusedValue("Water content of a point", point.content.percent(), " %", "at least 0");
        if (!isPositive(point.dry.kgPerM3()))
            return refusedValue("Dry density of a point", point.dry.kgPerM3(), " kg/m3", "above 0");
    }
    std::sort(ordered.begin(), ordered.end(),
              [](const CompactionPoint& a, const CompactionPoint& b) { return a.content.percent() < b.content.percent(); });
    Sorted sorted;
    for (const auto& point : ordered) {
        if (!sorted.w.empty() && point.content.percent() == sorted.w.back())
            return refused("Two points have the same water content of " + shownNumber(sorted.w.back()) +
                           " %; each must have its own.");
        sorted.w.push_back(point.content.percent());
        sorted.d.push_back(point.dry.kgPerM3());
    }
    return sorted;
}

Peak peakOf(const Vertex& v) { return {WaterContent::percent(v.x), DryDensity::kgPerM3(v.y)}; }

bool isAboveSaturation(const Peak& point, const SolidsAndWater& solids)
{
    const auto line = dryAtSaturation(solids.gs, solids.rhoW, point.optimum, 100.0);
    return line && !atMost(point.maximum.kgPerM3(), line->kgPerM3());
}

bool disagree(const PeakSearch& search, const PeakRules& rules)
{
    if (!search.parabola)
        return true;
    const auto [wLow, wHigh] = std::minmax({search.local.optimum.percent(), search.parabola->optimum.percent(), search.spline.optimum.percent()});
    const auto [dLow, dHigh] = std::minmax({search.local.maximum.kgPerM3(), search.parabola->maximum.kgPerM3(), search.spline.maximum.kgPerM3()});
    return !atMost(wHigh - wLow, rules.disagreePoints) || !atMost(dHigh - dLow, rules.disagreeDensity.kgPerM3());
}

std::vector<PeakWarning> warningsOf(const Sorted& points, std::size_t top, const PeakSearch& search,
                                    const std::optional<SolidsAndWater>& solids, const PeakRules& rules)
{
    std::vector<PeakWarning> warnings;
    const auto& w = points.w;
    const double optimum = search.local.optimum.percent();
    if (w.size() < static_cast<std::size_t>(rules.fewPoints))
        warnings.push_back(PeakWarning::FewPoints);
    const auto drier = std::count_if(w.begin(), w.end(), [&](double value) { return value < optimum; });
    const auto wetter = std::count_if(w.begin(), w.end(), [&](double value) { return value > optimum; });
    if (std::min(drier, wetter) < rules.perSide)
        warnings.push_back(PeakWarning::OneSide);
    if (!atMost(std::max(w[top] - w[top - 1], w[top + 1] - w[top]), rules.gapPoints))
        warnings.push_back(PeakWarning::Gap);
    if (solids) {
        bool above = isAboveSaturation(search.local, *solids);
        for (std::size_t i = 0; i < w.size(); ++i)
            above = above || isAboveSaturation(peakOf({w[i], points.d[i]}), *solids);
        if (above)
            warnings.push_back(PeakWarning::AboveZeroAirVoids);
    }
    if (disagree(search, rules))
        warnings.push_back(PeakWarning::MethodsDisagree);
    return warnings;
}

}  // namespace

std::string_view word(PeakWarning warning)
{
    switch (warning) {
    case PeakWarning::FewPoints:
        return "few_points";
    case PeakWarning::OneSide:
        return "one_side";
    case PeakWarning::Gap:
        return "gap";
    case PeakWarning::AboveZeroAirVoids:
        return "above_zero_air_voids";
    case PeakWarning::MethodsDisagree:
        break;
    }
    return "methods_disagree";
}

Result<PeakSearch> findPeak(std::span<const CompactionPoint> points, const std::optional<SolidsAndWater>& solids,
                            const PeakRules& rules)
{
    if (solids && !(isPositive(solids->gs) && isPositive(solids->rhoW.kgPerM3())))
        return refusedValue("Specific gravity of the solids", solids->gs, "", "above 0, with a density of water above 0");
    const auto sorted = sortedPoints(points);
    if (!sorted)
        return tl::unexpected(sorted.error());
    const auto& w = sorted->w;
    const auto& d = sorted->d;
    for (std::size_t i = 1; i + 1 < d.size(); ++i)
        if (!atMost(std::min(d[i - 1], d[i + 1]) - d[i], rules.hump.kgPerM3()))
            return refused("The point at " + shownNumber(w[i]) + " % lies more than " + shownNumber(rules.hump.kgPerM3()) +
                           " kg/m3 below both neighbours; a curve with two humps has no single peak.");
    const auto top = static_cast<std::size_t>(std::max_element(d.begin(), d.end()) - d.begin());
    if (top == 0 || top + 1 == d.size())
        return refused("The highest point, at " + shownNumber(w[top]) +
                       " %, is the " + (top == 0 ? "driest" : "wettest") + "; points on both sides of the peak are needed.");
    const auto three = [top](const std::vector<double>& v) { return std::span<const double>(v).subspan(top - 1, 3); };
    const auto local = fitParabola(three(w), three(d)).and_then([](const Parabola& p) { return vertexOf(p); });
    if (!local)
        return tl::unexpected(local.error());
    const auto spline = NaturalSpline::through(w, d);
    if (!spline)
        return tl::unexpected(spline.error());
    PeakSearch search;
    search.local = peakOf(*local);
    search.spline = peakOf(spline->highest());
    if (const auto all = fitParabola(w, d).and_then([](const Parabola& p) { return vertexOf(p); }))
        search.parabola = peakOf(*all);
    search.warnings = warningsOf(*sorted, top, search, solids, rules);
    return search;
}

}  // namespace groundcount::method
