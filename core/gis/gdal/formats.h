#pragma once

#include "gis/file_formats.h"

/// The functions of the table, by GDAL. Private to core/gis/gdal.
namespace groundcount::gis::gdal {

Result<SiteFile> readSite(const std::string& path, const std::string& driver, const std::string& format, const SiteLimits& limits);
Result<BackgroundFacts> makeBackground(const std::string& path, const std::string& targetWkt, const std::string& outPath);
Result<std::unique_ptr<BackgroundPixels>> openBackground(const std::string& path);
Result<PlainWritten> writePlain(const std::string& path, PlainFormat format, const Layer& layer, const Crs& crs, const ExportOptions& options);
Result<void> checkLayers(const std::string& path, const std::vector<LayerCount>& expected, bool indexed, const KeepReading& keepOn);

}  // namespace groundcount::gis::gdal
