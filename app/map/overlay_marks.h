#pragma once

#include "map/overlay_job.h"

class QPainter;

namespace groundcount::map {

/// Stations, obstacles, rings and every word of the overlay, in the order of their weight: what is chosen first, stations last.
void paintMarks(QPainter& painter, const OverlayJob& job);

}  // namespace groundcount::map
