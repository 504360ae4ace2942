#pragma once

#include "method/error.h"

#include <string>
#include <string_view>
#include <vector>

/// Comma-separated text with the place of every field.
namespace groundcount::book {

struct CsvField {
    std::string text;
    int line = 0;    ///< from 1, where the field begins
    int column = 0;  ///< from 1: its place among the fields of its row
};

using CsvRow = std::vector<CsvField>;

/// Splits a CSV text into rows. Fields may be quoted and then hold commas, doubled quotes and line ends; lines end with LF
/// or CRLF; a UTF-8 byte order mark is skipped; empty lines are skipped.
/// @error Refused, naming line and column, for a quote that is not closed or stands inside an unquoted field, text after a
///        closing quote, a NUL byte or text that is not UTF-8.
/// @source RFC 4180
Result<std::vector<CsvRow>> readCsv(std::string_view text);

}  // namespace groundcount::book
