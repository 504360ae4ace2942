#include "book/sealed_facts.h"

#include "book/flat_body.h"
#include "book/local_time.h"
#include "book/review_clearance.h"
#include "book/row_reader.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <thread>

namespace groundcount::book {

namespace {

constexpr std::int64_t kRowsWorthAThread = 10'000;

struct Amendment {
    std::string amends, kind, at;
};

using Amendments = std::unordered_multimap<std::string, Amendment>;

Result<Amendments> amendmentsOf(Database& db)
{
    auto rows = readAll<Amendment>(db, "SELECT amends, kind, at FROM record WHERE amends <> ''", {},
                                   [](RowReader row, Amendment& a) { row >> a.amends >> a.kind >> a.at; });
    if (!rows)
        return tl::unexpected(rows.error());
    Amendments all;
    for (Amendment& a : *rows)
        all.emplace(a.amends, std::move(a));
    return all;
}

/// One range of rows.
class Gatherer {
public:
    Gatherer(const CheckedTests& tests, const Amendments& amendments) : m_tests(tests), m_amendments(amendments) {}

    Result<void> gather(Database& db, std::int64_t from, std::int64_t to)
    {
        auto query = db.use("SELECT hash, kind, subject, amends, at, device, seq, body FROM record WHERE row > ?1 AND row <= ?2 ORDER BY row");
        if (!query)
            return tl::unexpected(query.error());
        query->bind(1, from).bind(2, to);
        facts.sealed.reserve(static_cast<std::size_t>(to - from));
        for (;;) {
            const auto more = query->step();
            if (!more || !*more)
                return more ? Result<void>{} : tl::unexpected(more.error());
            record(*query);
        }
    }

    SealedFacts facts;

private:
    void record(const Statement& row)
    {
        const std::string_view kind = row.view(1);
        if (m_subject != row.view(2)) {  // the records of a test mostly stand together
            m_subject = row.view(2);
            m_test = m_tests.find(m_subject);
        }
        SealedFacts::Sealed one;
        one.test = m_test;
        one.atMs = millisecondsOf(row.view(4));
        one.seq = row.whole(6);
        one.device = m_device = static_cast<std::uint16_t>(facts.words.place(row.view(5), m_device));
        one.kind = kindOf(kind);
        one.isPart = row.view(3).empty() && (kind == "test-site" || kind == "clearance" || kind == "seating" || kind == "reading" || kind == "sample");
        facts.sealed.push_back(one);
        if (m_test == kNoTest)
            return;
        if (kind == "verdict")
            verdict(one, row);
        else if ((kind == "reading" || kind == "clearance") && (m_amendments.empty() || !m_amendments.contains(std::string(row.view(0)))))
            kind == "reading" ? reading(one, row) : clearance(one, row);
    }

    /// Of the few kinds that there are, without a text of its own for each record.
    std::uint16_t kindOf(std::string_view kind)
    {
        for (const std::uint16_t place : m_kinds)
            if (facts.words[place] == kind)
                return place;
        m_kinds.push_back(static_cast<std::uint16_t>(facts.words.place(kind)));
        return m_kinds.back();
    }

    void verdict(const SealedFacts::Sealed& one, const Statement& row)
    {
        if (!m_body.read(row.view(7)) || !m_body.contains("result") || m_body.raw("result") == "\"provisional\"")
            return;
        facts.verdicts.push_back({one.seq, one.test, one.device});
        if (m_amendments.empty())
            return;
        eachElement(m_body.raw("from"), [&](std::string_view hash) {
            const auto [first, last] = m_amendments.equal_range(std::string(hash.substr(1, hash.size() - 2)));
            for (auto it = first; it != last; ++it)
                facts.amended.push_back({one.test, it->second.kind, it->second.at});
        });
    }

    void reading(const SealedFacts::Sealed& one, const Statement& row)
    {
        if (!m_body.read(row.view(7)))
            return;  // a damaged body; `check` names it
        SealedFacts::Reading r{one.atMs, one.seq, m_body.whole("number"), m_body.whole("seconds"), one.test, m_body.contains("density_count"), {}};
        if (r.isCounted)
            for (const char* key : {"density_count", "moisture_count"})
                r.figures.append(m_body.raw(key)) += m_body.contains(key) ? "/" : "";
        else
            r.figures = withUnit(m_body, "wet_density", Unit::Density).text + "/" + withUnit(m_body, "water_density", Unit::Density).text + "/" + m_body.text("water_content_pct");
        facts.readings.push_back(std::move(r));
    }

    void clearance(const SealedFacts::Sealed& one, const Statement& row)
    {
        if (!m_body.read(row.view(7)))
            return;
        SealedFacts::Clearance c{one.atMs, one.seq, one.test, {}};
        if (eachElement(m_body.raw("hazards"), [&](std::string_view hazard) {
                if (FlatBody body; body.read(hazard))
                    if (std::string sentence = clearanceFault(body); !sentence.empty())
                        c.sentences.push_back(std::move(sentence));
            }))
            facts.clearances.push_back(std::move(c));
    }

    const CheckedTests& m_tests;
    const Amendments& m_amendments;
    FlatBody m_body;
    std::string m_subject;
    std::uint32_t m_test = kNoTest;
    std::uint16_t m_device = 0;
    std::vector<std::uint16_t> m_kinds;
};

template <class Fact>
void append(std::vector<Fact>& all, std::vector<Fact>& some)
{
    all.insert(all.end(), std::make_move_iterator(some.begin()), std::make_move_iterator(some.end()));
    some = {};
}

void takeOver(SealedFacts& all, SealedFacts some)
{
    std::vector<std::uint16_t> places;
    for (std::uint32_t i = 0; i < some.words.size(); ++i)
        places.push_back(static_cast<std::uint16_t>(all.words.place(some.words[i])));
    for (auto& one : some.sealed) {
        one.device = places[one.device];
        one.kind = places[one.kind];
    }
    for (auto& one : some.verdicts)
        one.device = places[one.device];
    append(all.sealed, some.sealed);
    append(all.verdicts, some.verdicts);
    append(all.amended, some.amended);
    append(all.readings, some.readings);
    append(all.clearances, some.clearances);
}

}  // namespace

Result<SealedFacts> sealedFacts(const Store& store, const CheckedTests& tests, unsigned ranges)
{
    const auto last = store.lastRow();
    const auto amendments = amendmentsOf(store.database());
    if (!last || !amendments)
        return tl::unexpected(last ? amendments.error() : last.error());
    if (ranges == 0)
        ranges = static_cast<unsigned>(std::clamp<std::int64_t>(*last / kRowsWorthAThread, 1, std::max(1U, std::thread::hardware_concurrency())));
    std::vector<Gatherer> parts(ranges, Gatherer(tests, *amendments));
    std::vector<Result<void>> done(ranges);
    const auto gather = [&](unsigned i, Database& db) { done[i] = parts[i].gather(db, *last * i / ranges, *last * (i + 1) / ranges); };
    std::vector<std::thread> threads;
    for (unsigned i = 1; i < ranges; ++i)
        threads.emplace_back([&, i] {
            if (auto db = Database::open(store.path(), Access::ReadOnly))
                gather(i, *db);
            else
                done[i] = tl::unexpected(db.error());
        });
    gather(0, store.database());
    for (std::thread& thread : threads)
        thread.join();
    for (const auto& one : done)
        if (!one)
            return tl::unexpected(one.error());
    SealedFacts all = std::move(parts[0].facts);
    for (unsigned i = 1; i < ranges; ++i)
        takeOver(all, std::move(parts[i].facts));
    return all;
}

}  // namespace groundcount::book
