#include "map/map_window.h"

#include <algorithm>
#include <cmath>

namespace groundcount::map {

void MapExtent::include(double e, double n)
{
    if (!std::isfinite(e) || !std::isfinite(n))
        return;
    if (empty) {
        *this = {e, n, e, n, false};
        return;
    }
    west = std::min(west, e);
    east = std::max(east, e);
    south = std::min(south, n);
    north = std::max(north, n);
}

QPointF MapWindow::toScreen(double east, double north) const
{
    return {size.width() / 2 + (east - centreEast) * pxPerUnit, size.height() / 2 - (north - centreNorth) * pxPerUnit};
}

double MapWindow::eastAt(double x) const
{
    return centreEast + (x - size.width() / 2) / pxPerUnit;
}

double MapWindow::northAt(double y) const
{
    return centreNorth - (y - size.height() / 2) / pxPerUnit;
}

void MapWindow::pan(QPointF byPx)
{
    centreEast -= byPx.x() / pxPerUnit;
    centreNorth += byPx.y() / pxPerUnit;
}

void MapWindow::zoom(double factor, QPointF aboutPx, double least, double most)
{
    if (!(factor > 0) || !std::isfinite(factor))
        return;
    const double east = eastAt(aboutPx.x());
    const double north = northAt(aboutPx.y());
    pxPerUnit = std::clamp(pxPerUnit * factor, least, most);
    const QPointF now = toScreen(east, north);
    pan(aboutPx - now);
}

void MapWindow::fit(const MapExtent& box, double marginPx, double least, double most)
{
    if (box.empty)
        return;
    centreEast = (box.west + box.east) / 2;
    centreNorth = (box.south + box.north) / 2;
    const double wide = box.east - box.west;
    const double high = box.north - box.south;
    const double freeX = std::max(1.0, size.width() - 2 * marginPx);
    const double freeY = std::max(1.0, size.height() - 2 * marginPx);
    if (wide <= 0 && high <= 0)
        return;
    const double kx = wide > 0 ? freeX / wide : freeY / high;
    const double ky = high > 0 ? freeY / high : kx;
    pxPerUnit = std::clamp(std::min(kx, ky), least, most);
}

MapWindow MapWindow::widened(double px) const
{
    MapWindow wide = *this;
    wide.size = size + QSizeF(2 * px, 2 * px);
    return wide;
}

QRectF MapWindow::placeOf(const MapWindow& other) const
{
    const QPointF corner = toScreen(other.eastAt(0), other.northAt(0));
    return {corner, other.size * (pxPerUnit / other.pxPerUnit)};
}

}  // namespace groundcount::map
