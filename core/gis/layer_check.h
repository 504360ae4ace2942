#pragma once

#include "method/error.h"

#include <cstdint>
#include <string>

namespace groundcount::gis {

struct LayerCount {
    std::string layer;
    std::int64_t rows = 0;
    std::int64_t points = 0;  ///< rows with a point
};

/// Opens a written file again and reads every row: the layer must be there with its rows and points.
/// @param path of a file in any vector format
/// @error Unavailable: the file does not open or holds another number of rows or points (both are named).
Result<void> checkLayer(const std::string& path, const LayerCount& expected);

/// As `checkLayer`; also the file's marks ("GPKG", 10300), SQLite's own quick check and the spatial index.
/// @error as `checkLayer`; Unavailable when one of these is wrong.
/// @source OGC 12-128r17 requirements 2, 6 and 77
Result<void> checkGeoPackage(const std::string& path, const LayerCount& expected);

}  // namespace groundcount::gis
