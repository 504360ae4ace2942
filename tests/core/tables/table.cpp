#include "table.h"

#include <cstdlib>
#include <fstream>
#include <limits>
#include <stdexcept>

namespace groundcount::tables {

double readNumber(const std::string& text)
{
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    if (text.empty() || end != text.c_str() + text.size())
        throw std::runtime_error("\"" + text + "\" is not a number");
    return value;
}

std::vector<std::string> split(const std::string& text, char separator)
{
    std::vector<std::string> parts;
    std::size_t begin = 0;
    for (;;) {
        const std::size_t end = text.find(separator, begin);
        parts.push_back(text.substr(begin, end - begin));
        if (end == std::string::npos)
            return parts;
        begin = end + 1;
    }
}

Table Table::read(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    if (!in)
        throw std::runtime_error("cannot read " + file.string());
    Table table;
    table.m_topic = file.stem().string();
    table.m_folder = file.parent_path();
    std::string line;
    for (int number = 1; std::getline(in, line); ++number) {
        if (!line.empty() && line.back() == '\r')
            line.pop_back();
        if (line.empty() || line.front() == '#')
            continue;
        auto cells = split(line, '\t');
        if (table.m_columns.empty()) {
            table.m_columns = std::move(cells);
            continue;
        }
        if (cells.size() != table.m_columns.size())
            throw std::runtime_error(file.string() + ":" + std::to_string(number) + " has " +
                                     std::to_string(cells.size()) + " cells, the header " +
                                     std::to_string(table.m_columns.size()));
        table.m_cells.push_back(std::move(cells));
    }
    if (in.bad() || table.m_columns.empty() || table.m_columns.front() != "id")
        throw std::runtime_error(file.string() + " has no header row that begins with id");
    return table;
}

std::vector<Row> Table::rows() const
{
    std::vector<Row> rows;
    for (const auto& cells : m_cells)
        rows.emplace_back(*this, cells);
    return rows;
}

Table Table::companion(const std::string& topic) const
{
    const auto beside = m_folder / (topic + ".tsv");
    if (std::filesystem::exists(beside))
        return read(beside);
    return read(std::filesystem::path(GROUNDCOUNT_SOURCE_DIR) / "tests" / "tables" / (topic + ".tsv"));
}

bool Row::hasColumn(const std::string& column) const
{
    for (const auto& name : m_table->m_columns)
        if (name == column)
            return true;
    return false;
}

const std::string& Row::text(const std::string& column) const
{
    for (std::size_t i = 0; i < m_table->m_columns.size(); ++i)
        if (m_table->m_columns[i] == column)
            return (*m_cells)[i];
    throw std::runtime_error("no column " + column);
}

bool Row::has(const std::string& column) const
{
    return hasColumn(column) && text(column) != "-" && !text(column).empty();
}

double Row::number(const std::string& column) const
{
    const std::string& cell = text(column);
    return cell == "-" ? std::numeric_limits<double>::quiet_NaN() : readNumber(cell);
}

double Row::numberOr(const std::string& column, double otherwise) const
{
    return has(column) ? readNumber(text(column)) : otherwise;
}

std::vector<std::string> Row::words(const std::string& column) const
{
    std::vector<std::string> words;
    if (text(column) == "-")
        return words;
    for (auto& word : split(text(column), ' '))
        if (!word.empty())
            words.push_back(std::move(word));
    return words;
}

std::vector<double> Row::numbers(const std::string& column) const
{
    std::vector<double> values;
    for (const auto& word : words(column))
        values.push_back(readNumber(word));
    return values;
}

std::vector<std::pair<std::string, std::string>> Row::pairs(const std::string& column) const
{
    std::vector<std::pair<std::string, std::string>> pairs;
    if (text(column) == "-")
        return pairs;
    for (const auto& part : split(text(column), ';')) {
        const auto equal = part.find('=');
        if (equal == std::string::npos)
            throw std::runtime_error("\"" + part + "\" in column " + column + " is not key=value");
        pairs.emplace_back(part.substr(0, equal), part.substr(equal + 1));
    }
    return pairs;
}

std::string Row::pairText(const std::string& column, const std::string& key) const
{
    for (const auto& [name, value] : pairs(column))
        if (name == key)
            return value;
    throw std::runtime_error("no key " + key + " in column " + column);
}

double Row::pairNumber(const std::string& column, const std::string& key) const
{
    return readNumber(pairText(column, key));
}

}  // namespace groundcount::tables
