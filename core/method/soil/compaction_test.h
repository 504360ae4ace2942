#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// Wet and dry density of one compacted specimen.
struct CompactedPoint {
    WetDensity wet;
    DryDensity dry;
};

/// wet = (gross - tare)/volume; rho_d = wet/(1 + w/100).
/// @param grossKg mold and soil @param tareKg mold, at least 0 @param volumeM3 measured mold volume, above 0
/// @param content w, at least 0 @error Refused for a net mass or volume not above 0, w below 0.
/// @source [UFC-322020], [OH-CAEW4]
Result<CompactedPoint> compactedPoint(double grossKg, double tareKg, double volumeM3, WaterContent content);

/// Volume of a cylindrical mold, pi d^2 h/4, in cubic metres. @error Refused for a size not above 0. @source [FM5-472]
Result<double> moldVolumeM3(Length diameter, Length height);

/// Energy per volume, rammer x drop x layers x blows/volume, in ft-lbf/ft3.
/// @param rammerLbf lbf, above 0 @param drop above 0 @param layers, blowsPerLayer at least 1 @param volumeM3 above 0
/// @error Refused otherwise. @source [D698-SCOPE]
Result<double> compactionEnergyFtLbfPerFt3(double rammerLbf, Length drop, double layers, double blowsPerLayer, double volumeM3);

}  // namespace groundcount::method
