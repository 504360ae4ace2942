#include "method/gauge/decay.h"

#include "method/sentence.h"

#include <numbers>

namespace groundcount::method {

Result<double> decayFactor(double halfLifeDays, double elapsedDays)
{
    if (!isPositive(halfLifeDays))
        return refusedValue("Half-life", halfLifeDays, " days", "above 0");
    if (!isNotNegative(elapsedDays))
        return refusedValue("Time since calibration", elapsedDays, " days", "at least 0");
    return std::exp(-std::numbers::ln2 * elapsedDays / halfLifeDays);
}

Result<double> halfLifeDays(double value, TimeUnit unit)
{
    if (!isPositive(value))
        return refusedValue("Half-life", value, "", "above 0");
    switch (unit) {
    case TimeUnit::Seconds:
        return value / 86400.0;
    case TimeUnit::Years365:
        return value * 365.0;
    case TimeUnit::Years365Quarter:
        return value * 365.25;
    case TimeUnit::Days:
        break;
    }
    return value;
}

}  // namespace groundcount::method
