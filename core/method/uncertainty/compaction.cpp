#include "method/uncertainty/compaction.h"

#include "method/sentence.h"
#include "method/soil/in_place.h"

#include <boost/math/distributions/normal.hpp>
#include <initializer_list>
#include <optional>
#include <utility>

namespace groundcount::method {
namespace {

using Named = std::pair<std::string_view, double>;

std::optional<Error> notPositive(std::initializer_list<Named> values)
{
    for (const auto& [thing, value] : values)
        if (!isPositive(value))
            return refusedValue(thing, value, "", "above 0").value();
    return std::nullopt;
}

/// Root of two squares; std::hypot guards against squares beyond 1e308, which relative uncertainties never reach, and
/// costs more than the rest of the propagation.
double rootOfSquares(double a, double b)
{
    return std::sqrt(a * a + b * b);
}

Result<CompactionUncertainty> finished(const DryResult& place, double dryStandard, DryDensity maximum, DryDensity uMaximum)
{
    const auto compaction = percentCompaction(place.dry, maximum);
    if (!compaction)
        return tl::unexpected(compaction.error());
    if (!isNotNegative(uMaximum.kgPerM3()))
        return refusedValue("Uncertainty of the maximum dry density", uMaximum.kgPerM3(), " kg/m3", "at least 0");
    CompactionUncertainty result;
    result.dry = place.dry;
    result.dryStandard = DryDensity::kgPerM3(dryStandard);
    result.compactionPct = compaction->percent();
    result.standardPct = compaction->percent() *
                         rootOfSquares(dryStandard / place.dry.kgPerM3(), uMaximum.kgPerM3() / maximum.kgPerM3());
    result.expandedPct = 2.0 * result.standardPct;
    return result;
}

}  // namespace

Result<RatioUncertainty> ratioUncertainty(const Counting& c)
{
    if (auto fault = notPositive({{"Test count", c.testCount},
                                  {"Standard count", c.standardCount},
                                  {"Prescale", c.prescale},
                                  {"Time of the test count in minutes", c.testMinutes},
                                  {"Time of the standard count in minutes", c.standardMinutes}}))
        return tl::unexpected(std::move(*fault));
    RatioUncertainty u;
    u.ratio = c.testCount / c.standardCount;
    u.relative = std::sqrt(1.0 / (c.testCount * c.prescale * c.testMinutes) +
                           1.0 / (c.standardCount * c.prescale * c.standardMinutes));
    u.absolute = u.ratio * u.relative;
    return u;
}

Result<WetDensity> wetUncertainty(const RatioUncertainty& ratio, double bPerKgPerM3, double c)
{
    if (auto fault = notPositive({{"Coefficient B per kg/m3", bPerKgPerM3}, {"Count ratio plus C", ratio.ratio + c}}))
        return tl::unexpected(std::move(*fault));
    if (!isNotNegative(ratio.absolute))
        return refusedValue("Uncertainty of the count ratio", ratio.absolute, "", "at least 0");
    return WetDensity::kgPerM3(ratio.absolute / (bPerKgPerM3 * (ratio.ratio + c)));
}

Result<WaterDensity> waterUncertainty(const RatioUncertainty& ratio, double slopePerKgPerM3)
{
    if (auto fault = notPositive({{"Slope of the water calibration per kg/m3", slopePerKgPerM3}}))
        return tl::unexpected(std::move(*fault));
    if (!isNotNegative(ratio.absolute))
        return refusedValue("Uncertainty of the count ratio", ratio.absolute, "", "at least 0");
    return WaterDensity::kgPerM3(ratio.absolute / slopePerKgPerM3);
}

Result<WetDensity> gaugePrecision(double countPerMinute, double prescale, double slopeCountsPerKgPerM3)
{
    if (auto fault = notPositive({{"Count per minute", countPerMinute}, {"Prescale", prescale}}))
        return tl::unexpected(std::move(*fault));
    if (!isPositive(std::fabs(slopeCountsPerKgPerM3)))
        return refusedValue("Slope of the density curve", slopeCountsPerKgPerM3, " counts per kg/m3", "different from 0");
    return WetDensity::kgPerM3(std::sqrt(countPerMinute / prescale) / std::fabs(slopeCountsPerKgPerM3));
}

Result<double> countDeviationPercent(double countPerMinute, double prescale, double minutes)
{
    if (auto fault = notPositive({{"Count per minute", countPerMinute}, {"Prescale", prescale}, {"Counting time in minutes", minutes}}))
        return tl::unexpected(std::move(*fault));
    return 100.0 / std::sqrt(countPerMinute * prescale * minutes);
}

double CompactionUncertainty::chanceAtLeast(double requiredPct) const
{
    if (!(standardPct > 0))
        return compactionPct >= requiredPct ? 1.0 : 0.0;
    return boost::math::cdf(boost::math::normal(), (compactionPct - requiredPct) / standardPct);
}

Result<CompactionUncertainty> compactionUncertainty(WetDensity wet, WetDensity uWet, WaterDensity water,
                                                    WaterDensity uWater, DryDensity maximum, DryDensity uMaximum)
{
    const auto place = dryFromWater(wet, water);
    if (!place)
        return tl::unexpected(place.error());
    for (const double u : {uWet.kgPerM3(), uWater.kgPerM3()})
        if (!isNotNegative(u))
            return refusedValue("Uncertainty of a density", u, " kg/m3", "at least 0");
    return finished(*place, rootOfSquares(uWet.kgPerM3(), uWater.kgPerM3()), maximum, uMaximum);
}

Result<CompactionUncertainty> compactionUncertainty(WetDensity wet, WetDensity uWet, WaterContent content,
                                                    WaterContent uContent, DryDensity maximum, DryDensity uMaximum)
{
    const auto place = dryFromContent(wet, content);
    if (!place)
        return tl::unexpected(place.error());
    if (!isNotNegative(uWet.kgPerM3()))
        return refusedValue("Uncertainty of the wet density", uWet.kgPerM3(), " kg/m3", "at least 0");
    if (!isNotNegative(uContent.percent()))
        return refusedValue("Uncertainty of the water content", uContent.percent(), " points", "at least 0");
    const double relative = rootOfSquares(uWet.kgPerM3() / wet.kgPerM3(), uContent.percent() / (100.0 + content.percent()));
    return finished(*place, place->dry.kgPerM3() * relative, maximum, uMaximum);
}

Result<double> inQuadrature(std::initializer_list<double> parts)
{
    double squares = 0;
    for (const double part : parts) {
        if (!isNotNegative(part))
            return refusedValue("A part of the uncertainty", part, "", "at least 0");
        squares += part * part;
    }
    return std::sqrt(squares);
}

}  // namespace groundcount::method
