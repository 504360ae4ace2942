#pragma once

#include "map/map_scene.h"
#include "view/session.h"

#include <memory>

namespace groundcount::view {

/// The map's scene out of the rows: alignment with stations, lots with sublots, open failures, untested sublots, tests, owed
/// sites, obstacles and the clearance rings round a test that is being made. Coordinates are those of the job's grid less
/// `sceneOrigin`.
/// @param liftNumber the lift that is looked at; areas of failures and untested ground are of this lift
std::shared_ptr<map::MapScene> mapContent(const Session& session, int liftNumber);

/// Local origin of the scene, in the job's grid: the begin of the alignment, else the first thing with a place.
map::MapVertex sceneOrigin(const Session& session);

}  // namespace groundcount::view
