#pragma once

#include "book/csv_text.h"
#include "method/error.h"

#include <map>
#include <string>
#include <vector>

/// The columns of a list of field tests and the reading of one row. Private to core/book.
namespace groundcount::book {

/// One row, every number checked and kept as typed.
struct FieldTestRow {
    int line = 0;
    std::string number, date, material, standard;
    std::string wet, content, maximum, optimum;
    std::string minimum, most, windowLow, windowHigh;  ///< empty = none
    std::string reportedDry, reportedPercent;          ///< empty = none
};

/// Places of the known columns in the head row.
using CsvColumns = std::map<std::string, std::size_t>;

/// @error Refused when a needed column is missing or a column stands twice.
Result<CsvColumns> columnsOf(const CsvRow& head);

/// @error Refused: "Line 5, column 5 (wet_density_lb_ft3): must be a decimal number above 0; it is \"NaN\"."
Result<FieldTestRow> fieldTestOf(const CsvRow& row, const CsvColumns& columns, std::size_t width);

}  // namespace groundcount::book
