#include "view/map_coverage.h"

#include "book/state_query.h"
#include "book/store.h"
#include "gis/lot_ground.h"
#include "method/site/alignment.h"
#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/standing_words.h"

#include <QCoreApplication>

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

void addCells(const gis::Coverage& coverage, int lift, map::MapVertex origin, map::MapScene& scene)
{
    for (const auto& cell : coverage.cells)
        for (const auto& area : cell.areas) {
            map::MapArea shape;
            shape.style = cell.answer == gis::SiteAnswer::Pass ? map::AreaStyle::Sublot : map::AreaStyle::OpenFailure;
            shape.rings.push_back(runOf(area.ring, origin));
            for (const auto& hole : area.holes)
                shape.rings.push_back(runOf(hole, origin));
            shape.lift = lift;
            scene.areas.push_back(std::move(shape));
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

Row rowOf(const gis::Coverage& c, const book::LotRow& lot, const Session& session)
{
    Row row;
    row.id = QString::fromStdString(lot.id);
    row.mark = c.failed.squareMetres() > 0 ? Mark::Fail : c.untested.squareMetres() > 0.005 * c.ground.squareMetres() ? Mark::Owed : Mark::Pass;
    row.title = CoverageWords::tr("Lot %1: %2 % passed, %3 % failed").arg(QString::fromStdString(lot.name), percent(c.passed, c.ground), percent(c.failed, c.ground));
    QString where;
    if (session.alignment())
        if (const auto foot = session.alignment()->locate(c.patch.centre.northFt, c.patch.centre.eastFt))
            where = CoverageWords::tr(" round %1").arg(stationOffsetText(foot->station.feet, foot->offsetRightFt));
    row.second = CoverageWords::tr("largest untested patch %1%2").arg(lengthText(c.patch.radius, session.job()), where);
    row.figure = percent(c.untested, c.ground);
    row.unit = QStringLiteral("%");
    row.word = CoverageWords::tr("untested");
    return row;
}

}  // namespace

std::vector<Row> addCoverage(Session& session, int liftNumber, map::MapVertex origin, map::MapScene& scene)
{
    std::vector<Row> rows;
    const Snapshot& all = session.snapshot();
    const auto lines = book::StateQuery(session.store()).alignments();
    for (const auto& lot : all.lots)
        for (const auto* lift : liftsOf(all, lot)) {
            if (lift->number != liftNumber)
                continue;
            const auto coverage = lines ? gis::liftCoverage(lot, *lift, all.job, *lines, all.tests) : Result<gis::Coverage>(tl::unexpected(lines.error()));
            if (!coverage) {
                rows.push_back(Row::ofWords(CoverageWords::tr("Lot %1").arg(QString::fromStdString(lot.name)), QString::fromStdString(coverage.error().what), {}));
                continue;
            }
            addCells(*coverage, liftNumber, origin, scene);
            if (coverage->cells.empty())
                if (const auto ground = gis::lotGround(lot, all.job, *lines))
                    scene.areas.push_back({map::AreaStyle::Untested, {runOf(ground->ring, origin)}, {}, liftNumber});
            if (coverage->patch.radius.metres() > 0)
                scene.rings.push_back({{coverage->patch.centre.eastFt - origin.east, coverage->patch.centre.northFt - origin.north}, coverage->patch.radius.metres(),
                                       CoverageWords::tr("untested %1").arg(lengthText(coverage->patch.radius, all.job)), false});
            rows.push_back(rowOf(*coverage, lot, session));
        }
    return rows;
}

}  // namespace groundcount::view
