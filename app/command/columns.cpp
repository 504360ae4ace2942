#include "command/columns.h"

#include <algorithm>

namespace groundcount::command {
namespace {

std::size_t width(const std::string& text)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}  // namespace

std::string Columns::text() const
{
    std::vector<std::size_t> widths(m_aligns.size(), 0);
    for (const auto& row : m_rows)
        for (std::size_t i = 0; i < std::min(row.size(), widths.size()); ++i)
            widths[i] = std::max(widths[i], width(row[i]));
    std::string out;
    for (const auto& row : m_rows) {
        std::string line;
        for (std::size_t i = 0; i < std::min(row.size(), widths.size()); ++i) {
            const std::string gap(widths[i] - width(row[i]), ' ');
            line += i ? "  " : "";
            line += m_aligns[i] == Align::Right ? gap + row[i] : row[i] + gap;
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += (out.empty() ? "" : "\n") + line;
    }
    return out;
}

}  // namespace groundcount::command
