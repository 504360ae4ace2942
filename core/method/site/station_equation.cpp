#include "method/site/station_equation.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

// A coordinate of 1e7 carries about 2e-9; a foot within a millionth of the end is the end.
constexpr double kEndToleranceFt = 1e-6;

std::string shown(double stationFt)
{
    return std::isfinite(stationFt) && std::abs(stationFt) < 1e8 ? stationText(stationFt, 100, 3) : std::string("not a number");
}

}  // namespace

double equationGapFt(const StationEquation& equation)
{
    return equation.aheadFt - equation.backFt;
}

Result<double> distanceAcrossFt(const StationEquation& equation, double fromFt, double toFt)
{
    if (!(fromFt <= equation.backFt))
        return refused("The first station must be at most the back station " + shown(equation.backFt) + "; it is " + shown(fromFt) + ".");
    if (!(toFt >= equation.aheadFt))
        return refused("The second station must be at least the ahead station " + shown(equation.aheadFt) + "; it is " + shown(toFt) + ".");
    return (equation.backFt - fromFt) + (toFt - equation.aheadFt);
}

Result<std::vector<double>> distancesFromEquationFt(const StationEquation& equation, double stationFt)
{
    std::vector<double> places;
    if (stationFt <= equation.backFt)
        places.push_back(stationFt - equation.backFt);
    if (stationFt >= equation.aheadFt && !(places.size() == 1 && equation.aheadFt == equation.backFt))
        places.push_back(stationFt - equation.aheadFt);
    if (places.empty())
        return refused("Station " + shown(stationFt) + " does not exist: the equation leaves out what lies between " + shown(equation.backFt)
                       + " and " + shown(equation.aheadFt) + ".");
    return places;
}

Result<StationLine> StationLine::make(double beginFt, double lengthFt, const std::vector<StationEquation>& equations)
{
    if (!std::isfinite(beginFt))
        return refused("The begin station must be a number.");
    if (!(lengthFt > 0) || !std::isfinite(lengthFt))
        return refused("The length of an alignment must be above 0; it is " + std::to_string(lengthFt) + ".");
    std::vector<Region> regions;
    double firstFt = beginFt;
    double along = 0;
    for (const StationEquation& equation : equations) {
        const double length = equation.backFt - firstFt;
        if (!(length >= 0) || !(along + length <= lengthFt) || !std::isfinite(equation.aheadFt))
            return refused("The back station of an equation must lie between " + shown(firstFt) + " and the end at "
                           + shown(firstFt + lengthFt - along) + "; it is " + shown(equation.backFt) + ".");
        regions.push_back({firstFt, along, length});
        along += length;
        firstFt = equation.aheadFt;
    }
    regions.push_back({firstFt, along, lengthFt - along});
    return StationLine(std::move(regions), lengthFt);
}

Result<double> StationLine::alongFt(Station station) const
{
    if (station.region < 0 || static_cast<std::size_t>(station.region) >= m_regions.size())
        return refused("The region of a station must be 0 to " + std::to_string(m_regions.size() - 1) + "; it is " + std::to_string(station.region) + ".");
    const Region& region = m_regions[static_cast<std::size_t>(station.region)];
    const double into = station.feet - region.firstFt;
    if (!(into >= -kEndToleranceFt) || !(into <= region.lengthFt + kEndToleranceFt))
        return refused("The station must lie between " + shown(region.firstFt) + " and " + shown(region.firstFt + region.lengthFt) + "; it is "
                       + shown(station.feet) + ".");
    return region.alongFt + into;
}

Result<Station> StationLine::stationAt(double alongFt) const
{
    if (!(alongFt >= -kEndToleranceFt) || !(alongFt <= m_lengthFt + kEndToleranceFt))
        return refused("The distance from the begin must lie between 0 and " + std::to_string(m_lengthFt) + "; it is " + std::to_string(alongFt) + ".");
    std::size_t index = m_regions.size() - 1;
    while (index > 0 && alongFt < m_regions[index].alongFt)
        --index;
    const Region& region = m_regions[index];
    return Station{region.firstFt + (alongFt - region.alongFt), static_cast<int>(index)};
}

std::vector<Station> StationLine::placesOf(double stationFt) const
{
    std::vector<Station> places;
    double lastAlong = -1;
    for (std::size_t i = 0; i < m_regions.size(); ++i) {
        const auto along = alongFt({stationFt, static_cast<int>(i)});
        // The back and the ahead number of one place are the same place.
        if (along && !(lastAlong >= 0 && std::abs(*along - lastAlong) <= kEndToleranceFt)) {
            places.push_back({stationFt, static_cast<int>(i)});
            lastAlong = *along;
        }
    }
    return places;
}

Result<Station> StationLine::only(double stationFt) const
{
    const std::vector<Station> places = placesOf(stationFt);
    if (places.empty())
        return refused("Station " + shown(stationFt) + " is not on the alignment, which begins at " + shown(beginFt())
                       + "; it lies outside or in the gap of a station equation.");
    if (places.size() > 1)
        return refused("Station " + shown(stationFt) + " exists " + std::to_string(places.size())
                       + " times because of a station equation; say whether it is before or after the equation.");
    return places.front();
}

}  // namespace groundcount::method
