#include "method/gauge/offsets.h"

#include "method/limit.h"
#include "method/sentence.h"
#include "method/spread.h"

#include <boost/math/distributions/students_t.hpp>
#include <vector>

namespace groundcount::method {
namespace {

/// Factor of one sample; its cells have been checked by dryFromWater and the oven's range.
double factorOf(MoistureVariant variant, const MoistureSample& sample, double gaugeContent)
{
    const double wl = sample.oven.percent();
    const double wg = gaugeContent;
    switch (variant) {
    case MoistureVariant::DryBasis:
        return (wl - wg) / (100.0 + wg);
    case MoistureVariant::WetBasis:
        return 100.0 * (wl - wg) / ((100.0 + wl) * (100.0 + wg));
    case MoistureVariant::MassOffset:
        return sample.wet.kgPerM3() * wl / (100.0 + wl) - sample.gaugeWater.kgPerM3();
    case MoistureVariant::PercentOffset:
        return wl - wg;
    case MoistureVariant::Ratio:
        return wl / wg;
    }
    return 0;
}

/// Dry density after correction, kg/m3; not checked.
double correctedDry(double rho, double m, const MoistureCorrection& correction)
{
    const double wg = 100.0 * m / (rho - m);
    switch (correction.variant) {
    case MoistureVariant::DryBasis:
        return 1.0 + correction.factor > 0 ? (rho - m) / (1.0 + correction.factor) : -1.0;
    case MoistureVariant::WetBasis:
        return rho - (m + correction.factor * rho);
    case MoistureVariant::MassOffset:
        return rho - (m + correction.factor);
    case MoistureVariant::PercentOffset:
        return 100.0 * rho / (100.0 + wg + correction.factor);
    case MoistureVariant::Ratio:
        return 100.0 * rho / (100.0 + correction.factor * wg);
    }
    return rho - m;
}

}  // namespace

Result<TrenchOffset> trenchOffset(double standardInTrench, double standardOutside)
{
    if (!isPositive(standardInTrench))
        return refusedValue("Standard count in the trench", standardInTrench, "", "above 0");
    if (!isPositive(standardOutside))
        return refusedValue("Standard count outside the trench", standardOutside, "", "above 0");
    const double offset = standardInTrench - standardOutside;
    return TrenchOffset{offset, 100.0 * std::fabs(offset) / standardOutside};
}

Result<double> trenchCorrected(double count, double standardInTrench, double standardOutside)
{
    const auto offset = trenchOffset(standardInTrench, standardOutside);
    if (!offset)
        return tl::unexpected(offset.error());
    if (!isPositive(count))
        return refusedValue("Test count", count, "", "above 0");
    if (!(count - offset->counts > 0))
        return refusedValue("Test count", count, "",
                            "above the trench offset of " + shownNumber(offset->counts) + " counts");
    return count - offset->counts;
}

Result<DensityBias> densityBias(std::span<const WetDensity> reference, std::span<const WetDensity> gauge, double level)
{
    if (reference.size() != gauge.size())
        return refused("There are " + std::to_string(reference.size()) + " reference densities and " +
                       std::to_string(gauge.size()) + " gauge densities; the numbers must be equal.");
    if (!(level > 0 && level < 1))
        return refusedValue("Significance level", level, "", "above 0 and below 1");
    std::vector<double> differences;
    for (std::size_t i = 0; i < reference.size(); ++i) {
        for (const double density : {reference[i].kgPerM3(), gauge[i].kgPerM3()})
            if (!isPositive(density))
                return refusedValue("Wet density of a pair", density, " kg/m3", "above 0");
        differences.push_back(reference[i].kgPerM3() - gauge[i].kgPerM3());
    }
    const auto spread = spreadOf(differences);
    if (!spread)
        return tl::unexpected(spread.error());
    const double n = static_cast<double>(differences.size());
    DensityBias bias;
    bias.kgPerM3 = spread->mean;
    bias.sdKgPerM3 = spread->sd;
    bias.tCritical = boost::math::quantile(boost::math::complement(boost::math::students_t(n - 1.0), level / 2.0));
    // Equal differences leave s = 0: any bias is then beyond doubt, and none is none.
    bias.t = spread->mean == 0 ? 0 : spread->mean / (spread->sd / std::sqrt(n));
    bias.isSignificant = std::fabs(bias.t) > bias.tCritical;
    return bias;
}

Result<WetDensity> biasCorrected(WetDensity wet, double biasKgPerM3)
{
    const double corrected = wet.kgPerM3() + biasKgPerM3;
    if (!isPositive(wet.kgPerM3()) || !isPositive(corrected))
        return refusedValue("Wet density after the bias", corrected, " kg/m3", "above 0, as must be the one read");
    return WetDensity::kgPerM3(corrected);
}

Result<DryResult> dryFromGauge(WetDensity wet, WaterDensity water) { return dryFromWater(wet, water); }

Result<DryResult> dryFromGauge(WetDensity wet, WaterDensity water, const MoistureCorrection& correction)
{
    const auto raw = dryFromWater(wet, water);
    if (!raw)
        return raw;
    if (!std::isfinite(correction.factor))
        return refusedValue("Moisture correction factor", correction.factor, "", "a finite number");
    const double rho = wet.kgPerM3();
    const double dry = correctedDry(rho, water.kgPerM3(), correction);
    if (!isPositive(dry))
        return refusedValue("Moisture correction factor", correction.factor, "", "small enough to leave dry mass");
    const double w = 100.0 * (rho / dry - 1.0);
    if (!atLeast(w, 0.0))
        return refusedValue("Water content after correction", w, " %", "at least 0");
    if (w < 0)
        return DryResult{WaterDensity::kgPerM3(0), WaterContent::percent(0), DryDensity::kgPerM3(rho)};
    return DryResult{WaterDensity::kgPerM3(rho - dry), WaterContent::percent(w), DryDensity::kgPerM3(dry)};
}

Result<MoistureCalibration> moistureCalibration(MoistureVariant variant, std::span<const MoistureSample> samples,
                                                int minimum)
{
    if (minimum < 1 || samples.size() < static_cast<std::size_t>(minimum))
        return refusedValue("Number of moisture samples", static_cast<double>(samples.size()), "",
                            "at least " + std::to_string(minimum < 1 ? 1 : minimum));
    std::vector<double> factors;
    std::vector<double> differences;
    for (const auto& sample : samples) {
        const auto gauge = dryFromWater(sample.wet, sample.gaugeWater);
        if (!gauge)
            return tl::unexpected(gauge.error());
        if (!isNotNegative(sample.oven.percent()))
            return refusedValue("Oven water content", sample.oven.percent(), " %", "at least 0");
        if (variant == MoistureVariant::Ratio && !(gauge->content.percent() > 0))
            return refusedValue("Gauge water content of a sample", gauge->content.percent(), " %",
                                "above 0 for a ratio");
        factors.push_back(factorOf(variant, sample, gauge->content.percent()));
        differences.push_back(sample.oven.percent() - gauge->content.percent());
    }
    MoistureCalibration result;
    result.samples = static_cast<int>(samples.size());
    if (samples.size() == 1) {
        result.correction = {variant, factors.front()};
        result.meanDifference = differences.front();
        return result;
    }
    const auto factor = spreadOf(factors);
    const auto difference = spreadOf(differences);
    if (!factor || !difference)
        return tl::unexpected(factor ? difference.error() : factor.error());
    result.correction = {variant, factor->mean};
    result.sdFactor = factor->sd;
    result.meanDifference = difference->mean;
    result.sdDifference = difference->sd;
    return result;
}

Result<MoistureCheck> moistureCheck(WaterContent gauge, WaterContent oven, double limitPoints)
{
    for (const double w : {gauge.percent(), oven.percent()})
        if (!isNotNegative(w))
            return refusedValue("Water content", w, " %", "at least 0");
    if (!isPositive(limitPoints))
        return refusedValue("Limit of the moisture check", limitPoints, " percentage points", "above 0");
    const double difference = std::fabs(gauge.percent() - oven.percent());
    return MoistureCheck{difference, atMost(difference, limitPoints) ? MoistureSource::Gauge : MoistureSource::Oven};
}

}  // namespace groundcount::method
