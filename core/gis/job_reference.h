#pragma once

#include "book/state.h"
#include "method/error.h"

#include <ogr_spatialref.h>

namespace groundcount::gis {

/// The coordinate system of a job as layers carry it: x = east, y = north whatever the system's own order of axes.
/// @param job epsg, else crsWkt; metresPerGridUnit is held against the system's own unit to 1e-7, because the two feet
///   differ by 2e-6
/// @error Refused: none, unknown to PROJ, not a projected one, or in another unit.
Result<OGRSpatialReference> jobReference(const book::JobRow& job);

}  // namespace groundcount::gis
