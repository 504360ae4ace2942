#include "book/derived.h"

#include "method/decimal.h"
#include "method/quantity.h"

#include <algorithm>
#include <map>
#include <string_view>

namespace groundcount::book {

namespace {

constexpr Column kJob[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"begun", "TEXT"}, {"name", "TEXT"}, {"place", "TEXT"},
                           {"density_unit", "TEXT"}, {"crs", "TEXT"}, {"rule_set", "TEXT"}};
constexpr Column kCrs[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"epsg", "INTEGER"}, {"wkt", "TEXT"}, {"name", "TEXT"}, {"unit", "TEXT"}};
constexpr Column kRuleSet[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}};
constexpr Column kPerson[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"role", "TEXT"}, {"certificate", "TEXT"},
                              {"certificate_expires", "TEXT"}};
constexpr Column kGauge[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"serial", "TEXT"}, {"prescale", "REAL"},
                             {"custody_event", "TEXT"}, {"custody_by", "TEXT"}, {"custody_at", "TEXT"}, {"custody_place", "TEXT"}};
constexpr Column kCalibration[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"gauge", "TEXT"}, {"on_date", "TEXT"}, {"expires", "TEXT"}};
constexpr Column kLeak[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"gauge", "TEXT"}, {"on_date", "TEXT"}, {"expires", "TEXT"}, {"result", "TEXT"}};
constexpr Column kStandard[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"gauge", "TEXT"}, {"by_person", "TEXT"}, {"at", "TEXT"},
                                {"offset_minutes", "INTEGER"}, {"density", "TEXT"}, {"moisture", "TEXT"}, {"density_mean", "REAL"},
                                {"moisture_mean", "REAL"}, {"density_deviation_pct", "REAL"}, {"moisture_deviation_pct", "REAL"},
                                {"accepted", "INTEGER"}, {"override_reason", "TEXT"}};
constexpr Column kMaterial[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"description", "TEXT"}, {"soil_class", "TEXT"}};
constexpr Column kProctor[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"material", "TEXT"}, {"standard", "TEXT"},
                               {"peak_by", "TEXT"}, {"maximum", "TEXT"}, {"maximum_unit", "TEXT"}, {"optimum_pct", "TEXT"}};
constexpr Column kOffset[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"gauge", "TEXT"}, {"offset_kind", "TEXT"}, {"on_date", "TEXT"},
                              {"expires", "TEXT"}, {"material", "TEXT"}, {"depth_in", "TEXT"}};
constexpr Column kLot[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"material", "TEXT"}, {"proctor", "TEXT"},
                           {"zone", "TEXT"}, {"begin_station", "REAL"}, {"end_station", "REAL"}, {"left_ft", "REAL"},
                           {"right_ft", "REAL"}, {"minimum_pct", "TEXT"}, {"maximum_pct", "TEXT"}, {"window_kind", "TEXT"},
                           {"window_low", "TEXT"}, {"window_high", "TEXT"}, {"tests_per_lift", "INTEGER"}, {"sublots", "INTEGER"},
                           {"alignment", "TEXT"}, {"area", "TEXT"}};
constexpr Column kLift[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"lot", "TEXT"}, {"number", "INTEGER"}, {"thickness_in", "TEXT"}};
constexpr Column kSite[] = {{"id", "TEXT"}, {"draw", "TEXT"}, {"lot", "TEXT"}, {"lift", "TEXT"}, {"number", "INTEGER"},
                            {"station", "REAL"}, {"offset_ft", "REAL"}, {"north", "REAL"}, {"east", "REAL"}, {"grid_unit", "TEXT"}};
constexpr Column kObstacle[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"obstacle_kind", "TEXT"}, {"north", "REAL"},
                                {"east", "REAL"}, {"grid_unit", "TEXT"}, {"radius_ft", "REAL"}, {"uncertainty_ft", "REAL"},
                                {"path", "TEXT"}, {"closed", "INTEGER"}};
constexpr Column kAlignment[] = {{"id", "TEXT"}, {"hash", "TEXT"}, {"name", "TEXT"}, {"body", "TEXT"}};
constexpr Column kTest[] = {
    {"id", "TEXT"}, {"number", "TEXT"}, {"lot", "TEXT"}, {"lift", "TEXT"}, {"gauge", "TEXT"}, {"person", "TEXT"},
    {"material", "TEXT"}, {"proctor", "TEXT"}, {"retest_of", "TEXT"}, {"rework", "TEXT"}, {"purpose", "INTEGER"},
    {"state", "INTEGER"}, {"sealed_steps", "INTEGER"}, {"waiting_for", "TEXT"}, {"reasons", "TEXT"}, {"started_at", "TEXT"},
    {"verdict_at", "TEXT"}, {"offset_minutes", "INTEGER"}, {"north", "REAL"}, {"east", "REAL"}, {"grid_unit", "TEXT"},
    {"latitude_deg", "REAL"}, {"longitude_deg", "REAL"}, {"ellipsoid_height_m", "REAL"}, {"sigma_north_m", "REAL"},
    {"sigma_east_m", "REAL"}, {"fixes", "INTEGER"}, {"fix_kind", "TEXT"}, {"station", "REAL"}, {"offset_ft", "REAL"},
    {"mode", "TEXT"}, {"depth_in", "TEXT"}, {"wet", "TEXT"}, {"water", "TEXT"}, {"dry", "TEXT"}, {"content_pct", "TEXT"},
    {"compaction_pct", "TEXT"}, {"maximum", "TEXT"}, {"optimum_pct", "TEXT"}, {"coarse_pct", "TEXT"},
    {"uncertainty_pct", "TEXT"}, {"minimum_pct", "TEXT"}, {"maximum_pct", "TEXT"}, {"window_low_pct", "TEXT"},
    {"window_high_pct", "TEXT"}, {"density_count", "TEXT"}, {"moisture_count", "TEXT"}, {"standard_count", "TEXT"},
    {"overrides", "TEXT"}, {"rule_set", "TEXT"}, {"core", "TEXT"}, {"record", "TEXT"}, {"device", "TEXT"},
    {"conflict", "INTEGER"}, {"draw", "TEXT"}, {"site", "INTEGER"}};

constexpr DerivedTable kTables[] = {
    {"job_row", "job", kJob}, {"crs_row", "crs", kCrs}, {"rule_set_row", "rule-set", kRuleSet}, {"person_row", "person", kPerson},
    {"gauge_row", "gauge", kGauge}, {"calibration_row", "calibration", kCalibration}, {"leak_test_row", "leak-test", kLeak},
    {"standard_count_row", "standard-count", kStandard}, {"material_row", "material", kMaterial}, {"proctor_row", "proctor", kProctor},
    {"offset_row", "offset", kOffset}, {"lot_row", "lot", kLot}, {"lift_row", "lift", kLift}, {"site_row", "draw", kSite},
    {"obstacle_row", "obstacle", kObstacle}, {"alignment_row", "alignment", kAlignment}, {"test_row", "test-site", kTest}};

std::string insertSql(const DerivedTable& table)
{
    std::string marks;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        marks += i == 0 ? "?" : ",?";
    return std::string("INSERT INTO ") + table.name + " VALUES(" + marks + ")";
}

/// The two statements that replace a subject's rows in a table.
struct Replacing {
    std::string remove;
    std::string insert;
};

const std::map<std::string_view, Replacing>& replacing()
{
    static const std::map<std::string_view, Replacing> all = [] {
        std::map<std::string_view, Replacing> made;
        for (const DerivedTable& table : kTables)
            made[table.name] = {std::string("DELETE FROM ") + table.name + " WHERE id = ?", insertSql(table)};
        return made;
    }();
    return all;
}

Result<void> removeRows(Database& db, const std::string& subject, std::span<const Record> records)
{
    for (const DerivedTable& table : kTables) {
        if (std::none_of(records.begin(), records.end(), [&](const Record& r) { return r.kind == table.from; }))
            continue;
        auto removal = db.use(replacing().at(table.name).remove);
        if (!removal)
            return tl::unexpected(removal.error());
        if (auto removed = removal->bind(1, subject).step(); !removed)
            return tl::unexpected(removed.error());
    }
    return {};
}

Result<void> insertRows(Database& db, const DerivedRows& rows)
{
    for (const auto& cells : rows.rows) {
        auto insertion = db.use(replacing().at(rows.table).insert);
        if (!insertion)
            return tl::unexpected(insertion.error());
        for (std::size_t i = 0; i < cells.size(); ++i)
            insertion->bind(static_cast<int>(i) + 1, cells[i]);
        if (auto inserted = insertion->step(); !inserted)
            return tl::unexpected(inserted.error());
    }
    return {};
}

}  // namespace

std::span<const DerivedTable> derivedTables()
{
    return kTables;
}

Cell realOf(const std::string& decimalText)
{
    const auto number = Decimal::parse(decimalText);
    return number ? Cell(number->value()) : Cell();
}

double realOr(const std::string& decimalText, double otherwise)
{
    const auto number = Decimal::parse(decimalText);
    return number ? number->value() : otherwise;
}

Cell feetOf(const std::string& decimalText, const std::string& unit)
{
    const auto number = Decimal::parse(decimalText);
    if (!number)
        return {};
    if (unit == "ft")
        return number->value();
    if (unit == "usft")
        return Length::surveyFeet(number->value()).feet();
    if (unit == "in")
        return Length::inches(number->value()).feet();
    return Length::metres(unit == "mm" ? number->value() / 1000 : number->value()).feet();
}

Result<void> makeDerivedTables(Database& db)
{
    for (const DerivedTable& table : kTables) {
        std::string columns;
        for (const Column& column : table.columns)
            columns += (columns.empty() ? "" : ", ") + std::string("\"") + column.name + "\" " + column.type;
        if (auto made = db.exec(std::string("CREATE TABLE IF NOT EXISTS ") + table.name + "(" + columns + ") STRICT;"); !made)
            return made;
    }
    return {};
}

Result<void> makeDerivedIndexes(Database& db)
{
    for (const DerivedTable& table : kTables) {
        const std::string name = table.name;
        if (auto made = db.exec("CREATE INDEX IF NOT EXISTS " + name + "_id ON " + name + "(id);"); !made)
            return made;
    }
    return db.exec("CREATE INDEX IF NOT EXISTS test_row_lot ON test_row(lot, lift);"
                   "CREATE INDEX IF NOT EXISTS test_row_retest_of ON test_row(retest_of) WHERE retest_of <> '';"
                   "CREATE INDEX IF NOT EXISTS test_row_draw ON test_row(draw, site) WHERE draw <> '';");
}

Result<void> dropDerivedTables(Database& db)
{
    for (const DerivedTable& table : kTables)
        if (auto dropped = db.exec(std::string("DROP TABLE IF EXISTS ") + table.name); !dropped)
            return dropped;
    return {};
}

Result<void> foldSubject(Database& db, const std::string& subject, std::span<const Record> records, Before before)
{
    if (before == Before::Rows)
        if (auto removed = removeRows(db, subject, records); !removed)
            return removed;
    const LiveRecords live(records);
    for (const auto& family : {setupRows(subject, live), groundRows(subject, live), testRows(subject, live)})
        for (const DerivedRows& rows : family)
            if (auto inserted = insertRows(db, rows); !inserted)
                return inserted;
    return {};
}

}  // namespace groundcount::book
