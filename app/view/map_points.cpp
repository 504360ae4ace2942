#include "view/map_points.h"

#include "book/test_columns.h"
#include "view/lot_state.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

map::PointState pointState(book::TestState state)
{
    switch (state) {
    case book::TestState::Pass: return map::PointState::Pass;
    case book::TestState::Fail: return map::PointState::Fail;
    case book::TestState::InformationOnly: return map::PointState::InformationOnly;
    case book::TestState::Void: return map::PointState::Void;
    case book::TestState::Open:
    case book::TestState::Waiting: break;
    }
    return map::PointState::Waiting;
}

class Points {
public:
    Points(map::MapScene& scene, const Session& session, map::MapVertex origin) : m_scene(&scene), m_session(session), m_all(session.snapshot()), m_origin(origin) {}

    void tests()
    {
        m_scene->points.reserve(m_all.tests.size());
        m_scene->names.reserve(m_all.tests.size());
        for (const auto& test : m_all.tests) {
            if (test.north == 0 && test.east == 0)
                continue;  // sealed without a place: nothing to draw
            m_scene->add({test.east - m_origin.east, test.north - m_origin.north, pointState(test.state), test.liftNumber}, test.number, test.id);
            if (test.state == book::TestState::Open)
                rings(test.east, test.north);
        }
    }

    /// While the rows of a long book are still being read.
    void tests(const book::TestColumns& columns)
    {
        const auto lifts = liftNumbers(m_all, columns);
        m_scene->points.reserve(columns.size());
        m_scene->names.reserve(columns.size());
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const double east = columns.east[i], north = columns.north[i];
            if (std::isnan(east) || std::isnan(north) || (north == 0 && east == 0))
                continue;
            m_scene->add({east - m_origin.east, north - m_origin.north, pointState(columns.state[i]), lifts[columns.lift[i]]}, columns.number[i], columns.idText(i));
            if (columns.state[i] == book::TestState::Open)
                rings(east, north);
        }
    }

    void sites()
    {
        for (const auto& site : m_all.sites) {
            if (!site.testId.empty())
                continue;
            const auto lift = std::find_if(m_all.lifts.begin(), m_all.lifts.end(), [&](const auto& l) { return l.id == site.lift; });
            m_scene->add({site.east - m_origin.east, site.north - m_origin.north, map::PointState::Owed, lift == m_all.lifts.end() ? map::kEveryLift : lift->number},
                         QCoreApplication::translate("MapContent", "Site %1").arg(site.number).toStdString(), site.draw + "/" + std::to_string(site.number));
        }
    }

private:
    void rings(double east, double north)
    {
        const auto& limits = m_session.ruleSet().limits;
        for (const auto& [key, name] : {std::pair{"clearance.other_gauges", QT_TRANSLATE_NOOP("MapContent", "gauges %1")}, {"clearance.vehicles", QT_TRANSLATE_NOOP("MapContent", "vehicles %1")}}) {
            const auto& limit = limits.find(key)->second;
            const double metres = limit.unit == "ft" ? Length::feet(limit.value.value()).metres() : limit.value.value();
            m_scene->rings.push_back({{east - m_origin.east, north - m_origin.north}, metres,
                                      QCoreApplication::translate("MapContent", name)
                                          .arg(QString::fromStdString(limit.value.text() + " " + limit.unit)), false});
        }
    }

    map::MapScene* m_scene;
    const Session& m_session;
    const Snapshot& m_all;
    map::MapVertex m_origin;
};

}  // namespace

void addPoints(map::MapScene& scene, const Session& session, map::MapVertex origin)
{
    Points points(scene, session, origin);
    if (const auto* columns = session.columns())
        points.tests(*columns);
    else
        points.tests();
    points.sites();
}

}  // namespace groundcount::view
