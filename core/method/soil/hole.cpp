#include "method/soil/hole.h"

#include "method/sentence.h"
#include "method/soil/in_place.h"

namespace groundcount::method {
namespace {

Result<double> usableVolume(double volumeM3)
{
    if (!isPositive(volumeM3))
        return refusedValue("Volume of the hole", volumeM3, " m3", "above 0; check the order of the readings");
    return volumeM3;
}

}  // namespace

Result<double> holeVolumeBySand(const SandMasses& sand, double sandKgPerM3)
{
    for (const double mass : {sand.beforeKg, sand.afterKg, sand.coneKg})
        if (!isNotNegative(mass))
            return refusedValue("A mass of the sand", mass, " kg", "at least 0");
    if (!isPositive(sandKgPerM3))
        return refusedValue("Density of the sand", sandKgPerM3, " kg/m3", "above 0");
    return usableVolume((sand.beforeKg - sand.afterKg - sand.coneKg) / sandKgPerM3);
}

Result<double> holeVolumeBySandVolume(double beforeM3, double afterM3, double coneM3)
{
    for (const double volume : {beforeM3, afterM3, coneM3})
        if (!isNotNegative(volume))
            return refusedValue("A volume of the sand", volume, " m3", "at least 0");
    return usableVolume(beforeM3 - afterM3 - coneM3);
}

Result<double> holeVolumeByBalloon(double initialM3, double finalM3)
{
    for (const double reading : {initialM3, finalM3})
        if (!isNotNegative(reading))
            return refusedValue("A reading of the balloon apparatus", reading, " m3", "at least 0");
    return usableVolume(finalM3 - initialM3);
}

Result<WetDensity> wetInHole(double soilKg, double volumeM3)
{
    if (!isPositive(soilKg))
        return refusedValue("Moist mass of the soil", soilKg, " kg", "above 0");
    return usableVolume(volumeM3).map([&](double volume) { return WetDensity::kgPerM3(soilKg / volume); });
}

Result<ControlFraction> controlFraction(const HoleWithStones& hole)
{
    if (!isPositive(hole.volumeM3))
        return refusedValue("Volume of the hole", hole.volumeM3, " m3", "above 0");
    if (!isPositive(hole.moistTotalKg))
        return refusedValue("Moist mass out of the hole", hole.moistTotalKg, " kg", "above 0");
    if (!isNotNegative(hole.dryOversizeKg))
        return refusedValue("Dry mass of the stones", hole.dryOversizeKg, " kg", "at least 0");
    if (!isPositive(hole.oversizeGravity))
        return refusedValue("Specific gravity of the stones", hole.oversizeGravity, "", "above 0");
    if (!isPositive(hole.rhoW.kgPerM3()))
        return refusedValue("Density of water", hole.rhoW.kgPerM3(), " kg/m3", "above 0");
    if (!isNotNegative(hole.oversize.percent()))
        return refusedValue("Water content of the stones", hole.oversize.percent(), " %", "at least 0");
    ControlFraction control;
    control.oversizeVolumeM3 = hole.dryOversizeKg / (hole.oversizeGravity * hole.rhoW.kgPerM3());
    control.volumeM3 = hole.volumeM3 - control.oversizeVolumeM3;
    control.moistKg = hole.moistTotalKg - hole.dryOversizeKg * (1.0 + hole.oversize.percent() / 100.0);
    if (!isPositive(control.volumeM3))
        return refusedValue("Volume of the control fraction", control.volumeM3, " m3", "above 0; the stones fill the hole");
    if (!isPositive(control.moistKg))
        return refusedValue("Moist mass of the control fraction", control.moistKg, " kg", "above 0");
    control.wet = WetDensity::kgPerM3(control.moistKg / control.volumeM3);
    return dryFromContent(control.wet, hole.control).map([&](const DryResult& r) {
        control.dry = r.dry;
        return control;
    });
}

}  // namespace groundcount::method
