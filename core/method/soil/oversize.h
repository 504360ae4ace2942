#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// Coarse part from dry masses: P_C = 100 coarse/(fine + coarse).
/// @param dryFine any one unit of mass, above 0 @param dryCoarse same unit, at least 0
/// @error Refused otherwise. @source [D4718-TXT]
Result<CoarsePart> coarsePart(double dryFine, double dryCoarse);

/// Dry masses and coarse part from moist weighings.
struct CoarseMasses {
    double dryFine = 0;
    double dryCoarse = 0;
    CoarsePart part;        ///< on dry mass
    CoarsePart ifMoist;     ///< the same taken on the moist masses, for comparison only: it understates
};

/// dry = moist/(1 + w/100) for each fraction, then coarsePart. @param fine, coarse water contents, at least 0
/// @error Refused for moist masses not above 0 (fine) or below 0 (coarse), w below 0. @source [D4718-TXT]
Result<CoarseMasses> coarsePart(double moistFine, WaterContent fine, double moistCoarse, WaterContent coarse);

/// Coarse part when the whole moist sample was weighed, then what the sieve retained:
/// P_C = 100 (retained/(1 + w_C/100))/(total/(1 + w/100)).
/// @param moistTotal any one unit of mass, above 0 @param moistRetained same unit, 0 to moistTotal
/// @param total w of the whole sample, at least 0 @param coarse w_C of the coarse particles, at least 0
/// @error Refused outside those ranges, and when no dry fine part is left. @source [D4718-TXT]
Result<CoarsePart> coarsePartFromMoist(double moistTotal, double moistRetained, WaterContent total, WaterContent coarse);

/// D_T = 100/(P_F/D_F + P_C/k), k = G rho_w.
/// @param fine D_F, above 0 @param part P_C percent of dry mass, 0 to below 100
/// @param coarseGravity G, bulk oven-dry specific gravity of the coarse particles, above 0 @param rhoW above 0
/// @error Refused outside those ranges. @source [UFC-322020], [SMITH-142]; [T224-TXT]
Result<DryDensity> totalFromFine(DryDensity fine, CoarsePart part, double coarseGravity, DensityOfWater rhoW);

/// D_F = D_T k P_F/(100 k - D_T P_C). @error as above, and Refused for 100 k - D_T P_C not above 0. @source [D4718-TXT]
Result<DryDensity> fineFromTotal(DryDensity total, CoarsePart part, double coarseGravity, DensityOfWater rhoW);

/// w_T = (w_F P_F + w_C P_C)/100. @error Refused for P_C outside 0 to below 100, w below 0. @source [ND-T224]
Result<WaterContent> totalWaterFromFine(WaterContent fine, CoarsePart part, WaterContent coarse);

/// w_F = (100 w_T - w_C P_C)/P_F. @error as above, and Refused for w_F below 0. @source [D4718-TXT]
Result<WaterContent> fineWaterFromTotal(WaterContent total, CoarsePart part, WaterContent coarse);

/// What happens at exactly the lower limit ("more than" or "from ... up").
enum class AtLowerLimit { NotCorrected, Corrected };
enum class OversizeNeed { None, Correct };

/// When to correct; every number is a setting.
struct OversizeLimits {
    double lowerPct = 0;  ///< below: no correction
    AtLowerLimit atLower = AtLowerLimit::NotCorrected;
    double upperPct = 0;  ///< above: another control method, refused here; the limit itself is corrected
};

/// @error Refused for P_C outside 0 to below 100 or above the upper limit, or limits out of order.
/// @source [T99-SCOPE], [D4718-SCOPE], [WAQTC-T224], [ND-T224]
Result<OversizeNeed> oversizeNeed(CoarsePart part, const OversizeLimits& limits);

/// Older forms, remembered only: a labelled setting of an agency, never a default.
enum class OlderOversizeForm {
    Arithmetic,   ///< (P_F D_F + P_C k)/100 [T224-TXT]
    CoarseFactor, ///< (P_F D_F + P_C f k)/100, f 0.90 or 0.95 [T224-TXT]
    Fixed162      ///< (1 - 0.05 F)/((1 - F)/D_F + F/(162 lb/ft3)), F = P_C/100 [DM72]
};

/// @param coarseFactor f, above 0 to 1, used by CoarseFactor only @param coarseGravity, rhoW not used by Fixed162
/// @error Refused as totalFromFine, and for f out of range. @source [T224-TXT], [DM72] (memory)
Result<DryDensity> totalFromFineOlder(OlderOversizeForm form, double coarseFactor, DryDensity fine, CoarsePart part,
                                      double coarseGravity, DensityOfWater rhoW);

}  // namespace groundcount::method
