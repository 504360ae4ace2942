#pragma once

#include "map/map_scene.h"

#include <cmath>
#include <memory>
#include <numbers>

/// A made-up stretch of embankment in feet: a curve of 2,400 ft radius, lot N-4 with one open failure. Every name and number is invented.
namespace groundcount::map::sample {

inline constexpr double kRadius = 2400;
inline constexpr double kHalfLot = 36;
inline constexpr double kHalfToe = 78;

/// Plane place of a station (ft from 50+00) and an offset, right positive; and the bearing there.
inline double bearingAt(double station)
{
    return (12.0 + (station / kRadius) * 180 / std::numbers::pi);
}
inline MapVertex place(double station, double offset)
{
    const double b0 = 12.0 * std::numbers::pi / 180;
    const double b = bearingAt(station) * std::numbers::pi / 180;
    // Curve to the right: the centre lies 90 degrees right of the tangent.
    const double ce = kRadius * std::cos(b0);
    const double cn = -kRadius * std::sin(b0);
    const double r = kRadius - offset;
    return {ce - r * std::cos(b), cn + r * std::sin(b)};
}
inline MapRun along(double from, double to, double offset)
{
    MapRun run;
    const int n = std::max(2, static_cast<int>(std::abs(to - from) / 10) + 1);
    for (int i = 0; i <= n; ++i)
        run.push_back(place(from + (to - from) * i / n, offset));
    return run;
}
inline MapArea lot(AreaStyle style, double from, double to, const QString& name)
{
    MapRun ring = along(from, to, -kHalfLot);
    const MapRun back = along(to, from, kHalfLot);
    ring.insert(ring.end(), back.begin(), back.end());
    return {style, {ring}, name, kEveryLift};
}
inline void addPoint(MapScene& scene, double station, double offset, PointState state, const char* label)
{
    const MapVertex v = place(station, offset);
    scene.add({v.east, v.north, state, 7}, label, std::string("id-") + label);
}

inline std::shared_ptr<MapScene> scene()
{
    auto s = std::make_shared<MapScene>();
    s->metresPerUnit = 0.3048;
    s->unitName = QStringLiteral("ft");
    s->areas.push_back(lot(AreaStyle::Lot, -200, 0, QStringLiteral("N-3")));
    s->areas.push_back(lot(AreaStyle::Lot, 600, 760, QStringLiteral("N-5")));
    MapArea untested = lot(AreaStyle::Untested, 318, 600, {});
    s->areas.push_back(untested);
    s->areas.push_back(lot(AreaStyle::ChosenLot, 0, 600, QStringLiteral("N-4")));
    s->areas.push_back(lot(AreaStyle::OpenFailure, 168, 318, {}));
    s->areas.push_back({AreaStyle::Sublot, {{place(450, -kHalfLot), place(450, kHalfLot)}}, {}, kEveryLift});
    s->lines.push_back({LineStyle::Alignment, along(-200, 760, 0)});
    s->lines.push_back({LineStyle::Limit, along(-200, 760, -kHalfToe)});
    s->lines.push_back({LineStyle::Limit, along(-200, 760, kHalfToe)});
    s->slopes.push_back({along(-200, 760, -kHalfLot), along(-200, 760, -kHalfToe + 3)});
    s->slopes.push_back({along(-200, 760, kHalfLot), along(-200, 760, kHalfToe - 3)});
    for (int ft = -150; ft <= 750; ft += 50) {
        const QString label = ft % 100 == 0 ? QStringLiteral("%1+00").arg(50 + ft / 100) : QString();
        s->stations.push_back({place(ft, 0), bearingAt(ft), label, kHalfToe});
    }
    addPoint(*s, 64, 18, PointState::Pass, "24");
    addPoint(*s, 212, -26, PointState::Waiting, "25");
    addPoint(*s, 267, 8, PointState::Fail, "26");
    addPoint(*s, 521, -22, PointState::Owed, "Site 4");
    addPoint(*s, 110, -14, PointState::InformationOnly, "D-2");
    addPoint(*s, 30, -20, PointState::Void, "19");
    s->obstacles.push_back({ObstacleKind::Gauge, {place(338, 14)}, {}, QStringLiteral("gauge")});
    s->obstacles.push_back({ObstacleKind::Structure,
                            {place(322, 18), place(322, 26), place(290, 26), place(290, 18)},
                            {},
                            QStringLiteral("inlet")});
    s->rings.push_back({place(338, 14), 30 * 0.3048, QStringLiteral("gauges 30 ft")});
    s->rings.push_back({place(338, 14), 10 * 0.3048, QStringLiteral("vehicles 10 ft")});
    return s;
}

/// `count` tests strewn along the road, every eighth a failure; deterministic.
inline std::shared_ptr<MapScene> crowd(int count)
{
    auto s = scene();
    s->points.clear();
    s->names = {};
    std::uint32_t state = 20260609;
    const auto next = [&state] {
        state = state * 1664525U + 1013904223U;
        return (state >> 8) / 16777216.0;
    };
    for (int i = 0; i < count; ++i) {
        const MapVertex v = place(-200 + 960 * next(), (2 * next() - 1) * kHalfLot);
        s->add({v.east, v.north, i % 8 == 0 ? PointState::Fail : PointState::Pass, i % 12}, std::to_string(i), "c" + std::to_string(i));
    }
    return s;
}

}  // namespace groundcount::map::sample
