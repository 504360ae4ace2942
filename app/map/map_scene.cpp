#include "map/map_scene.h"

#include <utility>

namespace groundcount::map {

void MapScene::add(const MapPoint& point, std::string_view label, std::string_view id)
{
    points.push_back(point);
    names.add(label, id);
}

MapExtent MapScene::extent() const
{
    MapExtent box;
    const auto take = [&box](const MapRun& run) {
        for (const MapVertex& vertex : run)
            box.include(vertex.east, vertex.north);
    };
    for (const MapPoint& point : points)
        box.include(point.east, point.north);
    for (const MapArea& area : areas) {
        for (const MapRun& ring : area.rings)
            take(ring);
    }
    for (const MapLine& line : lines)
        take(line.run);
    for (const MapObstacle& obstacle : obstacles)
        take(obstacle.outline);
    for (const MapRing& ring : rings) {
        const double radius = ring.radiusMetres / metresPerUnit;
        box.include(ring.at.east - radius, ring.at.north - radius);
        box.include(ring.at.east + radius, ring.at.north + radius);
    }
    return box;
}

void MapSource::setScene(std::shared_ptr<const MapScene> scene)
{
    if (m_scene == scene)
        return;
    m_scene = std::move(scene);
    emit changed();
}

}  // namespace groundcount::map
