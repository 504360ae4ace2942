#include "method/site/alignment.h"

#include "method/site/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace groundcount::method {
namespace {

constexpr double kPi = std::numbers::pi;
// State plane coordinates reach 1e7 ft, where a double steps by 2e-9: a foot this close to a joint is on both pieces.
constexpr double kJointFt = 1e-7;
// The round trip closes to this; feet whose offsets differ by less are a tie.
constexpr double kTieFt = 1e-6;
constexpr double kMostChords = 100'000;  // of one arc, whatever a file's radius is

bool finite(PlanPoint p)
{
    return std::isfinite(p.northFt) && std::isfinite(p.eastFt);
}

}  // namespace

PlanPoint Alignment::pointOn(const Piece& piece, double intoFt, double offsetRightFt)
{
    const double turned = piece.curvature * intoFt;
    const double azimuth = piece.azimuthRad + turned;
    // Chord of an arc: 2 R sin(turn/2) along the mean direction; sin(x)/x keeps it exact for a tangent too.
    const double half = turned / 2;
    const double chord = half == 0 ? intoFt : intoFt * std::sin(half) / half;
    const double mean = piece.azimuthRad + half;
    return {piece.begin.northFt + chord * std::cos(mean) - offsetRightFt * std::sin(azimuth),
            piece.begin.eastFt + chord * std::sin(mean) + offsetRightFt * std::cos(azimuth)};
}

void Alignment::addFeet(const Piece& piece, PlanPoint p, std::vector<Foot>& feet)
{
    const double north = p.northFt - piece.begin.northFt;
    const double east = p.eastFt - piece.begin.eastFt;
    const double ahead = north * std::cos(piece.azimuthRad) + east * std::sin(piece.azimuthRad);
    const double right = -north * std::sin(piece.azimuthRad) + east * std::cos(piece.azimuthRad);
    if (piece.curvature == 0) {
        if (ahead >= -kJointFt && ahead <= piece.lengthFt + kJointFt)
            feet.push_back({piece.alongFt + ahead, right, false});
        return;
    }
    const double radius = 1 / std::abs(piece.curvature);
    const double side = piece.curvature > 0 ? 1 : -1;
    // Seen from the centre with the begin of the arc as zero and the turn as positive angle.
    const double inward = side * right;
    const double distance = std::hypot(radius - inward, ahead);
    if (distance < kTieFt)
        return;  // every place of the arc is as far as any other
    const double angle = std::atan2(ahead, radius - inward);
    for (const double far : {0.0, 1.0}) {
        double into = radius * wrapAzimuthDeg((angle + far * kPi) * 180 / kPi) * kPi / 180;
        if (into > 2 * kPi * radius - kJointFt)
            into -= 2 * kPi * radius;
        if (into > piece.lengthFt + kJointFt)
            continue;
        const double fromCentre = far == 0.0 ? distance : -distance;
        feet.push_back({piece.alongFt + into, side * (radius - fromCentre), false});
    }
}

const Alignment::Piece& Alignment::pieceAt(double alongFt) const
{
    std::size_t index = m_pieces.size() - 1;
    while (index > 0 && alongFt < m_pieces[index].alongFt)
        --index;
    return m_pieces[index];
}

Result<StationOffset> Alignment::locate(double northFt, double eastFt) const
{
    const PlanPoint p{northFt, eastFt};
    if (!finite(p))
        return refused("The coordinates of a point must be numbers.");
    std::vector<Foot> feet;
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        addFeet(m_pieces[i], p, feet);
        if (i == 0)
            continue;
        const Piece& before = m_pieces[i - 1];
        const double arrives = before.azimuthRad + before.curvature * before.lengthFt;
        const double corner = std::remainder(m_pieces[i].azimuthRad - arrives, 2 * kPi);
        if (std::abs(corner) * 180 / kPi < 1e-9)
            continue;
        const double north = northFt - m_pieces[i].begin.northFt;
        const double east = eastFt - m_pieces[i].begin.eastFt;
        // Only the wedge on the outer side of a corner has no perpendicular.
        const bool pastBefore = north * std::cos(arrives) + east * std::sin(arrives) > kJointFt;
        const bool beforeNext = north * std::cos(m_pieces[i].azimuthRad) + east * std::sin(m_pieces[i].azimuthRad) < -kJointFt;
        if (pastBefore && beforeNext)
            feet.push_back({m_pieces[i].alongFt, (corner > 0 ? -1 : 1) * std::hypot(north, east), true});
    }
    if (feet.empty())
        return refused("The point has no place on the alignment: it lies beyond an end or at the centre of a curve.");
    std::stable_sort(feet.begin(), feet.end(), [](const Foot& a, const Foot& b) { return std::abs(a.offsetRightFt) < std::abs(b.offsetRightFt); });
    const auto station = [this](const Foot& foot) {
        const auto s = m_stations.stationAt(foot.alongFt);
        return StationOffset{s ? *s : Station{}, foot.offsetRightFt, foot.atCorner, {}};
    };
    StationOffset best = station(feet.front());
    std::vector<double> seen{feet.front().alongFt};
    for (std::size_t i = 1; i < feet.size() && std::abs(feet[i].offsetRightFt) <= std::abs(feet.front().offsetRightFt) + kTieFt; ++i) {
        // A smooth joint belongs to both pieces: one place, not a tie.
        if (std::any_of(seen.begin(), seen.end(), [&](double along) { return std::abs(along - feet[i].alongFt) <= kTieFt; }))
            continue;
        seen.push_back(feet[i].alongFt);
        best.ties.push_back(station(feet[i]));
    }
    return best;
}

Result<PlanPoint> Alignment::at(Station station, double offsetRightFt) const
{
    const auto along = m_stations.alongFt(station);
    if (!along)
        return tl::unexpected(along.error());
    if (!std::isfinite(offsetRightFt))
        return refused("The offset must be a number.");
    const Piece& piece = pieceAt(*along);
    return pointOn(piece, *along - piece.alongFt, offsetRightFt);
}

Result<PlanPoint> Alignment::at(double stationFt, double offsetRightFt) const
{
    const auto station = m_stations.only(stationFt);
    if (!station)
        return tl::unexpected(station.error());
    return at(*station, offsetRightFt);
}

Result<double> Alignment::azimuthDeg(Station station) const
{
    const auto along = m_stations.alongFt(station);
    if (!along)
        return tl::unexpected(along.error());
    const Piece& piece = pieceAt(*along);
    return wrapAzimuthDeg((piece.azimuthRad + piece.curvature * (*along - piece.alongFt)) * 180 / kPi);
}

Result<double> Alignment::azimuthDeg(double stationFt) const
{
    const auto station = m_stations.only(stationFt);
    if (!station)
        return tl::unexpected(station.error());
    return azimuthDeg(*station);
}

std::vector<PlanPoint> Alignment::polyline(double sagittaFt) const
{
    std::vector<PlanPoint> points{m_pieces.front().begin};
    for (const Piece& piece : m_pieces) {
        int parts = 1;
        if (piece.curvature != 0) {
            const double radius = 1 / std::abs(piece.curvature);
            // sagitta = radius (1 - cos(step/2)) = 2 radius sin^2(step/4), which keeps its digits where the curve is almost straight.
            const double step = 4 * std::asin(std::sqrt(std::min(1.0, sagittaFt / radius / 2)));
            parts = static_cast<int>(std::clamp(std::ceil(piece.lengthFt / radius / step), 1.0, kMostChords));
        }
        for (int i = 1; i <= parts; ++i)
            points.push_back(pointOn(piece, piece.lengthFt * i / parts, 0));
    }
    return points;
}

}  // namespace groundcount::method
