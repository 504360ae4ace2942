#include "book/csv_text.h"

#include "book/utf8.h"

namespace groundcount::book {

namespace {

class Splitter {
public:
    explicit Splitter(std::string_view text) : m_text(text) {}

    Result<std::vector<CsvRow>> run()
    {
        while (m_at < m_text.size()) {
            CsvRow row;
            for (bool more = true; more;) {
                auto next = field(static_cast<int>(row.size()) + 1);
                if (!next)
                    return tl::unexpected(next.error());
                row.push_back(std::move(*next));
                more = m_at < m_text.size() && m_text[m_at] == ',';
                if (more)
                    ++m_at;
            }
            endLine();
            if (row.size() > 1 || !row.front().text.empty())
                m_rows.push_back(std::move(row));
        }
        return m_rows;
    }

private:
    bool atLineEnd() const
    {
        return m_at >= m_text.size() || m_text[m_at] == '\n' ||
               (m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n');
    }

    void endLine()
    {
        if (m_at < m_text.size() && m_text[m_at] == '\r')
            ++m_at;
        if (m_at < m_text.size())
            ++m_at;
        ++m_line;
    }

    tl::unexpected<Error> wrong(const CsvField& field, const char* what) const
    {
        return refused("Line " + std::to_string(field.line) + ", column " + std::to_string(field.column) + ": " + what);
    }

    Result<CsvField> field(int column)
    {
        CsvField f{{}, m_line, column};
        if (m_at < m_text.size() && m_text[m_at] == '"')
            return quoted(f);
        while (!atLineEnd() && m_text[m_at] != ',') {
            if (m_text[m_at] == '"')
                return wrong(f, "a quote may stand only around a whole field.");
            f.text += m_text[m_at++];
        }
        return f;
    }

    Result<CsvField> quoted(CsvField f)
    {
        for (++m_at;; ++m_at) {
            if (m_at >= m_text.size())
                return wrong(f, "the quote that begins here is never closed.");
            if (m_text[m_at] == '"') {
                if (m_at + 1 < m_text.size() && m_text[m_at + 1] == '"') {
                    ++m_at;
                } else {
                    ++m_at;
                    break;
                }
            }
            if (m_text[m_at] == '\n')
                ++m_line;
            f.text += m_text[m_at];
        }
        if (!atLineEnd() && m_text[m_at] != ',')
            return wrong(f, "nothing may stand between a closing quote and the comma.");
        return f;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    int m_line = 1;
    std::vector<CsvRow> m_rows;
};

}  // namespace

Result<std::vector<CsvRow>> readCsv(std::string_view text)
{
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    if (!isUtf8(text) || text.find('\0') != std::string_view::npos)
        return refused("A CSV file must be UTF-8 text; this one is not.");
    return Splitter(text).run();
}

}  // namespace groundcount::book
