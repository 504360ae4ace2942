#pragma once

#include "book/store.h"
#include "method/accept/evaluate.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

#include <string>
#include <vector>

/// From the sealed records of a test to the method's input, and from the method's verdict back to a sealed record.
namespace groundcount::book {

/// The records that decide a test. `recordsOf` chooses the live ones; a verdict names them in `from`.
struct Evidence {
    method::TestInput input;
    method::RuleSet rules;
    std::string test;      ///< subject
    std::string ruleSet;   ///< hash of the rule-set record
    std::string material;  ///< subject
    std::string proctor;   ///< subject
    std::vector<std::string> from;  ///< hashes: site, clearance, seating, readings, sample, lot, lift, proctor, papers, offsets
};

/// Gathers the live records that decide a test: site, clearance, seating, readings, sample, lot, lift, proctor; for counts
/// the calibration in force on the test's local day and the standard count that the first reading names; the offsets of
/// the gauge that are in force (a trench offset only when the clearance says "trench correction"); the job's rule set.
/// @error Refused with one sentence when something is missing, expired or not accepted: what, which, what is needed.
Result<Evidence> gatherEvidence(const Store& store, const std::string& testId);

/// The same from exactly these records (one rule-set among them). @error as gatherEvidence
Result<Evidence> evidenceFrom(const std::vector<Record>& records);

/// The evidence that the test's live verdict names; without a verdict, what stands in the book.
/// @error as gatherEvidence; Refused when a named record is not here
Result<Evidence> sealedEvidence(const Store& store, const std::string& testId);

/// Evaluates and builds the verdict to be sealed: result, reasons, figures as reported and unrounded, rule set, core, from.
/// @param by person, @param at UTC, @param offsetMinutes local time
/// @error Refused by any guard of method::evaluate.
Result<Entry> verdictEntry(const Evidence& evidence, const std::string& by, const std::string& at, int offsetMinutes);

/// What today's core makes of a sealed verdict.
struct VerdictCheck {
    bool agrees = false;
    std::vector<std::string> differences;  ///< "percent_compaction: sealed 97.2, today 97.3"
};

/// Recomputes a verdict from exactly the records named in its `from` and its rule set.
/// @error Refused when a named record is missing here or the method refuses.
Result<VerdictCheck> recompute(const Record& verdict, const Store& store);

}  // namespace groundcount::book
