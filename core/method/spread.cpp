#include "method/spread.h"

#include "method/sentence.h"

namespace groundcount::method {

Result<double> meanOf(std::span<const double> values)
{
    if (values.empty())
        return refused("There are 0 values; a mean needs at least 1.");
    double sum = 0;
    for (const double value : values) {
        if (!std::isfinite(value))
            return refusedValue("A value of the list", value, "", "a finite number");
        sum += value;
    }
    return sum / static_cast<double>(values.size());
}

Result<Spread> spreadOf(std::span<const double> values)
{
    if (values.size() < 2)
        return refused("There are " + std::to_string(values.size()) + " values; a standard deviation needs at least 2.");
    const auto mean = meanOf(values);
    if (!mean)
        return tl::unexpected(mean.error());
    double squares = 0;
    for (const double value : values)
        squares += (value - *mean) * (value - *mean);
    return Spread{*mean, std::sqrt(squares / static_cast<double>(values.size() - 1))};
}

}  // namespace groundcount::method
