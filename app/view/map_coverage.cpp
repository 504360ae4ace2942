#include "view/map_coverage.h"

#include "book/state_query.h"
#include "book/store.h"
#include "gis/lot_ground.h"
#include "method/site/alignment.h"
#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/standing_words.h"

#include <QCoreApplication>

#include <unordered_map>

namespace groundcount::view {
namespace {

class CoverageWords {
    Q_DECLARE_TR_FUNCTIONS(groundcount::view::CoverageWords)
};

map::MapRun runOf(const std::vector<method::PlanPoint>& ring, map::MapVertex origin)
{
    map::MapRun run;
    for (const auto& p : ring)
        run.push_back({p.eastFt - origin.east, p.northFt - origin.north});
    return run;
}

void addCells(const gis::Coverage& coverage, int lift, map::MapVertex origin, CoverageShown& shown)
{
    for (const auto& cell : coverage.cells)
        for (const auto& area : cell.areas) {
            map::MapArea shape;
            shape.style = cell.answer == gis::SiteAnswer::Pass ? map::AreaStyle::Sublot : map::AreaStyle::OpenFailure;
            shape.rings.push_back(runOf(area.ring, origin));
            for (const auto& hole : area.holes)
                shape.rings.push_back(runOf(hole, origin));
            shape.lift = lift;
            shown.areas.push_back(std::move(shape));
        }
}

QString lengthText(Length length, const book::JobRow& job)
{
    return job.gridUnit == "m" ? CoverageWords::tr("%1 m").arg(figureText(length.metres(), 0)) : CoverageWords::tr("%1 ft").arg(figureText(length.feet(), 0));
}

QString percent(gis::Surface part, gis::Surface whole)
{
    return figureText(100 * part.squareMetres() / whole.squareMetres(), 0);
}

Row rowOf(const gis::Coverage& c, const book::LotRow& lot, const CoverageAsk& ask)
{
    Row row;
    row.id = QString::fromStdString(lot.id);
    row.mark = c.failed.squareMetres() > 0 ? Mark::Fail : c.untested.squareMetres() > 0.005 * c.ground.squareMetres() ? Mark::Owed : Mark::Pass;
    row.title = CoverageWords::tr("Lot %1: %2 % passed, %3 % failed").arg(QString::fromStdString(lot.name), percent(c.passed, c.ground), percent(c.failed, c.ground));
    QString where;
    const auto* line = ask.along.of(lot);
    const auto& patch = c.patch.centre;
    if (const auto foot = line ? JobLines::footOn(*line, patch.northFt, patch.eastFt) : ask.along.nearest(patch.northFt, patch.eastFt))
        where = CoverageWords::tr(" round %1").arg(ask.along.words(*foot));
    row.second = CoverageWords::tr("largest untested patch %1%2").arg(lengthText(c.patch.radius, ask.job), where);
    row.figure = percent(c.untested, c.ground);
    row.unit = QStringLiteral("%");
    row.word = CoverageWords::tr("untested");
    return row;
}

}  // namespace

GroundTest::GroundTest(const book::TestRow& test)
    : id(test.id), number(test.number), lift(test.lift), retestOf(test.retestOf), verdictAt(test.verdictAt), state(test.state), north(test.north), east(test.east)
{
}

std::vector<book::TestRow> rowsOf(const std::vector<GroundTest>& tests)
{
    std::vector<book::TestRow> rows(tests.size());
    for (std::size_t i = 0; i < tests.size(); ++i) {
        rows[i].id = tests[i].id;
        rows[i].number = tests[i].number;
        rows[i].lift = tests[i].lift;
        rows[i].state = tests[i].state;
        rows[i].retestOf = tests[i].retestOf;
        rows[i].verdictAt = tests[i].verdictAt;
        rows[i].north = tests[i].north;
        rows[i].east = tests[i].east;
    }
    return rows;
}

CoverageAsk askCoverage(Session& session, int liftNumber, map::MapVertex origin)
{
    const Snapshot& all = session.snapshot();
    CoverageAsk ask{all.job, book::StateQuery(session.store()).alignments(), session.lines(), origin, liftNumber, {}};
    std::unordered_map<std::string, std::size_t> partOf;
    for (const auto& lot : all.lots)
        for (const auto* lift : liftsOf(all, lot))
            if (lift->number == liftNumber) {
                partOf.emplace(lift->id, ask.parts.size());
                ask.parts.push_back({lot, *lift, {}});
            }
    for (const auto& test : all.tests) {
        const auto part = test.liftNumber == liftNumber ? partOf.find(test.lift) : partOf.end();
        if (part == partOf.end())
            continue;
        ask.parts[part->second].tests.emplace_back(test);
    }
    return ask;
}

CoverageShown workOut(const CoverageAsk& ask, const std::atomic<bool>& stop)
{
    CoverageShown shown;
    for (const auto& [lot, lift, tests] : ask.parts) {
        if (stop)
            return {};
        const auto coverage = ask.lines ? gis::liftCoverage(lot, lift, ask.job, *ask.lines, rowsOf(tests)) : Result<gis::Coverage>(tl::unexpected(ask.lines.error()));
        if (!coverage) {
            shown.rows.push_back(Row::ofWords(CoverageWords::tr("Lot %1").arg(QString::fromStdString(lot.name)), QString::fromStdString(coverage.error().what), {}));
            continue;
        }
        addCells(*coverage, ask.liftNumber, ask.origin, shown);
        if (coverage->cells.empty())
            if (const auto ground = gis::lotGround(lot, ask.job, *ask.lines))
                shown.areas.push_back({map::AreaStyle::Untested, {runOf(ground->ring, ask.origin)}, {}, ask.liftNumber});
        if (coverage->patch.radius.metres() > 0)
            shown.rings.push_back({{coverage->patch.centre.eastFt - ask.origin.east, coverage->patch.centre.northFt - ask.origin.north}, coverage->patch.radius.metres(),
                                   CoverageWords::tr("untested %1").arg(lengthText(coverage->patch.radius, ask.job)), false});
        shown.rows.push_back(rowOf(*coverage, lot, ask));
    }
    return shown;
}

}  // namespace groundcount::view
