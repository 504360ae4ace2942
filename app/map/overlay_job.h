#pragma once

#include "map/map_scene.h"
#include "map/point_index.h"

#include <QImage>

namespace groundcount::map {

/// Colours, weights and strokes of the theme as the map needs them.
struct MapLook {
    SymbolColours symbols;
    QColor ink2 = QColor(0x47, 0x46, 0x3f);
    QColor hair = QColor(0xc9, 0xc2, 0xb3);
    double strokeScale = 1.0; ///< 1 by day and dusk, 1.5 in the sun
    int bodyWeight = 500;
    int strongWeight = 700;
    int decidingWeight = 900;
    QString fontFamily; ///< empty: the application's font
    bool operator==(const MapLook&) const = default;
};

/// Everything one picture of the vector layer depends on; painted without touching anything else.
struct OverlayJob {
    std::shared_ptr<const MapScene> scene;
    MapWindow window;       ///< with the margin that panning uses up
    QRectF inner;           ///< the part of `window` (px) that is on screen: names stand where they can be seen
    double devicePixelRatio = 1;
    int lift = kEveryLift;
    int chosenPoint = -1;   ///< its label comes first
    MapLook look;
    double symbolPx = 26;
    std::vector<PlacedSymbol> symbols; ///< what stands on top, so that words keep clear
    std::vector<QRectF> keepClear;     ///< controls and furniture over the map, px of `window`
};

/// The logical size of the picture times the pixel ratio, opaque (paper or imagery), RGB32.
/// Runs on any thread.
QImage paintOverlay(const OverlayJob& job);

/// The font of the map at a size and weight.
QFont mapFont(const MapLook& look, double px, int weight);

/// True if a thing of this lift is shown under this filter.
inline bool onLift(int lift, int filter)
{
    return filter == kEveryLift || lift == kEveryLift || lift == filter;
}

}  // namespace groundcount::map
