#include "method/soil/oversize.h"

#include "method/limit.h"
#include "method/sentence.h"

#include <optional>

namespace groundcount::method {
namespace {

std::optional<Error> faultOf(CoarsePart part)
{
    const double p = part.percent();
    if (p >= 0 && p < 100)
        return std::nullopt;
    return refusedValue("Coarse part", p, " % of dry mass", "at least 0 and below 100").value();
}

std::optional<Error> faultOf(DryDensity density, CoarsePart part, double coarseGravity, DensityOfWater rhoW)
{
    if (!isPositive(density.kgPerM3()))
        return refusedValue("Dry density", density.kgPerM3(), " kg/m3", "above 0").value();
    if (!isPositive(coarseGravity))
        return refusedValue("Specific gravity of the coarse particles", coarseGravity, "", "above 0").value();
    if (!isPositive(rhoW.kgPerM3()))
        return refusedValue("Density of water", rhoW.kgPerM3(), " kg/m3", "above 0").value();
    return faultOf(part);
}

std::optional<Error> faultOf(WaterContent first, WaterContent second, CoarsePart part)
{
    for (const double w : {first.percent(), second.percent()})
        if (!isNotNegative(w))
            return refusedValue("Water content", w, " %", "at least 0").value();
    return faultOf(part);
}

}  // namespace

Result<CoarsePart> coarsePart(double dryFine, double dryCoarse)
{
    if (!isPositive(dryFine))
        return refusedValue("Dry mass of the fine part", dryFine, "", "above 0");
    if (!isNotNegative(dryCoarse))
        return refusedValue("Dry mass of the coarse part", dryCoarse, "", "at least 0");
    return CoarsePart::percent(100.0 * dryCoarse / (dryFine + dryCoarse));
}

Result<CoarseMasses> coarsePart(double moistFine, WaterContent fine, double moistCoarse, WaterContent coarse)
{
    for (const double w : {fine.percent(), coarse.percent()})
        if (!isNotNegative(w))
            return refusedValue("Water content", w, " %", "at least 0");
    const auto ifMoist = coarsePart(moistFine, moistCoarse);
    if (!ifMoist)
        return tl::unexpected(ifMoist.error());
    CoarseMasses masses;
    masses.dryFine = moistFine / (1.0 + fine.percent() / 100.0);
    masses.dryCoarse = moistCoarse / (1.0 + coarse.percent() / 100.0);
    masses.ifMoist = *ifMoist;
    return coarsePart(masses.dryFine, masses.dryCoarse).map([&](CoarsePart part) {
        masses.part = part;
        return masses;
    });
}

Result<CoarsePart> coarsePartFromMoist(double moistTotal, double moistRetained, WaterContent total, WaterContent coarse)
{
    for (const double w : {total.percent(), coarse.percent()})
        if (!isNotNegative(w))
            return refusedValue("Water content", w, " %", "at least 0");
    if (!isPositive(moistTotal))
        return refusedValue("Moist mass of the sample", moistTotal, "", "above 0");
    if (!(moistRetained >= 0 && moistRetained <= moistTotal))
        return refusedValue("Moist mass retained", moistRetained, "",
                            "0 to the mass of the sample, " + shownNumber(moistTotal));
    const double dryTotal = moistTotal / (1.0 + total.percent() / 100.0);
    const double dryCoarse = moistRetained / (1.0 + coarse.percent() / 100.0);
    if (!(dryCoarse < dryTotal))
        return refusedValue("Dry mass retained", dryCoarse, "", "below the dry mass of the sample, " + shownNumber(dryTotal));
    return CoarsePart::percent(100.0 * dryCoarse / dryTotal);
}

Result<DryDensity> totalFromFine(DryDensity fine, CoarsePart part, double coarseGravity, DensityOfWater rhoW)
{
    if (auto fault = faultOf(fine, part, coarseGravity, rhoW))
        return tl::unexpected(std::move(*fault));
    const double k = coarseGravity * rhoW.kgPerM3();
    const double pc = part.percent();
    return DryDensity::kgPerM3(100.0 / ((100.0 - pc) / fine.kgPerM3() + pc / k));
}

Result<DryDensity> fineFromTotal(DryDensity total, CoarsePart part, double coarseGravity, DensityOfWater rhoW)
{
    if (auto fault = faultOf(total, part, coarseGravity, rhoW))
        return tl::unexpected(std::move(*fault));
    const double k = coarseGravity * rhoW.kgPerM3();
    const double d = total.kgPerM3();
    const double pc = part.percent();
    const double left = 100.0 * k - d * pc;
    if (!(left > 0))
        return refusedValue("Dry density of the total", d, " kg/m3",
                            "below " + shownNumber(100.0 * k / pc) + " kg/m3, where the coarse particles alone fill it");
    return DryDensity::kgPerM3(d * k * (100.0 - pc) / left);
}

Result<WaterContent> totalWaterFromFine(WaterContent fine, CoarsePart part, WaterContent coarse)
{
    if (auto fault = faultOf(fine, coarse, part))
        return tl::unexpected(std::move(*fault));
    const double pc = part.percent();
    return WaterContent::percent((fine.percent() * (100.0 - pc) + coarse.percent() * pc) / 100.0);
}

Result<WaterContent> fineWaterFromTotal(WaterContent total, CoarsePart part, WaterContent coarse)
{
    if (auto fault = faultOf(total, coarse, part))
        return tl::unexpected(std::move(*fault));
    const double pc = part.percent();
    const double w = (100.0 * total.percent() - coarse.percent() * pc) / (100.0 - pc);
    if (!atLeast(w, 0.0))
        return refusedValue("Water content of the fine part", w, " %", "at least 0");
    return WaterContent::percent(w < 0 ? 0.0 : w);
}

Result<OversizeNeed> oversizeNeed(CoarsePart part, const OversizeLimits& limits)
{
    if (auto fault = faultOf(part))
        return tl::unexpected(std::move(*fault));
    const double lower = limits.lowerPct;
    const double upper = limits.upperPct;
    if (!(lower >= 0 && upper >= lower && upper <= 100))
        return refusedValue("Upper limit of the coarse part", upper, " %",
                            "from the lower limit of " + shownNumber(lower) + " % to 100 %");
    const double p = part.percent();
    if (!atMost(p, upper))
        return refusedValue("Coarse part", p, " % of dry mass",
                            "at most " + shownNumber(upper) + " %; above it use another control method");
    const bool reached = limits.atLower == AtLowerLimit::Corrected ? atLeast(p, lower) : !atMost(p, lower);
    return reached ? OversizeNeed::Correct : OversizeNeed::None;
}

Result<DryDensity> totalFromFineOlder(OlderOversizeForm form, double coarseFactor, DryDensity fine, CoarsePart part,
                                      double coarseGravity, DensityOfWater rhoW)
{
    // The fixed 162 lb/ft3 stands for G rho_w, so neither is asked for then.
    const bool isFixed = form == OlderOversizeForm::Fixed162;
    if (auto fault = isFixed ? faultOf(fine, part, 1.0, DensityOfWater::kgPerM3(1000.0)) : faultOf(fine, part, coarseGravity, rhoW))
        return tl::unexpected(std::move(*fault));
    const double f = part.fraction();
    const double d = fine.kgPerM3();
    if (isFixed) {
        const double k = DryDensity::lbPerFt3(162.0).kgPerM3();
        return DryDensity::kgPerM3((1.0 - 0.05 * f) / ((1.0 - f) / d + f / k));
    }
    const double factor = form == OlderOversizeForm::CoarseFactor ? coarseFactor : 1.0;
    if (!(factor > 0 && factor <= 1))
        return refusedValue("Factor on the coarse term", factor, "", "above 0 and at most 1");
    return DryDensity::kgPerM3((1.0 - f) * d + f * factor * coarseGravity * rhoW.kgPerM3());
}

}  // namespace groundcount::method
