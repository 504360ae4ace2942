#include "book/engineer_review.h"
#include "book/job_rules.h"
#include "book/local_time.h"
#include "book/lot_statistics.h"
#include "book/review.h"
#include "book/state_query.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/failure_ground.h"
#include "method/decimal.h"

#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

struct ReviewOptions {
    std::string book, lot, say, note, by, key;
    int lift = 0;
    bool json = false;
};

/// Everything that a review reads, with the rows that it points to.
struct Desk {
    book::JobRow job;
    std::vector<book::LotRow> lots;
    std::vector<book::LiftRow> lifts;
    std::vector<book::TestRow> tests;
    std::vector<book::AlignmentRow> lines;
    std::vector<book::ReviewedLot> reviewed;
    std::vector<book::UnusualLine> unusual;
};

template <class T>
bool take(Result<T> answer, T& into, std::optional<Error>& trouble)
{
    if (!answer)
        trouble = answer.error();
    else
        into = std::move(*answer);
    return answer.has_value();
}

Result<void> read(const book::Store& store, const std::string& lotName, Desk& desk)
{
    const book::StateQuery query(store);
    std::optional<Error> trouble;
    method::RuleSet rules;
    book::StatisticsRules statistics;
    const bool isRead = take(query.job(), desk.job, trouble) && take(query.lots(), desk.lots, trouble) && take(query.lifts(""), desk.lifts, trouble)
        && take(query.tests({}), desk.tests, trouble) && take(query.alignments(), desk.lines, trouble) && take(book::jobRules(store), rules, trouble)
        && take(book::statisticsRules(rules), statistics, trouble) && take(book::unusual(store, rules), desk.unusual, trouble);
    if (!isRead)
        return tl::unexpected(*trouble);
    std::string only;
    for (const auto& lot : desk.lots)
        if (lot.name == lotName)
            only = lot.id;
    if (only.empty() && !lotName.empty())
        return refused("There is no lot \"" + lotName + "\" in the book.");
    auto lots = book::reviewedLots(store, {desk.lots, desk.lifts, desk.tests, desk.job.metresPerGridUnit, statistics.retestDistance}, only);
    if (!lots)
        return tl::unexpected(lots.error());
    desk.reviewed = std::move(*lots);
    return {};
}

std::string surfaceText(gis::Surface surface, const book::JobRow& job)
{
    return job.gridUnit == "m" ? reportedText(surface.squareMetres(), 0, TieRule::HalfEven) + " m2" : reportedText(surface.squareFeet(), 0, TieRule::HalfEven) + " ft2";
}

std::string ageText(const std::string& since, const std::string& until)
{
    const auto minutes = (book::millisecondsOf(until) - book::millisecondsOf(since)) / 60'000;
    return minutes < 120 ? std::to_string(minutes) + " min" : minutes < 48 * 60 ? std::to_string(minutes / 60) + " h" : std::to_string(minutes / 1440) + " days";
}

std::string failuresText(const Desk& desk, const book::ReviewedLot& lot, const std::string& at)
{
    std::string out;
    for (const auto& lift : lot.lifts) {
        if (lift.tally.openFailures.empty())
            continue;
        const auto ground = gis::failureGround(*lot.lot, *lift.lift, desk.job, desk.lines, desk.tests);
        for (const auto* t : lift.tally.openFailures) {
            const auto area = ground.find(t->number);
            out += "\n  open: test " + t->number + ", lift " + std::to_string(lift.lift->number) + ", " + t->compactionPct + " %, since " + t->verdictAt + " (" + ageText(t->verdictAt, at) + "), "
                   + (area == ground.end() ? std::string("area not known") : surfaceText(area->second, desk.job));
        }
    }
    return out;
}

std::string textOf(const Desk& desk, const book::ReviewedLot& lot, const std::string& at)
{
    std::string out = "Lot " + lot.lot->name + ": " + book::word(lot.standing) + ". " + lot.reason;
    for (const auto& lift : lot.lifts)
        out += "\n  lift " + std::to_string(lift.lift->number) + ": " + book::word(lift.standing) + ". " + lift.reason;
    out += failuresText(desk, lot, at);
    for (const auto& change : lot.changes)
        out += "\n  since the review: " + change.at + "  " + change.kind + (change.test.empty() ? "" : " of test " + change.test) + " by "
               + (change.byName.empty() ? "a person not in this book" : change.byName) + (change.reason.empty() ? "" : ", why: " + change.reason) + "  " + change.hash.substr(0, 8);
    for (const auto& line : desk.unusual)
        if (line.lot == lot.lot->id)
            out += "\n  unusual: test " + line.number + ", " + book::word(line.kind) + ". " + line.what;
    return out;
}

nlohmann::ordered_json reviewJson(const std::optional<book::ReviewLine>& review)
{
    if (!review)
        return nullptr;
    return {{"word", book::word(review->word)}, {"by", review->byName}, {"at", review->at}, {"note", review->note}, {"hash", review->hash}};
}

template <class Part>
nlohmann::ordered_json partJson(const Part& part)
{
    nlohmann::ordered_json open = nlohmann::ordered_json::array();
    for (const auto* t : part.tally.openFailures)
        open.push_back(t->number);
    return {{"standing", book::word(part.standing)}, {"reason", part.reason}, {"required", part.tally.required}, {"made", part.tally.made},
            {"owed", part.tally.owed()}, {"unfinished", part.tally.unfinished}, {"open_failures", open}, {"review", reviewJson(part.review)}};
}

nlohmann::ordered_json jsonOf(const Desk& desk, const book::ReviewedLot& lot)
{
    nlohmann::ordered_json out{{"lot", lot.lot->name}};
    out.update(partJson(lot));
    auto& lifts = out["lifts"] = nlohmann::ordered_json::array();
    for (const auto& lift : lot.lifts) {
        nlohmann::ordered_json one{{"lift", lift.lift->number}};
        one.update(partJson(lift));
        auto& areas = one["failed_m2"] = nlohmann::ordered_json::object();
        for (const auto& [number, surface] : gis::failureGround(*lot.lot, *lift.lift, desk.job, desk.lines, desk.tests))
            areas[number] = surface.squareMetres();
        lifts.push_back(one);
    }
    auto& changes = out["changes"] = nlohmann::ordered_json::array();
    for (const auto& c : lot.changes)
        changes.push_back({{"kind", c.kind}, {"test", c.test}, {"by", c.byName}, {"at", c.at}, {"hash", c.hash}, {"why", c.reason}});
    auto& unusual = out["unusual"] = nlohmann::ordered_json::array();
    for (const auto& line : desk.unusual)
        if (line.lot == lot.lot->id)
            unusual.push_back({{"test", line.number}, {"kind", book::word(line.kind)}, {"what", line.what}});
    return out;
}

Result<book::Record> say(const ReviewOptions& options)
{
    auto store = openToWrite(options.book, options.key);
    if (!store)
        return tl::unexpected(store.error());
    if (options.lot.empty())
        return refused("A review speaks of one lot; name it with --lot.");
    Desk desk;
    if (auto done = read(*store, options.lot, desk); !done)
        return tl::unexpected(done.error());
    const auto& lot = desk.reviewed.front();
    std::string subject = lot.lot->id, name = "lot " + lot.lot->name;
    const book::Tally* tally = &lot.tally;
    if (options.lift != 0) {
        const auto lift = std::find_if(lot.lifts.begin(), lot.lifts.end(), [&](const auto& l) { return l.lift->number == options.lift; });
        if (lift == lot.lifts.end())
            return refused("Lot " + lot.lot->name + " has no lift " + std::to_string(options.lift) + ".");
        subject = lift->lift->id;
        name = "lift " + std::to_string(options.lift) + " of " + name;
        tally = &lift->tally;
    }
    const auto people = book::StateQuery(*store).people();
    const auto by = personCalled(*store, options.by);
    if (!people || !by)
        return tl::unexpected(people ? by.error() : people.error());
    const auto person = std::find_if(people->begin(), people->end(), [&](const auto& p) { return p.id == *by; });
    const auto said = options.say == "accepted" ? book::ReviewWord::Accepted : options.say == "returned" ? book::ReviewWord::Returned : book::ReviewWord::AcceptedWithException;
    if (auto may = book::mayReview(*person, name, *tally, said, options.note); !may)
        return tl::unexpected(may.error());
    const auto body = book::reviewBody(*store, said, options.note);
    if (!body)
        return tl::unexpected(body.error());
    const auto [at, offset] = now();
    book::Entry entry;
    entry.kind = "review";
    entry.subject = subject;
    entry.by = *by;
    entry.at = at;
    entry.offsetMinutes = offset;
    entry.body = *body;
    return store->seal(entry);
}

Result<std::string> shown(const ReviewOptions& options, bool& damaged)
{
    const auto store = openToRead(options.book);
    if (!store)
        return tl::unexpected(store.error());
    damaged = !store->damage().empty();
    Desk desk;
    if (auto done = read(*store, options.lot, desk); !done)
        return tl::unexpected(done.error());
    std::string out;
    auto list = nlohmann::ordered_json::array();
    for (const auto& lot : desk.reviewed)
        if (options.json)
            list.push_back(jsonOf(desk, lot));
        else
            out += (out.empty() ? "" : "\n") + textOf(desk, lot, now().at);
    return options.json ? list.dump(2) : out.empty() ? "The book has no lots." : out;
}

}  // namespace

void addReview(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("review", "Show where each lot stands for acceptance, and seal the engineer's word");
    auto options = std::make_shared<ReviewOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("--lot", options->lot, "Name of one lot")->type_name("NAME");
    verb->add_option("--lift", options->lift, "Number of one lift, to seal a word on it alone")->type_name("NUMBER")->check(CLI::PositiveNumber);
    verb->add_option("--say", options->say, "Seal this word on the lot or lift: accepted, returned or exception")->check(CLI::IsMember({"accepted", "returned", "exception"}));
    verb->add_option("--note", options->note, "Reason; needed for returned and exception");
    verb->add_option("--by", options->by, "Name of the engineer who says it");
    verb->add_option("--key", options->key, "This device's key file")->type_name("FILE");
    verb->add_flag("--json", options->json, "As JSON");
    verb->footer("Accepting is refused while a failure is open or a test is owed or unfinished: return it, or accept it with an exception\n"
                 "and its reason. A review keeps what the reviewer's book held; what came after, also from another device, is listed.");
    verb->callback([options, &status] {
        if (!options->say.empty()) {
            const auto sealed = say(*options);
            status = sealed ? kDone : refuse(sealed.error());
            if (sealed)
                print("Sealed: " + sealed->body.at("word").get<std::string>() + ", record " + sealed->hash.substr(0, 12) + ".");
            return;
        }
        bool damaged = false;
        const auto answer = shown(*options, damaged);
        status = !answer ? refuse(answer.error()) : damaged ? kRefused : kDone;
        if (answer)
            print(*answer);
    });
}

}  // namespace groundcount::command
