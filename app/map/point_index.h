#pragma once

#include "map/map_scene.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace groundcount::map {

/// One symbol to be drawn: a point, or a cluster of several.
struct PlacedSymbol {
    QPointF at;                 ///< screen px of the window asked for
    std::uint32_t count = 1;    ///< points it stands for
    std::uint32_t failures = 0; ///< failures among them; a cluster never hides one
    int point = -1;             ///< index into scene.points when count is 1
};

/// Points of one lift in the order of their Morton code, so that a square of the plane is one contiguous range.
/// Code: each axis of the points' bounding square in 2^16 steps, bits interleaved (east lowest), 32 bits. Built once in O(n log n);
/// the counts and means of a square come from running sums, so that a query costs the squares on screen, not the points.
class PointIndex {
public:
    /// Keeps the points whose lift is `lift` or kEveryLift; `lift` kEveryLift keeps all.
    PointIndex(std::shared_ptr<const MapScene> scene, int lift);

    /// Symbols inside the window. Every point is its own symbol while at most `mostPoints` are visible; beyond that, squares of at least
    /// `cellPx` with more than one point become clusters at the mean place of their points, and squares grow until there are at most
    /// `mostClusters`.
    std::vector<PlacedSymbol> query(const MapWindow& window, double cellPx, std::size_t mostPoints, std::size_t mostClusters) const;

    /// The point nearest to a screen place within `radiusPx`, or -1. Ties go to the later point, which is drawn on top.
    int nearest(const MapWindow& window, QPointF at, double radiusPx) const;

    std::size_t size() const { return m_order.size(); }

private:
    struct Range {
        std::uint32_t x, y;
        std::size_t from, to;
    };
    std::vector<Range> squares(const MapWindow& window, int level) const;
    int levelFor(const MapWindow& window, double cellPx) const;

    std::shared_ptr<const MapScene> m_scene;
    std::vector<std::uint32_t> m_codes;
    std::vector<std::uint32_t> m_order;
    std::vector<std::uint32_t> m_failures; ///< running sums, one longer than the points
    std::vector<MapVertex> m_sums;
    double m_west = 0;
    double m_south = 0;
    double m_side = 1;
};

}  // namespace groundcount::map
