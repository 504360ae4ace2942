#pragma once

#include "method/error.h"

namespace groundcount::gis {

/// Registers the GDAL drivers that the app needs, keeps virtual and network formats out, switches PROJ's network off,
/// and checks that proj.db answers (EPSG:6420 must be found). Safe to call more than once.
/// @error Unavailable when proj.db is missing or a needed driver is not in this GDAL.
Result<void> setUpGdal();

}  // namespace groundcount::gis
