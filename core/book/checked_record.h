#pragma once

#include "book/store.h"

#include <atomic>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace groundcount::book {

/// A record with what its verification gave, so that verifying and taking can be done at different times and by different threads.
class CheckedRecord {
public:
    /// Verifies envelope, link form, hash, signature and body.
    explicit CheckedRecord(Record record);

    const Record& record() const { return m_record; }
    Record release() && { return std::move(m_record); }
    /// "" or why the record cannot be taken.
    const std::string& fault() const { return m_fault; }
    /// The canonical text of the body; "" with a fault.
    const std::string& body() const { return m_body; }

private:
    Record m_record;
    std::string m_fault;
    std::string m_body;
};

/// verifyRecord. @return the canonical text of the body @error as verifyRecord
Result<std::string> verifiedBody(const Record& record);

/// Each of `records`, verified on every core.
std::vector<CheckedRecord> checked(std::vector<Record> records);

/// Store::take with records that were verified before.
Result<MergeReport> takeChecked(Store& into, std::vector<CheckedRecord> records);
/// The same, or nothing at all when `givenUp` turned true on the way: another thread does not wait for what it no longer wants.
Result<std::optional<MergeReport>> takeChecked(Store& into, std::vector<CheckedRecord> records, const std::atomic<bool>& givenUp);

}  // namespace groundcount::book
