#include "method/explain/explain_hole.h"

namespace groundcount::method {
namespace {

void addWet(ExplainSteps& s, double soilKg, double volumeM3, WetDensity wet)
{
    s.add("Wet density", "moist soil / volume", figure(soilKg) + " kg / " + figure(volumeM3) + " m3", s.withUnit(wet), "FILO-SC01");
}

}  // namespace

std::vector<ExplainStep> explainSandCone(const SandMasses& sand, double sandKgPerM3, double volumeM3, double soilKg, WetDensity wet,
                                         DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Volume of the hole", "(before \xE2\x88\x92 after \xE2\x88\x92 cone) / sand density",
          "(" + figure(sand.beforeKg) + kMinus + figure(sand.afterKg) + kMinus + figure(sand.coneKg) + ") / " + figure(sandKgPerM3),
          figure(volumeM3) + " m3", "FILO-SC01");
    addWet(s, soilKg, volumeM3, wet);
    return s.take();
}

std::vector<ExplainStep> explainBalloon(double initialM3, double finalM3, double volumeM3, double soilKg, WetDensity wet, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Volume of the hole", "final \xE2\x88\x92 initial reading", figure(finalM3) + kMinus + figure(initialM3), figure(volumeM3) + " m3", "COMMON");
    addWet(s, soilKg, volumeM3, wet);
    return s.take();
}

std::vector<ExplainStep> explainControlFraction(const HoleWithStones& hole, const ControlFraction& control, DensityUnit unit)
{
    ExplainSteps s(unit);
    s.add("Volume of the stones", "dry stones / (G" + std::string(kTimes) + "water)",
          figure(hole.dryOversizeKg) + " / (" + shown(hole.oversizeGravity, 3) + kTimes + figure(hole.rhoW.kgPerM3()) + ")",
          figure(control.oversizeVolumeM3) + " m3", "D5030-13A");
    s.add("Volume of the control fraction", "hole \xE2\x88\x92 stones", figure(hole.volumeM3) + kMinus + figure(control.oversizeVolumeM3),
          figure(control.volumeM3) + " m3", "D5030-13A");
    s.add("Moist mass of the control fraction", "total \xE2\x88\x92 stones" + std::string(kTimes) + "(1 + w / 100)",
          figure(hole.moistTotalKg) + kMinus + figure(hole.dryOversizeKg) + kTimes + "(1 + " + shown(hole.oversize.percent(), 2) + " / 100)",
          figure(control.moistKg) + " kg", "D5030-13A");
    s.add("Wet density", "moist mass / volume", figure(control.moistKg) + " / " + figure(control.volumeM3), s.withUnit(control.wet), "D5030-13A");
    s.add("Dry density", "100 wet / (100 + w)", "100" + std::string(kTimes) + s.density(control.wet) + " / (100 + " + shown(hole.control.percent(), 2) + ")",
          s.withUnit(control.dry), "GOVUR");
    return s.take();
}

std::vector<ExplainStep> explainDried(double can, double wetWithCan, double dryWithCan, const DriedSample& sample)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    const std::string c = figure(can), w = figure(wetWithCan), d = figure(dryWithCan);
    s.add("Of the moist mass", "100 (wet \xE2\x88\x92 dry) / (wet \xE2\x88\x92 can)",
          "100" + std::string(kTimes) + "(" + w + kMinus + d + ") / (" + w + kMinus + c + ")", shown(sample.wetBasisPercent, 2) + " %", "CALC-MC");
    s.add("Water content", "100 (wet \xE2\x88\x92 dry) / (dry \xE2\x88\x92 can)",
          "100" + std::string(kTimes) + "(" + w + kMinus + d + ") / (" + d + kMinus + c + ")", shown(sample.content.percent(), 2) + " %", "CALC-MC");
    return s.take();
}

std::vector<ExplainStep> explainCarbide(double dialPercent, CarbideSample size, const DriedSample& sample)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    const std::string r = shown(sample.wetBasisPercent, 2);
    s.add("Of the moist mass", size == CarbideSample::Half ? "half sample: 2 dial" : "dial",
          size == CarbideSample::Half ? "2" + std::string(kTimes) + figure(dialPercent) : figure(dialPercent), r + " %", "T217-14");
    s.add("Water content", "100 R / (100 \xE2\x88\x92 R)", "100" + std::string(kTimes) + r + " / (100" + kMinus + r + ")",
          shown(sample.content.percent(), 2) + " %", "CARBIDE-NOTE");
    return s.take();
}

std::vector<ExplainStep> explainConstantMass(double previous, double current, double limitPercent, const ConstantMass& mass)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    s.add("Change", "100 (previous \xE2\x88\x92 current) / previous",
          "100" + std::string(kTimes) + "(" + figure(previous) + kMinus + figure(current) + ") / " + figure(previous), shown(mass.changePercent, 3) + " %", "WAQTC-T255");
    s.add("Constant mass", "change at most " + figure(limitPercent) + " %", shown(mass.changePercent, 3) + " %",
          mass.state == DryingState::Constant ? "constant" : "go on drying", "WAQTC-T255");
    return s.take();
}

}  // namespace groundcount::method
