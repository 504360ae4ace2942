#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace groundcount::map {

/// A box in map coordinates that grows by inclusion. Coordinates that are not numbers are left out.
struct MapExtent {
    double west = 0;
    double south = 0;
    double east = 0;
    double north = 0;
    bool empty = true;

    void include(double e, double n);
};

/// The part of the plane that is looked at, north up, and the way between it and the screen.
///   x = width/2 + (east - centreEast) k,   y = height/2 - (north - centreNorth) k,   k = px per job unit
/// Differences are taken in double before anything becomes a float, so that northings of 10^7 keep their hundredths.
struct MapWindow {
    double centreEast = 0;
    double centreNorth = 0;
    double pxPerUnit = 1;
    QSizeF size; ///< logical px

    QPointF toScreen(double east, double north) const;
    double eastAt(double x) const;
    double northAt(double y) const;

    /// Moves so that the ground under the finger follows it by `byPx`.
    void pan(QPointF byPx);
    /// Multiplies the scale within [least, most] and keeps the ground under `aboutPx` where it is.
    void zoom(double factor, QPointF aboutPx, double least, double most);
    /// Shows the box with `marginPx` free on every side; a box without extent is centred at the present scale.
    void fit(const MapExtent& box, double marginPx, double least, double most);
    /// The same centre and scale with `px` more on every side.
    MapWindow widened(double px) const;
    /// Where another window's picture lies on this one's screen.
    QRectF placeOf(const MapWindow& other) const;

    bool operator==(const MapWindow&) const = default;
    /// Whether it has the centre and the scale of another, whatever its size.
    bool isAt(const MapWindow& other) const { return centreEast == other.centreEast && centreNorth == other.centreNorth && pxPerUnit == other.pxPerUnit; }
};

}  // namespace groundcount::map
