#pragma once

#include "gis/crs.h"
#include "gis/layer.h"
#include "gis/layer_check.h"

#include <string>

namespace groundcount::gis {

/// Formats that hold one layer and are written through GDAL.
enum class PlainFormat { GeoJson, Csv, Shapefile, Kml };

struct PlainWritten {
    LayerCount count;
    std::size_t cutTexts = 0;  ///< texts that the format's 254 bytes cut short
};

/// Writes one layer. Points of GeoJSON and KML are WGS 84 longitude and latitude, taken from the job's system as PROJ does
/// without grids; Shapefile and CSV keep the job's system, CSV a point in columns X and Y and other shapes as WKT.
/// Times are text, as in a GeoPackage. A Shapefile has column names of at most 10 characters (`shapefileNames`) and texts of at most 254 bytes.
/// @param path of the file to be; a Shapefile's parts lie beside it @param crs of the rows
/// @error Refused: a value that its column cannot hold, stopped by `options.keepOn`. Unavailable: disk or GDAL.
/// @source RFC 7946, RFC 4180
Result<PlainWritten> writePlainLayer(const std::string& path, PlainFormat format, const Layer& layer, const Crs& crs, const ExportOptions& options);

/// The columns' names in a Shapefile: the first 10 characters; where two would be alike the later one ends in a digit
/// from 2 on. @param fields at most 255, the limit of the format
std::vector<std::string> shapefileNames(const std::vector<LayerField>& fields);

}  // namespace groundcount::gis
