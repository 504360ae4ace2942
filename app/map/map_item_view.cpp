#include "map/map_item.h"

#include <algorithm>
#include <cmath>

namespace groundcount::map {
namespace {

constexpr double kFitMarginPx = 56;
constexpr double kMostPxPerMetre = 400; // a hand's breadth fills a phone; finer is beyond any receiver

}  // namespace

double MapItem::metresPerUnit() const
{
    return m_scene->metresPerUnit > 0 ? m_scene->metresPerUnit : 1.0;
}

double MapItem::pixelsPerMetre() const
{
    return m_view.pxPerUnit / metresPerUnit();
}

double MapItem::mostScale() const
{
    return kMostPxPerMetre * metresPerUnit();
}

double MapItem::leastScale() const
{
    // The whole job at a quarter of the screen: further out there is nothing to see.
    const double span = m_extent.empty ? 0 : std::max(m_extent.east - m_extent.west, m_extent.north - m_extent.south);
    const double side = std::max(1.0, std::min(width(), height()));
    return span > 0 ? std::min(side / 4 / span, mostScale()) : 1e-4 * metresPerUnit();
}

void MapItem::setCentreEast(double east)
{
    if (!std::isfinite(east) || east == m_view.centreEast)
        return;
    m_view.centreEast = east;
    m_fitWanted = false;
    viewMoved();
}

void MapItem::setCentreNorth(double north)
{
    if (!std::isfinite(north) || north == m_view.centreNorth)
        return;
    m_view.centreNorth = north;
    m_fitWanted = false;
    viewMoved();
}

void MapItem::setPixelsPerMetre(double px)
{
    if (!(px > 0) || !std::isfinite(px) || px == pixelsPerMetre())
        return;
    m_view.pxPerUnit = std::clamp(px, 1e-6, kMostPxPerMetre) * metresPerUnit();
    m_fitWanted = false;
    viewMoved();
}

void MapItem::fitAll()
{
    if (m_extent.empty || width() <= 0 || height() <= 0)
        return;
    m_fitWanted = false;
    MapWindow free = m_view;
    free.size = QSizeF(std::max(width() - m_fitInset.x(), width() / 2), std::max(height() - m_fitInset.y(), height() / 2));
    free.fit(m_extent, std::min({kFitMarginPx, free.size.width() / 6, free.size.height() / 6}), 1e-9, mostScale());
    m_view = free;
    m_view.size = size();
    m_view.centreEast += (width() - free.size.width()) / 2 / free.pxPerUnit;
    m_view.centreNorth -= (height() - free.size.height()) / 2 / free.pxPerUnit;
    m_fitted = m_view;
    viewMoved();
}

void MapItem::fitAgain()
{
    if (m_fitWanted || m_view.isAt(m_fitted))
        fitAll();
}

void MapItem::setFitInset(QPointF px)
{
    if (m_fitInset == px)
        return;
    m_fitInset = px;
    fitAgain();
    emit fitInsetChanged();
}

bool MapItem::centreOnOwn()
{
    if (!std::isfinite(m_ownEast) || !std::isfinite(m_ownNorth))
        return false;
    m_view.centreEast = m_ownEast;
    m_view.centreNorth = m_ownNorth;
    m_fitWanted = false;
    viewMoved();
    return true;
}

bool MapItem::centreOn(const QString& id)
{
    const int index = indexOf(id);
    if (index < 0)
        return false;
    m_view.centreEast = m_scene->points[static_cast<std::size_t>(index)].east;
    m_view.centreNorth = m_scene->points[static_cast<std::size_t>(index)].north;
    m_fitWanted = false;
    viewMoved();
    return true;
}

void MapItem::zoomBy(double factor)
{
    m_view.zoom(factor, QPointF(width() / 2, height() / 2), leastScale(), mostScale());
    m_fitWanted = false;
    viewMoved();
}

}  // namespace groundcount::map
