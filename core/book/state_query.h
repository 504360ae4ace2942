#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <string>
#include <vector>

/// Reading of the derived state, with names joined. Two records never disagree about a list: it is read in one query.
namespace groundcount::book {

struct TestFilter {
    std::string lot;   ///< "" = any
    std::string lift;  ///< "" = any
    std::string person;
};

/// Numbers of tests, as they are given out.
/// "26" and 1 give "26A", and 27 gives "26AA". @source [SJC-CQA] for number and letter, [DESIGN] after Z
std::string retestNumber(const std::string& parentNumber, int retest);

class StateQuery {
public:
    /// @param store must outlive this object
    explicit StateQuery(const Store& store) : m_store(store) {}

    /// The job; a row with an empty id when none is sealed. Its coordinate unit falls to "ftUS" while no crs is sealed.
    Result<JobRow> job() const;
    /// Tests by start, earliest first.
    Result<std::vector<TestRow>> tests(const TestFilter& filter) const;
    /// @error Refused when there is no such test.
    Result<TestRow> test(const std::string& id) const;
    Result<std::vector<PersonRow>> people() const;
    /// Each with its newest calibration and leak test.
    Result<std::vector<GaugeRow>> gauges() const;
    /// Newest first. @param gauge "" = all
    Result<std::vector<StandardCountRow>> standardCounts(const std::string& gauge) const;
    Result<std::vector<MaterialRow>> materials() const;
    Result<std::vector<ProctorRow>> proctors() const;
    Result<std::vector<LotRow>> lots() const;
    Result<std::vector<LiftRow>> lifts(const std::string& lot) const;  ///< "" = all; by number
    /// Drawn sites. @param lot, lift "" = all
    Result<std::vector<SiteRow>> sites(const std::string& lot, const std::string& lift) const;
    Result<std::vector<ObstacleRow>> obstacles() const;
    Result<std::vector<AlignmentRow>> alignments() const;
    /// One more than the greatest number of digits among all tests, voided ones too: a number is never used again.
    Result<std::string> nextTestNumber() const;
    /// The number of the next retest of `testId`: the first test's number and the next free letter; a retest of 26A is 26B.
    Result<std::string> nextRetestNumber(const std::string& testId) const;
    /// Subjects with two live amendments of one record.
    Result<std::vector<std::string>> conflicts() const;

private:
    const Store& m_store;
};

}  // namespace groundcount::book
