#include "gis/layer_tests.h"

#include "gis/layer_columns.h"
#include "book/number_order.h"

#include <algorithm>

namespace groundcount::gis {
namespace {

using book::TestRow;

template <std::string TestRow::* member>
FieldValue text(const TestRow& test, const ExportOptions&)
{
    return textOrNull(test.*member);
}

template <std::string TestRow::* member>
FieldValue decimal(const TestRow& test, const ExportOptions&)
{
    return decimalOrNull(test.*member);
}

template <std::optional<double> TestRow::* member>
FieldValue real(const TestRow& test, const ExportOptions&)
{
    return realOrNull(test.*member);
}

// A latitude and longitude of exactly 0 is a place in the Atlantic: the row's "not known".
template <double TestRow::* member>
FieldValue degrees(const TestRow& test, const ExportOptions&)
{
    const bool known = std::isfinite(test.*member) && (test.latitudeDeg != 0 || test.longitudeDeg != 0);
    return known ? FieldValue(test.*member) : FieldValue();
}

template <int TestRow::* member>
FieldValue whole(const TestRow& test, const ExportOptions&)
{
    return wholeOrNull(test.*member);
}

template <std::string TestRow::* member>
FieldValue instant(const TestRow& test, const ExportOptions&)
{
    if ((test.*member).empty())
        return {};
    const auto utc = parseInstant(test.*member);
    return utc ? FieldValue(*utc) : FieldValue(Unreadable{test.*member});
}

FieldValue localTime(const TestRow& test, const ExportOptions&)
{
    if (test.startedAt.empty())
        return {};
    const auto utc = parseInstant(test.startedAt);
    return utc ? FieldValue(localTimeText(*utc, test.offsetMinutes)) : FieldValue(Unreadable{test.startedAt});
}

FieldValue reasons(const TestRow& test, const ExportOptions&)
{
    std::string joined;
    for (const auto& reason : test.reasons)
        joined += (joined.empty() ? "" : "; ") + reason;
    return textOrNull(joined);
}

FieldValue station(const TestRow& test, const ExportOptions& options)
{
    return stationOrNull(test.stationFt, options);
}

FieldValue stateWord(const TestRow& test, const ExportOptions&)
{
    return std::string(word(test.state));
}

FieldValue purposeWord(const TestRow& test, const ExportOptions&)
{
    return std::string(word(test.purpose));
}

FieldValue conflict(const TestRow& test, const ExportOptions&)
{
    return test.conflict ? 1 : 0;
}

constexpr FieldForm Text = FieldForm::Text;
constexpr FieldForm Real = FieldForm::Real;

const Column<TestRow> kColumns[] = {
    {"test_number", "Test", "Number of the test.", Text, text<&TestRow::number>},
    {"purpose", "Purpose", "Why the place was tested.", Text, purposeWord, Ending::None, Words::Purposes},
    {"retest_of", "Retest of", "Number of the failed test that this one repeats.", Text, text<&TestRow::retestOfNumber>},
    {"rework", "Rework", "What was done to the lift before a retest.", Text, text<&TestRow::rework>},
    {"state", "State", "Where the test stands.", Text, stateWord, Ending::None, Words::TestStates},
    {"waiting_for", "Waiting for", "What a waiting test needs: sample or oven.", Text, text<&TestRow::waitingFor>},
    {"reasons", "Reasons", "Why the verdict is what it is, parted by semicolons.", Text, reasons},
    {"overrides", "Overrides", "Reasons of checks that were overridden, parted by semicolons.", Text, text<&TestRow::overrides>},
    {"conflict", "Conflict", "1 when two devices amended the same record and nobody has decided yet.", FieldForm::Whole, conflict, Ending::None, Words::Any, FieldRange{0, 1}},
    {"lot", "Lot", "Name of the lot.", Text, text<&TestRow::lotName>},
    {"lift", "Lift", "Number of the lift in the lot.", FieldForm::Whole, whole<&TestRow::liftNumber>},
    {"station", "Station", "Station along the alignment as plans write it.", Text, station},
    {"station_ft", "Station as a number", "Number behind the station, in the unit of the alignment.", Real, real<&TestRow::stationFt>},
    {"offset_ft", "Offset", "Distance from the alignment, right of rising stations positive, feet.", Real, real<&TestRow::offsetFt>},
    {"started_utc", "Started", "When the place was sealed, UTC.", FieldForm::Instant, instant<&TestRow::startedAt>},
    {"verdict_utc", "Verdict", "When the verdict was sealed, UTC.", FieldForm::Instant, instant<&TestRow::verdictAt>},
    {"local_time", "Started, local", "started_utc on the clock of the job, with its offset from UTC.", Text, localTime},
    {"technician", "Technician", "Who made the test.", Text, text<&TestRow::personName>},
    {"certificate", "Certificate", "Certificate of the technician.", Text, text<&TestRow::certificate>},
    {"gauge", "Gauge", "Name of the gauge.", Text, text<&TestRow::gaugeName>},
    {"mode", "Mode", "Direct transmission or backscatter.", Text, text<&TestRow::mode>},
    {"depth_in", "Depth", "Depth of the source, inches.", Real, decimal<&TestRow::depthInText>},
    {"wet_density", "Wet density", "Mass of soil and water per volume in place.", Real, decimal<&TestRow::wet>, Ending::Density},
    {"water_density", "Water density", "Mass of water per volume in place.", Real, decimal<&TestRow::water>, Ending::Density},
    {"dry_density", "Dry density", "Mass of dry soil per volume in place.", Real, decimal<&TestRow::dry>, Ending::Density},
    {"water_content_pct", "Water content", "Mass of water over mass of dry soil, percent.", Real, decimal<&TestRow::contentPct>},
    {"percent_compaction", "Percent compaction", "Dry density over maximum dry density, percent.", Real, decimal<&TestRow::compactionPct>},
    {"maximum_dry_density", "Maximum dry density", "Maximum that the test was judged on, corrected for coarse particles where the method says so.", Real,
     decimal<&TestRow::maximum>, Ending::Density},
    {"optimum_pct", "Optimum", "Optimum water content that the test was judged on, percent.", Real, decimal<&TestRow::optimumPct>},
    {"coarse_pct", "Coarse part", "Dry mass retained on the sieve, percent.", Real, decimal<&TestRow::coarsePct>, Ending::None, Words::Any, FieldRange{0, 100}},
    {"minimum_pct", "Least compaction", "Percent compaction that was required at least.", Real, decimal<&TestRow::minimumPct>},
    {"maximum_pct", "Most compaction", "Percent compaction that was allowed at most.", Real, decimal<&TestRow::maximumPct>},
    {"window_low_pct", "Least water", "Lower end of the allowed water content, percent.", Real, decimal<&TestRow::windowLowPct>},
    {"window_high_pct", "Most water", "Upper end of the allowed water content, percent.", Real, decimal<&TestRow::windowHighPct>},
    {"uncertainty_pct", "Uncertainty", "Expanded uncertainty (k = 2) of percent compaction, percentage points.", Real, decimal<&TestRow::uncertaintyPct>},
    {"density_standard_count", "Density standard", "Standard count of the density system.", Real, decimal<&TestRow::densityStandard>},
    {"moisture_standard_count", "Moisture standard", "Standard count of the moisture system.", Real, decimal<&TestRow::moistureStandard>},
    {"density_count", "Density count", "Count of the density system.", Real, decimal<&TestRow::densityCount>},
    {"moisture_count", "Moisture count", "Count of the moisture system.", Real, decimal<&TestRow::moistureCount>},
    {"material", "Material", "Name of the material.", Text, text<&TestRow::materialName>},
    {"reference_test", "Reference test", "Laboratory compaction test that gave the maximum dry density.", Text, text<&TestRow::proctorName>},
    {"latitude_deg", "Latitude", "As received, degrees, north positive.", Real, degrees<&TestRow::latitudeDeg>, Ending::None, Words::Any, FieldRange{-90, 90}},
    {"longitude_deg", "Longitude", "As received, degrees, east positive.", Real, degrees<&TestRow::longitudeDeg>, Ending::None, Words::Any, FieldRange{-180, 180}},
    {"ellipsoid_height_m", "Height", "Height above the ellipsoid, metres.", Real, real<&TestRow::ellipsoidHeightM>},
    {"sigma_north_m", "Sigma north", "Standard deviation of the position northward, metres.", Real, real<&TestRow::sigmaNorthM>},
    {"sigma_east_m", "Sigma east", "Standard deviation of the position eastward, metres.", Real, real<&TestRow::sigmaEastM>},
    {"fixes", "Fixes", "Number of fixes in the mean position.", FieldForm::Whole, whole<&TestRow::fixes>},
    {"fix_kind", "Kind of fix", "How the position was known.", Text, text<&TestRow::fixKind>},
    {"rule_set_hash", "Rule set", "Hash of the rule set that judged the test.", Text, text<&TestRow::ruleSetHash>},
    {"core_version", "Core", "Version of the arithmetic that judged the test.", Text, text<&TestRow::coreVersion>},
    {"record_hash", "Record", "Hash of the sealed verdict, before there is one of the sealed place.", Text, text<&TestRow::recordHash>},
    {"device", "Device", "Public key of the device that sealed the record.", Text, text<&TestRow::device>},
    {"test_id", "Test id", "UUID of the test in the field book.", Text, text<&TestRow::id>},
};

}  // namespace

bool hasPosition(const TestRow& test)
{
    return std::isfinite(test.north) && std::isfinite(test.east) && (test.north != 0 || test.east != 0);
}

Result<Layer> testLayer(const book::JobRow& job, const EachTest& tests, const ExportOptions& options)
{
    if (const auto units = checkUnits(job); !units)
        return tl::unexpected(units.error());
    Layer layer;
    layer.name = "density_test";
    layer.title = "Density tests";
    layer.what = "One row per test, void and open ones too.";
    layer.kind = ShapeKind::Point;
    layer.fields = fieldsOf<TestRow>(kColumns, job);
    layer.each = [tests, options](const RowSink& sink) {
        return tests([&](const TestRow& test) -> Result<void> {
            LayerRow row{test.id, "Test " + test.number, valuesOf<TestRow>(kColumns, test, options), {}};
            if (hasPosition(test))
                row.shape.path = {{test.north, test.east}};
            return sink(row);
        });
    };
    return layer;
}

EachTest inNumberOrder(std::span<const TestRow> tests)
{
    std::vector<const TestRow*> order;
    order.reserve(tests.size());
    for (const TestRow& test : tests)
        order.push_back(&test);
    // Two tests may share a number until a conflict is settled; their ids keep the order the same every time.
    std::sort(order.begin(), order.end(), [](const TestRow* a, const TestRow* b) {
        return a->number == b->number ? a->id < b->id : book::numberBefore(a->number, b->number);
    });
    return [order = std::move(order)](const TestSink& sink) -> Result<void> {
        for (const TestRow* test : order)
            if (const auto taken = sink(*test); !taken)
                return taken;
        return {};
    };
}

}  // namespace groundcount::gis
