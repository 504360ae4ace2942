#pragma once

#include "method/error.h"

#include <QJsonObject>
#include <QString>
#include <QStringList>

#include <string_view>

namespace groundcount::view {

/// Reads calibration curves from CSV (RFC 4180) into the texts of the gauge's sheet. The head names the columns, in any order:
/// depth_in, mode, a, b_per_lb_ft3 or b_per_kg_m3, c, range_low_*, range_high_*; and, in a row of its own or the same,
/// e and slope_per_lb_ft3 or slope_per_kg_m3 for the water curve. A figure is kept as it stands.
/// @param densityKey "lb_ft3" or "kg_m3": the unit that the job works in
/// @return keys as GaugePapers keeps them: "n", "c1.depth", "c1.a", … , "w.e", "w.slope"
/// @error Refused, naming line and column, for a missing column, a unit of another kind, or a figure that is none
Result<QJsonObject> calibrationFromCsv(std::string_view text, const std::string& densityKey);

/// CSV files a person may mean: in the documents, downloads and the book's own folder, newest first.
QStringList csvFilesAround(const QString& bookFolder);

}  // namespace groundcount::view
