#include "method/site/hole_depth.h"

#include "method/decimal.h"

#include <string>

namespace groundcount::method {
namespace {

// 8 in. typed as 8 in. and as 0.2032 m must be the same depth: a nanometre is below any rule.
constexpr double kSameDepthM = 1e-9;

std::string both(Length depth)
{
    return reportedText(depth.metres() * 1000, 0, TieRule::HalfEven) + " mm (" + reportedText(depth.inches(), 2, TieRule::HalfEven) + " in.)";
}

bool usable(double metres)
{
    return metres >= 0 && metres < 1e3;
}

}  // namespace

Result<void> checkHole(Length testDepth, Length hole, Length margin, Length lift)
{
    if (!(testDepth.metres() > 0) || !usable(testDepth.metres()))
        return refused("The test depth must be above 0 mm and below 1 km.");
    if (!(lift.metres() > 0) || !usable(lift.metres()))
        return refused("The lift must be above 0 mm and below 1 km.");
    if (!usable(margin.metres()) || !usable(hole.metres()))
        return refused("The hole and its margin must be at least 0 mm and below 1 km.");
    if (testDepth.metres() > lift.metres() + kSameDepthM)
        return refused("The test depth must be at most the lift of " + both(lift) + "; it is " + both(testDepth) + ".");
    const Length least = Length::metres(testDepth.metres() + margin.metres());
    if (hole.metres() < least.metres() - kSameDepthM)
        return refused("The hole must be at least " + both(least) + " deep; it is " + both(hole) + ".");
    return {};
}

}  // namespace groundcount::method
