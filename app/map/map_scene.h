#pragma once

#include "map/map_window.h"
#include "map/point_names.h"
#include "map/symbol_paint.h"

#include <QImage>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>
#include <string_view>
#include <vector>

/// What the map shows, as plain values. Coordinates are plane coordinates of the job's grid (x east, y north) in the job's own unit, relative to
/// a local origin that the scene's maker chooses (subtract it in double before filling this in). The map does no arithmetic of
/// the method: stations, rings, coverage and words arrive ready made.
namespace groundcount::map {

struct MapVertex {
    double east = 0;
    double north = 0;
};
using MapRun = std::vector<MapVertex>;

/// `lift` of a thing that belongs to every lift.
inline constexpr int kEveryLift = -1;

/// A test or a drawn site.
struct MapPoint {
    double east = 0;
    double north = 0;
    PointState state = PointState::Pass;
    int lift = kEveryLift;
};

enum class AreaStyle {
    Lot,         ///< edge 1.4, name inside at 22 px
    ChosenLot,   ///< edge 3.2, name inside
    Sublot,      ///< dashed edge
    OpenFailure, ///< hatched 45 degrees in the fail colour, edge in the fail colour
    Untested     ///< stippled, no edge
};

/// A polygon; further rings are holes (odd-even). Rings are not closed by repeating the first vertex.
struct MapArea {
    AreaStyle style = AreaStyle::Lot;
    std::vector<MapRun> rings;
    QString label;
    int lift = kEveryLift;
};

enum class LineStyle {
    Alignment, ///< chain-dotted, ink
    Limit,     ///< thin chain-dotted, ink2: right of way, toe of slope
    Edge,      ///< thin solid, ink2
    Path,      ///< dashed ink: from here to there
    Joint      ///< dotted in the fail colour: a failure and its retest
};

struct MapLine {
    LineStyle style = LineStyle::Alignment;
    MapRun run;
};

/// A station on the alignment: a tick square to it and, if there is a label, the label beside the corridor.
struct MapStation {
    MapVertex at;
    double bearingDegrees = 0; ///< of the alignment here, clockwise from grid north
    QString label;             ///< "54+00"; empty for an unnamed tick
    double labelOffset = 0;    ///< job units right of the line where the label starts; negative is left
};

/// A slope: hachures, long and short in turn, run from the crest towards the toe.
struct MapSlope {
    MapRun crest;
    MapRun toe; ///< as many vertices as the crest, pair by pair
};

/// A circle of a stated radius on the ground, drawn to true scale.
struct MapRing {
    MapVertex at;
    double radiusMetres = 0;
    QString word; ///< word first, then the figure: "gauges 30 ft"
    bool hatched = false; ///< true inside of a ring nobody may stand in
};

enum class ObstacleKind { Structure, Vehicle, Gauge, Other };

/// Something the gauge must keep clear of. An outline of three vertices or more is drawn to scale; one vertex gives a symbol.
struct MapObstacle {
    ObstacleKind kind = ObstacleKind::Structure;
    MapRun outline;
    QString label;
    QString id;
};

/// A free word on the map.
struct MapLabel {
    MapVertex at;
    QString text;
};

/// Paints the ground below everything for one window of the map, into an image of size.width x size.height device pixels. Called on a worker
/// thread, one call at a time; an empty image means paper. East and north are as in the scene.
using GroundPainter = std::function<QImage(const MapWindow& window, QSize devicePixels)>;

struct MapScene {
    double metresPerUnit = 1.0;          ///< length of the job's unit: 0.3048, 1200/3937 or 1
    QString unitName = QStringLiteral("m"); ///< on the scale bar: "ft"
    std::vector<MapPoint> points;
    PointNames names;                    ///< of the points, in their order
    std::vector<MapArea> areas;
    std::vector<MapLine> lines;
    std::vector<MapStation> stations;
    std::vector<MapSlope> slopes;
    std::vector<MapRing> rings;
    std::vector<MapObstacle> obstacles;
    std::vector<MapLabel> labels;
    GroundPainter ground;                ///< empty: a drawn map on paper; set: symbols get ring and halo

    /// @param label, id as PointNames, in UTF-8
    void add(const MapPoint& point, std::string_view label, std::string_view id);
    /// The smallest box round everything (points of every lift, areas, lines, obstacles, rings), empty if there is nothing.
    MapExtent extent() const;
};

/// Hands a scene from a view-model to the map in QML: `GroundMap { source: page.mapSource }`. GUI thread only.
class MapSource : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using QObject::QObject;
    std::shared_ptr<const MapScene> scene() const { return m_scene; }
    void setScene(std::shared_ptr<const MapScene> scene);

signals:
    void changed();

private:
    std::shared_ptr<const MapScene> m_scene;
};

}  // namespace groundcount::map
