#pragma once

#include <QString>
#include <optional>
#include <string>

/// Figures and places as the pages write them: U+2212 as minus, thousands parted by a comma, stations as 53+38.
namespace groundcount::view {

/// 2846 -> "2,846"; places 0 to 3; NaN -> "".
QString figureText(double value, int places);
/// With its sign: "+1.4", "−0.2", "0.0".
QString signedText(double value, int places);
/// Decimal text of a record with U+2212 as minus.
QString shownDecimal(const std::string& decimal);
/// Offset right of the line, feet: 14 -> "14 Rt", -26 -> "26 Lt", 0 -> "0".
QString offsetText(double rightFt);
/// "53+38, 14 Rt"; without a station "".
QString stationOffsetText(const std::optional<double>& stationFt, const std::optional<double>& offsetRightFt);
/// "N", "NE", ... of a bearing clockwise from grid north, degrees.
QString compassWord(double bearingDeg);
/// "Mon, Jun 1" style parts of local time of a UTC record text, by a strftime-like Qt format.
QString localText(const std::string& utc, int offsetMinutes, const QString& format);

}  // namespace groundcount::view
