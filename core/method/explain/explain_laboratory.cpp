#include "method/explain/explain_laboratory.h"

namespace groundcount::method {

const char* word(Plausibility plausibility)
{
    switch (plausibility) {
    case Plausibility::BelowUsual: return "below the usual";
    case Plausibility::AboveUsual: return "above the usual";
    case Plausibility::Usual: break;
    }
    return "usual";
}

std::vector<ExplainStep> explainSpecimen(double grossKg, double tareKg, double volumeM3, WaterContent content, const CompactedPoint& point, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Wet density", "(mold and soil" + std::string(kMinus) + "mold) / volume",
          "(" + shown(grossKg, 4) + kMinus + shown(tareKg, 4) + ") kg / " + figure(volumeM3) + " m3", s.withUnit(point.wet), "UFC-322020, OH-CAEW4");
    s.add("Dry density", "wet density / (1 + w / 100)", s.density(point.wet) + " / (1 + " + shown(content.percent(), 2) + " / 100)", s.withUnit(point.dry),
          "UFC-322020, OH-CAEW4");
    return s.take();
}

std::vector<ExplainStep> explainCompactionEnergy(double rammerLbf, Length drop, double layers, double blowsPerLayer, double volumeM3, double ftLbfPerFt3)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    const double cubicFoot = kMetrePerFoot * kMetrePerFoot * kMetrePerFoot;
    s.add("Energy of compaction", "rammer" + std::string(kTimes) + "drop" + kTimes + "layers" + kTimes + "blows / volume",
          figure(rammerLbf) + " lbf" + kTimes + figure(drop.feet()) + " ft" + kTimes + figure(layers) + kTimes + figure(blowsPerLayer) + " / " +
              figure(volumeM3 / cubicFoot) + " ft3",
          shown(ftLbfPerFt3, 0) + " ft-lbf/ft3", "D698-SCOPE");
    return s.take();
}

std::vector<ExplainStep> explainRelativeDensityFromVoids(double e, double eMax, double eMin, double percent)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    s.add("Relative density", "100" + std::string(kTimes) + "(loosest" + kMinus + "e) / (loosest" + kMinus + "densest), void ratios",
          "100" + std::string(kTimes) + "(" + figure(eMax) + kMinus + figure(e) + ") / (" + figure(eMax) + kMinus + figure(eMin) + ")", shown(percent, 1) + " %",
          "UFC-322020");
    return s.take();
}

std::vector<ExplainStep> explainPlausibility(const std::string& what, double value, double low, double high, const std::string& unitWord, Plausibility found,
                                             const std::string& source)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    s.add(what, "usual from " + figure(low) + " to " + figure(high) + " " + unitWord, figure(value), word(found), source);
    return s.take();
}

std::vector<ExplainStep> explainMoistureSample(MoistureSampleRule rule, Length largestParticle, double leastG)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    const char* source = rule == MoistureSampleRule::T265 || rule == MoistureSampleRule::T255 ? "WAQTC-T255" : "D2216-TXT";
    for (const auto& row : moistureSampleRows(rule)) {
        if (row.leastMassG != leastG)
            continue;
        s.add("Sieve that the largest particle passes", "the smallest of the procedure", shown(largestParticle.metres() * 1000, 2) + " mm",
              shown(row.largestParticle.metres() * 1000, 2) + " mm", source);
        break;
    }
    s.add("Least moist mass", "row of that sieve", shown(largestParticle.metres() * 1000, 2) + " mm", figure(leastG) + " g", source);
    return s.take();
}

}  // namespace groundcount::method
