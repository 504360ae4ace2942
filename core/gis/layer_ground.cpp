#include "gis/alignment_reader.h"
#include "gis/layer_columns.h"
#include "gis/layer_source.h"
#include "gis/lot_ground.h"
#include "method/rules/json_object.h"
#include "method/sentence.h"

namespace groundcount::gis {
namespace {

constexpr FieldForm Text = FieldForm::Text;
constexpr FieldForm Real = FieldForm::Real;
constexpr FieldForm Whole = FieldForm::Whole;
using Options = ExportOptions;

struct Obstacle {
    const book::ObstacleRow& row;
    std::string notDrawn;
};

FieldValue obstacleName(const Obstacle& o, const Options&) { return textOrNull(o.row.name); }
FieldValue obstacleKind(const Obstacle& o, const Options&) { return textOrNull(o.row.obstacleKind); }
FieldValue obstacleRadius(const Obstacle& o, const Options&) { return o.row.radiusFt; }
FieldValue obstacleDoubt(const Obstacle& o, const Options&) { return o.row.uncertaintyFt; }
FieldValue obstacleId(const Obstacle& o, const Options&) { return textOrNull(o.row.id); }

const Column<Obstacle> kPlaceColumns[] = {
    {"obstacle", "Obstacle", "Name of the obstacle.", Text, obstacleName},
    {"kind", "Kind", "What it is.", Text, obstacleKind, Ending::None, Words::ObstacleKinds},
    {"radius_ft", "Radius", "How far it reaches from its place or line, feet; 0 for a thin one.", Real, obstacleRadius},
    {"uncertainty_ft", "Uncertainty", "How well its place is known, feet.", Real, obstacleDoubt},
    {"has_line", "Has a line", "1 when its line is in the layer obstacle_line.", Whole,
     [](const Obstacle& o, const Options&) -> FieldValue { return o.row.path.empty() ? 0 : 1; }, Ending::None, Words::Any, FieldRange{0, 1}},
    {"obstacle_id", "Obstacle id", "UUID of the obstacle in the field book.", Text, obstacleId},
};

const Column<Obstacle> kLineColumns[] = {
    {"obstacle", "Obstacle", "Name of the obstacle.", Text, obstacleName},
    {"kind", "Kind", "What it is.", Text, obstacleKind, Ending::None, Words::ObstacleKinds},
    {"closed", "Closed", "1 when the line is a ring around it.", Whole, [](const Obstacle& o, const Options&) -> FieldValue { return o.row.closed ? 1 : 0; },
     Ending::None, Words::Any, FieldRange{0, 1}},
    {"radius_ft", "Radius", "How far it reaches from its line, feet; 0 for a thin one.", Real, obstacleRadius},
    {"uncertainty_ft", "Uncertainty", "How well its place is known, feet.", Real, obstacleDoubt},
    {"not_drawn", "Why not drawn", "Why the row has no geometry.", Text, [](const Obstacle& o, const Options&) { return textOrNull(o.notDrawn); }},
    {"obstacle_id", "Obstacle id", "UUID of the obstacle in the field book.", Text, obstacleId},
};

struct Line {
    const book::AlignmentRow& row;
    std::string unit, equations, notDrawn;
    std::optional<double> begin, end, length;
};

const Column<Line> kAlignmentColumns[] = {
    {"alignment", "Alignment", "Name of the line.", Text, [](const Line& l, const Options&) { return textOrNull(l.row.name); }},
    {"unit", "Unit", "Unit of its stations and length: ft, ftUS or m.", Text, [](const Line& l, const Options&) { return textOrNull(l.unit); }},
    {"begin_station", "From station", "First station as plans write it.", Text, [](const Line& l, const Options& o) { return stationOrNull(l.begin, o); }},
    {"end_station", "To station", "Last station as plans write it.", Text, [](const Line& l, const Options& o) { return stationOrNull(l.end, o); }},
    {"begin_station_ft", "From station as a number", "Number behind the first station, in the line's unit.", Real,
     [](const Line& l, const Options&) { return realOrNull(l.begin); }},
    {"end_station_ft", "To station as a number", "Number behind the last station, in the line's unit.", Real,
     [](const Line& l, const Options&) { return realOrNull(l.end); }},
    {"true_length", "Length", "True length in the line's unit, station equations taken into account.", Real,
     [](const Line& l, const Options&) { return realOrNull(l.length); }},
    {"equations", "Station equations", "Each as back = ahead, parted by semicolons.", Text, [](const Line& l, const Options&) { return textOrNull(l.equations); }},
    {"not_drawn", "Why not drawn", "Why the row has no geometry.", Text, [](const Line& l, const Options&) { return textOrNull(l.notDrawn); }},
    {"record_hash", "Record", "Hash of the sealed alignment.", Text, [](const Line& l, const Options&) { return textOrNull(l.row.hash); }},
    {"alignment_id", "Alignment id", "UUID of the alignment in the field book.", Text, [](const Line& l, const Options&) { return textOrNull(l.row.id); }},
};

Result<void> giveAlignment(const book::AlignmentRow& row, const book::JobRow& job, const Options& options, const RowSink& sink)
{
    Line line{row, {}, {}, {}, {}, {}, {}};
    LayerShape shape;
    std::optional<Error> error;
    const auto json = nlohmann::json::parse(row.body, nullptr, false);
    method::JsonObject body(json, "Alignment " + row.name, error);
    line.unit = body.textOr("unit", "");
    for (auto& equation : body.list("equations"))
        line.equations += (line.equations.empty() ? "" : "; ") + method::stationText(equation.number("back"), options.perStation, 2) + " = "
                          + method::stationText(equation.number("ahead"), options.perStation, 2);
    const auto made = alignmentFrom(row.body);
    if (!made || error) {
        line.notDrawn = made ? error->what : made.error().what;
    } else {
        line.begin = made->stations().beginFt();
        line.length = made->lengthFt();
        if (const auto end = made->stations().stationAt(made->lengthFt()))
            line.end = end->feet;
        if (line.unit == job.gridUnit)
            shape.path = made->polyline(kEdgeSagitta.metres() / job.metresPerGridUnit);
        else
            line.notDrawn = "The unit of the line must be that of the job's grid, " + job.gridUnit + "; it is " + line.unit + ".";
    }
    return sink({row.id, "Alignment " + row.name, valuesOf<Line>(kAlignmentColumns, line, options), std::move(shape)});
}

Result<void> giveObstacleLine(const book::ObstacleRow& row, const book::JobRow& job, const Options& options, const RowSink& sink)
{
    Obstacle obstacle{row, {}};
    LayerShape shape;
    if (auto path = obstaclePath(row, job)) {
        if (row.closed)
            path->push_back(path->front());
        if (path->size() > 1)
            shape.path = std::move(*path);
        else
            obstacle.notDrawn = "A line must have two places or more; it has one.";
    } else {
        obstacle.notDrawn = path.error().what;
    }
    return sink({row.id, row.name, valuesOf<Obstacle>(kLineColumns, obstacle, options), std::move(shape)});
}

}  // namespace

Layer obstacleLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"obstacle", "Obstacles", "One row per thing that tests keep clear of, at its sealed place.", ShapeKind::Point,
            fieldsOf<Obstacle>(kPlaceColumns, source->job), [source, options](const RowSink& sink) -> Result<void> {
                for (const auto& one : source->obstacles) {
                    LayerRow row{one.id, one.name, valuesOf<Obstacle>(kPlaceColumns, Obstacle{one, {}}, options), {}};
                    row.shape.path = {{one.north, one.east}};
                    if (const auto taken = sink(row); !taken)
                        return taken;
                }
                return {};
            }};
}

Layer obstacleLineLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"obstacle_line", "Lines of obstacles", "One row per obstacle that has a line: a wall, a pipe, a ring around a structure.", ShapeKind::Line,
            fieldsOf<Obstacle>(kLineColumns, source->job), [source, options](const RowSink& sink) -> Result<void> {
                for (const auto& one : source->obstacles)
                    if (!one.path.empty())
                        if (const auto given = giveObstacleLine(one, source->job, options, sink); !given)
                            return given;
                return {};
            }};
}

Layer alignmentLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"alignment", "Alignments", "One row per line that stations count along; curves as chords that stray at most 5 mm.", ShapeKind::Line,
            fieldsOf<Line>(kAlignmentColumns, source->job), [source, options](const RowSink& sink) -> Result<void> {
                for (const auto& one : source->lines)
                    if (const auto given = giveAlignment(one, source->job, options, sink); !given)
                        return given;
                return {};
            }};
}

}  // namespace groundcount::gis
