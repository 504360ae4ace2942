#pragma once

#include "method/explain/explain_steps.h"
#include "method/site/alignment.h"
#include "method/site/curve.h"

/// The arithmetic of alignments and curves as text, lengths in the job's grid unit. Each takes what the function took and gave.
namespace groundcount::method {

/// simpleCurve() and stationsFromPi(). @param perStation length of a station, 100 (ft) or 1000 (m)
/// @source [ROUTE-SHEET], [CRV-Q10]
std::vector<ExplainStep> explainCurve(const CurveElements& curve, const CurveStations& stations, double perStation);
/// Alignment::locate(): the foot, its station with the equation's region, the offset and its side, ties.
/// @source [COMPUTED] for the least offset, [SK-STP107] for the side
std::vector<ExplainStep> explainStationOffset(const Alignment& line, PlanPoint point, const StationOffset& found, double perStation);

}  // namespace groundcount::method
