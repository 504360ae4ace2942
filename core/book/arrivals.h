#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

/// What came into a book since somebody read it. A seal touches one test; the other thousands need not be read again.
namespace groundcount::book {

struct Arrivals {
    std::int64_t upTo = 0;         ///< the place of the last record, asked from the next time
    bool onlyTests = false;        ///< every list but tests and sites is as it was; otherwise read all of them again
    std::vector<TestRow> tests;    ///< new or changed; none of a long list, which is no longer onlyTests
    std::vector<SiteRow> sites;    ///< every site of the draws concerned, likewise
};

/// @param since what Store::lastRow or `upTo` said
/// @param known sites as they were then; the draws of those that a changed test stood at are read again too
/// @error Unavailable when the book cannot be read.
Result<Arrivals> arrivedSince(const Store& store, std::int64_t since, std::span<const SiteRow> known);

/// Puts new rows in the place of old ones and between them in the order of StateQuery.
void takeOver(std::vector<TestRow>& tests, std::vector<TestRow> arrived);
void takeOver(std::vector<SiteRow>& sites, const std::vector<SiteRow>& arrived);

}  // namespace groundcount::book
