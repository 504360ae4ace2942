#include "method/soil/in_place.h"

#include "method/limit.h"
#include "method/sentence.h"

namespace groundcount::method {
namespace {

constexpr std::string_view kDensityUnit = " kg/m3";

}  // namespace

Result<DryResult> dryFromWater(WetDensity wet, WaterDensity water)
{
    const double rho = wet.kgPerM3();
    const double m = water.kgPerM3();
    if (!isPositive(rho))
        return refusedValue("Wet density", rho, kDensityUnit, "above 0");
    if (!(m >= 0 && m < rho))
        return refusedValue("Water per volume", m, kDensityUnit,
                            "at least 0 and below the wet density of " + shownNumber(rho) + " kg/m3");
    const double dry = rho - m;
    return DryResult{water, WaterContent::percent(100.0 * m / dry), DryDensity::kgPerM3(dry)};
}

Result<DryResult> dryFromContent(WetDensity wet, WaterContent content)
{
    const double rho = wet.kgPerM3();
    const double w = content.percent();
    if (!isPositive(rho))
        return refusedValue("Wet density", rho, kDensityUnit, "above 0");
    if (!isNotNegative(w))
        return refusedValue("Water content", w, " %", "at least 0");
    const double dry = 100.0 * rho / (100.0 + w);
    return DryResult{WaterDensity::kgPerM3(rho - dry), content, DryDensity::kgPerM3(dry)};
}

Result<PercentCompaction> percentCompaction(DryDensity dry, DryDensity maximum)
{
    if (!isPositive(dry.kgPerM3()))
        return refusedValue("Dry density", dry.kgPerM3(), kDensityUnit, "above 0");
    if (!isPositive(maximum.kgPerM3()))
        return refusedValue("Maximum dry density", maximum.kgPerM3(), kDensityUnit, "above 0");
    return PercentCompaction::percent(100.0 * dry.kgPerM3() / maximum.kgPerM3());
}

Result<PercentCompaction> wetRelativeCompaction(WetDensity wet, WetDensity maximum)
{
    if (!isPositive(wet.kgPerM3()))
        return refusedValue("Wet density", wet.kgPerM3(), kDensityUnit, "above 0");
    if (!isPositive(maximum.kgPerM3()))
        return refusedValue("Maximum wet density", maximum.kgPerM3(), kDensityUnit, "above 0");
    return PercentCompaction::percent(100.0 * wet.kgPerM3() / maximum.kgPerM3());
}

Result<DryDensity> requiredDry(DryDensity maximum, PercentCompaction required)
{
    if (!isPositive(maximum.kgPerM3()))
        return refusedValue("Maximum dry density", maximum.kgPerM3(), kDensityUnit, "above 0");
    if (!isPositive(required.percent()))
        return refusedValue("Required percent compaction", required.percent(), " %", "above 0");
    return DryDensity::kgPerM3(maximum.kgPerM3() * required.percent() / 100.0);
}

bool Voids::isPossible() const { return atMost(saturationPercent, 100.0) && atLeast(airVoidsPercent, 0.0); }

Result<Voids> voids(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW)
{
    const auto saturated = waterAtSaturation(dry, gs, rhoW);
    if (!saturated)
        return tl::unexpected(saturated.error());
    const double w = content.percent();
    if (!isNotNegative(w))
        return refusedValue("Water content", w, " %", "at least 0");
    const double relative = dry.kgPerM3() / rhoW.kgPerM3();
    Voids result;
    result.voidRatio = gs / relative - 1.0;
    result.saturationPercent = w * gs / result.voidRatio;
    result.airVoidsPercent = 100.0 * (1.0 - relative * (1.0 / gs + w / 100.0));
    return result;
}

Result<double> saturationPercent(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW)
{
    return voids(dry, content, gs, rhoW).map([](const Voids& v) { return v.saturationPercent; });
}

namespace {

Result<double> inverseDensityOfSolids(double gs, DensityOfWater rhoW, WaterContent content)
{
    if (!isPositive(gs))
        return refusedValue("Specific gravity of the solids", gs, "", "above 0");
    if (!isPositive(rhoW.kgPerM3()))
        return refusedValue("Density of water", rhoW.kgPerM3(), kDensityUnit, "above 0");
    if (!isNotNegative(content.percent()))
        return refusedValue("Water content", content.percent(), " %", "at least 0");
    return 1.0 / gs;
}

}  // namespace

Result<DryDensity> dryAtSaturation(double gs, DensityOfWater rhoW, WaterContent content, double saturation)
{
    const auto inverse = inverseDensityOfSolids(gs, rhoW, content);
    if (!inverse)
        return tl::unexpected(inverse.error());
    if (!(saturation > 0 && saturation <= 100.0))
        return refusedValue("Saturation", saturation, " %", "above 0 and at most 100");
    return DryDensity::kgPerM3(rhoW.kgPerM3() / (content.percent() / saturation + *inverse));
}

Result<DryDensity> dryAtAirVoids(double gs, DensityOfWater rhoW, WaterContent content, double airVoids)
{
    const auto inverse = inverseDensityOfSolids(gs, rhoW, content);
    if (!inverse)
        return tl::unexpected(inverse.error());
    if (!(airVoids >= 0 && airVoids <= 100.0))
        return refusedValue("Air voids", airVoids, " %", "0 to 100");
    return DryDensity::kgPerM3((1.0 - airVoids / 100.0) * rhoW.kgPerM3() / (*inverse + content.percent() / 100.0));
}

Result<WaterContent> waterAtSaturation(DryDensity dry, double gs, DensityOfWater rhoW)
{
    const double d = dry.kgPerM3();
    if (!isPositive(d))
        return refusedValue("Dry density", d, kDensityUnit, "above 0");
    const auto inverse = inverseDensityOfSolids(gs, rhoW, WaterContent::percent(0));
    if (!inverse)
        return tl::unexpected(inverse.error());
    if (!(d < gs * rhoW.kgPerM3()))
        return refusedValue("Dry density", d, kDensityUnit,
                            "below the density of the solids, " + shownNumber(gs * rhoW.kgPerM3()) + " kg/m3");
    return WaterContent::percent(100.0 * (rhoW.kgPerM3() / d - *inverse));
}

}  // namespace groundcount::method
