#include "method/explain/explain_line.h"

#include "method/site/station.h"

#include <cmath>

namespace groundcount::method {
namespace {

std::string sided(double offsetRight)
{
    return shown(std::fabs(offsetRight), 2) + (offsetRight < 0 ? " Lt" : " Rt");
}

std::string placed(const Station& station, double perStation)
{
    return stationText(station.feet, perStation, 2) + (station.region > 0 ? " (after equation " + std::to_string(station.region) + ")" : "");
}

}  // namespace

std::vector<ExplainStep> explainCurve(const CurveElements& c, const CurveStations& s, double perStation)
{
    ExplainSteps steps(DensityUnit::KgPerM3);
    const std::string r = shown(c.radiusFt, 3), half = shown(c.deflectionDeg / 2, 5) + "\xC2\xB0";
    steps.add("Tangent length T", "R tan(I/2)", r + kTimes + "tan(" + half + ")", shown(c.tangentFt, 3), "ROUTE-SHEET");
    steps.add("Curve length L", "arc: R I in radians; chord definition: 100 I/D", r + ", I " + shown(c.deflectionDeg, 5) + "\xC2\xB0", shown(c.lengthFt, 3), "ROUTE-SHEET, CRV-Q10");
    steps.add("Long chord LC", "2 R sin(I/2)", "2" + std::string(kTimes) + r + kTimes + "sin(" + half + ")", shown(c.longChordFt, 3), "ROUTE-SHEET");
    steps.add("Middle ordinate M", "R (1" + std::string(kMinus) + "cos(I/2))", r + kTimes + "(1" + kMinus + "cos(" + half + "))", shown(c.middleOrdinateFt, 3), "ROUTE-SHEET");
    steps.add("External distance E", "R (1/cos(I/2)" + std::string(kMinus) + "1)", r + kTimes + "(1/cos(" + half + ")" + kMinus + "1)", shown(c.externalFt, 3), "ROUTE-SHEET");
    steps.add("Station of PC", "PI \xE2\x88\x92 T", stationText(s.piFt, perStation, 2) + kMinus + shown(c.tangentFt, 2), stationText(s.pcFt, perStation, 2), "ROUTE-SHEET");
    steps.add("Station of PT", "PC + L, never PI + T", stationText(s.pcFt, perStation, 2) + " + " + shown(c.lengthFt, 2), stationText(s.ptFt, perStation, 2), "ROUTE-SHEET, CRV-Q10");
    return steps.take();
}

std::vector<ExplainStep> explainStationOffset(const Alignment& line, PlanPoint point, const StationOffset& found, double perStation)
{
    ExplainSteps steps(DensityUnit::KgPerM3);
    const std::string at = "N " + shown(point.northFt, 2) + ", E " + shown(point.eastFt, 2);
    steps.add("Station", "foot of the point on every tangent and arc; the least offset counts", at, placed(found.station, perStation), "COMPUTED");
    if (const auto along = line.stations().alongFt(found.station))
        steps.add("Distance along the line", "from the begin, across every station equation", placed(found.station, perStation) + " from " +
                      stationText(line.stations().beginFt(), perStation, 2), shown(*along, 2), "COMPUTED, CRV-HW");
    if (const auto foot = line.at(found.station, 0.0); foot && !found.atCorner) {
        const double north = point.northFt - foot->northFt, east = point.eastFt - foot->eastFt;
        steps.add("Offset", "\xE2\x88\x9A(\xCE\x94N\xC2\xB2 + \xCE\x94" "E\xC2\xB2), right of increasing stations positive",
                  "\xCE\x94N " + shown(north, 3) + ", \xCE\x94" "E " + shown(east, 3), sided(found.offsetRightFt), "SK-STP107");
    } else {
        steps.add("Offset", "to the corner, where no perpendicular meets the line", at, sided(found.offsetRightFt), "COMPUTED");
    }
    for (const auto& tie : found.ties)
        steps.add("Equally near", "another foot with the same offset", at, placed(tie.station, perStation) + ", " + sided(tie.offsetRightFt), "COMPUTED");
    return steps.take();
}

}  // namespace groundcount::method
