#pragma once

#include "book/retest_chain.h"
#include "book/state.h"
#include "book/store.h"
#include "method/error.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// The engineer's word on a test, a lift or a lot: whether it can be given, what it rests on, and whether it still stands.
namespace groundcount::book {

enum class ReviewWord { Accepted, Returned, AcceptedWithException };
/// "accepted", "returned", "accepted with exception".
const char* word(ReviewWord word);

/// A sealed review that speaks today. `seen` is what the reviewer's book held: the last number of each device's chain.
struct ReviewLine {
    std::string hash, subject, by, byName, at, note;
    int offsetMinutes = 0;
    ReviewWord word = ReviewWord::Accepted;
    std::map<std::string, std::int64_t> seen;  ///< device to number; empty in a review that does not say
};

/// Live reviews of every subject, oldest first; one that is amended is left out. @error Unavailable for the file
Result<std::vector<ReviewLine>> reviews(const Store& store);

/// What a lot or one lift of it has and lacks, counted from the rows.
struct Tally {
    int required = 0;  ///< tests per lift x lifts
    int made = 0;      ///< random tests with a verdict or waiting for one
    int tests = 0;     ///< all that are not void
    int unfinished = 0;  ///< tests that are open or wait
    int conflicts = 0;   ///< tests with two live amendments of one record
    std::vector<const TestRow*> openFailures;  ///< RetestChains::open, in order
    int owed() const { return made < required ? required - made : 0; }
};

/// Where a lot or lift stands.
enum class Standing { Empty, Underway, FailureOpen, Ready, Accepted, AcceptedWithException, Returned, Changed };
/// "nothing tested", "under way", "failure open", "ready for review", "accepted", "accepted with exception", "returned",
/// "changed since accepted".
const char* word(Standing standing);

struct ReviewedLift {
    const LiftRow* lift = nullptr;
    Tally tally;
    Standing standing = Standing::Empty;
    std::string reason;  ///< one sentence
    std::optional<ReviewLine> review;
};

/// One record about a lot that the reviewer had not seen.
struct ReviewChange {
    std::string subject, kind, test /* number, "" for the lot itself */, lift /* id, "" for the lot itself */, byName, at, hash, amends, reason;
    int offsetMinutes = 0;
};

struct ReviewedLot {
    const LotRow* lot = nullptr;
    Tally tally;
    Standing standing = Standing::Empty;
    std::string reason;
    std::optional<ReviewLine> review;       ///< of the lot as a whole
    std::vector<ReviewedLift> lifts;        ///< newest first
    std::vector<ReviewChange> changes;      ///< since the review that speaks for each part, oldest first
    std::vector<ReviewLine> tests;          ///< reviews of single tests
};

/// The rows that a review of lots reads; they must outlive what is made from them.
struct ReviewRows {
    std::span<const LotRow> lots;
    std::span<const LiftRow> lifts;
    std::span<const TestRow> tests;
    double metresPerGridUnit = 1;
    Length retestDistance;
};

/// Each lot with its lifts as they stand.
///
/// Standing: a returned part stays returned until the next review; an accepted one is Changed when a record about it (its tests,
/// lift, lot, draws, material or reference test) is not among those that the reviewer's book held. Without a review: FailureOpen
/// before Ready (all made, none unfinished or in conflict) before Underway. A lot without a review of its own is accepted when
/// every lift of it is. A later review of the lot speaks for its lifts.
/// @param only id of one lot, "" = all @error Unavailable for the file. @source [DESIGN]
Result<std::vector<ReviewedLot>> reviewedLots(const Store& store, const ReviewRows& rows, const std::string& only);

/// Whether this word can be said: accepting asks for no open failure, nothing owed, unfinished or in conflict; returning and an
/// exception ask for a reason; only a person sealed as engineer reviews.
/// @param name "lot N-4" @error Refused with what stands against it. @source [DESIGN]; who accepts is common practice, no source
Result<void> mayReview(const PersonRow& reviewer, const std::string& name, const Tally& tally, ReviewWord word, const std::string& note);

/// Body of a review sealed now, with what this book holds. @error Unavailable for the file
Result<Body> reviewBody(const Store& store, ReviewWord word, const std::string& note);

}  // namespace groundcount::book
