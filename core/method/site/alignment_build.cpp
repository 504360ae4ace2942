#include "method/site/alignment.h"
#include "method/site/curve.h"

#include <cmath>
#include <numbers>
#include <string>

namespace groundcount::method {
namespace {

constexpr double kPi = std::numbers::pi;
// Tangents of two curves that meet in one point may miss by the rounding of plan coordinates to 0.01 ft.
constexpr double kMeetFt = 0.02;

bool finite(PlanPoint p)
{
    return std::isfinite(p.northFt) && std::isfinite(p.eastFt);
}

}  // namespace

Result<Alignment> Alignment::fromElements(PlanPoint begin, double beginAzimuthDeg, double beginStationFt,
                                          const std::vector<AlignmentElement>& elements, const std::vector<StationEquation>& equations)
{
    if (!finite(begin) || !std::isfinite(beginAzimuthDeg))
        return refused("The begin point and azimuth of an alignment must be numbers.");
    if (elements.empty())
        return refused("An alignment must have at least one tangent or arc; it has 0.");
    std::vector<Piece> pieces;
    PlanPoint at = begin;
    double azimuth = beginAzimuthDeg * kPi / 180;
    double along = 0;
    for (std::size_t i = 0; i < elements.size(); ++i) {
        const AlignmentElement& element = elements[i];
        const std::string piece = "Piece " + std::to_string(i + 1) + " of the alignment";
        if (!(element.lengthFt > 0) || !std::isfinite(element.lengthFt))
            return refused(piece + " must be longer than 0; it is " + std::to_string(element.lengthFt) + ".");
        if (!(element.radiusFt >= 0) || !std::isfinite(element.radiusFt))
            return refused(piece + " must have a radius above 0, or 0 for a tangent; it is " + std::to_string(element.radiusFt) + ".");
        if (element.radiusFt > 0 && !(element.lengthFt < 2 * kPi * element.radiusFt))
            return refused(piece + " must turn less than 360 degrees; its length is " + std::to_string(element.lengthFt) + " at a radius of "
                           + std::to_string(element.radiusFt) + ".");
        if (!(std::abs(element.cornerDeg) < 180))
            return refused(piece + " must begin with a corner below 180 degrees; it is " + std::to_string(element.cornerDeg) + ".");
        azimuth += element.cornerDeg * kPi / 180;
        const double curvature = element.radiusFt == 0 ? 0 : (element.turn == Turn::Right ? 1 : -1) / element.radiusFt;
        pieces.push_back({at, azimuth, along, element.lengthFt, curvature});
        at = pointOn(pieces.back(), element.lengthFt, 0);
        azimuth += curvature * element.lengthFt;
        along += element.lengthFt;
    }
    auto stations = StationLine::make(beginStationFt, along, equations);
    if (!stations)
        return tl::unexpected(stations.error());
    return Alignment(std::move(pieces), std::move(*stations));
}

Result<Alignment> Alignment::fromIntersections(PlanPoint begin, const std::vector<IntersectionPoint>& curves, PlanPoint end,
                                               double beginStationFt, const std::vector<StationEquation>& equations)
{
    std::vector<IntersectionPoint> points{{begin, 0}};
    points.insert(points.end(), curves.begin(), curves.end());
    points.push_back({end, 0});
    std::vector<double> azimuth;
    std::vector<double> length;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!finite(points[i].point))
            return refused("The points of an alignment must be numbers; point " + std::to_string(i + 1) + " is not.");
        if (!(points[i].radiusFt >= 0) || !std::isfinite(points[i].radiusFt))
            return refused("The radius at point " + std::to_string(i + 1) + " must be at least 0; it is " + std::to_string(points[i].radiusFt) + ".");
        if (i == 0)
            continue;
        const double north = points[i].point.northFt - points[i - 1].point.northFt;
        const double east = points[i].point.eastFt - points[i - 1].point.eastFt;
        length.push_back(std::hypot(north, east));
        azimuth.push_back(std::atan2(east, north));
        if (!(length.back() > 0))
            return refused("Points " + std::to_string(i) + " and " + std::to_string(i + 1) + " of the alignment must differ.");
    }
    std::vector<AlignmentElement> elements;
    double tangentBefore = 0;
    double corner = 0;
    for (std::size_t i = 0; i < length.size(); ++i) {
        const bool last = i + 1 == length.size();
        const double deflection = last ? 0 : std::remainder(azimuth[i + 1] - azimuth[i], 2 * kPi);
        const double radius = points[i + 1].radiusFt;
        CurveElements curve;
        // Points in a line have no curve to fit, whatever the radius says.
        const bool curved = !last && radius > 0 && std::abs(deflection) > 1e-12;
        if (curved) {
            const auto made = simpleCurve(radius, std::abs(deflection) * 180 / kPi);
            if (!made)
                return tl::unexpected(made.error());
            curve = *made;
        }
        double left = length[i] - tangentBefore - curve.tangentFt;
        if (!(left >= -kMeetFt))
            return refused("The curves before and after the tangent from point " + std::to_string(i + 1) + " overlap: what is left between them must be at least 0; it is "
                           + std::to_string(left) + ".");
        if (left > kMeetFt) {
            elements.push_back({left, 0, Turn::Right, corner});
            corner = 0;
        }
        if (curved) {
            elements.push_back({curve.lengthFt, radius, deflection > 0 ? Turn::Right : Turn::Left, corner});
            corner = 0;
        } else {
            corner += deflection * 180 / kPi;
        }
        tangentBefore = curve.tangentFt;
    }
    return fromElements(begin, azimuth.front() * 180 / kPi, beginStationFt, elements, equations);
}

}  // namespace groundcount::method
