#pragma once

#include "book/database.h"
#include "method/quantity.h"

#include <optional>
#include <string>
#include <vector>

/// Reads the columns of a query one after the other. Private to core/book.
namespace groundcount::book {

class RowReader {
public:
    explicit RowReader(const Statement& row) : m_row(row) {}
    RowReader& operator>>(std::string& into)
    {
        into = m_row.text(m_next++);
        return *this;
    }
    RowReader& operator>>(int& into)
    {
        into = static_cast<int>(m_row.whole(m_next++));
        return *this;
    }
    RowReader& operator>>(std::int64_t& into)
    {
        into = m_row.whole(m_next++);
        return *this;
    }
    RowReader& operator>>(unsigned& into)
    {
        into = static_cast<unsigned>(m_row.whole(m_next++));
        return *this;
    }
    RowReader& operator>>(bool& into)
    {
        into = m_row.whole(m_next++) != 0;
        return *this;
    }
    RowReader& operator>>(double& into)
    {
        into = m_row.real(m_next++);
        return *this;
    }
    RowReader& operator>>(std::optional<double>& into)
    {
        into = m_row.isNull(m_next) ? std::nullopt : std::optional(m_row.real(m_next));
        ++m_next;
        return *this;
    }
    /// Leaves columns out that were read in another way.
    void skip(int columns) { m_next += columns; }

private:
    const Statement& m_row;
    int m_next = 0;
};

/// Runs a query and makes one T per row.
template <class T, class Read>
Result<std::vector<T>> readAll(Database& db, const std::string& sql, std::initializer_list<std::string> values, Read read)
{
    auto query = db.use(sql);
    if (!query)
        return tl::unexpected(query.error());
    int index = 0;
    for (const std::string& value : values)
        query->bind(++index, value);
    std::vector<T> rows;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return rows;
        T one;
        read(RowReader(*query), one);
        rows.push_back(std::move(one));
    }
}

/// Metres of one grid unit: "m", "ft", "usft" (key endings) or "ftUS" (the job's word).
inline double metresPer(const std::string& unit)
{
    if (unit == "ft")
        return kMetrePerFoot;
    if (unit == "usft" || unit == "ftUS")
        return kMetrePerSurveyFoot;
    if (unit == "in")
        return kMetrePerFoot / 12;
    return unit == "mm" ? 0.001 : 1.0;
}

}  // namespace groundcount::book
