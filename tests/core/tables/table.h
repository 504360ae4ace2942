#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace groundcount::tables {

class Row;

/// One check table: the file's stem is the topic, '#' lines are the head, then a header row and one row per case.
class Table {
public:
    /// Reads `file`. Throws std::runtime_error, naming file and line, when it cannot be read or a row has another
    /// number of cells than the header.
    static Table read(const std::filesystem::path& file);

    const std::string& topic() const { return m_topic; }
    const std::filesystem::path& folder() const { return m_folder; }
    const std::vector<std::string>& columns() const { return m_columns; }
    std::vector<Row> rows() const;
    /// Another table, for topics that refer to one: looked for in this table's folder, then in tests/tables.
    Table companion(const std::string& topic) const;

private:
    friend class Row;
    std::string m_topic;
    std::filesystem::path m_folder;
    std::vector<std::string> m_columns;
    std::vector<std::vector<std::string>> m_cells;
};

/// One case. Cells are found by the name of their column only; a column that does not exist throws, so that a
/// slip in a topic can never pass for a refusal of the core.
class Row {
public:
    Row(const Table& table, const std::vector<std::string>& cells) : m_table(&table), m_cells(&cells) {}

    const Table& table() const { return *m_table; }
    bool hasColumn(const std::string& column) const;
    /// The cell as written, "-" for nothing.
    const std::string& text(const std::string& column) const;
    /// Whether the column exists and holds something else than "-".
    bool has(const std::string& column) const;
    /// The cell as a number; "-" is NaN, which core has to refuse. Throws on any other text.
    double number(const std::string& column) const;
    /// The cell as a number, or `otherwise` for "-" or a column the table does not have.
    double numberOr(const std::string& column, double otherwise) const;
    /// Cells separated by blanks; "-" is an empty list.
    std::vector<double> numbers(const std::string& column) const;
    std::vector<std::string> words(const std::string& column) const;
    /// A cell "key=value;key=value".
    std::vector<std::pair<std::string, std::string>> pairs(const std::string& column) const;
    /// The value of one key of such a cell, as number or text. Throws when the key is missing.
    double pairNumber(const std::string& column, const std::string& key) const;
    std::string pairText(const std::string& column, const std::string& key) const;

private:
    const Table* m_table;
    const std::vector<std::string>* m_cells;
};

/// The whole text as a number. Throws std::runtime_error on anything else.
double readNumber(const std::string& text);
std::vector<std::string> split(const std::string& text, char separator);

}  // namespace groundcount::tables
