#pragma once

#include "method/error.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace groundcount::gis {

/// How many rows a layer has and how many of them have a shape.
struct LayerCount {
    std::string layer;  ///< for a check "" = the only one of the file
    std::int64_t rows = 0;
    std::int64_t shapes = 0;
};

/// Asked again and again while a file is read; false stops it. May be empty.
using KeepReading = std::function<bool()>;

/// Opens a written file again and reads every row: each layer must be there with its rows and shapes.
/// @param path of a file in any vector format
/// @error Unavailable: the file does not open or holds another number of rows or shapes (both are named). Refused: stopped.
Result<void> checkLayers(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn = {});

/// As `checkLayers`; also the file's marks ("GPKG", 10300), SQLite's own quick check and the spatial indexes.
/// @error as `checkLayers`; Unavailable when one of these is wrong.
/// @source OGC 12-128r17 requirements 2, 6 and 77
Result<void> checkGeoPackage(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn = {});

/// The sentences of both: what did not read back, and that it was stopped.
inline tl::unexpected<Error> notReadBack(const std::string& what)
{
    return unavailable("The written file did not read back: " + what);
}

inline tl::unexpected<Error> stoppedWhileReading()
{
    return refused("The export was stopped while the written file was read again.");
}

}  // namespace groundcount::gis
