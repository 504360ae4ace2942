#include "method/explain/explain_soil.h"

namespace groundcount::method {
namespace {

std::string pct(const auto& quantity, int places = 2) { return shown(quantity.percent(), places); }

std::string peakText(const ExplainSteps& s, const Peak& peak) { return s.withUnit(peak.maximum) + " at " + pct(peak.optimum) + " %"; }

}  // namespace

const char* sentenceOf(PeakWarning warning)
{
    switch (warning) {
    case PeakWarning::FewPoints: return "fewer points than wanted";
    case PeakWarning::OneSide: return "too few points on one side of the optimum";
    case PeakWarning::Gap: return "a wide gap beside the highest point";
    case PeakWarning::AboveZeroAirVoids: return "a point or the peak lies above the zero-air-voids line";
    case PeakWarning::MethodsDisagree: break;
    }
    return "the three methods disagree";
}

std::vector<ExplainStep> explainPeak(std::span<const CompactionPoint> points, const PeakSearch& search, const PeakRules& rules,
                                     DensityUnit unit)
{
    ExplainSteps s(unit);
    std::string pairs;
    for (const auto& point : points)
        pairs += (pairs.empty() ? "" : "; ") + pct(point.content, 1) + " %, " + s.density(point.dry, 1);
    s.add("Points", "water content, dry density", pairs, std::to_string(points.size()) + " points", "D698-TXT");
    s.add("All points", "least-squares parabola, vertex", std::to_string(points.size()) + " points",
          search.parabola ? peakText(s, *search.parabola) : "opens upward: no peak", "DAVIDSON-67, SE-3883");
    s.add("Spline", "natural cubic spline, highest place", std::to_string(points.size()) + " points", peakText(s, search.spline), "COMPUTED");
    for (const auto warning : search.warnings)
        s.add("Look again", "fewest " + std::to_string(rules.fewPoints) + ", per side " + std::to_string(rules.perSide) + ", gap " +
                                figure(rules.gapPoints) + " points, methods " + figure(rules.disagreePoints) + " points",
              "", sentenceOf(warning), "DESIGN");
    s.add("Maximum dry density and optimum", "parabola through the highest point and its two neighbours: x = \xE2\x88\x92" "b / (2c), y = a \xE2\x88\x92 b\xC2\xB2 / (4c)",
          "three points", peakText(s, search.local), "COMPUTED, SE-3883");
    return s.take();
}

std::vector<ExplainStep> explainSaturationLine(double gs, DensityOfWater rhoW, WaterContent content, double saturationPct,
                                               DryDensity dry, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add(saturationPct == 100 ? "Zero air voids" : "Dry density at saturation", "water / (w / S + 1 / Gs)",
          s.density(rhoW) + " / (" + pct(content) + " / " + shown(saturationPct, 1) + " + 1 / " + shown(gs, 3) + ")", s.withUnit(dry), "UFC-322020, DAS9SI");
    return s.take();
}

std::vector<ExplainStep> explainVoids(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW, const Voids& voids,
                                      DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Void ratio", "Gs" + std::string(kTimes) + "water / dry \xE2\x88\x92 1",
          shown(gs, 3) + kTimes + s.density(rhoW) + " / " + s.density(dry) + kMinus + "1", shown(voids.voidRatio, 4), "DAS9SI");
    s.add("Air voids", "100 (1 \xE2\x88\x92 dry / water (1 / Gs + w / 100))",
          "dry " + s.density(dry) + ", water " + s.density(rhoW) + ", Gs " + shown(gs, 3) + ", w " + pct(content), shown(voids.airVoidsPercent, 1) + " %", "SMITH-EG");
    s.add("Saturation", "w Gs / e", pct(content) + kTimes + shown(gs, 3) + " / " + shown(voids.voidRatio, 4),
          shown(voids.saturationPercent, 1) + (voids.isPossible() ? " %" : " %, wetter than the soil can be"), "DAS9SI");
    return s.take();
}

std::vector<ExplainStep> explainCoarsePart(double moistFine, WaterContent fine, double moistCoarse, WaterContent coarse,
                                           const CoarseMasses& masses)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    s.add("Dry fine part", "moist / (1 + w / 100)", figure(moistFine) + " / (1 + " + pct(fine) + " / 100)", figure(masses.dryFine), "D4718-TXT");
    s.add("Dry coarse part", "moist / (1 + w / 100)", figure(moistCoarse) + " / (1 + " + pct(coarse) + " / 100)", figure(masses.dryCoarse), "D4718-TXT");
    s.add("Taken on moist masses", "for comparison only: it understates", "", pct(masses.ifMoist) + " %", "D4718-TXT");
    s.add("Coarse part, dry masses", "100 coarse / (fine + coarse)",
          "100" + std::string(kTimes) + figure(masses.dryCoarse) + " / (" + figure(masses.dryFine) + " + " + figure(masses.dryCoarse) + ")",
          pct(masses.part) + " %", "D4718-TXT");
    return s.take();
}

std::vector<ExplainStep> explainTotalFromFine(const Peak& fine, const CoarseCorrection& stones, const Peak& total, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string pc = pct(stones.part), pf = shown(100 - stones.part.percent(), 2);
    s.add("Optimum water content, corrected", "(wF PF + wC PC) / 100",
          "(" + pct(fine.optimum) + kTimes + pf + " + " + pct(stones.coarseWater) + kTimes + pc + ") / 100", pct(total.optimum) + " %", "ND-T224");
    s.add("Maximum dry density, corrected", "100 / (PF / DF + PC / (G" + std::string(kTimes) + "water))",
          "100 / (" + pf + " / " + s.density(fine.maximum) + " + " + pc + " / (" + shown(stones.gravity, 3) + kTimes + s.density(stones.rhoW) + "))",
          s.withUnit(total.maximum), "UFC-322020, SMITH-142");
    return s.take();
}

std::vector<ExplainStep> explainFineFromTotal(const Peak& total, const CoarseCorrection& stones, const Peak& fine, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string pc = pct(stones.part), pf = shown(100 - stones.part.percent(), 2);
    const std::string k = s.density(DensityOfWater::kgPerM3(stones.gravity * stones.rhoW.kgPerM3()));
    s.add("k", "gravity of the stones" + std::string(kTimes) + "water", shown(stones.gravity, 3) + kTimes + s.density(stones.rhoW), k + " " + unitWord(unit), "D4718-TXT");
    s.add("Water content of the fine part", "(100 wT \xE2\x88\x92 wC PC) / PF",
          "(100" + std::string(kTimes) + pct(total.optimum) + kMinus + pct(stones.coarseWater) + kTimes + pc + ") / " + pf, pct(fine.optimum) + " %", "D4718-TXT");
    s.add("Dry density of the fine part", "DT k PF / (100 k \xE2\x88\x92 DT PC)",
          s.density(total.maximum) + kTimes + k + kTimes + pf + " / (100" + kTimes + k + kMinus + s.density(total.maximum) + kTimes + pc + ")",
          s.withUnit(fine.maximum), "D4718-TXT");
    return s.take();
}

std::vector<ExplainStep> explainOnePoint(const FamilyCurve& low, const FamilyCurve& high, WaterContent content, DryDensity dry,
                                         const OnePointWindow& window, const OnePointPeak& peak, DensityUnit unit)
{
    ExplainSteps s(unit);
    const auto curve = [&](const FamilyCurve& c) { return s.density(c.maximum) + " at " + pct(c.optimum) + " %"; };
    s.add("Between two curves of the family", "max(t) \xE2\x88\x92 c(t) (w \xE2\x88\x92 optimum(t))\xC2\xB2 = dry density",
          "curves " + curve(low) + " and " + curve(high) + "; point " + s.density(dry) + " at " + pct(content) + " %", "t = " + shown(peak.t, 4), "DESIGN, T272-04");
    s.add("Water content over optimum", shown(window.lowRatio, 2) + " to " + shown(window.highRatio, 2), pct(content) + " / " + pct(peak.optimum), shown(peak.ratio, 3), "T272-04");
    s.add("Maximum dry density and optimum", "both blended by t",
          "(1 \xE2\x88\x92 t)" + std::string(kTimes) + "(" + curve(low) + ") + t" + kTimes + "(" + curve(high) + ")", peakText(s, {peak.optimum, peak.maximum}), "DESIGN");
    return s.take();
}

std::vector<ExplainStep> explainRelativeDensity(DryDensity dry, DryDensity maximum, DryDensity minimum, double percent, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string d = s.density(dry), high = s.density(maximum), low = s.density(minimum);
    s.add("Relative density", "100 (max / dry) (dry \xE2\x88\x92 min) / (max \xE2\x88\x92 min)",
          "100" + std::string(kTimes) + "(" + high + " / " + d + ")" + kTimes + "(" + d + kMinus + low + ") / (" + high + kMinus + low + ")",
          shown(percent, 1) + " %", "UFC-322020");
    return s.take();
}

}  // namespace groundcount::method
