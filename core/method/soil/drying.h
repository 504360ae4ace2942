#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// Water content on both bases.
struct DriedSample {
    WaterContent content;       ///< percent of dry mass
    double wetBasisPercent = 0; ///< percent of moist mass
};

/// w = 100 (wet - dry)/(dry - can); wet basis 100 (wet - dry)/(wet - can).
/// @param can at least 0 @param wetWithCan, dryWithCan one unit of mass, can < dry <= wet
/// @error Refused for dry not above can, heavier after drying. @source [CALC-MC]; microwave alike [D4643-TXT]
Result<DriedSample> driedSample(double can, double wetWithCan, double dryWithCan);

/// w = 100 water/dry. @param water at least 0 @param dry above 0 @error Refused otherwise. @source [CALC-MC]
Result<WaterContent> contentFromMasses(double water, double dry);

/// Mean of the two percentages of a top and a bottom sample, not of the pooled masses. @error Refused for w below 0.
/// @source [LAB-STD]
Result<WaterContent> meanOfTwo(WaterContent top, WaterContent bottom);

/// w_dry = 100 w_wet/(100 - w_wet). @param wetBasisPercent 0 to below 100 @error Refused otherwise. @source [CARBIDE-NOTE]
Result<WaterContent> fromWetBasis(double wetBasisPercent);

/// Size of the sample in the pressure vessel; a half sample shows half the percentage.
enum class CarbideSample { Full, Half };

/// Dial R percent of WET mass: a half sample is doubled first, then w = 100 R/(100 - R).
/// @param dialPercent R, at least 0, below 100 after doubling @error Refused otherwise.
/// @source [CARBIDE-NOTE], [T217-14]
Result<DriedSample> carbideSample(double dialPercent, CarbideSample sample);

enum class DryingState { Constant, Continue };

struct ConstantMass {
    double changePercent = 0;  ///< 100 (previous - current)/previous
    DryingState state = DryingState::Continue;
};

/// Constant when the change is at most the limit (0.1 % in use), inclusive.
/// @param previous, current masses, above 0, current not above previous @param limitPercent above 0
/// @error Refused otherwise. @source [WAQTC-T255]
Result<ConstantMass> constantMass(double previous, double current, double limitPercent);

}  // namespace groundcount::method
