#include "method/soil/drying.h"

#include "method/limit.h"
#include "method/sentence.h"

namespace groundcount::method {

Result<DriedSample> driedSample(double can, double wetWithCan, double dryWithCan)
{
    if (!isNotNegative(can))
        return refusedValue("Mass of the can", can, "", "at least 0");
    if (!(dryWithCan > can && std::isfinite(dryWithCan)))
        return refusedValue("Dry mass with can", dryWithCan, "", "above the can's " + shownNumber(can));
    if (!(wetWithCan >= dryWithCan && std::isfinite(wetWithCan)))
        return refusedValue("Moist mass with can", wetWithCan, "", "at least the dry mass with can, " + shownNumber(dryWithCan));
    const double water = wetWithCan - dryWithCan;
    return DriedSample{WaterContent::percent(100.0 * water / (dryWithCan - can)), 100.0 * water / (wetWithCan - can)};
}

Result<WaterContent> contentFromMasses(double water, double dry)
{
    if (!isNotNegative(water))
        return refusedValue("Mass of water", water, "", "at least 0");
    if (!isPositive(dry))
        return refusedValue("Mass of dry soil", dry, "", "above 0");
    return WaterContent::percent(100.0 * water / dry);
}

Result<WaterContent> meanOfTwo(WaterContent top, WaterContent bottom)
{
    for (const double w : {top.percent(), bottom.percent()})
        if (!isNotNegative(w))
            return refusedValue("Water content", w, " %", "at least 0");
    return WaterContent::percent((top.percent() + bottom.percent()) / 2.0);
}

Result<WaterContent> fromWetBasis(double wetBasisPercent)
{
    if (!(wetBasisPercent >= 0 && wetBasisPercent < 100))
        return refusedValue("Water in percent of the moist mass", wetBasisPercent, " %", "at least 0 and below 100");
    return WaterContent::percent(100.0 * wetBasisPercent / (100.0 - wetBasisPercent));
}

Result<DriedSample> carbideSample(double dialPercent, CarbideSample sample)
{
    const double wetBasis = sample == CarbideSample::Half ? 2.0 * dialPercent : dialPercent;
    return fromWetBasis(wetBasis).map([&](WaterContent content) { return DriedSample{content, wetBasis}; });
}

Result<ConstantMass> constantMass(double previous, double current, double limitPercent)
{
    if (!isPositive(previous))
        return refusedValue("Earlier mass", previous, "", "above 0");
    if (!(current > 0 && current <= previous))
        return refusedValue("Mass after more drying", current, "", "above 0 and at most the earlier mass, " + shownNumber(previous));
    if (!isPositive(limitPercent))
        return refusedValue("Limit of constant mass", limitPercent, " %", "above 0");
    const bool constant = atMost(100.0 * (previous - current), limitPercent * previous);
    return ConstantMass{100.0 * (previous - current) / previous, constant ? DryingState::Constant : DryingState::Continue};
}

}  // namespace groundcount::method
