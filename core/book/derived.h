#pragma once

#include "book/database.h"
#include "book/live.h"

#include <span>
#include <string>
#include <vector>

/// The derived tables: what the fold makes of the live records of one subject. A row depends on its own subject's records
/// only; names of other things are joined when the table is read. Private to core/book.
namespace groundcount::book {

/// A change of the columns or of the fold changes this number; an older book is rebuilt when it is opened for writing.
inline constexpr int kFoldVersion = 2;

struct Column {
    const char* name;
    const char* type;
};

struct DerivedTable {
    const char* name;
    const char* from;  ///< the kind of record without which a subject has no row here
    std::span<const Column> columns;  ///< the first is `id`, the subject
};

std::span<const DerivedTable> derivedTables();

/// Rows for one table, each with a cell per column.
struct DerivedRows {
    const char* table;
    std::vector<std::vector<Cell>> rows;
};

std::vector<DerivedRows> setupRows(const std::string& id, const LiveRecords& live);
std::vector<DerivedRows> groundRows(const std::string& id, const LiveRecords& live);
std::vector<DerivedRows> testRows(const std::string& id, const LiveRecords& live);

/// Makes the derived tables, and the indexes over them, that are not there. A rebuild fills the tables before it makes the indexes.
Result<void> makeDerivedTables(Database& db);
Result<void> makeDerivedIndexes(Database& db);
/// Drops them all.
Result<void> dropDerivedTables(Database& db);
/// What stands in the derived tables of the subject that is folded: nothing yet, or perhaps rows of its earlier records.
enum class Before { Nothing, Rows };
/// Replaces the rows of one subject.
/// @param records all records of the subject
Result<void> foldSubject(Database& db, const std::string& subject, std::span<const Record> records, Before before);

/// Cells out of a body.
Cell realOf(const std::string& decimalText);  ///< missing when the text is no decimal number
double realOr(const std::string& decimalText, double otherwise);
/// Lengths in feet (international) out of a text and its unit ending; missing when there is none.
Cell feetOf(const std::string& decimalText, const std::string& unit);

}  // namespace groundcount::book
