#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <initializer_list>

namespace groundcount::method {

/// Pulses behind one ratio: per-minute display counts, each worth F pulses.
struct Counting {
    double testCount = 0;        ///< N, per minute, above 0
    double standardCount = 0;    ///< Nstd, per minute, above 0
    double prescale = 0;         ///< F, true counts per displayed count, above 0
    double testMinutes = 0;      ///< t, above 0
    double standardMinutes = 0;  ///< t_s, above 0
};

struct RatioUncertainty {
    double ratio = 0;
    double relative = 0;  ///< u_CR/CR
    double absolute = 0;  ///< u_CR
};

/// u_CR = CR sqrt(1/(N F t) + 1/(Nstd F t_s)). @error Refused for any value not above 0. @source [COMPUTED]
Result<RatioUncertainty> ratioUncertainty(const Counting& counting);

/// u_rho = u_CR/(B (CR + C)). @param bPerKgPerM3 B, above 0
/// @error Refused for B or CR + C not above 0, u below 0. @source [COMPUTED]
Result<WetDensity> wetUncertainty(const RatioUncertainty& ratio, double bPerKgPerM3, double c);

/// u_M = u_CR/m. @param slopePerKgPerM3 m, above 0 @error Refused otherwise. @source [COMPUTED]
Result<WaterDensity> waterUncertainty(const RatioUncertainty& ratio, double slopePerKgPerM3);

/// Precision = sqrt(N/F)/abs(slope). @param slopeCountsPerKgPerM3 not 0
/// @error Refused for N or F not above 0, slope 0. @source [D6938-TXT]
Result<WetDensity> gaugePrecision(double countPerMinute, double prescale, double slopeCountsPerKgPerM3);

/// Expected standard deviation of one count in percent: 100/sqrt(N F t). @error Refused for values not above 0.
/// @source [COMPUTED]
Result<double> countDeviationPercent(double countPerMinute, double prescale, double minutes);

/// Standard uncertainties (k = 1) of one test.
struct CompactionUncertainty {
    DryDensity dry;
    DryDensity dryStandard;        ///< u_d
    double compactionPct = 0;      ///< PC
    double standardPct = 0;        ///< u_PC
    double expandedPct = 0;        ///< 2 u_PC
    /// Chance that the true percent is at least `requiredPct`: Phi((PC - L)/u_PC). Information, never the verdict.
    /// u_PC = 0 gives 0 or 1. @source [COMPUTED]; Phi by Boost.Math
    double chanceAtLeast(double requiredPct) const;
};

/// Water by subtraction: u_d^2 = u_rho^2 + u_M^2; u_PC = PC sqrt((u_d/rho_d)^2 + (u_max/rho_max)^2).
/// @param wet, water as dryFromWater @param maximum above 0 @param uWet, uWater, uMaximum standard uncertainties, at least 0
/// @error Refused as dryFromWater and percentCompaction, and for an uncertainty below 0. @source [COMPUTED]
Result<CompactionUncertainty> compactionUncertainty(WetDensity wet, WetDensity uWet, WaterDensity water,
                                                    WaterDensity uWater, DryDensity maximum, DryDensity uMaximum);

/// Water from the oven: (u_d/rho_d)^2 = (u_rho/rho)^2 + (u_w/(100 + w))^2; then as above.
/// @param content w and its uncertainty uContent in percentage points @error as above. @source [COMPUTED]
Result<CompactionUncertainty> compactionUncertainty(WetDensity wet, WetDensity uWet, WaterContent content,
                                                    WaterContent uContent, DryDensity maximum, DryDensity uMaximum);

/// Root of the sum of squares of independent parts (calibration maximum error/sqrt 3, seating, moisture factor
/// s/sqrt n, counting), all in one unit. @error Refused for a part below 0. @source [COMPUTED]
Result<double> inQuadrature(std::initializer_list<double> parts);

}  // namespace groundcount::method
