#include "book/engineer_review.h"

#include "book/kinds.h"
#include "book/review_seen.h"

#include <algorithm>
#include <unordered_map>

namespace groundcount::book {

namespace {

std::string counted(std::size_t n, const char* one, const char* many)
{
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

/// What stands against accepting, "" when nothing does.
std::string lacking(const Tally& t)
{
    std::string out;
    const auto add = [&](std::size_t n, const char* one, const char* many) {
        if (n > 0)
            out += (out.empty() ? "" : ", ") + counted(n, one, many);
    };
    add(t.openFailures.size(), "failure is open", "failures are open");
    add(static_cast<std::size_t>(t.owed()), "test is owed", "tests are owed");
    add(static_cast<std::size_t>(t.unfinished), "test is not finished", "tests are not finished");
    add(static_cast<std::size_t>(t.conflicts), "test was amended twice apart", "tests were amended twice apart");
    if (t.tests == 0 && out.empty())
        out = "nothing is tested";
    return out;
}

std::string sentence(std::string text)
{
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text.ends_with('.') ? text : text + ".";
}

/// Adds a test to the counts, but for open failures.
void count(const TestRow& t, Tally& into)
{
    if (t.state == TestState::Void)
        return;
    ++into.tests;
    into.made += t.purpose == TestPurpose::Random && t.state != TestState::Open ? 1 : 0;
    into.unfinished += t.state == TestState::Open || t.state == TestState::Waiting ? 1 : 0;
    into.conflicts += t.conflict ? 1 : 0;
}

Standing unreviewed(const Tally& t)
{
    if (t.tests == 0)
        return Standing::Empty;
    if (!t.openFailures.empty())
        return Standing::FailureOpen;
    return lacking(t).empty() ? Standing::Ready : Standing::Underway;
}

std::string unreviewedReason(const Tally& t)
{
    const std::string lacks = lacking(t);
    return lacks.empty() ? sentence("all " + counted(static_cast<std::size_t>(t.required), "test", "tests") + " made, no failure open") : sentence(lacks);
}

std::string reviewReason(const ReviewLine& r, std::size_t changes)
{
    std::string text = std::string(word(r.word)) + " by " + (r.byName.empty() ? "a person not in this book" : r.byName) + " on " + r.at.substr(0, 10);
    if (!r.note.empty())
        text += ": " + r.note;
    if (changes > 0)
        text += (text.ends_with('.') ? " " : "; ") + counted(changes, "record since", "records since");
    return sentence(text);
}

/// Standing and reason of a part by its review, or by its counts without one.
template <class Part>
void judge(Part& part, std::size_t changes)
{
    if (!part.review) {
        part.standing = unreviewed(part.tally);
        part.reason = unreviewedReason(part.tally);
        return;
    }
    const ReviewWord said = part.review->word;
    part.standing = said == ReviewWord::Returned ? Standing::Returned : changes > 0 ? Standing::Changed
                    : said == ReviewWord::Accepted ? Standing::Accepted : Standing::AcceptedWithException;
    part.reason = reviewReason(*part.review, changes);
}

void judgeLifts(ReviewedLot& lot)
{
    for (ReviewedLift& lift : lot.lifts) {
        if (lot.review && (!lift.review || lift.review->at < lot.review->at))
            lift.review = lot.review;
        judge(lift, static_cast<std::size_t>(std::count_if(lot.changes.begin(), lot.changes.end(), [&](const ReviewChange& c) { return c.lift.empty() || c.lift == lift.lift->id; })));
    }
}

void judgeLot(ReviewedLot& lot)
{
    judge(lot, lot.changes.size());
    // a lift that was returned or spoken of after the lot's own review speaks for itself
    const auto spoken = std::find_if(lot.lifts.begin(), lot.lifts.end(), [](const ReviewedLift& l) { return l.standing == Standing::Returned; });
    if (spoken != lot.lifts.end()) {
        lot.standing = Standing::Returned;
        lot.reason = "Lift " + std::to_string(spoken->lift->number) + ": " + spoken->reason;
        return;
    }
    if (lot.review || lot.lifts.empty())
        return;
    const auto isAccepted = [](const ReviewedLift& l) { return l.standing == Standing::Accepted || l.standing == Standing::AcceptedWithException; };
    const auto accepted = std::count_if(lot.lifts.begin(), lot.lifts.end(), isAccepted);
    if (accepted == static_cast<std::ptrdiff_t>(lot.lifts.size())) {
        const bool plain = std::all_of(lot.lifts.begin(), lot.lifts.end(), [](const ReviewedLift& l) { return l.standing == Standing::Accepted; });
        lot.standing = plain ? Standing::Accepted : Standing::AcceptedWithException;
        lot.reason = "Every lift is accepted" + std::string(plain ? "." : ", at least one with an exception.");
    } else if (std::any_of(lot.lifts.begin(), lot.lifts.end(), [](const ReviewedLift& l) { return l.standing == Standing::Changed; })) {
        lot.standing = Standing::Changed;
        lot.reason = "A lift changed since it was accepted.";
    }
}

}  // namespace

const char* word(ReviewWord word)
{
    return word == ReviewWord::Accepted ? "accepted" : word == ReviewWord::Returned ? "returned" : "accepted with exception";
}

const char* word(Standing standing)
{
    switch (standing) {
    case Standing::Empty: return "nothing tested";
    case Standing::Underway: return "under way";
    case Standing::FailureOpen: return "failure open";
    case Standing::Ready: return "ready for review";
    case Standing::Accepted: return "accepted";
    case Standing::AcceptedWithException: return "accepted with exception";
    case Standing::Returned: return "returned";
    case Standing::Changed: break;
    }
    return "changed since accepted";
}

Result<std::vector<ReviewedLot>> reviewedLots(const Store& store, const ReviewRows& rows, const std::string& only)
{
    const auto all = reviews(store);
    if (!all)
        return tl::unexpected(all.error());
    std::unordered_map<std::string_view, std::vector<const TestRow*>> byLot;
    for (const TestRow& t : rows.tests)
        if (only.empty() || t.lot == only)
            byLot[t.lot].push_back(&t);
    std::vector<ReviewedLot> lots;
    for (const LotRow& row : rows.lots) {
        if (!only.empty() && row.id != only)
            continue;
        ReviewedLot lot;
        lot.lot = &row;
        std::unordered_map<std::string_view, std::size_t> at;
        for (const LiftRow& lift : rows.lifts)
            if (lift.lot == row.id)
                lot.lifts.push_back({&lift, {}, Standing::Empty, {}, {}});
        std::sort(lot.lifts.begin(), lot.lifts.end(), [](const auto& a, const auto& b) { return a.lift->number > b.lift->number; });
        for (std::size_t i = 0; i < lot.lifts.size(); ++i) {
            at.emplace(lot.lifts[i].lift->id, i);
            lot.lifts[i].tally.required = row.testsPerLift;
        }
        lot.tally.required = row.testsPerLift * static_cast<int>(lot.lifts.size());
        const auto& tests = byLot[row.id];
        for (const TestRow* t : tests) {
            count(*t, lot.tally);
            if (const auto lift = at.find(t->lift); lift != at.end())
                count(*t, lot.lifts[lift->second].tally);
        }
        lot.tally.openFailures = RetestChains(tests, rows.metresPerGridUnit, rows.retestDistance).open();
        for (const TestRow* t : lot.tally.openFailures)
            if (const auto lift = at.find(t->lift); lift != at.end())
                lot.lifts[lift->second].tally.openFailures.push_back(t);
        lots.push_back(std::move(lot));
    }
    assignReviews(*all, rows, lots);
    if (auto done = findChanges(store, rows, lots); !done)
        return tl::unexpected(done.error());
    for (ReviewedLot& lot : lots) {
        judgeLifts(lot);
        judgeLot(lot);
    }
    return lots;
}

Result<void> mayReview(const PersonRow& reviewer, const std::string& name, const Tally& tally, ReviewWord said, const std::string& note)
{
    if (reviewer.role != "engineer")
        return refused("A review is sealed by an engineer; " + (reviewer.name.empty() ? "nobody" : reviewer.name) + " is sealed as " + (reviewer.role.empty() ? "none" : reviewer.role) + ".");
    if (said != ReviewWord::Accepted)
        return note.find_first_not_of(" \t\n") != std::string::npos
                   ? Result<void>()
                   : refused(std::string("The reason is missing: \"") + word(said) + "\" cannot be defended without one.");
    if (const std::string lacks = lacking(tally); !lacks.empty())
        return refused("The " + name + " cannot be accepted as it stands: " + lacks + ". Return it, or accept it with an exception and its reason.");
    return {};
}

}  // namespace groundcount::book
