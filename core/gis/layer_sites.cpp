#include "gis/layer_columns.h"
#include "gis/layer_source.h"

#include <unordered_map>

namespace groundcount::gis {
namespace {

struct Drawn {
    const book::SiteRow& site;
    const std::string& lot;
    int lift;
    const DrawFacts* draw;
    const book::TestRow* test;  ///< nullptr while owed
};

constexpr FieldForm Text = FieldForm::Text;
constexpr FieldForm Real = FieldForm::Real;
constexpr FieldForm Whole = FieldForm::Whole;
using Options = ExportOptions;

const Column<Drawn> kColumns[] = {
    {"site", "Site", "Number of the drawn site in its lift.", Whole, [](const Drawn& d, const Options&) -> FieldValue { return d.site.number; }},
    {"state", "State", "Whether a test stands at it: a test that is void leaves it owed.", Text,
     [](const Drawn& d, const Options&) -> FieldValue { return std::string(d.site.testId.empty() ? "owed" : "tested"); }, Ending::None, Words::SiteStates},
    {"lot", "Lot", "Name of the lot.", Text, [](const Drawn& d, const Options&) { return textOrNull(d.lot); }},
    {"lift", "Lift", "Number of the lift in the lot.", Whole, [](const Drawn& d, const Options&) { return wholeOrNull(d.lift); }},
    {"station", "Station", "Station along the alignment as plans write it.", Text,
     [](const Drawn& d, const Options& o) { return stationOrNull(d.site.stationFt, o); }},
    {"station_ft", "Station as a number", "Number behind the station, in the unit of the alignment.", Real,
     [](const Drawn& d, const Options&) { return realOrNull(d.site.stationFt); }},
    {"offset_ft", "Offset", "Distance from the alignment, right of rising stations positive, feet.", Real,
     [](const Drawn& d, const Options&) { return realOrNull(d.site.offsetFt); }},
    {"test_number", "Test", "Number of the test made at it.", Text,
     [](const Drawn& d, const Options&) { return d.test ? textOrNull(d.test->number) : FieldValue(); }},
    {"test_state", "State of the test", "Where that test stands.", Text,
     [](const Drawn& d, const Options&) { return d.test ? FieldValue(std::string(word(d.test->state))) : FieldValue(); }, Ending::None, Words::TestStates},
    {"generator", "Generator", "Generator of the random numbers.", Text,
     [](const Drawn& d, const Options&) { return d.draw ? textOrNull(d.draw->generator) : FieldValue(); }},
    {"seed", "Seed", "Seed of the draw: with it anybody can draw the same sites again.", Text,
     [](const Drawn& d, const Options&) { return d.draw ? textOrNull(d.draw->seed) : FieldValue(); }},
    {"policy", "Policy", "What the draw kept clear of.", Text,
     [](const Drawn& d, const Options&) { return d.draw ? textOrNull(d.draw->policy) : FieldValue(); }},
    {"record_hash", "Record", "Hash of the sealed draw.", Text, [](const Drawn& d, const Options&) { return textOrNull(d.site.draw); }},
    {"test_id", "Test id", "UUID of the test in the field book.", Text, [](const Drawn& d, const Options&) { return textOrNull(d.site.testId); }},
};

Result<void> give(const LayerSource& source, const Options& options, const RowSink& sink)
{
    std::string lot;
    std::vector<book::TestRow> tests;
    std::unordered_map<std::string, const book::TestRow*> byId;
    for (const auto& site : source.sites) {  // sites of one lot stand together
        if (site.lot != lot || tests.empty()) {
            auto read = source.testsOfLot(site.lot);
            if (!read)
                return tl::unexpected(read.error());
            lot = site.lot;
            tests = std::move(*read);
            byId.clear();
            for (const auto& test : tests)
                byId.emplace(test.id, &test);
        }
        Drawn drawn{site, nameOf(source.lots, site.lot), 0, nullptr, nullptr};
        for (const auto& lift : source.lifts)
            drawn.lift = lift.id == site.lift ? lift.number : drawn.lift;
        for (const auto& draw : source.draws)
            drawn.draw = draw.hash == site.draw ? &draw : drawn.draw;
        if (const auto found = byId.find(site.testId); found != byId.end())
            drawn.test = found->second;
        LayerRow row{site.draw, "Site " + std::to_string(site.number), valuesOf<Drawn>(kColumns, drawn, options), {}};
        row.shape.path = {{site.north, site.east}};
        if (const auto taken = sink(row); !taken)
            return taken;
    }
    return {};
}

}  // namespace

Layer siteLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"test_site_drawn", "Drawn test sites", "One row per site that was drawn at random for a lift, tested or still owed.", ShapeKind::Point,
            fieldsOf<Drawn>(kColumns, source->job), [source, options](const RowSink& sink) { return give(*source, options, sink); }};
}

}  // namespace groundcount::gis
