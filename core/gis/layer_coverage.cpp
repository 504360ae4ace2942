#include "gis/layer_columns.h"
#include "gis/layer_source.h"
#include "gis/lot_ground.h"

namespace groundcount::gis {
namespace {

struct Cell {
    const LayerSource& source;
    const book::LotRow& lot;
    const book::LiftRow& lift;
    const Coverage* coverage;   ///< nullptr when there is none
    const CoverageCell* cell;   ///< nullptr without tests
    std::string tests, notDrawn;
};

constexpr FieldForm Text = FieldForm::Text;
constexpr FieldForm Real = FieldForm::Real;
constexpr FieldForm Whole = FieldForm::Whole;
using Options = ExportOptions;

FieldValue measured(const Cell& c, Surface surface)
{
    return c.source.job.gridUnit == "m" ? surface.squareMetres() : surface.squareFeet();
}
FieldValue measured(const Cell& c, Length length)
{
    return c.source.job.gridUnit == "m" ? length.metres() : length.feet();
}
template <Surface Coverage::* member>
FieldValue ofLift(const Cell& c, const Options&)
{
    return c.coverage ? measured(c, (*c.coverage).*member) : FieldValue();
}
FieldValue state(const Cell& c, const Options&)
{
    if (!c.coverage)
        return {};
    return std::string(!c.cell ? "untested" : c.cell->answer == SiteAnswer::Pass ? "pass" : "fail");
}
FieldValue area(const Cell& c, const Options&)
{
    return c.cell ? measured(c, c.cell->surface) : c.coverage ? measured(c, c.coverage->ground) : FieldValue();
}
FieldValue beyond(const Cell& c, const Options&)
{
    return c.cell ? measured(c, c.cell->beyondShare) : c.coverage ? measured(c, c.coverage->untested) : FieldValue();
}

const Column<Cell> kColumns[] = {
    {"lot", "Lot", "Name of the lot.", Text, [](const Cell& c, const Options&) { return textOrNull(c.lot.name); }},
    {"lift", "Lift", "Number of the lift in the lot.", Whole, [](const Cell& c, const Options&) { return wholeOrNull(c.lift.number); }},
    {"state", "State", "Verdict of the test that speaks for this ground; untested where the lift has no test.", Text, state, Ending::None, Words::GroundStates},
    {"tests", "Tests", "Numbers of the tests at this place, parted by commas; the last one speaks.", Text,
     [](const Cell& c, const Options&) { return textOrNull(c.tests); }},
    {"area", "Area", "Area of this ground in plan: nearer to these tests than to any other.", Real, area, Ending::Surface},
    {"beyond_share", "Beyond its share", "How much of it is more than one test may stand for: it counts as untested.", Real, beyond, Ending::Surface},
    {"share", "Share", "Most ground that one test may stand for: area of the lift over tests per lift.", Real, ofLift<&Coverage::share>, Ending::Surface},
    {"tests_per_lift", "Tests per lift", "Random tests that the lift needs.", Whole, [](const Cell& c, const Options&) -> FieldValue { return c.lot.testsPerLift; }},
    {"lift_area", "Area of the lift", "Area of the whole lift.", Real, ofLift<&Coverage::ground>, Ending::Surface},
    {"lift_passed", "Passed", "Ground of the lift's passing tests within their share.", Real, ofLift<&Coverage::passed>, Ending::Surface},
    {"lift_failed", "Failed", "Ground of the lift's failing tests within their share.", Real, ofLift<&Coverage::failed>, Ending::Surface},
    {"lift_untested", "Untested", "Ground of the lift beyond the shares: passed, failed and untested make the whole.", Real, ofLift<&Coverage::untested>,
     Ending::Surface},
    {"largest_patch", "Largest patch", "Radius of the largest circle in the lift without a test in it.", Real,
     [](const Cell& c, const Options&) { return c.coverage ? measured(c, c.coverage->patch.radius) : FieldValue(); }, Ending::Length},
    {"thickness_in", "Thickness", "Thickness of the lift, inches.", Real, [](const Cell& c, const Options&) { return decimalOrNull(c.lift.thicknessInText); }},
    {"not_drawn", "Why not drawn", "Why the row has no geometry.", Text, [](const Cell& c, const Options&) { return textOrNull(c.notDrawn); }},
    {"lot_id", "Lot id", "UUID of the lot in the field book.", Text, [](const Cell& c, const Options&) { return textOrNull(c.lot.id); }},
    {"lift_id", "Lift id", "UUID of the lift in the field book.", Text, [](const Cell& c, const Options&) { return textOrNull(c.lift.id); }},
};

Result<void> giveLift(const LayerSource& source, const book::LotRow& lot, const book::LiftRow& lift, const std::vector<book::TestRow>& tests,
                      const Options& options, const RowSink& sink)
{
    const auto coverage = liftCoverage(lot, lift, source.job, source.lines, tests);
    const auto sites = speakingTests(tests, lift.id);
    const auto give = [&](const CoverageCell* cell, const std::string& notDrawn, std::vector<method::PlanArea> areas) {
        Cell row{source, lot, lift, coverage ? &*coverage : nullptr, cell, {}, notDrawn};
        if (cell)
            for (const std::size_t i : cell->sites)
                row.tests += (row.tests.empty() ? "" : ", ") + sites[i].number;
        return sink({lift.id, "Lift " + std::to_string(lift.number) + " of lot " + lot.name, valuesOf<Cell>(kColumns, row, options), {{}, std::move(areas)}});
    };
    if (!coverage)
        return give(nullptr, coverage.error().what, {});
    if (coverage->cells.empty()) {
        const auto ground = lotGround(lot, source.job, source.lines);
        return give(nullptr, {}, {*ground});
    }
    for (const auto& cell : coverage->cells)
        if (const auto taken = give(&cell, {}, cell.areas); !taken)
            return taken;
    return {};
}

Result<void> give(const LayerSource& source, const Options& options, const RowSink& sink)
{
    for (const auto& lot : source.lots) {
        const auto tests = source.testsOfLot(lot.id);
        if (!tests)
            return tl::unexpected(tests.error());
        for (const auto& lift : source.lifts)
            if (lift.lot == lot.id)
                if (const auto given = giveLift(source, lot, lift, *tests, options, sink); !given)
                    return given;
    }
    return {};
}

}  // namespace

Layer coverageLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    return {"lift_coverage", "Coverage of the lifts",
            "The ground that each test of a lift stands for on paper. Between tests nothing is known; the specification decides how many are enough.",
            ShapeKind::Area, fieldsOf<Cell>(kColumns, source->job), [source, options](const RowSink& sink) { return give(*source, options, sink); }};
}

}  // namespace groundcount::gis
