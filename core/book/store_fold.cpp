#include "book/derived.h"
#include "book/store_inner.h"

#include <algorithm>
#include <cstdio>

namespace groundcount::book {

namespace {

std::string shown(const Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        return std::to_string(*whole);
    if (const auto* real = std::get_if<double>(&cell)) {
        char text[40];
        std::snprintf(text, sizeof text, "%.17g", *real);
        return text;
    }
    const auto* text = std::get_if<std::string>(&cell);
    return text ? "'" + *text + "'" : "-";
}

}  // namespace

Result<void> Store::rebuild()
{
    if (auto may = m_inner->writable(); !may)
        return may;
    Database& db = m_inner->db;
    auto transaction = Transaction::begin(db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    if (auto dropped = dropDerivedTables(db); !dropped)
        return dropped;
    if (auto made = makeDerivedTables(db); !made)
        return made;
    // in the order of arrival: the records of a test lie near each other, those of the next subject id anywhere in the file
    auto subjects = db.use("SELECT subject, min(row) FROM record GROUP BY subject ORDER BY 2");
    if (!subjects)
        return tl::unexpected(subjects.error());
    for (;;) {
        const auto row = subjects->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            break;
        if (auto folded = m_inner->foldOne(subjects->text(0), Before::Nothing); !folded)
            return folded;
    }
    if (auto indexed = makeDerivedIndexes(db); !indexed)
        return indexed;
    if (auto noted = db.exec("DELETE FROM fold; INSERT INTO fold VALUES(" + std::to_string(kFoldVersion) + ")"); !noted)
        return noted;
    return transaction->commit();
}

Result<std::string> Store::derivedText() const
{
    std::string all;
    for (const DerivedTable& table : derivedTables()) {
        auto query = m_inner->db.use(std::string("SELECT * FROM ") + table.name);
        if (!query)
            return tl::unexpected(query.error());
        std::vector<std::string> lines;
        for (;;) {
            const auto row = query->step();
            if (!row)
                return tl::unexpected(row.error());
            if (!*row)
                break;
            std::string line = table.name;
            for (int i = 0; i < query->columns(); ++i)
                line += "|" + shown(query->cell(i));
            lines.push_back(line + "\n");
        }
        std::sort(lines.begin(), lines.end());
        for (const std::string& line : lines)
            all += line;
    }
    return all;
}

Result<std::string> Store::staleDerived() const
{
    auto memory = Database::open(":memory:", Access::Create);
    if (!memory)
        return tl::unexpected(memory.error());
    if (auto made = makeDerivedTables(*memory); !made)
        return tl::unexpected(made.error());
    if (auto made = makeDerivedIndexes(*memory); !made)
        return tl::unexpected(made.error());
    auto subjects = m_inner->db.use("SELECT DISTINCT subject FROM record");
    if (!subjects)
        return tl::unexpected(subjects.error());
    const auto linesOf = [](Database& db, const DerivedTable& table, const std::string& subject) -> Result<std::vector<std::string>> {
        auto query = db.use(std::string("SELECT * FROM ") + table.name + " WHERE id = ?");
        if (!query)
            return tl::unexpected(query.error());
        query->bind(1, subject);
        std::vector<std::string> lines;
        for (;;) {
            const auto row = query->step();
            if (!row)
                return tl::unexpected(row.error());
            if (!*row)
                break;
            std::string line;
            for (int i = 0; i < query->columns(); ++i)
                line += "|" + shown(query->cell(i));
            lines.push_back(line);
        }
        std::sort(lines.begin(), lines.end());
        return lines;
    };
    // a row whose subject has no record any more: its records were taken out of the file
    for (const DerivedTable& table : derivedTables()) {
        const auto orphan = m_inner->db.ask(std::string("SELECT id FROM ") + table.name + " WHERE id NOT IN (SELECT subject FROM record) LIMIT 1");
        if (!orphan || !orphan->empty())
            return orphan;
    }
    for (;;) {
        const auto row = subjects->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return std::string();
        const std::string subject = subjects->text(0);
        const auto records = m_inner->ofSubject(subject);
        if (!records)
            return tl::unexpected(records.error());
        if (auto folded = foldSubject(*memory, subject, *records, Before::Nothing); !folded)
            return tl::unexpected(folded.error());
        for (const DerivedTable& table : derivedTables()) {
            const auto here = linesOf(m_inner->db, table, subject);
            const auto there = linesOf(*memory, table, subject);
            if (!here || !there || *here != *there)
                return here ? subject : Result<std::string>(tl::unexpected(here.error()));
            if (auto emptied = memory->exec(std::string("DELETE FROM ") + table.name); !emptied)
                return tl::unexpected(emptied.error());
        }
    }
}

}  // namespace groundcount::book
