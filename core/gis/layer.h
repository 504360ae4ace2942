#pragma once

#include "gis/instant.h"
#include "method/accept/draw.h"
#include "method/error.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A layer as plain data, the same for every format that it is handed over in.
namespace groundcount::gis {

enum class FieldForm { Text, Real, Whole, Instant };

/// The words that a text column keeps to; without words it is free.
struct ClosedList {
    std::string name;  ///< unique in a file, lower case
    std::vector<std::string> words;
};

/// Both ends belong to it.
struct FieldRange {
    double low = 0, high = 0;
};

struct LayerField {
    std::string name;   ///< lower case, with the unit at its end where there is one
    std::string title;  ///< for a person, without unit
    std::string what;   ///< one sentence
    std::string unit;   ///< "" for a word or a plain number
    FieldForm form = FieldForm::Text;
    ClosedList list;
    std::optional<FieldRange> range;
};

/// A text of the record that is not what its column holds.
struct Unreadable {
    std::string text;
};

/// monostate = NULL.
using FieldValue = std::variant<std::monostate, std::string, double, int, Instant, Unreadable>;

/// What a layer's geometry is. OGC names: Point, LineString, MultiPolygon.
enum class ShapeKind { Point, Line, Area };

/// Places in the job's grid; nothing in it = not known.
struct LayerShape {
    std::vector<method::PlanPoint> path;  ///< one place of a point, two or more of a line
    std::vector<method::PlanArea> areas;
    bool known() const { return !path.empty() || !areas.empty(); }
};

struct LayerRow {
    std::string id;    ///< subject of the record behind it, "" when it has none of its own
    std::string name;  ///< for a sentence: "Test 12"
    std::vector<FieldValue> values;  ///< one per field
    LayerShape shape;
};

using RowSink = std::function<Result<void>(const LayerRow&)>;

struct Layer {
    std::string name;   ///< lower case
    std::string title;
    std::string what;   ///< one sentence
    ShapeKind kind = ShapeKind::Point;
    std::vector<LayerField> fields;
    /// Gives every row in the layer's order, the same every time; ends with the first error, also one of the sink.
    std::function<Result<void>(const RowSink&)> each;
};

struct ExportOptions {
    double perStation = 100;  ///< length of one station in the unit of the stations, as in method::stationText
    int stationPlaces = 1;    ///< decimals of a station's text
    /// Called between rows with the number written; false stops the export and leaves everything as it was. May be empty.
    std::function<bool(std::size_t written)> keepOn;
};

/// @return the values as they are @error Refused: a figure or a time that its column cannot hold; row and column are named.
Result<void> checkReadable(const LayerRow& row, const std::vector<LayerField>& fields);

/// "TEXT", "REAL", "MEDIUMINT" or "DATETIME". @source OGC 12-128r17 requirement 5
const char* typeName(FieldForm form);

/// Title with its unit: "Offset (ft)".
std::string titleWithUnit(const LayerField& field);

}  // namespace groundcount::gis
