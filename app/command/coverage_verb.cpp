#include "book/state_query.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/lot_ground.h"

#include <cstdio>
#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

struct CoverageOptions {
    std::string book, lot;
    int lift = 0;
    bool json = false;
};

struct LiftAnswer {
    book::LotRow lot;
    book::LiftRow lift;
    std::vector<gis::CoverageSite> sites;
    Result<gis::Coverage> coverage;
};

std::string fixed(double value, int places)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", places, value);
    return text;
}

/// Figures in the job's own measure: metres for a metric grid, else international feet.
class Measure {
public:
    explicit Measure(const book::JobRow& job) : m_metric(job.gridUnit == "m") {}
    std::string of(Length length) const { return m_metric ? fixed(length.metres(), 1) + " m" : fixed(length.feet(), 1) + " ft"; }
    std::string of(gis::Surface surface) const
    {
        return m_metric ? fixed(surface.squareMetres(), 1) + " m2" : fixed(surface.squareFeet(), 0) + " ft2";
    }

private:
    bool m_metric;
};

std::string place(method::PlanPoint point)
{
    return "north " + fixed(point.northFt, 2) + ", east " + fixed(point.eastFt, 2);
}

std::string text(const LiftAnswer& answer, const Measure& measure)
{
    std::string head = "Lot " + answer.lot.name + ", lift " + std::to_string(answer.lift.number) + ": ";
    if (!answer.coverage)
        return head + answer.coverage.error().what;
    const gis::Coverage& c = *answer.coverage;
    const auto part = [&](gis::Surface s) { return measure.of(s) + " (" + fixed(100 * s.squareMetres() / c.ground.squareMetres(), 1) + " %)"; };
    head += std::to_string(answer.sites.size() - c.outside.size()) + " of " + std::to_string(answer.lot.testsPerLift) + " tests speak for "
            + measure.of(c.ground) + "; each may stand for " + measure.of(c.share) + "\n";
    head += "  passed " + part(c.passed) + ", failed " + part(c.failed) + ", untested " + part(c.untested) + "\n";
    head += "  largest untested patch: " + measure.of(c.patch.radius) + " round " + place(c.patch.centre);
    if (!c.cells.empty())
        head += "\n  farthest ground: " + measure.of(c.farthest.radius) + " from a test, at " + place(c.farthest.centre);
    for (const std::size_t i : c.outside)
        head += "\n  test " + answer.sites[i].number + " lies off the lot and stands for none of it";
    if (c.cells.empty())
        return head;
    Columns columns({Align::Left, Align::Left, Align::Right, Align::Right});
    for (const auto& cell : c.cells) {
        std::string numbers;
        for (const std::size_t i : cell.sites)
            numbers += (numbers.empty() ? "  test " : ", ") + answer.sites[i].number;
        columns.add({numbers, cell.answer == gis::SiteAnswer::Pass ? "pass" : "fail", measure.of(cell.surface),
                     cell.beyondShare.squareMetres() > 0 ? measure.of(cell.beyondShare) + " beyond its share" : ""});
    }
    return head + "\n" + columns.text();
}

nlohmann::json json(const LiftAnswer& answer)
{
    nlohmann::json out{{"lot", answer.lot.name}, {"lift", answer.lift.number}, {"tests_per_lift", answer.lot.testsPerLift}};
    if (!answer.coverage) {
        out["refused"] = answer.coverage.error().what;
        return out;
    }
    const gis::Coverage& c = *answer.coverage;
    const auto circle = [](const gis::GroundCircle& g) {
        return nlohmann::json{{"grid_north", g.centre.northFt}, {"grid_east", g.centre.eastFt}, {"radius_m", g.radius.metres()}};
    };
    out["ground_m2"] = c.ground.squareMetres();
    out["share_m2"] = c.share.squareMetres();
    out["passed_m2"] = c.passed.squareMetres();
    out["failed_m2"] = c.failed.squareMetres();
    out["untested_m2"] = c.untested.squareMetres();
    out["patch"] = circle(c.patch);
    if (!c.cells.empty())
        out["farthest"] = circle(c.farthest);
    out["outside"] = nlohmann::json::array();
    for (const std::size_t i : c.outside)
        out["outside"].push_back(answer.sites[i].number);
    out["cells"] = nlohmann::json::array();
    const auto ring = [](const std::vector<method::PlanPoint>& points) {
        auto list = nlohmann::json::array();
        for (const auto& p : points)
            list.push_back({p.northFt, p.eastFt});
        return list;
    };
    for (const auto& cell : c.cells) {
        nlohmann::json one{{"answer", cell.answer == gis::SiteAnswer::Pass ? "pass" : "fail"}, {"surface_m2", cell.surface.squareMetres()},
                           {"beyond_share_m2", cell.beyondShare.squareMetres()}, {"tests", nlohmann::json::array()}, {"areas_north_east", nlohmann::json::array()}};
        for (const std::size_t i : cell.sites)
            one["tests"].push_back(answer.sites[i].number);
        for (const auto& area : cell.areas) {
            auto rings = nlohmann::json::array({ring(area.ring)});
            for (const auto& hole : area.holes)
                rings.push_back(ring(hole));
            one["areas_north_east"].push_back(rings);
        }
        out["cells"].push_back(one);
    }
    return out;
}

Result<std::string> answers(const CoverageOptions& options)
{
    const auto store = openToRead(options.book);
    if (!store)
        return tl::unexpected(store.error());
    const book::StateQuery query(*store);
    const auto job = query.job();
    const auto lots = query.lots();
    const auto lifts = query.lifts({});
    const auto lines = query.alignments();
    const auto tests = query.tests({});
    for (const auto* error : {job ? nullptr : &job.error(), lots ? nullptr : &lots.error(), lifts ? nullptr : &lifts.error(),
                              lines ? nullptr : &lines.error(), tests ? nullptr : &tests.error()})
        if (error)
            return tl::unexpected(*error);
    std::string out;
    auto list = nlohmann::json::array();
    for (const auto& lot : *lots)
        for (const auto& lift : *lifts) {
            if (lift.lot != lot.id || (!options.lot.empty() && lot.name != options.lot) || (options.lift != 0 && lift.number != options.lift))
                continue;
            const LiftAnswer answer{lot, lift, gis::speakingTests(*tests, lift.id), gis::liftCoverage(lot, lift, *job, *lines, *tests)};
            out += (out.empty() ? "" : "\n") + text(answer, Measure(*job));
            list.push_back(json(answer));
        }
    if (list.empty())
        return refused("The book has no lift" + (options.lot.empty() ? std::string() : " of a lot \"" + options.lot + "\"")
                       + (options.lift == 0 ? "" : " with number " + std::to_string(options.lift)) + " to cover.");
    return options.json ? list.dump(1) : out;
}

}  // namespace

void addCoverage(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("coverage", "Tell what ground each lift's tests stand for and what is untested");
    auto options = std::make_shared<CoverageOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("--lot", options->lot, "Only the lot of this name")->type_name("NAME");
    verb->add_option("--lift", options->lift, "Only the lift of this number")->type_name("NUMBER");
    verb->add_flag("--json", options->json, "Print JSON: figures in metres, shapes in the job's grid");
    verb->footer("A test stands for the ground nearest to it, at most the lot's area over its tests per lift. A failed test speaks\n"
                 "until its retest has a verdict. The largest patch is a circle within the lot without a test in it. Between tests\n"
                 "nothing is known: the specification and the engineer decide how many are enough.");
    verb->callback([options, &status] {
        const auto answer = answers(*options);
        status = answer ? kDone : refuse(answer.error());
        if (answer)
            print(*answer);
    });
}

}  // namespace groundcount::command
