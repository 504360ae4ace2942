#include "method/gauge/calibration.h"

#include "method/sentence.h"

#include <algorithm>

namespace groundcount::method {
namespace {

tl::unexpected<Error> refusedCurve(const DensityCurve& curve)
{
    if (!isPositive(curve.a))
        return refusedValue("Coefficient A of the density calibration", curve.a, "", "above 0");
    if (!isPositive(curve.bPerKgPerM3))
        return refusedValue("Coefficient B of the density calibration", curve.bPerKgPerM3, " per kg/m3", "above 0");
    return refusedValue("Coefficient C of the density calibration", curve.c, "", "a finite number");
}

bool isUsable(const DensityCurve& curve)
{
    return isPositive(curve.a) && isPositive(curve.bPerKgPerM3) && std::isfinite(curve.c);
}

tl::unexpected<Error> refusedCurve(const WaterCurve& curve)
{
    if (!isPositive(curve.slopePerKgPerM3))
        return refusedValue("Slope of the water calibration", curve.slopePerKgPerM3, " per kg/m3", "above 0");
    return refusedValue("Coefficient E of the water calibration", curve.e, "", "a finite number");
}

bool isUsable(const WaterCurve& curve) { return isPositive(curve.slopePerKgPerM3) && std::isfinite(curve.e); }

/// Interpolates in x = ratio + c, straight or on the logarithm; rows are checked here for both.
template <class Transform>
Result<WetDensity> interpolated(std::span<const CalibrationRow> rows, double ratio, Transform transform)
{
    if (rows.size() < 2)
        return refusedValue("Number of rows of the calibration table", static_cast<double>(rows.size()), "", "at least 2");
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!isPositive(rows[i].density.kgPerM3()) || !std::isfinite(transform(rows[i].ratio)))
            return refusedValue("Ratio of a row of the calibration table", rows[i].ratio, "",
                                "a number above -C beside a density above 0");
        if (i > 0 && !(rows[i].density > rows[i - 1].density && rows[i].ratio < rows[i - 1].ratio))
            return refusedValue("Ratio of a row of the calibration table", rows[i].ratio, "",
                                "below the ratio of the row before, at a higher density");
    }
    if (!(ratio <= rows.front().ratio && ratio >= rows.back().ratio))
        return refusedValue("Count ratio", ratio, "",
                            "inside the calibration table, " + shownNumber(rows.back().ratio) + " to " +
                                shownNumber(rows.front().ratio));
    std::size_t above = 1;
    while (ratio < rows[above].ratio)
        ++above;
    const auto& low = rows[above - 1];
    const auto& high = rows[above];
    const double part = (transform(low.ratio) - transform(ratio)) / (transform(low.ratio) - transform(high.ratio));
    return WetDensity::kgPerM3(low.density.kgPerM3() + part * (high.density.kgPerM3() - low.density.kgPerM3()));
}

}  // namespace

Result<double> countRatio(double testCount, double standardCount)
{
    if (!isPositive(testCount))
        return refusedValue("Test count", testCount, "", "above 0");
    if (!isPositive(standardCount))
        return refusedValue("Standard count", standardCount, "", "above 0");
    return testCount / standardCount;
}

Result<WetDensity> wetDensity(const DensityCurve& curve, double ratio)
{
    if (!isUsable(curve))
        return refusedCurve(curve);
    if (!isPositive(ratio))
        return refusedValue("Count ratio", ratio, "", "above 0");
    const double shifted = ratio + curve.c;
    if (!(shifted > 0))
        return refusedValue("Count ratio plus C", shifted, "", "above 0");
    if (!(shifted <= curve.a))
        return refusedValue("Count ratio plus C", shifted, "",
                            "at most A = " + shownNumber(curve.a) + ", else the density would be negative");
    return WetDensity::kgPerM3(std::log(curve.a / shifted) / curve.bPerKgPerM3);
}

Result<double> countRatioOf(const DensityCurve& curve, WetDensity density)
{
    if (!isUsable(curve))
        return refusedCurve(curve);
    if (!isPositive(density.kgPerM3()))
        return refusedValue("Wet density", density.kgPerM3(), " kg/m3", "above 0");
    return curve.a * std::exp(-curve.bPerKgPerM3 * density.kgPerM3()) - curve.c;
}

Result<WaterDensity> waterDensity(const WaterCurve& curve, double ratio)
{
    if (!isUsable(curve))
        return refusedCurve(curve);
    if (!isPositive(ratio))
        return refusedValue("Count ratio", ratio, "", "above 0");
    if (!(ratio >= curve.e))
        return refusedValue("Count ratio", ratio, "",
                            "at least E = " + shownNumber(curve.e) + ", else the water would be negative");
    return WaterDensity::kgPerM3((ratio - curve.e) / curve.slopePerKgPerM3);
}

Result<double> countRatioOf(const WaterCurve& curve, WaterDensity water)
{
    if (!isUsable(curve))
        return refusedCurve(curve);
    if (!isNotNegative(water.kgPerM3()))
        return refusedValue("Water density", water.kgPerM3(), " kg/m3", "at least 0");
    return curve.e + curve.slopePerKgPerM3 * water.kgPerM3();
}

double wetDensityPerRatio(const DensityCurve& curve, double ratio)
{
    return -1.0 / (curve.bPerKgPerM3 * (ratio + curve.c));
}

Result<double> ratioPerWetDensity(const DensityCurve& curve, WetDensity density)
{
    const auto ratio = countRatioOf(curve, density);
    if (!ratio)
        return tl::unexpected(ratio.error());
    return -curve.bPerKgPerM3 * (*ratio + curve.c);
}

Range calibratedRange(const DensityCurve& curve, WetDensity density)
{
    const bool stated = curve.rangeHigh.kgPerM3() > 0;
    return !stated || (density >= curve.rangeLow && density <= curve.rangeHigh) ? Range::Inside : Range::Outside;
}

Range calibratedRange(const WaterCurve& curve, WaterDensity water)
{
    const bool stated = curve.rangeHigh.kgPerM3() > 0;
    return !stated || (water >= curve.rangeLow && water <= curve.rangeHigh) ? Range::Inside : Range::Outside;
}

Result<WetDensity> wetDensityFromTable(std::span<const CalibrationRow> rows, double ratio)
{
    return interpolated(rows, ratio, [](double r) { return r; });
}

Result<WetDensity> wetDensityFromTable(std::span<const CalibrationRow> rows, double ratio, double c)
{
    return interpolated(rows, ratio, [c](double r) { return std::log(r + c); });
}

Result<WetDensity> linearStepError(double bPerKgPerM3, WetDensity step)
{
    if (!isPositive(bPerKgPerM3))
        return refusedValue("Coefficient B of the density calibration", bPerKgPerM3, " per kg/m3", "above 0");
    if (!isPositive(step.kgPerM3()))
        return refusedValue("Step of the calibration table", step.kgPerM3(), " kg/m3", "above 0");
    return WetDensity::kgPerM3(bPerKgPerM3 * step.kgPerM3() * step.kgPerM3() / 8.0);
}

}  // namespace groundcount::method
