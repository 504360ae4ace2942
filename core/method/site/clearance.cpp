#include "method/site/clearance.h"

#include <cmath>
#include <string>

namespace groundcount::method {
namespace {

// 24 in. typed as inches and 2 ft typed as feet must be the same distance: a nanometre is below any tape.
constexpr double kSameDistanceM = 1e-9;

}  // namespace

Result<ClearanceAnswer> judgeClearance(Length measured, Length uncertainty, Length required, Inclusive inclusive)
{
    const double d = measured.metres();
    const double u = uncertainty.metres();
    const double r = required.metres();
    if (!(d >= 0) || !std::isfinite(d))
        return refused("The measured distance must be at least 0 m; it is " + std::to_string(d) + ".");
    if (!(u >= 0) || !std::isfinite(u))
        return refused("The uncertainty of a distance must be at least 0 m; it is " + std::to_string(u) + ".");
    if (!(r > 0) || !std::isfinite(r))
        return refused("The required distance must be above 0 m; it is " + std::to_string(r) + ".");
    const bool limitCounts = inclusive == Inclusive::Yes;
    const double shortfall = limitCounts ? -kSameDistanceM : kSameDistanceM;
    if (d - u - r >= shortfall)
        return ClearanceAnswer::Clear;
    if (d + u - r < shortfall)
        return ClearanceAnswer::TooClose;
    return ClearanceAnswer::CannotTell;
}

std::string_view clearanceWord(ClearanceAnswer answer)
{
    switch (answer) {
    case ClearanceAnswer::Clear:
        return "clear";
    case ClearanceAnswer::TooClose:
        return "too close";
    case ClearanceAnswer::CannotTell:
        break;
    }
    return "cannot tell";
}

}  // namespace groundcount::method
