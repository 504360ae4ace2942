#pragma once

#include "method/error.h"
#include "method/quantity.h"
#include "method/soil/in_place.h"

#include <span>

namespace groundcount::method {

/// Background of a trench wall, from two standard counts on the reference block.
struct TrenchOffset {
    double counts = 0;            ///< Nstd,trench - Nstd,outside
    double percentOfStandard = 0; ///< 100 abs(counts)/Nstd,outside; a warning above a setting (20 % in use)
};

/// Offset = Nstd,trench - Nstd,outside. Belongs to one place and geometry; never replaces the daily standard.
/// @error Refused for a count not above 0. @source [DESIGN]; that a correction is needed near a wall [D6938-TXT]
Result<TrenchOffset> trenchOffset(double standardInTrench, double standardOutside);

/// N_corr = N - (Nstd,trench - Nstd,outside); the ratio is then N_corr/Nstd,outside.
/// @param count N, above 0 @return counts, above 0 @error Refused for a count not above 0 or when nothing is left.
/// @source [DESIGN]
Result<double> trenchCorrected(double count, double standardInTrench, double standardOutside);

/// Density bias from spots measured twice.
struct DensityBias {
    double kgPerM3 = 0;        ///< mean(reference - gauge), added to later wet densities
    double sdKgPerM3 = 0;      ///< s of the differences, n - 1
    double t = 0;              ///< bias/(s/sqrt n); infinite when every difference is the same
    double tCritical = 0;      ///< two-sided Student quantile, n - 1 d.f.
    bool isSignificant = false;///< abs(t) above tCritical
};

/// Paired comparison of reference densities (core, sand cone, balloon) with gauge densities on the same spots.
/// @param level two-sided significance, above 0 and below 1, 0.05 in use
/// @error Refused for fewer than 2 pairs, unequal numbers of readings, a density not above 0, a level out of range.
/// @source [DESIGN] for the procedure, Student's t by Boost.Math; agency use [AB-ATT48], [QLD-NGTM]
Result<DensityBias> densityBias(std::span<const WetDensity> reference, std::span<const WetDensity> gauge, double level);

/// wet + bias. @error Refused when the sum is not above 0. @source [DESIGN]
Result<WetDensity> biasCorrected(WetDensity wet, double biasKgPerM3);

/// How a moisture correction is expressed and applied (w_g = 100 M/(rho - M) from the gauge).
enum class MoistureVariant {
    DryBasis,      ///< rho_d = (rho - M)/(1 + k); w = w_g + k (100 + w_g) [COMMON]
    WetBasis,      ///< M_c = M + k' rho; rho_d = rho - M_c [COMPUTED]
    MassOffset,    ///< M_c = M + d, d in kg/m3 [COMPUTED]
    PercentOffset, ///< w = w_g + dw, points; rho_d = 100 rho/(100 + w) [COMPUTED]
    Ratio          ///< w = q w_g; rho_d = 100 rho/(100 + w) [COMPUTED]
};

/// A correction factor. Negative (ratio: below 1) = the gauge reads too wet.
struct MoistureCorrection {
    MoistureVariant variant = MoistureVariant::DryBasis;
    double factor = 0;  ///< dry and wet basis a plain number, not per mille; kg/m3; points; plain ratio
};

/// Uncorrected: dryFromWater. @source [D6938-SCOPE]
Result<DryResult> dryFromGauge(WetDensity wet, WaterDensity water);

/// Corrected as the variant says. water of the result is rho - rho_d.
/// @error Refused for rho not above 0, M outside 0 to below rho, a factor that is not finite, w below 0 after
/// correction, no dry mass left. @source [COMMON] for DryBasis, [COMPUTED] for the others
Result<DryResult> dryFromGauge(WetDensity wet, WaterDensity water, const MoistureCorrection& correction);

/// One place with the gauge's figures and the oven's.
struct MoistureSample {
    WaterContent oven;
    WetDensity wet;
    WaterDensity gaugeWater;
};

/// A correction out of samples, with the scatter a rule set may limit.
struct MoistureCalibration {
    MoistureCorrection correction;
    int samples = 0;
    double sdFactor = 0;         ///< s of the factors of single samples, n - 1; 0 for one sample
    double meanDifference = 0;   ///< mean of oven - gauge, points
    double sdDifference = 0;     ///< s of oven - gauge, points; 0 for one sample
};

/// Mean of the factors of the single samples, with w_l oven and w_g gauge:
/// k = (w_l - w_g)/(100 + w_g); k' = 100 (w_l - w_g)/((100 + w_l)(100 + w_g)); d = rho w_l/(100 + w_l) - M;
/// dw = w_l - w_g; q = w_l/w_g.
/// @param minimum smallest number of samples of the rule set, at least 1
/// @error Refused for fewer samples, a sample out of range, w_g = 0 with Ratio.
/// @source [COMMON] for DryBasis, [COMPUTED] for the others; number of samples [AB-ATT48]
Result<MoistureCalibration> moistureCalibration(MoistureVariant variant, std::span<const MoistureSample> samples,
                                                int minimum);

/// Which water content may be used for the next tests.
enum class MoistureSource { Gauge, Oven };

struct MoistureCheck {
    double differencePoints = 0;  ///< abs(gauge - oven)
    MoistureSource use = MoistureSource::Oven;
};

/// Gauge value while abs(gauge - oven) <= limit (inclusive), else the oven's.
/// @param limitPoints percentage points, above 0 @error Refused for w below 0 or a limit not above 0.
/// @source [WAQTC-T310]
Result<MoistureCheck> moistureCheck(WaterContent gauge, WaterContent oven, double limitPoints);

}  // namespace groundcount::method
