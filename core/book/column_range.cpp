#include "book/column_range.h"

#include "book/row_reader.h"

#include <algorithm>
#include <chrono>
#include <limits>
#include <unordered_map>

namespace groundcount::book {

namespace {

constexpr std::int64_t kReservedAtMost = 2'000'000;  // a row number of a foreign file is only a hint

int digitOf(char c)
{
    return c <= '9' ? c - '0' : c - 'a' + 10;
}

std::array<std::uint8_t, 16> bytesOf(std::string_view uuid)
{
    std::array<std::uint8_t, 16> bytes{};
    std::size_t at = 0;
    for (std::size_t i = 0; i + 1 < uuid.size() && at < bytes.size(); ++i)
        if (uuid[i] != '-') {
            bytes[at++] = static_cast<std::uint8_t>(digitOf(uuid[i]) * 16 + digitOf(uuid[i + 1]));
            ++i;
        }
    return bytes;
}

/// Of a time in the form of records, which the seal has checked.
std::int64_t millisecondsOf(std::string_view at)
{
    if (at.size() != 24)
        return 0;
    const auto number = [&](std::size_t from, std::size_t digits) {
        int value = 0;
        for (std::size_t i = from; i < from + digits; ++i)
            value = value * 10 + (at[i] - '0');
        return value;
    };
    using namespace std::chrono;
    const sys_days day = year_month_day(year(number(0, 4)), month(static_cast<unsigned>(number(5, 2))), std::chrono::day(static_cast<unsigned>(number(8, 2))));
    return duration_cast<milliseconds>(day.time_since_epoch()).count() + number(11, 2) * 3'600'000LL + number(14, 2) * 60'000LL +
           number(17, 2) * 1000LL + number(20, 3);
}

class Reader {
public:
    Reader(TestColumns& into, double metresPerGridUnit) : m_into(into), m_metres(metresPerGridUnit) {}

    void reserve(std::size_t rows)
    {
        eachColumn([&](auto column) { (m_into.*column).reserve(rows); });
    }

    void row(const Statement& row)
    {
        m_into.id.push_back(bytesOf(row.view(0)));
        m_into.number.emplace_back(row.view(1));
        m_into.lot.push_back(subject(row.view(2), m_last[0]));
        m_into.lift.push_back(subject(row.view(3), m_last[1]));
        m_into.person.push_back(subject(row.view(4), m_last[2]));
        m_into.purpose.push_back(static_cast<TestPurpose>(row.whole(5)));
        m_into.state.push_back(static_cast<TestState>(row.whole(6)));
        m_into.startedMs.push_back(millisecondsOf(row.view(7)));
        if (const std::string_view unit = row.view(10); unit != m_unit) {
            m_unit = unit;
            m_factor = unit.empty() ? 1 : metresPer(m_unit) / m_metres;
        }
        const double factor = m_factor;
        const double none = std::numeric_limits<double>::quiet_NaN();
        // the same number when the units agree, so that no digit moves
        m_into.north.push_back(row.isNull(8) ? none : factor == 1 ? row.real(8) : row.real(8) * factor);
        m_into.east.push_back(row.isNull(9) ? none : factor == 1 ? row.real(9) : row.real(9) * factor);
        m_into.compactionPct.emplace_back(row.view(11));
        m_into.conflict.push_back(row.whole(12) != 0);
    }

private:
    /// The place of a subject; the tests of a lift mostly stand together, so that the last answer is tried first.
    std::uint32_t subject(std::string_view text, std::uint32_t& last)
    {
        if (last < m_into.subjects.size() && m_into.subjects[last] == text)
            return last;
        const auto [place, isNew] = m_places.try_emplace(std::string(text), static_cast<std::uint32_t>(m_into.subjects.size()));
        if (isNew)
            m_into.subjects.emplace_back(text);
        return last = place->second;
    }

    TestColumns& m_into;
    double m_metres;
    std::unordered_map<std::string, std::uint32_t> m_places;
    std::array<std::uint32_t, 3> m_last{};  ///< of lot, lift, person
    std::string m_unit;
    double m_factor = 1;
};

}  // namespace

Result<void> readRange(const Store& store, std::int64_t from, std::int64_t to, std::int64_t rows, double metresPerGridUnit, TestColumns& into)
{
    Reader reader(into, metresPerGridUnit);
    reader.reserve(static_cast<std::size_t>(std::clamp<std::int64_t>(rows, 0, kReservedAtMost)));
    auto query = store.database().use("SELECT id, number, lot, lift, person, purpose, state, started_at, north, east, grid_unit, compaction_pct,"
                                      " conflict FROM test_row WHERE rowid BETWEEN ?1 AND ?2");
    if (!query)
        return tl::unexpected(query.error());
    query->bind(1, from).bind(2, to);
    for (;;) {
        const auto row = query->step();
        if (!row || !*row)
            return row ? Result<void>{} : tl::unexpected(row.error());
        reader.row(*query);
    }
}

}  // namespace groundcount::book
