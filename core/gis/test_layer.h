#pragma once

#include "book/state.h"
#include "gis/layer.h"
#include "method/error.h"

#include <span>
#include <string>

namespace groundcount::gis {

/// Writes the layer `density_test` alone as a GeoPackage 1.3: one point per test in the job's coordinate system, x = east, y = north.
/// A whole book is handed over by `handOver` (gis/hand_over.h).
///
/// Rows stand in the order of their numbers (runs of digits by value, so 2 before 10). Nothing in the file comes from
/// the clock: its dates are those of the latest record, so that the same input gives the same bytes. The file is
/// written out of sight, opened again, its rows and points counted, and only then put in the place of an older one.
/// A test without a position is a row without a geometry.
/// @param path of the file to be, ending in ".gpkg"
/// @param tests each with figures as decimal text in the job's density unit; coordinates in the job's grid unit
/// @error Refused: another ending; the job has no coordinate system, a geographic one, or one in another unit than the
///   job's grid; an unknown density unit; a figure that is not a decimal number or a time that is not UTC (test and
///   column named); an open target; stopped by `keepOn`. Unavailable: disk or GDAL.
/// @source OGC 12-128r17 (GeoPackage 1.3.0)
Result<void> exportTests(const std::string& path, const book::JobRow& job, std::span<const book::TestRow> tests,
                         const ExportOptions& options);

/// Writes the same rows and columns as GeoJSON, points as WGS 84 longitude, latitude with 9 decimals. A coordinate
/// system on NAD83(2011) or the like is taken to WGS 84 as PROJ does without grids, for most of them a null shift.
/// @param path of the file to be, ending in ".geojson" or ".json" @param job as in `exportTests`
/// @error as `exportTests`
/// @source RFC 7946
Result<void> exportTestsGeoJson(const std::string& path, const book::JobRow& job, std::span<const book::TestRow> tests,
                                const ExportOptions& options);

}  // namespace groundcount::gis
