#include "book/arrivals.h"

#include "book/row_reader.h"
#include "book/state_query.h"
#include "book/test_stream.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace groundcount::book {

namespace {

constexpr std::size_t kMostSubjects = 200;  // with more, one pass over the whole book is the shorter way

Result<std::vector<std::string>> texts(const Store& store, const std::string& sql, std::initializer_list<std::string> values)
{
    return readAll<std::string>(store.database(), sql, values, [](RowReader row, std::string& text) { row >> text; });
}

/// The draws whose sites may have got or lost a test.
Result<std::set<std::string>> drawsOf(const Store& store, const std::vector<std::string>& tests, std::span<const SiteRow> known)
{
    std::set<std::string> draws;
    for (const std::string& test : tests) {
        const auto now = texts(store, "SELECT draw FROM test_row WHERE id = ?1 AND draw <> ''", {test});
        if (!now)
            return tl::unexpected(now.error());
        draws.insert(now->begin(), now->end());
        for (const SiteRow& site : known)
            if (site.testId == test)
                draws.insert(site.draw);
    }
    return draws;
}

}  // namespace

Result<Arrivals> arrivedSince(const Store& store, std::int64_t since, std::span<const SiteRow> known)
{
    Arrivals arrivals;
    const auto last = store.lastRow();
    if (!last)
        return tl::unexpected(last.error());
    arrivals.upTo = *last;
    const std::string from = std::to_string(since);
    const auto subjects = texts(store, "SELECT DISTINCT subject FROM record WHERE row > CAST(?1 AS INTEGER) LIMIT " + std::to_string(kMostSubjects + 1), {from});
    if (!subjects)
        return tl::unexpected(subjects.error());
    // A subject is one thing: a test has its row in the table of tests, void or not, and in no other.
    const auto others = texts(store, "SELECT DISTINCT r.subject FROM record r WHERE r.row > CAST(?1 AS INTEGER)"
                                     " AND NOT EXISTS (SELECT 1 FROM test_row t WHERE t.id = r.subject) LIMIT 1", {from});
    if (!others)
        return tl::unexpected(others.error());
    const bool isShort = subjects->size() <= kMostSubjects;
    arrivals.onlyTests = others->empty() && isShort;
    if (!isShort)
        return arrivals;
    auto tests = testsTouchedBy(store, *subjects);
    const auto draws = drawsOf(store, *subjects, known);
    if (!tests || !draws)
        return tl::unexpected(tests ? draws.error() : tests.error());
    arrivals.tests = std::move(*tests);
    for (const std::string& draw : *draws) {
        const auto sites = sitesOfDraw(store, draw);
        if (!sites)
            return tl::unexpected(sites.error());
        arrivals.sites.insert(arrivals.sites.end(), sites->begin(), sites->end());
    }
    return arrivals;
}

void takeOver(std::vector<TestRow>& tests, std::vector<TestRow> arrived)
{
    for (TestRow& row : arrived) {
        // Nearly always among the last: an amended start would move it, so it is taken out and put in anew.
        const auto old = std::find_if(tests.rbegin(), tests.rend(), [&](const TestRow& t) { return t.id == row.id; });
        if (old != tests.rend() && old->startedAt == row.startedAt) {
            *old = std::move(row);
            continue;
        }
        if (old != tests.rend())
            tests.erase(std::next(old).base());
        tests.insert(std::upper_bound(tests.begin(), tests.end(), row, startsBefore), std::move(row));
    }
}

void takeOver(std::vector<SiteRow>& sites, const std::vector<SiteRow>& arrived)
{
    for (const SiteRow& row : arrived) {
        const auto old = std::find_if(sites.begin(), sites.end(), [&](const SiteRow& s) { return s.draw == row.draw && s.number == row.number; });
        if (old != sites.end())
            *old = row;
    }
}

}  // namespace groundcount::book
