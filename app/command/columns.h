#pragma once

#include <string>
#include <vector>

namespace groundcount::command {

enum class Align { Left, Right };

/// Rows of text set in columns as wide as their widest cell (counted in code points), two blanks between them.
class Columns {
public:
    explicit Columns(std::vector<Align> aligns) : m_aligns(std::move(aligns)) {}
    /// @param cells one per column
    void add(std::vector<std::string> cells) { m_rows.push_back(std::move(cells)); }
    std::string text() const;

private:
    std::vector<Align> m_aligns;
    std::vector<std::vector<std::string>> m_rows;
};

}  // namespace groundcount::command
