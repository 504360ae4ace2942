#pragma once

#include "gis/background.h"
#include "gis/layer_check.h"
#include "gis/plain_layer.h"
#include "gis/site_file.h"

#include <memory>
#include <string>
#include <vector>

/// Everything that core/gis asks GDAL for. Private to core/gis. GDAL brings a hundred libraries with it, two thirds of the time that an empty
/// window takes to start: so a program may leave them alone until a file of one of its formats is read or written (docs/decisions/0011).
namespace groundcount::gis {

struct FileFormats {
    /// One site file, by the driver of that name alone. @param format for sentences
    Result<SiteFile> (*readSite)(const std::string& path, const std::string& driver, const std::string& format, const SiteLimits& limits);
    Result<BackgroundFacts> (*makeBackground)(const std::string& path, const std::string& targetWkt, const std::string& outPath);
    Result<std::unique_ptr<BackgroundPixels>> (*openBackground)(const std::string& path);
    Result<PlainWritten> (*writePlain)(const std::string& path, PlainFormat format, const Layer& layer, const Crs& crs, const ExportOptions& options);
    Result<void> (*checkLayers)(const std::string& path, const std::vector<LayerCount>& expected, bool indexed, const KeepReading& keepOn);
};

/// The table of this program: linked in (core/gis/gdal), or loaded at the first call (core/gis/late). From any thread.
/// @error Unavailable: the library cannot be loaded, or belongs to another version.
Result<const FileFormats*> fileFormats();

/// The table of core/gis/gdal.
const FileFormats& gdalFormats();

}  // namespace groundcount::gis
