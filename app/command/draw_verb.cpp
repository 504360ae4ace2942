#include "book/job_rules.h"
#include "book/kinds.h"
#include "book/state_query.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/lot_draw.h"

#include <algorithm>
#include <memory>
#include <random>

namespace groundcount::command {
namespace {

struct DrawOptions {
    std::string book, lot, by, key;
    int lift = 0, sites = 0;
    double edgeFt = 0;
    std::uint64_t seed = 0;
    bool seal = false, json = false;
};

std::string asText(const book::Body& body)
{
    std::string out = "Seed " + book::textAt(body, "seed") + ", " + book::textAt(body, "generator") + "; " + book::textAt(body, "policy") + "\n";
    Columns table({Align::Left, Align::Right, Align::Right, Align::Right, Align::Right, Align::Left});
    table.add({"", "r along", "r across", "station", "offset ft", ""});
    for (const auto& site : body.at("sites"))
        table.add({"site " + std::to_string(site.at("number").get<int>()), book::textAt(site, "r_along"), book::textAt(site, "r_across"), book::textAt(site, "station"), book::textAt(site, "offset_ft"), ""});
    for (const auto& site : body.at("rejected"))
        table.add({"rejected", book::textAt(site, "r_along"), book::textAt(site, "r_across"), book::textAt(site, "station"), book::textAt(site, "offset_ft"), book::textAt(site, "why")});
    return out + table.text();
}

Result<book::Body> drawn(const book::Store& store, const DrawOptions& options)
{
    const book::StateQuery query(store);
    const auto job = query.job();
    const auto lots = query.lots();
    const auto lifts = query.lifts("");
    const auto lines = query.alignments();
    const auto obstacles = query.obstacles();
    const auto rules = book::jobRules(store);
    for (const auto* error : {job ? nullptr : &job.error(), lots ? nullptr : &lots.error(), lifts ? nullptr : &lifts.error(), lines ? nullptr : &lines.error(),
                              obstacles ? nullptr : &obstacles.error(), rules ? nullptr : &rules.error()})
        if (error)
            return tl::unexpected(*error);
    const auto lot = std::find_if(lots->begin(), lots->end(), [&](const auto& l) { return l.name == options.lot; });
    if (lot == lots->end())
        return refused("There is no lot \"" + options.lot + "\" in the book.");
    const auto lift = std::find_if(lifts->begin(), lifts->end(), [&](const auto& l) { return l.lot == lot->id && l.number == options.lift; });
    if (lift == lifts->end())
        return refused("Lot " + lot->name + " has no lift " + std::to_string(options.lift) + ".");
    return gis::drawLot(*lot, lift->id, {*job, *lines, *obstacles, *rules}, {options.sites > 0 ? options.sites : lot->testsPerLift, Length::feet(options.edgeFt), options.seed});
}

Result<std::string> draw(const DrawOptions& options)
{
    auto store = options.seal ? openToWrite(options.book, options.key) : openToRead(options.book);
    if (!store)
        return tl::unexpected(store.error());
    const auto body = drawn(*store, options);
    if (!body)
        return tl::unexpected(body.error());
    std::string out = options.json ? body->dump(2) : asText(*body);
    if (!options.seal)
        return out;
    const auto by = personCalled(*store, options.by);
    if (!by)
        return tl::unexpected(by.error());
    const auto [at, offset] = now();
    book::Entry entry;
    entry.kind = "draw";
    entry.subject = book::newSubject();
    entry.by = *by;
    entry.at = at;
    entry.offsetMinutes = offset;
    entry.body = *body;
    const auto sealed = store->seal(entry);
    if (!sealed)
        return tl::unexpected(sealed.error());
    return out + (options.json ? "" : "\nSealed: record " + sealed->hash.substr(0, 12) + ".");
}

}  // namespace

void addDraw(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("draw", "Draw random sites for a lift of a lot, keeping the seed and every rejected draw");
    auto options = std::make_shared<DrawOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("--lot", options->lot, "Name of the lot")->type_name("NAME")->required();
    verb->add_option("--lift", options->lift, "Number of the lift")->type_name("NUMBER")->required();
    verb->add_option("--sites", options->sites, "How many; without it the lot's tests per lift")->check(CLI::Range(1, 1000));
    verb->add_option("--edge", options->edgeFt, "Strip along each edge where nothing is tested, in feet")->check(CLI::NonNegativeNumber);
    auto* seed = verb->add_option("--seed", options->seed, "Seed of the random numbers; without it the machine gives one");
    verb->add_flag("--seal", options->seal, "Seal the draw into the book; without it the sites are only shown");
    verb->add_option("--by", options->by, "Name of the person who seals");
    verb->add_option("--key", options->key, "This device's key file")->type_name("FILE");
    verb->add_flag("--json", options->json, "As JSON, the body of the record");
    verb->footer("Along a lot given by stations each sublot gets as many sites; over an area every point has the same chance. A draw inside\n"
                 "an edge strip or nearer to an obstacle than the rule set's clearance is rejected, kept, and drawn again.");
    verb->callback([options, seed, &status] {
        if (seed->count() == 0) {
            std::random_device random;
            options->seed = (static_cast<std::uint64_t>(random()) << 32) | random();
        }
        const auto answer = draw(*options);
        status = answer ? kDone : refuse(answer.error());
        if (answer)
            print(*answer);
    });
}

}  // namespace groundcount::command
