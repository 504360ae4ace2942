#pragma once

#include "book/state.h"
#include "book/store.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

#include <string>
#include <vector>

/// Everything unusual in a book, for the engineer's review: each line names a test, what is unusual and the figures.
namespace groundcount::book {

enum class Unusual {
    Overridden,           ///< a check was overridden with a reason
    AmendedAfterVerdict,  ///< what a sealed verdict rests on was amended or added to later
    PapersExpired,        ///< calibration, leak test or certificate out of date on the day of the test
    StandardCountOut,     ///< standard count not accepted, beyond its limit or too old
    ClearanceNotMet,      ///< a hazard too close or unknown without a remedy, or a distance that contradicts the answer
    PositionPoor,         ///< not recorded, fewer fixes or less sure than the rules ask
    DuplicateReading,     ///< the second reading of a test repeats the first, or two tests of a gauge and day give one readout
    ImpossibleTime,       ///< a clock set back, or counts of one gauge that overlap
    SameCountsTwice,      ///< two tests of one gauge and day with equal density and moisture counts
    RetestElsewhere       ///< a retest at another lift, or farther from its failing test than the rules allow
};

/// "check overridden", "amended after the verdict", "papers expired", "standard count out", "clearance not met",
/// "position poor", "duplicate reading", "impossible time", "same counts twice", "retest elsewhere".
const char* word(Unusual kind);

struct UnusualLine {
    Unusual kind = Unusual::Overridden;
    std::string test;    ///< id
    std::string number;
    std::string lot;     ///< id
    std::string at;      ///< UTC start of the test
    std::string what;    ///< one sentence with the figures
};

/// Lists everything unusual, by test in the order of testing, then by kind. Voided tests are left out.
/// A test has at most one line of a kind; a second cause is joined to the sentence.
/// @param rules of the job: `standard.*`, `place.*`, `count.seconds`, `retest.distance`
/// @error Refused for a rule set without one of those keys; Unavailable for the file. @source [DESIGN]; what a reviewer asks for
///   is common practice, no source
Result<std::vector<UnusualLine>> unusual(const Store& store, const method::RuleSet& rules);

}  // namespace groundcount::book
