#pragma once

#include "map/map_scene.h"
#include "view/row_list.h"
#include "view/session.h"

#include <vector>

namespace groundcount::view {

/// Adds to a scene what ground the tests of a lift stand for: the cell of each test, failing ones hatched, lots without a test
/// stippled, and the largest untested patch as a ring.
/// @param origin of the scene, job's grid
/// @return a row for each lot with that lift: passed, failed, untested and the patch, or why there are no figures
std::vector<Row> addCoverage(Session& session, int liftNumber, map::MapVertex origin, map::MapScene& scene);

}  // namespace groundcount::view
