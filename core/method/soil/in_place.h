#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// The three figures of one place that belong together: water per volume, water on dry mass, dry density.
struct DryResult {
    WaterDensity water;
    WaterContent content;
    DryDensity dry;
};

/// Dry density and water content from the water mass per volume: rho_d = rho - M, w = 100 M/rho_d.
/// @param wet rho, above 0 @param water M, 0 to below rho
/// @error Refused outside those ranges. @source [D6938-SCOPE], [D6938-TXT]
Result<DryResult> dryFromWater(WetDensity wet, WaterDensity water);

/// Dry density from an oven (or other) water content: rho_d = 100 rho/(100 + w); water = rho - rho_d.
/// @param wet rho, above 0 @param content w, percent of dry mass, at least 0
/// @error Refused outside those ranges. @source [GOVUR], [T310-TXT]
Result<DryResult> dryFromContent(WetDensity wet, WaterContent content);

/// PC = 100 rho_d/rho_max, rho_max after any coarse-particle correction.
/// @param dry above 0 @param maximum above 0 @error Refused otherwise. @source [WAQTC-T310]
Result<PercentCompaction> percentCompaction(DryDensity dry, DryDensity maximum);

/// Wet relative compaction: 100 rho/rho_wet,max at the same moisture. @error as above. @source [CALTRANS-19]
Result<PercentCompaction> wetRelativeCompaction(WetDensity wet, WetDensity maximum);

/// Dry density that a percent asks for: rho_max PC/100. @error Refused for a value not above 0. @source [NAVEDTRA]
Result<DryDensity> requiredDry(DryDensity maximum, PercentCompaction required);

/// Voids of a soil in place. saturationPercent above 100 or airVoidsPercent below 0 cannot be and is reported as it is.
struct Voids {
    double voidRatio = 0;
    double saturationPercent = 0;
    double airVoidsPercent = 0;
    /// Whether the soil lies at or below the zero-air-voids line.
    bool isPossible() const;
};

/// e = Gs rho_w/rho_d - 1; S = w Gs/e; Va = 100 (1 - (rho_d/rho_w)(1/Gs + w/100)).
/// @param gs specific gravity of the solids, above 0
/// @error Refused for rho_d, Gs, rho_w not above 0, w below 0, e not above 0 (denser than the solids).
/// @source [DAS9SI] for e and S, [SMITH-EG] for Va
Result<Voids> voids(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW);

/// S of `voids`, percent. @source [DAS9SI]
Result<double> saturationPercent(DryDensity dry, WaterContent content, double gs, DensityOfWater rhoW);

/// Dry density at saturation S: rho_w/(w/S + 1/Gs); S = 100 is the zero-air-voids line Gs rho_w/(1 + w Gs).
/// @param saturation percent, above 0 to 100 @error Refused for Gs or rho_w not above 0, w below 0, S out of range.
/// @source [UFC-322020], [DAS9SI]
Result<DryDensity> dryAtSaturation(double gs, DensityOfWater rhoW, WaterContent content, double saturation);

/// Dry density at air voids Va: (1 - Va) Gs rho_w/(1 + w Gs). Not the same line as saturation 100 - Va.
/// @param airVoids percent, 0 to 100 @error Refused as above, Va out of range. @source [SMITH-EG]
Result<DryDensity> dryAtAirVoids(double gs, DensityOfWater rhoW, WaterContent content, double airVoids);

/// Water content at saturation for a dry density: 100 (rho_w/rho_d - 1/Gs).
/// @error Refused for values not above 0 and for rho_d at or above Gs rho_w. @source [D698-TXT]
Result<WaterContent> waterAtSaturation(DryDensity dry, double gs, DensityOfWater rhoW);

}  // namespace groundcount::method
