#include "book/kinds.h"

namespace groundcount::book {

namespace {

constexpr const char* kDensityUnits[] = {"lb/ft3", "kg/m3"};
constexpr const char* kGridUnits[] = {"m", "ft", "ftUS"};
constexpr const char* kParties[] = {"contractor", "agency"};
constexpr const char* kRoles[] = {"technician", "engineer"};
constexpr const char* kModes[] = {"direct", "backscatter"};
constexpr const char* kLeakResults[] = {"no leak", "leak"};
constexpr const char* kCustody[] = {"signed out", "in transit", "at site", "signed in"};

constexpr Key kJob[] = {
    {"name", Form::Text},
    {"place", Form::AnyText, Need::May},
    {"density_unit", Form::Choice, Need::Must, Unit::None, kDensityUnits},
    {"crs", Form::Subject, Need::May},
    {"rule_set", Form::Subject, Need::May},
};

constexpr Key kCrs[] = {
    {"epsg", Form::WholeAboveZero, Need::May},
    {"wkt", Form::Text, Need::May},
    {"name", Form::Text},
    {"unit", Form::Choice, Need::Must, Unit::None, kGridUnits},
};

constexpr Key kRuleSet[] = {{"rules", Form::Object}};

constexpr Key kPerson[] = {
    {"name", Form::Text},
    {"role", Form::Choice, Need::Must, Unit::None, kRoles},
    {"certificate", Form::AnyText, Need::May},
    {"certificate_expires", Form::Date, Need::May},
    {"party", Form::Choice, Need::May, Unit::None, kParties},
};

constexpr Key kRetiredKey[] = {
    {"device", Form::Hash},
    {"last", Form::WholeFromZero},
    {"why", Form::Text},
};

constexpr Key kGauge[] = {
    {"name", Form::Text},
    {"serial", Form::Text},
    {"prescale", Form::NumberAboveZero, Need::May},
    {"sources", Form::AnyText, Need::May},
};

constexpr Key kCurve[] = {
    {"depth_in", Form::NumberFromZero},
    {"mode", Form::Choice, Need::Must, Unit::None, kModes},
    {"a", Form::NumberAboveZero},
    {"b", Form::NumberAboveZero, Need::Must, Unit::PerDensity},
    {"c", Form::Number},
    {"range_low", Form::NumberFromZero, Need::May, Unit::Density},
    {"range_high", Form::NumberAboveZero, Need::May, Unit::Density},
};

constexpr Key kWaterCurve[] = {
    {"e", Form::Number},
    {"slope", Form::NumberAboveZero, Need::Must, Unit::PerDensity},
    {"range_low", Form::NumberFromZero, Need::May, Unit::Density},
    {"range_high", Form::NumberAboveZero, Need::May, Unit::Density},
};

constexpr Key kCalibration[] = {
    {"gauge", Form::Subject},
    {"on", Form::Date},
    {"expires", Form::Date, Need::May},
    {"curves", Form::Objects, Need::Must, Unit::None, {}, kCurve},
    {"water", Form::Object, Need::Must, Unit::None, {}, kWaterCurve},
    {"density_standard", Form::NumberAboveZero, Need::May},
    {"moisture_standard", Form::NumberAboveZero, Need::May},
};

constexpr Key kStability[] = {
    {"gauge", Form::Subject},
    {"density_counts", Form::Numbers},
    {"moisture_counts", Form::Numbers},
    {"seconds", Form::WholeAboveZero},
    {"low", Form::NumberAboveZero},
    {"high", Form::NumberAboveZero},
    {"density_ratio", Form::NumberFromZero},
    {"moisture_ratio", Form::NumberFromZero},
    {"passed", Form::Flag},
};

constexpr Key kLeakTest[] = {
    {"gauge", Form::Subject},
    {"on", Form::Date},
    {"expires", Form::Date, Need::May},
    {"result", Form::Choice, Need::Must, Unit::None, kLeakResults},
};

constexpr Key kCustodyKeys[] = {
    {"event", Form::Choice, Need::Must, Unit::None, kCustody},
    {"place", Form::AnyText, Need::May},
    {"barriers", Form::WholeFromZero, Need::May},
    {"badge", Form::Flag, Need::May},
    {"papers", Form::Flag, Need::May},
};

constexpr Key kStandardCount[] = {
    {"gauge", Form::Subject},
    {"density_count", Form::NumberAboveZero},
    {"moisture_count", Form::NumberAboveZero},
    {"density_counts", Form::Numbers, Need::May},
    {"moisture_counts", Form::Numbers, Need::May},
    {"seconds", Form::WholeAboveZero, Need::May},
    {"density_before", Form::Numbers},
    {"moisture_before", Form::Numbers},
    {"accepted", Form::Flag},
    {"density_mean", Form::NumberAboveZero, Need::May},
    {"moisture_mean", Form::NumberAboveZero, Need::May},
    {"density_deviation_pct", Form::Number, Need::May},
    {"moisture_deviation_pct", Form::Number, Need::May},
    {"rule_set", Form::Hash, Need::May},
    {"override_reason", Form::AnyText, Need::May},
};

Result<void> crsAcross(const Body& body)
{
    if (!body.contains("epsg") && !body.contains("wkt"))
        return refused("crs: one of epsg, wkt must stand; both are missing.");
    return {};
}

Result<void> inOrder(const Body& body, const char* kind)
{
    const std::string on = textAt(body, "on");
    const std::string expires = textAt(body, "expires");
    if (!expires.empty() && expires < on)  // ISO dates order as text
        return refused(std::string(kind) + ": expires must not lie before on (" + on + "); it is \"" + expires + "\".");
    return {};
}

Result<void> calibrationAcross(const Body& body)
{
    if (body.at("curves").empty())
        return refused("calibration: curves must hold at least one depth; it is empty.");
    return inOrder(body, "calibration");
}

Result<void> leakAcross(const Body& body)
{
    return inOrder(body, "leak-test");
}

constexpr KindShape kKinds[] = {
    {"job", kJob, nullptr},
    {"crs", kCrs, crsAcross},
    {"rule-set", kRuleSet, nullptr},
    {"person", kPerson, nullptr},
    {"retired-key", kRetiredKey, nullptr},
    {"gauge", kGauge, nullptr},
    {"calibration", kCalibration, calibrationAcross},
    {"leak-test", kLeakTest, leakAcross},
    {"custody", kCustodyKeys, nullptr},
    {"standard-count", kStandardCount, nullptr},
    {"stability-test", kStability, nullptr},
};

}  // namespace

std::span<const KindShape> setupKinds()
{
    return kKinds;
}

}  // namespace groundcount::book
