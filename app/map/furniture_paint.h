#pragma once

#include "map/overlay_job.h"

namespace groundcount::map {

/// A scale bar: a round length that is at most `mostPx` long on screen, in two equal parts.
struct ScaleBar {
    double units = 0; ///< the whole bar in job units: 1, 2 or 5 times a power of ten
    double px = 0;
};
ScaleBar scaleBarFor(double pxPerUnit, double mostPx);

/// A small picture and where its top left corner lies on the item.
struct PlacedImage {
    QImage image;
    QRectF rect;
};

/// The scale bar with its figures: 0, half, whole and the unit, on paper where imagery lies below.
PlacedImage paintScaleBar(const ScaleBar& bar, const QString& unit, const MapLook& look, Ground ground, QPointF bottomRight, double ratio);

/// Grid north, an arrow and its letter.
PlacedImage paintNorthArrow(const MapLook& look, Ground ground, QPointF topLeft, double ratio);

/// The person on the map. East, north in job units; NaN where not known.
struct OwnPlace {
    double east;
    double north;
    double accuracyMetres;  ///< radius of the circle that is drawn; the word beside it is the caller's
    double headingDegrees;  ///< clockwise from grid north
    QString label;          ///< "You ±3 ft"
    bool operator==(const OwnPlace&) const = default;
};

/// Own disc, heading wedge, word and accuracy circle to true scale. Covers only the part that can be seen.
PlacedImage paintOwn(const OwnPlace& own, const MapWindow& window, double metresPerUnit, const MapLook& look, Ground ground, double ratio);

}  // namespace groundcount::map
