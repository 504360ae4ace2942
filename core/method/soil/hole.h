#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// The hole of an in-place test, filled with sand of known density.
struct SandMasses {
    double beforeKg = 0;  ///< sand and container before
    double afterKg = 0;   ///< after
    double coneKg = 0;    ///< sand in cone and plate
};

/// V = (before - after - cone)/sand density, m3. @error Refused for masses below 0, V not above 0. @source [FILO-SC01]
Result<double> holeVolumeBySand(const SandMasses& sand, double sandKgPerM3);

/// V = before - after - cone when the sand is read as a volume, m3. @error as above. @source [HW-SC02]
Result<double> holeVolumeBySandVolume(double beforeM3, double afterM3, double coneM3);

/// V = final - initial reading of a balloon apparatus, m3. @error Refused for readings below 0, V not above 0.
/// @source [COMMON]
Result<double> holeVolumeByBalloon(double initialM3, double finalM3);

/// wet = soil/V. @param soilKg moist, above 0 @param volumeM3 above 0 @error Refused otherwise. @source [FILO-SC01]
Result<WetDensity> wetInHole(double soilKg, double volumeM3);

/// A test hole with stones: what belongs to the control fraction.
struct HoleWithStones {
    double volumeM3 = 0;
    double moistTotalKg = 0;
    double dryOversizeKg = 0;
    double oversizeGravity = 0;  ///< G, bulk oven-dry
    DensityOfWater rhoW;
    WaterContent control;        ///< w of the control fraction
    WaterContent oversize;       ///< w of the stones
};

struct ControlFraction {
    double oversizeVolumeM3 = 0;  ///< dry oversize/(G rho_w)
    double volumeM3 = 0;          ///< hole - oversize
    double moistKg = 0;           ///< total - moist oversize
    WetDensity wet;
    DryDensity dry;
};

/// Stones taken off the mass AND the volume. @error Refused for a control volume or mass not above 0, masses, G or
/// rho_w out of range. @source [D5030-13A]
Result<ControlFraction> controlFraction(const HoleWithStones& hole);

}  // namespace groundcount::method
