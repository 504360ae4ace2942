#pragma once

#include "book/state.h"
#include "gis/crs.h"
#include "method/error.h"

namespace groundcount::gis {

/// The coordinate system that a job's layers are made in.
/// @param job epsg, else crsWkt; metresPerGridUnit is held against the system's own unit to 1e-7, because the two feet
///   differ by 2e-6
/// @error Refused: none, unknown, not a projected one, or in another unit.
Result<Crs> jobCrs(const book::JobRow& job);

}  // namespace groundcount::gis
