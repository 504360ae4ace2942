#pragma once

#include "map/overlay_job.h"

#include <array>

namespace groundcount::map {

/// One picture that holds every symbol the moving part of the map is made of, so that all its nodes share one texture.
/// Rectangles are in device pixels of the picture; sizes on screen are these divided by the ratio.
class SymbolAtlas {
public:
    SymbolAtlas() = default;
    SymbolAtlas(const MapLook& look, Ground ground, double symbolPx, double ratio);

    const QImage& image() const { return m_image; }
    QRectF state(PointState state) const { return m_states[static_cast<std::size_t>(state)]; }
    QRectF brackets() const { return m_brackets; }
    /// A disc for a count; the second form carries the failure diamond on its shoulder.
    QRectF cluster(std::uint32_t failures) const { return failures == 0 ? m_cluster : m_clusterFail; }
    /// The figure of a cluster: up to 999, then "1.2k" to "9.9k", "12k" to "999k", "1M" (cut off, never rounded up). @return its glyphs
    /// from left to right, four at most
    std::vector<QRectF> figure(std::uint32_t count) const;
    QRectF paper() const { return m_paper; }
    double ratio() const { return m_ratio; }
    QSizeF onScreen(const QRectF& source) const { return source.size() / m_ratio; }

private:
    QImage m_image;
    std::array<QRectF, kPointStateCount> m_states;
    std::array<QRectF, 13> m_glyphs; ///< 0 to 9, k, M, point
    QRectF m_brackets;
    QRectF m_cluster;
    QRectF m_clusterFail;
    QRectF m_paper;
    double m_ratio = 1;
};

}  // namespace groundcount::map
