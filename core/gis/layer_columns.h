#pragma once

#include "book/state.h"
#include "gis/layer.h"
#include "method/decimal.h"

#include <cmath>
#include <span>
#include <string>

/// How a layer's columns are written down: one line a column, with the function that reads its value from a row of the book.
namespace groundcount::gis {

/// What a column's name ends in by the job: density "_lb_ft3" or "_kg_m3"; on a metric grid "_m" and "_m2", else "_ft" and "_ft2".
enum class Ending { None, Density, Length, Surface };

/// Closed lists of words.
enum class Words { Any, TestStates, Purposes, SiteStates, GroundStates, ObstacleKinds, WaterWindows };

template <class Row>
struct Column {
    const char* name;
    const char* title;
    const char* what;
    FieldForm form;
    FieldValue (*value)(const Row&, const ExportOptions&);
    Ending ending = Ending::None;
    Words words = Words::Any;
    std::optional<FieldRange> range = {};
};

/// @error Refused: a density unit that is neither lb/ft3 nor kg/m3.
Result<void> checkUnits(const book::JobRow& job);

/// A column as a field; `checkUnits` has passed.
LayerField fieldOf(const book::JobRow& job, const char* name, const char* title, const char* what, FieldForm form, Ending ending, Words words);

ClosedList closedList(Words words);

template <class Row>
std::vector<LayerField> fieldsOf(std::span<const Column<Row>> columns, const book::JobRow& job)
{
    std::vector<LayerField> fields;
    for (const auto& c : columns) {
        fields.push_back(fieldOf(job, c.name, c.title, c.what, c.form, c.ending, c.words));
        fields.back().range = c.range;
    }
    return fields;
}

template <class Row>
std::vector<FieldValue> valuesOf(std::span<const Column<Row>> columns, const Row& row, const ExportOptions& options)
{
    std::vector<FieldValue> values;
    values.reserve(columns.size());
    for (const auto& c : columns)
        values.push_back(c.value(row, options));
    return values;
}

inline FieldValue textOrNull(const std::string& text)
{
    return text.empty() ? FieldValue() : FieldValue(text);
}

inline FieldValue realOrNull(const std::optional<double>& number)
{
    return number && std::isfinite(*number) ? FieldValue(*number) : FieldValue();
}

inline FieldValue wholeOrNull(int number)
{
    return number == 0 ? FieldValue() : FieldValue(number);
}

/// The number that a decimal text says.
inline FieldValue decimalOrNull(const std::string& text)
{
    if (text.empty())
        return {};
    const auto number = Decimal::parse(text);
    return number ? FieldValue(number->value()) : FieldValue(Unreadable{text});
}

/// A station as plans write it.
FieldValue stationOrNull(const std::optional<double>& station, const ExportOptions& options);

}  // namespace groundcount::gis
