#pragma once

#include "method/error.h"
#include "method/site/station.h"
#include "method/site/station_equation.h"

#include <vector>

namespace groundcount::method {

/// A point in the plane of the job. Both numbers are in the length unit of the job's grid, the unit of the stations
/// (survey or international feet; metres for a metric job, where the names keep their ending).
struct PlanPoint {
    double northFt = 0;
    double eastFt = 0;
    bool operator==(const PlanPoint&) const = default;
};

enum class Turn { Left, Right };

/// One piece of an alignment in order: a tangent (radius 0) or an arc. A change of direction between two pieces that is
/// not an arc is a corner.
struct AlignmentElement {
    double lengthFt = 0;
    double radiusFt = 0;  ///< 0 for a tangent
    Turn turn = Turn::Right;
    double cornerDeg = 0;  ///< deflection at the begin of this piece, right positive; 0 for a smooth joint
};

/// A point of intersection with its curve; radius 0 leaves a corner.
struct IntersectionPoint {
    PlanPoint point;
    double radiusFt = 0;
};

/// Foot of a point on the alignment.
struct StationOffset {
    Station station;
    double offsetRightFt = 0;   ///< right of increasing stations positive
    bool atCorner = false;      ///< the nearest place is a corner without a perpendicular; `at` does not lead back
    std::vector<StationOffset> ties;  ///< other feet with the same |offset| within 1e-6
};

/// A horizontal alignment of tangents and circular arcs. Immutable.
class Alignment {
public:
    /// Builds from a begin point, its azimuth and pieces in order.
    /// @param beginAzimuthDeg degrees from north, clockwise @param beginStationFt station of the begin
    /// @param elements at least one; lengths above 0; radius 0 or above; an arc turns less than 360 degrees
    /// @param equations station equations in order
    /// @error Refused outside the ranges.
    /// @source [ROUTE-SHEET]
    static Result<Alignment> fromElements(PlanPoint begin, double beginAzimuthDeg, double beginStationFt,
                                          const std::vector<AlignmentElement>& elements, const std::vector<StationEquation>& equations);

    /// Builds from begin, points of intersection and end; PC = PI - T, PT = PC + L.
    /// @param curves in order, may be empty; a deflection of 180 degrees is refused
    /// @error Refused: equal points, overlapping curves (the tangent between them below 0), a radius below 0.
    /// @source [ROUTE-SHEET], [CRV-Q10]
    static Result<Alignment> fromIntersections(PlanPoint begin, const std::vector<IntersectionPoint>& curves, PlanPoint end,
                                               double beginStationFt, const std::vector<StationEquation>& equations);

    /// Foot with the smallest |offset| over all tangents and arcs; ties are reported. The sign is right positive.
    /// @error Refused: no foot (beyond an end, or the centre of a curve), NaN.
    /// @source foot and least offset [COMPUTED]; sign [SK-STP107]
    Result<StationOffset> locate(double northFt, double eastFt) const;

    /// Point at a station and an offset to the right. Closes with `locate` to 1e-6.
    /// @error Refused: a station that is not on the alignment; without region also one that exists twice; NaN.
    Result<PlanPoint> at(double stationFt, double offsetRightFt) const;
    Result<PlanPoint> at(Station station, double offsetRightFt) const;

    /// Direction of increasing stations, degrees from north clockwise, 0 to below 360; at a corner the direction ahead.
    Result<double> azimuthDeg(double stationFt) const;
    Result<double> azimuthDeg(Station station) const;

    /// Points along the line for drawing: both ends of every piece and arcs in at most 100,000 chords that stray at most `sagittaFt`.
    /// @param sagittaFt above 0
    std::vector<PlanPoint> polyline(double sagittaFt) const;

    const StationLine& stations() const { return m_stations; }
    double lengthFt() const { return m_stations.lengthFt(); }

private:
    struct Piece {
        PlanPoint begin;
        double azimuthRad;  // at its begin
        double alongFt;     // true distance of its begin
        double lengthFt;
        double curvature;   // 1/R, right positive, 0 for a tangent
    };
    struct Foot {
        double alongFt;
        double offsetRightFt;
        bool atCorner;
    };
    Alignment(std::vector<Piece> pieces, StationLine stations) : m_pieces(std::move(pieces)), m_stations(std::move(stations)) {}
    static PlanPoint pointOn(const Piece& piece, double intoFt, double offsetRightFt);
    static void addFeet(const Piece& piece, PlanPoint p, std::vector<Foot>& feet);
    const Piece& pieceAt(double alongFt) const;

    std::vector<Piece> m_pieces;
    StationLine m_stations;
};

}  // namespace groundcount::method
