#pragma once

#include "book/record.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Which records of one subject speak today. The answer depends on the set of records only, never on the order in which
/// they came, so that two books with the same records show the same state.
namespace groundcount::book {

/// The live records of one subject: a record is live until a record of the same kind amends it. A live record stands at
/// the place of the first record of its chain of amendments. Places are ordered on one device by its running number
/// (a clock that was set back changes nothing) and between devices by time, then by hash.
class LiveRecords {
public:
    /// @param records all records of one subject, any order; they must outlive this object
    explicit LiveRecords(std::span<const Record> records);

    bool isVoid() const { return m_void; }
    /// Two live records amend the same record.
    bool hasConflict() const { return m_conflict; }
    /// The latest live record of a kind, or nullptr. Of two in conflict the later one.
    const Record* latest(std::string_view kind) const;
    /// All live records of a kind, earliest place first.
    std::vector<const Record*> all(std::string_view kind) const;
    /// The first record of the chain of amendments that `record` ends.
    const Record& root(const Record& record) const;

private:
    struct Place {
        const Record* record;
        const Record* root;
    };
    static bool later(const Place& a, const Place& b);
    std::vector<Place> m_live;
    bool m_void = false;
    bool m_conflict = false;
};

/// The live records of a test that its latest verdict should rest on and does not name (place, clearances, seating, readings, sample): what
/// was amended or added after it. Empty when the verdict is current, without a verdict, and for a void test. A reading that a later one of
/// its number replaced is not asked for.
/// @param records all records of one test, any order; they must outlive the answer
std::vector<const Record*> notJudged(std::span<const Record> records);

}  // namespace groundcount::book
