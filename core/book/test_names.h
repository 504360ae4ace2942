#pragma once

#include "book/database.h"
#include "book/state.h"

#include <array>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>

/// The names that a row of the test table only points to. Private to core/book.
namespace groundcount::book {

/// Looks each name up once, since thousands of tests share a lot, a gauge and a person. It sees the book as it was at each first question:
/// make one for each reading.
class TestNames {
public:
    explicit TestNames(Database& db) : m_db(db) {}
    /// Fills in the names, the lift's number, the lot's material and laboratory maximum where the test has none of its own, and the standard
    /// counts that it leans on. @param standardCount hash of that record or ""; @error Unavailable when the book cannot be read.
    Result<void> fill(TestRow& test, std::string_view standardCount);

private:
    using Texts = std::array<std::string, 3>;
    struct Hash {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>()(text); }
    };
    using Memo = std::unordered_map<std::string, Texts, Hash, std::equal_to<>>;
    /// Up to three columns of one row of another table, "" when there is none.
    Result<const Texts*> look(Memo& memo, const char* sql, std::string_view id);

    Database& m_db;
    Memo m_lots, m_lifts, m_gauges, m_people, m_materials, m_proctors, m_standards;
};

}  // namespace groundcount::book
