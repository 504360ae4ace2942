#include "method/site/curve.h"

#include <cmath>
#include <numbers>
#include <string>

namespace groundcount::method {
namespace {

constexpr double kRadiansPerDegree = std::numbers::pi / 180.0;

Result<void> checkDeflection(double deflectionDeg)
{
    if (!(deflectionDeg > 0) || !(deflectionDeg < 180))
        return refused("The deflection of a curve must be above 0 and below 180 degrees; it is " + std::to_string(deflectionDeg) + ".");
    return {};
}

}  // namespace

Result<double> radiusFromDegreeFt(DegreeDefinition definition, double degreeDeg)
{
    if (!(degreeDeg > 0) || !(degreeDeg < 180))
        return refused("The degree of a curve must be above 0 and below 180 degrees; it is " + std::to_string(degreeDeg) + ".");
    if (definition == DegreeDefinition::Arc)
        return 18000.0 / (std::numbers::pi * degreeDeg);
    return 50.0 / std::sin(degreeDeg / 2 * kRadiansPerDegree);
}

Result<double> chordDegreeDeg(double radiusFt, double chordFt)
{
    if (!(chordFt > 0) || !std::isfinite(chordFt))
        return refused("The chord must be above 0 ft; it is " + std::to_string(chordFt) + ".");
    if (!(radiusFt >= chordFt / 2) || !std::isfinite(radiusFt))
        return refused("The radius must be at least half the chord, " + std::to_string(chordFt / 2) + " ft; it is " + std::to_string(radiusFt) + ".");
    return 2 * std::asin(chordFt / 2 / radiusFt) / kRadiansPerDegree;
}

Result<CurveElements> simpleCurve(double radiusFt, double deflectionDeg)
{
    if (!(radiusFt > 0) || !std::isfinite(radiusFt))
        return refused("The radius of a curve must be above 0; it is " + std::to_string(radiusFt) + ".");
    if (const auto ok = checkDeflection(deflectionDeg); !ok)
        return tl::unexpected(ok.error());
    const double half = deflectionDeg / 2 * kRadiansPerDegree;
    CurveElements curve;
    curve.radiusFt = radiusFt;
    curve.deflectionDeg = deflectionDeg;
    curve.tangentFt = radiusFt * std::tan(half);
    curve.lengthFt = radiusFt * 2 * half;
    curve.longChordFt = 2 * radiusFt * std::sin(half);
    curve.middleOrdinateFt = radiusFt * (1 - std::cos(half));
    curve.externalFt = radiusFt * (1 / std::cos(half) - 1);
    return curve;
}

Result<CurveElements> simpleCurveFromDegree(DegreeDefinition definition, double degreeDeg, double deflectionDeg)
{
    const auto radius = radiusFromDegreeFt(definition, degreeDeg);
    if (!radius)
        return tl::unexpected(radius.error());
    auto curve = simpleCurve(*radius, deflectionDeg);
    if (curve && definition == DegreeDefinition::Chord)
        curve->lengthFt = 100.0 * deflectionDeg / degreeDeg;
    return curve;
}

CurveStations stationsFromPi(const CurveElements& curve, double piFt)
{
    const double pc = piFt - curve.tangentFt;
    return {piFt, pc, pc + curve.lengthFt};
}

CurveStations stationsFromPc(const CurveElements& curve, double pcFt)
{
    return {pcFt + curve.tangentFt, pcFt, pcFt + curve.lengthFt};
}

Result<double> radiusFromTangentFt(double tangentFt, double deflectionDeg)
{
    if (!(tangentFt > 0) || !std::isfinite(tangentFt))
        return refused("The tangent of a curve must be above 0; it is " + std::to_string(tangentFt) + ".");
    if (const auto ok = checkDeflection(deflectionDeg); !ok)
        return tl::unexpected(ok.error());
    return tangentFt / std::tan(deflectionDeg / 2 * kRadiansPerDegree);
}

double leftBetweenCurvesFt(double pi1Ft, double pi2Ft, double tangent1Ft, double tangent2Ft)
{
    return pi2Ft - pi1Ft - tangent1Ft - tangent2Ft;
}

Result<double> tangentBetweenFt(double pi1Ft, double pi2Ft, double tangent1Ft, double tangent2Ft)
{
    if (!(tangent1Ft >= 0) || !(tangent2Ft >= 0))
        return refused("A tangent must be at least 0; they are " + std::to_string(tangent1Ft) + " and " + std::to_string(tangent2Ft) + ".");
    const double left = leftBetweenCurvesFt(pi1Ft, pi2Ft, tangent1Ft, tangent2Ft);
    if (!(left >= 0))
        return refused("The curves overlap: the tangent between them must be at least 0; it is " + std::to_string(left) + ".");
    return left;
}

}  // namespace groundcount::method
