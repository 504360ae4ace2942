#include "map/point_index.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace groundcount::map {
namespace {

constexpr int kBits = 16;
constexpr double kSteps = 65536.0;

std::uint32_t spread(std::uint32_t v)
{
    v = (v | (v << 8)) & 0x00ff00ffU;
    v = (v | (v << 4)) & 0x0f0f0f0fU;
    v = (v | (v << 2)) & 0x33333333U;
    return (v | (v << 1)) & 0x55555555U;
}

std::uint32_t step(double fraction)
{
    return static_cast<std::uint32_t>(std::clamp(std::floor(fraction * kSteps), 0.0, kSteps - 1));
}

}  // namespace

PointIndex::PointIndex(std::shared_ptr<const MapScene> scene, int lift) : m_scene(std::move(scene))
{
    const auto& points = m_scene->points;
    MapExtent box;
    std::vector<std::uint32_t> kept;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const MapPoint& p = points[i];
        if (!std::isfinite(p.east) || !std::isfinite(p.north))
            continue;
        if (lift != kEveryLift && p.lift != kEveryLift && p.lift != lift)
            continue;
        kept.push_back(static_cast<std::uint32_t>(i));
        box.include(p.east, p.north);
    }
    m_west = box.west;
    m_south = box.south;
    m_side = std::max({box.east - box.west, box.north - box.south, 1e-9}) * (1 + 1e-9);

    std::vector<std::pair<std::uint32_t, std::uint32_t>> keyed;
    keyed.reserve(kept.size());
    for (const std::uint32_t i : kept) {
        const std::uint32_t code =
            spread(step((points[i].east - m_west) / m_side)) | (spread(step((points[i].north - m_south) / m_side)) << 1);
        keyed.emplace_back(code, i);
    }
    std::sort(keyed.begin(), keyed.end());
    m_codes.reserve(keyed.size());
    m_order.reserve(keyed.size());
    m_failures.assign(1, 0);
    m_sums.assign(1, {});
    for (const auto& [code, i] : keyed) {
        m_codes.push_back(code);
        m_order.push_back(i);
        m_failures.push_back(m_failures.back() + (points[i].state == PointState::Fail ? 1 : 0));
        m_sums.push_back({m_sums.back().east + points[i].east - m_west, m_sums.back().north + points[i].north - m_south});
    }
}

int PointIndex::levelFor(const MapWindow& window, double cellPx) const
{
    const double squaresAcross = m_side * window.pxPerUnit / cellPx;
    return std::clamp(static_cast<int>(std::floor(std::log2(std::max(1.0, squaresAcross)))), 0, kBits);
}

std::vector<PointIndex::Range> PointIndex::squares(const MapWindow& window, int level) const
{
    std::vector<Range> ranges;
    const double n = std::ldexp(1.0, level);
    const auto cell = [n](double fraction) { return std::clamp(std::floor(fraction * n), -1.0, n); };
    const double west = cell((window.eastAt(0) - m_west) / m_side);
    const double east = cell((window.eastAt(window.size.width()) - m_west) / m_side);
    const double south = cell((window.northAt(window.size.height()) - m_south) / m_side);
    const double north = cell((window.northAt(0) - m_south) / m_side);
    const int shift = 2 * (kBits - level);
    for (double y = std::max(0.0, south); y <= std::min(n - 1, north); ++y) {
        for (double x = std::max(0.0, west); x <= std::min(n - 1, east); ++x) {
            const auto cx = static_cast<std::uint32_t>(x);
            const auto cy = static_cast<std::uint32_t>(y);
            const std::uint64_t first = static_cast<std::uint64_t>(spread(cx) | (spread(cy) << 1)) << shift;
            const std::uint64_t last = first + ((std::uint64_t{1} << shift) - 1);
            const auto from = std::lower_bound(m_codes.begin(), m_codes.end(), static_cast<std::uint32_t>(first));
            const auto to = std::upper_bound(from, m_codes.end(), static_cast<std::uint32_t>(last));
            if (from != to) {
                ranges.push_back({cx, cy, static_cast<std::size_t>(from - m_codes.begin()),
                                  static_cast<std::size_t>(to - m_codes.begin())});
            }
        }
    }
    return ranges;
}

std::vector<PlacedSymbol> PointIndex::query(const MapWindow& window, double cellPx, std::size_t mostPoints,
                                            std::size_t mostClusters) const
{
    std::vector<PlacedSymbol> placed;
    if (m_order.empty() || window.size.isEmpty())
        return placed;
    const auto& points = m_scene->points;
    const QRectF screen(QPointF(0, 0), window.size);
    const auto one = [&](std::size_t k) {
        const MapPoint& p = points[m_order[k]];
        const QPointF at = window.toScreen(p.east, p.north);
        if (screen.contains(at))
            placed.push_back({at, 1, p.state == PointState::Fail ? 1U : 0U, static_cast<int>(m_order[k])});
    };

    std::vector<Range> ranges = squares(window, levelFor(window, cellPx));
    std::size_t touched = 0;
    for (const Range& range : ranges)
        touched += range.to - range.from;
    // Squares overlap the edge of the screen, so up to four times the cap is counted one by one before clustering is decided.
    if (touched <= 4 * mostPoints) {
        for (const Range& range : ranges) {
            for (std::size_t k = range.from; k < range.to; ++k)
                one(k);
        }
        if (placed.size() <= mostPoints) {
            // Drawn in the order of the scene: its maker decides what lies on top.
            std::sort(placed.begin(), placed.end(), [](const PlacedSymbol& a, const PlacedSymbol& b) { return a.point < b.point; });
            return placed;
        }
        placed.clear();
    }
    for (double px = cellPx; ranges.size() > mostClusters; px *= 2)
        ranges = squares(window, levelFor(window, px * 2));
    for (const Range& range : ranges) {
        const auto count = static_cast<std::uint32_t>(range.to - range.from);
        if (count == 1) {
            one(range.from);
            continue;
        }
        const double east = m_west + (m_sums[range.to].east - m_sums[range.from].east) / count;
        const double north = m_south + (m_sums[range.to].north - m_sums[range.from].north) / count;
        placed.push_back({window.toScreen(east, north), count, m_failures[range.to] - m_failures[range.from], -1});
    }
    return placed;
}

int PointIndex::nearest(const MapWindow& window, QPointF at, double radiusPx) const
{
    MapWindow around = window;
    around.centreEast = window.eastAt(at.x());
    around.centreNorth = window.northAt(at.y());
    around.size = QSizeF(2 * radiusPx, 2 * radiusPx);
    int best = -1;
    double bestSquare = radiusPx * radiusPx;
    for (const Range& range : squares(around, levelFor(around, radiusPx))) {
        for (std::size_t k = range.from; k < range.to; ++k) {
            const MapPoint& p = m_scene->points[m_order[k]];
            const QPointF d = window.toScreen(p.east, p.north) - at;
            const double square = d.x() * d.x() + d.y() * d.y();
            const int index = static_cast<int>(m_order[k]);
            if (square < bestSquare || (square == bestSquare && index > best)) {
                best = index;
                bestSquare = square;
            }
        }
    }
    return best;
}

}  // namespace groundcount::map
