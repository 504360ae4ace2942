#include "method/soil/compaction_test.h"

#include "method/sentence.h"
#include "method/soil/in_place.h"

#include <numbers>

namespace groundcount::method {

Result<CompactedPoint> compactedPoint(double grossKg, double tareKg, double volumeM3, WaterContent content)
{
    if (!isNotNegative(tareKg))
        return refusedValue("Mass of the mold", tareKg, " kg", "at least 0");
    if (!(isPositive(grossKg) && grossKg > tareKg))
        return refusedValue("Mass of mold and soil", grossKg, " kg", "above the mold's " + shownNumber(tareKg) + " kg");
    if (!isPositive(volumeM3))
        return refusedValue("Volume of the mold", volumeM3, " m3", "above 0");
    const auto wet = WetDensity::kgPerM3((grossKg - tareKg) / volumeM3);
    return dryFromContent(wet, content).map([&](const DryResult& r) { return CompactedPoint{wet, r.dry}; });
}

Result<double> moldVolumeM3(Length diameter, Length height)
{
    for (const double size : {diameter.metres(), height.metres()})
        if (!isPositive(size))
            return refusedValue("Diameter or height of the mold", size, " m", "above 0");
    return std::numbers::pi * diameter.metres() * diameter.metres() * height.metres() / 4.0;
}

Result<double> compactionEnergyFtLbfPerFt3(double rammerLbf, Length drop, double layers, double blowsPerLayer, double volumeM3)
{
    if (!isPositive(rammerLbf))
        return refusedValue("Weight of the rammer", rammerLbf, " lbf", "above 0");
    if (!isPositive(drop.metres()))
        return refusedValue("Drop of the rammer", drop.metres(), " m", "above 0");
    for (const double number : {layers, blowsPerLayer})
        if (!(number >= 1 && std::isfinite(number)))
            return refusedValue("Number of layers or blows", number, "", "at least 1");
    if (!isPositive(volumeM3))
        return refusedValue("Volume of the mold", volumeM3, " m3", "above 0");
    const double volumeFt3 = volumeM3 / (kMetrePerFoot * kMetrePerFoot * kMetrePerFoot);
    return rammerLbf * drop.feet() * layers * blowsPerLayer / volumeFt3;
}

}  // namespace groundcount::method
