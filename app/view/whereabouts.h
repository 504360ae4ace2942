#pragma once

#include "view/session.h"

#include <optional>

namespace groundcount::view {

/// The lot that holds a place, and where the place stands along a line.
struct Whereabouts {
    std::optional<book::LotRow> lot;  ///< with two lots that overlap, the later one by name
    const JobLine* line = nullptr;    ///< of the lot; else the nearest, or the one that was measured along
    std::optional<double> stationFt, offsetRightFt;
};

/// Of a place in the job's grid: lots by their sealed corners, or by station and offset along their own line.
Whereabouts whereaboutsOf(const Session& session, double north, double east);

/// Of a place measured along a line, where its grid place is known too if the line reaches it.
Whereabouts whereaboutsOn(const Session& session, const JobLine& line, double stationFt, double offsetRightFt, std::optional<method::PlanPoint> point);

/// Whether the lot lies between stations; otherwise it has corners.
bool isByStations(const book::LotRow& lot);

/// A drawn site in words: "53+38, 14 Rt", without a line "N 480312, E 1204250".
QString siteWords(const book::SiteRow& site);

}  // namespace groundcount::view
