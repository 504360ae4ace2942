#include "book/kinds.h"

#include "method/decimal.h"

namespace groundcount::book {

namespace {

constexpr const char* kOffsetKinds[] = {"trench", "moisture", "density bias"};
constexpr const char* kVariants[] = {"dry basis", "wet basis", "mass offset", "percent offset", "ratio"};
constexpr const char* kLineUnits[] = {"ft", "ftUS", "m"};
constexpr const char* kElements[] = {"line", "curve"};
constexpr const char* kTurns[] = {"left", "right"};
constexpr const char* kWindows[] = {"none", "points", "percent of optimum"};
constexpr const char* kObstacles[] = {"wall", "structure", "pipe", "vehicle", "gauge"};

constexpr Key kMaterial[] = {
    {"name", Form::Text},
    {"description", Form::AnyText, Need::May},
    {"soil_class", Form::AnyText, Need::May},
};

constexpr Key kPoint[] = {
    {"water_content_pct", Form::NumberFromZero},
    {"dry_density", Form::NumberAboveZero, Need::Must, Unit::Density},
};

constexpr Key kProctor[] = {
    {"name", Form::Text},
    {"material", Form::Subject},
    {"standard", Form::Text},
    {"method", Form::AnyText, Need::May},
    {"max_dry_density", Form::NumberAboveZero, Need::Must, Unit::Density},
    {"optimum_pct", Form::NumberAboveZero},
    {"standard_uncertainty", Form::NumberAboveZero, Need::May, Unit::Density},
    {"solids_gravity", Form::NumberAboveZero, Need::May},
    {"coarse_gravity", Form::NumberAboveZero, Need::May},
    {"coarse_water_content_pct", Form::NumberFromZero, Need::May},
    {"peak_by", Form::Text},
    {"points", Form::Objects, Need::May, Unit::None, {}, kPoint},
};

constexpr Key kOffset[] = {
    {"gauge", Form::Subject},
    {"offset_kind", Form::Choice, Need::Must, Unit::None, kOffsetKinds},
    {"on", Form::Date},
    {"expires", Form::Date, Need::May},
    {"place", Form::AnyText, Need::May},
    {"material", Form::Subject, Need::May},
    {"depth_in", Form::NumberFromZero, Need::May},
    {"samples", Form::WholeAboveZero, Need::May},
    {"sd_points", Form::NumberFromZero, Need::May},
    {"sd", Form::NumberFromZero, Need::May, Unit::Density},
    {"approved_by", Form::AnyText, Need::May},
};

constexpr Key kTrench[] = {
    {"moisture_standard_in_trench", Form::NumberAboveZero},
    {"moisture_standard_outside", Form::NumberAboveZero},
    {"density_standard_in_trench", Form::NumberAboveZero, Need::May},
    {"density_standard_outside", Form::NumberAboveZero, Need::May},
};
constexpr Key kMoisture[] = {{"variant", Form::Choice, Need::Must, Unit::None, kVariants}};
constexpr Key kFactor[] = {{"factor", Form::Number}};
constexpr Key kMassFactor[] = {{"factor", Form::Number, Need::Must, Unit::Density}};
constexpr Key kBias[] = {{"bias", Form::Number, Need::Must, Unit::Density}};

constexpr Key kElement[] = {
    {"kind", Form::Choice, Need::Must, Unit::None, kElements},
    {"length", Form::NumberAboveZero},
    {"radius", Form::NumberAboveZero, Need::May},
    {"turn", Form::Choice, Need::May, Unit::None, kTurns},
};
constexpr Key kEquation[] = {{"back", Form::Number}, {"ahead", Form::Number}};
constexpr Key kAlignment[] = {
    {"name", Form::Text},
    {"unit", Form::Choice, Need::Must, Unit::None, kLineUnits},
    {"begin_station", Form::Number},
    {"begin_north", Form::Number},
    {"begin_east", Form::Number},
    {"begin_azimuth_deg", Form::Number},
    {"elements", Form::Objects, Need::Must, Unit::None, {}, kElement},
    {"equations", Form::Objects, Need::May, Unit::None, {}, kEquation},
};

constexpr Key kCorner[] = {
    {"ring", Form::WholeAboveZero},
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
};
constexpr Key kVertex[] = {
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
};

constexpr Key kWindow[] = {
    {"kind", Form::Choice, Need::Must, Unit::None, kWindows},
    {"low", Form::Number, Need::May},
    {"high", Form::Number, Need::May},
};
constexpr Key kLot[] = {
    {"name", Form::Text},
    {"material", Form::Subject},
    {"proctor", Form::Subject},
    {"zone", Form::AnyText, Need::May},
    {"alignment", Form::Subject, Need::May},
    {"area", Form::Objects, Need::May, Unit::None, {}, kCorner},
    {"begin_station", Form::Number, Need::May},
    {"end_station", Form::Number, Need::May},
    {"left_ft", Form::NumberFromZero, Need::May},
    {"right_ft", Form::NumberFromZero, Need::May},
    {"minimum_pct", Form::NumberAboveZero, Need::May},
    {"maximum_pct", Form::NumberAboveZero, Need::May},
    {"window", Form::Object, Need::May, Unit::None, {}, kWindow},
    {"tests_per_lift", Form::WholeFromZero},
    {"sublots", Form::WholeFromZero, Need::May},
};

constexpr Key kLift[] = {
    {"lot", Form::Subject},
    {"number", Form::Whole},
    {"thickness_in", Form::NumberAboveZero, Need::May},
};

constexpr Key kDrawn[] = {
    {"number", Form::WholeAboveZero},
    {"r_along", Form::NumberFromZero},
    {"r_across", Form::NumberFromZero},
    {"station", Form::Number, Need::May},
    {"offset_ft", Form::Number, Need::May},
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
};
constexpr Key kRejected[] = {
    {"number", Form::WholeAboveZero},
    {"r_along", Form::NumberFromZero},
    {"r_across", Form::NumberFromZero},
    {"station", Form::Number, Need::May},
    {"offset_ft", Form::Number, Need::May},
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
    {"why", Form::Text},
};
constexpr Key kDraw[] = {
    {"lot", Form::Subject},
    {"lift", Form::Subject},
    {"generator", Form::Text},
    {"seed", Form::Text},
    {"policy", Form::Text},
    {"sites", Form::Objects, Need::Must, Unit::None, {}, kDrawn},
    {"rejected", Form::Objects, Need::Must, Unit::None, {}, kRejected},
};

constexpr Key kObstacle[] = {
    {"name", Form::Text},
    {"obstacle_kind", Form::Choice, Need::Must, Unit::None, kObstacles},
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
    {"radius_ft", Form::NumberFromZero, Need::May},
    {"uncertainty_ft", Form::NumberFromZero, Need::May},
    {"path", Form::Objects, Need::May, Unit::None, {}, kVertex},
    {"closed", Form::Flag, Need::May},
    {"from_file", Form::AnyText, Need::May},
};

Result<void> offsetAcross(const Body& body)
{
    const std::string kind = textAt(body, "offset_kind");
    const std::string expires = textAt(body, "expires");
    if (!expires.empty() && expires < textAt(body, "on"))
        return refused("offset: expires must not lie before on (" + textAt(body, "on") + "); it is \"" + expires + "\".");
    if (kind == "trench")
        return checkShape(body, kTrench, "offset: ");
    if (kind == "density bias")
        return checkShape(body, kBias, "offset: ");
    if (auto variant = checkShape(body, kMoisture, "offset: "); !variant)
        return variant;
    if (textAt(body, "variant") == "mass offset")
        return checkShape(body, kMassFactor, "offset: ");
    return checkShape(body, kFactor, "offset: ");
}

Result<void> alignmentAcross(const Body& body)
{
    for (const auto& element : body.at("elements"))
        if (textAt(element, "kind") == "curve" && (textAt(element, "radius").empty() || textAt(element, "turn").empty()))
            return refused("alignment: a curve needs radius and turn; one of elements has not both.");
    return {};
}

Result<void> lotAcross(const Body& body)
{
    const auto minimum = Decimal::parse(textAt(body, "minimum_pct"));
    const auto maximum = Decimal::parse(textAt(body, "maximum_pct"));
    if (minimum && maximum && *maximum < *minimum)
        return refused("lot: maximum_pct must not lie below minimum_pct (" + minimum->text() + "); it is \"" +
                       maximum->text() + "\".");
    const auto window = body.find("window");
    if (window == body.end() || textAt(*window, "kind") == "none")
        return {};
    const auto low = Decimal::parse(textAt(*window, "low"));
    const auto high = Decimal::parse(textAt(*window, "high"));
    if (!low && !high)
        return refused("lot: window needs low, high or both; both are missing.");
    if (low && high && *high < *low)
        return refused("lot: window.high must not lie below window.low (" + low->text() + "); it is \"" + high->text() + "\".");
    return {};
}

constexpr KindShape kKinds[] = {
    {"material", kMaterial, nullptr}, {"proctor", kProctor, nullptr},   {"offset", kOffset, offsetAcross},
    {"alignment", kAlignment, alignmentAcross}, {"lot", kLot, lotAcross}, {"lift", kLift, nullptr},
    {"draw", kDraw, nullptr},         {"obstacle", kObstacle, nullptr},
};

}  // namespace

std::span<const KindShape> groundKinds()
{
    return kKinds;
}

}  // namespace groundcount::book
