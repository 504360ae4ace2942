#include "method/accept/pay.h"

#include "method/sentence.h"

#include <array>

namespace groundcount::method {
namespace {

constexpr std::array kLinear = {PayStep{0, 0.5, 55}};
constexpr std::array kStepped = {PayStep{96, 0, 106}, PayStep{90, 1, 10}, PayStep{75, 0.5, 55}, PayStep{55, 1.4, -12}};

}  // namespace

std::span<const PayStep> linearPaySteps()
{
    return kLinear;
}

std::span<const PayStep> steppedPaySteps()
{
    return kStepped;
}

Result<double> payFactor(std::span<const PayStep> steps, double pwl)
{
    if (!(pwl >= 0) || !(pwl <= 100))
        return refusedValue("Percent within limits", pwl, " %", "0 to 100 %");
    for (const PayStep& step : steps)
        if (pwl >= step.fromPwl)
            return (step.intercept + step.slope * pwl) / 100;
    return refusedValue("Percent within limits", pwl, " %", "at least " + shownNumber(steps.empty() ? 100 : steps.back().fromPwl) + " % for payment; the lot is rejected");
}

}  // namespace groundcount::method
