#pragma once

#include "method/error.h"
#include "method/site/station.h"

#include <vector>

namespace groundcount::method {

/// One place with two numbers: `backFt` counted from before, `aheadFt` from there on. ahead > back leaves a gap (stations
/// between do not exist), ahead < back an overlap (stations between exist twice).
struct StationEquation {
    double backFt = 0;
    double aheadFt = 0;
};

/// gap = ahead - back; negative for an overlap.
/// @source [CRV-HW]
double equationGapFt(const StationEquation& equation);

/// True distance across one equation: (back - from) + (to - ahead).
/// @param fromFt station before the equation, at most `backFt` @param toFt station after it, at least `aheadFt`
/// @error Refused: a station on the wrong side, NaN.
/// @source [COMPUTED]
Result<double> distanceAcrossFt(const StationEquation& equation, double fromFt, double toFt);

/// Where a station can lie: its signed distances from the equation (negative = before), one or two of them, rising.
/// @error Refused: the station lies in the gap, NaN.
/// @source [COMPUTED]
Result<std::vector<double>> distancesFromEquationFt(const StationEquation& equation, double stationFt);

/// The numbering of a whole alignment: begin station and equations in order. Turns a station into the true distance from
/// the begin and back. Immutable.
class StationLine {
public:
    /// @param beginFt station of the begin @param lengthFt true length, above 0 @param equations in order of the alignment
    /// @error Refused: NaN, a length not above 0, an equation whose back station does not lie between the place before it
    ///   (begin or the ahead station of the last one) and the end.
    static Result<StationLine> make(double beginFt, double lengthFt, const std::vector<StationEquation>& equations);

    /// True distance from the begin. A place within 1e-6 of an end counts as the end.
    /// @error Refused: the region or the station is not on the alignment.
    Result<double> alongFt(Station station) const;

    /// Station of a true distance from the begin (0 to length; at an equation the ahead number).
    /// @error Refused: outside 0 to length by more than 1e-6.
    Result<Station> stationAt(double alongFt) const;

    /// Every place of the alignment that has this number, in order; empty if none (a gap, or outside).
    std::vector<Station> placesOf(double stationFt) const;

    /// The one place with this number. @error Refused: none; or more than one, asking for the region.
    Result<Station> only(double stationFt) const;

    double lengthFt() const { return m_lengthFt; }
    double beginFt() const { return m_regions.front().firstFt; }

private:
    struct Region {
        double firstFt;  // number at the begin of the region
        double alongFt;  // true distance of its begin
        double lengthFt;
    };
    StationLine(std::vector<Region> regions, double lengthFt) : m_regions(std::move(regions)), m_lengthFt(lengthFt) {}
    std::vector<Region> m_regions;
    double m_lengthFt = 0;
};

}  // namespace groundcount::method
