#pragma once

#include "book/store.h"
#include "gis/field_map.h"
#include "gis/layer.h"
#include "gis/layer_check.h"
#include "method/error.h"

#include <string>
#include <vector>

namespace groundcount::gis {

enum class HandOverFormat { GeoPackage, GeoJson, Csv, Shapefile, Kml };

/// "gpkg", "geojson", "csv", "shp" or "kml". @error Refused: another word.
Result<HandOverFormat> handOverFormat(const std::string& word);

struct HandOverAsk {
    std::string path;
    HandOverFormat format = HandOverFormat::GeoPackage;
    std::vector<std::string> layers;  ///< by their own names; empty = all, for GeoJSON, CSV and KML files density_test
    FieldMap map;
    ExportOptions options;
};

struct HandedOver {
    std::vector<LayerCount> layers;
    std::size_t photos = 0;    ///< in a GeoPackage with a layer that they belong to
    std::size_t cutTexts = 0;  ///< texts that a Shapefile cut at 254 bytes
};

/// Hands a book's layers (layersOf) over in an open format, docs/geopackage-layers.md.
///
/// GeoPackage: one file with all layers, titles, closed lists, styles, photos and provenance. GeoJSON, CSV and KML hold one
/// layer a file; Shapefile, and the three when the path is no file of theirs, give a new folder with one file a layer. Equal
/// books give equal bytes (all is read as of one moment), except in KML whose writer is not ours to order. Everything is written out of sight, read again
/// and only then put in place; what stood there before stays otherwise.
/// @param ask.path ends in .gpkg, .geojson, .json, .csv or .kml as the format asks, else it is a folder that does not exist yet
/// @error Refused: an ending of another format, a folder that exists, a layer or column that there is not, a damaged book,
///   a job without a projected coordinate system in its grid's unit, a figure that its column cannot hold, stopped by `keepOn`.
///   Unavailable: disk, GDAL or the book.
/// @source OGC 12-128r17, OGC 18-000, RFC 7946, RFC 4180
Result<HandedOver> handOver(const book::Store& store, const HandOverAsk& ask);

}  // namespace groundcount::gis
