#pragma once

#include "method/error.h"
#include "method/quantity.h"

#include <span>

namespace groundcount::method {

/// Density calibration of one gauge at one depth: CR = A exp(-B D) - C. Depth is a notch; curves are never mixed.
/// @source [D7759-WK] for "calibration constants of a density calibration equation"; the form [D6938-TXT]
struct DensityCurve {
    Length depth;
    double a = 0;             ///< A, dimensionless, above 0
    double bPerKgPerM3 = 0;   ///< B in 1/(kg/m3), above 0; per lb/ft3 divided by 16.01846
    double c = 0;             ///< C, dimensionless, any sign
    WetDensity rangeLow, rangeHigh;  ///< calibrated range; rangeHigh 0 = range not stated
};

/// Water calibration of one gauge: CR = E + m M. @source [D6938-TXT]
struct WaterCurve {
    double e = 0;                ///< E, dimensionless, any sign
    double slopePerKgPerM3 = 0;  ///< m in 1/(kg/m3), above 0
    WaterDensity rangeLow, rangeHigh;  ///< calibrated range; rangeHigh 0 = range not stated
};

/// Whether a value lies inside the calibrated range; outside is a warning, never a refusal.
enum class Range { Inside, Outside };

/// CR = N/Nstd, both on the same time base.
/// @param testCount counts, above 0 @param standardCount counts, above 0
/// @error Refused for a count that is not above 0. @source [PURDUE-1966]
Result<double> countRatio(double testCount, double standardCount);

/// Wet density from a ratio: D = ln(A/(CR + C))/B.
/// @param ratio dimensionless, above 0 @return kg/m3 inside
/// @error Refused for A or B not above 0, CR + C not above 0, CR + C above A (negative density).
/// @source [D7759-WK], [D6938-TXT]
Result<WetDensity> wetDensity(const DensityCurve& curve, double ratio);

/// Ratio at a wet density: CR = A exp(-B D) - C. @param density above 0
/// @error Refused for A, B or D not above 0. @source [D6938-TXT]
Result<double> countRatioOf(const DensityCurve& curve, WetDensity density);

/// Water mass per volume from a ratio: M = (CR - E)/m. @param ratio dimensionless, above 0
/// @error Refused for m not above 0 or M below 0. @source [D6938-TXT]
Result<WaterDensity> waterDensity(const WaterCurve& curve, double ratio);

/// Ratio at a water density: CR = E + m M. @param water at least 0
/// @error Refused for m not above 0 or M below 0. @source [D6938-TXT]
Result<double> countRatioOf(const WaterCurve& curve, WaterDensity water);

/// dD/dCR = -1/(B (CR + C)), kg/m3 per unit of ratio; for a curve and ratio that wetDensity accepts. @source [COMPUTED]
double wetDensityPerRatio(const DensityCurve& curve, double ratio);

/// dCR/dD = -B (CR + C) at a density, ratio per kg/m3. Times the standard count it is counts per kg/m3.
/// @error as countRatioOf. @source [COMPUTED]
Result<double> ratioPerWetDensity(const DensityCurve& curve, WetDensity density);

Range calibratedRange(const DensityCurve& curve, WetDensity density);
Range calibratedRange(const WaterCurve& curve, WaterDensity water);

/// One row of a printed calibration table of one depth.
struct CalibrationRow {
    WetDensity density;
    double ratio = 0;
};

/// Between two rows, linear in the ratio. @param rows density rising, ratio falling, at least 2
/// @error Refused outside the table or for a table out of order. @source [COMPUTED]
Result<WetDensity> wetDensityFromTable(std::span<const CalibrationRow> rows, double ratio);

/// Between two rows, linear in ln(CR + C) with the known C of the curve: exact for a table of that curve.
/// @error as above, and Refused for CR + C not above 0. @source [COMPUTED]
Result<WetDensity> wetDensityFromTable(std::span<const CalibrationRow> rows, double ratio, double c);

/// Largest error of linear interpolation in a table: B h^2/8, always reading high.
/// @param bPerKgPerM3 above 0 @param step h, above 0 @error Refused otherwise. @source [COMPUTED]
Result<WetDensity> linearStepError(double bPerKgPerM3, WetDensity step);

}  // namespace groundcount::method
