#include "method/accept/moisture_window.h"

#include "method/sentence.h"

namespace groundcount::method {

Result<WindowCheck> checkWindow(WaterContent content, WaterContent optimum, const MoistureWindow& window)
{
    if (!isNotNegative(content.percent()))
        return refusedValue("Water content", content.percent(), " %", "at least 0");
    if (!isPositive(optimum.percent()))
        return refusedValue("Optimum water content", optimum.percent(), " %", "above 0");
    Requirement requirement;
    requirement.window = window;
    if (const auto sound = validate(requirement); !sound)
        return tl::unexpected(sound.error());
    WindowCheck check;
    check.bounds = windowBounds(window, optimum.percent());
    check.side = sideOf(content.percent(), check.bounds.lowPct, check.bounds.highPct);
    return check;
}

}  // namespace groundcount::method
