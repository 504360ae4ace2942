#include "view/map_content.h"

#include "book/test_columns.h"
#include "gis/lot_ground.h"
#include "method/site/station.h"
#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/map_points.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

constexpr double kSampleFt = 10;  // an arc of 900 ft radius is drawn within 0.02 ft

class Content {
public:
    Content(const Session& session, int liftNumber)
        : m_session(session), m_all(session.snapshot()), m_byLift(m_all), m_lift(liftNumber), m_origin(sceneOrigin(session))
    {
    }

    std::shared_ptr<map::MapScene> scene()
    {
        auto scene = std::make_shared<map::MapScene>();
        m_scene = scene.get();
        m_scene->metresPerUnit = m_session.metresPerGridUnit();
        m_scene->unitName = m_all.job.gridUnit == "m" ? QStringLiteral("m") : QStringLiteral("ft");
        for (const auto& line : m_session.lines().all())
            alignment(line);
        for (const auto& lot : m_all.lots)
            addLot(lot);
        obstacles();
        addPoints(*m_scene, m_session, m_origin);
        return scene;
    }

private:
    map::MapVertex vertex(double east, double north) const { return {east - m_origin.east, north - m_origin.north}; }

    std::optional<map::MapVertex> at(const method::Alignment& line, double stationFt, double offsetRightFt) const
    {
        const auto point = line.at(stationFt, offsetRightFt);
        if (!point)
            return std::nullopt;
        return vertex(point->eastFt, point->northFt);
    }

    map::MapRun run(const method::Alignment& line, double fromFt, double toFt, double offsetRightFt) const
    {
        map::MapRun points;
        const int steps = std::max(1, static_cast<int>(std::ceil(std::fabs(toFt - fromFt) / kSampleFt)));
        for (int i = 0; i <= steps; ++i) {
            if (const auto v = at(line, fromFt + (toFt - fromFt) * i / steps, offsetRightFt))
                points.push_back(*v);
        }
        return points;
    }

    void alignment(const JobLine& one)
    {
        const auto& line = one.line;
        const double begin = line.stations().beginFt();
        const double end = begin + line.lengthFt();
        m_scene->lines.push_back({map::LineStyle::Alignment, run(line, begin, end, 0)});
        if (m_session.lines().all().size() > 1 && !m_scene->lines.back().run.empty())
            m_scene->labels.push_back({m_scene->lines.back().run.back(), one.name});
        double corridor = 0;
        for (const auto& lot : m_all.lots)
            if (m_session.lines().of(lot) == &one)
                corridor = std::max(corridor, lot.rightFt.value_or(0));
        for (double s = std::ceil(begin / 50) * 50; s <= end; s += 50) {
            const auto v = at(line, s, 0);
            const auto azimuth = line.azimuthDeg(s);
            if (!v || !azimuth)
                continue;
            const bool whole = std::fmod(s, 100) == 0;
            m_scene->stations.push_back({*v, *azimuth, whole ? QString::fromStdString(method::stationText(s, 100.0, 0)) : QString(), corridor + 12});
        }
    }

    map::MapRun ring(const method::Alignment& line, double fromFt, double toFt, const book::LotRow& lot) const
    {
        map::MapRun left = run(line, fromFt, toFt, -lot.leftFt.value_or(0));
        const map::MapRun right = run(line, toFt, fromFt, lot.rightFt.value_or(0));
        left.insert(left.end(), right.begin(), right.end());
        return left;
    }

    /// A lot whose corners are sealed, as out of a site file.
    void addArea(const book::LotRow& lot, bool chosen)
    {
        const auto ground = gis::lotGround(lot, m_all.job, {});
        if (!ground)
            return;  // the lot's own page has the sentence
        map::MapArea area{chosen ? map::AreaStyle::ChosenLot : map::AreaStyle::Lot, {corners(ground->ring)}, QString::fromStdString(lot.name), map::kEveryLift};
        for (const auto& hole : ground->holes)
            area.rings.push_back(corners(hole));
        m_scene->areas.push_back(std::move(area));
    }

    map::MapRun corners(const std::vector<method::PlanPoint>& points) const
    {
        map::MapRun out;
        for (const auto& p : points)
            out.push_back(vertex(p.eastFt, p.northFt));
        return out;
    }

    void addLot(const book::LotRow& lot)
    {
        if (!lot.area.empty()) {
            const auto lifts = liftsOf(m_all, lot);
            addArea(lot, std::any_of(lifts.begin(), lifts.end(), [&](const auto* lift) { return lift->number == m_lift; }));
            return;
        }
        const JobLine* named = m_session.lines().of(lot);
        if (!named || !lot.beginStationFt || !lot.endStationFt || !lot.leftFt || !lot.rightFt)
            return;
        const method::Alignment& line = named->line;
        const book::LiftRow* lift = nullptr;
        for (const auto* one : liftsOf(m_all, lot)) {
            if (one->number == m_lift)
                lift = one;
        }
        const int sublots = std::max(1, lot.sublots);
        if (lift && !m_session.isReading()) {
            const LiftState state = liftState(m_all, m_byLift, lot, *lift);
            for (int i = 0; i < sublots; ++i) {
                const auto inside = [&](const std::optional<double>& station) { return station && sublotOf(lot, *station) == i; };
                const bool failed = std::any_of(state.openFailures.begin(), state.openFailures.end(), [&](const auto* t) { return inside(t->stationFt); });
                const bool tested = std::any_of(state.tests.begin(), state.tests.end(), [&](const auto* t) { return inside(t->stationFt); });
                if (failed || !tested)
                    m_scene->areas.push_back({failed ? map::AreaStyle::OpenFailure : map::AreaStyle::Untested,
                                              {ring(line, sublotBegin(lot, i), sublotBegin(lot, i + 1), lot)}, {}, m_lift});
            }
        }
        for (int i = 0; i < sublots && sublots > 1; ++i)
            m_scene->areas.push_back({map::AreaStyle::Sublot, {ring(line, sublotBegin(lot, i), sublotBegin(lot, i + 1), lot)}, {}, map::kEveryLift});
        m_scene->areas.push_back({lift ? map::AreaStyle::ChosenLot : map::AreaStyle::Lot,
                                  {ring(line, *lot.beginStationFt, *lot.endStationFt, lot)}, QString::fromStdString(lot.name), map::kEveryLift});
    }

    void obstacles()
    {
        for (const auto& o : m_all.obstacles) {
            map::MapObstacle item;
            item.kind = o.obstacleKind == "vehicle" ? map::ObstacleKind::Vehicle
                        : o.obstacleKind == "gauge" ? map::ObstacleKind::Gauge
                        : o.obstacleKind == "structure" || o.obstacleKind == "wall" ? map::ObstacleKind::Structure : map::ObstacleKind::Other;
            item.outline = {vertex(o.east, o.north)};
            if (const auto path = gis::obstaclePath(o, m_all.job); path && path->size() > 1) {
                const map::MapRun line = corners(*path);
                if (o.closed && line.size() > 2) {
                    item.outline = line;
                } else {
                    m_scene->lines.push_back({map::LineStyle::Edge, line});
                    item.outline = {line[line.size() / 2]};
                }
            }
            item.label = QString::fromStdString(o.name);
            item.id = QString::fromStdString(o.id);
            m_scene->obstacles.push_back(std::move(item));
        }
    }

    const Session& m_session;
    const Snapshot& m_all;
    TestsByLift m_byLift;
    int m_lift;
    map::MapVertex m_origin;
    map::MapScene* m_scene = nullptr;
};

}  // namespace

map::MapVertex sceneOrigin(const Session& session)
{
    for (const auto& one : session.lines().all()) {
        if (const auto begin = one.line.at(one.line.stations().beginFt(), 0))
            return {begin->eastFt, begin->northFt};
    }
    for (const auto& lot : session.snapshot().lots) {
        if (const auto ground = gis::lotGround(lot, session.job(), {}); ground && !ground->ring.empty())
            return {ground->ring.front().eastFt, ground->ring.front().northFt};
    }
    for (const auto& test : session.snapshot().tests) {
        if (test.north != 0 || test.east != 0)
            return {test.east, test.north};
    }
    const auto* columns = session.columns();
    for (std::size_t i = 0; columns && i < columns->size(); ++i) {
        if (std::isfinite(columns->east[i]) && std::isfinite(columns->north[i]))
            return {columns->east[i], columns->north[i]};
    }
    return {};
}

std::shared_ptr<map::MapScene> mapContent(const Session& session, int liftNumber)
{
    return Content(session, liftNumber).scene();
}

}  // namespace groundcount::view
