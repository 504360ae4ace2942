#pragma once

#include "gis/crs.h"
#include "gis/geopackage_store.h"
#include "gis/layer.h"

#include <string>

namespace groundcount::gis {

/// Coordinate system of a file's layers as a GeoPackage names it: the EPSG code, else 100000.
int srsIdOf(const Crs& crs);

/// Tables of the standard and of the extensions schema, CRS WKT, metadata and R-tree, empty but for the coordinate systems.
/// @source OGC 12-128r17 annexes C, F.3, F.8, F.9 and F.10
Result<void> makeContainer(GeoPackageStore& store, const Crs& crs);

/// The table of a layer with its rows in the standard's tables, its columns' titles, descriptions and constraints. No spatial index yet.
/// @param lastChange as instantText
Result<void> makeLayerTable(GeoPackageStore& store, const Layer& layer, int srsId, const std::string& lastChange);

/// Registers the R-tree `rtree_NAME_geom` and its triggers; its rows are there already. @source OGC 12-128r17 annex F.3
Result<void> makeIndexTriggers(GeoPackageStore& store, const std::string& layer);

/// A table without geometry, as `attributes`. @param columns SQL after the name
Result<void> makeAttributeTable(GeoPackageStore& store, const std::string& name, const std::string& what, const std::string& columns,
                                const std::string& lastChange);

}  // namespace groundcount::gis
