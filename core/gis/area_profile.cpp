#include "gis/area_profile.h"

#include "gis/lot_ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace groundcount::gis {

namespace {

/// Azimuth of the longest side, radians, 0 <= azimuth < pi.
double longestSide(const std::vector<method::PlanPoint>& ring)
{
    double longest = 0;
    double azimuth = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const auto& a = ring[i];
        const auto& b = ring[(i + 1) % ring.size()];
        const double north = b.northFt - a.northFt;
        const double east = b.eastFt - a.eastFt;
        if (const double length = std::hypot(north, east); length > longest * (1 + 1e-9)) {
            longest = length;
            azimuth = std::atan2(east, north);
        }
    }
    azimuth = azimuth < 0 ? azimuth + std::numbers::pi : azimuth;
    return azimuth < std::numbers::pi ? azimuth : 0;
}

}  // namespace

book::LineProfile areaProfile(const book::LotRow& lot, const book::JobRow& job, std::span<const book::LiftRow> lifts, std::span<const book::TestRow> tests)
{
    book::LineProfile profile;
    if (lot.area.empty())
        return profile;
    const auto ground = lotGround(lot, job, {});
    if (!ground || ground->ring.size() < 3)
        return profile;
    const double azimuth = longestSide(ground->ring);
    const auto along = [&](double north, double east) { return north * std::cos(azimuth) + east * std::sin(azimuth); };
    std::vector<double> corners;
    for (const auto& p : ground->ring)
        corners.push_back(along(p.northFt, p.eastFt));
    const auto [low, high] = std::minmax_element(corners.begin(), corners.end());
    profile.endFt = *high - *low;
    profile.unit = job.gridUnit == "m" ? "m" : "ft";
    profile.azimuthDeg = azimuth * 180 / std::numbers::pi;
    profile.lots.push_back({lot.name, 0, profile.endFt, true});
    bool any = false;
    for (const auto& lift : lifts)
        if (lift.lot == lot.id) {
            profile.lowest = any ? std::min(profile.lowest, lift.number) : lift.number;
            profile.highest = any ? std::max(profile.highest, lift.number) : lift.number;
            any = true;
        }
    for (const auto& t : tests)
        if (t.lot == lot.id && t.state != book::TestState::Void && (t.north != 0 || t.east != 0))
            profile.points.push_back({along(t.north, t.east) - *low, t.liftNumber, t.state, t.number});
    return profile;
}

}  // namespace groundcount::gis
