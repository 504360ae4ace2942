#include "method/soil/plausibility.h"

#include "method/limit.h"
#include "method/sentence.h"

namespace groundcount::method {

Result<Plausibility> plausibility(double value, double low, double high)
{
    if (!std::isfinite(value))
        return refusedValue("Value to be judged", value, "", "a finite number");
    if (!(low <= high && std::isfinite(low) && std::isfinite(high)))
        return refusedValue("Upper end of the usual range", high, "", "at least the lower end of " + shownNumber(low));
    return !atLeast(value, low) ? Plausibility::BelowUsual : !atMost(value, high) ? Plausibility::AboveUsual : Plausibility::Usual;
}

}  // namespace groundcount::method
