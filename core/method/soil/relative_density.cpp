#include "method/soil/relative_density.h"

#include "method/sentence.h"

#include <optional>

namespace groundcount::method {
namespace {

std::optional<Error> faultOf(DryDensity maximum, DryDensity minimum)
{
    if (!isPositive(minimum.kgPerM3()))
        return refusedValue("Minimum dry density", minimum.kgPerM3(), " kg/m3", "above 0").value();
    if (!(maximum > minimum && std::isfinite(maximum.kgPerM3())))
        return refusedValue("Maximum dry density", maximum.kgPerM3(), " kg/m3",
                            "above the minimum of " + shownNumber(minimum.kgPerM3()) + " kg/m3").value();
    return std::nullopt;
}

}  // namespace

Result<double> relativeDensityFromVoids(double e, double eMax, double eMin)
{
    for (const double ratio : {e, eMin})
        if (!isPositive(ratio))
            return refusedValue("Void ratio", ratio, "", "above 0");
    if (!(eMax > eMin && std::isfinite(eMax)))
        return refusedValue("Largest void ratio", eMax, "", "above the smallest of " + shownNumber(eMin));
    return 100.0 * (eMax - e) / (eMax - eMin);
}

Result<double> relativeDensity(DryDensity dry, DryDensity maximum, DryDensity minimum)
{
    if (auto fault = faultOf(maximum, minimum))
        return tl::unexpected(std::move(*fault));
    const double d = dry.kgPerM3();
    if (!isPositive(d))
        return refusedValue("Dry density", d, " kg/m3", "above 0");
    const double high = maximum.kgPerM3();
    const double low = minimum.kgPerM3();
    return 100.0 * (high / d) * (d - low) / (high - low);
}

Result<DryDensity> dryAtRelativeDensity(double percent, DryDensity maximum, DryDensity minimum)
{
    if (auto fault = faultOf(maximum, minimum))
        return tl::unexpected(std::move(*fault));
    const double high = maximum.kgPerM3();
    const double low = minimum.kgPerM3();
    const double left = high - percent / 100.0 * (high - low);
    if (!isPositive(left))
        return refusedValue("Relative density", percent, " %", "below " + shownNumber(100.0 * high / (high - low)));
    return DryDensity::kgPerM3(high * low / left);
}

}  // namespace groundcount::method
