#include "view/whereabouts.h"

#include "gis/lot_ground.h"
#include "method/accept/draw.h"
#include "view/figure_text.h"

namespace groundcount::view {
namespace {

bool holds(const book::LotRow& lot, double station, double offset)
{
    return isByStations(lot) && station >= *lot.beginStationFt && station <= *lot.endStationFt && (!lot.leftFt || offset >= -*lot.leftFt)
           && (!lot.rightFt || offset <= *lot.rightFt);
}

bool encloses(const book::LotRow& lot, const book::JobRow& job, method::PlanPoint point)
{
    if (lot.area.empty())
        return false;
    const auto ground = gis::lotGround(lot, job, {});
    return ground && method::insideArea(*ground, point, 0);
}

}  // namespace

bool isByStations(const book::LotRow& lot)
{
    return lot.area.empty() && lot.beginStationFt && lot.endStationFt;
}

Whereabouts whereaboutsOf(const Session& session, double north, double east)
{
    Whereabouts where;
    const auto stand = [&](const Result<LineFoot>& foot) {
        if (!foot)
            return;
        where.line = foot->line;
        where.stationFt = foot->stationFt;
        where.offsetRightFt = foot->offsetRightFt;
    };
    stand(session.lines().nearest(north, east));
    for (const auto& lot : session.snapshot().lots) {
        const JobLine* line = isByStations(lot) ? session.lines().of(lot) : nullptr;
        const auto foot = line ? JobLines::footOn(*line, north, east) : Result<LineFoot>(refused(""));
        if (foot && holds(lot, foot->stationFt, foot->offsetRightFt)) {
            where.lot = lot;
            stand(foot);
        } else if (encloses(lot, session.job(), {north, east})) {
            where.lot = lot;
        }
    }
    return where;
}

Whereabouts whereaboutsOn(const Session& session, const JobLine& line, double stationFt, double offsetRightFt, std::optional<method::PlanPoint> point)
{
    Whereabouts where{{}, &line, stationFt, offsetRightFt};
    for (const auto& lot : session.snapshot().lots)
        if ((session.lines().of(lot) == &line && holds(lot, stationFt, offsetRightFt)) || (point && encloses(lot, session.job(), *point)))
            where.lot = lot;
    return where;
}

QString siteWords(const book::SiteRow& site)
{
    return site.stationFt ? stationOffsetText(site.stationFt, site.offsetFt) : QStringLiteral("N %1, E %2").arg(figureText(site.north, 0), figureText(site.east, 0));
}

}  // namespace groundcount::view
