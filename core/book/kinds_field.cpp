#include "book/kinds.h"

#include "method/decimal.h"

#include <cmath>

namespace groundcount::book {

namespace {

constexpr const char* kPurposes[] = {"random", "directed", "retest"};
constexpr const char* kHazards[] = {"vertical face", "people", "vehicles", "other gauges"};
constexpr const char* kKnownBy[] = {"tape", "map", "eye"};
constexpr const char* kAnswers[] = {"clear", "too close", "cannot tell", "none inside"};
constexpr const char* kRemedies[] = {"trench correction", "moved", "waited"};
constexpr const char* kSurfaces[] = {"smooth", "filled"};
constexpr const char* kModes[] = {"direct", "backscatter"};
constexpr const char* kOrientations[] = {"along", "turned 90", "turned 180"};
constexpr const char* kWaiting[] = {"", "sample", "oven"};
constexpr const char* kSieves[] = {"No. 4", "3/4 in."};
constexpr const char* kOtherMethods[] = {"oven", "carbide", "microwave"};
constexpr const char* kResults[] = {"pass", "fail", "information only", "provisional"};
constexpr const char* kWords[] = {"accepted", "returned", "accepted with exception"};

constexpr Key kTestSite[] = {
    {"number", Form::Text},
    {"gauge", Form::Subject},
    {"lot", Form::Subject},
    {"lift", Form::Subject},
    {"purpose", Form::Choice, Need::Must, Unit::None, kPurposes},
    {"retest_of", Form::Subject, Need::May},
    {"rework", Form::AnyText, Need::May},
    {"draw", Form::Hash, Need::May},
    {"site", Form::WholeAboveZero, Need::May},
    {"ellipsoid_height_m", Form::Number, Need::May},
    {"sigma_north_m", Form::NumberFromZero, Need::May},
    {"sigma_east_m", Form::NumberFromZero, Need::May},
    {"fixes", Form::WholeFromZero, Need::May},
    {"fix_kind", Form::AnyText, Need::May},
    {"station", Form::Number, Need::May},
    {"offset_ft", Form::Number, Need::May},
    {"alignment", Form::Subject, Need::May},
    {"gauge_override_reason", Form::AnyText, Need::May},
    {"position", Form::AnyText, Need::May},
    {"tested_on", Form::Date, Need::May},
};
constexpr Key kPosition[] = {
    {"latitude_deg", Form::Number},
    {"longitude_deg", Form::Number},
    {"grid_north", Form::Number, Need::Must, Unit::Length},
    {"grid_east", Form::Number, Need::Must, Unit::Length},
};

constexpr Key kHazard[] = {
    {"hazard", Form::Choice, Need::Must, Unit::None, kHazards},
    {"distance", Form::NumberFromZero, Need::May, Unit::Length},
    {"uncertainty", Form::NumberFromZero, Need::May, Unit::Length},
    {"known_by", Form::Choice, Need::Must, Unit::None, kKnownBy},
    {"required", Form::NumberFromZero, Need::Must, Unit::Length},
    {"answer", Form::Choice, Need::Must, Unit::None, kAnswers},
    {"remedy", Form::Choice, Need::May, Unit::None, kRemedies},
    {"override_reason", Form::AnyText, Need::May},
};
constexpr Key kClearance[] = {{"hazards", Form::Objects, Need::Must, Unit::None, {}, kHazard}};

constexpr Key kSeating[] = {
    {"surface", Form::Choice, Need::Must, Unit::None, kSurfaces},
    {"rocks", Form::Flag},
    {"hole_depth_in", Form::NumberFromZero, Need::May},
    {"depth_in", Form::NumberFromZero},
    {"lift_thickness_in", Form::NumberAboveZero, Need::May},
};

constexpr Key kReading[] = {
    {"number", Form::WholeAboveZero},
    {"mode", Form::Choice, Need::May, Unit::None, kModes},
    {"depth_in", Form::NumberFromZero, Need::May},
    {"orientation", Form::Choice, Need::May, Unit::None, kOrientations},
    {"seconds", Form::WholeAboveZero, Need::May},
    {"reported", Form::Flag, Need::May},
};
constexpr Key kHowRead[] = {
    {"mode", Form::Choice, Need::Must, Unit::None, kModes},
    {"depth_in", Form::NumberFromZero},
    {"orientation", Form::Choice, Need::Must, Unit::None, kOrientations},
    {"seconds", Form::WholeAboveZero},
};
constexpr Key kCounts[] = {
    {"density_count", Form::WholeAboveZero},
    {"moisture_count", Form::WholeAboveZero},
    {"standard_count", Form::Hash},
};
constexpr Key kReadout[] = {
    {"wet_density", Form::NumberAboveZero, Need::Must, Unit::Density},
    {"water_density", Form::NumberFromZero, Need::May, Unit::Density},
    {"water_content_pct", Form::NumberFromZero, Need::May},
};

constexpr Key kSample[] = {
    {"waiting", Form::Choice, Need::Must, Unit::None, kWaiting},
    {"total_mass", Form::NumberAboveZero, Need::May, Unit::Mass},
    {"retained_mass", Form::NumberFromZero, Need::May, Unit::Mass},
    {"over_3in_mass", Form::NumberFromZero, Need::May, Unit::Mass},
    {"sieve", Form::Choice, Need::May, Unit::None, kSieves},
    {"other_water_content_pct", Form::NumberFromZero, Need::May},
    {"other_method", Form::Choice, Need::May, Unit::None, kOtherMethods},
};

constexpr Key kVerdict[] = {
    {"result", Form::Choice, Need::Must, Unit::None, kResults},
    {"reasons", Form::Texts},
    {"figures", Form::Object},
    {"rule_set", Form::Hash},
    {"core", Form::Text},
    {"from", Form::Hashes},
};

constexpr Key kSeen[] = {
    {"device", Form::Hash},
    {"last", Form::WholeAboveZero},
};
constexpr Key kReview[] = {
    {"word", Form::Choice, Need::Must, Unit::None, kWords},
    {"note", Form::AnyText, Need::May},
    {"seen", Form::Objects, Need::May, Unit::None, {}, kSeen},
};
constexpr Key kPhoto[] = {
    {"blob", Form::Hash},
    {"media_type", Form::Text},
    {"name", Form::AnyText, Need::May},
};
constexpr Key kNote[] = {{"text", Form::Text}};

Result<void> within(const Body& body, const char* key, double limit)
{
    const auto value = Decimal::parse(textAt(body, key));
    if (value && !(std::fabs(value->value()) <= limit))
        return refused(std::string("test-site: ") + key + " must be within +-" + std::to_string(static_cast<int>(limit)) +
                       "; it is \"" + value->text() + "\".");
    return {};
}

Result<void> siteAcross(const Body& body)
{
    const bool retest = textAt(body, "purpose") == "retest";
    if (retest && !body.contains("retest_of"))
        return refused("test-site: retest_of must be a UUID in lower case for a retest; it is missing.");
    const bool without = textAt(body, "purpose") != "random" && textAt(body, "position") == "not recorded";
    if (!without) {
        if (auto position = checkShape(body, kPosition, "test-site: "); !position)
            return position;
    }
    if (auto latitude = within(body, "latitude_deg", 90); !latitude)
        return latitude;
    return within(body, "longitude_deg", 180);
}

Result<void> readingAcross(const Body& body)
{
    const bool counts = body.contains("density_count") || body.contains("moisture_count");
    const bool readout = !withUnit(body, "wet_density", Unit::Density).text.empty();
    const auto reported = body.find("reported");
    if (counts || reported == body.end() || *reported != true)  // figures from elsewhere come without how they were read
        if (auto how = checkShape(body, kHowRead, "reading: "); !how)
            return how;
    if (counts && readout)
        return refused("reading: counts or a readout may stand, not both; both do.");
    if (counts)
        return checkShape(body, kCounts, "reading: ");
    if (auto values = checkShape(body, kReadout, "reading: "); !values)
        return values;
    const bool water = !withUnit(body, "water_density", Unit::Density).text.empty();
    if (water == body.contains("water_content_pct"))
        return refused("reading: exactly one of water_density_* and water_content_pct must stand; " +
                       std::string(water ? "both do." : "neither does."));
    return {};
}

Result<void> figuresAcross(const Body& body)
{
    const auto texts = [](const Body& figures, const std::string& where) -> Result<void> {
        for (auto it = figures.begin(); it != figures.end(); ++it) {
            if (it.key() == "unrounded" && it->is_object())
                continue;
            if (!it->is_string() || !Decimal::parse(*it->get_ptr<const std::string*>()))
                return refused(where + it.key() + " must be a decimal number as text; it is " + shown(*it) + ".");
        }
        return {};
    };
    const Body& figures = body.at("figures");
    if (auto reported = texts(figures, "verdict: figures."); !reported)
        return reported;
    const auto unrounded = figures.find("unrounded");
    return unrounded == figures.end() ? Result<void>{} : texts(*unrounded, "verdict: figures.unrounded.");
}

Result<void> sampleAcross(const Body& body)
{
    if (body.contains("other_water_content_pct") != body.contains("other_method"))
        return refused("sample: other_water_content_pct and other_method stand together; one of them is missing.");
    return {};
}

constexpr KindShape kKinds[] = {
    {"test-site", kTestSite, siteAcross}, {"clearance", kClearance, nullptr}, {"seating", kSeating, nullptr},
    {"reading", kReading, readingAcross}, {"sample", kSample, sampleAcross},  {"verdict", kVerdict, figuresAcross},
    {"review", kReview, nullptr},         {"photo", kPhoto, nullptr},         {"note", kNote, nullptr},
    {"void", {}, nullptr},
};

}  // namespace

std::span<const KindShape> testKinds()
{
    return kKinds;
}

}  // namespace groundcount::book
