#pragma once

#include "method/error.h"

namespace groundcount::method {

/// How the degree of a curve is defined.
enum class DegreeDefinition {
    Arc,   ///< angle at the centre over 100 ft of arc
    Chord  ///< angle at the centre over a chord of 100 ft
};

/// Elements of a simple circular curve; lengths in the unit of the radius.
struct CurveElements {
    double radiusFt = 0;
    double deflectionDeg = 0;       ///< I, angle between the tangents
    double tangentFt = 0;           ///< T, PC to PI
    double lengthFt = 0;            ///< L, arc length; for a chord-definition curve 100 I/D as the plans count it
    double longChordFt = 0;         ///< LC, PC to PT
    double middleOrdinateFt = 0;    ///< M
    double externalFt = 0;          ///< E
};

/// Stations of a simple curve.
struct CurveStations {
    double piFt = 0;
    double pcFt = 0;
    double ptFt = 0;
};

/// Radius from the degree: arc R = 18000/(pi D), chord R = 50/sin(D/2).
/// @param degreeDeg D, degrees, above 0 and below 180 @return feet
/// @error Refused outside the range. @source [ROUTE-SHEET], [CRV-Q10]
Result<double> radiusFromDegreeFt(DegreeDefinition definition, double degreeDeg);

/// Chord-definition degree of a radius: D = 2 asin(chord/(2 R)).
/// @param radiusFt R, at least half the chord @param chordFt above 0, usually 100
/// @error Refused outside the range. @source [COMPUTED]
Result<double> chordDegreeDeg(double radiusFt, double chordFt);

/// T = R tan(I/2); L = R I; LC = 2 R sin(I/2); M = R (1 - cos(I/2)); E = R (1/cos(I/2) - 1).
/// @param radiusFt R, above 0 @param deflectionDeg I, above 0 and below 180
/// @error Refused outside the ranges. @source [ROUTE-SHEET]
Result<CurveElements> simpleCurve(double radiusFt, double deflectionDeg);

/// As `simpleCurve` with the radius from the degree; the chord definition counts L = 100 I/D.
/// @error Refused outside the ranges. @source [ROUTE-SHEET], [CRV-Q10]
Result<CurveElements> simpleCurveFromDegree(DegreeDefinition definition, double degreeDeg, double deflectionDeg);

/// PC = PI - T, PT = PC + L. Never PI + T. @source [ROUTE-SHEET], [CRV-Q10]
CurveStations stationsFromPi(const CurveElements& curve, double piFt);
/// PI = PC + T, PT = PC + L. @source [ROUTE-SHEET]
CurveStations stationsFromPc(const CurveElements& curve, double pcFt);

/// Radius that makes a curve of tangent length T at a deflection: R = T/tan(I/2).
/// @error Refused: T not above 0, I not above 0 and below 180. @source [ROUTE-SHEET]
Result<double> radiusFromTangentFt(double tangentFt, double deflectionDeg);

/// What is left between two curves, PI2 - PI1 - T1 - T2; below 0 they overlap. For showing by how much; see `tangentBetweenFt`.
/// @source [COMPUTED]
double leftBetweenCurvesFt(double pi1Ft, double pi2Ft, double tangent1Ft, double tangent2Ft);

/// Tangent left between two curves: PI2 - PI1 - T1 - T2.
/// @error Refused: below 0, that is the curves overlap; a T below 0; NaN. @source [COMPUTED]
Result<double> tangentBetweenFt(double pi1Ft, double pi2Ft, double tangent1Ft, double tangent2Ft);

}  // namespace groundcount::method
