#pragma once

#include "map/map_scene.h"
#include "view/session.h"

namespace groundcount::view {

/// The tests, the drawn sites that are owed, and the clearances round open tests. Of a long book whose rows are still being read, out of its columns.
/// @param origin the scene's, job's grid
void addPoints(map::MapScene& scene, const Session& session, map::MapVertex origin);

}  // namespace groundcount::view
