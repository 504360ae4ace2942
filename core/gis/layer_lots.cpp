#include "gis/layer_columns.h"
#include "gis/layer_source.h"
#include "gis/lot_ground.h"
#include "gis/plane_shapes.h"

#include <algorithm>

namespace groundcount::gis {
namespace {

struct LotView {
    const book::LotRow& lot;
    const LayerSource& source;
    std::optional<book::LotStatistics> statistics;
    std::optional<double> areaM2;
    std::string notDrawn;
};

constexpr FieldForm Text = FieldForm::Text;
constexpr FieldForm Real = FieldForm::Real;
constexpr FieldForm Whole = FieldForm::Whole;
using Options = ExportOptions;

template <std::string book::LotRow::* member>
FieldValue text(const LotView& v, const Options&)
{
    return textOrNull(v.lot.*member);
}
template <std::string book::LotRow::* member>
FieldValue decimal(const LotView& v, const Options&)
{
    return decimalOrNull(v.lot.*member);
}
template <std::optional<double> book::LotRow::* member>
FieldValue real(const LotView& v, const Options&)
{
    return realOrNull(v.lot.*member);
}
template <std::optional<double> book::LotRow::* member>
FieldValue station(const LotView& v, const Options& options)
{
    return stationOrNull(v.lot.*member, options);
}
template <int book::LotStatistics::* member>
FieldValue counted(const LotView& v, const Options&)
{
    return v.statistics ? FieldValue((*v.statistics).*member) : FieldValue();
}

FieldValue area(const LotView& v, const Options&)
{
    if (!v.areaM2)
        return {};
    const Surface surface = Surface::squareMetres(*v.areaM2);
    return v.source.job.gridUnit == "m" ? surface.squareMetres() : surface.squareFeet();
}

FieldValue mean(const LotView& v, const Options&) { return v.statistics ? realOrNull(v.statistics->mean.value) : FieldValue(); }
FieldValue deviation(const LotView& v, const Options&)
{
    return v.statistics && v.statistics->spread.value ? realOrNull(v.statistics->spread.value->sd) : FieldValue();
}
FieldValue within(const LotView& v, const Options&)
{
    return v.statistics && v.statistics->pwl.value ? realOrNull(v.statistics->pwl.value->pwl) : FieldValue();
}

const Column<LotView> kColumns[] = {
    {"lot", "Lot", "Name of the lot.", Text, text<&book::LotRow::name>},
    {"zone", "Zone", "Zone of the fill.", Text, text<&book::LotRow::zone>},
    {"material", "Material", "Name of the material.", Text,
     [](const LotView& v, const Options&) { return textOrNull(nameOf(v.source.materials, v.lot.material)); }},
    {"reference_test", "Reference test", "Laboratory compaction test that gives the maximum dry density.", Text,
     [](const LotView& v, const Options&) { return textOrNull(nameOf(v.source.proctors, v.lot.proctor)); }},
    {"alignment", "Alignment", "Line that the stations count along.", Text,
     [](const LotView& v, const Options&) { return textOrNull(nameOf(v.source.lines, v.lot.alignment)); }},
    {"begin_station", "From station", "First station as plans write it.", Text, station<&book::LotRow::beginStationFt>},
    {"end_station", "To station", "Last station as plans write it.", Text, station<&book::LotRow::endStationFt>},
    {"begin_station_ft", "From station as a number", "Number behind the first station, in the unit of the alignment.", Real, real<&book::LotRow::beginStationFt>},
    {"end_station_ft", "To station as a number", "Number behind the last station, in the unit of the alignment.", Real, real<&book::LotRow::endStationFt>},
    {"left_ft", "Left edge", "Distance of the left edge from the alignment, feet.", Real, real<&book::LotRow::leftFt>},
    {"right_ft", "Right edge", "Distance of the right edge from the alignment, feet.", Real, real<&book::LotRow::rightFt>},
    {"area", "Area", "Area in plan.", Real, area, Ending::Surface},
    {"minimum_pct", "Least compaction", "Percent compaction that is required at least.", Real, decimal<&book::LotRow::minimumPctText>},
    {"maximum_pct", "Most compaction", "Percent compaction that is allowed at most.", Real, decimal<&book::LotRow::maximumPctText>},
    {"window_kind", "Water window", "What the two window columns count from.", Text, text<&book::LotRow::windowKind>, Ending::None, Words::WaterWindows},
    {"window_low", "Least water", "Lower end: points from the optimum, or percent of it.", Real, decimal<&book::LotRow::windowLowText>},
    {"window_high", "Most water", "Upper end: points from the optimum, or percent of it.", Real, decimal<&book::LotRow::windowHighText>},
    {"tests_per_lift", "Tests per lift", "Random tests that each lift needs.", Whole, [](const LotView& v, const Options&) -> FieldValue { return v.lot.testsPerLift; }},
    {"sublots", "Sublots", "Parts of equal length, one drawn site in each.", Whole, [](const LotView& v, const Options&) { return wholeOrNull(v.lot.sublots); }},
    {"lifts", "Lifts", "Lifts placed.", Whole, counted<&book::LotStatistics::lifts>},
    {"tests_required", "Tests required", "Tests per lift times lifts.", Whole, counted<&book::LotStatistics::required>},
    {"tests_made", "Tests made", "Random tests with a verdict or waiting for one.", Whole, counted<&book::LotStatistics::made>},
    {"tests_waiting", "Tests waiting", "Tests whose verdict waits for a sample or the oven.", Whole, counted<&book::LotStatistics::waiting>},
    {"open_failures", "Open failures", "Failed tests without a passing retest.", Whole,
     [](const LotView& v, const Options&) { return v.statistics ? FieldValue(static_cast<int>(v.statistics->openFailures.size())) : FieldValue(); }},
    {"values_used", "Values", "Results that enter mean, deviation and percent within limits.", Whole,
     [](const LotView& v, const Options&) { return v.statistics ? FieldValue(static_cast<int>(v.statistics->values.size())) : FieldValue(); }},
    {"mean_pct", "Mean", "Mean percent compaction of these values.", Real, mean},
    {"deviation_pct", "Deviation", "Standard deviation (n - 1) of these values, percentage points.", Real, deviation},
    {"within_limits_pct", "Within limits", "Estimated percent of the lot within its limits.", Real, within, Ending::None, Words::Any, FieldRange{0, 100}},
    {"not_drawn", "Why not drawn", "Why the row has no geometry.", Text, [](const LotView& v, const Options&) { return textOrNull(v.notDrawn); }},
    {"record_hash", "Record", "Hash of the sealed lot.", Text, text<&book::LotRow::hash>},
    {"lot_id", "Lot id", "UUID of the lot in the field book.", Text, text<&book::LotRow::id>},
};

Result<void> give(const LayerSource& source, const Options& options, const RowSink& sink)
{
    for (const auto& lot : source.lots) {
        LotView view{lot, source, {}, {}, {}};
        if (source.statistics) {
            const auto tests = source.testsOfLot(lot.id);
            if (!tests)
                return tl::unexpected(tests.error());
            auto statistics = book::lotStatistics(lot, source.lifts, *tests, source.job.metresPerGridUnit, *source.statistics);
            if (!statistics)
                return tl::unexpected(statistics.error());
            view.statistics = std::move(*statistics);
        }
        LayerShape shape;
        if (auto ground = lotGround(lot, source.job, source.lines)) {
            const PlaneShapes shapes(ground->ring.front());
            view.areaM2 = shapes.area(shapes.polygon(*ground).get()) * source.job.metresPerGridUnit * source.job.metresPerGridUnit;
            shape.areas.push_back(std::move(*ground));
        } else {
            view.notDrawn = ground.error().what;
        }
        if (const auto taken = sink({lot.id, "Lot " + lot.name, valuesOf<LotView>(kColumns, view, options), std::move(shape)}); !taken)
            return taken;
    }
    return {};
}

}  // namespace

Layer lotLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"lot", "Lots", "One row per lot with its requirement and how far it is.", ShapeKind::Area, fieldsOf<LotView>(kColumns, source->job),
            [source, options](const RowSink& sink) { return give(*source, options, sink); }};
}

}  // namespace groundcount::gis
