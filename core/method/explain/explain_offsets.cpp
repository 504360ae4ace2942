#include "method/explain/explain_offsets.h"

#include <cmath>

namespace groundcount::method {
namespace {

struct FactorForm {
    const char* formula;
    const char* source;
};

FactorForm formOf(MoistureVariant variant)
{
    switch (variant) {
    case MoistureVariant::DryBasis: return {"(oven \xE2\x88\x92 gauge) / (100 + gauge)", "COMMON"};
    case MoistureVariant::WetBasis: return {"100 (oven \xE2\x88\x92 gauge) / ((100 + oven) (100 + gauge))", "COMPUTED"};
    case MoistureVariant::MassOffset: return {"wet density \xC3\x97 oven / (100 + oven) \xE2\x88\x92 water density", "COMPUTED"};
    case MoistureVariant::PercentOffset: return {"oven \xE2\x88\x92 gauge", "COMPUTED"};
    case MoistureVariant::Ratio: break;
    }
    return {"oven / gauge", "COMPUTED"};
}

}  // namespace

std::string factorText(const MoistureCorrection& correction, DensityUnit unit)
{
    switch (correction.variant) {
    case MoistureVariant::MassOffset: return ExplainSteps(unit).withUnit(WaterDensity::kgPerM3(correction.factor));
    case MoistureVariant::PercentOffset: return shown(correction.factor, 2) + " points";
    default: return shown(correction.factor, 5);
    }
}

std::vector<ExplainStep> explainDensityBias(std::span<const WetDensity> reference, std::span<const WetDensity> gauge, double level,
                                            const DensityBias& bias, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string n = std::to_string(reference.size());
    std::string pairs;
    for (std::size_t i = 0; i < reference.size() && i < gauge.size(); ++i)
        pairs += (i ? ", " : "") + s.density(WetDensity::kgPerM3(reference[i].kgPerM3() - gauge[i].kgPerM3()), 1);
    s.add("Density bias", "mean of (reference \xE2\x88\x92 gauge)", pairs, s.withUnit(WetDensity::kgPerM3(bias.kgPerM3)), "AB-ATT48");
    s.add("Scatter of the differences", "standard deviation, n \xE2\x88\x92 1", n + " pairs", s.withUnit(WetDensity::kgPerM3(bias.sdKgPerM3)), "DESIGN");
    s.add("t", "bias / (scatter / root(n))",
          s.density(WetDensity::kgPerM3(bias.kgPerM3)) + " / (" + s.density(WetDensity::kgPerM3(bias.sdKgPerM3)) + " / root(" + n + "))",
          shown(bias.t, 3), "DESIGN");
    s.add("Beyond chance", "|t| above Student's t, two-sided, level " + figure(level), shown(std::fabs(bias.t), 3) + " against " + shown(bias.tCritical, 3),
          bias.isSignificant ? "beyond chance" : "within chance", "DESIGN");
    return s.take();
}

std::vector<ExplainStep> explainMoistureCalibration(std::span<const MoistureSample> samples, const MoistureCalibration& calibration,
                                                    DensityUnit unit)
{
    ExplainSteps s(unit);
    const FactorForm form = formOf(calibration.correction.variant);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const MoistureSample& one = samples[i];
        const auto read = dryFromGauge(one.wet, one.gaugeWater);
        if (!read)
            return {};
        s.add("Sample " + std::to_string(i + 1), "gauge = 100 water density / (wet density \xE2\x88\x92 water density)",
              "oven " + shown(one.oven.percent(), 2) + " %, wet " + s.density(one.wet) + ", water " + s.density(one.gaugeWater),
              "gauge " + shown(read->content.percent(), 2) + " %, oven " + shown(one.oven.percent(), 2) + " %", "D6938-TXT");
    }
    s.add("Difference", "mean of (oven \xE2\x88\x92 gauge)", std::to_string(calibration.samples) + " samples",
          shown(calibration.meanDifference, 2) + " points, scatter " + shown(calibration.sdDifference, 2), "AB-ATT48");
    const MoistureCorrection scatter{calibration.correction.variant, calibration.sdFactor};
    s.add("Scatter of the factor", "standard deviation, n \xE2\x88\x92 1", std::to_string(calibration.samples) + " samples", factorText(scatter, unit), "COMPUTED");
    s.add("Factor", std::string("mean of ") + form.formula, std::to_string(calibration.samples) + " samples",
          factorText(calibration.correction, unit), form.source);
    return s.take();
}

std::vector<ExplainStep> explainMoistureCheck(WaterContent gauge, WaterContent oven, double limitPoints, const MoistureCheck& check)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    s.add("Difference", "|gauge \xE2\x88\x92 oven|", "|" + shown(gauge.percent(), 2) + kMinus + shown(oven.percent(), 2) + "|",
          shown(check.differencePoints, 2) + " points", "WAQTC-T310");
    s.add("Water content to use", "the gauge's while the difference is at most " + figure(limitPoints) + " points", shown(check.differencePoints, 2),
          check.use == MoistureSource::Gauge ? "the gauge's" : "the oven's", "WAQTC-T310");
    return s.take();
}

}  // namespace groundcount::method
