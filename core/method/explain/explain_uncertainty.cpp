#include "method/explain/explain_uncertainty.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace groundcount::method {
namespace {

constexpr const char* kPlusMinus = "\xC2\xB1";

struct Part {
    const char* name;
    double square;
};

/// The largest of the squared relative parts, in words with its share.
template <std::size_t N>
std::string dominating(const std::array<Part, N>& parts)
{
    double all = 0;
    for (const Part& part : parts)
        all += part.square;
    const auto most = std::max_element(parts.begin(), parts.end(), [](const Part& a, const Part& b) { return a.square < b.square; });
    return all > 0 ? std::string("mostly ") + most->name + ", " + shown(100 * most->square / all, 0) + " %" : std::string("no uncertainty stated");
}

double squared(double a, double b) { return (a / b) * (a / b); }

/// The end of both chains: from the dry density's uncertainty to that of percent compaction.
std::vector<ExplainStep> chain(ExplainSteps&& s, const Uncertain<DryDensity>& maximum, double requiredPct, const CompactionUncertainty& u)
{
    s.add("Uncertainty of percent compaction", "PC root((u dry / dry)\xC2\xB2 + (u max / max)\xC2\xB2)",
          shown(u.compactionPct, 2) + kTimes + "root((" + s.density(u.dryStandard) + " / " + s.density(u.dry) + ")\xC2\xB2 + (" + s.density(maximum.standard) + " / " +
              s.density(maximum.value) + ")\xC2\xB2)",
          shown(u.standardPct, 3) + " %", "COMPUTED");
    s.add("Chance that the true percent is at least " + figure(requiredPct), "Phi((PC \xE2\x88\x92 limit) / u)",
          "(" + shown(u.compactionPct, 2) + kMinus + figure(requiredPct) + ") / " + shown(u.standardPct, 3), shown(100 * u.chanceAtLeast(requiredPct), 1) + " %",
          "COMPUTED");
    s.add("Uncertainty, k = 2", "2" + std::string(kTimes) + "u", "2" + std::string(kTimes) + shown(u.standardPct, 3), kPlusMinus + shown(u.expandedPct, 2) + " %",
          "GI-TOOLS, COMPUTED");
    return s.take();
}

}  // namespace

std::vector<ExplainStep> explainRatioUncertainty(const Counting& counting, const RatioUncertainty& ratio)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    const std::string f = figure(counting.prescale);
    s.add("Count ratio", "test count / standard count", figure(counting.testCount) + " / " + figure(counting.standardCount), shown(ratio.ratio, 5), "PURDUE-1966");
    s.add("Uncertainty of the ratio", "CR root(1 / (N F t) + 1 / (Nstd F ts))",
          shown(ratio.ratio, 5) + kTimes + "root(1 / (" + figure(counting.testCount) + kTimes + f + kTimes + figure(counting.testMinutes) + ") + 1 / (" +
              figure(counting.standardCount) + kTimes + f + kTimes + figure(counting.standardMinutes) + "))",
          shown(ratio.absolute, 6), "COMPUTED");
    return s.take();
}

std::vector<ExplainStep> explainWetUncertainty(const RatioUncertainty& ratio, double bPerKgPerM3, double c, WetDensity u, DensityUnit unit)
{
    ExplainSteps s(unit);
    const double b = bPerKgPerM3 * fromUnit<WetDensity>(1, unit).kgPerM3();
    s.add("Uncertainty of the wet density, counting", "u of the ratio / (B (CR + C))",
          shown(ratio.absolute, 6) + " / (" + shown(b, 6) + kTimes + "(" + shown(ratio.ratio, 5) + " + " + shown(c, 4) + "))", s.withUnit(u, 3), "COMPUTED");
    return s.take();
}

std::vector<ExplainStep> explainWaterUncertainty(const RatioUncertainty& ratio, double slopePerKgPerM3, WaterDensity u, DensityUnit unit)
{
    ExplainSteps s(unit);
    const double m = slopePerKgPerM3 * fromUnit<WaterDensity>(1, unit).kgPerM3();
    s.add("Uncertainty of the water density, counting", "u of the ratio / m", shown(ratio.absolute, 6) + " / " + shown(m, 6), s.withUnit(u, 3), "COMPUTED");
    return s.take();
}

std::vector<ExplainStep> explainCompactionUncertainty(const Uncertain<WetDensity>& wet, const Uncertain<WaterDensity>& water,
                                                      const Uncertain<DryDensity>& maximum, double requiredPct,
                                                      const CompactionUncertainty& u, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Uncertainty of the dry density", "root(u wet\xC2\xB2 + u water\xC2\xB2)", "root(" + s.density(wet.standard) + "\xC2\xB2 + " + s.density(water.standard) + "\xC2\xB2)",
          s.withUnit(u.dryStandard, 3), "COMPUTED");
    const double dry = u.dry.kgPerM3();
    const std::array parts{Part{"the wet density", squared(wet.standard.kgPerM3(), dry)}, Part{"the water density", squared(water.standard.kgPerM3(), dry)},
                           Part{"the maximum density", squared(maximum.standard.kgPerM3(), maximum.value.kgPerM3())}};
    s.add("Largest part", "share of the squared relative uncertainty", "", dominating(parts), "COMPUTED");
    return chain(std::move(s), maximum, requiredPct, u);
}

std::vector<ExplainStep> explainCompactionUncertainty(const Uncertain<WetDensity>& wet, const Uncertain<WaterContent>& content,
                                                      const Uncertain<DryDensity>& maximum, double requiredPct,
                                                      const CompactionUncertainty& u, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Uncertainty of the dry density", "dry root((u wet / wet)\xC2\xB2 + (u w / (100 + w))\xC2\xB2)",
          s.density(u.dry) + kTimes + "root((" + s.density(wet.standard) + " / " + s.density(wet.value) + ")\xC2\xB2 + (" + shown(content.standard.percent(), 2) +
              " / (100 + " + shown(content.value.percent(), 2) + "))\xC2\xB2)",
          s.withUnit(u.dryStandard, 3), "COMPUTED");
    const std::array parts{Part{"the wet density", squared(wet.standard.kgPerM3(), wet.value.kgPerM3())},
                           Part{"the water content", squared(content.standard.percent(), 100 + content.value.percent())},
                           Part{"the maximum density", squared(maximum.standard.kgPerM3(), maximum.value.kgPerM3())}};
    s.add("Largest part", "share of the squared relative uncertainty", "", dominating(parts), "COMPUTED");
    return chain(std::move(s), maximum, requiredPct, u);
}

}  // namespace groundcount::method
