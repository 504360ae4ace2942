#pragma once

#include "gis/test_fields.h"

#include <ogrsf_frmts.h>
#include <string>
#include <vector>

namespace groundcount::gis {

/// Whether the test's grid coordinates are known: finite and not both exactly 0.
bool hasPosition(const book::TestRow& test);

/// The latest start or verdict of the tests as instantText; 1970-01-01T00:00:00.000Z without any.
std::string latestTime(const std::vector<const book::TestRow*>& tests);

/// Whether the closed lists of words go into the file, as field domains.
enum class FieldLists { Written, Plain };

/// Makes the columns. @return false when GDAL refuses; GdalComplaints has the reason.
bool createFields(GDALDataset& dataset, OGRLayer& layer, const std::vector<TestField>& fields, FieldLists lists);

/// Writes title and description of every column into gpkg_data_columns, which GDAL 3.6 has no call for.
/// @return false when GDAL refuses
/// @source OGC 12-128r17 annex F.9 (schema extension)
bool describeFields(GDALDataset& dataset, const std::string& layer, const std::vector<TestField>& fields);

/// One test as a row: every column set or NULL, the point x = east, y = north, or no geometry.
/// @error Refused: a figure or a time that its column cannot hold; test and column are named.
Result<OGRFeatureUniquePtr> featureOf(const book::TestRow& test, const std::vector<TestField>& fields, const ExportOptions& options,
                                      OGRFeatureDefn& definition);

}  // namespace groundcount::gis
